"""The outline of what a file shows filled, at any height: from the nearest section, made as large as it is there."""

import math
from functools import lru_cache

from brimbook.mesh.curve import area_at
from brimbook.mesh.model import Polygon, Section
from brimbook.shape import flatten
from brimbook.shape import outline as outlines
from brimbook.shape.outline import Outline, OutlineError
from brimbook.shape.path_data import Point
from brimbook.steps.model_file import Modeled

# An outline from a file has so many corners at most, so that a link can carry it, told to 0.1 mm.
CORNERS, _DECIMALS = 48, 1


def section_near(found: Modeled, height: float) -> Section | None:
    """The section nearest to a height in which what is filled has an outline [section].

    found: the model of a fill [model].
    height: above the model's bottom [mm].
    """
    outlined = [section for section in found.model.sections if outline_of(section, found.rooms)[0]]
    return min(outlined, key=lambda section: abs(section.height - height), default=None)


def outline_of(section: Section, rooms: tuple[int, ...]) -> tuple[Polygon, float]:
    """The largest outline of what is filled in a section, empty where there is none, and the area of all of it [mm and mm²].

    section: of a model [section].
    rooms: which of the rooms are filled; none where the solid itself is [counts].
    """
    sides = sides_of(section, rooms)
    largest = max(sides, key=_area, default=())
    return (largest if largest and _area(largest) > 0 else ()), math.fsum(map(_area, sides))


@lru_cache(maxsize=64)
def sides_of(section: Section, rooms: tuple[int, ...]) -> tuple[Polygon, ...]:
    """All outlines of what is filled in a section; what stands in it, such as a core, goes clockwise [mm].

    section: of a model [section].
    rooms: which of the rooms are filled; none where the solid itself is [counts].
    """
    if not rooms:
        return section.solid
    around = [section.rooms[room] for room in rooms if section.rooms[room:] and section.rooms[room]]
    # A room's outline is the wall around it: what is solid within it stands in the room.
    cores = [each[::-1] for each in section.solid if _area(each) > 0 and any(_is_within(each[0], room) and _area(each) < _area(room) for room in around)]
    return (*around, *cores)


def _area(polygon: Polygon) -> float:
    return flatten.signed_area(list(polygon))


def _is_within(point: Point, polygon: Polygon) -> bool:
    """Does a line to the right cross the outline an odd number of times?"""
    x, y = point
    crossed = [one[0] + (other[0] - one[0]) * (y - one[1]) / (other[1] - one[1]) for one, other in zip(polygon, (*polygon[1:], polygon[0]))
               if (one[1] > y) != (other[1] > y)]
    return sum(each > x for each in crossed) % 2 == 1


def outline_at(found: Modeled, height: float) -> Outline | None:
    """The outline of what is filled at a height: that of the nearest section, made as large as it is there [outline].

    found: the model of a fill [model].
    height: above the model's bottom [mm].
    """
    text = outline_text(found, height)
    try:
        return outlines.path(text) if text else None
    except OutlineError:
        return None


def outline_text(found: Modeled, height: float) -> str:
    """The corners of such an outline, as a link carries them; empty where no section is known [text].

    found: the model of a fill [model].
    height: above the model's bottom [mm].
    """
    section, area = section_near(found, height), area_at(found.levels, height)
    if section is None or area <= 0:
        return ""
    outline, whole = outline_of(section, found.rooms)
    return _corners(outline, area / whole) if whole > 0 else ""


@lru_cache(maxsize=16)
def _corners(outline: Polygon, larger: float) -> str:
    """The corners of an outline made larger by a share of its area, from its left and front."""
    points = flatten.fewer(list(outline), CORNERS)
    grown = flatten.signed_area(points) / flatten.signed_area(list(outline))
    by = math.sqrt(larger / grown) if grown > 0 else 1.0
    left, front = (min(point[axis] for point in points) for axis in (0, 1))
    return ", ".join(f"{_told(by * (x - left))} {_told(by * (y - front))}" for x, y in points)


def _told(length: float) -> str:
    return f"{length:.{_DECIMALS}f}".removesuffix(".0")
