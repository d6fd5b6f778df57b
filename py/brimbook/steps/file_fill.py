"""A fill measured by its file: its volume with the ±, and the sizes that the file tells, each with its working."""

import math

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.fill import readings
from brimbook.mesh.model import Draft, Level, Polygon
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.shape.flatten import signed_area
from brimbook.steps.model_file import Modeled, has_line, outline_of

_TRIANGLES = Constant("Formula", "signed volumes of the triangles, by the divergence theorem", sources.GEOMETRY)
_AREAS = Constant("Formula", "areas of the triangles", sources.GEOMETRY)
_OFF = Constant("How far a printed surface is off", "0.2 mm", sources.PRACTICE)


def from_file(said: Said, place: str, found: Modeled) -> tuple[float, list[Figure]]:
    """The ± of a fill's volume and all that its file tells of it, the volume first [mL and figures].

    said: the record as understood [said].
    place: path of the fill [text].
    found: the model of the fill [model].
    """
    parts, told = _parts(said, place, found)
    plus_minus = readings.combine(*parts)
    at = f"{place}.file"
    figures = [_volume(said, place, found, plus_minus, told), *_rooms(said, at, found)]
    if has_line(said, place, found.file):
        figures += _line(said, place, found)
    figures += [*_sizes(said, at, found), *_walls(said, at, found)] if place == found.file else []
    return plus_minus, figures


def _parts(said: Said, place: str, found: Modeled) -> tuple[list[float], str]:
    """The parts of the ± [mL], and how they are told."""
    off = said.value(f"{place}.file.off") or 0.0
    surface = wetted(found) if found.rooms else found.model.surface
    parts = [surface * off / 1000]
    told = [f"the surface, off by {show.length(off, said.display)} over {show_more.area(surface, said.display)}: "
            f"{show.plus_minus(parts[0], said.display)} mL"]
    error = said.value(f"{place}.line_error") or 0.0
    if has_line(said, place, found.file) and error:
        parts.append(found.area * error / 1000)
        told.append(f"the fill line, {show.length(error, said.display)} over {show_more.area(found.area, said.display)}: "
                    f"{show.plus_minus(parts[1], said.display)} mL")
    return parts, f"± with its parts added as squares. From {'; '.join(told)}."


def wetted(found: Modeled) -> float:
    """The surface that what is filled touches, its top apart, from the sections around its rooms [mm²].

    found: the model of a fill [model].
    """
    around = [(section.height, _around(outline), signed_area(list(outline))) for section in found.model.sections
              if (outline := outline_of(section, found.rooms)[0])]
    total = [found.levels[0].above]
    for low, high in zip(found.levels, found.levels[1:]):
        if low.height >= found.line:
            break
        share = min(1.0, (found.line - low.height) / (high.height - low.height))
        total += [_lateral(around, low, high) * share, abs(high.above - high.below) if high.height < found.line else 0.0]
    return math.fsum(total)


def _lateral(around: list[tuple[float, float, float]], low: Level, high: Level) -> float:
    """The wall between two levels: as long around as the nearest section of so large an area, as high as it leans."""
    area = (low.above + high.below) / 2
    middle = (low.height + high.height) / 2
    _, edge, within = min(around, key=lambda each: abs(each[0] - middle), default=(0.0, 2 * math.sqrt(math.pi * area), area))
    edge *= math.sqrt(area / within)
    return math.hypot(edge * (high.height - low.height), high.below - low.above)


def _around(outline: Polygon) -> float:
    return math.fsum(math.dist(one, other) for one, other in zip(outline, (*outline[1:], outline[0])))


def _volume(said: Said, place: str, found: Modeled, plus_minus: float, told: str) -> Figure:
    formula = "area of the room's level sections, added up from its floor to the line" if found.rooms else (
        "volume between each triangle and one point, added up with its sign")
    return Figure(
        f"{place}.volume", "Volume", found.volume, "mL", show.volume(found.volume, said.display), formula=f"{formula}, ÷ 1000",
        numbers=_cubed(said, found, found.volume * 1000), worked=f"{show.significant(found.volume, 6, said.display)} mL",
        plus_minus=plus_minus, plus_minus_shown=f"± {show.plus_minus(plus_minus, said.display)} mL", spread=told,
        constants=(_TRIANGLES, *(() if said.typed(f"{place}.file.off") else (_OFF,)), *_unit(said, found)))


def _cubed(said: Said, found: Modeled, value: float) -> str:
    """A volume in mm³ as the file has it, times its unit, for mL."""
    in_file = show.significant(value / found.factor**3, 8, said.display)
    return f"{in_file} ÷ 1000" if found.factor == 1 else f"{in_file} × {_factor(said, found)}³ ÷ 1000"


def _factor(said: Said, found: Modeled) -> str:
    return show.significant(found.factor, 8, said.display)


def _unit(said: Said, found: Modeled) -> tuple[Constant, ...]:
    """What one unit of the file comes to, where that isn't 1 mm."""
    if found.factor == 1:
        return ()
    return (Constant("One unit of the file, printed", f"{_factor(said, found)} mm", sources.YOURS),)


def _rooms(said: Said, at: str, found: Modeled) -> list[Figure]:
    """The rooms of a piece that is cast, each to its brim."""
    if found.rooms or not at.startswith("casts."):
        return []
    several, figures = len(found.model.rooms) > 1, []
    for number, room in enumerate(found.model.rooms, 1):
        value = room.levels[-1].volume / 1000
        figures.append(Figure(
            f"{at}.room_{number}", f"Room {number} for wax, to its brim" if several else "Room for wax, to its brim", value, "mL",
            show.volume(value, said.display), formula="area of the room's level sections, added up from its floor to its brim, ÷ 1000",
            numbers=_cubed(said, found, value * 1000), worked=f"{show.significant(value, 6, said.display)} mL", constants=(_TRIANGLES,)))
    return figures


def _line(said: Said, place: str, found: Modeled) -> list[Figure]:
    """How high the line stands above the floor, and how large the surface is there."""
    brim, floor, below = found.levels[-1].height, found.levels[0].height, said.value(f"{place}.file.line")
    value = found.line - floor
    height = Figure(
        f"{place}.file.depth", "Line above the floor", value, "mm", show.length(value, said.display),
        formula="brim − floor − line below the brim", numbers=" − ".join(show.significant(each, 7, said.display) for each in (brim, floor, below)),
        worked=f"{show.significant(value, 6, said.display)} mm")
    return [height, _area(said, f"{place}.file.line_area", "Surface at the line", found.area, "area of the room's section at the line")]


def _area(said: Said, key: str, label: str, value: float, formula: str) -> Figure:
    return Figure(key, label, value / 100, "cm²", show_more.area(value, said.display), formula=f"{formula}, ÷ 100",
                  numbers=f"{show.significant(value, 8, said.display)} ÷ 100", constants=(_AREAS,),
                  worked=f"{show.significant(value / 100, 6, said.display)} cm²")


def _sizes(said: Said, at: str, found: Modeled) -> list[Figure]:
    """The size of what the file shows, and its surface."""
    names = (("wide", "Left to right"), ("deep", "Front to back"), ("high", "Height"))
    sizes = [_length(said, f"{at}.{name}", label, size, "size in the file, as it is printed", found)
             for (name, label), size in zip(names, found.model.size)]
    return [*sizes, _area(said, f"{at}.surface", "Whole surface", found.model.surface, "areas of the triangles added up")]


def _length(said: Said, key: str, label: str, value: float, formula: str, found: Modeled) -> Figure:
    in_file = show.significant(value / found.factor, 8, said.display)
    return Figure(key, label, value, "mm", show.length(value, said.display), formula=formula,
                  numbers=in_file if found.factor == 1 else f"{in_file} × {_factor(said, found)}",
                  worked=f"{show.significant(value, 6, said.display)} mm", constants=_unit(said, found))


def _walls(said: Said, at: str, found: Modeled) -> list[Figure]:
    """The thinnest wall, the floor, and how the walls lean."""
    model, figures = found.model, []
    if model.thinnest is not None:
        figures.append(_length(said, f"{at}.wall", "Thinnest wall", model.thinnest[0],
                               "least distance from a room's surface to the outside", found))
    if model.rooms and found.holds != "wax":
        floor = min(room.levels[0].height for room in model.rooms)
        figures.append(_length(said, f"{at}.floor", "Floor under the room", floor, "height of the room's floor above the bottom", found))
    for name, label, draft in (("outer_draft", "Draft outside", model.outer), ("inner_draft", "Draft of the room", model.inner)):
        if draft is not None:
            figures.append(_draft(said, f"{at}.{name}", label, draft))
    return figures


def _draft(said: Said, key: str, label: str, draft: Draft) -> Figure:
    told = show.number(draft.least, 1, said.display)
    shares = [f"{show.percent(share, said.display, 0)} {word}" for share, word in (
        (draft.upright, "stands upright"), (draft.overhanging, "hangs over")) if share >= 0.005]
    return Figure(key, label, draft.least, "°", f"{told}°", formula="least lean from upright that 99 % of the wall has, below 0 where it "
                  "hangs over", numbers=told, worked=f"{told}°", says=f"{label}: {told}°{''.join(f', {share}' for share in shares)}")
