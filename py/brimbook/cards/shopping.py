"""The page of what to make and what to buy for it."""

from typing import Any

from brimbook.cards.shelf import Shelf
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display


def shopping(record: Any, vessels: Any, shelf: Shelf, display: Display) -> dict[str, Any]:
    """The plan's record with its spelling, and its page: how many to make, what to buy [record and sheet].

    record: of the plan, a list of vessels' ids and how many of each [record].
    vessels: the records of the vessels that the plan names, by id [records].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].
    """
    return {"record": record, "sheet": {"title": "Make and buy", "line": "", "cards": [], "faults": [], "actions": []}}


def shopping_list(record: Any, vessels: Any, shelf: Shelf, display: Display) -> dict[str, str]:
    """What to buy as a text to pass on [file].

    record: of the plan [record].
    vessels: the records of the vessels that the plan names, by id [records].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].

    Raises QuantityError with a sentence where nothing is to be bought.
    """
    raise QuantityError("There is nothing to buy yet.")


def shopping_pages(record: Any, vessels: Any, shelf: Shelf, display: Display, paper: str) -> dict[str, Any]:
    """What to buy as pages to print, with a box to tick for each [pages].

    record: of the plan [record].
    vessels: the records of the vessels that the plan names, by id [records].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].
    paper: A4 or Letter [text].

    Raises QuantityError with a sentence where nothing is to be bought.
    """
    raise QuantityError("There is nothing to buy yet.")
