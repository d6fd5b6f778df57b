"""A list on paper: a box to tick for each thing, on as many pages as it takes."""

from collections.abc import Sequence
from dataclasses import dataclass

from brimbook.draw.label_text import clean, cut_to, first_line, words_of
from brimbook.draw.true_size import PAPERS, line, polygon, text

_MARGIN, _BOX, _GAP = 15.0, 4.0, 3.0
_HEAD_SIZE, _SIZE, _SMALL = 6.0, 4.0, 3.4
# From one line of letters to the next, and from one row to the next, in sizes of the letters.
_LEADING, _ROW_GAP = 1.3, 3.5
_THICK, _THIN = 'stroke-width="0.3"', 'stroke-width="0.12"'
# What the columns take of the width that is left beside the box: what it is, what to buy, what that costs.
_SHARES = (0.45, 0.37, 0.18)


@dataclass(frozen=True)
class Line:
    """A thing to buy: what it is, what to buy of it, and what that costs."""

    what: str
    buy: str
    costs: str


@dataclass(frozen=True)
class _Row:
    """Lines of text in each column, and how high they are together [mm]."""

    columns: tuple[tuple[str, ...], ...]
    height: float
    box: bool


def list_pages(title: str, about: str, lines: Sequence[Line], below: Sequence[str], paper: str) -> list[str]:
    """The pages of a list, each with its number where there are several [SVG].

    title: of the list [text].
    about: a line or more below the title [text].
    lines: of the list, in order [lines].
    below: what stands at its end [texts].
    paper: a name in PAPERS [text].
    """
    width, height = PAPERS[paper]
    inner = width - 2 * _MARGIN
    head = _wrapped(about, inner, _SMALL)
    top = _MARGIN + _HEAD_SIZE + _GAP + len(head) * _SMALL * _LEADING + _GAP
    # What the vessels are called may be long: on the first page alone there is room for all of it.
    pages = _parted([*(_row(each, inner) for each in lines), *(_told(each, inner) for each in below)],
                    height - _MARGIN - _SMALL - _GAP, top, _MARGIN + _HEAD_SIZE + _GAP)
    return [_page((width, height), title, head if number == 1 else (), rows, (number, len(pages))) for number, rows in enumerate(pages, 1)]


def _wrapped(words: str, room: float, size: float) -> tuple[str, ...]:
    """A text in lines that have room [texts]."""
    rest, found = cut_to(words_of(clean(words), bold=False), room / size, bold=False), []
    while rest:
        broken = first_line(rest, room / size)
        if broken is None:
            return (*found, rest[0].text)
        found.append(broken[0].text)
        rest = broken[1]
    return tuple(found)


def _row(each: Line, inner: float) -> _Row:
    widths = [share * (inner - _BOX - _GAP) - _GAP for share in _SHARES]
    columns = tuple(_wrapped(words, width, _SIZE) for words, width in zip((each.what, each.buy, each.costs), widths))
    return _Row(columns, max(map(len, columns)) * _SIZE * _LEADING + _ROW_GAP, True)


def _told(words: str, inner: float) -> _Row:
    column = _wrapped(words, inner, _SIZE)
    return _Row((column,), len(column) * _SIZE * _LEADING + _ROW_GAP, False)


def _parted(rows: Sequence[_Row], foot: float, first: float, others: float) -> list[list[_Row]]:
    """Rows on pages, each as full as it gets."""
    pages, down = [[]], first
    for row in rows:
        if pages[-1] and down + row.height > foot:
            pages.append([])
            down = others
        pages[-1].append(row)
        down += row.height
    return pages


def _page(size: tuple[float, float], title: str, head: Sequence[str], rows: Sequence[_Row], number: tuple[int, int]) -> str:
    width, height = size
    down = _MARGIN + _HEAD_SIZE
    shapes = [text((_MARGIN, -down), title, _HEAD_SIZE)]
    down += _GAP
    for words in head:
        down += _SMALL * _LEADING
        shapes.append(text((_MARGIN, -down), words, _SMALL))
    down += _GAP if head else 0.0
    for row in rows:
        shapes += _drawn(row, down, width)
        down += row.height
    if number[1] > 1:
        shapes.append(text((width - _MARGIN, _MARGIN - height), f"{number[0]} of {number[1]}", _SMALL, "end"))
    return (f'<svg xmlns="http://www.w3.org/2000/svg" class="true-size" width="{width:g}mm" height="{height:g}mm" '
            f'viewBox="0 0 {width:g} {height:g}" fill="none" stroke="#000" font-family="sans-serif">{"".join(shapes)}</svg>')


def _drawn(row: _Row, down: float, width: float) -> list[str]:
    """A row with its box and a thin line below it; what costs stands at the right."""
    base, inner = down + _SIZE, width - 2 * _MARGIN
    if not row.box:
        return [text((_MARGIN, -base - place * _SIZE * _LEADING), words, _SIZE) for place, words in enumerate(row.columns[0])]
    left, top = _MARGIN, down + _SIZE - _BOX + 0.5
    starts, shapes = _MARGIN + _BOX + _GAP, [polygon([(left, -top), (left + _BOX, -top), (left + _BOX, -top - _BOX), (left, -top - _BOX)], _THICK)]
    for number, column in enumerate(row.columns):
        is_last = number == len(row.columns) - 1
        at = width - _MARGIN if is_last else starts
        shapes += [text((at, -base - place * _SIZE * _LEADING), words, _SIZE, "end" if is_last else "start") for place, words in enumerate(column)]
        starts += _SHARES[number] * (inner - _BOX - _GAP)
    foot = down + row.height - _ROW_GAP / 2
    return [*shapes, line((_MARGIN, -foot), (width - _MARGIN, -foot), _THIN)]
