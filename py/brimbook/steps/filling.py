"""The wax: from the well's volume to wax, fragrance and dye that come to the line together."""

import math
from dataclasses import dataclass, replace

from brimbook.candle import wax
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.densities import TOLD_STATE
from brimbook.steps.measure import Measurement
from brimbook.steps.sinking import sinking
from brimbook.steps.weighing import practice_or_yours, sum_as_weighed, weigh_out

_HEAVIEST_WAX = 1.6


@dataclass(frozen=True)
class Filled:
    """One well filled to its line: what goes in all told, the second pour too [g], and how much of that is poured last [g].

    relative is the ± of it all [–].
    """

    place: str
    wax: float
    fragrance: float
    dye: float
    top_up: float
    figures: tuple[Figure, ...]
    relative: float = 0.0

    @property
    def total(self) -> float:
        """All that goes in [g]."""
        return self.wax + self.fragrance + self.dye


def filling(said: Said, place: str, room: Measurement, blend: Blend | None) -> Filled | None:
    """One well's wax, with every figure of it; none while an entry is missing or faulty [filled].

    said: the record as understood [said].
    place: path of the well [text].
    room: the well to its line, as measured [measurement].
    blend: of the pot that it is filled from; its place is that of the well whose pot it is [blend].
    """
    if blend is None:
        return None
    relative = math.hypot(room.relative, blend.relative)
    weighed = _weigh_outs(said, place, room, blend, relative)
    grams = wax.wax_for_volume(room.volume, blend.per_gram)
    sunk, top_up = sinking(said, place, room, blend)
    figures = (*weighed, *sunk, *_by_rule(said, place, room, blend, weighed[0]))
    return Filled(place, grams, grams * blend.load, grams * blend.dye, top_up, figures, relative)


def _put(said: Said, number: float) -> str:
    return show.significant(number, 8, said.display)


def _weigh_outs(said: Said, place: str, room: Measurement, blend: Blend, relative: float) -> list[Figure]:
    grams = wax.wax_for_volume(room.volume, blend.per_gram)
    spread = {"spread": "± from the volume, and from the cup of wax that you weighed."} if blend.relative else {}
    first = weigh_out(said, f"{place}.wax", "Wax", "wax", grams, relative,
                      formula="volume to the line ÷ blend from one gram of wax",
                      numbers=f"{_put(said, room.volume)} ÷ {_put(said, blend.per_gram)}",
                      uses=(f"{room.place}.volume", f"{blend.place}.blend_per_gram"), **spread)
    parts = [first]
    load = f"{blend.place}.load_of_wax"
    for name, share, uses in (("Fragrance", blend.load, (first.key, load)), ("Dye", blend.dye, (first.key,))):
        if share:
            parts.append(weigh_out(
                said, f"{place}.{name.lower()}", name, name.lower(), grams * share, relative,
                formula=f"wax × {'fragrance load of the wax' if name == 'Fragrance' else 'dye, of the wax'}",
                numbers=f"{_put(said, grams)} × {_put(said, share)}", uses=uses, **spread))
    return [first, *waxes_apart(said, place, blend, first), *parts[1:], sum_as_weighed(said, f"{place}.pot", "In the pot", parts)]


def waxes_apart(said: Said, place: str, blend: Blend, whole: Figure) -> list[Figure]:
    """Each wax by itself, where several are blended [figures].

    said: the record as understood [said].
    place: below which the figures stand [text].
    blend: in the pot [blend].
    whole: all the wax [figure].
    """
    if len(blend.waxes) < 2:
        return []
    return [weigh_out(said, f"{place}.wax_{part.number}", part.name, part.noun, whole.value * part.share, None,
                      formula="wax × its share of the wax", numbers=f"{_put(said, whole.value)} × {_put(said, part.share)}",
                      uses=(whole.key,)) for part in blend.waxes]


def _by_rule(said: Said, place: str, room: Measurement, blend: Blend, weighed: Figure) -> list[Figure]:
    rule = said.value(f"{blend.place}.rule")
    if rule is None:
        return []
    constant = practice_or_yours(said, f"{blend.place}.rule", "Wax for a gram of water to the line", f"{_put(said, rule)} g")
    by_rule = weigh_out(said, f"{place}.rule_wax", "Wax by your rule", "wax", wax.wax_by_rule(room.water, rule), None,
                        formula="water to the line × rule", numbers=f"{_put(said, room.water)} × {_put(said, rule)}",
                        constants=(constant,), uses=(f"{room.place}.volume",), verb="Your rule:")
    # A rule is only looked at: the scale's step counts against what is weighed.
    by_rule = replace(by_rule, notes=())
    difference = _rule_difference(said, place, room, blend, by_rule, weighed, constant)
    if not blend.load:
        return [by_rule, difference]
    fragrance = weigh_out(said, f"{place}.rule_fragrance", "Fragrance by your rule", "fragrance",
                          by_rule.value * blend.load, None, formula="wax by your rule × fragrance load of the wax",
                          numbers=f"{_put(said, by_rule.value)} × {_put(said, blend.load)}",
                          uses=(by_rule.key, f"{blend.place}.load_of_wax"), verb="Your rule:")
    return [by_rule, replace(fragrance, notes=()), difference]


def _rule_difference(said: Said, place: str, room: Measurement, blend: Blend, by_rule: Figure, weighed: Figure,
                     constant: Constant) -> Figure:
    difference = by_rule.value / weighed.value - 1
    fits = wax.density_behind_rule(said.value(f"{blend.place}.rule"), room.milliliters_per_gram,
                                   said.value(f"{blend.place}.fragrance.density"), blend.load, blend.dye)
    told = show.significant
    more = "more" if difference >= 0 else "less"
    says = f"Your rule: {by_rule.shown} wax, {show.percent(abs(difference), said.display)} {more}. "
    if _HEAVIEST_WAX < fits:
        says += "With this much fragrance it fits no wax: it comes above the line"
    else:
        says += f"{'With this' if blend.load else 'Without'} fragrance it comes to the line for a wax of {told(fits, 3, said.display)} g/mL; yours is " \
                f"{told(blend.density, 3, said.display)} g/mL {TOLD_STATE[blend.basis]}"
    return Figure(
        f"{place}.rule_difference", "Your rule beside it", difference, "–", show.percent(difference, said.display),
        "wax by your rule ÷ wax − 1",
        f"({_put(said, by_rule.value)} ÷ {_put(said, weighed.value)} − 1) × 100", says=says,
        constants=(constant,), uses=(by_rule.key, weighed.key))
