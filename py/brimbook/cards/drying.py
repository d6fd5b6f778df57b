"""The card of drying."""

from typing import Any

from brimbook.cards.card import card, figures_below
from brimbook.work_out import Answer


def dry_card(answer: Answer, place: str) -> dict[str, Any]:
    """Dry [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    return card(place, "dry", "Dry", "What does the vessel weigh now?", answer=(), waiting="Weigh the vessel, and again tomorrow.", fields=[], more=[],
                figures=figures_below(answer, f"{place}.drying"))
