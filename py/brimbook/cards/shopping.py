"""The page of what to make and what to buy for it."""

from dataclasses import dataclass
from typing import Any

from brimbook.cards.card import card
from brimbook.cards.shelf import Shelf
from brimbook.cards.shopping_make import make_card
from brimbook.cards.shopping_things import Key, Own, Things, own_things, things_for
from brimbook.cards.shopping_vessels import MOST_PLANNED, Planned, planned
from brimbook.draw.list_sheet import Line, list_pages
from brimbook.draw.true_size import MOST_PAGES, PAPERS
from brimbook.figure import Figure
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display, trimmed
from brimbook.quantity.show_more import money, money_decimals
from brimbook.record import tree
from brimbook.record.said import Said, understand
from brimbook.sell.cost import rounded_to_add_up
from brimbook.steps.shopping import Bought, bought, to_pay, told

# What is to be done comes first: a phone shows no more than the first three.
_COLUMNS = ["What", "Buy", "Costs", "Needed", "On hand", "Left"]
_NOTHING = "There is nothing to buy yet. Say how many to make, and measure the vessels first."
_ENOUGH = "All that these vessels take is on hand: there is nothing to buy."
_NOT_BOUGHT = "Water, work and the plastic of printed molds are not on this list."
# So many names stand in one sentence.
_MOST_NAMES = 6


@dataclass(frozen=True)
class _Plan:
    """A plan, worked out: its rows, the shelf, what is needed, and what to buy of it."""

    said: Said
    rows: tuple[Planned, ...]
    own: dict[Key, Own]
    things: Things
    bought: tuple[Bought, ...]

    @property
    def costs(self) -> list[tuple[str, float, str]]:
        """Of all that has a cost its name, that, and the figure's key [texts and currency]."""
        return [(each.wanted.name, each.cost, each.figures[-1].key.rpartition(".")[0] + ".costs") for each in self.bought if each.buys and each.cost is not None]


def _plan(record: Any, vessels: Any, shelf: Shelf, display: Display) -> _Plan:
    said = understand(record, display)
    rows, own = planned(said, vessels), own_things(shelf, display)
    things = things_for(rows, own, display)
    return _Plan(said, rows, own, things, tuple(bought(wanted, f"needs.{number}", display) for number, wanted in enumerate(things.wanted.values())))


def shopping(record: Any, vessels: Any, shelf: Shelf, display: Display) -> dict[str, Any]:
    """The plan's record with its spelling, and its page: how many to make, what to buy [record and sheet].

    record: of the plan, a list of vessels' ids and how many of each [record].
    vessels: the records of the vessels that the plan names, by id [records].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].
    """
    plan = _plan(record, vessels, shelf, display)
    said, cards = plan.said, [make_card(plan.said, row, plan.own) for row in plan.rows]
    if cards:
        cards[0]["chapter"] = "To make"
        cards.append({**_buy_card(plan), "chapter": "To buy"})
    return {"record": tree.copy_with(record, said.canonical), "sheet": {
        "title": "Make and buy", "line": "", "cards": cards, "actions": [],
        "faults": [{"path": fault.path, "label": fault.label, "sentence": fault.sentence} for fault in said.faults]}}


def shopping_list(record: Any, vessels: Any, shelf: Shelf, display: Display) -> dict[str, str]:
    """What to buy as a text to pass on [file].

    record: of the plan [record].
    vessels: the records of the vessels that the plan names, by id [records].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].

    Raises QuantityError with a sentence where nothing is to be bought.
    """
    plan = _plan(record, vessels, shelf, display)
    lines = [f"- {line.what}: {line.buy}{f', {line.costs}' if line.costs else ''}" for line in _lines(plan)]
    total = [f"To pay: {_total(plan).shown}", *_not_priced(plan)] if plan.costs else []
    return {"name": "to-buy.txt", "kind": "text/plain",
            "text": "\n".join([f"To buy for {_made(plan)}", "", *lines, "", *total, *_on_hand(plan)]).rstrip() + "\n"}


def shopping_pages(record: Any, vessels: Any, shelf: Shelf, display: Display, paper: str) -> dict[str, Any]:
    """What to buy as pages to print, with a box to tick for each [pages].

    record: of the plan [record].
    vessels: the records of the vessels that the plan names, by id [records].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].
    paper: A4 or Letter [text].

    Raises QuantityError with a sentence where nothing is to be bought, or where it takes too many pages.
    """
    plan = _plan(record, vessels, shelf, display)
    below = [*([f"To pay: {_total(plan).shown}", *_not_priced(plan)] if plan.costs else []), *_on_hand(plan)]
    pages = list_pages("To buy", f"For {_made(plan)}", _lines(plan), below, paper)
    if len(pages) > MOST_PAGES:
        raise QuantityError(f"This takes more than {MOST_PAGES} pages. Pass the list on as a text instead, or plan less at once.")
    width, height = PAPERS[paper]
    return {"title": "To buy", "paper": paper, "width": f"{width:g}mm", "height": f"{height:g}mm", "pages": pages}


def _total(plan: _Plan) -> Figure:
    return to_pay(plan.costs, plan.said.display)


def _lines(plan: _Plan) -> list[Line]:
    """What is to be bought, one thing after the other."""
    if not plan.bought:
        raise QuantityError(_NOTHING)
    costs = _costs(plan)
    lines = [Line(each.wanted.name, each.buys, costs[row]) for row, each in enumerate(plan.bought) if each.buys]
    if not lines:
        raise QuantityError(_ENOUGH)
    return lines


def _made(plan: _Plan) -> str:
    return "; ".join(f"{trimmed(row.count, 2, plan.said.display)} × {row.title}" for row in plan.rows if row.made is not None and row.count)


def _on_hand(plan: _Plan) -> list[str]:
    names = [each.wanted.name for each in plan.bought if not each.buys]
    return [f"Enough on hand: {', '.join(names)}."] if names else []


def _not_priced(plan: _Plan) -> list[str]:
    names = [each.wanted.name for each in plan.bought if each.buys and each.cost is None]
    return [f"Without a price, and not in what is to be paid: {_names(names)}."] if names else []


def _costs(plan: _Plan) -> dict[int, str]:
    """What each costs by its row, rounded so that they add up to what is to be paid."""
    display = plan.said.display
    rows = [row for row, each in enumerate(plan.bought) if each.buys and each.cost is not None]
    rounded = rounded_to_add_up([plan.bought[row].cost for row in rows], money_decimals(display))
    shown = {row: money(amount, display) for row, amount in zip(rows, rounded)}
    return {row: shown.get(row, "no price yet" if each.buys else "") for row, each in enumerate(plan.bought)}


def _buy_card(plan: _Plan) -> dict[str, Any]:
    figures = {figure.key: figure for each in plan.bought for figure in each.figures}
    if plan.costs:
        figures["plan.0.to_pay"] = _total(plan)
    # The last of each thing's figures leads to all that it stands on.
    ends = tuple(each.figures[-1].key for each in plan.bought)
    lists = any(each.buys for each in plan.bought)
    made = card("plan.0", "buy", "What to buy", "What is needed, and what of it is to be bought?", answer=("plan.0.to_pay",) if plan.costs else ends,
                closed=("plan.0.to_pay",), waiting=_waiting(plan), fields=[], more=[], figures=figures, notes=_notes(plan), table=_table(plan),
                prints=({"label": "Print the list", "ask": "shopping_pages", "place": "plan"},) if lists else (),
                saves=({"label": "Pass the list on", "ask": "shopping_list", "place": "plan"},) if lists else ())
    if plan.costs or not lists:
        return made
    count = sum(bool(each.buys) for each in plan.bought)
    return {**made, "answer": [{"label": "to buy", "shown": "1 thing" if count == 1 else f"{count} things", "key": ends[0]}]}


def _waiting(plan: _Plan) -> str:
    if plan.said.faults:
        return "Mend the entry that is marked."
    if plan.bought:
        return "All of it is on hand."
    return "Say how many to make." if all(not row.count for row in plan.rows) else "Measure the vessels first."


def _notes(plan: _Plan) -> tuple[str, ...]:
    display, notes = plan.said.display, list(plan.things.notes)
    notes += [f"{each.wanted.name}: {each.fault}" for each in plan.bought if each.fault]
    bare = [each.wanted.name for each in plan.bought if each.buys and not each.wanted.packs]
    if bare:
        notes.append(f"Type what a pack holds of: {_names(bare)}. Until then it is told how much of it is missing.")
    if plan.costs:
        notes += _not_priced(plan)
    uncounted = [each.wanted.name for each in plan.bought if each.buys and each.wanted.stock is None]
    if uncounted and len(uncounted) < len(plan.bought):
        notes.append(f"Nothing is counted as on hand of: {_names(uncounted)}.")
    for row in {row.title: row for row in plan.rows if row.made is not None and row.count}.values():
        if row.made.unknown:
            notes.append(f"Not on the list, as it is not known yet how much of it one {row.title} takes: {_names(list(row.made.unknown))}.")
    if plan.said.count("plan") > MOST_PLANNED:
        notes.append(f"{MOST_PLANNED} vessels of the plan are worked out here. All are kept.")
    return (*notes, _NOT_BOUGHT) if plan.bought else tuple(notes)


def _names(names: list[str]) -> str:
    rest = len(names) - _MOST_NAMES
    return "; ".join(names[:_MOST_NAMES]) + (f"; and {rest} more" if rest > 0 else "")


def _table(plan: _Plan) -> dict[str, Any] | None:
    """A row for each thing, and what all of it costs."""
    if not plan.bought:
        return None
    costs, display = _costs(plan), plan.said.display
    rows = [_cells(each, costs[row], display) for row, each in enumerate(plan.bought)]
    if plan.costs:
        rows.append(["To pay", "", _total(plan).shown, "", "", ""])
    return {"columns": _COLUMNS, "rows": [{"cells": cells, "chosen": False, "sets": {}, "says": ""} for cells in rows],
            "says": "Needed is with those that fail on average. Left is what is over after making."}


def _cells(each: Bought, costs: str, display: Display) -> list[str]:
    measure, stock = each.wanted.measure, each.wanted.stock
    return [each.wanted.name, each.buys or "enough", costs, told(each.need, measure, display, up=True),
            "not counted" if stock is None else told(stock, measure, display), "" if each.left is None else told(each.left, measure, display)]
