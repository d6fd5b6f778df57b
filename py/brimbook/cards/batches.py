"""The card of the batches: their lots, what went in, who got what."""

from typing import Any

from brimbook.cards.card import card
from brimbook.cards.shelf import Shelf
from brimbook.work_out import Answer


def batches_card(answer: Answer, shelf: Shelf) -> dict[str, Any]:
    """The batches of a vessel [card].

    answer: everything worked out [answer].
    shelf: the maker's own materials, whose newest lots a new batch takes [shelf].
    """
    return card("batches.0", "batches", "Batches and lots", "What went in, and who got them?", waiting="Note a batch and its lots.", fields=[],
                more=[], figures={}, answer=())
