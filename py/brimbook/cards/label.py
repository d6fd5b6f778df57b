"""The card of a label: what it says, how large it is, and how it is printed."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below
from brimbook.work_out import Answer


def label_card(answer: Answer, place: str) -> dict[str, Any]:
    """A label of a vessel [card].

    answer: everything worked out [answer].
    place: path of the label [text].
    """
    return card(place, "label", "Label", "What must it say, and how large?", waiting="", fields=[ask(answer.said, f"{place}.shape")], more=[],
                figures=figures_below(answer, place), answer=())
