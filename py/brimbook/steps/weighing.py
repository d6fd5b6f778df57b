"""What to weigh out: one ingredient as the maker's scale can show it, and the sum of several."""

import math

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said

# A step of the scale this large against the weight is worth a word.
COARSE = 0.05


def weigh_out(said: Said, key: str, label: str, noun: str, grams: float, relative: float | None, formula: str,
              numbers: str, uses: tuple[str, ...] = (), constants: tuple[Constant, ...] = (), verb: str = "Weigh",
              notes: tuple[str, ...] = (), spread: str = "± from the volume alone.", whole: float | None = None, thing: str = "") -> Figure:
    """The figure of one ingredient to weigh [figure].

    said: the record as understood [said].
    key: of the figure [text].
    label: what it is called beside the number [text].
    noun: what is weighed, in a sentence [text].
    grams: how much [g].
    relative: its ± as a share of it, none where unknown [–].
    formula: in words [text].
    numbers: the formula with the numbers put in [text].
    uses: keys of the figures it stands on [text].
    constants: it takes from outside the record [constants].
    verb: how the sentence begins [text].
    notes: what else the maker should know of it [texts].
    spread: where its ± comes from [text].
    whole: all that is weighed of it in the end, where this is a part: the scale's step counts against that [g].
    thing: what the scale's step is told of, where the noun is more than a name [text].
    """
    plus_minus = None if relative is None else grams * relative
    # A ± finer than the scale's own step says nothing at the bench.
    telling = plus_minus is not None and plus_minus >= said.display.readability / 2
    return Figure(
        key, label, grams, "g", show.mass(grams, said.display), formula=formula, numbers=numbers,
        says=f"{verb} {show.mass(grams, said.display)} {noun}", plus_minus=plus_minus,
        worked=f"{show.significant(grams, 5, said.display)} g",
        plus_minus_shown=show.mass_plus_minus(plus_minus, said.display) if telling else "", constants=constants,
        uses=uses, spread=spread if telling else "", notes=(*notes, *_coarse_notes(said, grams if whole is None else whole, thing or noun)))


def _coarse_notes(said: Said, grams: float, noun: str) -> tuple[str, ...]:
    step = said.display.readability
    if grams <= 0 or step / grams < COARSE:
        return ()
    if step > grams:
        return (f"Your scale can't weigh this {noun}: use a finer one, or make a larger batch.",)
    return (f"One step of your scale is {show.percent(step / grams, said.display, 0)} of this {noun}: "
            f"use a finer scale for it, or make a larger batch.",)


def practice_or_yours(said: Said, path: str, name: str, shown: str) -> Constant:
    """A constant that is common practice until the maker types another [constant].

    said: the record as understood [said].
    path: the leaf of the record that holds it [text].
    name: what it is called [text].
    shown: it, with its unit [text].
    """
    return Constant(name, shown, sources.PRACTICE if said.is_usual(path) else sources.YOURS)


def sum_as_weighed(said: Said, key: str, label: str, parts: list[Figure]) -> Figure:
    """The total of what is weighed out, as rounded, so that it agrees with the parts shown [figure].

    said: the record as understood [said].
    key: of the figure [text].
    label: what it is called beside the number [text].
    parts: the ingredients [figures].
    """
    rounded = [show.round_to_scale(part.value, said.display) for part in parts]
    names = " + ".join(part.label.lower() for part in parts)
    numbers = " + ".join(show.significant(grams, 9, said.display) for grams in rounded)
    return Figure(key, label, math.fsum(rounded), "g", show.mass(math.fsum(rounded), said.display),
                  formula=f"{names}, as weighed", numbers=numbers, uses=tuple(part.key for part in parts),
                  worked=f"{show.significant(math.fsum(rounded), 6, said.display)} g")
