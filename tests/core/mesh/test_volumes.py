"""Volume, surface and size against formulas of solids."""

import math

import pytest
from measured_models import grown, rotated, torus
from models import box, cup, cylinder, facet_share, lathe, made, moved, sphere, turned_over

from brimbook.mesh.volumes import size, surface, volume

ROOT = math.sqrt(2)
OCTAHEDRON = made([(1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1)],
                  [(0, 2, 4), (2, 1, 4), (1, 3, 4), (3, 0, 4), (2, 0, 5), (1, 2, 5), (3, 1, 5), (0, 3, 5)])


def polygon_lathe(profile, facets=48):
    """What a lathe encloses, exactly: cones between its radii, as large as their facets."""
    whole = sum((high - low) * (one * one + one * other + other * other) / 3
                for (one, low), (other, high) in zip(profile, [*profile[1:], profile[0]]))
    return math.pi * facet_share(facets) * whole


@pytest.mark.parametrize(("mesh", "expected"), [
    (box(60, 40, 50), 120000.0),
    (box(60, 40, 50, at=(4000.0, -7000.0, 9000.0)), 120000.0),
    (cylinder(40, 70), math.pi * 40**2 * 70 * facet_share(48)),
    (lathe([(0, 0), (30, 0), (0, 90)], 24), math.pi * 30**2 * 90 / 3 * facet_share(24)),
    (lathe([(0, 0), (30, 0), (20, 60), (0, 60)], 24), math.pi * 60 * (900 + 600 + 400) / 3 * facet_share(24)),
    # A frustum of a pyramid, 10 and 7 wide and 6 high: 438. Source: worked problem 82152, "A frustum", in a public collection
    # of school problems; second hand.
    (lathe([(0, 0), (10 / ROOT, 0), (7 / ROOT, 6), (0, 6)], 4), 438.0),
    # A regular octahedron with edges of √2: √2/3 of the edge cubed. Source: table of regular polyhedra; second hand.
    (OCTAHEDRON, ROOT / 3 * ROOT**3),
    (turned_over(box(2, 3, 4)), -24.0),
], ids=["box", "far box", "prism", "cone", "frustum", "square frustum", "octahedron", "inside out"])
def test_the_volume_of_solids(mesh, expected):
    assert volume(mesh) == pytest.approx(expected, rel=1e-12)


@pytest.mark.parametrize("profile", [
    [(0, 0), (45, 0), (45, 80), (40, 80), (40, 8), (0, 8)],
    [(0, 0), (31, 0), (45, 80), (40, 80), (27.4, 8), (0, 8)],
    [(20, 0), (30, 5), (30, 9), (22, 40)],
], ids=["cup", "leaning cup", "ring"])
def test_the_volume_of_lathes(profile):
    assert volume(lathe(profile, 48)) == pytest.approx(polygon_lathe(profile), rel=1e-12)


def test_fine_facets_come_near_the_round_solids():
    assert volume(sphere(30, 400, 200)) == pytest.approx(4 / 3 * math.pi * 30**3, rel=2e-4)
    assert surface(sphere(30, 400, 200)) == pytest.approx(4 * math.pi * 30**2, rel=1e-4)
    # Facets of the tube and of the way around it are both known shares of circles.
    assert volume(torus(40, 12, 64, 32)) == pytest.approx(2 * math.pi**2 * 40 * 12**2 * facet_share(64) * facet_share(32), rel=1e-9)


def test_the_surface_of_solids():
    assert surface(box(60, 40, 50)) == pytest.approx(2 * (60 * 40 + 60 * 50 + 40 * 50), rel=1e-12)
    # Source: as for the volume.
    assert surface(OCTAHEDRON) == pytest.approx(2 * math.sqrt(3) * ROOT**2, rel=1e-12)
    assert surface(cylinder(40, 70, 6)) == pytest.approx(6 * 40 * 70 + 3 * math.sqrt(3) * 40**2, rel=1e-12)


@pytest.mark.parametrize("seed", range(20))
def test_neither_turning_nor_moving_changes_what_it_encloses(seed):
    mesh = grown(seed)
    other = moved(rotated(mesh, seed, 2 * seed, 0.3), 1000, -2000, 50)
    assert volume(other) == pytest.approx(volume(mesh), rel=1e-9)
    assert surface(other) == pytest.approx(surface(mesh), rel=1e-9)


def test_size_is_width_depth_and_height():
    assert size(box(60, 40, 50, at=(7.0, 8.0, -9.0))) == (60, 40, 50)
    assert size(cup(45, 80)) == pytest.approx((90, 90, 80))


def test_nothing_encloses_nothing():
    assert volume(made([], [])) == 0
    assert surface(made([], [])) == 0
