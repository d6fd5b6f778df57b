"""Labels side by side on paper, at true size, with a line that proves it."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from brimbook.draw.label import Label, Side
from brimbook.draw.label_draw import outline
from brimbook.draw.label_marks import number
from brimbook.draw.true_size import MOST_PAGES, PAPERS, line, text

_CUT = 0.1
# A ruler takes a strip so high, and its longest and shortest line [mm]; nothing is nearer to the edge of the paper than _OUT.
_RULER, _RULERS, _OUT = 5.0, (100.0, 50.0), 3.0
_LETTERS = 2.4
_THICK, _THIN = 'stroke-width="0.35"', 'stroke-width="0.18"'
_TINY = 1e-9


@dataclass(frozen=True)
class Grid:
    """Places for labels on a paper: its size, how many across and down, the way from one to the next, and its margin [mm].

    foot: where the last row ends.
    """

    paper: tuple[float, float]
    across: int
    down: int
    step: tuple[float, float]
    margin: float
    foot: float

    @property
    def places(self) -> int:
        """How many labels a sheet holds [count]."""
        return self.across * self.down

    def corner(self, place: int) -> tuple[float, float]:
        """Where a label begins [mm].

        place: from 0, row by row [number].
        """
        row, column = divmod(place, self.across)
        return self.margin + column * self.step[0], self.margin + row * self.step[1]


def grid(width: float, height: float, gap: float, margin: float, paper: str) -> Grid:
    """The places that a paper has for labels, whichever way up it holds more; none where a label is larger than its room [grid].

    width: of a label [mm].
    height: of a label [mm].
    gap: between labels [mm].
    margin: around all of them [mm].
    paper: a name in PAPERS [text].

    >>> grid(70, 50, 3, 10, "A4").places, grid(200, 60, 3, 10, "A4").paper, grid(280, 280, 3, 10, "A4").places
    (10, (297.0, 210.0), 0)
    """
    upright = PAPERS[paper]
    return max((_grid(size, (width, height), gap, margin) for size in (upright, upright[::-1])), key=lambda each: each.places)


def most(places: Grid, first: int, sides: int) -> int:
    """How many copies of a label fill all the pages that are printed at once [count].

    places: of a sheet [grid].
    first: free place on the first sheet, from 1 [number].
    sides: labels of one copy: 1, or 2 where front and back are apart [count].

    >>> most(grid(70, 50, 3, 10, "A4"), 1, 2)
    60
    """
    return (MOST_PAGES * places.places - first + 1) // sides


def filling(places: Grid, first: int, sides: int) -> int:
    """How many copies fill one sheet, at least one [count].

    places: of a sheet [grid].
    first: free place on it, from 1 [number].
    sides: labels of one copy [count].

    >>> filling(grid(70, 50, 3, 10, "A4"), 3, 1)
    8
    """
    return max(1, (places.places - first + 1) // sides)


def sheets(label: Label, sides: Sequence[Side], copies: int, first: int, places: Grid) -> list[str]:
    """Labels as pages, all fronts before all backs [SVG].

    label: whose shape they have [label].
    sides: laid out [sides].
    copies: of each [count].
    first: free place on the first sheet, from 1 [number].
    places: of a sheet [grid].
    """
    row = [number for number, _ in enumerate(sides) for _ in range(copies)]
    ahead = [None] * (first - 1) + row
    cut = [ahead[start:start + places.places] for start in range(0, len(ahead), places.places)]
    return [_page(label, sides, one, page, places) for page, one in enumerate(cut, 1)]


def _grid(paper: tuple[float, float], label: tuple[float, float], gap: float, margin: float) -> Grid:
    across, down = (max(0, math.floor((whole - 2 * margin + gap) / (each + gap) + _TINY)) for whole, each in zip(paper, label))
    return Grid(paper, across, down, (label[0] + gap, label[1] + gap), margin, margin + down * (label[1] + gap) - gap)


def _page(label: Label, sides: Sequence[Side], holds: Sequence[int | None], page: int, places: Grid) -> str:
    """One sheet. What a label shows is written once and used in each of its places."""
    width, height = places.paper
    kinds = sorted({kind for kind in holds if kind is not None})
    kept = "".join(f'<g id="label-{page}-{kind}">{outline(label, sides[kind], "none", _CUT)}{"".join(sides[kind].shapes)}</g>' for kind in kinds)
    used = "".join(f'<use href="#label-{page}-{kind}" x="{number(x)}" y="{number(y)}"/>' for place, kind in enumerate(holds)
                   if kind is not None for x, y in [places.corner(place)])
    return (f'<svg xmlns="http://www.w3.org/2000/svg" class="true-size" width="{number(width)}mm" height="{number(height)}mm" '
            f'viewBox="0 0 {number(width)} {number(height)}" fill="none" stroke="#000" font-family="sans-serif"><defs>{kept}</defs>'
            f'{used}{"".join(_ruler(places))}</svg>')


def _ruler(places: Grid) -> list[str]:
    """A line of known length below the labels, where there is room for it."""
    width, height = places.paper
    spare = height - places.foot - _OUT
    length = next((each for each in _RULERS if each <= width - 2 * places.margin), None)
    if spare < _RULER or length is None:
        return []
    foot, left = -(places.foot + min(spare, _RULER + 1.0) - 0.5), places.margin
    ticks = [line((left + along, foot), (left + along, foot + 1.5), _THIN) for along in range(0, int(length) + 1, 10)]
    return [line((left, foot), (left + length, foot), _THICK), *ticks,
            text((left, foot + 2.2), f"Measure this line: it must be {length:g} mm. Print at 100 %, not fitted to the page.", _LETTERS)]
