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
_AT_ONCE = 10_000
_DOING = "Looking for the thinnest wall"


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on a surface, the way it looks as a unit vector, and whose surface it is."""

    place: Corner
    way: Corner
    owner: int


@dataclass(frozen=True, slots=True)
class Face:
    """A triangle: the way that it looks, how far its plane is from the origin, whose surface it is, and its corners.

    across, along: a place's distance from the first corner in shares of the two sides, as weights of its three coordinates.
    long: the farthest that its other corners are from the first one.
    around: where it stands for its neighbors too, how far around its middle it does, squared; else 0.
    """

    x: float
    y: float
    z: float
    offset: float
    owner: int
    corners: tuple[Corner, Corner, Corner]
    across: Corner
    along: Corner
    long: float
    around: float

    def holds(self, place: Corner) -> bool:
        """Is a place of the plane on the triangle, or where it stands for its neighbors? [yes or no].

        place: from the left, from the front, above the bottom [unit of the file].
        """
        a, b, c = self.corners
        if self.around:
            return sum((3 * value - one - two - three) ** 2 for value, one, two, three in zip(place, a, b, c)) <= 9 * self.around
        x, y, z = place[0] - a[0], place[1] - a[1], place[2] - a[2]
        across = self.across[0] * x + self.across[1] * y + self.across[2] * z
        along = self.along[0] * x + self.along[1] * y + self.along[2] * z
        return across >= -_SLACK and along >= -_SLACK and across + along <= 1 + _SLACK

    def edge(self, place: Corner, reach: float) -> Corner | None:
        """The place on the triangle's edges that is nearest; none where all are out of reach, or it stands for its neighbors [unit of the file].

        place: of its plane [unit of the file].
        reach: how far to look [unit of the file].
        """
        a, b, c = self.corners
        if self.around or math.dist(place, a) > reach + self.long:
            return None
        return min((_on(place, a, b), _on(place, b, c), _on(place, c, a)), key=lambda other: math.dist(place, other))


@dataclass(frozen=True)
class Faces:
    """Faces by the cells that they pass through."""

    side: float
    cells: dict[int, list[Face]] = field(default_factory=dict)

    def near(self, x: float, y: float, z: float, reach: float) -> list[Face]:
        """Faces that may be as near as that, some of them twice [faces].

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
        return found


def faces(mesh: Triangles, owners: Sequence[int], chosen: Iterable[tuple[int, float]], side: float) -> Generator[Progress, None, Faces]:
    """Some faces of a mesh in cells; none where that would take too many cells [progress, then faces].

    mesh: its bounding box begins at 0, 0, 0 [triangles].
    owners: whose surface each triangle of the mesh is [numbers].
    chosen: triangles to lay out, each with the area around its middle for which it stands, 0 for itself only [numbers, areas].
    side: of a cell [unit of the file].
    """
    laid, entries = Faces(side), 0
    for count, (number, around) in enumerate(chosen):
        if count % _AT_ONCE == 0:
            yield 0.1, _DOING
        a, b, c = (mesh.corners[of[number]] for of in (mesh.first, mesh.second, mesh.third))
        face = _face(a, b, c, owners[number], around)
        if face is not None:
            through = _cells(a, b, c, side)
            entries += len(through)
            for cell in through:
                laid.cells.setdefault(cell, []).append(face)
        if entries > _ENTRIES:
            return Faces(side)
    return laid


def _face(a: Corner, b: Corner, c: Corner, owner: int, around: float) -> Face | None:
    u, v = _from(a, b), _from(a, c)
    square = _cross(u, v)
    twice = math.sqrt(_dot(square, square))
    if not twice:
        return None
    x, y, z = (value / twice for value in square)
    return Face(x, y, z, x * a[0] + y * a[1] + z * a[2], owner, (a, b, c), tuple(value / twice for value in _cross(v, (x, y, z))),
                tuple(value / twice for value in _cross((x, y, z), u)), math.sqrt(max(_dot(u, u), _dot(v, v))), around)


def _cells(a: Corner, b: Corner, c: Corner, side: float) -> set[int]:
    """Numbers of the cells that a triangle may pass through."""
    found: set[int] = set()
    waiting = [(a, b, c)]
    while waiting:
        a, b, c = waiting.pop()
        spans = [range(int(min(values) // side), int(max(values) // side) + 1) for values in zip(a, b, c)]
        if len(spans[0]) * len(spans[1]) * len(spans[2]) <= _SPAN:
            found.update((row * _CELLS + line) * _CELLS + column for column in spans[0] for line in spans[1] for row in spans[2])
            continue
        # The longest side is halved.
        _, a, b, c = max((math.dist(b, c), a, b, c), (math.dist(c, a), b, c, a), (math.dist(a, b), c, a, b))
        middle = tuple((one + other) / 2 for one, other in zip(b, c))
        waiting += [(a, b, middle), (a, middle, c)]
    return found


def spots(mesh: Triangles, numbers: Sequence[int], sizes: Sequence[float], owner: int, most: int) -> list[Spot]:
    """Spots spread evenly over some triangles: all corners and more of large ones, some corners of small ones [spots].

    mesh: any triangles [triangles].
    numbers: which of them [numbers].
    sizes: the area of each triangle of the mesh [unit of the file²].
    owner: whose surface they are [number].
    most: about so many spots, and three for each large triangle [spots].
    """
    found, whole = [], math.fsum(map(sizes.__getitem__, numbers))
    for number, stands_for in evenly(numbers, sizes, most):
        a, b, c = (mesh.corners[of[number]] for of in (mesh.first, mesh.second, mesh.third))
        square = _cross(_from(a, b), _from(a, c))
        long = math.sqrt(_dot(square, square))
        if long:
            parts = math.ceil(math.sqrt(most * sizes[number] / whole)) if sizes[number] >= stands_for else 0
            way = square[0] / long, square[1] / long, square[2] / long
            found += [Spot(place, way, owner) for place in _places(a, b, c, parts)]
    return found


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
