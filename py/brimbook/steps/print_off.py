"""How far a print is off, as the ± of a volume: sizes by calipers, and shrinkage."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.figure import Constant
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.steps.weighing import practice_or_yours

# Common practice, no source: what cools on a printer's bed is shorter by up to so much, every way [–].
SHRINKS = 0.003


@dataclass(frozen=True)
class PrintOff:
    """The parts of a ± [mL], how each is told, and what they take from outside the record."""

    parts: tuple[float, ...]
    told: tuple[str, ...]
    constants: tuple[Constant, ...]


def print_off(said: Said, path: str, volume: float, surface: float) -> PrintOff:
    """How far a volume is off because its print is [parts of a ±].

    said: the record as understood [said].
    path: the leaf of the record that tells how far sizes of the print are off [text].
    volume: as drawn [mL].
    surface: all around it [mm²].

    A size is taken between two faces, so each face is off by half of that, and all of them the same way: a line of plastic
    that comes out too wide makes every room narrower. Shrinkage makes all of a print smaller, in proportion.
    """
    off = said.value(path) or 0.0
    faces, shrunk = surface * off / 2 / 1000, 3 * SHRINKS * volume
    size, share = show.length(off, said.display), show.percent(SHRINKS, said.display)
    told = (f"each face off by half of {size}, all the same way, over {show_more.area(surface, said.display)}: {_put(said, faces)} mL",
            f"shrinkage of {share} every way: {_put(said, shrunk)} mL")
    return PrintOff((faces, shrunk), told, (practice_or_yours(said, path, "Sizes of a print are off by", size),
                                            Constant("A print shrinks by up to", share, sources.PRACTICE)))


def _put(said: Said, milliliters: float) -> str:
    return show.plus_minus(milliliters, said.display)
