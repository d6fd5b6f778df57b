"""The vessels of a plan: each worked out once, told by what it takes of everything that is bought."""

import json
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from brimbook.candle.waxes import generic_wax
from brimbook.cards.shelf import MINE
from brimbook.cast.materials import generic
from brimbook.quantity.show import Display
from brimbook.record.leaves.materials import MIX_ROLES
from brimbook.record.leaves.supply import PACKS
from brimbook.record.said import Said, localize
from brimbook.sell.cost import turn_out
from brimbook.steps.cost_items import CANDLE, CAST, PLACE
from brimbook.steps.shopping import Pack, told
from brimbook.steps.supplies import Supply, unmeasured
from brimbook.work_out import work_out

MOST_PLANNED = 60
# All that can stand in a mix is told apart by its name alone.
MIX = "mix"


@dataclass(frozen=True)
class Needed:
    """What one vessel that is begun takes of a thing, and the share of them that turns out [g, mL or pieces, –].

    family, name: by which it is the same thing as on the shelf and in other vessels.
    is_named: did the maker say what it is?
    """

    family: str
    role: str
    name: str
    is_named: bool
    measure: str
    each: float
    turns_out: float
    pack: Pack | None = None


@dataclass(frozen=True)
class Made:
    """A vessel as the plan needs it: what it takes, what is not known of that, whether an entry of it is marked, and its cost.

    begun: casts to begin for one that turns out [count].
    cost: of a good one [currency]; none while no price is known. complete: is it all known?
    """

    name: str
    needs: tuple[Needed, ...]
    unknown: tuple[str, ...]
    marked: bool
    begun: float
    cost: float | None
    complete: bool


@dataclass(frozen=True)
class Planned:
    """One row of the plan: so many of a vessel; no vessel where the book has none by that id, no count where it is marked."""

    row: int
    title: str
    count: float | None
    made: Made | None

    @property
    def place(self) -> str:
        """Of the record [text]."""
        return f"plan.{self.row}"


def family_of(role: str) -> str:
    """Roles that can stand for one another [text].

    role: one of the roles of materials, or wick [text].

    >>> family_of("sand"), family_of("wax")
    ('mix', 'wax')
    """
    return MIX if role in MIX_ROLES else role


def planned(said: Said, vessels: Any) -> tuple[Planned, ...]:
    """The rows of the plan, as many as are worked out [rows].

    said: the plan as understood [said].
    vessels: the records of the vessels that it names, by id [records].
    """
    book = vessels if isinstance(vessels, dict) else {}
    return tuple(_row(said, row, book) for row in range(min(said.count("plan"), MOST_PLANNED)))


def _row(said: Said, row: int, book: dict[str, Any]) -> Planned:
    record = book.get(said.text(f"plan.{row}.id"))
    made = _made(json.dumps(record), said.display) if isinstance(record, dict) else None
    title = made.name if made is not None else "Not in the book any more"
    return Planned(row, title, said.value(f"plan.{row}.count"), made)


@lru_cache(maxsize=2 * MOST_PLANNED)
def _made(record: str, display: Display) -> Made:
    """A vessel out of its text; the same ones come along with every digit that is typed."""
    answer = work_out(json.loads(record), display)
    said = answer.said
    fails = tuple(said.value(f"{PLACE}.{name}") or 0.0 for name in ("cast_failures", "candle_failures"))
    good = {CAST: turn_out(*fails), CANDLE: 1 - fails[1]}
    needs = tuple(_needed(said, supply, good.get(supply.step, 1.0)) for supply in answer.supplies if supply.each > 0)
    unknown = tuple(dict.fromkeys(_plain(thing.name) for thing in unmeasured(said, answer.supplies)))
    cost = answer.costing
    return Made(_plain(said.text("name")) or "A vessel without a name", needs, unknown, bool(said.faults), 1 / good[CAST],
                None if cost is None else cost.each, cost is not None and cost.complete)


def _needed(said: Said, supply: Supply, turns_out: float) -> Needed:
    return Needed(family_of(supply.role), supply.role, _plain(supply.name), _is_named(said, supply.place), supply.measure, supply.each,
                  turns_out, _pack(said, supply))


def _is_named(said: Said, place: str) -> bool:
    """Did the maker say what it is, by its name or by its kind?"""
    kind = said.text(f"{place}.kind").strip()
    wax = generic_wax(kind)
    known = generic(kind) is not None or (wax is not None and wax.density_set is not None)
    return said.typed(f"{place}.name") or kind.startswith(MINE) or known


def _pack(said: Said, supply: Supply) -> Pack | None:
    """Its pack as the vessel has it; where that was typed for the same thing in an earlier mold or well, told anew."""
    if not supply.pack:
        return None
    text = said.canonical.get(f"{supply.place}.{PACKS[supply.measure][0]}")
    shown = told(supply.pack, supply.measure, said.display) if text is None or supply.measure == "pieces" else localize(text, said.display)
    return Pack(supply.pack, supply.price, shown)


def _plain(text: str) -> str:
    return " ".join(text.split())
