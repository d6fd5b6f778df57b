"""What the maker said: every leaf of a record read, all faults reported at once."""

import datetime
import re
from dataclasses import dataclass, field
from typing import Any

from brimbook.quantity import show
from brimbook.quantity.error import QuantityError
from brimbook.quantity.moments import moment_text, read_moment
from brimbook.quantity.read import read
from brimbook.quantity.show import Display
from brimbook.quantity.units import KINDS, from_base
from brimbook.record import tree
from brimbook.record.fields import VERSION, Leaf, leaf_at, shape_at

QUANTITIES = frozenset(KINDS)
# So many molds or wells are worked out; a page of more is no longer read.
MOST_ITEMS = 400


@dataclass(frozen=True)
class Fault:
    """What is wrong at one place of the record, and what would be right."""

    path: str
    label: str
    sentence: str


@dataclass
class Said:
    """A record as it was understood. Values are in base units (g, mL, mm, °C, g/mL, plain shares)."""

    record: dict[str, Any]
    display: Display
    texts: dict[str, str] = field(default_factory=dict)
    values: dict[str, Any] = field(default_factory=dict)
    canonical: dict[str, str] = field(default_factory=dict)
    faults: list[Fault] = field(default_factory=list)
    lengths: dict[str, int] = field(default_factory=dict)
    _sentences: dict[str, str] = field(default_factory=dict)
    _by_item: dict[str, list[Fault]] = field(default_factory=dict)
    _usual: dict[tuple[str, str, str], Any] = field(default_factory=dict)

    def text(self, path: str) -> str:
        """What stands at a place, as typed, or nothing [text].

        path: a leaf of the record [text].
        """
        return self.texts.get(path, "")

    def typed(self, path: str) -> bool:
        """Did the maker put anything in this place [yes or no]?

        path: a leaf of the record [text].
        """
        return bool(self.text(path).strip())

    def value(self, path: str) -> Any:
        """What was understood at a place: the usual value where it is empty, nothing where it is faulty [base unit].

        path: a leaf of the record [text].
        """
        if path in self.values:
            return self.values[path]
        leaf = leaf_at(path)
        return None if self.typed(path) or leaf is None or not leaf.usual else self._taken(leaf)

    def _taken(self, leaf: Leaf) -> Any:
        """The usual value of a leaf, read once: bounds and choices can't change what a usual text means."""
        known = (leaf.kind, leaf.usual, leaf.unit)
        if known not in self._usual:
            self._usual[known] = understand_text(leaf, leaf.usual, self.display)[0]
        return self._usual[known]

    def is_usual(self, path: str) -> bool:
        """Does the usual value stand at a place, typed or not, however it is spelled [yes or no]?

        path: a leaf of the record [text].
        """
        leaf, value = leaf_at(path), self.value(path)
        return value is not None and value == self._taken(leaf)

    def count(self, path: str) -> int:
        """How many items of a list are worked out; none where there is no list [count].

        path: a list of the record [text].
        """
        return self.lengths.get(path, 0)

    def fault(self, path: str, sentence: str) -> None:
        """Report what is wrong at a place that can only be seen beside others [nothing].

        path: a leaf of the record [text].
        sentence: what is wrong and what would be right [text].
        """
        leaf = leaf_at(path)
        self.mark(Fault(path, leaf.label if leaf else path, sentence))

    def mark(self, fault: Fault) -> None:
        """Add a fault to those that are told [nothing].

        fault: with its path, label and sentence [fault].
        """
        self.faults.append(fault)
        self._sentences.setdefault(fault.path, fault.sentence)
        self._by_item.setdefault(tree.item_of(fault.path), []).append(fault)

    def fault_at(self, path: str) -> str:
        """The first that is wrong at a place, or nothing [text].

        path: a leaf of the record [text].
        """
        return self._sentences.get(path, "")

    def is_marked_below(self, place: str) -> bool:
        """Is an entry below a place of the record faulty [yes or no]?

        place: a cast, a well, or a part of one [text].
        """
        return any(fault.path.startswith(f"{place}.") for fault in self._by_item.get(tree.item_of(place), ()))


def understand(record: Any, display: Display) -> Said:
    """Read every leaf of a record, whatever its shape [said].

    record: plain data, from the page, a link or a file [record].
    display: how this maker reads figures [display].

    >>> understand({"casts": [{"pieces": "two"}]}, Display()).faults[0].label
    'Pieces'
    """
    if not isinstance(record, dict) or not tree.within_limits(record):
        said = Said({}, display)
        said.mark(Fault("", "The vessel", "This is not a vessel's record. Open another link, or start anew."))
        return said
    said = Said(record, display)
    for path, part in tree.parts(record):
        if isinstance(part, list):
            said.lengths[path] = _length(said, path, part)
        _take(said, path, part)
    return said


def _length(said: Said, path: str, part: list) -> int:
    if path not in ("casts", "wells") or len(part) <= MOST_ITEMS:
        return len(part)
    said.mark(Fault(path, "The vessel", f"There are {len(part)} of them here, and {MOST_ITEMS} are shown. All are kept."))
    return MOST_ITEMS


def _take(said: Said, path: str, part: Any) -> None:
    leaf, shape = leaf_at(path), shape_at(path)
    if path == "version" and str(part) != str(VERSION):
        newer = "This vessel was kept by another version of this page; what is not known here is kept as it is."
        said.mark(Fault(path, "The vessel", newer))
    elif shape is not None and not isinstance(part, shape):
        said.mark(Fault(path, "The vessel", "A part of this vessel can't be read. It is kept as it is."))
    elif leaf is not None and isinstance(part, str):
        _take_text(said, path, leaf, part)
    elif leaf is not None:
        said.texts[path] = str(part)
        said.mark(Fault(path, leaf.label, f"{leaf.label} can't be read. Type it again."))


def _take_text(said: Said, path: str, leaf: Leaf, text: str) -> None:
    said.texts[path] = text
    if not text.strip():
        return
    try:
        said.values[path], said.canonical[path] = understand_text(leaf, text, said.display)
    except QuantityError as error:
        said.mark(Fault(path, leaf.label, error.sentence))


def understand_text(leaf: Leaf, text: str, display: Display) -> tuple[Any, str]:
    """The value of one leaf's text, and the text that always means it [value and text].

    leaf: of the record [leaf].
    text: as typed [text].
    display: how this maker reads figures [display].

    Raises QuantityError with a sentence that says what would be right.
    """
    if leaf.kind in QUANTITIES:
        quantity = read(text, leaf.kind, leaf.bounds, _unit_word(leaf, display), display.decimal)
        return quantity.value, quantity.canonical
    if leaf.kind == "choice":
        return _choice(leaf, text), text
    if leaf.kind == "date":
        return _date(text), text.strip()
    if leaf.kind == "moment":
        seconds = read_moment(text)
        return seconds, moment_text(seconds)
    if len(text) > leaf.longest:
        raise QuantityError(f"{leaf.label} has room for {leaf.longest} letters. Shorten it.")
    return text, text


def _choice(leaf: Leaf, text: str) -> str:
    if text not in [choice.value for choice in leaf.choices]:
        raise QuantityError(f"Choose one of: {', '.join(choice.label for choice in leaf.choices)}.")
    return text


def _date(text: str) -> str:
    try:
        return datetime.date.fromisoformat(text.strip()).isoformat()
    except ValueError:
        raise QuantityError("Type the date as year, month, day: 2026-03-14.") from None


def bare_unit(leaf: Leaf, display: Display) -> str:
    """The unit that a bare number takes, as the maker sees it [text].

    leaf: of the record [leaf].
    display: how this maker reads figures [display].

    >>> bare_unit(Leaf("mass", "Water"), Display()), bare_unit(Leaf("temperature", "Room"), Display(temperature="F"))
    ('g', '°F')
    """
    usual = {"mass": display.mass_word, "length": display.length_word, "volume": "mL", "density": "g/mL", "share": "%",
             "temperature": "°F" if display.temperature == "F" else "°C", "duration": "min", "pressure": "MPa",
             "coverage": "m²/L", "heat": "kJ/kg", "money": display.currency}
    return leaf.unit or usual.get(leaf.kind, "")


def _unit_word(leaf: Leaf, display: Display) -> str:
    """The same as the reader knows it."""
    return bare_unit(leaf, display).lower().translate(_PLAIN_POWERS)


_PLAIN_POWERS = str.maketrans("²³", "23")


def echo(said: Said, path: str) -> str:
    """What was understood at a place, told in the maker's own units [text].

    path: a leaf of the record [text].
    said: the record as understood [said].

    >>> echo(understand({"casts": [{"scooped": "1 lb 4 oz"}]}, Display()), "casts.0.scooped")
    '1 lb 4 oz = 567 g'
    """
    leaf, value = leaf_at(path), said.values.get(path)
    if leaf is None or value is None or leaf.kind not in QUANTITIES:
        return ""
    canonical = localize(said.canonical[path], said.display)
    shown = _in_other_words(leaf, value, said)
    return f"{canonical} = {shown}" if shown and not _in_own_words(leaf, said.canonical[path], said) else canonical


def localize(canonical: str, display: Display) -> str:
    """A canonical text as the maker would write it [text].

    canonical: as Quantity.canonical [text].
    display: how this maker reads figures [display].

    >>> localize("0.25", Display(decimal="comma")), localize("1.2340 kg", Display())
    ('0,25', '1.234 kg')
    """
    # The zero that keeps a point from being read as a mark of thousands is not the maker's.
    plain = re.sub(r"(\.\d{3})0(?!\d)", r"\1", canonical)
    return plain.replace(".", ",") if display.decimal == "comma" else plain


def _in_own_words(leaf: Leaf, canonical: str, said: Said) -> bool:
    """Was it typed just as this maker's figures are shown?"""
    if leaf.kind == "mass" and said.display.mass == "lb":
        return canonical.endswith(("lb", "oz"))
    number, _, unit = canonical.rpartition(" ")
    return bool(number) and " " not in number and unit == bare_unit(leaf, said.display)


# As finely as each unit is typed at a bench.
_DECIMALS = {"g": 1, "oz": 3, "mm": 2, "in": 3, "g/mL": 4}


def _in_other_words(leaf: Leaf, value: float, said: Said) -> str:
    """The same told in the maker's own unit, as exactly as it was typed."""
    told, kind = show.significant, leaf.kind
    if kind == "ratio":
        parts = f"{told(1 / value, 3, said.display)} parts powder to 1 of water"
        return f"{parts}, water {show.percent(value, said.display)} of the powder"
    if kind in ("mass", "length", "density"):
        unit = bare_unit(leaf, said.display)
        return f"{show.trimmed(from_base(value, unit.lower()), _DECIMALS[unit], said.display)} {unit}"
    if kind == "share":
        return f"{told(value * 100, 4, said.display)} %"
    return show.temperature(value, said.display) if kind == "temperature" else ""
