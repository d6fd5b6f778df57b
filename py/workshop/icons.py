"""Brimbook's icons: a stout vessel in section, filled to its line.

One drawing in a square of 512, with y downward, gives both the PNG files and
the SVG, so they cannot come apart.
"""

from dataclasses import dataclass

from workshop.paint import Curve, paint
from workshop.png import png

SQUARE = 512.0

DARK = "#2a211c"
CLAY = "#c8734a"
CLAY_LIGHT = "#e09a70"
WAX = "#f4e3c1"
LINE = "#fffaf0"


@dataclass(frozen=True)
class Shape:
    """A closed outline and its color."""

    curve: Curve
    color: str


def _rounded(left: float, top: float, right: float, bottom: float, radius: float) -> Curve:
    # 0.5523: the handle length at which a cubic curve follows a quarter circle.
    k = radius * (1 - 0.5523)
    return [
        ("M", left + radius, top),
        ("L", right - radius, top),
        ("C", right - k, top, right, top + k, right, top + radius),
        ("L", right, bottom - radius),
        ("C", right, bottom - k, right - k, bottom, right - radius, bottom),
        ("L", left + radius, bottom),
        ("C", left + k, bottom, left, bottom - k, left, bottom - radius),
        ("L", left, top + radius),
        ("C", left, top + k, left + k, top, left + radius, top),
    ]


# The cut wall: down the outside of a belly on a foot, and back up inside.
WALL: Curve = [
    ("M", 112, 132),
    ("C", 84, 206, 82, 296, 156, 372),
    ("C", 160, 380, 158, 392, 150, 404),
    ("L", 362, 404),
    ("C", 354, 392, 352, 380, 356, 372),
    ("C", 430, 296, 428, 206, 400, 132),
    ("L", 352, 132),
    ("C", 374, 212, 372, 282, 312, 340),
    ("L", 200, 340),
    ("C", 140, 282, 138, 212, 160, 132),
]

# The wax reaches under the wall, which is painted over it: no seam shows between them.
FILLING: Curve = [
    ("M", 130, 222),
    ("L", 382, 222),
    ("C", 382, 276, 366, 316, 330, 356),
    ("L", 182, 356),
    ("C", 146, 316, 130, 276, 130, 222),
]

RIM_LEFT: Curve = [("M", 112, 132), ("L", 160, 132), ("L", 155, 152), ("L", 105.4, 152)]
RIM_RIGHT: Curve = [("M", 400, 132), ("L", 352, 132), ("L", 357, 152), ("L", 406.6, 152)]
FILL_LINE: Curve = _rounded(140, 214, 372, 230, 8)
WICK: Curve = _rounded(249, 168, 263, 218, 6)

VESSEL = [
    Shape(FILLING, WAX),
    Shape(WICK, CLAY_LIGHT),
    Shape(WALL, CLAY),
    Shape(RIM_LEFT, CLAY_LIGHT),
    Shape(RIM_RIGHT, CLAY_LIGHT),
    Shape(FILL_LINE, LINE),
]


def icons() -> dict[str, bytes]:
    """Every icon the page names, by its path in dist/."""
    card = Shape(_rounded(0, 0, SQUARE, SQUARE, 112), DARK)
    sheet = Shape([("M", 0, 0), ("L", SQUARE, 0), ("L", SQUARE, SQUARE), ("L", 0, SQUARE)], DARK)
    on_card = [card, *_scaled(VESSEL, 1.12)]
    # A launcher may cut a maskable icon down to the circle of 40 % of its side: VESSEL lies within.
    on_sheet = [sheet, *VESSEL]
    return {
        "icons/icon-192.png": _picture(on_card, 192),
        "icons/icon-512.png": _picture(on_card, 512),
        "icons/icon-maskable-512.png": _picture(on_sheet, 512),
        "icons/apple-touch-icon.png": _picture(on_sheet, 180),
        "icons/icon.svg": _svg(on_card),
    }


def _scaled(shapes: list[Shape], factor: float) -> list[Shape]:
    middle = SQUARE / 2

    def move(value: float | str) -> float | str:
        return value if isinstance(value, str) else middle + (value - middle) * factor

    return [Shape([tuple(map(move, step)) for step in shape.curve], shape.color) for shape in shapes]


def _picture(shapes: list[Shape], side: int) -> bytes:
    layers = [(shape.curve, shape.color) for shape in shapes]
    return png(side, side, paint(layers, SQUARE, side))


def _svg(shapes: list[Shape]) -> bytes:
    paths = "".join(
        f'  <path fill="{shape.color}" d="{_path_data(shape.curve)}"/>\n' for shape in shapes
    )
    head = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {SQUARE:g} {SQUARE:g}">\n'
    return f"{head}{paths}</svg>\n".encode()


def _path_data(curve: Curve) -> str:
    steps = (step[0] + " ".join(f"{round(value, 2):g}" for value in step[1:]) for step in curve)
    return "".join(steps) + "Z"
