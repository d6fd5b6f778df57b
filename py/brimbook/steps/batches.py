"""The batches of a vessel: their lots, how many came out, how many are left."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said


@dataclass(frozen=True)
class Batch:
    """One batch: its lot, as typed or made from its date, and the vessels that came out and are still there [count].

    place: in the record [text].
    """

    place: str
    lot: str
    made_on: str
    made: float | None
    left: float | None
    figures: tuple[Figure, ...] = ()


def batches_of(said: Said) -> tuple[Batch, ...]:
    """Every batch of a vessel, in the order of the record [batches].

    said: the record as understood [said].
    """
    return ()
