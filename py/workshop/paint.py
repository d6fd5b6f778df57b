"""Paint filled outlines into pixels, with smooth edges, in plain Python.

Each row of pixels is cut into thin slices; in a slice the stretch that an
outline covers is known exactly, so only the vertical direction is sampled.
"""

from collections.abc import Sequence

# Steps of an outline: ("M" or "L", x, y), or ("C", x1, y1, x2, y2, x, y); it closes itself.
Curve = Sequence[tuple]
Point = tuple[float, float]

SLICES = 8
STRAIGHT_PIECES = 24


def paint(layers: Sequence[tuple[Curve, str]], square: float, side: int) -> bytes:
    """RGBA bytes of `side` x `side` pixels showing the layers, first at the bottom.

    The outlines lie in a square of size `square`; a layer's color is "#rrggbb".
    """
    polygons = [
        ([(x * side / square, y * side / square) for x, y in corners(curve)], _color(color))
        for curve, color in layers
    ]
    pixels = bytearray()
    for row in range(side):
        line = [(0.0, 0.0, 0.0, 0.0)] * side
        for polygon, color in polygons:
            _lay_over(line, _coverage(polygon, row, side), color)
        pixels += b"".join(_to_bytes(pixel) for pixel in line)
    return bytes(pixels)


def corners(curve: Curve) -> list[Point]:
    """The outline as corners of a polygon, its curves cut into short straight pieces."""
    points: list[Point] = []
    for kind, *numbers in curve:
        if kind == "C":
            points += _along(points[-1], *zip(numbers[::2], numbers[1::2], strict=True))
        else:
            points.append((numbers[0], numbers[1]))
    return points


def _along(start: Point, one: Point, two: Point, end: Point) -> list[Point]:
    points = []
    for step in range(1, STRAIGHT_PIECES + 1):
        t = step / STRAIGHT_PIECES
        weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3)
        parts = list(zip(weights, (start, one, two, end), strict=True))
        points.append((sum(w * p[0] for w, p in parts), sum(w * p[1] for w, p in parts)))
    return points


def _color(text: str) -> tuple[int, ...]:
    return tuple(bytes.fromhex(text.removeprefix("#")))


def _coverage(polygon: list[Point], row: int, side: int) -> dict[int, float]:
    """How much of each touched pixel in the row the polygon covers, from 0 to 1."""
    covered: dict[int, float] = {}
    for slice_number in range(SLICES):
        crossings = _crossings(polygon, row + (slice_number + 0.5) / SLICES)
        for left, right in zip(crossings[::2], crossings[1::2], strict=True):
            left, right = max(left, 0.0), min(right, float(side))
            for x in range(int(left), min(int(right) + 1, side)):
                part = min(right, x + 1) - max(left, x)
                if part > 0:
                    covered[x] = covered.get(x, 0.0) + part / SLICES
    return covered


def _crossings(polygon: list[Point], height: float) -> list[float]:
    found = []
    for (x1, y1), (x2, y2) in zip(polygon, polygon[1:] + polygon[:1], strict=True):
        if (y1 <= height) != (y2 <= height):
            found.append(x1 + (height - y1) * (x2 - x1) / (y2 - y1))
    return sorted(found)


def _lay_over(line: list[tuple], coverage: dict[int, float], color: tuple[int, ...]) -> None:
    for x, part in coverage.items():
        below = line[x]
        # Colors are held multiplied by their opacity, so that laying over is one sum.
        over = tuple(channel * part for channel in color) + (part,)
        line[x] = tuple(o + b * (1 - part) for o, b in zip(over, below, strict=True))


def _to_bytes(pixel: tuple[float, ...]) -> bytes:
    red, green, blue, opacity = pixel
    if opacity <= 0:
        return b"\0\0\0\0"
    channels = [round(min(channel / opacity, 255.0)) for channel in (red, green, blue)]
    return bytes([*channels, round(min(opacity, 1.0) * 255)])
