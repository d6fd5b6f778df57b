"""Maturity: closed forms, identities, and the tables worked out beside it."""

import math
import random

import pytest

from brimbook.cast import maturity

CELSIUS = (5, 10, 15, 20, 25, 30, 35, 40)


def arrhenius(celsius):
    return maturity.arrhenius_pace(celsius, 20.0, 33.5)


def nurse_saul(celsius):
    return maturity.nurse_saul_pace(celsius, 20.0, 0.0)


def observed(celsius):
    return maturity.observed_pace(celsius, 20.0)


LAWS = [arrhenius, nurse_saul, observed]


@pytest.mark.parametrize(("pace", "column", "off"), [
    (lambda celsius: maturity.nurse_saul_pace(celsius, 20, -10), (0.5, 0.6667, 0.8333, 1, 1.1667, 1.3333, 1.5, 1.6667), 1e-4),
    (lambda celsius: maturity.nurse_saul_pace(celsius, 20, 0), (0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2), 1e-9),
    # These two are with kelvin as 273 + °C: up to a thousandth apart from 273.15.
    (lambda celsius: maturity.arrhenius_pace(celsius, 20, 5 * maturity.GAS),
     (0.3982, 0.5472, 0.7436, 1, 1.3315, 1.7563, 2.2958, 2.9755), 4e-3),
    (lambda celsius: maturity.arrhenius_pace(celsius, 23, 33.5),
     (0.4142, 0.5351, 0.6851, 0.8699, 1.0957, 1.3696, 1.6995, 2.0946), 2e-3),
    (maturity.adjusted_pace, (0.4778, 0.6161, 0.7875, 0.9981, 1.2551, 1.5662, 1.9406, 2.3880), 1e-4),
])
def test_the_age_factors_of_the_table(pace, column, off):
    assert [pace(celsius) for celsius in CELSIUS] == pytest.approx(column, abs=off)


@pytest.mark.parametrize(("coefficient", "column"), [
    (0.20, (0.4239, 0.6630, 0.8187, 0.9205, 1)), (0.25, (0.3420, 0.5982, 0.7788, 0.9016, 1)),
    (0.38, (0.1958, 0.4580, 0.6839, 0.8544, 1))])
def test_the_strength_gain_of_the_table(coefficient, column):
    assert [maturity.strength_gain(days, coefficient) for days in (1, 3, 7, 14, 28)] == pytest.approx(column, abs=1e-4)


@pytest.mark.parametrize("pace", LAWS)
def test_at_its_own_temperature_a_binder_keeps_its_own_time(pace):
    assert pace(20.0) == pytest.approx(1)
    assert maturity.reach(24.0, [], 20.0, pace).hours == pytest.approx(24)


@pytest.mark.parametrize("pace", LAWS)
@pytest.mark.parametrize("celsius", CELSIUS)
def test_a_constant_temperature_is_the_closed_form(pace, celsius):
    split = [(float(celsius), 0.7)] * 9
    for spans in ([], split):
        assert maturity.reach(24.0, spans, celsius, pace).hours == pytest.approx(24 / pace(celsius))


@pytest.mark.parametrize("pace", LAWS)
def test_splitting_a_span_changes_nothing(pace):
    whole, parts = [(8.0, 10.0), (26.0, 5.0)], [(8.0, 3.0), (8.0, 7.0), (26.0, 4.5), (26.0, 0.5)]
    assert maturity.equivalent_age(whole, pace) == pytest.approx(maturity.equivalent_age(parts, pace))
    for needed in (2.0, 6.0, 9.0, 24.0):
        assert maturity.reach(needed, whole, 12.0, pace).hours == pytest.approx(maturity.reach(needed, parts, 12.0, pace).hours)


@pytest.mark.parametrize("pace", LAWS)
def test_warmer_is_never_later(pace):
    chance = random.Random(7)
    for _ in range(200):
        spans = [(chance.uniform(-15, 45), chance.uniform(0, 9)) for _ in range(chance.randint(0, 8))]
        last, row, warmer = chance.uniform(1, 45), chance.randint(0, 8), chance.uniform(0, 10)
        heated = [(celsius + warmer * (place == row), hours) for place, (celsius, hours) in enumerate(spans)]
        before, after = maturity.reach(24.0, spans, last, pace), maturity.reach(24.0, heated, last + warmer, pace)
        assert after.hours <= before.hours + 1e-9


@pytest.mark.parametrize("pace", LAWS)
def test_what_is_reached_is_the_age_that_was_needed(pace):
    chance = random.Random(11)
    for _ in range(100):
        spans = [(chance.uniform(-5, 40), chance.uniform(0, 9)) for _ in range(chance.randint(0, 6))]
        found, passed, lived = maturity.reach(20.0, spans, 15.0, pace), 0.0, []
        for celsius, hours in [*spans, (15.0, 1e9)]:
            lived.append((celsius, min(hours, found.hours - passed)))
            passed += lived[-1][1]
            if passed >= found.hours:
                break
        assert maturity.equivalent_age(lived, pace) == pytest.approx(20.0)


@pytest.mark.parametrize("pace", LAWS)
def test_where_it_stands_still_nothing_is_reached(pace):
    assert maturity.reach(24.0, [(20.0, 5.0)], -1.0, pace) is None
    assert maturity.reach(24.0, [(-10.0, 5.0)], 20.0, pace).hours == pytest.approx(29)
    assert maturity.reach(4.0, [(20.0, 5.0)], -1.0, pace).hours == pytest.approx(4)


def test_at_the_datum_it_stands_still_and_below_it_does_not_go_back():
    assert maturity.nurse_saul_pace(-10.0, 20.0, -10.0) == 0 == maturity.nurse_saul_pace(-20.0, 20.0, -10.0)
    assert maturity.temperature_time([(-20.0, 10.0), (10.0, 2.0)], 0.0) == 20


def test_a_maturity_of_degrees_is_the_age_at_the_reference():
    spans = [(12.0, 6.0), (28.0, 3.0), (-4.0, 5.0)]
    assert maturity.temperature_time(spans, -10.0) / 30 == pytest.approx(
        maturity.equivalent_age(spans, lambda celsius: maturity.nurse_saul_pace(celsius, 20.0, -10.0)))


def test_more_energy_tells_cold_and_heat_apart_further():
    assert maturity.arrhenius_pace(8, 20, 41.5) < maturity.arrhenius_pace(8, 20, 33.5) < 1
    assert maturity.arrhenius_pace(33, 20, 41.5) > maturity.arrhenius_pace(33, 20, 33.5) > 1


def test_strength_never_falls_with_time():
    days = [0.5 * step for step in range(1, 120)]
    for gained in ([maturity.strength_gain(each, 0.25) for each in days], [maturity.strength_kept_damp(each) for each in days]):
        assert gained == sorted(gained) and all(math.isfinite(each) for each in gained)


def test_the_table_of_damp_days_has_no_jumps():
    for days, share in maturity.DAMP_SHARES:
        assert maturity.strength_kept_damp(days) == pytest.approx(share)
        assert maturity.strength_kept_damp(days + 1e-9) == pytest.approx(share)
