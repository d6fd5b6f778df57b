"""Calendars, read back by an independent reader."""

import datetime

import icalendar
import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw.calendar import Entry, calendar
from brimbook.quantity.moments import read_moment

STAMP = "20261124T093000Z"
AT = read_moment("2026-11-25T10:00")


def events(text):
    return icalendar.Calendar.from_ical(text).walk("VEVENT")


def one(**parts):
    return Entry(**{"uid": "a-1-demold@brimbook", "title": "Tide cup: demold", "at": AT, "text": "Open it.", "alarm": True,
                    **parts})


def test_an_entry_is_read_back_as_it_was_meant():
    (event,) = events(calendar([one()], STAMP))
    assert str(event["UID"]) == "a-1-demold@brimbook" and str(event["SUMMARY"]) == "Tide cup: demold"
    assert event["DTSTART"].dt == datetime.datetime(2026, 11, 25, 10, 0) and event["DTSTART"].dt.tzinfo is None
    assert event["DURATION"].dt == datetime.timedelta(minutes=15)
    assert event["DTSTAMP"].dt == datetime.datetime(2026, 11, 24, 9, 30, tzinfo=datetime.timezone.utc)
    (alarm,) = event.walk("VALARM")
    assert alarm["ACTION"] == "DISPLAY" and alarm["TRIGGER"].dt == datetime.timedelta(0)


def test_the_calendar_itself_says_what_it_is():
    whole = icalendar.Calendar.from_ical(calendar([one()], STAMP))
    assert whole["VERSION"] == "2.0" and "Brimbook" in whole["PRODID"]


def test_no_alarm_for_what_is_over():
    (event,) = events(calendar([one(alarm=False)], STAMP))
    assert event.walk("VALARM") == []


@pytest.mark.parametrize("text", ["a, b; c \\ d", "two\nlines", "\\n is no line", "END:VEVENT\nBEGIN:VEVENT", "“Höhe” — 38 °C",
                                  "茶碗" * 60, "🕯️" * 40, "x" * 400, ""])
def test_any_text_is_read_back(text):
    (event,) = events(calendar([one(title=text.replace("\n", " "), text=text)], STAMP))
    assert str(event["DESCRIPTION"]) == text


@pytest.mark.parametrize("letter", ["x", "é", "茶", "🕯"])
def test_long_lines_are_broken_as_late_as_they_may_be(letter):
    lines = calendar([one(text=letter * 400)], STAMP).encode("utf-8").split(b"\r\n")
    full = [len(line) for line, after in zip(lines, lines[1:]) if after.startswith(b" ")]
    assert len(full) > 4 and all(75 - len(letter.encode("utf-8")) < size <= 75 for size in full)


def test_what_means_something_to_a_calendar_is_marked():
    assert "\r\nDESCRIPTION:a\\, b\\; c \\\\ d\\ne\r\n" in calendar([one(text="a, b; c \\ d\ne")], STAMP)


@given(st.text(alphabet=st.characters(exclude_categories=("Cs", "Cc")), max_size=300))
def test_any_letters_are_read_back_and_lines_are_short(text):
    made = calendar([one(text=text)], STAMP)
    assert str(events(made)[0]["DESCRIPTION"]) == text
    assert made.endswith("\r\n")
    for line in made.encode("utf-8").split(b"\r\n"):
        assert len(line) <= 75 and b"\n" not in line
        line.decode("utf-8")


@given(st.text(max_size=120))
def test_nothing_typed_can_break_out_of_its_line(text):
    made = calendar([one(title=text, text=text), one()], STAMP)
    assert len(events(made)) == 2
    assert made.count("BEGIN:VEVENT\r\n") == 2


def test_an_alarm_may_ring_later():
    (event,) = events(calendar([one(rings_after=5.25 * 3600)], STAMP))
    assert event.walk("VALARM")[0]["TRIGGER"].dt == datetime.timedelta(hours=5, minutes=15)
