"""Spots spread over a surface, and its faces laid out in cells, so that those near a spot are found fast."""

import math
from collections.abc import Generator, Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from brimbook.mesh.areas import evenly
from brimbook.mesh.triangles import Corner, Progress, Triangles

# Cells along an axis, at most; a cell's number is made of three of them.
_CELLS = 1024
# A triangle that spans more cells than this is halved before it is laid out.
_SPAN = 300
# Faces that cross one another all over the model would fill all cells.
_ENTRIES = 1_500_000
# A place this much beside a triangle is on its edge, in shares of its sides.
_SLACK = 1e-6
# Of spots at one place those that look about the same way are one: so many steps of each coordinate of the way.
_WAYS = 2
_AT_ONCE = 10_000
_DOING = "Looking for the thinnest wall"


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on a surface, the way it looks as a unit vector, and whose surface it is."""

    place: Corner
    way: Corner
    owner: int


@dataclass(slots=True, eq=False)
class Face:
    """A triangle: the way that it looks, how far its plane is from the origin, whose surface it is, and its corners.

    middle, radius: of a ball around it. around: where it stands for its neighbors too, how far around its middle it does,
    squared; else 0.
    """

    x: float
    y: float
    z: float
    offset: float
    owner: int
    corners: tuple[Corner, Corner, Corner]
    middle: Corner
    radius: float
    around: float

    def holds(self, place: Corner) -> bool:
        """Is a place of the plane on the triangle, or where it stands for its neighbors? [yes or no].

        place: from the left, from the front, above the bottom [unit of the file].
        """
        if self.around and sum((value - other) ** 2 for value, other in zip(place, self.middle)) <= self.around:
            return True
        a, b, c = self.corners
        way, u, v = (self.x, self.y, self.z), _from(a, b), _from(a, c)
        beside, twice = _from(a, place), _dot(_cross(u, v), way)
        across, along = _dot(_cross(beside, v), way) / twice, _dot(_cross(u, beside), way) / twice
        return across >= -_SLACK and along >= -_SLACK and across + along <= 1 + _SLACK

    def edge(self, place: Corner) -> Corner | None:
        """The place on the triangle's edges that is nearest; none where it stands for its neighbors [unit of the file].

        place: of its plane [unit of the file].
        """
        if self.around:
            return None
        a, b, c = self.corners
        return min((_on(place, a, b), _on(place, b, c), _on(place, c, a)), key=lambda other: math.dist(place, other))


@dataclass
class Faces:
    """Faces by the cells that they pass through; count: how many there are, entries: how often in cells."""

    side: float
    cells: dict[int, list[Face]] = field(default_factory=dict)
    count: int = 0
    entries: int = 0

    def near(self, x: float, y: float, z: float, reach: float) -> list[Face]:
        """Faces that may be as near as that, few of them twice [faces].

        x: from the left [unit of the file].
        y: from the front [unit of the file].
        z: above the bottom [unit of the file].
        reach: how far to look [unit of the file].
        """
        side, cells, found = self.side, self.cells, []
        rows, lines, columns = (range(max(0, int((value - reach) // side)), int((value + reach) // side) + 1) for value in (z, y, x))
        for row in rows:
            for line in lines:
                start = (row * _CELLS + line) * _CELLS
                for column in columns:
                    if start + column in cells:
                        found += cells[start + column]
        return list(dict.fromkeys(found)) if self.entries > 2 * self.count else found


def faces(mesh: Triangles, owners: Sequence[int], chosen: Iterable[tuple[int, float]], side: float) -> Generator[Progress, None, Faces]:
    """Some faces of a mesh in cells; none where that would take too many cells [progress, then faces].

    mesh: its bounding box begins at 0, 0, 0 [triangles].
    owners: whose surface each triangle of the mesh is [numbers].
    chosen: triangles to lay out, each with the area around its middle for which it stands, 0 for itself only [numbers, areas].
    side: of a cell [unit of the file].
    """
    laid = Faces(side)
    for count, (number, around) in enumerate(chosen):
        if count % _AT_ONCE == 0:
            yield 0.1, _DOING
        a, b, c = (mesh.corners[of[number]] for of in (mesh.first, mesh.second, mesh.third))
        face = _face(a, b, c, owners[number], around)
        if face is not None:
            through = _cells(a, b, c, side)
            laid.count, laid.entries = laid.count + 1, laid.entries + len(through)
            for cell in through:
                laid.cells.setdefault(cell, []).append(face)
        if laid.entries > _ENTRIES:
            return Faces(side)
    return laid


def _face(a: Corner, b: Corner, c: Corner, owner: int, around: float) -> Face | None:
    (p, q, r), (d, e, f), (g, h, i) = a, b, c
    x = (e - q) * (i - r) - (f - r) * (h - q)
    y = (f - r) * (g - p) - (d - p) * (i - r)
    z = (d - p) * (h - q) - (e - q) * (g - p)
    twice = math.sqrt(x * x + y * y + z * z)
    if not twice:
        return None
    x, y, z, middle = x / twice, y / twice, z / twice, ((p + d + g) / 3, (q + e + h) / 3, (r + f + i) / 3)
    return Face(x, y, z, x * p + y * q + z * r, owner, (a, b, c), middle, max(math.dist(middle, a), math.dist(middle, b), math.dist(middle, c)), around)


def _cells(a: Corner, b: Corner, c: Corner, side: float) -> Iterable[int]:
    """Numbers of the cells that a triangle may pass through."""
    (p, q, r), (d, e, f), (g, h, i) = a, b, c
    left, front, low = int(min(p, d, g) // side), int(min(q, e, h) // side), int(min(r, f, i) // side)
    right, back, high = int(max(p, d, g) // side), int(max(q, e, h) // side), int(max(r, f, i) // side)
    if left == right and front == back and low == high:
        return ((low * _CELLS + front) * _CELLS + left,)
    if (right - left + 1) * (back - front + 1) * (high - low + 1) <= _SPAN:
        return [(row * _CELLS + line) * _CELLS + column for row in range(low, high + 1) for line in range(front, back + 1)
                for column in range(left, right + 1)]
    # The longest side is halved.
    _, a, b, c = max((math.dist(b, c), a, b, c), (math.dist(c, a), b, c, a), (math.dist(a, b), c, a, b))
    middle = tuple((one + other) / 2 for one, other in zip(b, c))
    return {*_cells(a, b, middle, side), *_cells(a, middle, c, side)}


def spots(mesh: Triangles, numbers: Sequence[int], sizes: Sequence[float], owner: int, most: int) -> list[Spot]:
    """Spots spread evenly over some triangles: all corners and more of large ones, some corners of small ones, none twice [spots].

    mesh: any triangles [triangles].
    numbers: which of them [numbers].
    sizes: the area of each triangle of the mesh [unit of the file²].
    owner: whose surface they are [number].
    most: about so many spots, and three for each large triangle [spots].
    """
    found, whole = {}, math.fsum(map(sizes.__getitem__, numbers))
    for number, stands_for in evenly(numbers, sizes, most):
        a, b, c = (mesh.corners[of[number]] for of in (mesh.first, mesh.second, mesh.third))
        square = _cross(_from(a, b), _from(a, c))
        long = math.sqrt(_dot(square, square))
        if long:
            parts = math.ceil(math.sqrt(most * sizes[number] / whole)) if sizes[number] >= stands_for else 0
            way = square[0] / long, square[1] / long, square[2] / long
            about = tuple(round(_WAYS * value) for value in way)
            for place in _places(a, b, c, parts):
                found.setdefault((place, about), Spot(place, way, owner))
    return list(found.values())


def _places(a: Corner, b: Corner, c: Corner, parts: int) -> Iterator[Corner]:
    if not parts:
        yield a
        return
    for one in range(parts + 1):
        for other in range(parts + 1 - one):
            yield tuple(x + one / parts * (y - x) + other / parts * (z - x) for x, y, z in zip(a, b, c))


def _on(place: Corner, a: Corner, b: Corner) -> Corner:
    """The place on an edge that is nearest to another place."""
    side = _from(a, b)
    share = max(0.0, min(1.0, _dot(_from(a, place), side) / (_dot(side, side) or 1.0)))
    return a[0] + share * side[0], a[1] + share * side[1], a[2] + share * side[2]


def _from(a: Corner, b: Corner) -> Corner:
    return b[0] - a[0], b[1] - a[1], b[2] - a[2]


def _cross(u: Corner, v: Corner) -> Corner:
    return u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]


def _dot(u: Corner, v: Corner) -> float:
    return u[0] * v[0] + u[1] * v[1] + u[2] * v[2]
