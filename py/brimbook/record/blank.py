"""A new vessel, its usual choices in place, and the demo vessels."""

import copy
from typing import Any

from brimbook.quantity.show import Display
from brimbook.quantity.units import from_base
from brimbook.record.fields import VERSION


def _fill(way: str, readability: str) -> dict[str, Any]:
    return {"way": way, "readings": [{}], "temperature": "20 °C", "readability": readability, "line_error": "0.5 mm"}


def blank(display: Display = Display()) -> dict[str, Any]:
    """The record of a new vessel [record].

    display: how this maker reads figures [display].

    Usual choices are written into the record, so that a link is whole by itself.

    >>> blank()["casts"][0]["mix"]["water_to_powder"]
    '4:1'
    """
    return {"version": VERSION, "id": "", "name": "", "made_on": "", "notes": "", "casts": [new_cast(display)],
            "wells": [new_well(display)]}


def new_cast(display: Display) -> dict[str, Any]:
    """A cast with its usual choices and no readings [record].

    display: how this maker reads figures [display].
    """
    return {"pieces": "1", "cavity": _fill("on_scale", _readability(display)), "allowance": "10 %",
            "mix": {"powder": {"kind": "rapid", "particle_density": "2.98 g/mL"}, "water_to_powder": "4:1", "air": "0 %",
                    "rule": "1.88"}}


def new_well(display: Display) -> dict[str, Any]:
    """A well with its usual choices and no readings [record].

    display: how this maker reads figures [display].
    """
    return {"fill": _fill("poured_out", _readability(display)), "sealed": "no",
            "wax": {"kind": "soy", "density_poured": "0.86 g/mL", "density_set": "0.92 g/mL"}, "basis": "poured",
            "fragrance": {"load": "6 %", "basis": "wax", "density": "1 g/mL"}, "dye": "0 %", "rule": "0.834"}


def _readability(display: Display) -> str:
    unit = "g" if display.mass == "g" else "oz"
    return f"{from_base(display.readability, unit):.4g} {unit}"


def demos() -> list[dict[str, Any]]:
    """Demo vessels, from a bench that exists only here: all numbers are invented [records].

    >>> [vessel["name"] for vessel in demos()]
    ['Tide cup', 'Low heron bowl', 'Ballast tumbler, pair']
    """
    return [_tide_cup(), _heron_bowl(), _ballast_tumblers()]


def _demo(id: str, name: str, made_on: str, notes: str) -> dict[str, Any]:
    return copy.deepcopy({**blank(), "id": id, "name": name, "made_on": made_on, "notes": notes})


def _tide_cup() -> dict[str, Any]:
    vessel = _demo("demo-tide-cup", "Tide cup", "2026-09-12", "Two-part mold, seam taped. Pour slowly down one side.")
    vessel["casts"][0]["cavity"].update(readings=[{"water": "312 g"}, {"water": "313 g"}, {"water": "311 g"}],
                                        opening_across="84 mm")
    vessel["wells"][0]["fill"].update(readings=[{"water": "196 g"}], opening_across="68 mm")
    return vessel


def _heron_bowl() -> dict[str, Any]:
    vessel = _demo("demo-heron-bowl", "Low heron bowl", "2026-10-03", "Wide and shallow: level the mold first.")
    vessel["casts"][0]["cavity"].update(way="jug", readings=[{"before": "1480 g", "after": "863 g"}],
                                        temperature="18 °C")
    vessel["casts"][0]["scooped"] = "1120 g"
    vessel["wells"][0].update(basis="set", sealed="yes")
    vessel["wells"][0]["fill"].update(readings=[{"water": "402 g"}])
    vessel["wells"][0]["fragrance"].update(load="1 oz/lb")
    return vessel


def _ballast_tumblers() -> dict[str, Any]:
    vessel = _demo("demo-ballast-tumblers", "Ballast tumbler, pair", "2026-11-01", "Two alike from one bowl of mix.")
    vessel["casts"][0].update(pieces="2", left="900 g")
    vessel["casts"][0]["cavity"].update(way="full_minus_empty", readings=[{"full": "1 lb 12 oz", "empty": "9 1/2 oz"}])
    vessel["casts"][0]["mix"].update(powder={"kind": "portland", "particle_density": "3.15 g/mL"},
                                     water_to_powder="0.40", rule="1.6")
    vessel["wells"][0]["fill"].update(way="dimensions", readings=[{}], solid="tapered", top_diameter="72 mm",
                                      bottom_diameter="64 mm", height="70 mm")
    vessel["wells"][0].update(dye="0.2 %")
    return vessel
