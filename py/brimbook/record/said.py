"""What the maker said: every leaf of a record read, all faults reported at once."""

import datetime
from dataclasses import dataclass, field
from typing import Any

from brimbook.quantity import show
from brimbook.quantity.error import QuantityError
from brimbook.quantity.read import read
from brimbook.quantity.show import Display
from brimbook.record import tree
from brimbook.record.fields import VERSION, Leaf, leaf_at

QUANTITIES = {"mass", "volume", "length", "temperature", "density", "share", "ratio", "count", "number"}


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
        if self.typed(path) or leaf is None or not leaf.usual:
            return None
        return _understand(leaf, leaf.usual, self.display)[0]

    def count(self, path: str) -> int:
        """How many items a list of the record has [count].

        path: a list of the record [text].
        """
        part: Any = self.record
        for step in path.split("."):
            part = part[int(step)] if isinstance(part, list) else part.get(step, []) if isinstance(part, dict) else []
        return len(part) if isinstance(part, list) else 0

    def fault(self, path: str, sentence: str) -> None:
        """Report what is wrong at a place that can only be seen beside others [nothing].

        path: a leaf of the record [text].
        sentence: what is wrong and what would be right [text].
        """
        leaf = leaf_at(path)
        self.faults.append(Fault(path, leaf.label if leaf else path, sentence))


def understand(record: Any, display: Display) -> Said:
    """Read every leaf of a record, whatever its shape [said].

    record: plain data, from the page, a link or a file [record].
    display: how this maker reads figures [display].

    >>> understand({"casts": [{"pieces": "two"}]}, Display()).faults[0].label
    'Pieces'
    """
    if not isinstance(record, dict) or not tree.within_limits(record):
        said = Said({}, display)
        said.faults.append(Fault("", "The vessel", "This is not a vessel's record. Open another link, or start anew."))
        return said
    said = Said(record, display)
    for path, leaf_text in tree.leaves(record):
        _take(said, path, leaf_text)
    return said


def _take(said: Said, path: str, text: Any) -> None:
    leaf = leaf_at(path)
    if path == "version" and text != VERSION:
        newer = "This vessel was kept by another version of this page; what is not known here is kept as it is."
        said.faults.append(Fault(path, "The vessel", newer))
    if leaf is None or path == "version":
        return
    if not isinstance(text, str):
        said.faults.append(Fault(path, leaf.label, f"{leaf.label} can't be read. Type it again."))
        return
    said.texts[path] = text
    if not text.strip():
        return
    try:
        said.values[path], said.canonical[path] = _understand(leaf, text, said.display)
    except QuantityError as error:
        said.faults.append(Fault(path, leaf.label, error.sentence))


def _understand(leaf: Leaf, text: str, display: Display) -> tuple[Any, str]:
    if leaf.kind in QUANTITIES:
        quantity = read(text, leaf.kind, leaf.bounds, _bare_unit(leaf.kind, display), display.decimal)
        return quantity.value, quantity.canonical
    if leaf.kind == "choice":
        return _choice(leaf, text), text
    if leaf.kind == "date":
        return _date(text), text.strip()
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


def bare_unit(kind: str, display: Display) -> str:
    """The unit that a bare number takes, as the maker sees it [text].

    kind: a kind of quantity [text].
    display: how this maker reads figures [display].

    >>> bare_unit("mass", Display()), bare_unit("temperature", Display(temperature="F"))
    ('g', '°F')
    """
    return {"mass": display.mass_word, "length": display.length_word, "volume": "mL", "density": "g/mL", "share": "%",
            "temperature": "°F" if display.temperature == "F" else "°C"}.get(kind, "")


def _bare_unit(kind: str, display: Display) -> str:
    return bare_unit(kind, display).lower()


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
    shown = _shown(leaf.kind, value, said.display)
    return canonical if shown in ("", canonical) else f"{canonical} = {shown}"


def localize(canonical: str, display: Display) -> str:
    """A canonical text with the maker's decimal mark [text].

    canonical: as Quantity.canonical [text].
    display: how this maker reads figures [display].

    >>> localize("0.25", Display(decimal="comma"))
    '0,25'
    """
    return canonical.replace(".", ",") if display.decimal == "comma" else canonical


def _shown(kind: str, value: float, display: Display) -> str:
    if kind == "mass":
        return _as_typed_mass(value, display)
    if kind == "ratio":
        parts = f"{show.significant(1 / value, 3, display)} parts powder to 1 of water"
        return f"{parts}, water {show.percent(value, display)} of the powder"
    if kind == "share":
        return show.percent(value, display, 2)
    told = {"length": show.length, "temperature": show.temperature, "volume": show.volume, "density": show.density}
    return told[kind](value, display) if kind in told else ""


def _as_typed_mass(value: float, display: Display) -> str:
    """An entry is told back as exactly as it was typed, not rounded to the scale."""
    exact = Display(display.mass, display.length, display.temperature, display.decimal, min(display.readability, 0.1))
    shown = show.mass(value, exact)
    return shown.replace(".0 g", " g").replace(",0 g", " g")
