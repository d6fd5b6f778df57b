"""The order of the job: a record goes in, every figure comes out."""

from dataclasses import dataclass, field
from typing import Any

from brimbook.figure import Figure
from brimbook.quantity.show import Display
from brimbook.record.said import Said, understand
from brimbook.steps.filling import filling
from brimbook.steps.measure import Measurement, measure
from brimbook.steps.mixing import mixing


@dataclass
class Answer:
    """Everything worked out from a record."""

    said: Said
    figures: dict[str, Figure] = field(default_factory=dict)
    rooms: dict[str, Measurement] = field(default_factory=dict)


def work_out(record: dict[str, Any], display: Display = Display()) -> Answer:
    """Every figure of a vessel, from what the maker said alone [answer].

    record: plain data as the page, a link or a file holds it [record].
    display: how this maker reads figures [display].

    Nothing is raised for a bad entry: it is a fault in answer.said.faults, and the
    figures that need it are missing.

    >>> cup = {"casts": [{"cavity": {"readings": [{"water": "640"}]},
    ...                   "mix": {"powder": {"particle_density": "2.98"}}}]}
    >>> answer = work_out(cup)
    >>> answer.figures["casts.0.powder"].says, answer.figures["casts.0.water"].says
    ('Weigh 1205 g powder', 'Weigh 301 g water')
    """
    answer = Answer(understand(record, display))
    for place in places(answer.said, "casts"):
        _cast(answer, place)
    for place in places(answer.said, "wells"):
        _well(answer, place)
    return answer


def places(said: Said, name: str) -> list[str]:
    """The path of each item of one of the record's lists [texts].

    said: the record as understood [said].
    name: casts or wells [text].
    """
    return [f"{name}.{number}" for number in range(said.count(name))]


def _cast(answer: Answer, place: str) -> None:
    cavity = measure(answer.said, f"{place}.cavity")
    if cavity is not None:
        _keep(answer, cavity, mixing(answer.said, place, cavity))


def _well(answer: Answer, place: str) -> None:
    porous = answer.said.value(f"{place}.sealed") != "yes"
    room = measure(answer.said, f"{place}.fill", porous)
    if room is not None:
        _keep(answer, room, filling(answer.said, place, room))


def _keep(answer: Answer, room: Measurement, figures: list[Figure]) -> None:
    answer.rooms[room.place] = room
    answer.figures.update({figure.key: figure for figure in [*room.figures, *figures]})
