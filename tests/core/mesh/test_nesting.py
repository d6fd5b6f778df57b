"""Which loops lie in which."""

from brimbook.mesh.nesting import area, holds, nested


def square(side, x=0.0, y=0.0, hole=False):
    points = ((x, y), (x + side, y), (x + side, y + side), (x, y + side))
    return points[::-1] if hole else points


def test_an_island_in_a_hole_in_an_outline():
    loops = [square(2, 4, 4), square(10), square(6, 2, 2, hole=True), square(5, 20, 0)]
    assert [(each.depth, each.parent, each.is_hole) for each in nested(loops)] == [
        (2, 2, False), (0, None, False), (1, 1, True), (0, None, False)]


def test_a_box_around_is_not_enough():
    """A square in the bend of an L."""
    bend = ((0, 0), (10, 0), (10, 2), (2, 2), (2, 10), (0, 10))
    assert [each.parent for each in nested([bend, square(3, 5, 5)])] == [None, None]


def test_many_loops():
    holes = [square(1, 3 * x + 1, 3 * y + 1, hole=True) for x in range(8) for y in range(8)]
    assert [each.parent for each in nested([square(40), *holes])] == [None] + [0] * 64


def test_a_place_level_with_a_corner_counts_once():
    diamond = ((0, -1), (1, 0), (0, 1), (-1, 0))
    assert holds(diamond, (0.0, 0.0))
    assert not holds(diamond, (-2.0, 0.0))


def test_area_far_from_the_origin():
    assert area(square(1e-3, 1e6, 1e6)) == area(square(1e-3, 1e6, 1e6, hole=True)) * -1
    assert abs(area(square(1.0, 1e6, 1e6)) - 1) < 1e-9


def test_what_is_partly_in_another_is_crossed():
    """A handle that runs into the wall of a cup, a core that touches its wall, and one that stands free."""
    loops = [square(20), square(16, 2, 2, hole=True)]
    assert [nested([*loops, square(*place)])[2].is_crossed for place in ((6, 15, 8), (6, 12, 8), (6, 5, 8), (6, 30, 8), (6, 20, 8))] == [
        True, False, False, False, False]
