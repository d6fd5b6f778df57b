"""Sheets at true size: one millimeter of the drawing is one millimeter of the paper.

A sheet stands alone, as a file or on paper, so its lines carry their own color and thickness.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from xml.sax.saxutils import escape

from brimbook.shape.outline import Point

# Width and height of the papers [mm].
PAPERS = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}
MOST_PAGES = 12
_MARGIN, _HEAD, _FOOT, _OVERLAP = 10.0, 19.0, 19.0, 10.0
_AROUND, _INCH = 9.0, 25.4
_LONGEST_NAME = 32
# A letter of a bar's name is at most about so wide, on average [mm].
_LETTER = 2.0
_FIT, _JOIN = "Print at 100 %, not fitted to the page.", " Join the pages on their dashed lines, cross on cross."
_THICK, _THIN, _DASHED = 'stroke-width="0.35"', 'stroke-width="0.18"', 'stroke-width="0.18" stroke-dasharray="3 1.5"'


@dataclass(frozen=True)
class Drawing:
    """Shapes at true size, x to the right and y down, and the box that holds them [mm]."""

    shapes: tuple[str, ...]
    left: float
    top: float
    width: float
    height: float


@dataclass(frozen=True)
class Heading:
    """What stands at the head of every sheet: the vessel's name, what it is, and lines on how to use it."""

    name: str
    title: str
    lines: tuple[str, ...] = ()


@dataclass(frozen=True)
class Piece:
    """A bar to be cut out: its name, its polygon with y up, where the walls are below it, and the numbers of its slots."""

    label: str
    polygon: tuple[Point, ...]
    walls: tuple[float, float]
    slots: tuple[tuple[float, str], ...]


def template(outline: Sequence[Point], wicks: Sequence[Point]) -> Drawing:
    """The outline of the wax with a cross for each wick [drawing].

    outline: seen from above, y to the back [mm].
    wicks: in it [mm].
    """
    reach_x, reach_y = (max(abs(point[axis]) for point in outline) for axis in (0, 1))
    shapes = [polygon(outline, _THICK), line((-reach_x - 6, 0), (reach_x + 6, 0), _DASHED),
              line((0, -reach_y - 6), (0, reach_y + 3), _DASHED),
              polygon([(-2, -reach_y - 6), (2, -reach_y - 6), (0, -reach_y - 2)], _THIN), text((3, -reach_y - 6), "front", 3.5)]
    for number, (x, y) in enumerate(wicks, 1):
        shapes += [line((x - 5, y), (x + 5, y), _THIN), line((x, y - 5), (x, y + 5), _THIN),
                   f'<circle cx="{_number(x)}" cy="{_number(-y)}" r="1.5" {_THIN}/>', text((x + 2, y + 2), str(number), 5)]
    return Drawing(tuple(shapes), -reach_x - _AROUND, -reach_y - _AROUND, 2 * (reach_x + _AROUND), 2 * (reach_y + _AROUND))


def pieces(bars: Sequence[Piece]) -> Drawing:
    """Bars one below the other, each with the places where the walls are below it dashed across [drawing].

    bars: to be cut out [pieces].
    """
    shapes, down, longest = [], 0.0, 0.0
    for bar in bars:
        length, width = (max(point[axis] for point in bar.polygon) for axis in (0, 1))
        foot = -(down + 5 + width)
        shapes += [text((0, -down - 3.5), bar.label, 3.5), polygon([(x, y + foot) for x, y in bar.polygon], _THICK),
                   *(line((wall, foot), (wall, foot + width), _DASHED) for wall in bar.walls),
                   *(text((along, foot - 4), number, 3.5, "middle") for along, number in bar.slots)]
        down, longest = down + width + 13, max(longest, length, _LETTER * len(bar.label))
    return Drawing(tuple(shapes), -1.0, 0.0, longest + 2, down - 2)


def sheet(drawing: Drawing, heading: Heading) -> str:
    """A drawing as one sheet as large as it must be [SVG].

    drawing: at true size [drawing].
    heading: of the sheet [heading].
    """
    width, height = max(drawing.width, 150.0) + 2 * _MARGIN, drawing.height + 2 * _MARGIN + _HEAD + _FOOT
    start = (width - drawing.width) / 2
    body = f'<g transform="translate({_number(start - drawing.left)} {_number(_MARGIN + _HEAD - drawing.top)})">{"".join(drawing.shapes)}</g>'
    return _page(width, height, heading, "", [body])


def pages(drawing: Drawing, heading: Heading, paper: str) -> tuple[float, float, list[str]] | None:
    """A drawing on as many pages as it takes: their width and height, and each page; none where they would be too many [mm and SVG].

    drawing: at true size [drawing].
    heading: of every page [heading].
    paper: a name in PAPERS [text].
    """
    upright = PAPERS[paper]
    chosen = min((upright, upright[::-1]), key=lambda size: math.prod(_tiles(drawing, size)))
    across, down = _tiles(drawing, chosen)
    if across * down > MOST_PAGES:
        return None
    tiles = [_tile(drawing, heading, chosen, (column, row), (across, down)) for row in range(down) for column in range(across)]
    return *chosen, tiles


def polygon(points: Sequence[Point], style: str) -> str:
    """A closed line [SVG].

    points: y up [mm].
    style: its thickness, as attributes [text].
    """
    return f'<polygon points="{" ".join(f"{_number(x)},{_number(-y)}" for x, y in points)}" {style}/>'


def line(start: Point, end: Point, style: str) -> str:
    """A straight line [SVG].

    start: y up [mm].
    end: y up [mm].
    style: its thickness, as attributes [text].
    """
    return f'<path d="M{_number(start[0])} {_number(-start[1])}L{_number(end[0])} {_number(-end[1])}" {style}/>'


def text(at: Point, words: str, size: float, anchor: str = "start") -> str:
    """A line of text [SVG].

    at: where it starts, or its middle, y up [mm].
    words: plain text [text].
    size: of its letters [mm].
    anchor: start, middle or end [text].
    """
    return (f'<text x="{_number(at[0])}" y="{_number(-at[1])}" font-size="{_number(size)}" text-anchor="{anchor}" '
            f'fill="#000" stroke="none">{escape(words)}</text>')


def _room(size: tuple[float, float]) -> tuple[float, float]:
    """What a paper has for the drawing itself."""
    return size[0] - 2 * _MARGIN, size[1] - 2 * _MARGIN - _HEAD - _FOOT


def _tiles(drawing: Drawing, size: tuple[float, float]) -> tuple[int, int]:
    across, down = (max(1, math.ceil((whole - _OVERLAP) / (room - _OVERLAP) - 1e-9))
                    for whole, room in zip((drawing.width, drawing.height), _room(size)))
    return across, down


def _tile(drawing: Drawing, heading: Heading, size: tuple[float, float], at: tuple[int, int], count: tuple[int, int]) -> str:
    """One page: its part of the drawing, with the lines along which it joins the others."""
    room = _room(size)
    middles = (drawing.left + drawing.width / 2, drawing.top + drawing.height / 2)
    left, top = (middle + step * (each - _OVERLAP) - (number * (each - _OVERLAP) + _OVERLAP) / 2
                 for middle, step, number, each in zip(middles, at, count, room))
    inside = "".join([*drawing.shapes, *_joints((left, top), room, at, count)])
    name = _page_name(*at)
    note = "" if count == (1, 1) else f"Page {name}, of A1 to {_page_name(count[0] - 1, count[1] - 1)}"
    body = (f'<clipPath id="window-{name}"><rect x="{_number(left)}" y="{_number(top)}" width="{_number(room[0])}" '
            f'height="{_number(room[1])}"/></clipPath><g transform="translate({_number(_MARGIN - left)} '
            f'{_number(_MARGIN + _HEAD - top)})"><g clip-path="url(#window-{name})">{inside}</g></g>')
    return _page(*size, heading, note, [body])


def _joints(corner: Point, room: Point, at: tuple[int, int], count: tuple[int, int]) -> list[str]:
    """A dashed line in the middle of each overlap, with two crosses: they lie on those of the next page."""
    (left, top), (width, height), (column, row), half = corner, room, at, _OVERLAP / 2
    found = []
    for x, next_column in ((left + half, column - 1), (left + width - half, column + 1)):
        if 0 <= next_column < count[0]:
            found += [line((x, -top), (x, -top - height), _DASHED), *(_cross(x, top + height * share) for share in (0.25, 0.75)),
                      text((x, -top - height / 2), _page_name(next_column, row), 3.5, "start" if next_column < column else "end")]
    for y, next_row in ((top + half, row - 1), (top + height - half, row + 1)):
        if 0 <= next_row < count[1]:
            found += [line((left, -y), (left + width, -y), _DASHED), *(_cross(left + width * share, y) for share in (0.25, 0.75)),
                      text((left + width / 2, -y - (4 if next_row < row else -1)), _page_name(column, next_row), 3.5, "middle")]
    return found


def _cross(x: float, y: float) -> str:
    return line((x - 3, -y - 3), (x + 3, -y + 3), _THIN) + line((x - 3, -y + 3), (x + 3, -y - 3), _THIN)


def _page_name(column: int, row: int) -> str:
    return f"{chr(ord('A') + row)}{column + 1}"


def _page(width: float, height: float, heading: Heading, page: str, body: list[str]) -> str:
    name = "".join(letter if letter.isprintable() else " " for letter in heading.name)
    short = name if len(name) <= _LONGEST_NAME else f"{name[:_LONGEST_NAME - 1]}…"
    shapes = [text((_MARGIN, -_MARGIN - 4), f"{short}: {heading.title}", 4.5),
              text((width - _MARGIN, -_MARGIN - 4), page, 3.5, "end") if page else "",
              *(text((_MARGIN, -_MARGIN - 9 - 4 * row), words, 3) for row, words in enumerate(heading.lines)),
              *body, *_rulers(_MARGIN, height - _MARGIN, _FIT + _JOIN if page else _FIT)]
    return (f'<svg xmlns="http://www.w3.org/2000/svg" class="true-size" width="{_number(width)}mm" height="{_number(height)}mm" '
            f'viewBox="0 0 {_number(width)} {_number(height)}" fill="none" stroke="#000" font-family="sans-serif">{"".join(shapes)}</svg>')


def _rulers(left: float, foot: float, words: str) -> list[str]:
    """Lines of known length, which prove that nothing was scaled."""
    found = []
    for down, step, count, told in ((foot - 10, 10.0, 10, "Measure this line: it must be 100 mm."), (foot - 4, _INCH, 4, "And this one: 4 in.")):
        found += [line((left, -down), (left + step * count, -down), _THICK),
                  *(line((left + step * tick, -down), (left + step * tick, -down + 2), _THIN) for tick in range(count + 1)),
                  text((left + 4 * _INCH + 3, -down), told, 3)]
    return [*found, text((left, -foot), words, 3)]


def _number(value: float) -> str:
    return f"{value:.4f}".rstrip("0").rstrip(".") if round(value, 4) else "0"
