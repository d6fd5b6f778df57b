"""The card of the cost."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card
from brimbook.cards.cost_groups import add_packaging, cost_groups
from brimbook.cards.outdated import behind
from brimbook.cards.shelf import Shelf
from brimbook.draw.cost_bar import cost_bar
from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.cost import PLACE, Part
from brimbook.steps.cost_items import vessels_stand_in
from brimbook.work_out import Answer

_ADDS_UP = "Parts and shares are rounded so that they add up."
_UP_TO_DATE = "Take the prices of your shelf"
# What is behind the shelf: a sentence, and what brings it up to date.
_Late = tuple[str, dict[str, str]]


def cost_card(answer: Answer, shelf: Shelf) -> dict[str, Any]:
    """The cost of a vessel [card].

    answer: everything worked out [answer].
    shelf: the maker's own materials [shelf].
    """
    said, costing = answer.said, answer.costing
    # What to ask for it stands at the same place of the record, and has a card of its own.
    figures = {figure.key.removeprefix(f"{PLACE}."): figure for figure in (costing.figures if costing is not None else ())}
    parts = costing.parts if costing is not None else ()
    late = behind(said, shelf)
    return card(
        PLACE, "cost", "Cost", "What does one vessel cost?", answer=("cost", "batch_cost"), closed=("cost",), waiting=_waiting(said),
        fields=[ask(said, f"{PLACE}.vessels", usual=vessels_stand_in(said))], more=[], figures=figures, notes=_notes(figures, late),
        table=_table(parts, figures, late), drawing=cost_bar([part.amount for part in parts]) if parts else "",
        drawing_text=f"The cost as a bar, its parts numbered: {_in_words(parts)}." if parts else "",
        groups=cost_groups(said, answer.supplies, figures, shelf), actions=add_packaging(said))


def _waiting(said: Said) -> str:
    if said.is_marked_below(PLACE):
        return "Mend the entry that is marked."
    return "Type what a pack of anything costs."


def _table(parts: tuple[Part, ...], figures: dict[str, Figure], late: list[_Late]) -> dict[str, Any] | None:
    """The parts, numbered as in the bar, their sum below them; and a row that brings older prices up to date."""
    rows = [_row([f"{number} {part.name}", part.shown, _percent(part)]) for number, part in enumerate(parts, 1)]
    if parts:
        rows.append(_row(["Together", figures["cost"].shown, "100 %"]))
    if late:
        sets = {path: text for _, each in late for path, text in each.items()}
        rows.append({**_row([_UP_TO_DATE, "", ""]), "sets": sets, "says": " ".join(sentence for sentence, _ in late)})
    return {"columns": ["Part", "One vessel", "Share"], "rows": rows, "says": _ADDS_UP if parts else ""} if rows else None


def _row(cells: list[str]) -> dict[str, Any]:
    return {"cells": cells, "chosen": False, "sets": {}, "says": ""}


def _percent(part: Part) -> str:
    return "under 1 %" if part.share == 0 and part.amount > 0 else f"{part.share} %"


def _in_words(parts: tuple[Part, ...]) -> str:
    return ", ".join(f"{number} {part.name.lower()} {_percent(part)}" for number, part in enumerate(parts, 1))


def _notes(figures: dict[str, Figure], late: list[_Late]) -> tuple[str, ...]:
    told = [f"{figures[name].says}." for name in ("batch_cost", "without_work") if name in figures]
    return (*told, *(sentence for sentence, _ in late))
