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
    ['Tide cup', 'Low heron bowl', 'Ballast tumblers, six', 'Keel bowl, third pour']
    """
    return [_tide_cup(), _heron_bowl(), _ballast_tumblers(), _keel_bowl()]


def _demo(id: str, name: str, made_on: str, notes: str) -> dict[str, Any]:
    return copy.deepcopy({**blank(), "id": id, "name": name, "made_on": made_on, "notes": notes})


def _tide_cup() -> dict[str, Any]:
    vessel = _demo("demo-tide-cup", "Tide cup", "2026-09-12", "Two-part mold, seam taped. Pour slowly down one side.")
    vessel["casts"][0]["cavity"].update(readings=[{"water": "312 g"}, {"water": "313 g"}, {"water": "311 g"}],
                                        opening_across="84 mm")
    vessel["wells"][0]["fill"].update(readings=[{"water": "196 g"}], opening_across="68 mm")
    return vessel


def _keel_bowl() -> dict[str, Any]:
    """Three bowls poured and logged; the last one demolded, tried with water, dried, filled and burned."""
    vessel = _demo("demo-keel-bowl", "Keel bowl, third pour", "2026-09-26", "The seam faces the window. Demold warm.")
    vessel["casts"][0].update({
        "pours": [
            {"when": "2026-09-12T10:05", "powder": "588 g", "water": "147 g", "left_over": "41 g", "cup_volume": "100 mL",
             "cup_empty": "12 g", "cup_full": "220 g", "spread_1": "146 mm", "spread_2": "150 mm"},
            {"when": "2026-09-19T11:40", "powder": "590 g", "water": "150 g", "left_over": "52 g", "cup_full": "219 g",
             "spread_1": "152 mm", "spread_2": "153 mm"},
            {"when": "2026-09-26T10:20", "powder": "588 g", "water": "147 g", "left_over": "46 g"}],
        "clamping": {"depth": "95 mm", "width": "84 mm", "core_volume": "190 mL", "print_weight": "210 g"},
        "curing": {"poured_at": "2026-09-26T10:20", "temperature": "17 °C"},
        "drying": {"dry_weight": "641 g", "weights": [
            {"weight": "684 g", "at": "2026-09-27T09:00"}, {"weight": "668 g", "at": "2026-09-28T09:30"},
            {"weight": "658 g", "at": "2026-09-29T08:40"}]},
        "leaking": {"dry": "641 g", "filled": "842 g", "later": "842 g", "emptied": "652 g", "hours": "24 h"},
        "finishing": {"inside_top": "68 mm", "inside_bottom": "60 mm", "inside_height": "70 mm"},
    })
    vessel["casts"][0]["cavity"].update(readings=[{"water": "312 g"}], opening_across="84 mm")
    vessel["wells"][0]["fill"].update(readings=[{"water": "198 g"}], opening_across="68 mm")
    _keel_candle(vessel["wells"][0])
    _keel_cost(vessel)
    return vessel


def _keel_cost(vessel: dict[str, Any]) -> None:
    """What it is bought for, the work of four that are made at a time, and what is asked for one."""
    cast, well = vessel["casts"][0], vessel["wells"][0]
    cast["mix"]["powder"].update(pack_weight="25 kg", pack_price="38.50", lot="K-2207")
    cast["finishing"]["sealer"] = {"name": "Water-based sealer", "pack_volume": "500 mL", "pack_price": "17.90"}
    cast["clamping"].update(spool_price="23", print_time="9.5 h", lasts="40")
    well["wax"].update(pack_weight="5 kg", pack_price="41", lot="W-118")
    for scent, price, lot in zip(well["fragrance"]["scents"], ("11.50", "9.80"), ("J-40", "C-12")):
        scent.update(pack_weight="100 g", pack_price=price, lot=lot)
    well["wicks"].update(pack_pieces="100", pack_price="14.50")
    vessel["packaging"] = [{"name": "Box", "each": "1", "pack_pieces": "25", "pack_price": "21"},
                           {"name": "Tissue", "each": "2", "pack_pieces": "480", "pack_price": "16"}]
    vessel["selling"] = [{
        "vessels": "4", "hour_rate": "18", "labor": {"casting": "50 min", "demolding": "20 min", "finishing": "40 min", "filling": "45 min",
                                                     "packing": "20 min"},
        "kilowatt_hour": "0.31", "printer_power": "110", "melter_power": "900", "melter_time": "40 min", "printer_hour": "0.12",
        "cast_failures": "8 %", "candle_failures": "3 %", "by": "margin", "margin": "45 %", "wholesale_margin": "20 %", "fee_share": "3 %",
        "fixed": "120"}]


def _keel_candle(well: dict[str, Any]) -> None:
    """Two scents, a pot that cools, one wick, and three burns."""
    well["fragrance"]["scents"] = [
        {"name": "Juniper", "parts": "3", "supplier_most": "10 %", "ifra_most": "12 %", "flash": "71 °C",
         "sensitizers": [{"name": "Limonene", "share": "12 %", "class": "1B"}]},
        {"name": "Cedar", "parts": "1", "supplier_most": "8 %", "flash": "93 °C"}]
    well.update({
        "melting": {"room": "19 °C", "readings": [
            {"at": "2026-10-12T10:02", "temperature": "79 °C"}, {"at": "2026-10-12T10:08", "temperature": "75 °C"},
            {"at": "2026-10-12T10:14", "temperature": "71 °C"}]},
        "wicks": {"count": "1", "name": "Cotton, medium", "pool": "70 mm", "rate": "4.5"},
        "burning": {"cycles": [
            {"lit_at": "2026-10-27T10:00", "out_at": "2026-10-27T14:00", "before": "815 g", "after": "797 g", "pool": "58 mm",
             "reached": "no", "flame": "28 mm"},
            {"lit_at": "2026-10-27T17:30", "out_at": "2026-10-27T21:30", "after": "779 g", "pool": "64 mm", "flame": "31 mm"},
            {"lit_at": "2026-10-28T09:00", "out_at": "2026-10-28T13:00", "after": "760 g", "pool": "66 mm", "reached": "wall",
             "flame": "33 mm"}]},
    })


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
    vessel = _demo("demo-ballast-tumblers", "Ballast tumblers, six", "2026-11-01",
                   "Six alike in three molds, with sand and red oxide.")
    vessel["casts"][0].update(pieces="6", left="2.5 kg", batch={"bowl": "1500 mL", "molds": "3"},
                              curing={"poured_at": "2026-11-01T10:30", "temperature": "16 °C", "temperatures": [
                                  {"at": "2026-11-01T18:00", "temperature": "12 °C"},
                                  {"at": "2026-11-02T08:00", "temperature": "9 °C"}]})
    vessel["casts"][0]["cavity"].update(way="full_minus_empty", readings=[{"full": "1 lb 12 oz", "empty": "9 1/2 oz"}])
    vessel["casts"][0]["mix"].update(
        powder={"kind": "portland", "particle_density": "3.15 g/mL"}, water_to_powder="0.40", rule="1.6", parts="1:1:0.4",
        others=[{"kind": "sand", "role": "sand", "particle_density": "2.65 g/mL", "moisture": "4 %"},
                {"kind": "red_oxide", "role": "pigment", "particle_density": "5.20 g/mL", "share": "3 %"}])
    vessel["wells"][0]["fill"].update(way="dimensions", readings=[{}], solid="tapered", top_diameter="72 mm",
                                      bottom_diameter="64 mm", height="70 mm")
    vessel["wells"][0].update(dye="0.2 %")
    _tumblers_cost(vessel)
    return vessel


def _tumblers_cost(vessel: dict[str, Any]) -> None:
    cast, well = vessel["casts"][0], vessel["wells"][0]
    cast["mix"]["powder"].update(pack_weight="20 kg", pack_price="9.40")
    for other, pack, price in zip(cast["mix"]["others"], ("15 kg", "500 g"), ("6.20", "8.90")):
        other.update(pack_weight=pack, pack_price=price)
    cast["finishing"] = {"sealer": {"pack_volume": "1000 mL", "pack_price": "24"}}
    well["wax"].update(pack_weight="10 kg", pack_price="72")
    well["fragrance"].update(name="Salt and fig", pack_weight="250 g", pack_price="21")
    well["coloring"] = {"name": "Gray dye", "pack_weight": "20 g", "pack_price": "4.80"}
    well["wicks"] = {"name": "Cotton, small", "count": "1", "pack_pieces": "50", "pack_price": "8.50"}
    vessel["packaging"] = [{"name": "Sleeve", "each": "1", "pack_pieces": "50", "pack_price": "19"}]
    vessel["selling"] = [{"hour_rate": "18", "labor": {"casting": "70 min", "demolding": "30 min", "finishing": "60 min", "filling": "50 min",
                                                       "packing": "25 min"}, "by": "markup", "markup": "90 %"}]
