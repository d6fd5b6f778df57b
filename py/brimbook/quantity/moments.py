"""Moments on the maker's own clock and lengths of time: read, and shown back. No time zone: a bench has one clock."""

import datetime
import math

from brimbook.quantity import show
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display

MINUTE, HOUR, DAY = 60.0, 3600.0, 86400.0
_START = datetime.datetime(2000, 1, 1)
_EARLIEST, _LATEST = datetime.datetime(1990, 1, 1), datetime.datetime(2199, 12, 31)
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
_WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")


def read_moment(text: str) -> float:
    """A date and time as the page writes it, in seconds since the start of 2000 on the maker's clock [s].

    text: year, month, day and time, as in 2026-11-24T09:30 [text].

    Raises QuantityError with a sentence that says what would be right.

    >>> read_moment("2000-01-02T00:01")
    86460.0
    """
    try:
        moment = datetime.datetime.fromisoformat(text.strip().replace(" ", "T"))
    except ValueError:
        raise QuantityError("Type the date and the time of day: 2026-03-14 09:30.") from None
    if moment.tzinfo is not None or not _EARLIEST <= moment <= _LATEST or "T" not in text.strip().replace(" ", "T"):
        raise QuantityError("Type the date and the time of day on your own clock: 2026-03-14 09:30.")
    return (moment - _START).total_seconds()


def moment_text(seconds: float) -> str:
    """A moment as the page writes it, to the minute [text].

    seconds: since the start of 2000 [s].

    >>> moment_text(86460.0)
    '2000-01-02T00:01'
    """
    return at(seconds).isoformat(timespec="minutes")


def at(seconds: float) -> datetime.datetime:
    """A moment as a date and time without a zone, to the nearest minute [moment].

    seconds: since the start of 2000 [s].

    >>> at(86490.0).minute
    2
    """
    return _START + datetime.timedelta(minutes=math.floor(seconds / MINUTE + 0.5))


def show_moment(seconds: float) -> str:
    """A moment as a person reads it [text].

    seconds: since the start of 2000 [s].

    >>> show_moment(read_moment("2026-11-24T09:05"))
    'Tue, Nov 24, 09:05'
    """
    moment = at(seconds)
    return f"{show_day(seconds)}, {moment.hour:02d}:{moment.minute:02d}"


def show_day(seconds: float) -> str:
    """The day of a moment as a person reads it [text].

    seconds: since the start of 2000 [s].

    >>> show_day(read_moment("2026-11-24T09:05"))
    'Tue, Nov 24'
    """
    moment = at(seconds)
    return f"{_WEEKDAYS[moment.weekday()]}, {_MONTHS[moment.month - 1]} {moment.day}"


def show_date(day: datetime.date) -> str:
    """A date as a person reads it, with its year [text].

    day: of any year [day].

    >>> show_date(datetime.date(2026, 9, 26))
    'Sep 26, 2026'
    """
    return f"{_MONTHS[day.month - 1]} {day.day}, {day.year}"


# From so many seconds on, the larger unit, and the smaller one beside it.
_STEPS = ((DAY, "d", HOUR, "h"), (HOUR, "h", MINUTE, "min"), (MINUTE, "min", 1.0, "s"))


def show_duration(seconds: float, display: Display) -> str:
    """A length of time in its two largest units, the second one left out where it says little [text].

    seconds: length of time, zero or more [s].
    display: how this maker reads figures [display].

    >>> show_duration(5400, Display()), show_duration(14 * 86400, Display()), show_duration(45 * 60, Display())
    ('1 h 30 min', '14 d', '45 min')
    """
    for large, word, small, small_word in _STEPS:
        # A minute is told whole from ten minutes on, a day from ten days on.
        step = large if seconds >= 10 * large and word != "h" else small
        rounded = math.floor(seconds / step + 0.5) * step
        if rounded >= large:
            rest = round((rounded % large) / small)
            first = f"{int(rounded // large)} {word}"
            return f"{first} {rest} {small_word}" if rest else first
    return f"{show.number(seconds, 0, display)} s"
