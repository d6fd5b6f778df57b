"""A vessel's page: its cards in the order of the job, and the vessel in one line."""

from typing import Any

from brimbook.cards.making import mix_card, wax_card
from brimbook.cards.measuring import mold_card, well_card
from brimbook.work_out import Answer, places

_ON_THE_SHELF = ("powder", "water", "wax", "fragrance")


def sheet(answer: Answer) -> dict[str, Any]:
    """A vessel's page, as plain data [sheet].

    answer: everything worked out from the record [answer].
    """
    said, cards = answer.said, []
    for place in places(said, "casts"):
        cards += [mold_card(answer, place), mix_card(answer, place)]
    for place in places(said, "wells"):
        cards += [well_card(answer, place), wax_card(answer, place)]
    return {
        "title": said.text("name").strip() or "New vessel", "line": line(answer), "cards": cards,
        "faults": [{"path": fault.path, "label": fault.label, "sentence": fault.sentence} for fault in said.faults],
    }


def line(answer: Answer) -> str:
    """A vessel in one line, for the shelf [text].

    answer: everything worked out from the record [answer].
    """
    return " · ".join(f"{figure.shown} {figure.label.lower()}" for figure in answer.figures.values()
                      if figure.key.split(".")[-1] in _ON_THE_SHELF)
