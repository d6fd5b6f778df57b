"""What the label says: net weight, letters, cautions, scent, lot and burn time."""

from dataclasses import dataclass

from brimbook.draw.label import Label
from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.batches import Batch
from brimbook.steps.burning import Burn
from brimbook.steps.filling import Filled


@dataclass(frozen=True)
class Labeled:
    """A label with the figures that it rests on, and what it can't know."""

    place: str
    label: Label | None
    figures: tuple[Figure, ...]
    notes: tuple[str, ...] = ()


def labeled(said: Said, place: str, fills: dict[str, Filled], burns: dict[str, Burn], figures: dict[str, Figure],
            batches: tuple[Batch, ...]) -> Labeled:
    """A label of a vessel, as far as the entries go [labeled].

    said: the record as understood [said].
    place: path of the label [text].
    fills: what each well takes, by its path [fills].
    burns: the burn test of each well, by its path [burns].
    figures: worked out so far, by key [figures].
    batches: of the vessel [batches].
    """
    return Labeled(place, None, ())
