"""A figure: a value that can show how it came about."""

from dataclasses import dataclass
from typing import Any

from brimbook.sources import Source


@dataclass(frozen=True)
class Constant:
    """A number that a formula takes from outside the record, with its source."""

    name: str
    shown: str
    source: Source

    def to_plain(self) -> dict[str, str]:
        """The constant as plain data [record]."""
        return {"name": self.name, "shown": self.shown, "source": self.source.text, "standing": self.source.standing}


@dataclass(frozen=True)
class Figure:
    """One result, with its unit, its ±, the sentence that tells it, and its working.

    numbers is the formula with the numbers put in: an arithmetic expression that
    can be worked out by hand, and is, in the tests. worked is its result before it
    is rounded to the maker's scale and told in their unit, where that differs.
    """

    key: str
    label: str
    value: float
    unit: str
    shown: str
    formula: str
    numbers: str
    says: str = ""
    worked: str = ""
    plus_minus: float | None = None
    plus_minus_shown: str = ""
    constants: tuple[Constant, ...] = ()
    uses: tuple[str, ...] = ()
    spread: str = ""
    notes: tuple[str, ...] = ()

    def to_plain(self) -> dict[str, Any]:
        """The figure as plain data for the page [record]."""
        worked = self.shown if self.worked in ("", self.shown) else f"{self.worked} ≈ {self.shown}"
        return {
            "key": self.key, "label": self.label, "says": self.says or f"{self.label}: {self.shown}",
            "shown": self.shown, "plus_minus": self.plus_minus_shown, "value": self.value, "unit": self.unit,
            "working": {"formula": self.formula, "numbers": f"{self.numbers} = {worked}",
                        "constants": [constant.to_plain() for constant in self.constants],
                        "uses": list(self.uses), "spread": self.spread},
            "notes": list(self.notes),
        }
