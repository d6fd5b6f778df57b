"""A schedule as a file for the maker's own calendar."""

import re
import zlib
from typing import Any

from brimbook.cards.file_name import file_name
from brimbook.draw.calendar import Entry, calendar
from brimbook.quantity.error import QuantityError
from brimbook.quantity.moments import DAY, HOUR, read_moment
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.aging import roughly
from brimbook.steps.cautions import Caution
from brimbook.steps.curing import Event
from brimbook.work_out import Answer

_STAMP = re.compile(r"[0-9]{8}T[0-9]{6}Z")
_LONGEST_NAME = 60
# Nobody unwraps, seals or fills at night: only demolding rings then. The others ring in the morning [s of the day].
_MORNING, _NIGHT = 8 * HOUR, 21 * HOUR
# What can hurt at a step of the schedule.
_CAUTIONS: dict[str, Caution] = {"demold": cautions.FRESH_CAST, "damp_until": cautions.FRESH_CAST, "dry": cautions.COATINGS,
                               "fill": cautions.DAMP_VESSEL}


def reminders(answer: Answer, place: Any, now: Any, stamp: Any) -> dict[str, str]:
    """The schedule of one cast as a calendar file: its name, kind and text [file].

    answer: everything worked out from the record [answer].
    place: path of the cast [text].
    now: what the maker's clock says; what is over by then gets no alarm [text].
    stamp: the same in universal time, as 20261124T093000Z [text].

    Raises QuantityError with a sentence where there is nothing to put into a calendar.
    """
    schedule = answer.schedules.get(place) if isinstance(place, str) else None
    if schedule is None or not schedule.events:
        raise QuantityError("There is no schedule to put into a calendar yet. Type when it was poured.")
    if not isinstance(now, str) or not isinstance(stamp, str) or not _STAMP.fullmatch(stamp):
        raise QuantityError("The clock of this device can't be read. Try again.")
    read_moment(stamp[:-1])
    clock = read_moment(now)
    entries = [_entry(answer.said, place, event, event.at > clock) for event in schedule.events]
    return {"name": f"{file_name(_name(answer.said)) or 'vessel'}.ics", "kind": "text/calendar", "text": calendar(entries, stamp)}


def _entry(said: Said, place: str, event: Event, alarm: bool) -> Entry:
    number = int(place.split(".")[1]) + 1
    name = _name(said) if number == 1 else f"{_name(said)}, mold {number}"
    off = [f"It may be {roughly(event.plus_minus, said.display)} earlier or later."] if event.plus_minus else []
    caution = _CAUTIONS.get(event.name)
    hurts = [f"{caution.title}. {caution.sentence}"] if caution else []
    # The same id at a second import, so that a calendar moves the entry and does not double it.
    vessel = file_name(said.text("id")) or _id_by_name(_name(said))
    title = f"{name}: {event.label[0].lower()}{event.label[1:]}"
    return Entry(f"{vessel}-{number}-{event.name}@brimbook", title, event.at, "\n".join([event.note, *off, *hurts]), alarm,
                 _until_morning(event))


def _until_morning(event: Event) -> float:
    """How long after its moment a step rings [s]."""
    clock = event.at % DAY
    if event.name == "demold" or _MORNING <= clock <= _NIGHT:
        return 0.0
    return _MORNING - clock + (DAY if clock > _NIGHT else 0.0)


def _id_by_name(name: str) -> str:
    """An id for a vessel that has none; names in letters of any script differ in it."""
    return f"{file_name(name) or 'vessel'}-{zlib.crc32(name.encode('utf-8', 'replace')):08x}"


def _name(said: Said) -> str:
    return " ".join(said.text("name").split())[:_LONGEST_NAME] or "Vessel"
