"""One question of a step, as the page shows it: what is typed there, what was understood, what is wrong."""

from typing import Any

from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.fields import Choice, leaf_at
from brimbook.record.said import QUANTITIES, Said, bare_unit, echo, localize

_KEYS = {
    "length": ["mm", "cm", "in", "½", "¼"],
    "volume": ["mL", "fl oz"],
    "density": ["g/mL", "kg/m³", "lb/ft³"],
    "share": ["%", "oz/lb"],
    "ratio": [":"],
    "parts": [":"],
    "duration": ["min", "h", "d"],
    "pressure": ["MPa", "psi"],
    "coverage": ["m²/L", "ft²/gal"],
    "heat": ["kJ/kg", "BTU/lb"],
}
_METRIC_MASS = ["g", "kg", "oz", "lb"]
_OUNCES = ["oz", "lb", "½", "¼", "g"]


def keys(kind: str, display: Display) -> list[str]:
    """What the number pad offers beside the digits [texts].

    kind: a kind of quantity [text].
    display: how this maker reads figures [display].

    >>> keys("mass", Display(mass="oz"))
    ['oz', 'lb', '½', '¼', 'g']
    """
    if kind == "mass":
        return _METRIC_MASS if display.mass == "g" else _OUNCES
    if kind == "temperature":
        return ["°F", "°C"] if display.temperature == "F" else ["°C", "°F"]
    return _KEYS.get(kind, [])


def ask(said: Said, path: str, label: str = "", choices: list[dict[str, Any]] | None = None,
        usual: str = "") -> dict[str, Any]:
    """One question, as plain data for the page [field].

    said: the record as understood [said].
    path: the leaf of the record that the answer goes to [text].
    label: what to call it here, if not by its own name [text].
    choices: the answers to choose from, if not the leaf's own [choices].
    usual: what is taken while it is empty, if not the leaf's own usual text [text].
    """
    leaf = leaf_at(path)
    if leaf is None:
        raise KeyError(path)
    if choices is None:
        choices = [plain_choice(choice) for choice in leaf.choices]
    value = said.text(path)
    if path in said.canonical and leaf.kind in QUANTITIES:
        value = localize(said.canonical[path], said.display)
    elif leaf.kind == "choice" and not value:
        value = usual or leaf.usual
    fault = said.fault_at(path)
    return {
        "path": path, "label": label or leaf.label, "kind": "choice" if choices else leaf.kind, "value": value,
        "unit": bare_unit(leaf, said.display), "echo": "" if fault else echo(said, path),
        "fault": fault, "note": _note(said, path, usual), "hint": leaf.hint,
        "keys": keys(leaf.kind, said.display), "choices": choices,
    }


def plain_choice(choice: Choice, sets: dict[str, str] | None = None) -> dict[str, Any]:
    """One answer to a choice, as plain data for the page [choice].

    choice: value, label and hint [choice].
    sets: other leaves that choosing it writes, by path [texts].
    """
    return {"value": choice.value, "label": choice.label, "hint": choice.hint, "sets": sets or {}}


def _note(said: Said, path: str, usual: str) -> str:
    """A word where what was typed is allowed but unlikely, or where the usual value stands in."""
    leaf, value = leaf_at(path), said.values.get(path)
    usual = usual or leaf.usual
    if usual and not said.typed(path) and leaf.kind != "choice":
        return f"Empty, so {localize(usual, said.display)} is taken."
    if path.endswith("fragrance.load") and value is not None and 0 < value < 0.005:
        meant = show.percent(value * 100, said.display)
        return f"That is {show.percent(value, said.display, 2)}, very little. Did you mean {meant}?"
    return ""
