"""The card of this step."""

from typing import Any

from brimbook.cards.card import card, figures_below
from brimbook.work_out import Answer


def burning_card(answer: Answer, place: str) -> dict[str, Any]:
    """The card [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    return card(place, "burning", "Burn test", "What did it weigh, before and after?", waiting="Log the first time it burns.", fields=[], more=[],
                figures=figures_below(answer, f"{place}.burning"), answer=())
