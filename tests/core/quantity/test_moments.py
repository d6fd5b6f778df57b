"""Moments on the maker's own clock, and lengths of time."""

import datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.quantity.error import QuantityError
from brimbook.quantity.moments import moment_text, read_moment, show_day, show_duration, show_moment
from brimbook.quantity.show import Display

LAST = (datetime.datetime(2199, 12, 31) - datetime.datetime(2000, 1, 1)).total_seconds()


@given(st.integers(0, int(LAST) // 60).map(lambda minutes: minutes * 60.0))
def test_what_is_written_reads_as_the_same_moment(seconds):
    assert read_moment(moment_text(seconds)) == seconds


@pytest.mark.parametrize(("text", "seconds"), [
    ("2000-01-01T00:00", 0), ("2000-01-01 00:01", 60), (" 2000-01-02T00:00 ", 86400), ("2000-01-01T00:00:30", 30),
    ("1999-12-31T23:59", -60)])
def test_spellings(text, seconds):
    assert read_moment(text) == seconds


@pytest.mark.parametrize("text", ["", "soon", "2026-11-24", "2026-13-01T00:00", "2026-11-24T25:00", "0001-01-01T00:00",
                                  "9999-12-31T00:00", "2026-11-24T09:30Z", "2026-11-24T09:30+01:00", "20261124", "1e9"])
def test_what_is_no_moment_is_refused_with_a_sentence(text):
    with pytest.raises(QuantityError) as caught:
        read_moment(text)
    assert "2026-03-14 09:30" in caught.value.sentence


def test_a_moment_as_a_person_reads_it():
    leap = read_moment("2028-02-29T23:59")
    assert show_moment(leap) == "Tue, Feb 29, 23:59" and show_moment(leap + 60) == "Wed, Mar 1, 00:00"
    assert show_day(leap) == "Tue, Feb 29"
    assert show_moment(leap + 29) == "Tue, Feb 29, 23:59" and show_moment(leap + 30) == "Wed, Mar 1, 00:00"


@pytest.mark.parametrize(("seconds", "shown"), [
    (0, "0 s"), (45, "45 s"), (59.6, "1 min"), (60, "1 min"), (90, "1 min 30 s"), (599, "9 min 59 s"), (600, "10 min"),
    (2700, "45 min"), (3599, "1 h"), (3600, "1 h"), (5400, "1 h 30 min"), (86399, "1 d"), (86400, "1 d"),
    (100_000, "1 d 4 h"), (9.5 * 86400, "9 d 12 h"), (13.6 * 86400, "14 d"), (365 * 86400, "365 d")])
def test_a_length_of_time(seconds, shown):
    assert show_duration(seconds, Display()) == shown


@given(st.floats(0, 3e7))
def test_a_length_of_time_is_told_to_within_its_last_unit(seconds):
    size = {"s": 1, "min": 60, "h": 3600, "d": 86400}
    words = show_duration(seconds, Display()).split()
    told = sum(int(number) * size[word] for number, word in zip(words[::2], words[1::2]))
    # The smaller unit beside the larger one; days alone from ten on, minutes alone from ten on.
    coarsest = 86400 if seconds > 9 * 86400 else 3600 if seconds > 86300 else 60
    assert abs(told - seconds) <= coarsest / 2 + 0.5
