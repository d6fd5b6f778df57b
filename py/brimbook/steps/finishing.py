"""Sealing, priming, painting: areas, coats, volumes, and the time that the coats take."""

from dataclasses import dataclass, replace

from brimbook import sources
from brimbook.cast import coating
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.quantity.moments import HOUR, show_duration
from brimbook.record.said import Said
from brimbook.steps.measure import Measurement
from brimbook.steps.weighing import practice_or_yours

# Each coat, and the side that it goes on.
COATS = (("sealer", "Sealer", "inside"), ("primer", "Primer", "outside"), ("paint", "Paint", "outside"))
_NOUNS = {"inside": "Inside", "outside": "Outside"}
_TURNED = "The inside comes out larger than the outside: check the sizes of both."
_BOTTOMS = {"inside": "floor", "outside": "foot"}
_MEASURED = {"mold": "The sizes are those of the mold, as you measured it.",
             "well": "The sizes are those of the well, as you measured it: add the wall above the line of the wax."}


@dataclass(frozen=True)
class _Sizes:
    """The sizes of one side as typed, or as its mold or well was measured: of a round wall, or of an upright one [mm]."""

    top: float | None = None
    bottom: float | None = None
    outline: float | None = None
    height: float | None = None
    measured: str = ""


def finishing(said: Said, place: str, cavity: Measurement | None) -> list[Figure]:
    """Every figure of this step [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    cavity: as measured, where it is known [measurement].
    """
    areas = {side: _area(said, place, side, cavity) for side in _NOUNS}
    if None not in areas.values() and areas["inside"].value > areas["outside"].value:
        areas["inside"] = replace(areas["inside"], notes=(*areas["inside"].notes, _TURNED))
    found = [area for area in areas.values() if area is not None]
    amounts = [_amount(said, place, name, label, areas[side]) for name, label, side in COATS]
    return [*found, *(figure for figure in amounts if figure is not None), *_hours(said, place)]


def _sizes(said: Said, place: str, side: str, cavity: Measurement | None) -> _Sizes:
    """What is typed, else how the mold (of the outside) or the well of the same number (of the inside) was measured."""
    at = f"{place}.finishing.{side}"
    if any(said.typed(f"{at}_{name}") for name in ("top", "bottom", "outline", "height")):
        top, bottom = said.value(f"{at}_top"), said.value(f"{at}_bottom")
        if not said.typed(f"{at}_bottom"):
            bottom = top
        return _Sizes(top, bottom, said.value(f"{at}_outline"), said.value(f"{at}_height"))
    if side == "inside":
        return _as_measured(said, f"wells.{place.partition('.')[2]}.fill", "well")
    return _as_measured(said, cavity.place, "mold") if cavity is not None else _Sizes()


def _as_measured(said: Said, fill: str, what: str) -> _Sizes:
    """A wall as its room was measured by dimensions; nothing where it was measured with water."""
    if said.value(f"{fill}.way") != "dimensions":
        return _Sizes()
    value = {name: said.value(f"{fill}.{name}") for name in (
        "diameter", "top_diameter", "bottom_diameter", "length", "width", "height")}
    solid = said.value(f"{fill}.solid")
    if solid == "box" and None not in (value["length"], value["width"]):
        return _Sizes(outline=2 * (value["length"] + value["width"]), height=value["height"], measured=what)
    if solid == "tapered":
        return _Sizes(value["top_diameter"], value["bottom_diameter"], height=value["height"], measured=what)
    return _Sizes(value["diameter"], value["diameter"], height=value["height"], measured=what) if solid == "cylinder" else _Sizes()


def _is_round(said: Said, place: str, sizes: _Sizes) -> bool:
    if sizes.measured:
        return sizes.outline is None
    return said.value(f"{place}.finishing.shape") != "outline"


def _area(said: Said, place: str, side: str, cavity: Measurement | None) -> Figure | None:
    key, label = f"{place}.finishing.{side}", _NOUNS[side]
    given, path = said.value(f"{place}.finishing.{side}_area"), f"{place}.finishing.{side}_area"
    if given is not None:
        return _area_figure(said, key, label, given * 100, "as typed", show.significant(given, 8, said.display), (), "")
    if said.typed(path):
        return None
    sizes = _sizes(said, place, side, cavity)
    worked = _round(said, sizes, _BOTTOMS[side]) if _is_round(said, place, sizes) else _upright(said, sizes)
    if worked is None:
        return None
    area, formula, numbers = worked
    notes = (_MEASURED[sizes.measured],) if sizes.measured else ()
    return _area_figure(said, key, label, area, formula, numbers, notes, "The rim, and any relief, come on top.")


def _area_figure(said: Said, key: str, label: str, area: float, formula: str, numbers: str, notes: tuple[str, ...],
                 spread: str) -> Figure:
    shown = show_more.area(area, said.display)
    return Figure(key, label, area / 100, "cm²", shown, formula=formula, numbers=numbers, notes=notes, spread=spread,
                  worked=f"{show.significant(area / 100, 6, said.display)} cm²", says=f"{label}, wall and floor: {shown}",
                  constants=(Constant("Formula" if spread else label, "lengths in mm, ÷ 100 for cm²" if spread else shown,
                                      sources.SURFACE if spread else sources.YOURS),))


def _round(said: Said, sizes: _Sizes, low: str) -> tuple[float, str, str] | None:
    if None in (sizes.top, sizes.bottom, sizes.height):
        return None
    top, bottom, height = (show.significant(each, 8, said.display) for each in (sizes.top, sizes.bottom, sizes.height))
    return (coating.round_wall_and_floor(sizes.top, sizes.bottom, sizes.height),
            f"(π ÷ 2 × (top + {low}) × √(height² + ((top − {low}) ÷ 2)²) + π ÷ 4 × {low}²) ÷ 100",
            f"(π ÷ 2 × ({top} + {bottom}) × √({height}² + (({top} − {bottom}) ÷ 2)²) + π ÷ 4 × {bottom}²) ÷ 100")


def _upright(said: Said, sizes: _Sizes) -> tuple[float, str, str] | None:
    if None in (sizes.outline, sizes.height):
        return None
    outline, height = (show.significant(each, 8, said.display) for each in (sizes.outline, sizes.height))
    return (coating.upright_wall_and_floor(sizes.outline, sizes.height),
            "(once around × height + once around² ÷ (4 π)) ÷ 100: the floor as a circle, the most it can be",
            f"({outline} × {height} + {outline}² ÷ (4 × π)) ÷ 100")


def _amount(said: Said, place: str, name: str, label: str, area: Figure | None) -> Figure | None:
    at = f"{place}.finishing.{name}"
    coats, coverage, pieces = said.value(f"{at}_coats"), said.value(f"{at}_coverage"), said.value(f"{place}.pieces")
    if area is None or not coats or coverage is None or pieces is None:
        return None
    milliliters, told = pieces * coating.coating(area.value * 100, coverage, coats), show.significant
    constant = Constant(f"One liter of {name} covers", f"{told(coverage, 4, said.display)} m²/L",
                        sources.MEMORY if said.is_usual(f"{at}_coverage") else sources.YOURS)
    each = "coat" if coats == 1 else "coats"
    of_pieces = "" if pieces == 1 else f" on {told(pieces, 8, said.display)} pieces"
    return Figure(
        f"{place}.finishing.{name}", label, milliliters, "mL", show.volume(milliliters, said.display),
        formula="pieces × coats × area ÷ coverage, from cm² to mL",
        numbers=f"{told(pieces, 8, said.display)} × {told(coats, 8, said.display)} × {told(area.value, 8, said.display)} ÷ 10 ÷ "
                f"{told(coverage, 8, said.display)}", worked=f"{told(milliliters, 5, said.display)} mL",
        says=f"{show.volume(milliliters, said.display)} of {name} for {told(coats, 8, said.display)} {each}{of_pieces}",
        constants=(constant, practice_or_yours(said, f"{at}_coats", "Coats", told(coats, 8, said.display))), uses=(area.key,),
        notes=("A bare cast drinks its first coat: have some more at hand.",) if name == "sealer" else ())


def _hours(said: Said, place: str) -> list[Figure]:
    """How long all the coats take to dry, one after the other."""
    found = []
    for name, label, _ in COATS:
        coats, each = said.value(f"{place}.finishing.{name}_coats"), said.value(f"{place}.finishing.{name}_hours")
        if coats is None or each is None:
            return []
        if coats:
            found.append((name, label, coats, each))
    if not found:
        return []
    told, seconds = show.significant, sum(coats * each for *_, coats, each in found)
    return [Figure(
        f"{place}.finishing.hours", "Drying of all coats", seconds / HOUR, "h", show_duration(seconds, said.display),
        formula="coats × drying time of each, added up",
        numbers=" + ".join(f"{told(coats, 8, said.display)} × {told(each / HOUR, 8, said.display)}"
                           for *_, coats, each in found), worked=f"{told(seconds / HOUR, 5, said.display)} h",
        says=f"All the coats take {show_duration(seconds, said.display)} to dry, one after the other",
        constants=tuple(Constant(f"A coat of {name} dries for", show_duration(each, said.display),
                                 sources.PRACTICE if said.is_usual(f"{place}.finishing.{name}_hours") else sources.YOURS)
                        for name, _, _, each in found),
        spread="The label of your tin decides; cold and damp air take longer.")]
