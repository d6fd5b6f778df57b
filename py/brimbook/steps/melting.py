"""Melting: temperature windows, stirring, and when the pot will have cooled to where it is poured."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.pot import Potful


@dataclass(frozen=True)
class Due:
    """Something to do at a moment [s]."""

    label: str
    at: float


@dataclass(frozen=True)
class Melt:
    """The melting of a pot: its figures, and what is due when, where the maker logged the thermometer."""

    figures: tuple[Figure, ...]
    due: tuple[Due, ...] = ()


def melting(said: Said, place: str, blend: Blend | None, potful: Potful | None) -> Melt:
    """The melting of a pot [melt].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    potful: all that is melted [potful].
    """
    return Melt(())
