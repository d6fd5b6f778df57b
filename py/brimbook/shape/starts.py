"""Where points may begin before they settle: an outline's area shared out in rings, rows, strips and by chance."""

import math
from collections.abc import Iterator

from brimbook.shape.outline import Outline, Point, sides_of, size

_LINES = 12
_SEED, _TIMES, _WRAP = 20011, 1103515245, 2**31
# How far from the middle a second point begins [mm].
_OFF = (20.0, -20.0)
_CHANCES = (0, 0, 3, 3, 4, 5, 6)


def grounds(outline: Outline) -> list[Point]:
    """Spots evenly spread over an outline [mm].

    outline: any [outline].

    >>> len(grounds(Outline(((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0)))))
    72
    """
    wide, high = size(outline)
    left, low = (min(point[axis] for point in outline.points) for axis in (0, 1))
    step, spots, middles = max(wide, high) / _LINES, [], []
    lines = max(1, math.floor(high / step))
    for line in range(lines):
        y = low + high / 2 + (line - (lines - 1) / 2) * step
        crossed = sorted(one[0] + (two[0] - one[0]) * (y - one[1]) / (two[1] - one[1])
                         for one, two in sides_of(outline) if (one[1] > y) != (two[1] > y))
        for begin, end in zip(crossed[::2], crossed[1::2]):
            first = math.ceil((begin - left) / step - 0.5)
            last = math.floor((end - left) / step - 0.5)
            spots += [(left + (place + 0.5) * step, y) for place in range(first, last + 1)]
            middles.append(((begin + end) / 2, y))
    # A strip narrower than a step has no spot on the grid, or too few.
    return spots if len(spots) >= _LINES else spots + middles


def starts(spots: list[Point], count: int) -> Iterator[list[Point]]:
    """Ways to place so many points, each in the middle of its share of some spots [mm].

    spots: evenly spread over an outline [mm].
    count: of points, no more than spots [count].

    >>> [len(points) for points in starts(grounds(Outline(((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0)))), 2)][:2]
    [2, 2]
    """
    middle = _mean(spots)
    along = _axis(spots, middle)
    across = (-along[1], along[0])
    yield _strips(spots, along, [1] * count, across)
    if count == 1:
        return
    yield _strips(spots, across, [1] * count, along)
    if count == 2:
        # One in the middle, where the other only keeps its distance.
        yield from ([middle, (middle[0] + share * way[0], middle[1] + share * way[1])] for way in (along, across) for share in _OFF)
    if count > 2:
        yield from _rings(spots, middle, count, along)
    for rows in _rows(count):
        yield _strips(spots, along, rows, across)
        yield _strips(spots, across, rows, along)
    for seed in range(_CHANCES[min(count, 6)]):
        yield _shares(spots, _picked(spots, count, seed) if seed % 2 else _far_apart(spots, count, seed))


def nudged(points: list[Point], most: float) -> list[Point]:
    """Points moved a little, each another way: from an even layout no small step may lead downhill [mm].

    points: evenly laid out [mm].
    most: as far as they may move along each axis [mm].

    >>> nudged([(0.0, 0.0)], 1.0) == nudged([(0.0, 0.0)], 1.0) != [(0.0, 0.0)]
    True
    """
    found, number = [], _SEED
    for point in points:
        moved = []
        for value in point:
            number = (number * _TIMES + 1) % _WRAP
            moved.append(round(value + most * (2 * number / _WRAP - 1), 6))
        found.append((moved[0], moved[1]))
    return found


def _mean(spots: list[Point]) -> Point:
    return (math.fsum(x for x, _ in spots) / len(spots), math.fsum(y for _, y in spots) / len(spots))


def _middle(spots: list[Point]) -> Point:
    """The spot nearest the mean, or the mean itself where it lies among them."""
    x, y = _mean(spots)
    return min(spots, key=lambda spot: math.dist(spot, (x, y)))


def _axis(spots: list[Point], middle: Point) -> Point:
    """The way along which spots lie farthest apart."""
    wide = math.fsum((x - middle[0]) ** 2 - (y - middle[1]) ** 2 for x, y in spots)
    skew = 2 * math.fsum((x - middle[0]) * (y - middle[1]) for x, y in spots)
    half = math.atan2(skew, wide) / 2
    # Short of the digits in which one computer's sine differs from another's.
    return (round(math.cos(half), 9), round(math.sin(half), 9))


def _strips(spots: list[Point], along: Point, rows: list[int], across: Point) -> list[Point]:
    """Spots shared out in strips, and each strip again the other way."""
    ordered = sorted(spots, key=lambda spot: (spot[0] * along[0] + spot[1] * along[1], spot))
    found, taken, whole = [], 0, sum(rows)
    for row in rows:
        strip = ordered[len(ordered) * taken // whole:len(ordered) * (taken + row) // whole]
        strip.sort(key=lambda spot: (spot[0] * across[0] + spot[1] * across[1], spot))
        found += [_mean(strip[len(strip) * part // row:len(strip) * (part + 1) // row]) for part in range(row)]
        taken += row
    return found


def _rows(count: int) -> list[list[int]]:
    if count < 4:
        return [[1, 2]] if count == 3 else []
    half = count // 2
    rows = [[half, count - half]] + ([[count - half, half]] if count % 2 else [])
    third = count // 3
    return rows + ([[third, count - 2 * third, third]] if count > 4 else [])


def _rings(spots: list[Point], middle: Point, count: int, along: Point) -> Iterator[list[Point]]:
    turned = math.atan2(along[1], along[0])
    ordered = sorted(spots, key=lambda spot: math.dist(spot, middle))
    for center in (0, 1) if count > 4 else (0,):
        ring = ordered[len(ordered) * center // (2 * count):]
        for part in (0.0, 0.5):
            begin = turned + part * 2 * math.pi / (count - center)
            shares: list[list[Point]] = [[] for _ in range(count - center)]
            for x, y in ring:
                angle = round((math.atan2(y - middle[1], x - middle[0]) - begin) % (2 * math.pi), 9)
                shares[min(int(angle / (2 * math.pi) * (count - center)), count - center - 1)].append((x, y))
            if all(shares):
                yield [_mean(share) for share in shares] + [_middle(spots)] * center


def _far_apart(spots: list[Point], count: int, seed: int) -> list[Point]:
    """Spots, each the farthest from those before."""
    found = [spots[(seed * 7919 + 17) % len(spots)]]
    left = [math.dist(spot, found[0]) for spot in spots]
    while len(found) < count:
        found.append(spots[left.index(max(left))])
        left = [min(far, math.dist(spot, found[-1])) for far, spot in zip(left, spots)]
    return found


def _picked(spots: list[Point], count: int, seed: int) -> list[Point]:
    """Spots picked as if by chance, but the same at each time."""
    found, number = [], _SEED + seed
    while len(found) < count:
        number = (number * _TIMES + 1) % _WRAP
        spot = spots[number // 7 % len(spots)]
        found += [spot] if spot not in found else []
    return found


def _shares(spots: list[Point], points: list[Point]) -> list[Point]:
    """Each point in the middle of the spots that are nearest to it."""
    for _ in range(3):
        shares: list[list[Point]] = [[] for _ in points]
        for spot in spots:
            shares[min(range(len(points)), key=lambda place: math.dist(points[place], spot))].append(spot)
        points = [_mean(share) if share else point for share, point in zip(shares, points)]
    return points
