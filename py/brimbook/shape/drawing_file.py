"""The largest closed outline of a drawing's file (SVG), as path data in mm."""

from collections.abc import Generator
from dataclasses import dataclass, field

from brimbook.shape.curves import box, enclosed
from brimbook.shape.drawing_joined import joined
from brimbook.shape.drawing_limits import MOST_BYTES
from brimbook.shape.drawing_place import MM, PLAIN, Matrix, after, fitted, length_of, moved, transform_of, view_of
from brimbook.shape.drawing_shapes import SHAPES, Piece, pieces_of
from brimbook.shape.drawing_text import text_of
from brimbook.shape.drawing_tree import MOST_PARTS, Element, tree_of
from brimbook.shape.outline import LARGEST, SMALLEST
from brimbook.shape.path_data import Curve, OutlineError

# So many letters of paths and points are read, and so deeply may one copy hold another.
_MOST_LETTERS, _MOST_USES = 300_000, 8
_GROUPS = ("svg", "g", "a", "switch")
# An outline that holds less than this is a dot or a line [mm²].
_LEAST = 1.0


@dataclass(frozen=True)
class Drawn:
    """The outline as path data in mm, y downward, and what the maker should know of how it was found."""

    path: str
    notes: tuple[str, ...] = ()


@dataclass(frozen=True)
class _Part:
    """An element to be drawn: where it lies, the page it lies on, and how many copies it is inside of."""

    element: Element
    matrix: Matrix
    page: tuple[float, float]
    uses: int = 0
    is_copy: bool = False


@dataclass
class _Found:
    """The pieces found so far, in mm, and what could not be read."""

    pieces: list[Piece] = field(default_factory=list)
    letters: int = 0
    faulty: int = 0


def drawn(data: bytes) -> Generator[tuple[float, str], None, Drawn]:
    """The largest closed outline of a drawing [drawn].

    data: content of the file [bytes].

    Yields the share that is done and what is being done. Raises OutlineError, a sentence, when there is no such outline.
    """
    if len(data) > MOST_BYTES:
        raise OutlineError(f"This file is larger than {MOST_BYTES / 1e6:.0f} MB. Save a drawing that holds the outline alone.")
    root, ids = yield from tree_of(data)
    found = yield from _walked(root, ids)
    yield 0.8, "Looking for the outline"
    closed, is_open = _closed(found.pieces)
    if not closed:
        raise OutlineError(_nothing(found))
    largest = max(closed, key=lambda curves: round(abs(enclosed(curves)), 6))
    left, top, right, bottom = box(largest)
    size = max(right - left, bottom - top)
    if not SMALLEST <= size <= LARGEST:
        raise OutlineError(f"By this file its outline is {size:.4g} mm across: a vessel is between {SMALLEST:.0f} and {LARGEST:,.0f} mm."
                           " Check the size and the unit of the drawing.")
    text, is_simpler = text_of(largest)
    return Drawn(text, tuple(_notes(root, found, len(closed), is_open, is_simpler)))


def _notes(root: Element, found: _Found, count: int, is_open: bool, is_simpler: bool) -> list[str]:
    told = [f"{count} outlines in this file; the largest is taken."] if count > 1 else []
    if _is_in_pixels(root.given):
        told.append("The file tells no size in mm or inches, so its units are taken as pixels, 96 to the inch. Check the size.")
    if is_open:
        told.append("The outline was open and was closed with a straight line.")
    if is_simpler:
        told.append("Its fine detail was left out.")
    return [*told, "A part that can't be read was left out."] if found.faulty else told


def _nothing(found: _Found) -> str:
    if found.faulty:
        return "The outline in this file can't be read. Save it as a plain path."
    return "There is no closed outline in this file. Turn text into paths, and close the outline."


def _walked(root: Element, ids: dict[str, Element]) -> Generator[tuple[float, str], None, _Found]:
    """Every shape of the drawing in mm, groups and copies opened."""
    found, parts, count = _Found(), [_Part(root, (MM, 0.0, 0.0, MM, 0.0, 0.0), (0.0, 0.0))], 0
    while parts:
        part, count = parts.pop(), count + 1
        if count > MOST_PARTS:
            raise OutlineError("This drawing has too many copies of its parts. Save one that holds the outline alone.")
        if count % 200 == 0:
            yield 0.5 + 0.3 * count / MOST_PARTS, "Drawing the outlines"
        element = part.element
        if _is_hidden(element):
            continue
        matrix = after(part.matrix, transform_of(element.given.get("transform", "")))
        if element.name in SHAPES:
            _draw(found, element, matrix, part.page)
        elif element.name in _GROUPS or (element.name == "symbol" and part.is_copy):
            parts += _inside(part, matrix, element is root)
        elif element.name == "use":
            parts += _copied(part, matrix, ids)
    return found


def _is_hidden(element: Element) -> bool:
    styles = element.given.get("style", "").replace(" ", "")
    return element.given.get("display", "").strip() == "none" or "display:none" in styles


def _draw(found: _Found, element: Element, matrix: Matrix, page: tuple[float, float]) -> None:
    found.letters += len(element.given.get("d", "")) + len(element.given.get("points", ""))
    if found.letters > _MOST_LETTERS:
        raise OutlineError("This drawing is too detailed. Save one that holds the outline alone, with fewer points.")
    try:
        pieces = pieces_of(element.name, element.given, page)
    except OutlineError:
        found.faulty += 1
        return
    found.pieces += [Piece(tuple(moved(curve, matrix) for curve in piece.curves), piece.is_closed) for piece in pieces]


def _inside(part: _Part, matrix: Matrix, is_root: bool) -> list[_Part]:
    """What stands inside a group or a page, the last first, for the last part is the next one."""
    element, page = part.element, part.page
    if element.name in ("svg", "symbol"):
        page, fit = _page(element.given, page, is_root)
        matrix = after(matrix, fit)
    return [_Part(child, matrix, page, part.uses) for child in reversed(element.inside)]


def _page(given: dict[str, str], outer: tuple[float, float], is_root: bool) -> tuple[tuple[float, float], Matrix]:
    """The page inside a drawing or a drawing within it: its size in its own units, and where it lies."""
    view = view_of(given)
    width, height = (_side(given.get(name, ""), whole, is_root) for name, whole in zip(("width", "height"), outer))
    if is_root:
        ratio = view[3] / view[2] if view else 1.0
        width, height = width or (height / ratio if height else 0.0), height or (width * ratio if width else 0.0)
        width, height = width or (view[2] if view else 0.0), height or (view[3] if view else 0.0)
    x, y = (0.0, 0.0) if is_root else (length_of(given.get(name, "0"), whole) for name, whole in zip("xy", outer))
    if view is None or width <= 0 or height <= 0:
        return (width, height), (1.0, 0.0, 0.0, 1.0, x, y)
    return (view[2], view[3]), fitted(view, (x, y, width, height), given.get("preserveAspectRatio", ""))


def _side(text: str, whole: float, is_root: bool) -> float:
    """A page's width or height; all of the page around it where it tells none, and none for the outermost one."""
    text = text.strip()
    if text in ("", "auto") or (is_root and text.endswith("%")):
        return whole
    return length_of(text, whole)


def _is_in_pixels(given: dict[str, str]) -> bool:
    """Whether neither width nor height is told in a unit of the ruler."""
    return not any(given.get(name, "").strip().lower().endswith(("mm", "cm", "in", "pt", "pc", "q")) for name in ("width", "height"))


def _copied(part: _Part, matrix: Matrix, ids: dict[str, Element]) -> list[_Part]:
    """What a copy shows: an element of the same file, found by its id."""
    given = part.element.given
    target = ids.get(given.get("href", "").strip().removeprefix("#"))
    if target is None or part.uses >= _MOST_USES:
        return []
    x, y = (length_of(given.get(name, "0"), whole) for name, whole in zip("xy", part.page))
    if target.name in ("symbol", "svg"):
        sizes = {name: given[name] for name in ("width", "height") if name in given}
        target = Element(target.name, {**target.given, **sizes}, target.inside)
    return [_Part(target, after(matrix, (*PLAIN[:4], x, y)), part.page, part.uses + 1, is_copy=True)]


def _closed(pieces: list[Piece]) -> tuple[list[tuple[Curve, ...]], bool]:
    """The closed outlines that hold something; where there are none, the open ones closed by a line."""
    open_ends = joined([piece.curves for piece in pieces if not piece.is_closed])
    closed = [piece.curves for piece in pieces if piece.is_closed] + [curves for curves, is_closed in open_ends if is_closed]
    found = _holding([_back(curves) for curves in closed])
    return (found, False) if found else (_holding([_back(curves) for curves, _ in open_ends]), True)


def _back(curves: tuple[Curve, ...]) -> tuple[Curve, ...]:
    """With the line back to where it began."""
    return curves if curves[-1][-1] == curves[0][0] else (*curves, (curves[-1][-1], curves[0][0]))


def _holding(outlines: list[tuple[Curve, ...]]) -> list[tuple[Curve, ...]]:
    return [curves for curves in outlines if abs(enclosed(curves)) > _LEAST]
