"""A leak test by weight."""

import pytest

from brimbook.cast import leak


def test_the_vapor_s_pressure_is_the_library_s():
    from iapws import IAPWS97

    for celsius in range(1, 41):
        library = IAPWS97(T=celsius + 273.15, x=0).P * 1000
        assert leak.saturation(celsius) == pytest.approx(library, rel=0.004)


def test_nothing_dries_off_into_air_that_is_full():
    assert leak.evaporated(4000.0, 20.0, 1.0, leak.DAY) == 0


def test_more_dries_off_where_it_is_wider_warmer_drier_or_longer():
    plain = leak.evaporated(4000.0, 20.0, 0.5, leak.DAY)
    assert leak.evaporated(8000.0, 20.0, 0.5, leak.DAY) == pytest.approx(2 * plain)
    assert leak.evaporated(4000.0, 20.0, 0.5, 2 * leak.DAY) == pytest.approx(2 * plain)
    assert leak.evaporated(4000.0, 20.0, 0.0, leak.DAY) == pytest.approx(2 * plain)
    assert leak.evaporated(4000.0, 30.0, 0.5, leak.DAY) > 1.5 * plain


def test_a_cup_as_wide_as_the_vessel_loses_as_much():
    assert leak.evaporated_beside(7.0, 4000.0, 4000.0) == 7.0


@pytest.mark.parametrize(("leaked", "scale", "evaporation", "told"), [
    (0.0, 0.8, 0.0, "holds"), (0.8, 0.8, 0.0, "holds"), (0.9, 0.8, 0.0, "leaks"), (-0.5, 0.8, 0.0, "holds"),
    (4.0, 0.8, 16.0, "unclear"), (-5.0, 0.8, 16.0, "unclear"), (-20.0, 0.8, 16.0, "holds"), (20.0, 0.8, 16.0, "leaks"),
    (0.5, 0.8, 0.7, "holds"), (0.5, 0.8, 2.3, "holds"), (0.5, 0.8, 2.5, "unclear")])
def test_what_a_test_proves(leaked, scale, evaporation, told):
    assert leak.verdict(leaked, scale, evaporation) == told


def test_a_sharper_test_never_finds_less():
    for leaked in (0.5, 1.0, 2.0, 5.0):
        found = [leak.verdict(leaked, 0.3, off) == "leaks" for off in (0.0, 0.5, 1.0, 3.0, 9.0)]
        assert found == sorted(found, reverse=True)
