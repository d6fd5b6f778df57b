"""The card of this step."""

from typing import Any

from brimbook.cards.card import card, figures_below
from brimbook.work_out import Answer


def scent_card(answer: Answer, place: str) -> dict[str, Any]:
    """The card [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    return card(place, "scent", "Scent", "What does your supplier's sheet say of it?", waiting="Copy its limits from the supplier's sheet.", fields=[], more=[],
                figures=figures_below(answer, f"{place}.scent"), answer=())
