"""The panel that a label is seen on, and how high letters and figures of the net weight must be there."""

from dataclasses import dataclass

from brimbook.draw.label import CAPITAL, SMALL
from brimbook.draw.label_text import size_for
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.sell import label_rules, panel, prepackage
from brimbook.steps.label_net import MARKED, Net
from brimbook.steps.label_size import Size
from brimbook.sources import Source

_AROUND = "Type how far it is once around: letters go by the panel."
_SURFACE = "Type the area of all its surface: letters go by the panel."
_AREA = 100.0


@dataclass(frozen=True)
class Letters:
    """The least height of the net weight's letters [mm], how it is told, and where it stands.

    low: must it stand in the lowest 30 % of the panel?
    by_label: is the size of the panel that of the label, as none was typed?
    waiting: what is missing for it.
    """

    least: float = 0.0
    measured: str = CAPITAL
    low: bool = False
    figures: tuple[Figure, ...] = ()
    waiting: str = ""
    by_label: bool = False


@dataclass(frozen=True)
class _Panel:
    """The area of a panel [mm²], and how it came about."""

    area: float
    formula: str
    numbers: str
    by_label: bool = False


def letters_of(said: Said, place: str, size: Size, net: Net) -> Letters:
    """How high the net weight must be printed, by the rules of the label's market [letters].

    said: the record as understood [said].
    place: path of the label [text].
    size: of the label [size].
    net: weight that it tells [net].
    """
    market = said.value(f"{place}.market")
    nominal = _by_nominal(said, place, net) if market != "us" else None
    if market == "eu":
        return Letters(nominal.value, CAPITAL, False, (nominal,))
    seen = _panel(said, place, size)
    if isinstance(seen, str):
        return Letters(waiting=seen)
    area = Figure(f"{place}.panel", "Panel that it is seen on", seen.area / _AREA, "cm²", show_more.area(seen.area, said.display),
                  formula=seen.formula, numbers=seen.numbers, worked=f"{show.significant(seen.area / _AREA, 5, said.display)} cm²",
                  constants=(Constant("Seen from the front", "as the rule has it", label_rules.PANEL),))
    letters = _by_panel(said, place, seen.area)
    figures = (area, letters, *([nominal] if nominal else []))
    least, measured = letters.value, SMALL
    if nominal and size_for(nominal.value, CAPITAL) > size_for(least, SMALL):
        least, measured = nominal.value, CAPITAL
    return Letters(least, measured, panel.stands_low(seen.area), figures, by_label=seen.by_label)


def _put(said: Said, number: float) -> str:
    return show.significant(number, 8, said.display)


def _panel(said: Said, place: str, size: Size) -> _Panel | str:
    """The panel, or what is missing for it."""
    kind = said.value(f"{place}.panel")
    names = ("panel_width", "panel_height", "panel_around", "panel_area")
    values = {name: said.value(f"{place}.{name}") for name in names}
    if kind is None or any(said.typed(f"{place}.{name}") and values[name] is None for name in _needed(kind)):
        return MARKED
    width, height = values["panel_width"] or size.width, values["panel_height"] or size.height
    around, surface = values["panel_around"], (values["panel_area"] or 0.0) * _AREA
    if kind == "cylinder":
        return _round(said, height, around, values["panel_height"] is None) if around else _AROUND
    if kind == "other":
        if not surface:
            return _SURFACE
        return _Panel(panel.other_area(surface), "40 % of all its surface", f"{_put(said, panel.SEEN)} × {_put(said, surface / _AREA)}")
    if kind == "top" and surface:
        return _Panel(surface, "all of the top", _put(said, surface / _AREA))
    return _Panel(panel.flat_area(height, width), "height × width", f"{_put(said, height)} × {_put(said, width)} ÷ 100",
                  None in (values["panel_width"], values["panel_height"]))


def _needed(kind: str) -> tuple[str, ...]:
    return {"cylinder": ("panel_height", "panel_around"), "other": ("panel_area",),
            "top": ("panel_area", "panel_width", "panel_height")}.get(kind, ("panel_width", "panel_height"))


def _round(said: Said, height: float, around: float, by_label: bool) -> _Panel:
    return _Panel(panel.round_area(height, around), "40 % of height × once around",
                  f"{_put(said, panel.SEEN)} × {_put(said, height)} × {_put(said, around)} ÷ 100", by_label)


def _by_panel(said: Said, place: str, area: float) -> Figure:
    value = panel.least_height(area)
    parts = round(value / panel.INCH * 16)
    shown = show.length(value, said.display)
    return Figure(
        f"{place}.letters", "Letters, at least", value, "mm", shown, formula="sixteenths of an inch by the area of the panel",
        numbers=f"{parts} ÷ 16 × {_put(said, panel.INCH)}", worked=f"{_put(said, value)} mm",
        says=f"Letters of the net weight are at least {shown} high, its small letters too",
        constants=(Constant("Height by area", f"{parts}/16 in", _ladder(area)),
                   Constant("Measured by", "the small letter o", label_rules.SMALL_LETTERS)),
        uses=(f"{place}.panel",), spread="For what is printed. What is molded into the vessel must be 1/16 in higher, from memory.")


def _ladder(area: float) -> Source:
    inches = panel.square_inches(area)
    if inches <= panel.ANYWHERE:
        return label_rules.LETTERS_SMALL
    return label_rules.LETTERS if inches <= panel.TIERS[2][0] else label_rules.LETTERS_LARGE


def _by_nominal(said: Said, place: str, net: Net) -> Figure:
    value = prepackage.figure_height(net.grams)
    shown = show.length(value, said.display)
    return Figure(
        f"{place}.height", "Figures, at least", value, "mm", shown, formula="by the nominal quantity", numbers=_put(said, value),
        worked=f"{_put(said, value)} mm", says=f"The figures of the net weight are at least {shown} high",
        constants=(Constant("Height by nominal quantity", f"{_put(said, value)} mm", label_rules.EU_FIGURES),),
        uses=(f"{place}.net",))
