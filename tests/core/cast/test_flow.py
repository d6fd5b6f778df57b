"""The spread of a fresh mix: flow, class, cones, and the line over water."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.cast import flow
from brimbook.shape import solid

LENGTHS = st.floats(10, 400)


@given(LENGTHS, LENGTHS)
def test_flow_grows_with_the_spread_and_is_nothing_at_the_base(base, more):
    assert flow.flow(base, base) == 0
    assert flow.flow(base + more, base) > flow.flow(base, base)
    assert flow.flow(2 * base, base) == pytest.approx(1)


@pytest.mark.parametrize(("cone", "milliliters"), [("mini", 37.7), ("flow_table", 286.7), ("mortar_table", 344.0)])
def test_the_cones_hold_what_they_should(cone, milliliters):
    size = flow.CONES[cone]
    assert solid.tapered(size.top, size.base, size.height) == pytest.approx(milliliters, abs=0.06)


@pytest.mark.parametrize(("spread", "told"), [(100, "stiff"), (139.9, "stiff"), (140, "plastic"), (200, "plastic"),
                                              (200.1, "soft")])
def test_classes(spread, told):
    assert flow.consistency(spread) == told


@given(st.lists(st.floats(0.2, 0.6), min_size=2, max_size=8), st.floats(-2000, 2000), st.floats(50, 300))
def test_a_line_is_found_again(waters, slope, start):
    line = flow.line(waters, [start + slope * water for water in waters])
    if line is None:
        assert max(waters) - min(waters) < flow.NEAREST
        return
    assert line.slope == pytest.approx(slope, rel=1e-6, abs=1e-6)
    assert line.freedom == len(waters) + 2 and line.plus_minus > 0
    if abs(slope) > 1:
        assert line.water_for(start + slope * 0.3) == pytest.approx(0.3, abs=1e-6)


def test_one_water_moves_nothing():
    assert flow.line([0.25], [150.0]) is None and flow.line([0.25, 0.2501], [150.0, 160.0]) is None
    assert flow.line([], []) is None


def test_the_scatter_about_a_line_is_scipy_s_pooled_with_the_one_expected():
    from scipy import stats

    waters, spreads = [0.24, 0.25, 0.255, 0.27], [141.0, 150.0, 149.0, 166.0]
    ours, theirs = flow.line(waters, spreads), stats.linregress(waters, spreads)
    assert ours.slope == pytest.approx(theirs.slope)
    seen = theirs.stderr**2 * ours.width
    expected = flow.SPREAD_SCATTER * 151.5
    assert ours.scatter**2 == pytest.approx((4 * expected**2 + 2 * seen) / 6)
    assert ours.plus_minus == pytest.approx(stats.t.ppf(0.975, 6) * ours.scatter / ours.width**0.5, rel=1e-3)


def test_waters_farther_apart_make_a_slope_surer():
    widths = [flow.line([0.25 - off, 0.25 + off], [150 - 1000 * off, 150 + 1000 * off]).plus_minus for off in (0.003, 0.01, 0.03)]
    assert widths == sorted(widths, reverse=True)


def test_near_is_half_the_width_seen_and_no_farther():
    line = flow.line([0.24, 0.26], [140.0, 160.0])
    assert [line.is_near(water) for water in (0.229, 0.231, 0.25, 0.269, 0.271)] == [False, True, True, True, False]
