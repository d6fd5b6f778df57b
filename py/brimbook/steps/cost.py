"""What a vessel costs: materials, mold, power, work, packaging, and what fails."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.supplies import Supply

# Only the first of the list is worked out: a vessel has one cost.
PLACE = "selling.0"


@dataclass(frozen=True)
class Part:
    """One part of the cost of a good vessel, in the maker's currency; shown is rounded so that the parts shown add up."""

    name: str
    amount: float
    shown: str
    key: str


@dataclass(frozen=True)
class Costing:
    """What one good vessel costs, with its parts; and what a batch costs, of so many good vessels [currency, count].

    complete: is every price known?
    """

    each: float
    batch: float
    vessels: float
    parts: tuple[Part, ...]
    figures: tuple[Figure, ...]
    complete: bool = True


def costing(said: Said, supplies: tuple[Supply, ...], figures: dict[str, Figure]) -> Costing | None:
    """The cost of a vessel; none while no price at all is known [costing].

    said: the record as understood [said].
    supplies: what one vessel takes [supplies].
    figures: worked out so far, by key [figures].
    """
    return None
