"""Faces with more than three corners, taken apart into triangles."""

import math
from collections.abc import Sequence

from brimbook.mesh.triangles import Corner, ModelError

_Flat = tuple[float, float]
_Triple = tuple[int, int, int]
# Looking for ears takes time with the square of the corners; a face of a thousand corners takes about half a million at most.
MOST_LOOKS = 1_000_000


def apart(face: Sequence[int], corners: Sequence[Corner]) -> tuple[list[_Triple], int]:
    """Triangles that fill a face, and how many looks at corners it took [numbers of corners, looks].

    face: numbers of its corners, one after the other around it [numbers].
    corners: all corners [unit of the file].

    >>> apart((1, 2, 3, 0), [(0, 0, 0), (4, 0, 0), (1, 1, 0), (0, 4, 0)])[0]
    [(2, 3, 0), (2, 0, 1)]
    """
    flat = _flat([corners[number] for number in face])
    count = len(face)
    for begin in range(count if count == 4 else 1):
        around = [*range(begin, count), *range(begin)]
        if all(_turn(flat[begin], flat[one], flat[other]) > 0 for one, other in zip(around[1:], around[2:])):
            return [(face[begin], face[one], face[other]) for one, other in zip(around[1:], around[2:])], 0
    return _ears(face, flat)


def check_looks(looks: int) -> None:
    """Refuses faces that would take too long to take apart [nothing].

    looks: how many looks at corners it took so far [looks].
    """
    if looks > MOST_LOOKS:
        raise ModelError("This model has faces with very many corners. Save it as triangles: choose “triangulate” or STL when saving.")


def _flat(corners: Sequence[Corner]) -> list[_Flat]:
    """The corners seen along the axis that the face looks along most, so that they go around counterclockwise."""
    following = [*corners[1:], corners[0]]
    facing = [math.fsum((one[a] - other[a]) * (one[b] + other[b]) for one, other in zip(corners, following))
              for a, b in ((1, 2), (2, 0), (0, 1))]
    along = max(range(3), key=lambda axis: abs(facing[axis]))
    one, other = (along + 1) % 3, (along + 2) % 3
    if facing[along] < 0:
        one, other = other, one
    return [(corner[one], corner[other]) for corner in corners]


def _turn(a: _Flat, b: _Flat, c: _Flat) -> float:
    """Twice the area of a triangle, above 0 where it goes around counterclockwise."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _ears(face: Sequence[int], flat: Sequence[_Flat]) -> tuple[list[_Triple], int]:
    """Cuts off corners one by one, such that no other corner lies in what is cut off."""
    left, triangles, looks = list(range(len(face))), [], 0
    # Only corners where the face is not bulging can lie in an ear.
    inward = [number for number in left if _turn(flat[number - 1], flat[number], flat[(number + 1) % len(flat)]) <= 0]
    place, misses = 1, 0
    while len(left) > 3 and misses <= len(left):
        before, here, after = left[place - 1], left[place % len(left)], left[(place + 1) % len(left)]
        found, looked = _ear(flat, inward, before, here, after)
        looks += looked
        check_looks(looks)
        if found:
            triangles.append((face[before], face[here], face[after]))
            left.remove(here)
            inward = [number for number in inward if number != here]
            misses = 0
        else:
            misses += 1
        place = (place + 1) % len(left)
    # A face that crosses itself has no ears left: its rest is filled as a fan, as most programs do.
    return triangles + [(face[left[0]], face[one], face[other]) for one, other in zip(left[1:], left[2:])], looks


def _ear(flat: Sequence[_Flat], inward: Sequence[int], before: int, here: int, after: int) -> tuple[bool, int]:
    """Whether a corner can be cut off, and at how many others it took a look."""
    a, b, c = flat[before], flat[here], flat[after]
    if _turn(a, b, c) <= 0:
        return False, 1
    for looks, number in enumerate(inward, 1):
        spot = flat[number]
        if _turn(a, b, spot) >= 0 and _turn(b, c, spot) >= 0 and _turn(c, a, spot) >= 0 and spot not in (a, b, c):
            return False, looks
    return True, len(inward) + 1
