"""Where wicks stand: beside published coverings, never below them, measured at true worst spots, better than plain layouts."""

import math
import random

import pytest
from plain_wicks import by_clusters, on_a_circle, seeded_outline

from brimbook.shape import outline as outlines
from brimbook.shape import worst
from brimbook.shape.covering import cover, pool, reach
from brimbook.shape.outline import contains, wall_distance
from brimbook.shape.pieces import pieces

# Disk covering problem, general encyclopaedia (published; printed cut off after six digits).
DISC = [1.0, 1.0, math.sqrt(3) / 2, math.sqrt(0.5), 0.609382, 0.555905, 0.5]
# Covering a square with up to 30 equal circles (2000), in a copy of its table (second hand).
SQUARE = [0.707106781, 0.559016994, 0.503891109, 0.353553391, 0.326160584, 0.298727062, 0.274291885]
ELL = outlines.path("0 0, 100 0, 100 30, 30 30, 30 100, 0 100")


@pytest.mark.parametrize("count", range(1, 8))
def test_a_disc_is_covered_as_published_never_better(count):
    found = cover(outlines.circle(200), count, 0, 0).radius / 100
    assert DISC[count - 1] * (1 - 1e-9) <= found <= DISC[count - 1] * 1.003


@pytest.mark.parametrize("count", range(1, 8))
def test_a_square_is_covered_as_published_never_better(count):
    found = cover(outlines.rounded_rectangle(100, 100, 0), count, 0, 0).radius / 100
    assert SQUARE[count - 1] * (1 - 1e-8) <= found <= SQUARE[count - 1] * 1.003


@pytest.mark.parametrize("count", range(1, 9))
def test_a_rectangle_needs_no_more_than_strips(count):
    found = cover(outlines.rounded_rectangle(100, 50, 0), count, 0, 0).radius
    assert found <= 0.5 * math.hypot(100 / count, 50) * 1.002


@pytest.mark.parametrize("made", [outlines.oval(90, 60), ELL])
def test_more_wicks_never_need_larger_pools(made):
    radii = [cover(made, count, 0, 0).radius for count in range(1, 9)]
    assert all(after <= before * 1.003 for before, after in zip(radii, radii[1:]))
    assert all(count * math.pi * radius**2 >= outlines.area(made) for count, radius in enumerate(radii, 1))


@pytest.mark.parametrize("count", [2, 3, 5])
def test_a_vessel_twice_as_wide_needs_pools_twice_as_wide(count):
    small, large = (cover(outlines.oval(80 * times, 60 * times), count, 0, 0).radius for times in (1, 2))
    assert large / small == pytest.approx(2, rel=0.01)


@pytest.mark.parametrize("made", [outlines.circle(90), outlines.rounded_rectangle(120, 70, 10), ELL])
@pytest.mark.parametrize("count", [1, 2, 3, 4])
def test_wicks_keep_their_distances(made, count):
    found = cover(made, count, 10, 25)
    assert all(wall_distance(made, point) >= 10 - 1e-5 for point in found.points)
    assert all(math.dist(one, other) >= 25 - 1e-5 for row, one in enumerate(found.points) for other in found.points[:row])
    assert found.radius >= cover(made, count, 0, 0).radius * (1 - 3e-3)


@pytest.mark.parametrize("made, length", [
    (outlines.oval(300, 5), 300), (outlines.oval(5, 300), 300), (outlines.path("0 0, 1800 0, 1800 1, 0 1"), 1800),
    (outlines.path("0 0, 3 0, 200 197, 200 200"), 200 * math.sqrt(2)), (outlines.rounded_rectangle(20, 900, 10), 900)])
@pytest.mark.parametrize("count", [1, 2, 8])
def test_a_thin_strip_is_shared_out_along_it(made, length, count):
    """Each wick serves its share of the length, half of it on either side."""
    assert length / 2 / count * 0.95 <= cover(made, count, 0, 0).radius <= length / 2 / count * 1.1


@pytest.mark.parametrize("seed", range(40))
def test_any_size_of_box_has_an_answer(seed):
    chance = random.Random(seed)
    wide, high = (10 ** chance.uniform(-0.5, 3.4) for _ in range(2))
    made = outlines.rounded_rectangle(wide, high, chance.choice((0, 0.5)) * min(wide, high))
    found = cover(made, chance.randint(1, 4), chance.choice((0, 12)), chance.choice((0, 25)))
    assert found is None or 0 < found.radius <= math.hypot(wide, high)


def test_where_there_is_no_room_there_is_no_layout():
    assert cover(outlines.circle(20), 1, 12, 0) is None and cover(outlines.circle(50), 4, 12, 25) is None


def way_in_ell(one, other):
    """The shortest way in the L, whose only inner corner is at (-20, -20) from its middle."""
    corner = (-20.0, -20.0)
    steps = [(one[0] + (other[0] - one[0]) * part / 60, one[1] + (other[1] - one[1]) * part / 60) for part in range(61)]
    if any(x > corner[0] + 1e-9 and y > corner[1] + 1e-9 for x, y in steps):
        return math.dist(one, corner) + math.dist(corner, other)
    return math.dist(one, other)


@pytest.mark.parametrize("made, way", [(outlines.oval(90, 60), math.dist), (outlines.rounded_rectangle(120, 50, 8), math.dist), (ELL, way_in_ell)])
@pytest.mark.parametrize("seed", range(4))
def test_the_worst_spot_is_the_worst_of_many(made, way, seed):
    """A dense grid, which can only miss the worst spot, comes within its own step of it and never beyond."""
    chance, (wide, high) = random.Random(seed), outlines.size(made)
    points = []
    while len(points) < 1 + seed:
        point = chance.uniform(-wide / 2, wide / 2), chance.uniform(-high / 2, high / 2)
        points += [point] if contains(made, point) else []
    found, step = reach(made, tuple(points)), 1.0
    spots = [(x * step - wide / 2, y * step - high / 2) for x in range(int(wide / step) + 1) for y in range(int(high / step) + 1)]
    seen = max(min(way(point, spot) for point in points) for spot in spots if contains(made, spot))
    assert seen - 0.05 <= found.radius <= seen + step * math.sqrt(2)
    assert min(way(point, found.worst) for point in points) == pytest.approx(found.radius, abs=0.02)


@pytest.mark.parametrize("seed", range(12))
def test_no_plain_layout_does_better(seed):
    made, count = seeded_outline(seed), 1 + seed % 5
    ours = cover(made, count, 0, 0).radius
    assert ours <= 1.001 * min(reach(made, on_a_circle(made, count)).radius, reach(made, by_clusters(made, count)).radius)


def test_a_pool_stays_inside_and_goes_around_the_corner():
    corners = pool(ELL, (40.0, -35.0), 75.0)
    assert all(wall_distance(ELL, point) >= -1e-6 for point in corners)
    assert all(way_in_ell((40.0, -35.0), point) <= 75.5 for point in corners)
    assert max(y for _, y in corners) > -20


def test_the_same_is_found_each_time():
    one = cover(outlines.oval(91, 61), 3, 10, 20)
    cover.cache_clear()
    assert cover(outlines.oval(91, 61), 3, 10, 20) == one


def test_pieces_are_cut_only_by_the_points_that_can_be_nearest_there(monkeypatch):
    """A curved outline has dozens of pieces; cutting all of them by every point took most of a search's time."""
    outline, cuts = outlines.path("M 0 0 C 40 -60 80 60 120 0 L 120 60 C 80 100 40 20 0 60 z"), set()
    points = tuple((x, y) for x in (-45.0, -15.0, 15.0, 45.0) for y in (-15.0, 15.0))
    real = worst.split
    monkeypatch.setattr(worst, "split", lambda *asked: cuts.add((asked[0].start, asked[2])) or real(*asked))
    reach.__wrapped__(outline, points)
    assert 0 < len(cuts) < 0.8 * len(pieces(outline).corners) * len(points)
