"""Faces with many corners, filled once by as many triangles as it takes."""

import math
import random

import pytest

from brimbook.mesh.faces import apart, check_looks
from brimbook.mesh.triangles import ModelError


def doubled(corners, numbers):
    """Twice the signed area of a polygon in the plane."""
    spots = [corners[number] for number in numbers]
    return math.fsum(a[0] * b[1] - a[1] * b[0] for a, b in zip(spots, [*spots[1:], spots[0]]))


def star(seed, count):
    """A face whose corners lie in all directions, near and far by chance."""
    chance = random.Random(seed)
    reach = [chance.uniform(1, 10) for _ in range(count)]
    return [(far * math.cos(math.tau * n / count), far * math.sin(math.tau * n / count), 0.0) for n, far in enumerate(reach)]


@pytest.mark.parametrize("seed", range(60))
def test_the_triangles_fill_the_face_and_none_is_turned(seed):
    corners = star(seed, 5 + seed)
    face = list(range(len(corners)))
    triangles, _ = apart(face, corners)
    assert len(triangles) == len(face) - 2
    areas = [doubled(corners, triple) for triple in triangles]
    assert min(areas) > 0
    assert math.fsum(areas) == pytest.approx(doubled(corners, face))


def test_each_rim_edge_belongs_to_one_triangle():
    corners = star(7, 40)
    triangles, _ = apart(range(40), corners)
    edges = [edge for a, b, c in triangles for edge in ((a, b), (b, c), (c, a))]
    assert len(edges) == len(set(edges))
    assert {(n, (n + 1) % 40) for n in range(40)} <= set(edges)
    assert all((b, a) in edges for a, b in edges if b != (a + 1) % 40)


@pytest.mark.parametrize("corners", [
    [(0, 0, 0)] * 6, [(n, 0, 0) for n in range(6)], [(0, 0, 0), (4, 4, 0), (4, 0, 0), (0, 4, 0)],
    [(math.cos(4 * math.pi * n / 5), math.sin(4 * math.pi * n / 5), 0) for n in range(5)]])
def test_a_face_that_is_none_ends_too(corners):
    assert len(apart(range(len(corners)), corners)[0]) == len(corners) - 2


def test_too_many_looks_are_refused():
    check_looks(100_000)
    with pytest.raises(ModelError, match="Save it as triangles"):
        check_looks(10_000_000)
