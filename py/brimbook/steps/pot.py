"""One pot of wax for several wells and several vessels: its size, what is left over, what each well takes."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.filling import Filled


@dataclass(frozen=True)
class Potful:
    """All that is melted at once [g], in [mL] hot."""

    total: float
    volume: float | None
    figures: tuple[Figure, ...]


def pot(said: Said, place: str, blend: Blend, wells: tuple[Filled, ...]) -> Potful | None:
    """The pot of a well, for all wells and vessels that are filled from it; none while it is unknown [potful].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    wells: filled from it [filled].
    """
    return None
