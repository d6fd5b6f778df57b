"""The burn test: what its log tells of rate, hours, pool and flame, beside the published limits."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.filling import Filled
from brimbook.steps.melting import Due
from brimbook.steps.wicks import WickPlan


@dataclass(frozen=True)
class Burn:
    """The burn test: its figures, verdicts in words, and what is due when while a cycle burns."""

    figures: tuple[Figure, ...]
    verdicts: tuple[str, ...] = ()
    due: tuple[Due, ...] = ()


def burning(said: Said, place: str, plan: WickPlan | None, filled: Filled | None) -> Burn:
    """The burn test of a well [burn].

    said: the record as understood [said].
    place: path of the well [text].
    plan: of the wicks [plan].
    filled: what the well holds, where that is known [filled].
    """
    return Burn(())
