"""The table of wicks: each of the maker's own by how many it takes, best first."""

from dataclasses import dataclass
from typing import Any

from brimbook.candle.wicks import fit
from brimbook.cards.shelf import Shelf, left_behind, taken_of
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.leaves.wicks import WICK
from brimbook.record.said import Said, understand_text
from brimbook.shape.covering import Covering
from brimbook.steps.wick_counts import FIRST_TRIED, SAME, emptied, tried, worth
from brimbook.steps.wicks import WickPlan

_MOST_ROWS = 8
# A pool at most so many times as wide as needed is little too large (common practice, no source).
_LITTLE = 1.1


@dataclass(frozen=True)
class _Kind:
    """One of the maker's wicks, or the one chosen here: its name, its pool [mm], and what choosing it writes."""

    name: str
    pool: float
    sets: dict[str, str]


def wick_table(said: Said, place: str, plan: WickPlan, shelf: Shelf) -> dict[str, Any] | None:
    """How many wicks of which kind, best first: the fewest that reach and are little too large, then others [table].

    said: the record as understood [said].
    place: path of the well [text].
    plan: of the wicks [plan].
    shelf: the maker's own materials and wicks [shelf].
    """
    at, kinds = f"{place}.wicks", _kinds(said, f"{place}.wicks", shelf)
    if not plan.best:
        return None
    further = _further(said, place)
    if not kinds:
        return {"columns": ["Wicks", "Each must melt"], "rows": [*(_plain_row(said, at, plan, each) for each in plan.best), *further],
                "says": f"Put your own wicks on the shelf, with the pools you saw: then they are compared here.{_as_moved(plan)}"}
    pairs = sorted(((kind, covering) for kind in kinds for covering in worth(plan.best)), key=lambda pair: _rank(*pair))
    return {"columns": ["Wicks", "Must melt", "Melts"],
            "rows": [*(_row(said, at, plan, kind, covering) for kind, covering in pairs[:_MOST_ROWS]), *further],
            "says": "Best first: the fewest wicks whose pools reach and are at most a tenth too large, then larger ones, then those that"
                    f" come short.{_as_moved(plan)}"}


def _as_moved(plan: WickPlan) -> str:
    return " You moved the wicks; here they stand where they serve best, and choosing a row puts them there." if plan.is_moved else ""


def _further(said: Said, place: str) -> list[dict[str, Any]]:
    """A row that asks for more wicks, until they have been tried."""
    if tried(said, place) > 1 or said.typed(f"{place}.wicks.up_to"):
        return []
    says = f"Try 2 to {FIRST_TRIED} wicks"
    return [{"cells": [says, "…"], "chosen": False, "sets": {f"{place}.wicks.up_to": str(FIRST_TRIED)}, "says": says}]


def _kinds(said: Said, at: str, shelf: Shelf) -> list[_Kind]:
    found, left = [], left_behind(said, at, shelf, "wick")
    for wick in shelf.of_role("wick"):
        pool = _pool(wick)
        if pool is not None:
            found.append(_Kind(wick["name"].strip(), pool, taken_of(said, at, "wick", wick, left)))
    chosen, pool = said.text(f"{at}.name").strip(), said.value(f"{at}.pool")
    if pool is not None and (chosen, pool) not in [(kind.name, kind.pool) for kind in found]:
        found.append(_Kind(chosen, pool, {}))
    return found


def _pool(wick: dict[str, str]) -> float | None:
    """What stands on the shelf is canonical; a faulty entry is not on it."""
    return understand_text(WICK["pool"], wick["pool"], Display())[0] if wick.get("pool", "").strip() else None


def _rank(kind: _Kind, covering: Covering) -> tuple[int, float, float]:
    reached, count = fit(kind.pool + SAME, 2 * covering.radius), len(covering.points)
    if reached < 1:
        return 2, 1 - reached, count
    return (0, count, reached) if reached <= _LITTLE else (1, reached, count)


def _count(count: int) -> str:
    return "1 wick" if count == 1 else f"{count} wicks"


def _is_shown(plan: WickPlan, covering: Covering) -> bool:
    return plan.covering is not None and not plan.is_moved and len(plan.covering.points) == len(covering.points)


def _plain_row(said: Said, at: str, plan: WickPlan, covering: Covering) -> dict[str, Any]:
    count, across = len(covering.points), show.length(2 * covering.radius, said.display)
    return {"cells": [_count(count), across], "chosen": _is_shown(plan, covering), "sets": {f"{at}.count": str(count), **emptied(said, at)},
            "says": f"{_count(count)}, {'each ' if count > 1 else ''}a pool {across} across"}


def _row(said: Said, at: str, plan: WickPlan, kind: _Kind, covering: Covering) -> dict[str, Any]:
    count, needed = len(covering.points), 2 * covering.radius
    across, short = show.length(needed, said.display), needed - kind.pool
    spare = f"comes {show.length(short, said.display)} short" if short > SAME else f"reaches, {show.length(max(0.0, -short), said.display)} to spare"
    chosen = _is_shown(plan, covering) and kind.name == said.text(f"{at}.name").strip() and kind.pool == said.value(f"{at}.pool")
    name = kind.name or "of yours"
    return {"cells": [f"{count} × {name}", across, show.length(kind.pool, said.display)], "chosen": chosen,
            "sets": {**kind.sets, f"{at}.count": str(count), **emptied(said, at)},
            "says": f"{count} × {name}: each must melt {across}, {spare}"}
