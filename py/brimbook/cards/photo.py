"""The photo on the wicks' card: what is to be marked next, the marks drawn over it, and what a tap writes into the record."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.draw.photo import WIDTH, marks_over
from brimbook.quantity import show
from brimbook.quantity.error import QuantityError
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said
from brimbook.shape.path_data import OutlineError
from brimbook.shape.perspective import around, looks_wide
from brimbook.shape.photo import FEWEST, MOST, Sheet
from brimbook.steps.photo import known_marks, marks_of, photographed, sides_of, size_of

_STEPS = {"left": (-1, 0), "right": (1, 0), "up": (0, -1), "down": (0, 1)}
_NEAR, _FAR = 1, 5
LENS = ("Take the photo from straight above, from as far as the rim still fills half of it: a near wide lens bends lines, "
        "and what stands higher looks larger. Lay the sheet close to the rim and level with it.")


def photo_fields(said: Said, place: str) -> list[dict[str, Any]]:
    """What is asked of the photo in the open [fields].

    said: the record as understood [said].
    place: path of the well [text].
    """
    at = f"{place}.outline.photo"
    names = ["by"]
    if said.value(f"{at}.by") == "ruler":
        names.append("distance")
    else:
        names += ["paper", *(("wide", "high") if said.value(f"{at}.paper") == "other" else ())]
    return [ask(said, f"{at}.{name}") for name in [*names, "curve"]]


def photo_more(said: Said, place: str) -> list[dict[str, Any]]:
    """What is seldom asked of the photo [fields].

    said: the record as understood [said].
    place: path of the well [text].
    """
    at = f"{place}.outline.photo"
    names = ["rim", "camera", "off", "marks", "size"]
    return [ask(said, f"{at}.{name}") for name in (names if said.value(f"{at}.by") == "ruler" else ["lies", *names])]


def photo_part(said: Said, place: str) -> dict[str, Any]:
    """The photo and its marks, as plain data for the page [photo].

    said: the record as understood [said].
    place: path of the well [text].

    Its keys: place and ask, to tell the door of a tap; size as the record has it; marks, drawn over the photo; words, for those who
    listen; says, what is to be done next; fault; back and anew, what taking back the last mark or all of them writes; and labels.
    """
    at = f"{place}.outline.photo"
    marks, pixels = marks_of(said, at) or [], size_of(said, at)
    fault = said.fault_at(f"{at}.marks") or said.fault_at(f"{at}.size")
    return {
        "place": at, "ask": "mark_photo", "size": said.text(f"{at}.size").strip() if pixels else "", "fault": fault,
        "marks": _drawn(said, at, marks, pixels[1] / pixels[0]) if pixels else "",
        "words": f"The photo, {len(marks)} marks on it.", "says": _next(said, place, len(marks)) if pixels else LENS,
        "back": {f"{at}.marks": _text(marks[:-1])} if marks else None, "anew": {f"{at}.marks": ""} if marks else None,
        "labels": {"choose": "Take or choose a photo", "other": "Another photo", "back": "Take back the last mark", "anew": "Begin again", "forget": "Forget the photo",
                   "forgotten": "The photo is no longer kept here. Its marks stay.",
                   "missing": "The photo stays on the device that took it; its marks are here.", "broken": "This photo can't be shown. Choose another one.",
                   "left": "Left", "right": "Right", "up": "Up", "down": "Down"},
    }


def _next(said: Said, place: str, count: int) -> str:
    at = f"{place}.outline.photo"
    needed, is_sheet = known_marks(said, at), said.value(f"{at}.by") != "ruler"
    if count < needed:
        return f"Tap {'corner' if is_sheet else 'end'} {count + 1} of {needed} {'of the sheet' if is_sheet else 'of the way on the ruler'}."
    told = f"Tap round the inner edge of the rim, in order: {count - needed} so far."
    missing = _missing(said, at)
    if count < needed + FEWEST:
        return told
    if missing:
        return f"{told} {missing}"
    return f"{told} Drag a mark to mend it." if photographed(said, place) is not None else told


def _missing(said: Said, at: str) -> str:
    if said.value(f"{at}.by") == "ruler":
        return "" if said.value(f"{at}.distance") is not None else "Type how far apart the two ends are."
    if sides_of(said, at) is None:
        return "Type the sides of the sheet."
    return "Type how far the camera was above the sheet." if said.value(f"{at}.rim") and said.value(f"{at}.camera") is None else ""


def _drawn(said: Said, at: str, marks: list[tuple[int, int]], ratio: float) -> str:
    needed = known_marks(said, at)
    known, rim = marks[:needed], marks[needed:]
    return marks_over(ratio, known, rim, _names(said, at, marks, ratio), outline=_around(said, at, known), sides=_sides(said, at, known, ratio),
                      is_round=said.value(f"{at}.curve") != "straight")


def _around(said: Said, at: str, known: list[tuple[int, int]]) -> list[tuple[float, float]]:
    """The sheet's corners in order around it, or the ruler's ends; none while they can't be those."""
    if len(known) < known_marks(said, at):
        return []
    if len(known) == 2:
        return list(known)
    try:
        return [(round(x * WIDTH, 3), round(-y * WIDTH, 3)) for x, y in around([(x / WIDTH, -y / WIDTH) for x, y in known])]
    except OutlineError:
        return []


def _sides(said: Said, at: str, known: list[tuple[int, int]], ratio: float) -> list[str]:
    """What stands at the first and the second side."""
    outline, sides = _around(said, at, known), sides_of(said, at)
    if not outline or sides is None:
        return []
    if not isinstance(sides, Sheet):
        return [show.length(sides.distance, said.display)]
    is_wide = looks_wide([(x / WIDTH, -y / WIDTH) for x, y in outline], ratio) != sides.is_other_way
    told = [show.length(side, said.display) for side in (sides.longer, sides.shorter)]
    return told if is_wide else told[::-1]


def _names(said: Said, at: str, marks: list[tuple[int, int]], ratio: float) -> list[str]:
    needed, word = known_marks(said, at), "Corner" if said.value(f"{at}.by") != "ruler" else "End"
    told = []
    for row, (x, y) in enumerate(marks):
        name = f"{word} {row + 1}" if row < needed else f"Rim {row + 1 - needed}"
        left, top = (show.percent(share, said.display) for share in (x / WIDTH, y / (WIDTH * ratio)))
        told.append(f"{name}, {left} from the left, {top} from the top")
    return told


def _text(marks: list[tuple[int, int]]) -> str:
    return " ".join(f"{x},{y}" for x, y in marks)


def mark_photo(said: Said, request: dict[str, Any], paper: str) -> dict[str, Any]:
    """The leaves to write for a new photo, a new mark, or a mark that was moved; of a mark, its row and place too [texts].

    said: the record as understood [said].
    request: place of the photo; and width and height of a new one in pixels, or x and y of a tap in units of the drawing,
        or row of a mark with its new x and y, or with a step and far for a large one [request].
    paper: the maker's, A4 or Letter [text].

    Raises QuantityError with a sentence where there is no such photo, mark or place.
    """
    at = request.get("place")
    if not isinstance(at, str) or not _is_photo(said, at):
        raise QuantityError("There is no such photo.")
    if "width" in request:
        return {"sets": _begun(said, at, request, paper)}
    marks, pixels = marks_of(said, at), size_of(said, at)
    if marks is None or pixels is None:
        raise QuantityError("Choose a photo first, then mark it.")
    marked, row = _marked(marks, request, known_marks(said, at), WIDTH * pixels[1] / pixels[0])
    return {"sets": {f"{at}.marks": _text(marked)}, "row": row, "x": marked[row][0], "y": marked[row][1]}


def _is_photo(said: Said, at: str) -> bool:
    steps = at.split(".")
    return "*" not in at and leaf_at(f"{at}.marks") is not None and steps[1].isdecimal() and int(steps[1]) < said.count("wells")


def _begun(said: Said, at: str, request: dict[str, Any], paper: str) -> dict[str, str]:
    """A new photo has no marks yet; one of the same shape may be the old one again, so its marks stay."""
    wide, high = request.get("width"), request.get("height")
    if any(type(each) is not int or not 0 < each < 100_000 for each in (wide, high)) or max(wide, high) > 4 * min(wide, high) or min(wide, high) < 50:
        raise QuantityError("This photo is too narrow or too small to be marked. Choose another one.")
    old = size_of(said, at)
    is_same = old is not None and abs(old[1] / old[0] - high / wide) < 0.002
    first = {} if said.typed(f"{at}.paper") else {f"{at}.paper": paper.lower()}
    return {f"{at}.size": f"{wide} {high}", **first, **({} if is_same else {f"{at}.marks": ""})}


def _marked(marks: list[tuple[int, int]], request: dict[str, Any], needed: int, high: float) -> tuple[list[tuple[int, int]], int]:
    """All marks, and the row of the one that was set or moved."""
    row = request.get("row")
    if row is None:
        if len(marks) >= needed + MOST:
            raise QuantityError(f"A rim takes up to {MOST} marks. Take some back.")
        return [*marks, _inside(*_place(request), high)], len(marks)
    if type(row) is not int or not 0 <= row < len(marks):
        raise QuantityError("There is no such mark on this photo.")
    step = request.get("step")
    if isinstance(step, str) and step in _STEPS:
        far = _FAR if request.get("far") is True else _NEAR
        place = (marks[row][0] + far * _STEPS[step][0], marks[row][1] + far * _STEPS[step][1])
    else:
        place = _place(request)
    return [*marks[:row], _inside(*place, high), *marks[row + 1:]], row


def _place(request: dict[str, Any]) -> tuple[float, float]:
    x, y = request.get("x"), request.get("y")
    if all(isinstance(each, (int, float)) and not isinstance(each, bool) and abs(each) < 1e6 for each in (x, y)):
        return x, y
    raise QuantityError("A mark can only be set on the photo.")


def _inside(x: float, y: float, high: float) -> tuple[int, int]:
    return round(min(max(x, 0), WIDTH)), round(min(max(y, 0), high))
