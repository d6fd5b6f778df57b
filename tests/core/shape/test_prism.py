"""Flat polygons cut into triangles and given a thickness."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.shape.bars import Bar, Sizes, Slot, shape_of
from brimbook.shape.prism import prism, triangles

STICK = Sizes(18, 2, 15, 0, 2)


def area(points):
    return sum(a * d - b * c for (a, b), (c, d) in zip(points, points[1:] + points[:1])) / 2


def volume(faces):
    """By the divergence theorem: it comes out right only where all faces look outward and none is missing."""
    return sum(a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])
               for a, b, c in faces) / 6


def comb(*slots):
    return shape_of(Bar(0, 0, 0, 200, tuple(Slot(row, along, depth) for row, (along, depth) in enumerate(slots))), STICK)


SHAPES = [((0, 0), (4, 0), (4, 3)), ((0, 0), (4, 0), (4, 3), (0, 3)), ((0, 0), (6, 0), (6, 2), (2, 2), (2, 5), (0, 5)),
          comb(), comb((100, 10)), comb((20, 4), (30, 14), (90, 10), (180, 5)), comb(*((20 + 20 * row, 10) for row in range(8)))]


@pytest.mark.parametrize("points", SHAPES, ids=len)
def test_the_triangles_fill_the_polygon(points):
    cut = [area(tuple(points[corner] for corner in each)) for each in triangles(points)]
    assert len(cut) == len(points) - 2 and min(cut) > 0 and sum(cut) == pytest.approx(area(points))


@pytest.mark.parametrize("points", SHAPES, ids=len)
def test_a_prism_is_closed_and_looks_outward(points):
    faces = prism(points, 2.4)
    edges = [(face[corner], face[(corner + 1) % 3]) for face in faces for corner in range(3)]
    assert len(edges) == len(set(edges)) and {(end, start) for start, end in edges} == set(edges)
    assert volume(faces) == pytest.approx(area(points) * 2.4)


@given(st.lists(st.tuples(st.integers(2, 38), st.floats(3, 14)), unique_by=lambda slot: slot[0], max_size=12))
def test_any_comb_can_be_cut(slots):
    points = comb(*((5.0 * along, depth) for along, depth in slots))
    assert volume(prism(points, 1.0)) == pytest.approx(area(points))
