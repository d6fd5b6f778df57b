"""How far a print is off."""

import pytest
from vessel_models import cup_vessel

from brimbook import sources
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.print_off import print_off

PATH = "casts.0.cavity.file.off"


def off(**texts):
    return print_off(understand(cup_vessel(**texts), Display()), PATH, 200.0, 40_000.0)


def test_each_face_is_off_by_half_of_a_size_and_shrinkage_counts_three_times():
    assert off().parts == pytest.approx((4.0, 1.8))
    assert off(file__off="0.4 mm").parts == pytest.approx((8.0, 1.8))


def test_it_says_what_it_takes_and_whose_that_is():
    assert "half of 0.2 mm, all the same way" in off().told[0] and "0.3 % every way" in off().told[1]
    assert [constant.source for constant in off().constants] == [sources.PRACTICE, sources.PRACTICE]
    assert off(file__off="0.1 mm").constants[0].source == sources.YOURS
