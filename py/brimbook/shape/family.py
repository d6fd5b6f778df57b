"""Outlines of one kind that lie inside each other, each a distance in from the first, and what each measures."""

import math
from dataclasses import dataclass

from brimbook.shape import inset as insets
from brimbook.shape import outline as outlines
from brimbook.shape.flatten import signed_area
from brimbook.shape.outline import Outline, OutlineError, Point

_SAME = 1e-15


@dataclass(frozen=True)
class Family:
    """A first outline, told by its sizes [mm], or by its corners [mm]; further ones are told by how far in they lie.

    kind: round (across), oval (across, other way), rectangle (across, other way, corner), polygon (across, sides), path.
    """

    kind: str
    sizes: tuple[float, ...] = ()
    points: tuple[Point, ...] = ()

    def sizes_at(self, inset: float) -> tuple[float, ...]:
        """The sizes of one of them, in the order of the first [mm].

        inset: how far in it lies, below 0 outside [mm].

        >>> Family("rectangle", (80.0, 60.0, 5.0)).sizes_at(2.0)
        (76.0, 56.0, 3.0)
        """
        if self.kind in ("round", "oval"):
            return tuple(size - 2 * inset for size in self.sizes)
        if self.kind == "rectangle":
            long, wide, corner = self.sizes
            return long - 2 * inset, wide - 2 * inset, max(0.0, corner - inset) if corner else 0.0
        if self.kind == "polygon":
            return self.sizes[0] * (1 - inset / self.deepest()), self.sizes[1]
        return ()

    def deepest(self) -> float:
        """How far in nothing is left [mm].

        >>> Family("oval", (90.0, 60.0)).deepest()
        30.0
        """
        if self.kind == "path":
            return insets.drawn(self.points, 1).end
        if self.kind == "polygon":
            across, sides = self.sizes
            level = math.cos(math.pi / sides)
            return across / 2 if sides % 2 == 0 else across * level / (1 + level)
        return min(self.sizes[:2]) / 2

    def area(self, inset: float) -> float:
        """Area within one of them; 0 where nothing is left, or where it falls into pieces [mm²].

        inset: how far in it lies, below 0 outside [mm].

        >>> Family("rectangle", (80.0, 60.0, 0.0)).area(10.0)
        2400.0
        """
        if inset >= self.deepest():
            return 0.0
        sizes = self.sizes_at(inset)
        if self.kind in ("round", "oval"):
            return math.pi / 4 * sizes[0] * sizes[-1]
        if self.kind == "rectangle":
            return sizes[0] * sizes[1] - (4 - math.pi) * sizes[2] ** 2
        if self.kind == "polygon":
            return sizes[1] * math.tan(math.pi / sizes[1]) * (self.deepest() - inset) ** 2
        corners = insets.inset(self.points, inset)
        return signed_area(list(corners)) if corners else 0.0

    def around(self, inset: float) -> float:
        """Length around one of them [mm].

        inset: how far in it lies, below 0 outside [mm].

        >>> Family("rectangle", (80.0, 60.0, 0.0)).around(10.0)
        200.0
        """
        sizes = self.sizes_at(inset)
        if self.kind == "round":
            return math.pi * sizes[0]
        if self.kind == "oval":
            return around_oval(*sizes)
        if self.kind == "rectangle":
            return 2 * (sizes[0] + sizes[1]) - (8 - 2 * math.pi) * sizes[2]
        if self.kind == "polygon":
            return 2 * sizes[1] * math.tan(math.pi / sizes[1]) * (self.deepest() - inset)
        corners = insets.inset(self.points, inset)
        return math.fsum(math.dist(one, other) for one, other in zip(corners, corners[1:] + corners[:1]))

    def breaks(self, low: float, high: float) -> list[float]:
        """How far in the law of their areas changes, between two of them [mm].

        low: the outer one's inset [mm].
        high: the inner one's [mm].

        >>> Family("rectangle", (80.0, 60.0, 5.0)).breaks(0.0, 10.0)
        [5.0]
        """
        if self.kind == "path":
            return insets.breaks(self.points, low, high)
        corner = self.sizes[2] if self.kind == "rectangle" else 0.0
        return [corner] if corner and low < corner < high else []

    def outline(self, inset: float) -> Outline:
        """One of them as an outline; curves are drawn from just outside [outline].

        inset: how far in it lies, below 0 outside [mm].

        Raises OutlineError where nothing is left.

        >>> outlines.size(Family("round", (80.0,)).outline(10.0))
        (60.0, 60.0)
        """
        sizes = self.sizes_at(inset)
        if self.kind == "round":
            return outlines.circle(*sizes)
        if self.kind == "oval":
            return outlines.oval(*sizes)
        if self.kind == "rectangle":
            return outlines.rounded_rectangle(*sizes)
        if self.kind == "polygon":
            return outlines.regular_polygon(sizes[0], int(sizes[1]))
        corners = insets.inset(self.points, inset)
        if not corners:
            raise OutlineError("Of this outline nothing is left so far in.")
        middle = [(min(corner[axis] for corner in corners) + max(corner[axis] for corner in corners)) / 2 for axis in (0, 1)]
        return Outline(tuple((x - middle[0], y - middle[1]) for x, y in corners))

    def corners(self, inset: float) -> tuple[Point, ...]:
        """Its corners where it lies in the first one; as many for every one, some of them in one spot [mm].

        inset: how far in it lies, below 0 outside [mm].

        >>> len(Family("rectangle", (80.0, 60.0, 5.0)).corners(2.0)), len(Family("rectangle", (80.0, 60.0, 5.0)).corners(9.0))
        (96, 96)
        """
        if self.kind in ("polygon", "path"):
            return insets.at_all_corners(self.points or self.outline(0.0).points, inset)
        points = self.outline(inset).points
        if self.kind == "rectangle" and self.sizes[2] and len(points) < outlines.ROUND:
            return tuple(point for point in points for _ in range(outlines.ROUND // 4))
        return points


def around_oval(length: float, width: float) -> float:
    """Length around an ellipse [mm].

    length: across one way [mm].
    width: across the other way [mm].

    Source: by the arithmetic-geometric mean, 2 π (a² − Σ 2ⁿ⁻¹ cₙ²) ÷ mean, from memory; agrees with scipy's ellipe.

    >>> round(around_oval(80.0, 80.0), 5), round(around_oval(100.0, 60.0), 5)
    (251.32741, 255.26999)
    """
    one, other = max(length, width) / 2, min(length, width) / 2
    share, taken, start = 0.5, [], one
    taken.append(share * (one * one - other * other))
    while one - other > _SAME * one and len(taken) < 40:
        half = (one - other) / 2
        one, other = (one + other) / 2, math.sqrt(one * other)
        share *= 2
        taken.append(share * half * half)
    return 2 * math.pi * (start * start - math.fsum(taken)) / one


def least_between_ovals(length: float, width: float, inset: float) -> float:
    """The least distance between an ellipse and one whose half axes are shorter by a length [mm].

    length: of the outer one, one way [mm].
    width: the other way [mm].
    inset: by which both half axes are shorter [mm].

    Source: least difference of the widths from the middle, √(a² cos² + b² sin²), over all directions.

    >>> round(least_between_ovals(90.0, 60.0, 6.0), 2), least_between_ovals(80.0, 80.0, 6.0)
    (5.86, 6.0)
    """
    a, b = length / 2, width / 2
    return min(math.sqrt(a * a * (1 - share) + b * b * share) - math.sqrt((a - inset) ** 2 * (1 - share) + (b - inset) ** 2 * share)
               for share in (step / 400 for step in range(401)))
