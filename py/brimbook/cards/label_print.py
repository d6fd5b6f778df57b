"""Labels as pages to print, so many on a sheet at true size."""

from typing import Any

from brimbook.draw.label import Label, Laid
from brimbook.draw.label_draw import laid
from brimbook.draw.label_sheet import Grid, filling, grid, most, sheets
from brimbook.draw.true_size import MOST_PAGES
from brimbook.quantity import show
from brimbook.quantity.error import QuantityError
from brimbook.record.said import Said
from brimbook.work_out import Answer

_NO_LABEL = "There is no label yet. Mend what is marked on the label's card first."
_NO_LINK = "This vessel is too large for a QR code. Leave the code off the label, and send the vessel's link instead."


def label_pages(answer: Answer, place: Any, paper: str, link: str) -> dict[str, Any]:
    """A sheet full of labels, or as many as are wanted, as pages to print [pages].

    answer: everything worked out [answer].
    place: path of the label [text].
    paper: A4 or Letter [text].
    link: of the vessel, without prices, for the QR code; empty where it is too long for any [text].

    Raises QuantityError with a sentence where the label can't be told yet, or does not fit the paper.
    """
    labeled = answer.labels.get(place) if isinstance(place, str) else None
    if labeled is None or labeled.label is None:
        raise QuantityError(_NO_LABEL)
    label = labeled.label
    made = _laid(answer.said, label, link)
    places = _grid(answer.said, place, made, paper)
    copies, first = _copies(answer.said, place, places, len(made.sides))
    pages = sheets(label, made.sides, copies, first, places)
    width, height = places.paper
    return {"title": f"{_name(answer.said)}: labels", "paper": paper, "width": f"{width:g}mm", "height": f"{height:g}mm", "pages": pages}


def _laid(said: Said, label: Label, link: str) -> Laid:
    if label.code and not link:
        raise QuantityError(_NO_LINK)
    made = laid(label, link if label.code else "", lambda length: show.length(length, said.display))
    if not made.fits:
        raise QuantityError(" ".join(made.says))
    return made


def _grid(said: Said, place: str, made: Laid, paper: str) -> Grid:
    gap, margin = (_wanted(said, f"{place}.{name}") for name in ("gap", "margin"))
    side = made.sides[0]
    found = grid(side.width, side.height, gap, margin, paper)
    if not found.places:
        size = f"{show.length(side.width, said.display)} by {show.length(side.height, said.display)}"
        raise QuantityError(f"A label of {size} is larger than {paper} paper has room for within a margin of "
                            f"{show.length(margin, said.display)}. Make the label or the margin smaller.")
    return found


def _copies(said: Said, place: str, places: Grid, sides: int) -> tuple[int, int]:
    """How many of each label, and the first free place."""
    first = int(_wanted(said, f"{place}.first"))
    if first > places.places:
        raise QuantityError(f"This sheet has {_places(places.places)}. Type a first free place up to {places.places}.")
    typed = _wanted(said, f"{place}.copies") if said.typed(f"{place}.copies") else filling(places, first, sides)
    possible = most(places, first, sides)
    if typed > possible:
        raise QuantityError(f"This takes more than {MOST_PAGES} pages. Up to {possible} labels can be printed at once.")
    return int(typed), first


def _wanted(said: Said, path: str) -> Any:
    """What was typed or is usual, and must be right to go on."""
    value = said.value(path)
    if value is None:
        raise QuantityError("Mend the entry that is marked on the label's card first.")
    return value


def _places(count: int) -> str:
    return "1 place" if count == 1 else f"{count} places"


def _name(said: Said) -> str:
    return " ".join(said.text("name").split()) or "Vessel"
