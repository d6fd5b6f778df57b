"""The temperatures of a pot and its rest: the maker's own first, else those that are common for its wax."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.figure import Constant
from brimbook.quantity import show
from brimbook.quantity.moments import DAY
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.sources import Source


@dataclass(frozen=True)
class Window:
    """What is common for a wax [°C]: from low to high, usual between them."""

    low: float
    usual: float
    high: float

    def shown(self, display: Display) -> str:
        """From low to high in the maker's unit [text].

        display: how this maker reads figures [display].
        """
        return f"{show.temperature(self.low, display)} to {show.temperature(self.high, display)}"


# Common practice for melting, fragrance, pour and second pour; the sheet of the maker's own wax decides.
_WINDOWS = {
    "soy": {"melt_at": Window(75, 80, 85), "scent_at": Window(70, 75, 85), "pour_at": Window(55, 60, 65),
            "second_at": Window(60, 65, 70)},
    "paraffin": {"melt_at": Window(80, 90, 95), "scent_at": Window(75, 85, 90), "pour_at": Window(75, 80, 85),
                 "second_at": Window(80, 85, 90)},
    "beeswax": {"melt_at": Window(70, 80, 85), "scent_at": Window(70, 75, 80), "pour_at": Window(65, 70, 75),
                "second_at": Window(70, 75, 80)},
}
# Of a wax that is not known: wide enough for most.
_UNKNOWN = {"melt_at": Window(70, 80, 95), "scent_at": Window(70, 75, 85), "pour_at": Window(55, 65, 85),
            "second_at": Window(60, 70, 90)}

# Where a wax melts, and who says so.
_MELTS = {"soy": ((49.0, 57.0), sources.SOY_MELTS), "paraffin": ((46.0, 68.0), sources.PARAFFIN_MELTS),
          "beeswax": ((62.0, 64.0), sources.BEESWAX_MELTS)}
# Rest before a burn test [d]: the longer end of what is told for the wax.
_RESTS = {"paraffin": 2}
_LONGEST_REST = 14


def window(said: Said, place: str, name: str) -> Window:
    """What is common for the wax of a pot [window].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    name: melt_at, scent_at, pour_at or second_at [text].
    """
    return _WINDOWS.get(said.text(f"{place}.wax.kind"), _UNKNOWN)[name]


def temperature_of(said: Said, place: str, name: str) -> float | None:
    """A temperature of a pot, or nothing where the entry is faulty [°C].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    name: melt_at, scent_at, pour_at or second_at [text].
    """
    path = f"{place}.melting.{name}"
    return said.value(path) if said.typed(path) else window(said, place, name).usual


def temperature_constant(said: Said, place: str, name: str, label: str) -> Constant | None:
    """A temperature of a pot with where it comes from, or nothing where the entry is faulty [constant].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    name: melt_at, scent_at, pour_at or second_at [text].
    label: what it is called [text].
    """
    value = temperature_of(said, place, name)
    if value is None:
        return None
    common = value == window(said, place, name).usual
    return Constant(label, show.temperature(value, said.display), sources.PRACTICE if common else sources.YOURS)


def melt_at(said: Said, place: str) -> float | None:
    """The temperature that the wax is heated to [°C].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    return temperature_of(said, place, "melt_at")


def scent_at(said: Said, place: str) -> float | None:
    """The temperature that fragrance goes in at [°C].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    return temperature_of(said, place, "scent_at")


def pour_at(said: Said, place: str) -> float | None:
    """The temperature that it is poured at [°C].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    return temperature_of(said, place, "pour_at")


def second_at(said: Said, place: str) -> float | None:
    """The temperature of a second pour [°C].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    return temperature_of(said, place, "second_at")


def melts(said: Said, place: str) -> tuple[float, float, Source] | None:
    """From where to where the wax melts, and who says so; nothing where that is unknown [°C, °C and source].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    typed = said.value(f"{place}.melting.melts_at")
    if typed is not None:
        return typed, typed, sources.YOURS
    known = _MELTS.get(said.text(f"{place}.wax.kind"))
    return None if known is None else (*known[0], known[1])


def rest_stands_in(said: Said, place: str) -> str:
    """The text that is taken for the rest before a burn test while the maker leaves it empty [text].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    return f"{_RESTS.get(said.text(f'{place}.wax.kind'), _LONGEST_REST)} d"


def rest(said: Said, place: str) -> float | None:
    """How long a candle rests before its burn test, or nothing where the entry is faulty [s].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    path = f"{place}.melting.rest"
    return said.value(path) if said.typed(path) else float(rest_stands_in(said, place).split()[0]) * DAY


def rested_at(said: Said, place: str) -> float | None:
    """When a candle has rested long enough for its burn test, or nothing where it is not known when it was poured [s].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    poured, rests = said.value(f"{place}.melting.poured"), rest(said, place)
    return None if None in (poured, rests) else poured + rests
