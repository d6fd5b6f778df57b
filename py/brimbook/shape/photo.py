"""The rim of a vessel out of a photo: from marks on it, beside a sheet of paper or a ruler, to an outline at true size."""

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from brimbook.shape.curves import enclosed, smooth_through, straight_through
from brimbook.shape.outline import LARGEST, SMALLEST, Outline, closed
from brimbook.shape.path_data import Curve, OutlineError, Point
from brimbook.shape.perspective import Plane, around, sheet_plane

# A rim has at least and at most so many marks; two that are nearer than this are one tap made twice [widths of the photo].
FEWEST, MOST, _SAME = 3, 90, 1e-3
# The least way between the ends of a ruler [widths of the photo].
_SHORTEST = 0.05
# By so much a mark is moved to see what it does [thousandths of the photo's width].
_STEP = 0.01


@dataclass(frozen=True)
class Sheet:
    """A sheet of paper in the photo: its sides [mm], and whether it lies the other way around than it looks."""

    longer: float
    shorter: float
    is_other_way: bool = False


@dataclass(frozen=True)
class Ruler:
    """Two places that are so far apart [mm], in a photo taken straight from above."""

    distance: float


@dataclass(frozen=True)
class Photo:
    """What was marked on a photo. Marks are in thousandths of its width, from its left and top edge.

    known: four corners of a sheet in any order, or two ends of a ruler; rim: in order; ratio: how high the photo is for its width;
    nearer: the share by which all on the rim looks too large, for it is nearer to the camera than the sheet; is_round: curved
    from mark to mark, else straight.
    """

    by: Sheet | Ruler
    known: tuple[Point, ...]
    rim: tuple[Point, ...]
    ratio: float = 0.75
    nearer: float = 0.0
    is_round: bool = True


@dataclass(frozen=True)
class Traced:
    """The rim at true size, its area [mm²] and size [mm], how many mm a width of the photo is there, and how the sheet lies."""

    outline: Outline
    area: float
    scale: float
    is_wide: bool


@lru_cache(maxsize=16)
def traced(photo: Photo) -> Traced:
    """The rim of a photo at true size, as it lies in the photo [traced].

    photo: with its marks [photo].

    Raises OutlineError, a sentence, when the marks can't be a sheet or a ruler and a rim.

    >>> square = Photo(Ruler(100.0), ((0.0, 0.0), (500.0, 0.0)), ((100.0, 100.0), (500.0, 100.0), (500.0, 500.0), (100.0, 500.0)),
    ...                is_round=False)
    >>> round(traced(square).area, 6), traced(square).scale
    (6400.0, 200.0)
    """
    rim = _checked([_upward(mark) for mark in photo.rim])
    plane, is_wide = _plane(photo)
    if min(plane.depth(point) for point in rim) <= 0:
        raise OutlineError("A mark of the rim lies beyond the sheet's horizon. Mark the rim on the same table as the sheet.")
    pieces = _pieces(photo, plane, rim)
    across, up = ([point[axis] for curve in pieces for point in curve[:1]] for axis in (0, 1))
    size = max(max(across) - min(across), max(up) - min(up))
    if not SMALLEST <= size <= LARGEST:
        raise OutlineError(f"By these marks the rim is {size:.3g} mm across. Check the sheet or the distance, and the marks.")
    try:
        outline = closed(pieces)
    except OutlineError:
        raise OutlineError("The rim crosses itself or holds no area. Mark its points in order, all the way around.") from None
    return Traced(outline, abs(enclosed(pieces)), _scale(plane, rim) * (1 - photo.nearer), is_wide)


@lru_cache(maxsize=16)
def area_off(photo: Photo, off: float) -> float:
    """The ± of the area, every mark being off by so much across and down, each by itself [mm²].

    photo: with its marks, from which a rim can be traced [photo].
    off: of one mark, one way [thousandths of the photo's width].

    The root of the sum of squares of what each does to the area.

    >>> square = Photo(Ruler(100.0), ((0.0, 0.0), (500.0, 0.0)), ((100.0, 100.0), (500.0, 100.0), (500.0, 500.0), (100.0, 500.0)),
    ...                is_round=False)
    >>> round(area_off(square, 1.0), 3)
    42.693
    """
    plane, _ = _plane(photo)
    area = _area(photo, plane)
    areas = [_area(photo, _plane(replace(photo, known=moved))[0]) for moved in _moved(photo.known)]
    areas += [_area(replace(photo, rim=moved), plane) for moved in _moved(photo.rim)]
    return off * math.sqrt(math.fsum(((each - area) / _STEP) ** 2 for each in areas))


def _moved(marks: tuple[Point, ...]) -> list[tuple[Point, ...]]:
    return [(*marks[:row], (x + right * _STEP, y + down * _STEP), *marks[row + 1:])
            for row, (x, y) in enumerate(marks) for right, down in ((1, 0), (0, 1))]


def _area(photo: Photo, plane: Plane) -> float:
    return abs(enclosed(_pieces(photo, plane, [_upward(mark) for mark in photo.rim])))


def _upward(mark: Point) -> Point:
    return mark[0] / 1000, 0.0 - mark[1] / 1000


def _checked(rim: list[Point]) -> list[Point]:
    if not FEWEST <= len(rim) <= MOST:
        raise OutlineError(f"A rim takes {FEWEST} to {MOST} marks: 8 to 12 are right for a round one.")
    if any(math.dist(one, other) < _SAME for one, other in zip(rim, [*rim[1:], rim[0]])):
        raise OutlineError("Two marks of the rim are in the same place. Take one away, or move it on.")
    return rim


def _plane(photo: Photo) -> tuple[Plane, bool]:
    known = [_upward(mark) for mark in photo.known]
    if isinstance(photo.by, Sheet):
        return sheet_plane(around(known), photo.by.longer, photo.by.shorter, photo.ratio, photo.by.is_other_way)
    if math.dist(*known) < _SHORTEST:
        raise OutlineError("The two ends are too close together in the photo. Mark a longer way.")
    scale = photo.by.distance / math.dist(*known)
    return Plane((scale, 0.0, 0.0, 0.0, scale, 0.0, 0.0, 0.0, 1.0)), True


def _pieces(photo: Photo, plane: Plane, rim: list[Point]) -> list[Curve]:
    smaller = 1 - photo.nearer
    points = [(smaller * x, smaller * y) for x, y in map(plane.at, rim)]
    return smooth_through(points) if photo.is_round else straight_through(points)


def _scale(plane: Plane, rim: list[Point]) -> float:
    middle = tuple(math.fsum(point[axis] for point in rim) / len(rim) for axis in (0, 1))
    a, b, d, e = plane.slopes(middle)
    return math.sqrt(abs(a * e - b * d))
