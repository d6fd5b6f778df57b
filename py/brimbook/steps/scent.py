"""Scents: shares, limits, flash points, and what their sensitizers come to in the finished candle."""

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.blending import Blend


def scent(said: Said, place: str, blend: Blend | None) -> list[Figure]:
    """Every figure of this step [figures].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    """
    return []
