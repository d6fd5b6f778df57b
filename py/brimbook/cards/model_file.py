"""A fill that is measured by a file: what is asked, the file to choose, its drawings, and its sections as a table."""

from collections.abc import Sequence
from typing import Any

from brimbook.cards.asking import ask
from brimbook.draw.chart import Axis, Line, Series, chart, nice_ticks
from brimbook.draw.filled_cut import gaps_below, solid_below
from brimbook.draw.model_section import Cut, level, stacked
from brimbook.mesh.curve import area_at, volume_at
from brimbook.mesh.model import Section
from brimbook.quantity import show, show_more
from brimbook.quantity.show import Display
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.shape.outline import Point
from brimbook.steps.file_outline import outline_of, section_near
from brimbook.steps.model_file import Modeled, file_of, has_line, is_outdated, is_unit_sure, modeled, rooms_of_casts

ACCEPT = ".stl,.3mf,.obj"
_ROWS, _POINTS = 5, 24
# A section narrower than this is the tip of something [mm].
_TIP = 1.0


def file_asked(said: Said, fill: str, way: dict[str, Any]) -> dict[str, Any]:
    """What is asked of a fill that is measured by a file, and the buttons [fields].

    said: the record as understood [said].
    fill: path of the fill [text].
    way: the question of how it is measured [field].
    """
    own = said.value(f"{fill}.way") == "file"
    names = [*(["holds", *(["unit"] if _in_doubt(said, fill) else [])] if own else []), *_room(said, fill), *_line(said, fill)]
    small = [*(name for name in ("unit", "up", "scale") if own and name not in names), "off",
             "section", *(["name"] if own and said.text(f"{fill}.file.reading").strip() else [])]
    rows = max(said.count(f"{fill}.readings"), 1)
    water = [ask(said, f"{fill}.readings.{row}.water", f"Water, to compare{f', reading {row + 1}' if rows > 1 else ''}") for row in range(rows)]
    return {"fields": [*(ask(said, f"{fill}.file.{name}") for name in names), way],
            "more": [*(ask(said, f"{fill}.file.{name}") for name in small), *water,
                     *(ask(said, f"{fill}.{name}") for name in ("temperature", "readability", *(["line_error"] if _line(said, fill) else [])))],
            "actions": (), "picks": (_pick(said, fill),) if own else ()}


def _in_doubt(said: Said, fill: str) -> bool:
    return bool(said.text(f"{fill}.file.reading").strip()) and not is_unit_sure(said, fill)


def _line(said: Said, fill: str) -> list[str]:
    return ["line"] if has_line(said, fill, file_of(said, fill) or fill) else []


def _room(said: Said, fill: str) -> list[str]:
    """Where a file shows several rooms, or one was typed."""
    found = modeled(said, fill)
    count = len(rooms_of_casts(said)) if said.value(f"{fill}.way") == "cast_file" else len(found.model.rooms) if found and found.rooms else 0
    several = found is not None and count > 1
    return ["room"] if several or said.typed(f"{fill}.file.room") else []


def _pick(said: Said, fill: str) -> dict[str, Any]:
    read, name = bool(said.text(f"{fill}.file.reading").strip()), said.text(f"{fill}.file.name").strip()
    again = read and is_outdated(said, fill)
    label = "Choose another file" if read and not again else f"Choose {name} again" if again and name else "Choose its file"
    return {"label": label, "reading": "model", "place": fill, "accept": ACCEPT, "keep": True, "again": again, "name": name if read else "",
            "says": said.fault_at(f"{fill}.file.reading") or (f"Read from {name}." if name and read and not again else "")}


def file_waiting(said: Said, fill: str) -> str:
    """What to do while a file tells no volume [text].

    said: the record as understood [said].
    fill: path of the fill [text].
    """
    file = file_of(said, fill)
    if modeled(said, fill) is not None:
        return "Mend the entry that is marked." if said.is_marked_below(fill) else ""
    if not file:
        return _no_piece(said)
    if not said.text(f"{file}.file.reading").strip():
        return "Choose the STL, 3MF or OBJ file." if file == fill else "Choose the file in the card Mold."
    if said.fault_at(f"{file}.file.reading"):
        return said.fault_at(f"{file}.file.reading")
    if is_outdated(said, file):
        return "Choose the file again: it is to stand another way now."
    if said.is_marked_below(fill) or said.is_marked_below(f"{file}.file"):
        return "Mend the entry that is marked."
    return "The file shows no such room that is open upward. Turn it another way up, save a mold of several parts as one solid, or measure this with water."


def _no_piece(said: Said) -> str:
    if said.value("casts.0.cavity.way") == "file" and said.value("casts.0.cavity.file.holds") == "mold":
        return "The file in the card Mold shows the mold, not the piece. Choose the file of the piece here, or measure this otherwise."
    return "No cast is measured by the file of its piece yet: choose one in the card Mold."


def file_table(said: Said, fill: str) -> dict[str, Any] | None:
    """Outside, inside and wall at some heights, where the sections are known [table].

    said: the record as understood [said].
    fill: path of the fill [text].
    """
    found = modeled(said, fill)
    if found is None or not found.model.sections:
        return None
    every = [section for section in found.model.sections if _across(section) >= _TIP] or found.model.sections
    count = min(_ROWS, len(every))
    sections = [every[round(row * (len(every) - 1) / max(count - 1, 1))] for row in range(count)]
    rows = [_row(section, found) for section in reversed(sections)]
    hollow = any(inside is not None for *_, inside, _ in rows)
    unit = said.display.length_word
    names = ("Height", "Outside", "Inside", "Wall") if hollow else ("Height", "Across")
    several = " Of several rooms the widest." if len(_rooms_shown(found)) > 1 else ""
    return {"columns": [f"{name}, {unit}" for name in names],
            "rows": [{"cells": [_rounded(each, said.display) for each in row[:len(names)]], "chosen": False, "sets": {}} for row in rows],
            "says": f"Across, left to right, at some heights above the bottom.{' The wall is the thinner one, left or right.' if hollow else ''}{several}"}


def _rounded(length: float | None, display: Display) -> str:
    """In whole mm or tenths of an inch, without its unit: a table of four columns is narrow on a phone."""
    if length is None:
        return "–"
    return show.number(from_base(length, "in"), 1, display) if display.length == "in" else show.number(length, 0, display)


def _row(section: Section, found: Modeled) -> tuple[float | None, ...]:
    """Height, outside, inside and wall; none where there is no such thing [mm]."""
    outer = [_reach(polygon) for polygon in section.solid]
    rooms = [_reach(section.rooms[room]) for room in _rooms_shown(found) if section.rooms[room:] and section.rooms[room]]
    if not rooms:
        return section.height, _across(section), None, None
    left, right = max(rooms, key=lambda each: each[1] - each[0])
    walls = [gap for one, other in outer for gap in (left - one, other - right) if one < left and right < other]
    return section.height, _across(section), right - left, min(walls, default=None)


def _rooms_shown(found: Modeled) -> Sequence[int]:
    return found.rooms or range(len(found.model.rooms))


def _across(section: Section) -> float:
    left, right = _reach([point for polygon in section.solid for point in polygon])
    return right - left


def _reach(points: Sequence[Point]) -> tuple[float, float]:
    across = [x for x, _ in points] or [0.0]
    return min(across), max(across)


def cut_of(said: Said, fill: str) -> Cut | None:
    """The upright cut of a fill's file, filled to its line; none where it isn't known [cut].

    said: the record as understood [said].
    fill: path of the fill [text].
    """
    found = modeled(said, fill)
    if found is None or not found.model.cut:
        return None
    solid = found.model.cut
    if found.rooms:
        return Cut(solid, _in_rooms(found), found.line, "vessel-wall" if found.holds != "mold" else "ghost")
    return Cut(solid, solid_below(solid, found.line), found.line, "ghost") if has_line(said, fill, found.file) else Cut(solid)


def _in_rooms(found: Modeled) -> tuple[tuple[Point, ...], ...]:
    """What of the cut the rooms hold below the line."""
    parts = []
    for room in found.rooms:
        outlines = [section.rooms[room] for section in found.model.sections if section.rooms[room:] and section.rooms[room]]
        levels = found.model.rooms[room].levels
        if outlines and levels[0].height < found.line:
            reach = _reach([point for outline in outlines for point in outline])
            parts += gaps_below(found.model.cut, levels[0].height, min(found.line, levels[-1].height), reach)
    return tuple(parts)


def file_drawing(said: Said, fill: str, first: str) -> str:
    """The section, below it the fill curve, and the level section that was asked for [SVG].

    said: the record as understood [said].
    fill: path of the fill [text].
    first: the upright section [SVG].
    """
    found = modeled(said, fill)
    if found is None:
        return first
    curve = [_curve(found, said.display)] if has_line(said, fill, found.file) else []
    return stacked([first, *curve, *_level(said, fill, found)])


def _curve(found: Modeled, display: Display) -> str:
    """Volume against height above the floor, with the line."""
    unit = display.length_word
    points = [(from_base(height, unit), volume) for height, volume in fill_curve(found, _POINTS)]
    x_ticks, y_ticks = nice_ticks(0, points[-1][0], 5), nice_ticks(0, points[-1][1], 4)
    at = from_base(found.line - found.levels[0].height, unit)
    return chart([Series(points), Series([(at, found.volume)], "mark")],
                 Axis(f"{unit} above the floor", [(tick, show.trimmed(tick, 2, display)) for tick in x_ticks]),
                 Axis("mL", [(tick, show.trimmed(tick, 1, display)) for tick in y_ticks]),
                 lines=[Line(at, "line", upright=True)])


def fill_curve(found: Modeled, count: int) -> list[tuple[float, float]]:
    """The volume at even heights from the floor to the brim [mm and mL].

    found: the model of a fill [model].
    count: steps [count].
    """
    floor, brim = found.levels[0].height, found.levels[-1].height
    return [(step / count * (brim - floor), volume_at(found.levels, floor + step / count * (brim - floor)) / 1000) for step in range(count + 1)]


def _level(said: Said, fill: str, found: Modeled) -> list[str]:
    height = said.value(f"{fill}.file.section")
    section = section_near(found, height) if height is not None else None
    if section is None:
        return []
    filled = tuple(section.rooms[room] for room in found.rooms if section.rooms[room:] and section.rooms[room])
    outline = outline_of(section, found.rooms)[0]
    size = show_more.size([max(each) - min(each) for each in zip(*outline)], said.display)
    told = [f"at {show.length(section.height, said.display)}", size, show_more.area(area_at(found.levels, section.height), said.display)]
    return [level(section.solid, filled, told)]


def file_words(said: Said, fill: str) -> str:
    """What the fill curve shows, as words; empty where none is drawn [text].

    said: the record as understood [said].
    fill: path of the fill [text].
    """
    found = modeled(said, fill)
    if found is None or not has_line(said, fill, found.file):
        return ""
    told = ", ".join(f"{show.length(height, said.display)} {show.volume(volume, said.display)}" for height, volume in fill_curve(found, 8))
    return f" Fill curve, height above the floor and volume: {told}."
