"""The card of a wanted weight: how much wax, and where the line or the sizes then are."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below
from brimbook.steps.target import Target
from brimbook.work_out import Answer


def target_card(answer: Answer, place: str) -> dict[str, Any]:
    """A wanted weight, and the ways to it [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    said, found, figures = answer.said, answer.targets.get(place), figures_below(answer, f"{place}.target")
    names = tuple(name for name in ("line", "height", "change") if name in figures) or tuple(name for name in ("factor",) if name in figures)
    return card(
        place, "target", "To a wanted weight", "How much wax do you want in it?", answer=names, figures=figures,
        waiting=_waiting(answer, place, found), fields=[ask(said, f"{place}.want")], more=[ask(said, f"{place}.want_of")],
        table=_table(found) if found else None, notes=(found.against,) if found and found.against and names else ())


def _waiting(answer: Answer, place: str, found: Target | None) -> str:
    said = answer.said
    if said.fault_at(f"{place}.want"):
        return "Mend the entry that is marked."
    if not said.typed(f"{place}.want"):
        return "Only if it is to hold so much."
    return found.against if found else "Once the density of the wax is known."


def _whole(cast: str) -> str:
    """A weight that is not broken before its unit."""
    return cast.replace(" ", "\N{NO-BREAK SPACE}") or "–"


def _table(found: Target) -> dict[str, Any] | None:
    if not found.ways:
        return None
    has_cast = any(way.cast for way in found.ways)
    rows = [{"cells": [way.what, way.to, *([_whole(way.cast)] if has_cast else [])], "chosen": False, "sets": way.sets,
             "says": f"{way.says}{f', the cast {way.cast}' if way.cast else ''}"} for way in found.ways]
    return {"columns": ["Change", "To", *(["Cast"] if has_cast else [])], "rows": rows,
            "says": "Choosing a row writes it where it is asked." + (" The cast as poured." if has_cast else "")}
