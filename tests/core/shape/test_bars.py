"""Bars across an opening: every wick in its slot, none overlapping, as few as can be."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from wick_plans import circle, rectangle, scattered

from brimbook.shape.bars import BEHIND, BETWEEN, Sizes, lay, placed, shape_of, turned
from brimbook.shape.outline import Outline

STICK = Sizes(18, 2, 15, 0, 2)
# Two arms of a square, its front right quarter missing.
CORNER = Outline(((-60, -60), (0, -60), (0, 0), (60, 0), (60, 60), (-60, 60)))


def check(outline, wicks, sizes, holder):
    """All that a holder must do, measured on its parts."""
    served = sorted(slot.wick for bar in holder.bars for slot in bar.slots)
    assert served == list(range(len(wicks)))
    for bar in holder.bars:
        over = sizes.overhang + sizes.wider / 2
        assert bar.length == pytest.approx(bar.right - bar.left + 2 * over)
        for slot in bar.slots:
            along, across = turned(wicks[slot.wick], holder.angle)
            assert slot.along == pytest.approx(along - bar.left + over)
            # The wick's middle stands half a slot before the end of the slot.
            assert bar.front + slot.depth - sizes.slot / 2 == pytest.approx(across)
            assert slot.depth <= sizes.width - BEHIND + 1e-9 and slot.depth >= 2 * sizes.slot - 1e-9
        places = sorted(slot.along for slot in bar.slots)
        assert all(right - left >= sizes.slot + BETWEEN - 1e-9 for left, right in zip(places, places[1:]))
    fronts = [bar.front for bar in holder.bars]
    assert all(later - earlier >= sizes.width + sizes.clearance - 1e-9 for earlier, later in zip(fronts, fronts[1:]))


def ends_over_the_rim(outline, bar, holder, sizes):
    """No wall below the bar's width lies beyond its ends, less what lies on the rim; true of an outline without a dent."""
    corners = [turned(corner, holder.angle) for corner in outline.points]
    below = [along for along, across in corners if bar.front < across < bar.front + sizes.width]
    return all(bar.left - 1e-6 <= along <= bar.right + 1e-6 for along in below)


@pytest.mark.parametrize("count", range(1, 9))
@pytest.mark.parametrize("seed", range(6))
def test_scattered_wicks_are_held(seed, count):
    outline, wicks = scattered(seed, count)
    holder = lay(outline, wicks, STICK)
    check(outline, wicks, STICK, holder)
    assert all(ends_over_the_rim(outline, bar, holder, STICK) for bar in holder.bars)


@given(seed=st.integers(0, 10_000), count=st.integers(1, 5), width=st.floats(12, 40), slot=st.floats(0.5, 3),
       wider=st.floats(0, 20), clearance=st.floats(0, 10), angle=st.sampled_from([None, 0.0, 90.0]))
def test_bars_of_any_sizes(seed, count, width, slot, wider, clearance, angle):
    outline, wicks = scattered(seed, count)
    sizes = Sizes(width, slot, 12, wider, clearance)
    holder = lay(outline, wicks, sizes, angle)
    if holder is not None:
        check(outline, wicks, sizes, holder)
        assert angle is None or holder.angle == angle


def fewest_at(wicks, angle, sizes):
    """The fewest bars at an angle by trying every way to share them out: another way round than the search itself."""
    across = sorted(turned(wick, angle)[1] for wick in wicks)
    found = math.inf
    for cuts in range(2 ** (len(wicks) - 1)):
        groups = [[across[0]]]
        for row, value in enumerate(across[1:]):
            if cuts >> row & 1:
                groups.append([])
            groups[-1].append(value)
        front, fits = -math.inf, True
        for group in groups:
            front = max(front + sizes.width + sizes.clearance, group[-1] - sizes.deepest)
            fits = fits and front <= group[0] - sizes.shallowest
        found = min(found, len(groups)) if fits else found
    return found


@pytest.mark.parametrize("count", [2, 3, 4, 5, 6])
@pytest.mark.parametrize("seed", range(100, 112))
def test_no_angle_takes_fewer_bars(seed, count):
    outline, wicks = scattered(seed, count)
    assert len(lay(outline, wicks, STICK).bars) <= min(fewest_at(wicks, angle, STICK) for angle in range(-89, 91))


@pytest.mark.parametrize("tilt", [0, 17, 45, 90, 133])
def test_a_straight_line_of_wicks_takes_one_bar(tilt):
    line = tuple((along * math.cos(math.radians(tilt)), along * math.sin(math.radians(tilt))) for along in (-35.0, 0.0, 35.0))
    holder = lay(circle(120), line, STICK)
    assert len(holder.bars) == 1 and holder.angle == pytest.approx(tilt if tilt <= 90 else tilt - 180, abs=0.01)
    assert [slot.depth for slot in holder.bars[0].slots] == pytest.approx([10, 10, 10], abs=0.02)


def test_one_wick_in_a_round_opening():
    holder = lay(circle(68), ((0.0, 0.0),), STICK)
    assert holder.angle == 0 and [bar.length for bar in holder.bars] == pytest.approx([98])
    assert [(slot.along, slot.depth) for slot in holder.bars[0].slots] == [pytest.approx((49, 10))]


def test_one_wick_takes_the_short_way_across():
    assert lay(rectangle(120, 50), ((0.0, 0.0),), STICK).angle == 90
    assert lay(rectangle(50, 120), ((0.0, 0.0),), STICK).angle == 0


def test_a_little_askew_does_not_turn_the_bar():
    holder = lay(circle(120), ((-30.0, 0.4), (30.0, -0.4)), STICK)
    assert holder.angle == 0 and [slot.depth for slot in holder.bars[0].slots] == pytest.approx([10.4, 9.6])


def test_a_bar_in_a_bay_reaches_to_the_nearest_walls_only():
    bar = lay(CORNER, ((-30.0, -40.0),), STICK, 0.0).bars[0]
    assert (bar.left, bar.right) == pytest.approx((-60, 0))
    # Here the bar covers the corner where the opening becomes wider.
    bar = lay(CORNER, ((-30.0, -4.0),), STICK, 0.0).bars[0]
    assert (bar.left, bar.right) == pytest.approx((-60, 60))


def test_wicks_too_close_for_bars_have_none():
    crowd = tuple((8.0 * column, 8.0 * row) for column in range(-2, 3) for row in range(-2, 3))
    assert lay(circle(120), crowd, STICK) is None
    assert lay(circle(120), ((0.0, 0.0), (0.0, 0.0)), STICK) is None


def test_narrower_bars_find_room():
    close = tuple((0.0, 11.0 * row) for row in range(-1, 2))
    assert lay(circle(120), close, STICK, 0.0) is None
    assert len(lay(circle(120), close, Sizes(9, 2, 15, 0, 1), 0.0).bars) == 3


@given(st.floats(-200, 200), st.floats(-200, 200), st.floats(-89, 90))
def test_turning_and_back(x, y, angle):
    assert placed(turned((x, y), angle), angle) == pytest.approx((x, y), abs=1e-9)
    assert math.hypot(*turned((x, y), angle)) == pytest.approx(math.hypot(x, y), abs=1e-9)


@given(seed=st.integers(0, 500), count=st.integers(1, 6))
def test_a_bar_as_a_polygon_has_its_area(seed, count):
    outline, wicks = scattered(seed, count)
    for bar in lay(outline, wicks, STICK).bars:
        corners = shape_of(bar, STICK)
        area = sum(a * d - b * c for (a, b), (c, d) in zip(corners, corners[1:] + corners[:1])) / 2
        assert area == pytest.approx(bar.length * 18 - sum(2 * slot.depth for slot in bar.slots))


def test_a_wider_rim_and_more_overhang_make_longer_bars_and_move_the_slot_along():
    plain, = lay(circle(68), ((5.0, 0.0),), STICK).bars
    wider, = lay(circle(68), ((5.0, 0.0),), Sizes(18, 2, 20, 6, 2)).bars
    assert wider.length - plain.length == pytest.approx(16) and wider.slots[0].along - plain.slots[0].along == pytest.approx(8)
