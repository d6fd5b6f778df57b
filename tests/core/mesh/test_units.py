"""The unit in which a file was probably drawn. Common practice, no source."""

import pytest

from brimbook.mesh.units import MILLIMETERS, guess, short


@pytest.mark.parametrize(("longest", "unit", "sure"), [
    (20.0, "mm", True), (90.0, "mm", True), (400.0, "mm", True), (0.02, "m", True), (0.3, "m", True), (0.8, "in", True), (3.5, "in", False),
    (15.7, "in", False), (18.0, "cm", True), (500.0, "mm", False), (0.001, "mm", False), (0.5, "mm", False)])
def test_by_the_longest_side(longest, unit, sure):
    assert guess((longest / 2, longest, longest / 3), "") == (unit, sure)


@pytest.mark.parametrize(("named", "unit"), [("millimeter", "mm"), ("Inch", "in"), ("micron", "um"), ("ft", "ft")])
def test_a_file_that_names_its_unit_is_believed(named, unit):
    assert guess((1.0, 1.0, 1.0), named) == (unit, True)


def test_a_name_that_is_no_unit_is_not():
    assert guess((90.0, 90.0, 80.0), "furlong") == ("mm", True) and short("") == ""


def test_every_unit_has_its_millimeters():
    assert (MILLIMETERS["in"], MILLIMETERS["ft"], MILLIMETERS["um"]) == (25.4, 304.8, 0.001)
