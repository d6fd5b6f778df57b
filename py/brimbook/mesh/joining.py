"""Where a flat cut goes through triangles: closed loops, joined from edge to edge of the mesh."""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from brimbook.mesh.model import Polygon
from brimbook.mesh.triangles import Triangles
from brimbook.shape.outline import Point

# Where the surface has holes, ways that end are joined if what is missing is no more than this share of what is there.
_MISSING = 0.15
# So many ways that end are joined at most.
_MOST_ENDS = 64


@dataclass(frozen=True)
class Loop:
    """A closed way around a section, what is solid on its left; triangles: the number of the one that each side lies in."""

    points: Polygon
    triangles: tuple[int, ...]


@dataclass(frozen=True)
class Plane:
    """A flat cut: each corner's height above a side of the model, and how high the cut is.

    below: corners lower than this are below the cut, so that one just at the cut can be either.
    across, up: which two of a corner's places make the drawing.
    """

    heights: Sequence[float]
    height: float
    below: float
    across: int
    up: int


def loops(mesh: Triangles, crossing: Iterable[int], plane: Plane) -> tuple[list[Loop], int]:
    """Closed loops, and how many ways were left out because the surface has holes [unit of the file, count].

    mesh: closed or not [mesh].
    crossing: numbers of the triangles that the cut goes through [numbers].
    plane: the cut [plane].

    Two triangles meet at an edge of the mesh, so loops close whatever the rounding of their points.
    """
    follows, doubled = _sides(mesh, crossing, plane)
    places = _Places(mesh, plane)
    closed, open_ways = _ways(follows, doubled)
    whole, left_out = _joined([(places.of(edges), triangles) for edges, triangles in open_ways])
    whole += [(places.of(edges), triangles) for edges, triangles in closed]
    return [loop for points, triangles in whole if (loop := _loop(points, triangles)) is not None], left_out


def _sides(mesh: Triangles, crossing: Iterable[int], plane: Plane) -> tuple[dict[int, tuple[int, int]], dict[int, list[tuple[int, int]]]]:
    """For each edge where a side begins the edge where it ends and its triangle; further ones of edges with more than two triangles.

    An edge's number is made of its corner below and its corner above. What is solid lies on the left: seen from outside
    the way goes to the right, from where the triangle's edges come down through the cut to where they go up.
    """
    first, second, third, heights, below = mesh.first, mesh.second, mesh.third, plane.heights, plane.below
    count, follows, doubled = len(mesh.corners), {}, {}
    for number in crossing:
        a, b, c = first[number], second[number], third[number]
        if heights[a] < below:
            if heights[b] < below:
                begin, end = a * count + c, b * count + c
            elif heights[c] < below:
                begin, end = c * count + b, a * count + b
            else:
                begin, end = a * count + c, a * count + b
        elif heights[b] < below:
            begin, end = (b * count + a, c * count + a) if heights[c] < below else (b * count + a, b * count + c)
        else:
            begin, end = c * count + b, c * count + a
        if begin in follows:
            doubled.setdefault(begin, []).append((end, number))
        else:
            follows[begin] = (end, number)
    return follows, doubled


def _ways(follows: dict[int, tuple[int, int]], doubled: dict[int, list[tuple[int, int]]]) -> tuple[list, list]:
    """Edges and triangles along each closed way, and along each that ends."""
    reached = {end for end, _ in follows.values()} | {end for more in doubled.values() for end, _ in more}
    # Ways that end are gone along from their beginning. An edge that several begin at stands here once for each.
    begins = [edge for edge in follows if edge not in reached]
    starts = [*begins, *follows, *(edge for edge, more in doubled.items() for _ in more)]
    closed, open_ways = [], []
    for start in starts:
        if start not in follows:
            continue
        edges, triangles, here = [start], [], start
        while here in follows:
            here, number = _step(follows, doubled, here)
            triangles.append(number)
            if here == start:
                break
            edges.append(here)
        (closed if here == start else open_ways).append((edges, triangles))
    return closed, open_ways


def _step(follows: dict[int, tuple[int, int]], doubled: dict[int, list[tuple[int, int]]], here: int) -> tuple[int, int]:
    """Goes along one side, which is then used up."""
    step = follows.pop(here)
    if here in doubled:
        follows[here] = doubled[here].pop()
        if not doubled[here]:
            del doubled[here]
    return step


class _Places:
    """Where the cut meets the edges of the mesh."""

    def __init__(self, mesh: Triangles, plane: Plane):
        self._corners, self._plane = mesh.corners, plane

    def of(self, edges: list[int]) -> list[Point]:
        """Where the cut meets some edges [unit of the file].

        edges: their numbers [numbers].
        """
        return [self._place(*divmod(edge, len(self._corners))) for edge in edges]

    def _place(self, low: int, high: int) -> Point:
        plane, one, two = self._plane, self._corners[low], self._corners[high]
        bottom, top = plane.heights[low], plane.heights[high]
        if top <= plane.height:
            return two[plane.across], two[plane.up]
        share = (plane.height - bottom) / (top - bottom)
        return (one[plane.across] + share * (two[plane.across] - one[plane.across]), one[plane.up] + share * (two[plane.up] - one[plane.up]))


def _joined(ways: list[tuple[list[Point], list[int]]]) -> tuple[list[tuple[list[Point], list[int]]], int]:
    """Ways that end, joined straight to the nearest beginning where little is missing; and how many are left out."""
    ways = sorted(ways, key=lambda way: len(way[1]), reverse=True)
    ends = ways[:_MOST_ENDS]
    after = _nearest(ends)
    whole, left_out, used = [], len(ways) - len(ends), set()
    for start in range(len(ends)):
        chain, here = [], start
        while here not in used:
            used.add(here)
            chain.append(here)
            here = after[here]
        if not chain:
            continue
        points = [point for number in chain for point in ends[number][0]]
        triangles = [triangle for number in chain for triangle in (*ends[number][1], ends[number][1][-1])]
        missing = math.fsum(math.dist(ends[number][0][-1], ends[after[number]][0][0]) for number in chain)
        around = math.fsum(map(math.dist, points, (*points[1:], points[0])))
        if missing <= _MISSING * around:
            whole.append((points, triangles))
        else:
            left_out += len(chain)
    return whole, left_out


def _nearest(ends: list[tuple[list[Point], list[int]]]) -> list[int]:
    """Which way each one goes on with: the nearest pairs first, each beginning used once."""
    pairs = sorted((math.dist(one[0][-1], two[0][0]), number, other) for number, one in enumerate(ends) for other, two in enumerate(ends))
    after, taken = [-1] * len(ends), set()
    for _, number, other in pairs:
        if after[number] < 0 and other not in taken:
            after[number] = other
            taken.add(other)
    return after


def _loop(points: list[Point], triangles: list[int]) -> Loop | None:
    """A loop without sides of no length; none if it is no more than a line."""
    kept = [number for number, point in enumerate(points) if point != points[(number + 1) % len(points)]]
    if len(kept) < 3:
        return None
    return Loop(tuple(points[number] for number in kept), tuple(triangles[number] for number in kept))
