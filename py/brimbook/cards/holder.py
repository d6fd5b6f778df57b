"""The card of this step."""

from typing import Any

from brimbook.cards.card import card, figures_below
from brimbook.work_out import Answer


def holder_card(answer: Answer, place: str) -> dict[str, Any]:
    """The card [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    return card(place, "holder", "Template and holder", "How wide is a bar?", waiting="Once the wicks have their places.", fields=[], more=[],
                figures=figures_below(answer, f"{place}.holder"), answer=())
