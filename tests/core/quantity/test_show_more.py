"""Sizes, pressure, force, area, stress and money, shown in the maker's own units."""

import pytest
from pint import UnitRegistry

from brimbook.quantity import show_more
from brimbook.quantity.show import Display

INCHES = Display(length="in")


@pytest.mark.parametrize(("function", "value", "unit", "other"), [
    (show_more.pressure, 12.3, "kilopascal", "psi"), (show_more.stress, 21.7, "megapascal", "psi"),
    (show_more.force, 345.0, "newton", "pound_force"), (show_more.area, 45_600.0, "mm**2", "inch**2")])
def test_the_inch_maker_s_unit_agrees_with_pint(function, value, unit, other):
    exact = UnitRegistry().Quantity(value, unit).to(other).magnitude
    assert float(function(value, INCHES).split()[0]) == pytest.approx(exact, rel=5e-3)


def test_metric_units():
    assert show_more.pressure(0.05, Display()) == "0.05 kPa" and show_more.stress(1200.0, Display()) == "1200 MPa"
    assert show_more.force(0.0, Display()) == "0 N" and show_more.area(123.0, Display(decimal="comma")) == "1,23 cm²"


@pytest.mark.parametrize(("currency", "shown"), [("$", "$1234.50"), ("£", "£1234.50"), ("€", "1234.50 €"), ("CHF", "1234.50 CHF")])
def test_money(currency, shown):
    assert show_more.money(1234.5, Display(currency=currency)) == shown
    assert show_more.money(-0.001, Display()) == "$0.00"


@pytest.mark.parametrize(("currency", "shown"), [("JPY", "1235 JPY"), ("krw", "1235 krw"), ("₩", "1235 ₩"), ("¥", "¥1234.60")])
def test_money_without_a_smaller_unit_is_told_whole(currency, shown):
    assert show_more.money(1234.6, Display(currency=currency)) == shown


def test_less_than_the_smallest_coin():
    assert show_more.small_money(0.00987, Display(decimal="comma")) == "$0,0099"
    assert show_more.small_money(0.0444, Display()) == "$0.04" and show_more.small_money(-0.001, Display()) == "$0.00"
    assert show_more.small_money(0.12, Display(currency="JPY")) == "0.12 JPY"


def test_a_size_breaks_nowhere_and_tells_its_unit_once():
    assert show_more.size((126.04, 90.0, 80.5), Display(decimal="comma")) == "126\u00a0×\u00a090\u00a0×\u00a080,5\u00a0mm"
    assert show_more.size((25.4,), INCHES) == "1\u00a0in"
