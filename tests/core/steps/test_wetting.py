"""A leak test wets the vessel."""

from vessels import vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.wetting import AFTER_TEST, was_filled


def test_a_vessel_that_was_filled_is_wet_again():
    assert was_filled(understand(vessel(casts__0__leaking__filled="840 g"), Display()), "casts.0")
    assert not was_filled(understand(vessel(casts__0__leaking__filled="full"), Display()), "casts.0")
    assert not was_filled(understand(vessel(casts__0__leaking__dry="640 g"), Display()), "casts.0")
    assert "before any wax" in AFTER_TEST
