"""The card of the price."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below
from brimbook.cards.shelf import Shelf
from brimbook.figure import Figure
from brimbook.steps.cost import PLACE
from brimbook.steps.price import NAMES, step_stand_in
from brimbook.work_out import Answer

_MEANING = ("Margin and markup are the same money, told of two things: margin is what is left as a share of the price before tax, "
            "markup is what is left as a share of the cost. Without fees and tax a margin of 50 % is a markup of 100 %.")
_SHARES_OF = ("Fees are a share of all that a buyer pays, tax too; tax comes on top of the price before tax. A shop is taken to pay you by "
              "invoice: without tax, and without the fees of a stall or market place.")
_ROWS = (("asked", "You ask now", ""), ("retail", "Worked out", ""), ("wholesale", "To a shop", "wholesale_"))


def price_card(answer: Answer, shelf: Shelf) -> dict[str, Any]:
    """The price of a vessel [card].

    answer: everything worked out [answer].
    shelf: the maker's own materials [shelf].
    """
    said, below = answer.said, figures_below(answer, PLACE)
    figures = {name: below[name] for name in NAMES if name in below}
    by = said.value(f"{PLACE}.by") or "margin"
    large = ("asked" if "asked" in figures else "retail" if "retail" in figures else "least", "wholesale", "break_even")
    return card(
        PLACE, "price", "Price", "What to ask for it?", answer=large, closed=tuple(name for name in large if name in figures)[:1], waiting=_waiting(answer),
        fields=[ask(said, f"{PLACE}.{name}") for name in ("by", by, "asked")],
        more=[*(ask(said, f"{PLACE}.{name}") for name in ("fee_share", "fee_each", "tax")),
              ask(said, f"{PLACE}.price_step", usual=step_stand_in(said)),
              *(ask(said, f"{PLACE}.{name}") for name in (f"wholesale_{by}", "shop_margin", "fixed"))],
        figures=figures, notes=_notes(figures), table=_table(figures))


def _waiting(answer: Answer) -> str:
    if answer.said.is_marked_below(PLACE):
        return "Mend the entry that is marked."
    return "Type a margin." if answer.costing is not None else "Type what a pack of anything costs first."


def _notes(figures: dict[str, Figure]) -> tuple[str, ...]:
    told = tuple(f"{figures[name].says}." for name in ("break_even", "wholesale_break_even", "gram_of_fragrance", "gram_in_price")
                 if name in figures)
    return (_MEANING, _SHARES_OF, *told) if "left" in figures or "wholesale_left" in figures else told


def _table(figures: dict[str, Figure]) -> dict[str, Any] | None:
    """Each price with what it leaves, told both ways."""
    rows = []
    for name, title, prefix in _ROWS:
        # Where the maker has a price of their own, what is left is told of it, not of the one worked out.
        of_this = not (name == "retail" and "asked" in figures)
        left = [figures[f"{prefix}{each}"].shown if of_this else "" for each in ("left", "margin", "markup")] if name in figures else []
        if left:
            rows.append({"cells": [title, figures[name].shown, *left], "chosen": False, "sets": {}, "says": ""})
    return {"columns": ["Price", "You ask", "Left", "Margin", "Markup"], "rows": rows,
            "says": "What is left of one sale, as money, as margin and as markup."} if rows else None
