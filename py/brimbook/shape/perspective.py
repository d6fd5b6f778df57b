"""From a photo to the plane that was photographed, by four corners of a known rectangle."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from brimbook.shape.flatten import turn
from brimbook.shape.path_data import OutlineError, Point

# Corners that turn by less than this are in a row [widths of the photo, squared].
_EVEN = 1e-4
# How much larger one way than the other a plane may look, and how much nearer one corner than another: taken aslant.
_ASLANT, _NEARER = 3.0, 3.0
# How far a common phone's lens is from its picture, in longer sides of that picture: from memory. It only decides which way
# around a sheet lies, where right and wrong differ twofold.
_LENS = 0.8
_SQUARE = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))


@dataclass(frozen=True)
class Plane:
    """Nine numbers, the last 1: a place (x, y) goes to ((a x + b y + c) ÷ w, (d x + e y + f) ÷ w), w = g x + h y + 1."""

    numbers: tuple[float, ...]

    def depth(self, point: Point) -> float:
        """The divisor w at a place: 0 at the horizon [–].

        point: in the photo [widths of the photo].
        """
        return self.numbers[6] * point[0] + self.numbers[7] * point[1] + 1

    def at(self, point: Point) -> Point:
        """Where a place lies on the plane [mm].

        point: in the photo, on the near side of the horizon [widths of the photo].
        """
        a, b, c, d, e, f = self.numbers[:6]
        (x, y), w = point, self.depth(point)
        return (a * x + b * y + c) / w, (d * x + e * y + f) / w

    def slopes(self, point: Point) -> tuple[float, float, float, float]:
        """How fast the place on the plane changes: across by x, across by y, up by x, up by y [mm for each width].

        point: in the photo [widths of the photo].
        """
        a, b, _, d, e, _, g, h, _ = self.numbers
        (across, up), w = self.at(point), self.depth(point)
        return (a - g * across) / w, (b - h * across) / w, (d - g * up) / w, (e - h * up) / w


def solved(rows: Sequence[Sequence[float]]) -> list[float] | None:
    """The unknowns of as many linear equations; none where these don't tell them [numbers].

    rows: the factors of the unknowns, then what they come to [numbers].

    By elimination, each time with the largest factor there is.

    >>> solved([(2.0, 1.0, 5.0), (1.0, -1.0, 1.0)])
    [2.0, 1.0]
    """
    left, count = [list(row) for row in rows], len(rows)
    for place in range(count):
        largest = max(range(place, count), key=lambda row: abs(left[row][place]))
        left[place], left[largest] = left[largest], left[place]
        pivot = left[place]
        if abs(pivot[place]) < 1e-12:
            return None
        for row in left[:place] + left[place + 1:]:
            share = row[place] / pivot[place]
            if share:
                row[:] = [each - share * lead for each, lead in zip(row, pivot)]
    return [row[count] / row[place] for place, row in enumerate(left)]


def plane_of(seen: Sequence[Point], true: Sequence[Point]) -> Plane | None:
    """The plane through four places that are known in both; none where three of them are in a row [plane].

    seen: in the photo [widths of the photo].
    true: the same four on the plane, in the same order [mm].

    >>> plane = plane_of([(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)], [(0.0, 0.0), (80.0, 0.0), (80.0, 60.0), (0.0, 60.0)])
    >>> plane.at((0.5, 0.5))
    (40.0, 30.0)
    """
    rows = []
    for (x, y), (across, up) in zip(seen, true):
        rows += [(x, y, 1.0, 0.0, 0.0, 0.0, -across * x, -across * y, across), (0.0, 0.0, 0.0, x, y, 1.0, -up * x, -up * y, up)]
    numbers = solved(rows)
    return Plane((*numbers, 1.0)) if numbers is not None else None


def around(corners: Sequence[Point]) -> tuple[Point, ...]:
    """Four corners in order, counterclockwise, the first two those of the side that runs to the right [points].

    corners: in any order, y upward [widths of the photo].

    Raises OutlineError where one lies between the others, or three in a row.

    >>> around([(0.9, 0.9), (0.1, 0.1), (0.1, 0.8), (0.8, 0.1)])
    ((0.1, 0.1), (0.8, 0.1), (0.9, 0.9), (0.1, 0.8))
    """
    for order in ((0, 1, 2, 3), (0, 1, 3, 2), (0, 2, 1, 3)):
        quad = [corners[place] for place in order]
        turns = [turn(quad[place - 2], quad[place - 1], quad[place]) for place in range(4)]
        if min(turns) > _EVEN or max(turns) < -_EVEN:
            quad = quad if turns[0] > 0 else quad[::-1]
            first = max(range(4), key=lambda place: _rightward(quad[place], quad[(place + 1) % 4]))
            return tuple(quad[first:] + quad[:first])
    raise OutlineError("These are not the four corners of a sheet: one lies between the others, or in a row with them.")


def _rightward(one: Point, other: Point) -> float:
    across, up = other[0] - one[0], other[1] - one[1]
    return round(across / math.hypot(across, up), 9)


def sheet_plane(corners: Sequence[Point], longer: float, shorter: float, ratio: float, is_other_way: bool) -> tuple[Plane, bool]:
    """The plane of a sheet, and whether its longer side runs to the right [plane, and yes or no].

    corners: as around gives them, y upward, the photo's top at 0 [widths of the photo].
    longer: side of the sheet [mm].
    shorter: side of the sheet [mm].
    ratio: how high the photo is for its width [–].
    is_other_way: does it lie the other way around than it looks [yes or no]?

    Raises OutlineError where the sheet was photographed too much from the side.
    """
    is_wide = looks_wide(corners, ratio) != is_other_way
    wide, high = (longer, shorter) if is_wide else (shorter, longer)
    plane = plane_of(corners, [(wide * x, high * y) for x, y in _SQUARE])
    depths = [plane.depth(corner) for corner in corners] if plane is not None else [0.0]
    middle = tuple(math.fsum(corner[axis] for corner in corners) / 4 for axis in (0, 1))
    if min(depths) <= 0 or max(depths) > _NEARER * min(depths) or _stretch(plane.slopes(middle)) > _ASLANT:
        raise OutlineError("This photo looks at the sheet too much from the side. Take it from above.")
    return plane, is_wide


def looks_wide(corners: Sequence[Point], ratio: float) -> bool:
    """Does a sheet look longer to the right than upward, through a common lens whose middle is that of the photo [yes or no]?

    corners: as around gives them [widths of the photo].
    ratio: how high the photo is for its width [–].

    >>> looks_wide([(0.2, -0.5), (0.7, -0.5), (0.7, -0.2), (0.2, -0.2)], 0.75)
    True
    """
    lens = _LENS * max(1.0, ratio)
    seen = plane_of(_SQUARE, [(x - 0.5, y + ratio / 2) for x, y in corners])
    if seen is None:
        return True
    a, b, _, d, e, _, g, h, _ = seen.numbers
    return (a * a + d * d) / lens**2 + g * g >= (b * b + e * e) / lens**2 + h * h


def _stretch(slopes: tuple[float, float, float, float]) -> float:
    """How much longer what is seen becomes one way than the other."""
    a, b, d, e = slopes
    area = abs(a * e - b * d)
    if area == 0:
        return math.inf
    half = (a * a + b * b + d * d + e * e) / (2 * area)
    return half + math.sqrt(max(0.0, half * half - 1))
