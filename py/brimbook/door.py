"""What the page may ask, by name: JSON in, JSON out. The only module that knows a page exists."""

import json
import traceback
from collections.abc import Callable
from typing import Any

from brimbook.book.file import book_file, book_preview
from brimbook.book.kept import read_entries
from brimbook.book.trace import trace
from brimbook.cards.countdown import countdown
from brimbook.cards.design_file import design_model
from brimbook.cards.label_print import label_pages
from brimbook.cards.moving import move_wick
from brimbook.cards.outdated import outdated
from brimbook.cards.photo import mark_photo
from brimbook.cards.reminders import reminders
from brimbook.cards.sharing import with_outlines
from brimbook.cards.shelf import Shelf, shelf_of
from brimbook.cards.shelf_page import shelf_sheet
from brimbook.cards.shelf_reading import shelf_said
from brimbook.cards.shopping import shopping, shopping_list, shopping_pages
from brimbook.cards.sheet import line, sheet
from brimbook.cards.true_size import holder_file, holder_model, holder_pages, template_file, template_pages
from brimbook.draw.code import qr
from brimbook.quantity.error import QuantityError
from brimbook.record import blank, link, tree
from brimbook.record.fields import is_large, is_private
from brimbook.record.said import understand
from brimbook.settings import display_of, form, paper_of, whole
from brimbook.work_out import Answer, work_out


def ask(name: str, request: str | bytes) -> str:
    """Answer one request of the page; always answers, whatever comes in [JSON text].

    name: a key of ASKS [text].
    request: its own arguments, and on further lines texts that go along as they are kept [JSON text].

    The reply holds either "answer", or "fault" with a sentence for the maker and,
    where the core itself failed, the detail for a report.

    >>> ask("open_link", '{"fragment": "nothing"}')
    '{"fault": {"sentence": "This link holds no vessel. It may have been cut short: ask for it again.", "detail": ""}}'
    """
    try:
        if name not in ASKS:
            return reply(fault={"sentence": f"There is nothing called “{name}” to ask.", "detail": ""})
        return reply(answer=ASKS[name](_asked(request)))
    except (link.LinkError, QuantityError) as error:
        return reply(fault={"sentence": str(error), "detail": ""})
    except Exception:  # the page must have its answer whatever went wrong
        return reply(fault={"sentence": "Something went wrong while working this out. What you typed is kept.",
                            "detail": traceback.format_exc()})


def _asked(request: str | bytes) -> Any:
    """The arguments out of a request. On further lines the book goes along, each entry as it is kept, and behind them the text
    of a file: a whole book is then taken apart only where it must be. The first line tells how many entries there are.
    """
    told = request.decode("utf-8", "replace") if isinstance(request, bytes) else request
    first, more, rest = told.partition("\n")
    asked = json.loads(first)
    if not more:
        return asked
    count = max(0, int(asked["texts"]))
    lines = rest.split("\n", count)
    return {**asked, "entries": lines[:count], "text": "".join(lines[count:])}


def reply(**told: Any) -> str:
    """What the page is told, by name: an answer, a fault, or how far something is [JSON text]."""
    # A lone surrogate can't be sent on as UTF-8; escaped it can.
    return json.dumps(told, ensure_ascii=True, allow_nan=False)


def _first(request: dict[str, Any]) -> dict[str, Any]:
    """What the page shows before anything is typed."""
    settings = whole(request.get("settings"))
    display = display_of(settings)
    vessel = blank.blank(display)
    demos = [{"record": demo, "line": line(work_out(demo, display))} for demo in blank.demos()]
    return {"blank": vessel, "sheet": sheet(work_out(vessel, display)), "demos": demos, "settings": settings,
            "settings_form": form(settings), "shelf": _shelf({"record": {"materials": [], "wicks": []}})}


def _work_out(request: dict[str, Any]) -> dict[str, Any]:
    record, display = request.get("record"), display_of(whole(request.get("settings")))
    answer = work_out(record, display)
    return {"record": tree.copy_with(record, answer.said.canonical), "sheet": sheet(answer, _own_shelf(request))}


def _own_shelf(request: dict[str, Any]) -> Shelf:
    """The maker's own materials and wicks, which go along with every request that may need them."""
    return shelf_of(request.get("materials"), request.get("wicks"), display_of(whole(request.get("settings"))))


def _shelf(request: dict[str, Any]) -> dict[str, Any]:
    """The page of the maker's materials, whose record is a list of them."""
    record = request.get("record")
    said = shelf_said(record, display_of(whole(request.get("settings"))))
    return {"record": tree.copy_with(record, said.canonical), "sheet": shelf_sheet(said)}


def _share(request: dict[str, Any]) -> dict[str, Any]:
    """A link to pass on, and the same as a code to photograph."""
    full = _link(request, private=request.get("private") is True)
    name = str(request["record"].get("name", "")).strip() or "this vessel"
    made = {"link": full, "note": _left_out(request["record"], full)}
    try:
        return {**made, "qr": qr(full), "qr_label": f"QR code of the link to {name}"}
    except ValueError as error:
        return {**made, "qr": "", "qr_label": str(error)}


def _left_out(record: dict[str, Any], full: str) -> str:
    """A sentence where a link had no room for all the batches."""
    batches, sent = (len(each[tree.LOG]) if isinstance(each.get(tree.LOG), list) else 0
                     for each in (record, link.from_fragment(full.partition("#")[2])))
    return "" if sent == batches else f"A link has no room for all {batches} batches: the newest {sent} go along. A saved book holds all of them."


def _link(request: dict[str, Any], private: bool = False) -> str:
    """A link holds what was understood in a form that reads the same under any settings; what is private only when asked."""
    record = request.get("record")
    if not isinstance(record, dict):
        raise link.LinkError("There is no vessel here to share.")
    said = understand(record, display_of(whole(request.get("settings"))))
    address = str(request.get("address", "")).partition("#")[0]
    if not tree.within_limits(record):
        raise link.LinkError("There is no vessel here that a link could hold.")
    told = tree.copy_with(record, {**said.texts, **said.canonical})
    plain = tree.without(told, is_large if private else is_private)
    return f"{address}#{link.to_fragment(with_outlines(said, plain))}"


def _open_link(request: dict[str, Any]) -> dict[str, Any]:
    record = link.from_fragment(str(request.get("fragment", "")))
    return _work_out({**request, "record": record})


def _settings(request: dict[str, Any]) -> dict[str, Any]:
    settings = whole(request.get("settings"))
    return {"settings": settings, "settings_form": form(settings), "blank": blank.blank(display_of(settings))}


def _move_wick(request: dict[str, Any]) -> dict[str, Any]:
    return move_wick(work_out(request.get("record"), display_of(whole(request.get("settings")))), request)


def _mark_photo(request: dict[str, Any]) -> dict[str, Any]:
    settings = whole(request.get("settings"))
    return mark_photo(understand(request.get("record"), display_of(settings)), request, paper_of(settings))


def _label_pages(request: dict[str, Any]) -> dict[str, Any]:
    """The code on a label leads to the vessel without prices, whatever else is asked."""
    try:
        full = _link(request)
    except link.LinkError:
        full = ""
    return label_pages(_answer_of(request), request.get("place"), paper_of(whole(request.get("settings"))), full)


def _planned(make: Callable[..., Any]) -> Callable[[dict[str, Any]], Any]:
    """An ask about a plan of what to make."""
    return lambda request: make(request.get("record"), request.get("vessels"), _own_shelf(request),
                                display_of(whole(request.get("settings"))))


def _shopping_pages(request: dict[str, Any]) -> dict[str, Any]:
    settings = whole(request.get("settings"))
    return shopping_pages(request.get("record"), request.get("vessels"), _own_shelf(request), display_of(settings), paper_of(settings))


def _outdated(request: dict[str, Any]) -> list[dict[str, Any]]:
    return outdated(read_entries(request.get("entries")), _own_shelf(request), display_of(whole(request.get("settings"))))


def _trace(request: dict[str, Any]) -> dict[str, Any]:
    return trace(read_entries(request.get("entries")), str(request.get("sought", "")), display_of(whole(request.get("settings"))))


def _book_file(request: dict[str, Any]) -> dict[str, str]:
    return book_file(request.get("entries"), request.get("own"), str(request.get("made", "")), str(request.get("form", "")))


def _book_preview(request: dict[str, Any]) -> dict[str, Any]:
    return book_preview(str(request.get("text", "")), request.get("entries"), request.get("own"), request.get("marks"))


def _countdown(request: dict[str, Any]) -> list[dict[str, str]]:
    return countdown(request.get("now"), request.get("due"), display_of(whole(request.get("settings"))))


def _calendar(request: dict[str, Any]) -> dict[str, str]:
    answer = work_out(request.get("record"), display_of(whole(request.get("settings"))))
    return reminders(answer, request.get("place"), request.get("now"), request.get("stamp"))


def _taken_away(make: Callable[[Answer, Any], dict[str, str]]) -> Callable[[dict[str, Any]], dict[str, str]]:
    """An ask for a file of one well."""
    return lambda request: make(_answer_of(request), request.get("place"))


def _printed(make: Callable[[Answer, Any, str], dict[str, Any]]) -> Callable[[dict[str, Any]], dict[str, Any]]:
    """An ask for pages of one well, on the maker's paper."""
    return lambda request: make(_answer_of(request), request.get("place"), paper_of(whole(request.get("settings"))))


def _answer_of(request: dict[str, Any]) -> Answer:
    return work_out(request.get("record"), display_of(whole(request.get("settings"))))


ASKS: dict[str, Callable[[dict[str, Any]], Any]] = {
    "first": _first,
    "work_out": _work_out,
    "share": _share,
    "open_link": _open_link,
    "settings": _settings,
    "shelf": _shelf,
    "move_wick": _move_wick,
    "mark_photo": _mark_photo,
    "countdown": _countdown,
    "calendar": _calendar,
    "template": _taken_away(template_file),
    "template_pages": _printed(template_pages),
    "holder_sheet": _taken_away(holder_file),
    "holder_pages": _printed(holder_pages),
    "holder_model": _taken_away(holder_model),
    "design_model": _taken_away(design_model),
    "label_pages": _label_pages,
    "shopping": _planned(shopping),
    "shopping_list": _planned(shopping_list),
    "shopping_pages": _shopping_pages,
    "outdated": _outdated,
    "trace": _trace,
    "book_file": _book_file,
    "book_preview": _book_preview,
}
