"""The principal display panel: its area, and the ladder of letters."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.sell import panel

AREAS = st.floats(1.0, 3e6)


@given(AREAS, AREAS)
def test_a_larger_panel_never_has_smaller_letters(one, other):
    small, large = sorted((one, other))
    assert panel.least_height(small) <= panel.least_height(large)


@pytest.mark.parametrize(("inches", "sixteenths"), [
    (0.1, 1), (4.99, 1), (5.0, 1), (5.01, 2), (25.0, 2), (25.01, 3), (100.0, 3), (100.01, 4), (400.0, 4), (400.01, 8), (5000, 8)])
def test_every_step_counts_up_to_itself(inches, sixteenths):
    assert panel.least_height(inches * panel.SQUARE_INCH) == pytest.approx(sixteenths / 16 * 25.4, abs=1e-6)


@given(st.floats(1, 3000), st.floats(1, 3000))
def test_what_is_seen_of_a_round_side_is_less_than_its_half(height, around):
    assert panel.round_area(height, around) == pytest.approx(0.4 * panel.flat_area(height, around))
    assert panel.other_area(height * around) == pytest.approx(panel.round_area(height, around))


def test_inches_typed_as_inches_stay_on_their_side_of_a_limit():
    """2.5 by 2 inches are 5 square inches, whatever binary fractions make of it."""
    for width, height in ((2.5, 2.0), (1.0, 5.0), (3.2, 1.5625), (0.7, 5 / 0.7)):
        area = panel.flat_area(height * 25.4, width * 25.4)
        assert panel.least_height(area) == 1.5875 and not panel.stands_low(area)


@given(AREAS)
def test_the_lowest_part_is_for_panels_above_the_first_step(area):
    assert panel.stands_low(area) == (panel.least_height(area) > 25.4 / 16)
