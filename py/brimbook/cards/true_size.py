"""What the holder's card gives away: template and bars at true size, as files and as pages to print."""

from typing import Any

from brimbook.cards.file_name import file_name
from brimbook.draw.stl import stl
from brimbook.draw.true_size import MOST_PAGES, Drawing, Heading, Piece, pages, pieces, sheet, template
from brimbook.quantity.error import QuantityError
from brimbook.shape.bars import Bar, Holder, Sizes, shape_of
from brimbook.shape.prism import prism
from brimbook.steps.holder import laid_of, sizes_of
from brimbook.steps.wicks import WickPlan
from brimbook.work_out import Answer

_GAP = 5.0
_TEMPLATE = ("Cut along the thick line. Lay it, front to front, on the set wax or on the floor of the well,",
             "and prick through at the crosses.")
_BARS = ("Cut from a stick, or lay this sheet on one and cut through. The walls of the opening are below the dashed lines:",
         "slide each bar until they are. Numbers are those of the wicks.")


def template_file(answer: Answer, place: Any) -> dict[str, str]:
    """The template as a file: its name, kind and text [file].

    answer: everything worked out from the record [answer].
    place: path of the well [text].

    Raises QuantityError with a sentence where the wicks have no places yet.
    """
    return _file(answer, place, "template.svg", "image/svg+xml", sheet(*_template(answer, place)))


def holder_file(answer: Answer, place: Any) -> dict[str, str]:
    """The bars as a file [file].

    answer: everything worked out from the record [answer].
    place: path of the well [text].

    Raises QuantityError with a sentence where the bars can't be told yet.
    """
    return _file(answer, place, "bars.svg", "image/svg+xml", sheet(*_bars(answer, place)))


def holder_model(answer: Answer, place: Any) -> dict[str, str]:
    """The bars for a 3D printer, side by side on its bed, as a file [file].

    answer: everything worked out from the record [answer].
    place: path of the well [text].

    Raises QuantityError with a sentence where the bars can't be told yet.
    """
    laid, sizes = _laid(answer, place)
    thickness = answer.said.value(f"{place}.holder.bar_thickness")
    if thickness is None:
        raise QuantityError("Mend the thickness of the bars first.")
    step, faces = sizes.width + _GAP, []
    for row, bar in enumerate(laid.bars):
        faces += prism(tuple((x, y + row * step) for x, y in shape_of(bar, sizes)), thickness)
    return _file(answer, place, "bars.stl", "model/stl", stl(f"bars of {file_name(_name(answer, place))}", faces))


def template_pages(answer: Answer, place: Any, paper: str) -> dict[str, Any]:
    """The template as pages to print [pages].

    answer: everything worked out from the record [answer].
    place: path of the well [text].
    paper: A4 or Letter [text].

    Raises QuantityError with a sentence where the wicks have no places yet, or where it takes too many pages.
    """
    return _pages(*_template(answer, place), paper)


def holder_pages(answer: Answer, place: Any, paper: str) -> dict[str, Any]:
    """The bars as pages to print [pages].

    answer: everything worked out from the record [answer].
    place: path of the well [text].
    paper: A4 or Letter [text].

    Raises QuantityError with a sentence where the bars can't be told yet, or where they take too many pages.
    """
    return _pages(*_bars(answer, place), paper)


def _template(answer: Answer, place: Any) -> tuple[Drawing, Heading]:
    plan = _plan(answer, place)
    return template(plan.outline.points, plan.covering.points), Heading(_name(answer, place), "template", _TEMPLATE)


def _bars(answer: Answer, place: Any) -> tuple[Drawing, Heading]:
    laid, sizes = _laid(answer, place)
    bars = [_piece(answer, place, number, bar, sizes) for number, bar in enumerate(laid.bars, 1)]
    return pieces(bars), Heading(_name(answer, place), "bars", _BARS)


def _piece(answer: Answer, place: str, number: int, bar: Bar, sizes: Sizes) -> Piece:
    says = answer.figures[f"{place}.holder.bar_{number}.length"].says
    return Piece(says, shape_of(bar, sizes), (sizes.overhang, bar.length - sizes.overhang),
                 tuple((slot.along, str(slot.wick + 1)) for slot in bar.slots))


def _plan(answer: Answer, place: Any) -> WickPlan:
    plan = answer.wick_plans.get(place) if isinstance(place, str) else None
    if plan is None or plan.covering is None:
        raise QuantityError("The wicks have no places yet. Type the size of the wax surface first.")
    return plan


def _laid(answer: Answer, place: Any) -> tuple[Holder, Sizes]:
    laid = laid_of(answer.said, place, _plan(answer, place))
    if laid is None:
        raise QuantityError("There are no bars yet. Mend the entry that is marked on the holder's card first.")
    return laid, sizes_of(answer.said, place)


def _pages(drawing: Drawing, heading: Heading, paper: str) -> dict[str, Any]:
    made = pages(drawing, heading, paper)
    if made is None:
        raise QuantityError(f"This takes more than {MOST_PAGES} pages. Save it as a drawing and have it printed on one large sheet.")
    width, height, sheets = made
    return {"title": f"{heading.name}: {heading.title}", "paper": paper, "width": f"{width:g}mm", "height": f"{height:g}mm",
            "pages": sheets}


def _file(answer: Answer, place: str, ending: str, kind: str, text: str) -> dict[str, str]:
    return {"name": f"{file_name(_name(answer, place)) or 'vessel'}-{ending}", "kind": kind, "text": text}


def _name(answer: Answer, place: str) -> str:
    """The vessel's, with the number of the well where there are several."""
    name, number = " ".join(answer.said.text("name").split()) or "Vessel", int(place.split(".")[1]) + 1
    return name if number == 1 else f"{name}, well {number}"
