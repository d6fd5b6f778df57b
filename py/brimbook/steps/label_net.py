"""The net weight of a label: what is surely in one vessel, rounded down, in the systems of its market."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.sell import label_rules, net_quantity
from brimbook.steps.filling import Filled

# More weighed candles than this are kept, and no longer worked out.
MOST_WEIGHED = 100
MARKED = "Mend the entry that is marked."
_OTHER_WELLS = "Once the wax of every well is known, or what a finished candle weighs."
_UNSURE = "The ± of the fill is as large as the fill itself: measure it again, or weigh a finished candle."
# What is typed may be so much over what is in it: only binary fractions.
_HAIR = 1e-6


@dataclass(frozen=True)
class Net:
    """The net weight of one vessel: in grams as printed [g], in words as printed, with its figures.

    waiting: why there is none yet; empty where there is one, and for a vessel without wax.
    weights: of the finished candles that were weighed [g].
    checked: was it compared with what is in the vessel?
    """

    grams: float = 0.0
    statement: str = ""
    figures: tuple[Figure, ...] = ()
    waiting: str = ""
    weights: tuple[float, ...] = ()
    checked: bool = True


@dataclass(frozen=True)
class _Sure:
    """What is surely in it [g], and what is printed where nothing is typed [g], with the figure that tells it."""

    most: float
    usual: float
    told: str
    figures: tuple[Figure, ...]


def net_of(said: Said, place: str, fills: dict[str, Filled]) -> Net:
    """The net weight that a label tells, or why there is none [net].

    said: the record as understood [said].
    place: path of the label [text].
    fills: what each well takes, by its path [fills].

    What was weighed counts before what the fill comes to; what is typed is printed, as long as that much is in it.
    """
    weights, typed = weights_of(said, place), said.value(f"{place}.net_weight")
    if weights is None or (said.typed(f"{place}.net_weight") and typed is None):
        return Net(waiting=MARKED)
    sure, missing = _sure(said, place, fills, weights)
    if sure is None and typed is None:
        return Net(waiting=missing)
    if sure is not None and typed is not None and typed > sure.most * (1 + _HAIR):
        said.fault(f"{place}.net_weight", f"As far as is known here, {statement(said, place, sure.most)} are surely in it: print no more than that.")
        return Net(waiting=MARKED, figures=sure.figures, weights=weights)
    return _told(said, place, sure, typed, weights)


def weights_of(said: Said, place: str) -> tuple[float, ...] | None:
    """The finished candles that were weighed; none while one of them can't be read [g].

    said: the record as understood [said].
    place: path of the label [text].
    """
    paths = [f"{place}.weighed.{row}.weight" for row in range(min(said.count(f"{place}.weighed"), MOST_WEIGHED))]
    found = [said.value(path) for path in paths if said.typed(path)]
    return None if None in found else tuple(found)


def statement(said: Said, place: str, grams: float) -> str:
    """The net weight in the systems of its market, as the maker reads it, without the words before it [text].

    said: the record as understood [said].
    place: path of the label [text].
    grams: that are surely in it [g].
    """
    return _statement(grams, said.value(f"{place}.market") != "eu", said.display)


def _statement(grams: float, imperial: bool, display: Display) -> str:
    if not imperial:
        return _metric(grams, display)
    told = net_quantity.pounds_and_ounces(grams)
    parts = [f"{told.pounds} lb"] if told.pounds else []
    parts += [f"{show.significant(told.ounces, 4, display)} oz"] if told.ounces or not parts else []
    return f"{' '.join(parts)} ({_metric(grams, display)})"


def _metric(grams: float, display: Display) -> str:
    printed = net_quantity.grams_to_print(grams)
    if printed >= net_quantity.KILOGRAM:
        return f"{show.significant(printed / net_quantity.KILOGRAM, 4, display)} kg"
    return f"{show.significant(printed, 4, display)} g"


def _sure(said: Said, place: str, fills: dict[str, Filled], weights: tuple[float, ...]) -> tuple[_Sure | None, str]:
    """What is surely in it, or what is missing for that; neither for a vessel without wax."""
    if weights:
        mean = _mean(said, place, weights)
        return _Sure(mean.value, min(weights), "the lightest that was weighed", (mean,)), ""
    wells = [f"wells.{number}" for number in range(said.count("wells"))]
    if any(said.is_marked_below(f"{well}.fill") or said.is_marked_below(f"{well}.wax") for well in wells if well not in fills):
        return None, MARKED
    if not fills:
        return None, ""
    if len(fills) < len(wells):
        return None, _OTHER_WELLS
    figure = _by_fill(said, place, fills)
    if figure.value <= 0:
        return None, _UNSURE
    return _Sure(figure.value, figure.value, "what is surely in it", (figure,)), ""


def _put(said: Said, number: float) -> str:
    return show.significant(number, 9, said.display)


def _worked(said: Said, number: float) -> str:
    return show.significant(number, 6, said.display)


def _mean(said: Said, place: str, weights: tuple[float, ...]) -> Figure:
    value = net_quantity.average(weights)
    told = " + ".join(_put(said, weight) for weight in weights)
    return Figure(
        f"{place}.mean", "Weighed, on average", value, "g", show.small_mass(value, said.display, 4),
        formula="all that were weighed ÷ how many", numbers=f"({told}) ÷ {len(weights)}", worked=f"{_worked(said, value)} g",
        constants=(Constant("A label is held to", "the average", label_rules.NET),))


def _by_fill(said: Said, place: str, fills: dict[str, Filled]) -> Figure:
    """The least that the fill of all wells may come to."""
    value = math.fsum(filled.total * (1 - filled.relative) for filled in fills.values())
    numbers = " + ".join(f"{_put(said, filled.total)} × (1 − {_put(said, filled.relative)})" for filled in fills.values())
    uses = tuple(figure.key for filled in fills.values() for figure in filled.figures
                 if figure.key in [f"{filled.place}.{name}" for name in ("wax", "fragrance", "dye")])
    return Figure(
        f"{place}.sure", "Surely in it", value, "g", show.small_mass(value, said.display, 4),
        formula="wax, fragrance and dye × (1 − their ± as a share), summed over the wells", numbers=numbers,
        worked=f"{_worked(said, value)} g", uses=uses,
        spread="Filled to the line as planned. Weigh finished candles, less vessel and wick, to tell it better.")


def _told(said: Said, place: str, sure: _Sure | None, typed: float | None, weights: tuple[float, ...]) -> Net:
    base, told = (typed, "what you typed") if typed is not None else (sure.usual, sure.told)
    printed = net_quantity.grams_to_print(base)
    figures = sure.figures if sure else ()
    imperial, words = said.value(f"{place}.market") != "eu", statement(said, place, base)
    # Beside ounces stands the mark that their readers know.
    printed_words = _statement(base, imperial, Display() if imperial else said.display)
    constants = [Constant("Digits", "3, below 100 g 2", label_rules.DIGITS), Constant("Rounding", "down, never up", label_rules.NEVER_MORE)]
    if typed is not None:
        constants.append(Constant("Net weight to print", said.canonical.get(f"{place}.net_weight", ""), sources.YOURS))
    net = Figure(
        f"{place}.net", "Net weight", printed, "g", words, formula=f"{told} − what is rounded off",
        numbers=f"{_put(said, base)} − {_put(said, base - printed)}", worked=f"{_put(said, printed)} g", says=f"It says {words}",
        constants=tuple(constants), uses=tuple(figure.key for figure in figures))
    return Net(printed, printed_words, (*figures, net, *([_ounces(said, place, base, told)] if imperial else [])), "", weights, sure is not None)


def _ounces(said: Said, place: str, base: float, told: str) -> Figure:
    value = net_quantity.ounces_to_print(base)
    off = net_quantity.ounces(base) - value
    return Figure(
        f"{place}.ounces", "Net weight in ounces", value, "oz", f"{show.significant(value, 4, said.display)} oz",
        formula=f"{told} × ounces in a gram − what is rounded off",
        numbers=f"{_put(said, base)} × {_put(said, net_quantity.OUNCES_IN_GRAM)} − {_put(said, off)}",
        worked=f"{_put(said, value)} oz", constants=(
            Constant("Ounces in a gram", f"{_put(said, net_quantity.OUNCES_IN_GRAM)}", label_rules.FACTORS),
            Constant("From 16 oz on", "pounds and what is over", label_rules.POUNDS)), uses=(f"{place}.net",))
