"""Wax that comes close to the brim."""

import pytest

from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.steps.brim import brim_notes


@pytest.mark.parametrize(("below", "told"), [(0.0, "at the brim"), (1.5, "only 1.5 mm below the brim"), (3.0, ""), (20.0, "")])
def test_what_is_told(below, told):
    notes = brim_notes(Said({}, Display()), below)
    assert told in " ".join(notes) and bool(notes) == bool(told)


def test_it_is_told_in_inches():
    assert "0.394 in or so" in brim_notes(Said({}, Display(length="in")), 0.0)[0]
