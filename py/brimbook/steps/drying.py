"""Dry enough to fill: the vessel's weight as it dries."""

from dataclasses import dataclass, field

from brimbook.figure import Figure
from brimbook.record.said import Said


@dataclass
class Dryness:
    """How dry a vessel is: when it will be dry enough [s since 2000], if that can be told, and the figures."""

    dry_at: float | None
    figures: list[Figure] = field(default_factory=list)


def drying(said: Said, place: str) -> Dryness | None:
    """How dry the vessel is; nothing before anything is weighed [dryness].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    return None
