"""The outlines of a drawing's shapes: paths, rectangles, circles, ellipses, polygons."""

import math
from collections.abc import Iterator
from dataclasses import dataclass

from brimbook.shape.drawing_place import length_of, numbers_of
from brimbook.shape.path_data import Curve, OutlineError, Pen, commands, words_of

SHAPES = ("path", "rect", "circle", "ellipse", "polygon", "polyline")
Command = tuple[str, list[float]]


@dataclass(frozen=True)
class Piece:
    """Lines and cubics, each beginning where the one before ends, and whether they are closed."""

    curves: tuple[Curve, ...]
    is_closed: bool


def pieces_of(name: str, given: dict[str, str], page: tuple[float, float]) -> list[Piece]:
    """What one shape draws, a piece for each outline in it, y downward [pieces].

    name: of the element, one of SHAPES [text].
    given: its attributes [texts].
    page: width and height that lengths in % are parts of [px].

    Raises OutlineError where it can't be read.

    Source: SVG 2, chapter 9, paths, and chapter 10, basic shapes and their equivalent paths.

    >>> pieces_of("polygon", {"points": "0,0 80,0 80,40"}, (0.0, 0.0))[0].curves[0]
    ((0.0, 0.0), (80.0, 0.0))
    """
    if name == "path":
        text = given.get("d", "").strip()
        return _drawn(commands(words_of(text))) if text and text != "none" else []
    if name in ("polygon", "polyline"):
        numbers = numbers_of(given.get("points", ""))
        points = list(zip(numbers[::2], numbers[1::2]))
        return _drawn([("M" if row == 0 else "L", list(point)) for row, point in enumerate(points)] + [("Z", [])]) if points else []
    return _drawn(_rectangle(given, page) if name == "rect" else _ellipse(name, given, page))


def _drawn(steps: Iterator[Command] | list[Command]) -> list[Piece]:
    """One pen draws one outline; the next begins where that one is, or began if it was closed."""
    pieces, pen = [], Pen()
    for letter, numbers in steps:
        if pen.is_closed or (letter in "Mm" and pen.start is not None):
            pieces.append(_piece(pen))
            pen = Pen(pen.at, None if letter in "Mm" else pen.at)
        pen.draw(letter, numbers)
    return [each for each in [*pieces, _piece(pen)] if each.curves]


def _piece(pen: Pen) -> Piece:
    curves = tuple(curve for curve in pen.drawn if any(point != curve[0] for point in curve))
    return Piece(curves, pen.is_closed or (bool(curves) and curves[-1][-1] == curves[0][0]))


def _lengths(given: dict[str, str], names: str, whole: float) -> list[float]:
    return [length_of(given.get(name, "0"), whole) for name in names.split()]


def _rectangle(given: dict[str, str], page: tuple[float, float]) -> list[Command]:
    x, width = _lengths(given, "x width", page[0])
    y, height = _lengths(given, "y height", page[1])
    if width <= 0 or height <= 0:
        return []
    across, down = (given.get(name, "auto").strip() for name in ("rx", "ry"))
    across, down = (down if across == "auto" else across), (across if down == "auto" else down)
    rx = 0.0 if across == "auto" else min(max(length_of(across, page[0]), 0.0), width / 2)
    ry = 0.0 if down == "auto" else min(max(length_of(down, page[1]), 0.0), height / 2)
    right, bottom = x + width, y + height
    return [("M", [x + rx, y]), ("L", [right - rx, y]), ("A", [rx, ry, 0.0, 0.0, 1.0, right, y + ry]),
            ("L", [right, bottom - ry]), ("A", [rx, ry, 0.0, 0.0, 1.0, right - rx, bottom]),
            ("L", [x + rx, bottom]), ("A", [rx, ry, 0.0, 0.0, 1.0, x, bottom - ry]),
            ("L", [x, y + ry]), ("A", [rx, ry, 0.0, 0.0, 1.0, x + rx, y]), ("Z", [])]


def _ellipse(name: str, given: dict[str, str], page: tuple[float, float]) -> list[Command]:
    (x,), (y,) = _lengths(given, "cx", page[0]), _lengths(given, "cy", page[1])
    if name == "circle":
        rx = ry = length_of(given.get("r", "0"), math.hypot(*page) / math.sqrt(2))
    else:
        across, down = given.get("rx", "auto").strip(), given.get("ry", "auto").strip()
        across, down = (down if across == "auto" else across), (across if down == "auto" else down)
        rx, ry = (0.0 if text == "auto" else length_of(text, whole) for text, whole in zip((across, down), page))
    if rx <= 0 or ry <= 0:
        return []
    ends = ((x, y + ry), (x - rx, y), (x, y - ry), (x + rx, y))
    return [("M", [x + rx, y]), *(("A", [rx, ry, 0.0, 0.0, 1.0, *end]) for end in ends), ("Z", [])]
