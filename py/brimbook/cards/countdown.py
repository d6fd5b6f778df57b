"""What is left until each moment that a schedule names, as a timer shows it."""

from typing import Any

from brimbook.quantity.error import QuantityError
from brimbook.quantity.moments import DAY, HOUR, MINUTE, read_moment, show_duration
from brimbook.quantity.show import Display

MOST_TIMERS = 50
# Nearer than this it is soon; so long after its moment it is still due [s].
_SOON, _DUE = 10 * MINUTE, 2 * MINUTE
_UNREADABLE = {"shown": "", "state": "past"}


def countdown(now: Any, due: Any, display: Display) -> list[dict[str, str]]:
    """What each timer shows, in the order they were asked for [texts].

    now: what the maker's clock says, to the second [text].
    due: moments, as a record holds them [texts].
    display: how this maker reads figures [display].

    A moment that can't be read shows nothing, nor does one beyond the first fifty.

    >>> countdown("2026-11-24T10:02:33", ["2026-11-24T10:45"], Display())
    [{'shown': 'in 42 min', 'state': 'running'}]
    """
    clock, moments = _seconds(now), due if isinstance(due, list) else []
    told = [_timer(clock, _seconds(each), display) for each in moments[:MOST_TIMERS]]
    return told + [_UNREADABLE] * (len(moments) - len(told))


def _seconds(text: Any) -> float | None:
    try:
        return read_moment(text) if isinstance(text, str) else None
    except QuantityError:
        return None


def _timer(now: float | None, due: float | None, display: Display) -> dict[str, str]:
    if now is None or due is None:
        return _UNREADABLE
    left = due - now
    if left > 0:
        return {"shown": f"in {show_duration(left, display)}", "state": "soon" if left <= _SOON else "running"}
    if -left <= _DUE:
        return {"shown": "now", "state": "due"}
    return {"shown": f"{_long_past(-left)} ago", "state": "past"}


def _long_past(seconds: float) -> str:
    """A time that is over, in its largest unit alone."""
    large, word = next(step for step in ((DAY, "d"), (HOUR, "h"), (MINUTE, "min")) if seconds >= step[0])
    return f"{int(seconds // large)} {word}"
