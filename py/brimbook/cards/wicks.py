"""The card of this step."""

from typing import Any

from brimbook.cards.card import card, figures_below
from brimbook.cards.shelf import Shelf
from brimbook.work_out import Answer


def wicks_card(answer: Answer, place: str, shelf: Shelf) -> dict[str, Any]:
    """The card [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    shelf: the maker's own materials and wicks [shelf].
    """
    return card(place, "wicks", "Wicks", "What is the outline of the wax, from above?", waiting="Type the size of the wax surface.", fields=[], more=[],
                figures=figures_below(answer, f"{place}.wicks"), answer=())
