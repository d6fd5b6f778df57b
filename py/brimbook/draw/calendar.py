"""A calendar as RFC 5545 text: floating local times, for the one clock of the bench."""

import unicodedata
from dataclasses import dataclass

from brimbook.quantity.moments import MINUTE, at

_LONGEST = 75  # octets of a line, without its end
_ESCAPED = str.maketrans({"\\": "\\\\", ";": "\\;", ",": "\\,", "\n": "\\n"})


@dataclass(frozen=True)
class Entry:
    """One entry of a calendar: an id that stays the same, its title, its moment [s since 2000], what to do, with an alarm,
    and how long after its moment that rings [s]."""

    uid: str
    title: str
    at: float
    text: str
    alarm: bool
    rings_after: float = 0.0


def calendar(entries: list[Entry], stamp: str) -> str:
    """A calendar of these entries, as a file holds it [iCalendar text].

    entries: in order [entries].
    stamp: when it is made, in universal time: 20261124T093000Z [text].
    """
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Brimbook//Clock//EN", "CALSCALE:GREGORIAN"]
    for entry in entries:
        lines += _event(entry, stamp)
    return "".join(f"{_folded(line)}\r\n" for line in [*lines, "END:VCALENDAR"])


def _event(entry: Entry, stamp: str) -> list[str]:
    title = _escaped(entry.title)
    # An alarm whose time is over would ring at once on some devices.
    alarm = ["BEGIN:VALARM", "ACTION:DISPLAY", f"DESCRIPTION:{title}", _trigger(entry.rings_after), "END:VALARM"] if entry.alarm else []
    return ["BEGIN:VEVENT", f"UID:{_escaped(entry.uid)}", f"DTSTAMP:{stamp}", f"DTSTART:{_floating(entry.at)}",
            "DURATION:PT15M", f"SUMMARY:{title}", f"DESCRIPTION:{_escaped(entry.text)}", "TRANSP:TRANSPARENT", *alarm,
            "END:VEVENT"]


def _trigger(seconds: float) -> str:
    return f"TRIGGER:PT{round(seconds / MINUTE)}M" if seconds else "TRIGGER:PT0S"


def _floating(seconds: float) -> str:
    """A moment without a zone: a phone rings it by its own clock."""
    moment = at(seconds)
    return f"{moment.year:04d}{moment.month:02d}{moment.day:02d}T{moment.hour:02d}{moment.minute:02d}00"


def _escaped(text: str) -> str:
    """A text as a calendar takes it; what can't be seen or sent is left out."""
    plain = text.replace("\r\n", "\n").replace("\r", "\n")
    return "".join(character for character in plain
                   if character == "\n" or unicodedata.category(character) not in ("Cc", "Cs")).translate(_ESCAPED)


def _folded(line: str) -> str:
    """A long line broken into lines of at most 75 octets, never inside a character."""
    parts, part, room = [], "", _LONGEST
    for character in line:
        size = len(character.encode("utf-8"))
        if size > room:
            parts.append(part)
            # The space that begins a broken line counts as well.
            part, room = "", _LONGEST - 1
        part, room = part + character, room - size
    return "\r\n ".join([*parts, part])
