"""What setting does: mass stays, and pours into the sink come to the set line as a geometric series."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.candle import contraction

POURED, SET, VOLUME = st.floats(0.7, 0.9), st.floats(0.9, 1.1), st.floats(0.1, 1e4)


@given(POURED, SET, VOLUME)
def test_the_mass_stays(poured, cold, volume):
    assert volume * (1 - contraction.of_hot(poured, cold)) * cold == pytest.approx(volume * poured)
    assert volume * (1 + contraction.of_set(poured, cold)) * poured == pytest.approx(volume * cold)


@given(POURED, SET)
def test_the_two_bases_are_one_loss(poured, cold):
    hot, set_ = contraction.of_hot(poured, cold), contraction.of_set(poured, cold)
    assert set_ == pytest.approx(hot / (1 - hot), abs=1e-12)
    assert set_ >= hot


def test_paraffin_shows_why_the_base_is_named():
    assert contraction.of_hot(0.77, 0.90) == pytest.approx(0.144, abs=5e-4)
    assert contraction.of_set(0.77, 0.90) == pytest.approx(0.169, abs=5e-4)


@given(st.floats(0.0, 0.3))
def test_a_length_cubed_is_the_volume(share):
    along = contraction.along(share)
    assert (1 - along) ** 3 == pytest.approx(1 - share)
    assert along <= share


@given(POURED, SET, VOLUME, st.integers(1, 12))
def test_pours_and_what_is_missing_make_up_the_line(poured, cold, volume, count):
    """What has set of all the pours, and the hole above it, are the volume to the line."""
    share, first = contraction.of_hot(poured, cold), volume * poured
    grams = sum(contraction.pour(number, first, share) for number in range(1, count + 1))
    assert grams / cold + contraction.missing_after(count, volume, share) == pytest.approx(volume)


@given(POURED, SET, VOLUME)
def test_all_pours_together_are_the_set_line_s_weight(poured, cold, volume):
    share, first = contraction.of_hot(poured, cold), volume * poured
    assert sum(contraction.pour(number, first, share) for number in range(1, 80)) == pytest.approx(volume * cold)


@given(POURED, SET, VOLUME, st.integers(1, 12))
def test_each_pour_fills_the_sink_of_the_one_before(poured, cold, volume, count):
    share = contraction.of_hot(poured, cold)
    sink = contraction.missing_after(count, volume, share)
    assert contraction.pour(count + 1, volume * poured, share) == pytest.approx(sink * poured)


def test_what_does_not_shrink_needs_one_pour():
    assert contraction.of_hot(0.9, 0.9) == contraction.of_set(0.9, 0.9) == contraction.along(0.0) == 0.0
    assert contraction.pour(2, 100.0, 0.0) == contraction.missing_after(1, 100.0, 0.0) == 0.0
