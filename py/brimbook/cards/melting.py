"""The card of this step."""

from typing import Any

from brimbook.cards.card import card, figures_below
from brimbook.work_out import Answer


def melting_card(answer: Answer, place: str) -> dict[str, Any]:
    """The card [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    return card(place, "melting", "Melt and pour", "How hot is it now?", waiting="Once the wax is known.", fields=[], more=[],
                figures=figures_below(answer, f"{place}.melting"), answer=())
