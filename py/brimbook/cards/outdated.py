"""Vessels whose copy of a material has another price or pack than the shelf has now."""

from typing import Any

from brimbook.cards.shelf import Shelf
from brimbook.quantity.show import Display


def outdated(entries: Any, shelf: Shelf, display: Display) -> list[dict[str, Any]]:
    """Each material of the shelf that some vessels have an older copy of: name, says, and vessels, each with id, name and what to write (sets) [list].

    entries: of the book, each with its record [entries].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].
    """
    return []
