"""How long a cast is kept damp."""

import pytest
from vessels import put, vessel

from brimbook.quantity.moments import DAY, HOUR, read_moment
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.damp import damp_stands_in, kept_damp, wrapped

POURED = "2026-11-24T10:00"


def said(**texts):
    return understand(vessel(**texts), Display())


@pytest.mark.parametrize(("kind", "days"), [("portland", 3), ("rapid", 1), ("gypsum", 0), ("own", 1)])
def test_what_stands_in_hangs_on_the_powder(kind, days):
    assert damp_stands_in(said(casts__0__mix__powder__kind=kind), "casts.0").value == days * DAY


def test_the_maker_s_entry_comes_first_and_a_faulty_one_is_nothing():
    assert kept_damp(said(casts__0__curing__damp="5 d"), "casts.0").value == 5 * DAY
    assert kept_damp(said(casts__0__curing__damp="x"), "casts.0") is None


def test_it_is_wrapped_from_the_pour_to_the_end_of_the_damp_days():
    begin = read_moment(POURED)
    assert wrapped(said(casts__0__curing__poured_at=POURED), "casts.0") == (begin, begin + 0.75 * HOUR + DAY)
    assert wrapped(said(), "casts.0") is None
    assert wrapped(understand(put(vessel(), "casts.0.pours", [{"when": POURED}]), Display()), "casts.0")[0] == begin
