"""The card of the cost."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below
from brimbook.cards.shelf import Shelf
from brimbook.steps.cost import PLACE
from brimbook.work_out import Answer


def cost_card(answer: Answer, shelf: Shelf) -> dict[str, Any]:
    """The cost of a vessel [card].

    answer: everything worked out [answer].
    shelf: the maker's own materials [shelf].
    """
    said = answer.said
    return card(PLACE, "cost", "Cost", "What does one vessel cost?", waiting="", fields=[ask(said, f"{PLACE}.vessels")], more=[],
                figures=figures_below(answer, PLACE), answer=())
