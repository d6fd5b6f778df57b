"""How one maker reads figures: their settings, told as questions, read into a Display."""

from typing import Any

from brimbook.cards.asking import keys, plain_choice
from brimbook.quantity.error import QuantityError
from brimbook.quantity.read import Bounds, read
from brimbook.quantity.show import Display
from brimbook.record.fields import Choice

USUAL = {"mass": "g", "length": "mm", "temperature": "C", "decimal": "either", "paper": "auto", "readability": "1 g", "currency": "$"}

_CHOICES = {
    "mass": ("Weights in", (Choice("g", "Grams"), Choice("oz", "Ounces"), Choice("lb", "Pounds and ounces"))),
    "length": ("Lengths in", (Choice("mm", "Millimeters"), Choice("in", "Inches"))),
    "temperature": ("Temperatures in", (Choice("C", "°C"), Choice("F", "°F"))),
    "decimal": ("A comma in a number", (
        Choice("either", "As it fits", "12,5 is 12.5 and 1,250 g is 1250 g. Where both could be, you are asked."),
        Choice("point", "Between thousands", "1,250 is 1250; the decimal mark is a point."),
        Choice("comma", "Is the decimal mark", "1,25 is one and a quarter."))),
    "paper": ("Printed on", (Choice("auto", "As the lengths", "A4 with millimeters, Letter with inches."),
                             Choice("A4", "A4"), Choice("Letter", "Letter"))),
}
LONGEST_CURRENCY = 6
_READABILITY = Bounds(0.001, 100, "The steps of a scale are between 0.001 g and 100 g: usually 1 g.")


def whole(settings: Any) -> dict[str, str]:
    """Settings with the usual value wherever one is missing or unknown [settings].

    settings: as the page keeps them [settings].

    >>> whole({"mass": "oz"})["length"]
    'mm'
    """
    given = settings if isinstance(settings, dict) else {}
    known = {}
    for name, usual in USUAL.items():
        value = given.get(name, usual)
        allowed = [choice.value for choice in _CHOICES[name][1]] if name in _CHOICES else None
        fits = isinstance(value, str) and (allowed is None or value in allowed)
        known[name] = value if fits else usual
    return known


def display_of(settings: dict[str, str]) -> Display:
    """Settings as the core uses them; a scale's step that can't be read is taken as 1 g [display].

    settings: whole ones [settings].

    >>> display_of(whole({"readability": "0.1 oz"})).readability
    2.834952...
    """
    try:
        readability = _readability(settings)
    except QuantityError:
        readability = 1.0
    return Display(settings["mass"], settings["length"], settings["temperature"], settings["decimal"], readability,
                   settings["currency"].strip()[:LONGEST_CURRENCY] or USUAL["currency"])


def paper_of(settings: dict[str, str]) -> str:
    """The paper that sheets are printed on, A4 or Letter [text].

    settings: whole ones [settings].

    >>> paper_of(whole({})), paper_of(whole({"length": "in"})), paper_of(whole({"length": "in", "paper": "A4"}))
    ('A4', 'Letter', 'A4')
    """
    if settings["paper"] != "auto":
        return settings["paper"]
    return "Letter" if settings["length"] == "in" else "A4"


def _readability(settings: dict[str, str]) -> float:
    unit = "g" if settings["mass"] == "g" else "oz"
    return read(settings["readability"], "mass", _READABILITY, unit, settings["decimal"]).value


def form(settings: dict[str, str]) -> list[dict[str, Any]]:
    """The settings as questions, for the page [fields].

    settings: whole ones [settings].

    >>> [question["path"] for question in form(whole({}))]
    ['mass', 'length', 'temperature', 'decimal', 'paper', 'readability', 'currency']
    """
    questions = [_question(name, label, "choice", settings[name], choices=[plain_choice(choice) for choice in choices])
                 for name, (label, choices) in _CHOICES.items()]
    display = display_of(settings)
    return [*questions, _question("readability", "Your scale shows steps of", "mass", settings["readability"],
                                  unit="g" if settings["mass"] == "g" else "oz", fault=_readability_fault(settings),
                                  hint="Weights are rounded to this.", keys=keys("mass", display)),
            _question("currency", "Prices in", "text", settings["currency"],
                      hint="A sign or three letters: $, €, kr, CHF. Nothing is converted.")]


def _readability_fault(settings: dict[str, str]) -> str:
    try:
        _readability(settings)
    except QuantityError as error:
        return error.sentence
    return ""


def _question(path: str, label: str, kind: str, value: str, **more: Any) -> dict[str, Any]:
    plain = {"path": path, "label": label, "kind": kind, "value": value, "unit": "", "echo": "", "fault": "",
             "note": "", "hint": "", "keys": [], "choices": []}
    return {**plain, **more}
