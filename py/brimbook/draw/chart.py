"""A small chart: points, curves and bands over two axes.

The caller brings numbers and ready texts; the chart knows no unit and no number format. A chart of two weighings:

    chart([Series(((0, 912), (1, 905)), "mark")],
          Axis("days", [(tick, show.trimmed(tick, 1, display)) for tick in nice_ticks(0, 1, 5)]),
          Axis("g", [(tick, show.trimmed(tick, 1, display)) for tick in nice_ticks(905, 912, 5)]),
          lines=[Line(900, "dry")])

Each axis reaches over its ticks and over everything drawn, unless it is given a low or a high end: what lies beyond
such an end is drawn on the edge. What is not a finite number is left out. Bands lie under lines, lines under series,
series in the order given, and the labels of lines over all. What the chart shows is told in words beside it by the caller.
"""

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from xml.sax.saxutils import escape

WIDTH, HEIGHT = 350, 200
_TOP, _BOTTOM, _RIGHT = 26, HEIGHT - 44, WIDTH - 14
# Letters keep their size within the sheet, and one is about so wide: ticks whose texts would touch are left without.
_LETTER_SIZE, _LETTER = 14, 7.6
_DOT = {"mark": 5, "mark-soft": 4}


@dataclass(frozen=True)
class Axis:
    """What an axis is called, its ticks as (value, text), and where it ends if not at what is drawn."""

    label: str
    ticks: Sequence[tuple[float, str]] = ()
    low: float | None = None
    high: float | None = None


@dataclass(frozen=True)
class Series:
    """Points as (x, y), drawn as one curve, or each as a mark; mark-soft is for points that count less."""

    points: Sequence[tuple[float, float]]
    style: str = "curve"


@dataclass(frozen=True)
class Band:
    """A filled band as (x, low, high), from left to right."""

    points: Sequence[tuple[float, float, float]]


@dataclass(frozen=True)
class Line:
    """A dashed line with its label: level at a value of the y axis, or upright at one of the x axis.

    The label of a level line stands at its right end, or at its start where that is freer.
    """

    value: float
    label: str = ""
    upright: bool = False
    at_start: bool = False


@dataclass(frozen=True)
class _Scale:
    """From values to places on the sheet; halves are taken so that the largest floats don't overflow."""

    low: float
    high: float
    start: float
    end: float

    def at(self, value: float) -> float:
        """Where a value lies, at the edge where it is beyond [sheet].

        value: on the axis [any unit].
        """
        share = (value / 2 - self.low / 2) / (self.high / 2 - self.low / 2)
        return self.start + min(max(share, 0.0), 1.0) * (self.end - self.start)


def chart(series: Iterable[Series], x_axis: Axis, y_axis: Axis, bands: Iterable[Band] = (),
          lines: Iterable[Line] = ()) -> str:
    """Points, curves and bands over two axes [SVG].

    series: what is drawn, the first one undermost [series].
    x_axis: the level axis [axis].
    y_axis: the upright axis [axis].
    bands: drawn under everything else [bands].
    lines: dashed, each with its label [lines].

    >>> drawn = chart([Series([(0, 1), (1, 2)])], Axis("days", [(0, "0"), (1, "1")]), Axis("g", [(1, "1 g")]))
    >>> drawn.startswith('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 350 200"'), 'class="curve"' in drawn
    (True, True)
    """
    series = [Series(_finite(each.points), each.style) for each in series]
    bands = [Band(_finite(each.points)) for each in bands]
    lines = [line for line in lines if math.isfinite(line.value)]
    x_ticks, y_ticks = ([tick for tick in axis.ticks if math.isfinite(tick[0])] for axis in (x_axis, y_axis))
    across = [point[0] for each in (*series, *bands) for point in each.points]
    up = [value for each in (*series, *bands) for point in each.points for value in point[1:]]
    longest = max((len(text) for _, text in y_ticks), default=0)
    left = min(16 + longest * _LETTER, WIDTH / 3)
    x = _scale(x_axis, [*across, *(line.value for line in lines if line.upright)], x_ticks, left, _RIGHT)
    y = _scale(y_axis, [*up, *(line.value for line in lines if not line.upright)], y_ticks, _BOTTOM, _TOP)
    shapes = [*_grid(x, y, x_ticks, y_ticks), *(_band(each, x, y) for each in bands),
              *_axes(x, y, x_axis.label, y_axis.label), *(_dashes(line, x, y) for line in lines),
              *(part for each in series for part in _drawn(each, x, y)), *(_line_label(line, x, y) for line in lines)]
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" class="chart">'
            f'{"".join(shapes)}</svg>')


def nice_ticks(low: float, high: float, count: int = 5) -> list[float]:
    """Round numbers in even steps of 1, 2 or 5, from at or below the low end to at or above the high one [–].

    low: end of what is drawn [any unit].
    high: the other end [any unit].
    count: most ticks, at least 3 [count].

    >>> nice_ticks(893, 912, 5), nice_ticks(0, 6.3, 4), nice_ticks(7, 7, 3)
    ([890.0, 900.0, 910.0, 920.0], [0.0, 5.0, 10.0], [6.0, 7.0, 8.0])
    """
    low, high = _widened(low, high)
    power = math.floor(math.log10(high / count - low / count)) - 1
    for exponent in range(power, power + 4):
        for digit in (1, 2, 5):
            step = digit * 10.0**exponent
            first, last = math.floor(low / step + 1e-9), math.ceil(high / step - 1e-9)
            if last - first < max(count, 3):
                # Divided where steps are below 1, so that 3 steps of 0.1 come to 0.3.
                return [number * digit / 10.0**-exponent if exponent < 0 else number * step
                        for number in range(first, last + 1)]
    return [low, high]


def _widened(low: float, high: float) -> tuple[float, float]:
    """Two finite ends that lie apart by more than floats can blur."""
    low, high = (value if math.isfinite(value) else 0.0 for value in (low, high))
    low, high = (min(max(value, -1e150), 1e150) for value in sorted((low, high)))
    least = max(abs(low), abs(high)) * 1e-9
    if high - low > max(least, 1e-150):
        return low, high
    pad = max(abs(low) * 0.1, 1e-3 if low else 1.0)
    return low - pad, high + pad


def _finite(points: Sequence[tuple[float, ...]]) -> list[tuple[float, ...]]:
    return [point for point in points if all(map(math.isfinite, point))]


def _scale(axis: Axis, values: list[float], ticks: list[tuple[float, str]], start: float, end: float) -> _Scale:
    reach = [*values, *(value for value, _ in ticks)] or [0.0]
    low = min(reach) if axis.low is None else axis.low
    high = max(reach) if axis.high is None else axis.high
    return _Scale(*_widened(low, high), start, end)


def _grid(x: _Scale, y: _Scale, x_ticks: list[tuple[float, str]], y_ticks: list[tuple[float, str]]) -> list[str]:
    """Level grid lines with their texts, and the texts below the level axis, none upon another."""
    shapes = []
    for value, text in _apart(y_ticks, y, lambda _: _LETTER_SIZE + 2.0):
        height = y.at(value)
        shapes.append(_stroke("grid", [(x.start, height), (x.end, height)]))
        shapes.append(_text(text, x.start - 6, height + 5, "end"))
    for value, text in _apart(x_ticks, x, lambda text: len(text) * _LETTER + 6):
        across = x.at(value)
        shapes.append(_stroke("grid", [(across, y.start), (across, y.start + 4)]))
        half = len(text) * _LETTER / 2
        shapes.append(_text(text, min(max(across, half), WIDTH - half), y.start + 19, "middle"))
    return shapes


def _apart(ticks: list[tuple[float, str]], scale: _Scale, room: Callable[[str], float]) -> list[tuple[float, str]]:
    """The ticks whose texts don't touch the one before."""
    kept: list[tuple[float, str]] = []
    for value, text in sorted(ticks):
        before = kept[-1] if kept else None
        if before is None or abs(scale.at(value) - scale.at(before[0])) >= (room(text) + room(before[1])) / 2:
            kept.append((value, text))
    return kept


def _axes(x: _Scale, y: _Scale, x_label: str, y_label: str) -> list[str]:
    """The two axes, the name of one above it and of the other below its texts."""
    return [_stroke("axis", [(x.start, y.end), (x.start, y.start), (x.end, y.start)]),
            _text(y_label, 4, 14, "start"), _text(x_label, x.end, y.start + 38, "end")]


def _band(band: Band, x: _Scale, y: _Scale) -> str:
    above = [(x.at(across), y.at(high)) for across, _, high in band.points]
    below = [(x.at(across), y.at(low)) for across, low, _ in reversed(band.points)]
    return f'<polygon class="band" points="{_places([*above, *below])}"/>' if above else ""


def _dashes(line: Line, x: _Scale, y: _Scale) -> str:
    if line.upright:
        return _stroke("mark-soft", [(x.at(line.value), y.start), (x.at(line.value), y.end)])
    return _stroke("mark-soft", [(x.start, y.at(line.value)), (x.end, y.at(line.value))])


def _line_label(line: Line, x: _Scale, y: _Scale) -> str:
    """Beside an upright line or over a level one, on the side where there is room."""
    if line.upright:
        across = x.at(line.value)
        side, gap = ("end", -5) if across > (x.start + x.end) / 2 else ("start", 5)
        return _text(line.label, across + gap, y.end + 12, side)
    height = y.at(line.value)
    across, side = (x.start + 5, "start") if line.at_start else (x.end - 2, "end")
    return _text(line.label, across, height - 5 if height > y.end + 20 else height + 16, side)


def _drawn(series: Series, x: _Scale, y: _Scale) -> list[str]:
    places = [(x.at(across), y.at(up)) for across, up in series.points]
    if series.style in _DOT:
        return [f'<circle class="{series.style}" cx="{_number(across)}" cy="{_number(up)}" r="{_DOT[series.style]}"/>'
                for across, up in places]
    return [_stroke("curve", places)] if len(places) > 1 else []


def _stroke(style: str, places: list[tuple[float, float]]) -> str:
    return f'<polyline class="{style}" points="{_places(places)}"/>'


def _places(places: list[tuple[float, float]]) -> str:
    return " ".join(f"{_number(across)},{_number(up)}" for across, up in places)


def _text(text: str, across: float, up: float, anchor: str) -> str:
    if not text:
        return ""
    return (f'<text class="label-small" font-size="{_LETTER_SIZE}" x="{_number(across)}" y="{_number(up)}" '
            f'text-anchor="{anchor}">{escape(text)}</text>')


def _number(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")
