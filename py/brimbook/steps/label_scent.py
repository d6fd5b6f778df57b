"""What a label says of the scent of a vessel's wells, and of what is in them that some are allergic to."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.scent import rows_of, scent_path
from brimbook.steps.sensitizers import CLASSIFIES, NAMED, OF_CANDLE, UNNAMED


@dataclass(frozen=True)
class Allergens:
    """Substances that a label names, those that classify the candle first; nameless is there one without a name?"""

    classify: tuple[str, ...] = ()
    named: tuple[str, ...] = ()
    nameless: bool = False

    @property
    def all(self) -> tuple[str, ...]:
        """Every name, once [texts]."""
        return tuple(dict.fromkeys((*self.classify, *self.named)))


def pots_of(said: Said) -> list[str]:
    """The wells that have a pot of their own, from which all wells are filled [texts].

    said: the record as understood [said].
    """
    wells = [f"wells.{number}" for number in range(said.count("wells"))]
    return [well for well in wells if well == "wells.0" or said.value(f"{well}.pot") != "first"]


def is_scented(said: Said) -> bool:
    """Is there fragrance in any pot [yes or no]?

    said: the record as understood [said].
    """
    return any(said.value(f"{pot}.fragrance.load") for pot in pots_of(said))


def scents_of(said: Said, place: str) -> str:
    """The scent as the label tells it: as typed, else the names of all that goes in [text].

    said: the record as understood [said].
    place: path of the label [text].
    """
    typed = said.text(f"{place}.scents").strip()
    if typed:
        return typed if said.value(f"{place}.scents") is not None else ""
    names: list[str] = []
    for pot in pots_of(said):
        if said.value(f"{pot}.fragrance.load"):
            apart = [said.text(f"{scent_path(pot, row)}.name").strip() for row in rows_of(said, pot) if said.value(f"{scent_path(pot, row)}.parts")]
            names += [name for name in apart if name] or [said.text(f"{pot}.fragrance.name").strip()]
    return ", ".join(dict.fromkeys(name for name in names if name))


def allergens_of(said: Said, figures: dict[str, Figure]) -> Allergens:
    """What the label of a candle names by the sheets of its scents: as careful as the pot that holds most of it [allergens].

    said: the record as understood [said].
    figures: worked out so far, by key [figures].
    """
    classify, named, nameless = [], [], False
    marks = tuple(f"{pot}.scent.sensitizer_" for pot in pots_of(said))
    for key, figure in figures.items():
        if key.startswith(marks) and figure.says.endswith((CLASSIFIES, NAMED)):
            name = figure.label.removesuffix(OF_CANDLE)
            nameless = nameless or name.startswith(UNNAMED)
            if not name.startswith(UNNAMED):
                (classify if figure.says.endswith(CLASSIFIES) else named).append(name)
    return Allergens(tuple(dict.fromkeys(classify)), tuple(name for name in dict.fromkeys(named) if name not in classify), nameless)
