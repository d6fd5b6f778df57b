"""The vessel that is designed: its sides, its line, and what a mold or a well takes of it."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.mesh.model import Level
from brimbook.quantity import show, show_more
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.shape import outline as outlines
from brimbook.shape.designed import SIZES, Designed, DesignError, designed
from brimbook.shape.outline import Outline, OutlineError
from brimbook.shape.shell import Ball, Shell, slabs
from brimbook.steps.print_off import print_off

# Only the first of the list is worked out: a vessel has one design.
PLACE = "design.0"
# The shapes whose wall leans by an angle that is asked.
LEANING = ("round", "oval", "rectangle", "polygon", "path")
AREAS = {"round": "π ÷ 4 × across²", "tapered": "π ÷ 4 × across²", "oval": "π ÷ 4 × across × the other way",
         "rectangle": "across × the other way − (4 − π) × corner²", "polygon": "sides × tan(180° ÷ sides) × (half across)²",
         "bowl": "π × (radius of the ball² − height from its middle²)", "path": "within its corners, each side moved in"}


@dataclass(frozen=True)
class Design:
    """A vessel as designed: its shape, what tells it, its sides, the line above its bottom and below its brim [mm].

    sizes: by their names, as for designed; wall and floor in mm; inside: are the sizes those of the room for wax?
    """

    shape: str
    sizes: dict[str, float | str]
    wall: float
    floor: float
    inside: bool
    body: Designed
    below: float

    @property
    def line(self) -> float:
        """Height of the line above the vessel's bottom [mm]."""
        return self.body.height - self.below

    @property
    def room(self) -> float:
        """The room for wax up to the line [mL]."""
        return self.body.room_to(self.line)


def design_of(said: Said) -> Design | None:
    """The vessel that is designed; none while a size of it is missing or faulty [design].

    said: the record as understood [said].
    """
    if not said.count("design"):
        return None
    shape, inside = said.value(f"{PLACE}.shape"), said.value(f"{PLACE}.sizes")
    names = ("wall_thickness", "floor_thickness", "line", "off")
    values = [said.value(f"{PLACE}.{name}") for name in names]
    sizes = None if shape is None else _sizes(said, shape)
    if None in (shape, inside, sizes, *values):
        return None
    wall, floor, below, _ = values
    try:
        body = designed(shape, sizes, wall, floor, inside == "inside")
    except DesignError as error:
        _fault_once(said, error.name, str(error))
        return None
    except OutlineError as error:
        _fault_once(said, "path", str(error))
        return None
    if body.height - below <= body.room.low:
        deep = show.length(body.height - body.room.low, said.display)
        _fault_once(said, "line", f"So far below the brim there is no room: it is {deep} deep. Type less.")
        return None
    return Design(shape, sizes, wall, floor, inside == "inside", body, below)


def asked_sizes(shape: str) -> tuple[str, ...]:
    """The names of the sizes that tell a shape, in the order they are asked [texts].

    shape: of the design [text].

    >>> asked_sizes("round")
    ('across', 'height', 'lean')
    """
    return (*SIZES[shape], "height", *(("lean",) if shape in LEANING else ()))


def _sizes(said: Said, shape: str) -> dict[str, float | str] | None:
    sizes = {name: said.text(f"{PLACE}.path").strip() or None if name == "path" else said.value(f"{PLACE}.{name}")
             for name in asked_sizes(shape)}
    if None in sizes.values() or said.fault_at(f"{PLACE}.path"):
        return None
    return {**sizes, "sides": int(sizes["sides"])} if "sides" in sizes else sizes


def _fault_once(said: Said, name: str, sentence: str) -> None:
    """A design is worked out for each fill that takes it; its fault is told once."""
    if not said.fault_at(f"{PLACE}.{name}"):
        said.fault(f"{PLACE}.{name}", sentence)


def written(length: float, said: Said) -> str:
    """A length as the record keeps it, in the maker's own unit, more finely than it is shown [text].

    length: how long [mm].
    said: the record as understood [said].
    """
    if said.display.length == "in":
        return f"{round(from_base(length, 'in'), 4):g} in"
    return f"{round(length, 2):g} mm"


def levels(shell: Shell, high: float) -> tuple[Level, ...]:
    """The fill curve of a side, heights above the vessel's bottom [levels].

    shell: outside or room [shell].
    high: up to where [mm].
    """
    found, volume = [], 0.0
    for slab in slabs(shell, high):
        found.append(Level(slab.low, volume, slab.below, slab.below))
        volume += slab.volume * 1000
    last = slabs(shell, high)[-1]
    return (*found, Level(last.high, volume, last.above, last.above))


def put_volume(said: Said, shell: Shell, high: float) -> str:
    """Simpson's rule over a side, with the numbers put in [text].

    said: the record as understood [said].
    shell: outside or room [shell].
    high: up to where [mm].
    """
    def told(value: float) -> str:
        return show.significant(value, 10, said.display)

    parts = [f"({told(each.below)} + 4 × {told(each.middle)} + {told(each.above)}) ÷ 6 × {told(each.high - each.low)}"
             for each in slabs(shell, high)]
    return f"({' + '.join(parts)}) ÷ 1000" if len(parts) > 1 else f"{parts[0]} ÷ 1000"


def area_constant(found: Design) -> Constant:
    """Where the areas of a design come from [constant].

    found: the design [design].
    """
    return Constant("Area of a level section", AREAS[found.shape], sources.GEOMETRY)


def fill_figure(said: Said, place: str) -> tuple[Figure, list[str]] | None:
    """What a fill takes as designed, and what the maker should know of it; none while there is no design [figure and texts].

    said: the record as understood [said].
    place: path of the fill: a mold's takes the cast, a well's the room to the line [text].
    """
    found = design_of(said)
    if found is None:
        return None
    is_well = place.startswith("wells.")
    value, surface = (found.room, found.body.wet(found.line)) if is_well else (found.body.cast, found.body.skin)
    print_is, line, told = print_off(said, f"{PLACE}.off", value, surface), _line_off(said, place, found), show.significant
    plus_minus, uses = math.hypot(*print_is.parts, *(part for part, _ in line)), (f"{PLACE}.room",)
    formula, numbers = "room for wax to the line, as designed", told(value, 8, said.display)
    if not is_well:
        outside, room = found.body.cast + found.body.room_to(found.body.height), found.body.room_to(found.body.height)
        formula, numbers = "outside − room to the brim, as designed", f"{told(outside, 10, said.display)} − {told(room, 10, said.display)}"
        uses = (f"{PLACE}.outside", f"{PLACE}.room_to_brim")
    figure = Figure(
        f"{place}.volume", "Volume", value, "mL", show.volume(value, said.display), formula, numbers, uses=uses,
        worked=f"{told(value, 6, said.display)} mL", plus_minus=plus_minus,
        plus_minus_shown=f"± {show.plus_minus(plus_minus, said.display)} mL",
        constants=print_is.constants,
        spread=f"± with its parts added as squares. From {'; '.join([*print_is.told, *(words for _, words in line)])}.")
    return figure, ["As designed; what is printed and cast differs from it: a weighing with water is surer."]


def _line_off(said: Said, place: str, found: Design) -> list[tuple[float, str]]:
    """The ± of a well's fill line [mL], and how it is told; empty where there is none."""
    error = said.value(f"{place}.line_error") if place.startswith("wells.") else None
    if not error:
        return []
    area = found.body.room.area(found.line)
    return [(area * error / 1000, f"the fill line, {show.length(error, said.display)} over {show_more.area(area, said.display)}: "
                                  f"{show.plus_minus(area * error / 1000, said.display)} mL")]


@dataclass(frozen=True)
class AtLine:
    """The wax of a design from above: its outline, shape, and the sizes that tell it [mm]."""

    outline: Outline
    shape: str
    sizes: tuple[float, ...]


def surface_at_line(said: Said) -> AtLine | None:
    """The wax surface of the design; none while there is no design, or one too small for wicks [surface].

    said: the record as understood [said].
    """
    found = design_of(said)
    if found is None:
        return None
    room, line = found.body.room, found.line
    outline = room.outline(line)
    if min(outlines.size(outline)) < outlines.SMALLEST:
        return None
    if isinstance(room, Ball):
        return AtLine(outline, "round", (outlines.size(outline)[0],))
    return AtLine(outline, room.family.kind, room.family.sizes_at(room.inset(line)))
