"""Where a drawing's shapes lie: lengths with units, transforms, and view boxes."""

import math
import re

from brimbook.shape.path_data import Curve, OutlineError, Point

# x' = a x + c y + e, y' = b x + d y + f.
Matrix = tuple[float, float, float, float, float, float]

PLAIN: Matrix = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
MM = 25.4 / 96
# Pixels in one of a unit. Source: CSS Values and Units, absolute lengths: 1in = 96px = 72pt = 6pc = 25.4mm = 101.6Q.
_UNITS = {"": 1.0, "px": 1.0, "mm": 96 / 25.4, "cm": 960 / 25.4, "in": 96.0, "pt": 96 / 72, "pc": 16.0, "q": 24 / 25.4}
NUMBER = r"[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?"
_NUMBER = re.compile(NUMBER)
_LENGTH = re.compile(rf"\s*({NUMBER})\s*([A-Za-z%]*)\s*")
_BETWEEN = r"(?:\s*,\s*|\s+|(?=[+-]))"
_LIST = re.compile(rf"\s*(?:{NUMBER}(?:{_BETWEEN}{NUMBER})*)?\s*")
_STEP = re.compile(r"\s*,?\s*([A-Za-z]+)\s*\(([^()]*)\)")
_TAKES = {"matrix": (6,), "translate": (1, 2), "scale": (1, 2), "rotate": (1, 3), "skewX": (1,), "skewY": (1,)}
# A number beyond this is a slip, and so is a longer list of transforms.
_FAR, _MOST_STEPS = 1e7, 60


def after(outer: Matrix, inner: Matrix) -> Matrix:
    """Both transforms in one, the inner one first [matrix].

    outer: done last [matrix].
    inner: done first [matrix].

    >>> after((2.0, 0.0, 0.0, 2.0, 0.0, 0.0), (1.0, 0.0, 0.0, 1.0, 5.0, 0.0))
    (2.0, 0.0, 0.0, 2.0, 10.0, 0.0)
    """
    a, b, c, d, e, f = outer
    g, h, i, j, k, m = inner
    return a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * m + e, b * k + d * m + f


def moved(curve: Curve, matrix: Matrix) -> Curve:
    """A line or a cubic, transformed [curve].

    curve: any [units].
    matrix: of the transform [matrix].

    >>> moved(((1.0, 2.0), (3.0, 4.0)), (1.0, 0.0, 0.0, 1.0, 10.0, 0.0))
    ((11.0, 2.0), (13.0, 4.0))
    """
    a, b, c, d, e, f = matrix
    return tuple((a * x + c * y + e, b * x + d * y + f) for x, y in curve)


def numbers_of(text: str) -> list[float]:
    """A list of numbers with commas or gaps between them [numbers].

    text: of the list [text].

    Raises OutlineError where something else stands in it, or a number far too large.

    >>> numbers_of("1, 2.5 -3-4")
    [1.0, 2.5, -3.0, -4.0]
    """
    if not _LIST.fullmatch(text):
        raise OutlineError(f"“{text.strip()[:20]}” in this drawing is not a list of numbers.")
    found = [float(number) for number in _NUMBER.findall(text)]
    if any(abs(number) > _FAR for number in found):
        raise OutlineError("A number in this drawing is far too large.")
    return found


def length_of(text: str, whole: float) -> float:
    """A length in pixels, 96 to the inch [px].

    text: with its unit, or none for pixels [text].
    whole: what a length in % is a part of [px].

    Raises OutlineError where it can't be read.

    >>> length_of("25.4mm", 0.0), length_of("50%", 80.0)
    (96.0, 40.0)
    """
    found = _LENGTH.fullmatch(text)
    unit = found[2].lower() if found else None
    if unit != "%" and unit not in _UNITS:
        raise OutlineError(f"The length “{text.strip()[:20]}” in this drawing can't be read. Units are mm, cm, in, pt, pc and px.")
    value = float(found[1]) * (whole / 100 if unit == "%" else _UNITS[unit])
    if abs(value) > _FAR:
        raise OutlineError("A length in this drawing is far too large.")
    return value


def transform_of(text: str) -> Matrix:
    """A list of transforms in one, the last of them done first [matrix].

    text: of the list, such as translate(10) rotate(90) [text].

    Raises OutlineError where it can't be read.

    Source: SVG 2, chapter 8, coordinate systems; CSS Transforms 1, matrices of the functions.

    >>> transform_of("translate(10, 20) scale(2)")
    (2.0, 0.0, 0.0, 2.0, 10.0, 20.0)
    """
    matrix, at, text, steps = PLAIN, 0, text.strip(), 0
    while at < len(text):
        found, steps = _STEP.match(text, at), steps + 1
        takes = _TAKES.get(found[1], ()) if found else ()
        numbers = numbers_of(found[2]) if takes else []
        if len(numbers) not in takes or steps > _MOST_STEPS:
            raise OutlineError(f"The transform “{text[at:at + 20]}” in this drawing can't be read.")
        matrix, at = after(matrix, _single(found[1], numbers)), found.end()
    return matrix


def _single(name: str, numbers: list[float]) -> Matrix:
    first, last = numbers[0], numbers[-1]
    if name == "matrix":
        return tuple(numbers)
    if name == "translate":
        return (1.0, 0.0, 0.0, 1.0, first, last if len(numbers) == 2 else 0.0)
    if name == "scale":
        return (first, 0.0, 0.0, last, 0.0, 0.0)
    if name == "rotate":
        cos, sin = _turn(first)
        x, y = numbers[1:] if len(numbers) == 3 else (0.0, 0.0)
        return (cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y)
    cos, sin = _turn(first)
    if abs(cos) < 1e-6:
        raise OutlineError("A transform in this drawing slants by 90°, which leaves no area.")
    return (1.0, 0.0, sin / cos, 1.0, 0.0, 0.0) if name == "skewX" else (1.0, sin / cos, 0.0, 1.0, 0.0, 0.0)


def _turn(degrees: float) -> Point:
    """Cosine and sine without the last digits, in which one computer's differ from another's."""
    turned = math.radians(math.remainder(degrees, 360))
    return round(math.cos(turned), 15), round(math.sin(turned), 15)


def view_of(given: dict[str, str]) -> tuple[float, float, float, float] | None:
    """A view box: its left, top, width and height; none where there is none that holds anything [units].

    given: attributes of the element [texts].

    >>> view_of({"viewBox": "0 0 80 40"})
    (0.0, 0.0, 80.0, 40.0)
    """
    found = numbers_of(given.get("viewBox", ""))
    return tuple(found) if len(found) == 4 and found[2] > 0 and found[3] > 0 else None


def fitted(view: tuple[float, float, float, float], place: tuple[float, float, float, float], align: str) -> Matrix:
    """What brings a view box into its place on the page [matrix].

    view: left, top, width and height of the view box [units].
    place: left, top, width and height on the page [px].
    align: preserveAspectRatio [text].

    Source: SVG 2, 8.2, computing the equivalent transform of an SVG viewport.

    >>> fitted((0.0, 0.0, 10.0, 10.0), (0.0, 0.0, 40.0, 20.0), "")
    (2.0, 0.0, 0.0, 2.0, 10.0, 0.0)
    """
    words = [word for word in align.split() if word != "defer"] or ["xMidYMid"]
    across, down = place[2] / view[2], place[3] / view[3]
    if words[0] != "none":
        across = down = max(across, down) if "slice" in words else min(across, down)
    x, y = place[0] - view[0] * across, place[1] - view[1] * down
    for word, share in (("Mid", 0.5), ("Max", 1.0)):
        x += share * (place[2] - view[2] * across) if f"x{word}" in words[0] else 0.0
        y += share * (place[3] - view[3] * down) if f"Y{word}" in words[0] else 0.0
    return (across, 0.0, 0.0, down, x, y)
