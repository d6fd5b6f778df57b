"""A made-up book: any number of rich vessels, each another, the same for the same seed. All of it is invented."""

import copy
import random
from typing import Any

from brimbook.record import blank

SHAPES = ("cup", "bowl", "tumbler", "dish", "jar", "trough", "boat", "beaker")
KINDS = ("Heron", "Keel", "Tide", "Ballast", "Harbor", "Lantern", "Pebble", "Quarry", "Thistle", "Ember", "Juniper", "Saltmarsh")
SCENTS = ("Cedar and salt", "Warm hay", "Black tea", "Fig leaf", "Rain on slate", "Smoked plum")
BUYERS = ("Stall at the spring market", "Corner shop", "A friend", "Order 118", "Workshop guests")
REMARKS = ("Two-part mold, seam taped. Pour slowly, down one side.", "Demold warm; the rim chips when cold.",
           "Bubbles gather under the rim: tap ten times.\nThen wait.", "", "The \"dry\" mix, edges sharper.")
DEVICES = ("phone-1", "phone-2", "desk")


def book(count: int, seed: int = 7) -> list[dict[str, Any]]:
    """So many entries as the page keeps them, some 2 kB each."""
    chance = random.Random(seed)
    return [entry(number, chance) for number in range(count)]


def entry(number: int, chance: random.Random) -> dict[str, Any]:
    """One entry: a vessel and when it was changed on which device."""
    record = rich_vessel(number, chance)
    saved = f"2026-{chance.randint(1, 12):02d}-{chance.randint(1, 28):02d}T{chance.randint(0, 23):02d}:15:{chance.randint(10, 59)}.120Z"
    return {"record": record, "line": f"{chance.randint(300, 2400)} g powder · {chance.randint(90, 800)} g water",
            "saved": saved, "stamps": {chance.choice(DEVICES): saved}}


def rich_vessel(number: int, chance: random.Random) -> dict[str, Any]:
    """A vessel that was measured, mixed, poured, filled, priced, labeled and sold."""
    kind = chance.choice(KINDS)
    date = f"2026-{chance.randint(1, 12):02d}-{chance.randint(1, 28):02d}"
    record = copy.deepcopy(blank.blank())
    record.update(id=f"vessel-{number:05d}-{chance.getrandbits(32):08x}", name=f"{kind} {chance.choice(SHAPES)} {number}", made_on=date,
                  notes=chance.choice(REMARKS), own_notes=chance.choice(REMARKS))
    _cast(record["casts"][0], chance, date)
    _well(record["wells"][0], chance)
    record["selling"] = [{"vessels": "12", "hour_rate": "22", "labor": {"casting": "40 min", "finishing": f"{chance.randint(20, 90)} min"},
                          "by": "margin", "margin": f"{chance.randint(30, 70)} %", "fixed": "45"}]
    record["labels"] = [{"product": "Scented candle", "maker": "The bench by the quay, Saltmere", "lot": ""}]
    record["batches"] = [_batch(kind, chance) for _ in range(chance.randint(0, 3))]
    return record


def _cast(cast: dict[str, Any], chance: random.Random, date: str) -> None:
    water = chance.randint(180, 900)
    cast["cavity"]["readings"] = [{"water": f"{water + off} g"} for off in range(chance.randint(1, 3))]
    cast["pieces"] = str(chance.randint(1, 8))
    cast["mix"]["powder"].update(name=f"Powder {chance.randint(1, 9)}", pack_weight="25 kg", pack_price=f"{chance.randint(12, 40)}.50",
                                 lot=f"P{chance.randint(1000, 9999)}")
    cast["mix"]["others"] = [{"kind": "mine: Sand", "name": "Sand", "role": "sand", "particle_density": "2.65 g/mL", "lot": f"S{chance.randint(10, 99)}"}]
    cast["pours"] = [{"when": f"{date}T10:{20 + row}", "powder": f"{water + row} g", "water": f"{water // 4} g", "left_over": "12 g"}
                     for row in range(chance.randint(0, 2))]


def _well(well: dict[str, Any], chance: random.Random) -> None:
    well["fill"]["readings"] = [{"water": f"{chance.randint(120, 500)} g"}]
    well["wax"].update(name="Soy flakes", pack_weight="20 kg", pack_price="118", lot=f"W{chance.randint(1000, 9999)}")
    well["fragrance"].update(load=f"{chance.randint(3, 9)} %", scents=[{"name": chance.choice(SCENTS), "flash": "93 °C", "lot": f"F{chance.randint(100, 999)}"}])
    well["wicks"] = {"name": "Cotton 6", "count": "1", "pack_pieces": "100", "pack_price": "14.20", "lot": "C11"}


def _batch(kind: str, chance: random.Random) -> dict[str, Any]:
    made = chance.randint(4, 24)
    return {"lot": f"{kind[:3].upper()}-26{chance.randint(1, 12):02d}{chance.randint(1, 28):02d}", "made_on": "2026-09-26",
            "vessels": str(made), "failed": "1",
            "used": [{"role": "wax", "name": "Soy flakes", "lot": f"W{chance.randint(1000, 9999)}"}],
            "went_to": [{"who": chance.choice(BUYERS), "vessels": str(made // 2), "on": "2026-10-03"}], "remarks": ""}
