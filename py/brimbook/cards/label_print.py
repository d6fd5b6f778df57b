"""Labels as pages to print, so many on a sheet at true size."""

from typing import Any

from brimbook.quantity.error import QuantityError
from brimbook.work_out import Answer


def label_pages(answer: Answer, place: Any, paper: str, link: str) -> dict[str, Any]:
    """A sheet full of labels, or as many as are wanted, as pages to print [pages].

    answer: everything worked out [answer].
    place: path of the label [text].
    paper: A4 or Letter [text].
    link: of the vessel, without prices, for the QR code; empty where it is too long for any [text].

    Raises QuantityError with a sentence where the label can't be told yet, or does not fit the paper.
    """
    raise QuantityError("There is no label yet.")
