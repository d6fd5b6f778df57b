"""Where a lot went: which vessels hold it, and who got them."""

from typing import Any

from brimbook.quantity.show import Display


def trace(entries: Any, sought: str, display: Display) -> dict[str, Any]:
    """The batches in which a lot stands, its own or that of a material: rows, each with id, name, lines; and a sentence (says) [found].

    entries: of the book, each with its record [entries].
    sought: the lot, or a part of it [text].
    display: how this maker reads figures [display].
    """
    return {"rows": [], "says": ""}
