"""What one leaf of a vessel's record holds."""

from dataclasses import dataclass, field

from brimbook.quantity.read import Bounds


@dataclass(frozen=True)
class Choice:
    """One of the answers to a choice."""

    value: str
    label: str
    hint: str = ""


@dataclass(frozen=True)
class Leaf:
    """What one leaf of the record holds.

    kind is a kind of quantity, or text, date, moment or choice. usual is taken when
    the maker leaves the place empty. bounds are in the base unit of the kind. unit is
    what a bare number takes here, where it is not the maker's usual one. A private
    leaf is left out of links unless the maker asks for it, a large one always.
    """

    kind: str
    label: str
    usual: str = ""
    bounds: Bounds = Bounds(0.0, 1e6)
    hint: str = ""
    longest: int = 60
    choices: tuple[Choice, ...] = field(default=())
    unit: str = ""
    private: bool = False
    large: bool = False


WEIGHT = Bounds(0.001, 100_000, "A weight here is more than 0 and at most 100 kg. Check the digits and the unit.")
DIMENSION = Bounds(0.1, 3000, "A length here is between 0.1 mm and 3 m. Check the digits and the unit.")
SMALL_LENGTH = Bounds(0.0, 20, "This is how far off it may be: between 0 and 20 mm.")
VOLUME = Bounds(0.1, 1_000_000, "A volume here is between 0.1 mL and 1000 L. Check the digits and the unit.")
ROOM_AIR = Bounds(-20, 60, "A bench is between −20 and 60 °C (−4 and 140 °F). Check the digits and the unit.")
SHARE = Bounds(0.0, 1.0, "A share here is between 0 and 100 %.")
MONEY = Bounds(0.0, 1_000_000, "A price here is between 0 and 1000000.")
TIME = Bounds(1.0, 366 * 86400, "A time here is between 1 second and a year. Check the digits and the unit.")
YES_NO = (Choice("no", "No"), Choice("yes", "Yes"))
