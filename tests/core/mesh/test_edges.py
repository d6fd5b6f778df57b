"""Open edges, gaps and triangles that face the wrong way, in meshes spoiled in known ways."""

import math
from dataclasses import replace

import pytest
from measured_models import flipped, measured, run, without
from models import box, cup, cylinder, joined, made, moved, sphere, triples

from brimbook.mesh.edges import check
from brimbook.mesh.mend import mended
from brimbook.mesh.stand import stood
from brimbook.mesh.volumes import volume
from brimbook.mesh.weld import welded


def checked(mesh):
    return run(check(stood(mesh, "+z")))


@pytest.mark.parametrize("mesh", [box(), cup(), sphere()], ids=["box", "cup", "sphere"])
def test_a_closed_mesh_has_nothing_to_tell(mesh):
    found = checked(mesh)
    assert (found.open_edges, found.gaps, found.turned, found.crowded) == (0, (), 0, 0)


def test_a_cylinder_without_its_top():
    """48 triangles around the middle of the top are missing."""
    found = checked(without(cylinder(40, 70), set(range(96 + 48, 96 + 96))))
    assert found.open_edges == 48
    [gap] = found.gaps
    assert (gap.left, gap.front, gap.height) == pytest.approx((40, 40, 70))
    assert gap.around == pytest.approx(96 * 40 * math.sin(math.pi / 48))
    assert found.turned == 0


def test_the_largest_gaps_come_first_and_8_are_told():
    some = list(range(0, 384, 30))
    found = checked(without(cup(), set(some)))
    assert found.open_edges == 3 * len(some)
    assert len(found.gaps) == 8
    assert [gap.around for gap in found.gaps] == sorted((gap.around for gap in found.gaps), reverse=True)
    assert len(found.loops) == len(some)


def test_gaps_that_meet_in_a_corner_are_two():
    found = checked(without(box(), {0, 3}))
    assert found.open_edges == 6
    assert sorted(map(len, found.loops)) in ([3, 3], [6])


@pytest.mark.parametrize("some", [{0}, {3, 100, 200}, set(range(50, 90))], ids=["one", "three", "forty"])
def test_triangles_that_face_the_wrong_way_are_found(some):
    found = checked(flipped(cup(), some))
    assert set(found.astray) == some
    assert (found.turned, found.open_edges, found.crowded) == (len(some), 0, 0)


def test_they_are_turned_back():
    mesh = stood(flipped(cup(), {3, 100, 200}), "+z")
    back = mended(mesh, run(check(mesh)))
    assert checked(back).turned == 0
    assert volume(back) == pytest.approx(volume(cup()), rel=1e-12)
    assert back.notes == ("3 triangles faced the wrong way; they were turned.",)


def test_each_body_has_its_own_right_side():
    mesh = joined(cup(), moved(flipped(box(), {2}), 300))
    assert checked(mesh).turned == 1


def test_missing_and_flipped_at_once():
    found = checked(flipped(without(cup(), {5, 6, 7}), {3, 100}))
    assert (found.open_edges, found.turned) == (5, 2)


@pytest.mark.parametrize("mesh", [without(cylinder(40, 70), set(range(48))), without(cup(), {1, 80, 200, 201}),
                                  without(box(), {4})], ids=["without a bottom", "four holes", "box"])
def test_flat_gaps_are_closed_for_measuring(mesh):
    mesh = stood(mesh, "+z")
    closed = mended(mesh, run(check(mesh)))
    assert checked(closed).open_edges == 0
    whole = {48 * 3: cylinder(40, 70), 380: cup(), 11: box()}[len(mesh.first)]
    assert volume(closed) == pytest.approx(volume(whole), rel=1e-9)


def test_a_sheet_inside_makes_edges_crowded():
    """A wall across a box: on three of its sides there is an edge of the box, on the fourth there is none."""
    found = checked(made(box().corners, [*triples(box()), (0, 1, 7), (0, 7, 6)]))
    assert (found.crowded, found.open_edges) == (3, 1)


def test_bodies_that_touch_along_an_edge_are_in_order():
    found = run(check(stood(run(welded(joined(box(), box(at=(60.0, 40.0, 0.0))))), "+z")))
    assert (found.open_edges, found.turned, found.crowded) == (0, 0, 0)


def test_a_band_with_a_twist_has_no_right_side():
    """A ring of 5 squares whose last is joined the other way around."""
    corners = [(math.cos(step), math.sin(step), up) for step in range(5) for up in (0.0, 1.0)]
    squares = [(2 * step, 2 * step + 2, 2 * step + 3, 2 * step + 1) for step in range(4)] + [(8, 1, 0, 9)]
    found = checked(made(corners, [triple for a, b, c, d in squares for triple in ((a, b, c), (a, c, d))]))
    assert found.crowded == 1
    assert found.open_edges == 10


def test_a_checked_mesh_is_not_checked_again():
    mesh = run(welded(box()))
    assert mesh.closed
    assert run(check(replace(mesh, closed=False))) == run(check(mesh))


def test_all_through():
    found, bodies = measured(without(flipped(cup(), {9}), {200}))
    assert (found.open_edges, found.turned, bodies.count) == (3, 1, 1)
    assert bodies.volumes[0] == pytest.approx(volume(cup()), rel=1e-9)
