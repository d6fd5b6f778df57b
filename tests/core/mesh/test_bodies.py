"""Bodies, hollows, bodies inside out, and bodies that overlap."""

import pytest
from measured_models import measured, rotated, run
from models import box, cup, cylinder, joined, made, moved, sphere, triples, turned_over

from brimbook.mesh.bodies import MOST_BODIES, bodies
from brimbook.mesh.edges import check
from brimbook.mesh.triangles import ModelError
from brimbook.mesh.volumes import volume

HOLLOW = turned_over(moved(sphere(8), 30, 20, 25))


def told(mesh):
    """Bodies, hollows, turned ones, do they overlap?"""
    found = measured(mesh)[1]
    return found.count, found.hollows, found.inside_out, found.crossing


@pytest.mark.parametrize(("mesh", "expected"), [
    (box(), (1, 0, 0, False)),
    (turned_over(cup()), (1, 0, 1, False)),
    (joined(box(), moved(box(), 100)), (2, 0, 0, False)),
    (joined(box(), moved(turned_over(cup()), 200)), (2, 0, 1, False)),
    (joined(box(), HOLLOW), (1, 1, 0, False)),
    (turned_over(joined(box(), HOLLOW)), (1, 1, 2, False)),
    (joined(box(), HOLLOW, moved(sphere(3), 30, 20, 25)), (2, 1, 0, False)),
    (joined(box(), HOLLOW, moved(turned_over(sphere(3)), 30, 20, 25)), (2, 1, 1, False)),
    (joined(box(), turned_over(HOLLOW)), (2, 0, 0, True)),
    (joined(box(), box(at=(30.0, 20.0, 25.0))), (2, 0, 0, True)),
    (joined(cup(), moved(cylinder(20, 40), z=20)), (2, 0, 0, False)),
    (joined(box(90, 10, 10), box(10, 90, 10, at=(40.0, -40.0, 2.0))), (2, 0, 0, True)),
    (joined(box(), moved(box(), z=50)), (1, 0, 0, False)),
    (joined(box(), box(20, 20, 20, at=(5.0, 7.0, 50.0))), (2, 0, 0, False)),
], ids=["one", "inside out", "two apart", "one of two inside out", "hollow", "inside out with a hollow", "body in a hollow",
        "inside-out body in a hollow", "body in a body", "overlap", "body in a room", "two bars across", "on the same corners", "on top"])
def test_bodies(mesh, expected):
    assert told(mesh) == expected


@pytest.mark.parametrize("turn", range(6))
def test_no_way_of_lying_changes_that(turn):
    mesh = rotated(joined(box(), HOLLOW, moved(turned_over(cup()), 200)), turn, 0.7 * turn, 0.2)
    assert told(mesh) == (2, 1, 1, False)


def test_volumes_count_hollows_below_0():
    found = measured(joined(box(), HOLLOW))[1]
    assert found.volumes == pytest.approx((120000, volume(HOLLOW)))
    assert volume(found.mesh) == pytest.approx(sum(found.volumes))


def test_each_triangle_has_its_body():
    found = measured(joined(sphere(5), moved(box(), 100)))[1]
    assert list(found.of) == [1] * len(sphere(5).first) + [0] * 12
    assert list(measured(box())[1].of) == [0] * 12


def test_turning_is_told():
    assert measured(turned_over(box()))[1].mesh.notes == ("The drawing was inside out; it was turned.",)
    assert measured(joined(box(), moved(turned_over(cup()), 200)))[1].mesh.notes == ("1 of its bodies was inside out; it was turned.",)


def test_a_turned_mesh_faces_outward_all_over():
    found = measured(joined(box(), moved(turned_over(cup()), 200), HOLLOW))[1]
    assert run(check(found.mesh)).turned == 0
    assert volume(found.mesh) == pytest.approx(120000 + volume(cup()) + volume(HOLLOW))


def test_many_bodies_stay_within_bounds():
    crumbs = [moved(box(1, 1, 1), 3 * (number % 40), 3 * (number // 40)) for number in range(900)]
    assert told(joined(*crumbs)) == (900, 0, 0, False)


def test_nothing_is_no_body():
    found = run(bodies(made([], [])))
    assert (found.count, found.hollows, list(found.of)) == (0, 0, [])


def test_corners_in_any_order_hang_together():
    """Long ways through the numbers: a strip whose corners are numbered back and forth."""
    count = 2000
    order = [number // 2 if number % 2 == 0 else count - 1 - number // 2 for number in range(count)]
    mesh = made([(float(number), float(number % 2), 0.0) for number in range(count)],
                [tuple(order[place:place + 3]) for place in range(count - 2)])
    assert set(run(bodies(mesh)).of) == {0}
    assert len(triples(mesh)) == count - 2


def test_too_many_bodies_are_refused():
    corners, triangles = [], []
    for number in range(MOST_BODIES + 1):
        at, x = len(corners), 2.0 * number
        corners += [(x, 0.0, 0.0), (x + 1, 0.0, 0.0), (x, 1.0, 0.0), (x, 0.0, 1.0)]
        triangles += [(at, at + 2, at + 1), (at, at + 1, at + 3), (at + 1, at + 2, at + 3), (at, at + 3, at + 2)]
    with pytest.raises(ModelError, match="1,001 separate bodies"):
        run(bodies(made(corners, triangles)))
