"""A fill measured by its file: its volume with the ±, and the sizes that the file tells, each with its working."""

import math

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.fill import readings
from brimbook.mesh.model import Draft, Level, Polygon
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.shape import outline as outlines
from brimbook.shape.flatten import signed_area
from brimbook.shape.outline import OutlineError
from brimbook.steps.file_outline import outline_of, sides_of
from brimbook.steps.model_file import Modeled, has_line
from brimbook.steps.print_off import print_off

_TRIANGLES = Constant("Formula", "signed volumes of the triangles, by the divergence theorem", sources.GEOMETRY)
_AREAS = Constant("Formula", "areas of the triangles", sources.GEOMETRY)


def from_file(said: Said, place: str, found: Modeled) -> tuple[float, list[Figure]]:
    """The ± of a fill's volume and all that its file tells of it, the volume first [mL and figures].

    said: the record as understood [said].
    place: path of the fill [text].
    found: the model of the fill [model].
    """
    plus_minus, told, constants = _plus_minus(said, place, found)
    at = f"{place}.file"
    figures = [_volume(said, place, found, plus_minus, told, constants), *_rooms(said, at, found)]
    if has_line(said, place, found.file):
        figures += _line(said, place, found)
    figures += [*_sizes(said, at, found), *_walls(said, at, found)] if place == found.file else []
    return plus_minus, figures


def _plus_minus(said: Said, place: str, found: Modeled) -> tuple[float, str, tuple[Constant, ...]]:
    """The ± of a volume [mL], how it is told, and what it takes from outside the record."""
    is_open = has_line(said, place, found.file)
    print_is = print_off(said, f"{place}.file.off", found.volume, wetted(found, _typed_outline(said, place)) if is_open else found.model.surface)
    parts, told = [*print_is.parts], [*print_is.told]
    error = said.value(f"{place}.line_error") or 0.0
    if is_open and error:
        parts.append(found.area * error / 1000)
        told.append(f"the fill line, {show.length(error, said.display)} over {show_more.area(found.area, said.display)}: "
                    f"{show.plus_minus(parts[-1], said.display)} mL")
    return readings.combine(*parts), f"± with its parts added as squares. From {'; '.join(told)}.", print_is.constants


def _typed_outline(said: Said, place: str) -> Polygon:
    """The outline of the wax as a link brings it in place of the sections; empty where there is none."""
    at = place.replace(".fill", ".outline")
    if not place.startswith("wells.") or said.value(f"{at}.shape") != "path":
        return ()
    try:
        return outlines.path(said.text(f"{at}.path").strip()).points
    except OutlineError:
        return ()


def wetted(found: Modeled, outline: Polygon = ()) -> float:
    """The surface that what is filled touches below its line, its top apart [mm²].

    found: the model of a fill [model].
    outline: what is known of it where there are no sections; without one it is taken as round [mm].

    To the brim as the file tells it; below the brim such a share of that as the sections around it tell.
    """
    whole, to_line = [found.model.rooms[room].surface for room in found.rooms], _around_sections(found, outline, found.line)
    if not whole or not all(whole):
        return to_line
    return math.fsum(whole) * to_line / _around_sections(found, outline, found.levels[-1].height)


def _around_sections(found: Modeled, outline: Polygon, line: float) -> float:
    """The surface touched below a height, by how long around the sections are."""
    around = [(section.height, math.fsum(map(_around, sides_of(section, found.rooms))), whole) for section in found.model.sections
              if (whole := outline_of(section, found.rooms)[1]) > 0] or (
        [(line, _around(outline), signed_area(list(outline)))] if outline else [])
    total = [found.levels[0].above]
    for low, high in zip(found.levels, found.levels[1:]):
        if low.height >= line:
            break
        share = min(1.0, (line - low.height) / (high.height - low.height))
        total += [_lateral(around, low, high) * share, abs(high.above - high.below) if high.height < line else 0.0]
    return math.fsum(total)


def _lateral(around: list[tuple[float, float, float]], low: Level, high: Level) -> float:
    """The walls between two levels: as long around as the nearest section of so large an area, as high as they lean."""
    area = (low.above + high.below) / 2
    middle = (low.height + high.height) / 2
    _, edge, within = min(around, key=lambda each: abs(each[0] - middle), default=(0.0, 2 * math.sqrt(math.pi * area), area))
    edge *= math.sqrt(area / within)
    return math.hypot(edge * (high.height - low.height), high.below - low.above)


def _around(outline: Polygon) -> float:
    return math.fsum(math.dist(one, other) for one, other in zip(outline, (*outline[1:], outline[0])))


def _volume(said: Said, place: str, found: Modeled, plus_minus: float, told: str, constants: tuple[Constant, ...]) -> Figure:
    formula = "area of the room's level sections, added up from its floor to the line" if found.rooms else (
        "volume between each triangle and one point, added up with its sign")
    return Figure(
        f"{place}.volume", "Volume", found.volume, "mL", show.volume(found.volume, said.display), formula=f"{formula}, ÷ 1000",
        numbers=_cubed(said, found, found.volume * 1000), worked=f"{show.significant(found.volume, 6, said.display)} mL",
        plus_minus=plus_minus, plus_minus_shown=f"± {show.plus_minus(plus_minus, said.display)} mL", spread=told,
        constants=(_TRIANGLES, *constants, *_unit(said, found)))


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
        formula="brim − floor − line below the brim", numbers=" − ".join(show.significant(each, 6, said.display) for each in (brim, floor, below)),
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
    in_file = show.significant(value / found.factor, 7, said.display)
    return Figure(key, label, value, "mm", show.length(value, said.display), formula=formula,
                  numbers=in_file if found.factor == 1 else f"{in_file} × {_factor(said, found)}",
                  worked=f"{show.significant(value, 5, said.display)} mm", constants=_unit(said, found))


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
