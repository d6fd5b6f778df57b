"""Wicks: how many, and where they stand, so that their pools reach the whole surface of the wax."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.shape.covering import Covering
from brimbook.shape.outline import Outline


@dataclass(frozen=True)
class WickPlan:
    """The outline of the wax surface and the wicks in it.

    covering is that of the wicks shown; best is the best one for each count that has room, fewest first; is_moved says that the maker moved one.
    """

    outline: Outline
    covering: Covering | None
    best: tuple[Covering, ...]
    is_moved: bool
    figures: tuple[Figure, ...]


def wicks(said: Said, place: str) -> WickPlan | None:
    """The wick plan of a well; none while its outline is unknown [plan].

    said: the record as understood [said].
    place: path of the well [text].
    """
    return None
