"""The fill curve of a surface: what lies below a height and how large the section is there, exactly, and levels for it.

Below a height lies the sum of each triangle's shadow by the mean over it of its height, cut off at that height (divergence
theorem); the section is as large as the shadows of all that lies above, those that face down counting below 0.
"""

import bisect
import heapq
import math
from collections.abc import Generator, Sequence
from dataclasses import dataclass
from itertools import accumulate, compress, repeat
from operator import ge, lt

from brimbook.mesh.curve import volume_at
from brimbook.mesh.model import Level
from brimbook.mesh.triangles import Progress, Triangles
from brimbook.mesh.volumes import at, columns, shadows

MOST = 40
# So far the curve may be off between levels, as a share of the whole volume.
_OFF = 2e-5
# A flat face of this share of the largest section makes the section jump; so many jumps get a level of their own.
_JUMP = 0.005
_MOST_JUMPS = 24
# Flat: within this share of the height.
_FLAT = 3e-7
# Levels may also lie at heights where long triangles begin or end, so many at most, not nearer to others than this share.
_MOST_KINKS = 64
# Long is what reaches over such a part of the height.
_LONG = 64
_NEAR = 5e-4
# And at so many heights from bottom to top, at least so many between two others.
_STEPS = 128
_FEWEST = 3
_SLICES = 64
_DOING = "Working out the fill curve"

# A triangle's lowest, middle and highest height, and its shadow.
Leaning = tuple[float, float, float, float]


@dataclass(frozen=True)
class _Heights:
    """Heights at which levels may lie, and what lies wholly between them: triangles that cross none of them.

    kinks: numbers of heights where long triangles begin or end, and the shadows of those triangles.
    under: up to each height, the sum of shadows by mean heights. over: above each height, the sum of shadows.
    flat: the shadow of flat faces at each height.
    """

    heights: Sequence[float]
    kinks: dict[int, float]
    under: Sequence[float]
    over: Sequence[float]
    flat: Sequence[float]


@dataclass(frozen=True)
class _Span:
    """From one height to another, by their numbers, with triangles that cross heights and reach into the span.

    under: the sum of shadows by mean heights of those below it. over: the sum of shadows of those above it.
    """

    low: int
    high: int
    crossing: list[Leaning]
    under: float
    over: float


def solid_levels(mesh: Triangles) -> Generator[Progress, None, tuple[Level, ...]]:
    """What a mesh holds up to each height: at flat faces, and as many more as the curve needs [progress, then levels].

    mesh: closed, facing outward, its bounding box from 0 up; where it is open, what is missing counts as lying at 0 [triangles].

    At most 40 levels, between which the curve is off by less than 0.002 % of the whole half-way and at the quarters, as far as
    40 levels can do that. Volumes never fall.
    """
    yield 0.0, _DOING
    heights = columns(mesh)[2]
    return (yield from levels_between(leaning(mesh), min(heights, default=0.0), max(heights, default=0.0)))


def leaning(mesh: Triangles) -> list[Leaning]:
    """Heights and shadow of each triangle, all but upright ones, which have no shadow [unit of the file, unit of the file²].

    mesh: any triangles [triangles].

    >>> leaning(Triangles([(0, 0, 9), (4, 0, 1), (0, 3, 2)], [0], [1], [2]))
    [(1, 2, 9, 6.0)]
    """
    areas = shadows(mesh)
    sides = [compress(side, areas) for side in at(mesh, columns(mesh)[2])]
    return [(a, b, c, area) if a <= b <= c else (*sorted((a, b, c)), area) for a, b, c, area in zip(*sides, compress(areas, areas))]


def levels_between(surface: list[Leaning], bottom: float, top: float, lid: float = 0.0) -> Generator[Progress, None, tuple[Level, ...]]:
    """Levels from one height to another [progress, then levels].

    surface: facing out of what is measured; for a room, its inner surface with shadows turned around [triangles].
    bottom: height of the lowest level, and of the lowest triangle [unit of the file].
    top: height of the highest level; what of a triangle lies above it doesn't count [unit of the file].
    lid: area of what closes the surface at the top or above, seen from above; for a room, less the sum of all shadows [unit of the file²].
    """
    if not top > bottom:
        return Level(bottom, 0.0, 0.0, 0.0), Level(bottom, 0.0, 0.0, 0.0)
    surface, faces = _flattened(surface, bottom, top)
    yield 0.3, _DOING
    stops = [bottom, *_jumps(surface, faces, bottom, top), top]
    kinks = _kinks(surface, stops)
    places, crossing = _sorted_in(surface, faces, _steps(sorted([*stops, *kinks])), kinks)
    yield 0.6, _DOING
    return _rising((yield from _levels(places, crossing, lid, [bisect.bisect_left(places.heights, stop) for stop in stops])))


def _flattened(surface: list[Leaning], bottom: float, top: float) -> tuple[list[Leaning], dict[float, list[float]]]:
    """Leaning triangles, and apart from them the shadows of flat ones by height, near heights as one."""
    flat = _FLAT * (top - bottom)
    level = sorted((low, area) for low, _, high, area in surface if high - low <= flat)
    faces: dict[float, list[float]] = {}
    height = bottom
    for low, area in level:
        if low - height > flat:
            height = top if abs(top - low) <= flat else low
        faces.setdefault(height, []).append(area)
    return ([triangle for triangle in surface if triangle[2] - triangle[0] > flat] if level else surface), faces


def _jumps(surface: list[Leaning], faces: dict[float, list[float]], bottom: float, top: float) -> list[float]:
    """Heights between bottom and top where flat faces make the section jump, the largest if there are too many."""
    least = _JUMP * _largest(surface, faces, bottom, top)
    large = [(area, height) for height, areas in faces.items()
             if bottom < height < top and (area := math.fsum(map(abs, areas))) > least]
    return sorted(height for _, height in heapq.nlargest(_MOST_JUMPS, large))


def _largest(surface: list[Leaning], faces: dict[float, list[float]], bottom: float, top: float) -> float:
    """Roughly the area of the largest section, each triangle taken at its middle height."""
    slices = [0.0] * _SLICES
    scale, shift = (_SLICES - 1) / (top - bottom) / 3, 3 * bottom
    for low, middle, high, area in surface:
        slices[min(int((low + middle + high - shift) * scale), _SLICES - 1)] += area
    for height, areas in faces.items():
        slices[min(int((height - bottom) * 3 * scale), _SLICES - 1)] += math.fsum(areas)
    return max(map(abs, accumulate(reversed(slices))))


def _kinks(surface: list[Leaning], stops: list[float]) -> dict[float, float]:
    """Heights where long triangles begin or end, which is where the curve bends, and how large their shadows are."""
    bottom, top = stops[0], stops[-1]
    long, scale = (top - bottom) / _LONG, 1 / _NEAR / (top - bottom)
    shares: dict[int, list[float]] = {}
    for low, middle, high, area in surface:
        if high - low > long:
            for height in (low, middle, high):
                shares.setdefault(round((height - bottom) * scale), [height]).append(abs(area))
    taken = {round((stop - bottom) * scale) for stop in stops}
    found: dict[float, float] = {}
    for weight, place in sorted(((math.fsum(share[1:]), place) for place, share in shares.items()), reverse=True):
        if len(found) < _MOST_KINKS and bottom < shares[place][0] < top and taken.isdisjoint((place - 1, place, place + 1)):
            taken.add(place)
            found[shares[place][0]] = weight
    return found


def _steps(heights: list[float]) -> list[float]:
    """These heights and others evenly between them."""
    found = []
    for low, high in zip(heights, heights[1:]):
        count = max(_FEWEST, math.ceil(_STEPS * (high - low) / (heights[-1] - heights[0])))
        found += [low + (high - low) * step / count for step in range(count)]
    return [*found, heights[-1]]


def _sorted_in(surface: list[Leaning], faces: dict[float, list[float]], heights: list[float],
               kinks: dict[float, float]) -> tuple[_Heights, list[Leaning]]:
    """What lies wholly between two heights or flat at one, and the triangles that cross some."""
    lows, highs = [triangle[0] for triangle in surface], [triangle[2] for triangle in surface]
    begins = list(map(bisect.bisect_right, repeat(heights), lows))
    ends = list(map(bisect.bisect_left, repeat(heights), highs))
    within = list(map(ge, begins, ends))
    areas, moments, flat = [0.0] * (len(heights) + 1), [0.0] * (len(heights) + 1), [0.0] * len(heights)
    for place, (low, middle, high, area) in zip(compress(begins, within), compress(surface, within)):
        areas[place] += area
        moments[place] += area * (low + middle + high) / 3
    for height, shares in faces.items():
        place, area = bisect.bisect_left(heights, height), math.fsum(shares)
        if place < len(heights) and heights[place] == height:
            flat[place] = area
        else:
            areas[place] += area
            moments[place] += area * height
    under = list(accumulate(moment + face * height for moment, face, height in zip(moments, flat, heights)))
    over = list(accumulate(area + face for area, face in zip(reversed(areas[1:]), [0.0, *reversed(flat[1:])])))
    bends = {bisect.bisect_left(heights, height): weight for height, weight in kinks.items()}
    return _Heights(heights, bends, under, over[::-1], flat), list(compress(surface, map(lt, begins, ends)))


def _levels(places: _Heights, crossing: list[Leaning], lid: float, stops: list[int]) -> Generator[Progress, None, list[Level]]:
    """Levels at the stops, then in the span that is off the most, until none is or there are enough."""
    found: dict[int, Level] = {}
    spans: list[tuple[float, int, _Span]] = []
    rest = _Span(0, stops[-1], crossing, 0.0, lid)
    for low, high in zip(stops, stops[1:]):
        _push(spans, places, found, _part(places, rest, low, high))
        rest = _part(places, rest, high, rest.high)
        yield 0.7, _DOING
    chosen = set(stops)
    whole = max(abs(found[place].volume) for place in chosen)
    while spans and len(chosen) < MOST and -spans[0][0] > _OFF * whole:
        span = heapq.heappop(spans)[2]
        split = _split(places, span)
        chosen.add(split)
        for low, high in ((span.low, split), (split, span.high)):
            if high - low > 1:
                _push(spans, places, found, _part(places, span, low, high))
        yield 0.7 + 0.3 * len(chosen) / MOST, _DOING
    return [found[place] for place in sorted(chosen)]


def _push(spans: list, places: _Heights, found: dict[int, Level], span: _Span) -> None:
    """Work out levels at both ends of a span, half-way, and where it and its parts would be split, and how far the curve is off there."""
    split = _split(places, span)
    parts = [_part(places, span, low, high) for low, high in ((span.low, split), (split, span.high))]
    checked = {split, (span.low + span.high) // 2, *(_split(places, part) for part in parts)}
    for part in parts:
        for place in {part.low, part.high, *checked}:
            if part.low <= place <= part.high and place not in found:
                found[place] = _level(places, part, place)
    ends = found[span.low], found[span.high]
    off = max(abs(volume_at(ends, found[place].height) - found[place].volume) for place in checked)
    heapq.heappush(spans, (-off, span.low, span))


def _split(places: _Heights, span: _Span) -> int:
    """Where to split a span: at the kink nearest to half-way, of those that are not small beside the largest; else half-way."""
    inside = {place: weight for place, weight in places.kinks.items() if span.low < place < span.high}
    if not inside:
        return (span.low + span.high) // 2
    least = max(inside.values()) / 4
    middle = (places.heights[span.low] + places.heights[span.high]) / 2
    return min((abs(places.heights[place] - middle), place) for place, weight in inside.items() if weight >= least)[1]


def _part(places: _Heights, span: _Span, low: int, high: int) -> _Span:
    """A part of a span: triangles that don't reach into it are summed up."""
    bottom, top = places.heights[low], places.heights[high]
    crossing, over = span.crossing, span.over
    under = span.under
    if low > span.low:
        under += math.fsum([area * (a + b + c) / 3 for a, b, c, area in crossing if c <= bottom])
        crossing = [triangle for triangle in crossing if triangle[2] > bottom]
    if high < span.high:
        over += math.fsum([triangle[3] for triangle in crossing if triangle[0] >= top])
        crossing = [triangle for triangle in crossing if triangle[0] < top]
    return _Span(low, high, crossing, under, over)


def _level(places: _Heights, span: _Span, place: int) -> Level:
    """What lies below one of the heights in a span, and the section just below and above it."""
    height = places.heights[place]
    volumes, areas = [places.under[place], span.under], [places.over[place], span.over]
    volumes += [area * (a + b + c) / 3 for a, b, c, area in span.crossing if c <= height]
    areas += [triangle[3] for triangle in span.crossing if triangle[0] >= height]
    for low, middle, high, area in span.crossing:
        if low < height < high:
            if height < middle:
                below = area * (height - low) / (middle - low) * ((height - low) / (high - low))
                volumes.append(below * (low + 2 * height) / 3)
                areas.append(area - below)
            else:
                above = area * (high - height) / (high - middle) * ((high - height) / (high - low))
                volumes.append((area * (low + middle + high) - above * (high + 2 * height)) / 3)
                areas.append(above)
    over = math.fsum(areas)
    return Level(height, math.fsum(volumes) + height * over, over + places.flat[place], over)


def _rising(levels: list[Level]) -> tuple[Level, ...]:
    """Levels whose volumes never fall, also between them: no section is larger than three times the rise beside it."""
    volumes = list(accumulate((level.volume for level in levels), max))
    steep = [0.0, *((b - a) / (high.height - low.height) for a, b, low, high in zip(volumes, volumes[1:], levels, levels[1:])), 0.0]
    return tuple(Level(level.height, volume, min(max(level.below, 0.0), 3 * before), min(max(level.above, 0.0), 3 * after))
                 for level, volume, before, after in zip(levels, volumes, steep, steep[1:]))
