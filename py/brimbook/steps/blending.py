"""The blend of a pot: waxes, fragrance and dye, how hot and cold they fill."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said


@dataclass(frozen=True)
class Blend:
    """What one gram of wax makes with its fragrance and dye, as the pot of a well is planned.

    load and dye are for a gram of wax; hot and cold are the blend from a gram of wax [mL], None where unknown;
    pour_at is the temperature it is poured at [°C].
    """

    place: str
    load: float
    dye: float
    hot: float | None
    cold: float | None
    pour_at: float
    figures: tuple[Figure, ...]


def blending(said: Said, place: str) -> Blend | None:
    """The blend of a well's own pot; none while an entry that it needs is missing or faulty [blend].

    said: the record as understood [said].
    place: path of the well [text].
    """
    return None
