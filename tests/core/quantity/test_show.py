"""Quantities shown back: to what the scale can show, and read again as the same."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.quantity import show
from brimbook.quantity.read import Bounds, read
from brimbook.quantity.show import Display
from brimbook.quantity.units import from_base

ANY = Bounds(-1e12, 1e12)
MARKS = st.sampled_from(["either", "point", "comma"])
GRAMS = st.floats(0.001, 90_000)


def read_mass(text, display):
    return read(text, "mass", ANY, display.mass_word, display.decimal).value


@given(GRAMS, st.sampled_from(["g", "oz", "lb"]), MARKS,
       st.sampled_from([0.01, 0.1, 1.0, 2.0, 5.0, 28.349523125, 2.8349523125]))
def test_a_weight_shown_reads_as_the_weight_to_its_last_digit(grams, unit, mark, readability):
    display = Display(mass=unit, decimal=mark, readability=readability)
    shown = show.mass(grams, display)
    rounded = show.round_to_scale(grams, display)
    assert read_mass(shown, display) == pytest.approx(rounded, rel=1e-9)
    step = max(readability, 1e-3) * 2.6 if grams > 5 * readability else grams * 0.06
    assert abs(rounded - grams) <= step


@given(st.floats(0.5, 3000), st.sampled_from(["mm", "in"]), MARKS)
def test_a_length_shown_reads_as_the_length(millimeters, unit, mark):
    display = Display(length=unit, decimal=mark)
    value = read(show.length(millimeters, display), "length", ANY, display.length_word, mark).value
    assert value == pytest.approx(millimeters, rel=0.0051, abs=0.051)


@given(st.floats(-40, 400), st.sampled_from(["C", "F"]), MARKS)
def test_a_temperature_shown_reads_as_the_temperature(celsius, unit, mark):
    display = Display(temperature=unit, decimal=mark)
    value = read(show.temperature(celsius, display), "temperature", ANY, "°c", mark).value
    assert value == pytest.approx(celsius, abs=0.051)


@given(st.floats(0.05, 12), MARKS)
def test_a_density_shown_reads_as_the_density(density, mark):
    shown = show.density(density, Display(decimal=mark))
    assert read(shown, "density", Bounds(0.01, 13), "g/ml", mark).value == pytest.approx(density, rel=5.1e-4)


@given(st.floats(0, 2), MARKS)
def test_a_share_shown_reads_as_the_share(share, mark):
    shown = show.percent(share, Display(decimal=mark), 2)
    assert read(shown, "share", Bounds(0, 3), "%", mark).value == pytest.approx(share, abs=5.1e-5)


@pytest.mark.parametrize(("grams", "display", "shown"), [
    (1203.4, Display(), "1203 g"), (1203.5, Display(), "1204 g"), (0, Display(), "0 g"), (4.96, Display(), "5.0 g"),
    (5, Display(), "5 g"), (0.4321, Display(), "0.43 g"), (12_345.6, Display(), "12346 g"),
    (1203.4, Display(decimal="comma", readability=0.1), "1203,4 g"), (1203.4, Display(readability=5), "1205 g"),
    (1203.4, Display(readability=2), "1204 g"), (1203.46, Display(readability=0.1), "1203.5 g"),
    (1203.4, Display(mass="oz"), "42.45 oz"), (1203.4, Display(mass="lb"), "2 lb 10.45 oz"),
    (28.35, Display(mass="lb"), "1.00 oz"),
    (453.59237, Display(mass="lb"), "1 lb 0.00 oz"), (453.5, Display(mass="lb"), "1 lb 0.00 oz"),
    (1203.4, Display(mass="lb", decimal="comma"), "2 lb 10,45 oz"),
])
def test_weights(grams, display, shown):
    assert show.mass(grams, display) == shown


@pytest.mark.parametrize("value", [0.0, -0.0, -0.0001, 1e-12])
def test_nothing_is_shown_as_less_than_nothing(value):
    assert show.number(value, 1, Display()) == "0.0"
    assert show.percent(value, Display()) == "0 %"


def test_a_true_minus_sign():
    assert show.number(-1.5, 1, Display()) == "−1.5"


@pytest.mark.parametrize(("value", "digits", "shown"), [
    (0, 3, "0"), (0.0012345, 3, "0.00123"), (999.96, 4, "1000"), (9.9996, 4, "10"), (123456, 3, "123456"),
    (2.5, 4, "2.5"),
    (-0.25, 3, "−0.25"), (100, 2, "100"),
])
def test_significant_digits(value, digits, shown):
    assert show.significant(value, digits, Display()) == shown


@given(st.floats(1e-6, 1e6), st.integers(1, 9))
def test_significant_digits_keep_the_value(value, digits):
    shown = float(show.significant(value, digits, Display()))
    assert shown == pytest.approx(value, rel=0.51 * 10.0 ** (1 - digits))


@given(st.floats(1e-6, 1e5), MARKS)
def test_a_plus_minus_never_promises_too_much_nor_much_too_little(value, mark):
    shown = show.plus_minus(value, Display(decimal=mark))
    told = float(shown.replace(",", "."))
    assert value * (1 - 1e-9) <= told <= value * 1.11
    digits = shown.replace(",", "").replace(".", "").strip("0") or "0"
    assert len(digits) <= 2


@pytest.mark.parametrize(("value", "shown"), [(3.21, "3.3"), (0.123, "0.13"), (12.3, "13"), (123, "130"), (0, "0"),
                                              (3.2, "3.2"),
                                              (9.96, "10"), (0.996, "1.0"), (99.2, "100")])
def test_a_plus_minus_has_at_most_two_significant_digits(value, shown):
    assert show.plus_minus(value, Display()) == shown


@pytest.mark.parametrize(("milliliters", "display", "shown"), [
    (641.86, Display(), "642 mL"), (64.186, Display(), "64.2 mL"), (99.46, Display(), "99.5 mL"),
    (99.6, Display(), "100 mL"),
    (641.86, Display(mass="oz"), "642 mL (21.7 fl oz)"), (64.186, Display(decimal="comma"), "64,2 mL"),
    (-3.21, Display(), "−3.2 mL"),
])
def test_volumes(milliliters, display, shown):
    assert show.volume(milliliters, display) == shown


@pytest.mark.parametrize("text", [show.length(82.0, Display(decimal="comma")),
                                  show.temperature(20.0, Display(decimal="comma"))])
def test_no_zero_hangs_behind_the_comma(text):
    assert text in ("82 mm", "20 °C")


@given(GRAMS, st.sampled_from(["g", "oz", "lb"]), st.sampled_from([0.1, 1.0, 5.0]))
def test_rounding_to_the_scale_twice_changes_nothing(grams, unit, readability):
    display = Display(mass=unit, readability=readability)
    once = show.round_to_scale(grams, display)
    assert show.round_to_scale(once, display) == pytest.approx(once, rel=1e-9)


@given(GRAMS, GRAMS, st.sampled_from(["g", "oz", "lb"]))
def test_a_heavier_weight_is_never_shown_lighter(one, other, unit):
    display = Display(mass=unit)
    lighter, heavier = sorted((one, other))
    assert show.round_to_scale(lighter, display) <= show.round_to_scale(heavier, display) + 1e-9


def test_ounces_come_in_whole_steps_of_the_scale():
    display = Display(mass="oz")
    step = from_base(1.0, "oz")
    for grams in range(200, 1500, 7):
        ounces = from_base(show.round_to_scale(grams, display), "oz")
        assert math.isclose(ounces / 0.05, round(ounces / 0.05), abs_tol=1e-6) and step <= 0.05
