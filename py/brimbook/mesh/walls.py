"""The thinnest wall between a room and what lies outside of it, its floor among them."""

import math
from collections.abc import Generator, Sequence
from dataclasses import dataclass

from brimbook.mesh.areas import evenly
from brimbook.mesh.spots import Face, Spot, faces, spots
from brimbook.mesh.triangles import Corner, Progress, Triangles

# No wall is thicker than this share of the largest side.
_LONGEST = 0.5
# A wall is first looked for roughly: from every so manieth spot, to so many faces.
_ROUGH_STEP, _ROUGH_FACES = 16, 2_500
# Then finely for one that is little thicker, or so many times as far if there is none, to so many faces that so many of them are
# near a spot; of a thick wall fewer do, as it can't hide small dents.
_FARTHER = 2
_MOST_FACES, _FEWEST_FACES, _NEAR_FACES = 12_000, 5_000, 150
# Faces are laid out in no more cells than this along the largest side.
_MOST_CELLS = 100
# So many squares as wide as a wall is thick lie in the cells around a spot, on both faces of the wall.
_FACES_AROUND = 18
# A face stands for its neighbors where its plane is met as near to its middle as this share of the area it stands for, squared.
_NEAR = 0.4
# Where faces stood for others, walls this much thicker than the thinnest are looked at again, in so many places, with all
# faces so many thicknesses around, from so many spots.
_LITTLE_THICKER, _PLACES, _AROUND, _CLOSE_SPOTS = 1.2, 3, 1.2, 150
# So many spots of a surface are looked from.
_SPOTS = 700
# The faces of a wall look away from each other: the cosine of the angle between them is below this. Near the brim the
# way from the wall to the rim is no wall, so there it is below the second one.
_AWAY, _AWAY_AT_BRIM = -0.17, -0.8
# An edge is met nearly squarely to its face: the cosine is above this.
_STRAIGHT = 0.7
# Nearer than this share of what is looked for, a spot lies on the face itself.
_TOUCHING = 1e-6
_DOING = "Looking for the thinnest wall"


@dataclass(frozen=True)
class Inside:
    """A room as its walls are looked for: the triangles of its surface, and the height at which it would run over."""

    triangles: Sequence[int]
    brim: float


def thinnest(mesh: Triangles, rooms: Sequence[Inside], sizes: Sequence[float]) -> Generator[Progress, None, tuple[float, float] | None]:
    """The thinnest wall and its height above the bottom; none without a room or a wall [progress, then unit of the file].

    mesh: stands up, faces outward [triangles].
    rooms: all of them [rooms].
    sizes: the area of each triangle [unit of the file²].

    From spots all over the rooms, and all over what is not the room, straight to the nearest face that looks away.
    The distance is true: square to the face that is met.
    """
    owners = bytearray(len(mesh.first))
    for number, room in enumerate(rooms, 1):
        for triangle in room.triangles:
            owners[triangle] = number
    if not rooms or not any(owners):
        return None
    largest = max(map(max, mesh.corners))
    search = _Search(mesh, owners, sizes, [math.inf, *(room.brim for room in rooms)], largest / _MOST_CELLS)
    everything = range(len(mesh.first))
    looked_from = search.spots(everything, len(rooms), _SPOTS)
    yield 0.1, _DOING
    longest = _LONGEST * largest
    rough = yield from search.walls(looked_from[::_ROUGH_STEP], everything, _ROUGH_FACES, longest)
    reach, found, exact = _LITTLE_THICKER * min(map(_thickness, rough), default=longest), [], False
    while not found and reach <= _FARTHER * longest:
        most = max(_FEWEST_FACES, min(_MOST_FACES, int(_NEAR_FACES * math.fsum(sizes) / (_FACES_AROUND * reach * reach))))
        exact = len(everything) <= most
        found = yield from search.walls(looked_from, everything, most, reach, 1.0 if exact else _LITTLE_THICKER)
        reach *= _FARTHER
    if not found:
        return None
    wall = min(found, key=_thickness) if exact else (yield from _looked_again(search, found, len(rooms)))
    return wall.thickness, wall.middle()[2]


def _looked_again(search: "_Search", found: Sequence["_Wall"], rooms: int) -> Generator[Progress, None, "_Wall"]:
    """The thinnest wall from all the faces around the places where it may be, as some faces stood for others."""
    exact, thickest = [], max(map(_thickness, found))
    for wall in _apart(found):
        middle, around = wall.middle(), _AROUND * thickest
        near = [math.dist(corner, middle) < around for corner in search.mesh.corners]
        yield 0.9, _DOING
        local = [number for number, corner in enumerate(search.mesh.first) if near[corner]]
        exact += yield from search.walls(search.spots(local, rooms, _CLOSE_SPOTS), local, len(local), thickest, 1.0)
    return min(exact or found, key=_thickness)


def _apart(walls: Sequence["_Wall"]) -> list["_Wall"]:
    """The thinnest walls, each some way from the others."""
    chosen: list[_Wall] = []
    for wall in sorted(walls, key=_thickness):
        if len(chosen) < _PLACES and all(math.dist(wall.middle(), other.middle()) > wall.thickness for other in chosen):
            chosen.append(wall)
    return chosen


def _thickness(wall: "_Wall") -> float:
    return wall.thickness


@dataclass(frozen=True)
class _Wall:
    """A wall from one of its faces to the other."""

    here: Corner
    there: Corner
    thickness: float

    def middle(self) -> Corner:
        """Half-way through the wall [unit of the file]."""
        return tuple((one + other) / 2 for one, other in zip(self.here, self.there))


@dataclass(frozen=True)
class _Search:
    """What walls are looked for in: whose surface each triangle is, how high each owner's brim is, and how wide cells are at least."""

    mesh: Triangles
    owners: bytearray
    sizes: Sequence[float]
    brims: Sequence[float]
    cell: float

    def spots(self, numbers: Sequence[int], rooms: int, most: int) -> list[Spot]:
        """Spots on each surface [spots].

        numbers: the triangles to spread them over [numbers].
        rooms: how many there are [rooms].
        most: about so many on each surface [spots].
        """
        of: list[list[int]] = [[] for _ in range(rooms + 1)]
        for number in numbers:
            of[self.owners[number]].append(number)
        return [spot for owner, own in enumerate(of) for spot in spots(self.mesh, own, self.sizes, owner, most)]

    def walls(self, looked_from: Sequence[Spot], numbers: Sequence[int], most: int, reach: float,
              thicker: float = _LITTLE_THICKER) -> Generator[Progress, None, list[_Wall]]:
        """The thinnest walls between some spots and some triangles, and such as are little thicker [progress, then walls].

        looked_from: where walls begin [spots].
        numbers: triangles where they may end [numbers].
        most: so many are laid out, of small ones some for all [triangles].
        reach: how thick a wall may be [unit of the file].
        thicker: up to so many times as thick as the thinnest [times].
        """
        chosen = ((number, 0.0) for number in numbers)
        if len(numbers) > most:
            # A large triangle stands for itself.
            chosen = ((number, _NEAR * around if self.sizes[number] < around else 0.0) for number, around in evenly(numbers, self.sizes, most))
        seen, found = (yield from faces(self.mesh, self.owners, chosen, max(reach, self.cell))), []
        for count, spot in enumerate(looked_from):
            if count % 100 == 0:
                yield 0.1 + 0.8 * count / len(looked_from), _DOING
            wall = self._wall(spot, seen.near(*spot.place, reach), reach)
            if wall is not None:
                found.append(wall)
                reach = min(reach, thicker * wall.thickness)
        return [wall for wall in found if wall.thickness <= reach]

    def _wall(self, spot: Spot, near: Sequence[Face], reach: float) -> _Wall | None:
        found, owner = None, spot.owner
        (x, y, z), (right, back, up) = spot.place, spot.way
        for face in near:
            # Most faces look the wrong way or lie too far: they are passed over before anything else is worked out.
            if face.owner != owner and right * face.x + back * face.y + up * face.z < _AWAY:
                way = face.offset - face.x * x - face.y * y - face.z * z
                if _TOUCHING * reach < way < reach:
                    a, b, c = face.middle
                    beside = (x - a) * (x - a) + (y - b) * (y - b) + (z - c) * (z - c) - way * way
                    if beside <= face.around or beside <= (face.radius + math.sqrt(reach * reach - way * way)) ** 2:
                        met = _met(spot, face, way, reach, self.brims[owner or face.owner])
                        if met is not None:
                            reach = math.dist(met, spot.place)
                            found = _Wall(spot.place, met, reach)
        return found


def _met(spot: Spot, face: Face, way: float, reach: float, brim: float) -> Corner | None:
    """Where the way from a spot through the wall meets a face, if that is nearer than reach; its plane is met after that way."""
    x, y, z = spot.place
    met = x + way * face.x, y + way * face.y, z + way * face.z
    if face.holds(met):
        away = spot.way[0] * face.x + spot.way[1] * face.y + spot.way[2] * face.z
        return met if away < _AWAY_AT_BRIM or max(z, met[2]) < brim - way else None
    return _met_at_edge(spot, face, face.edge(met), reach, brim)


def _met_at_edge(spot: Spot, face: Face, met: Corner | None, reach: float, brim: float) -> Corner | None:
    """The same where a face's edge is nearest, as it is where a wall is bent toward the spot; near the brim that is no wall."""
    if met is None:
        return None
    far = math.dist(met, spot.place)
    to = tuple(there - here for there, here in zip(met, spot.place))
    straight = to[0] * face.x + to[1] * face.y + to[2] * face.z > _STRAIGHT * far
    ahead = sum(value * step for value, step in zip(spot.way, to)) < _AWAY * far
    return met if far < reach and straight and ahead and max(spot.place[2], met[2]) < brim - far else None
