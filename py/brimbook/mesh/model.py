"""What a file's mesh tells of a vessel, as it stands: sizes, the solid, the rooms that it encloses, its sections."""

from dataclasses import dataclass

from brimbook.shape.outline import Point

Polygon = tuple[Point, ...]

# Ways for a model to stand: the axis of the file that points up.
UPS = ("+z", "-z", "+y", "-y", "+x", "-x")


@dataclass(frozen=True)
class Level:
    """A height above the model's bottom, what lies below it, and how large the section is just below and just above."""

    height: float
    volume: float
    below: float
    above: float


@dataclass(frozen=True)
class Room:
    """A room that a model encloses, from its floor to where it would run over.

    levels: the room's own, the first its floor with a volume of 0, the last where it would run over. surface: area of what
    is touched by what fills it so far, its own top apart; 0 where that isn't known.
    """

    levels: tuple[Level, ...]
    surface: float = 0.0


@dataclass(frozen=True)
class Section:
    """A level cut: the model's outlines, holes among them, and each room's outline, in the order of the rooms.

    A room that doesn't come so high or so low has an empty outline.
    """

    height: float
    solid: tuple[Polygon, ...]
    rooms: tuple[Polygon, ...]


@dataclass(frozen=True)
class Gap:
    """A hole in the surface: where its middle lies, from the left, from the front, above the bottom, and how far around it is."""

    left: float
    front: float
    height: float
    around: float


@dataclass(frozen=True)
class Draft:
    """How walls lean: the least angle that nearly all of a wall has, and the shares of it that stand upright or hang over.

    least: in degrees, below 0 where a part hangs over; upright: leaning by less than 1 degree.
    """

    least: float
    upright: float
    overhanging: float


@dataclass(frozen=True)
class Model:
    """All lengths in the unit of the file; places from the left and the front of its bounding box, heights above its bottom.

    up: the axis of the file that points up. size: left to right, front to back, height. surface: area of the whole surface.
    solid: levels of the solid itself, from bottom to top. rooms: enclosed and open upward, the largest first.
    hollows: closed hollows inside, with no way in. gaps: the largest first; open_edges: how many edges belong to one
    triangle only. turned: triangles that face the wrong way, or edges of more than two. crossing: do bodies overlap?
    thinnest: the thinnest wall between a room and the outside, and its height; none without a room.
    outer, inner: drafts of the outside and of the rooms. cut: the solid cut upright from left to right through the middle
    of the largest room, else of the model: polygons of places from the left and heights, holes among them.
    """

    up: str
    unit: str
    size: tuple[float, float, float]
    triangles: int
    bodies: int
    hollows: int
    surface: float
    solid: tuple[Level, ...]
    rooms: tuple[Room, ...]
    open_edges: int
    gaps: tuple[Gap, ...]
    turned: int
    crossing: bool
    thinnest: tuple[float, float] | None
    outer: Draft | None
    inner: Draft | None
    sections: tuple[Section, ...]
    cut: tuple[Polygon, ...]
    notes: tuple[str, ...] = ()
