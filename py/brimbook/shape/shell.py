"""The side of a designed vessel, outside or inside: its level sections, what lies within it, its surface."""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.shape import outline as outlines
from brimbook.shape.family import Family
from brimbook.shape.outline import Outline, Point

_STEPS = 96
_SAME = 1e-9


@dataclass(frozen=True)
class Slab:
    """Part of a side between two heights, and its areas at the lower one, half way, and at the higher one [mm, mm²].

    In between the area follows a parabola, so that Simpson's rule is exact.
    """

    low: float
    high: float
    below: float
    middle: float
    above: float

    @property
    def volume(self) -> float:
        """What lies within it [mL]."""
        return (self.below + 4 * self.middle + self.above) / 6 * (self.high - self.low) / 1000


@dataclass(frozen=True)
class Pulled:
    """An outline pulled up, each section further out than those below.

    rim: how far in from the family's first outline the highest section lies [mm]; slope: how much further in for each mm
    down, below 0 where it is wider below [–]; low and high: where it begins and ends, above the vessel's bottom [mm].
    """

    family: Family
    rim: float
    slope: float
    low: float
    high: float

    def inset(self, height: float) -> float:
        """How far in a section lies [mm].

        height: above the vessel's bottom [mm].

        >>> Pulled(Family("round", (80.0,)), 0.0, 0.1, 0.0, 70.0).inset(0.0)
        7.0
        """
        return self.rim + (self.high - height) * self.slope

    def area(self, height: float) -> float:
        """Area of a section [mm²].

        height: above the vessel's bottom [mm].

        >>> Pulled(Family("rectangle", (80.0, 60.0, 0.0)), 0.0, 0.1, 0.0, 70.0).area(70.0)
        4800.0
        """
        return self.family.area(self.inset(height))

    def outline(self, height: float) -> Outline:
        """A section from above [outline].

        height: above the vessel's bottom [mm].

        >>> outlines.size(Pulled(Family("round", (80.0,)), 0.0, 0.1, 0.0, 70.0).outline(0.0))
        (66.0, 66.0)
        """
        return self.family.outline(self.inset(height))

    def corners(self, height: float) -> tuple[Point, ...]:
        """Corners of a section where it lies above the others, as many at every height, some of them in one spot [mm].

        height: above the vessel's bottom [mm].

        >>> Pulled(Family("rectangle", (80.0, 60.0, 0.0)), 0.0, 0.1, 0.0, 70.0).corners(0.0)[0]
        (33.0, 23.0)
        """
        return self.family.corners(self.inset(height))

    def breaks(self) -> list[float]:
        """Heights at which the law of its areas changes [mm].

        >>> Pulled(Family("rectangle", (80.0, 60.0, 5.0)), 0.0, 0.1, 0.0, 70.0).breaks()
        [20.0]
        """
        if abs(self.slope) < _SAME:
            return []
        ends = sorted((self.inset(self.low), self.inset(self.high)))
        return sorted(self.high - (each - self.rim) / self.slope for each in self.family.breaks(*ends))

    def surface(self, low: float, high: float) -> float:
        """Area of the side itself between two heights [mm²].

        low: the lower one, above the vessel's bottom [mm].
        high: the higher one [mm].

        >>> round(Pulled(Family("round", (80.0,)), 0.0, 0.0, 0.0, 70.0).surface(0.0, 10.0), 3)
        2513.274
        """
        if self.family.kind == "oval":
            return self._oval_surface(low, high)
        cuts = [low, *(each for each in self.breaks() if low < each < high), high]
        slant = math.hypot(1.0, self.slope)
        return math.fsum((self._around(one) + self._around(two)) / 2 * (two - one) * slant for one, two in zip(cuts, cuts[1:]))

    def _around(self, height: float) -> float:
        # Just short of where nothing is left, as at the lowest point of a pyramid.
        return self.family.around(min(self.inset(height), self.family.deepest() * (1 - _SAME)))

    def _oval_surface(self, low: float, high: float) -> float:
        """Sum over the way around, by Simpson's rule over the height: the slant of an oval changes along it."""
        parts = []
        for height, weight in ((low, 1), ((low + high) / 2, 4), (high, 1)):
            a, b = (size / 2 for size in self.family.sizes_at(self.inset(height)))
            for step in range(_STEPS):
                across = math.cos(2 * math.pi * (step + 0.5) / _STEPS) ** 2
                flat, lean = b * b * across + a * a * (1 - across), b * across + a * (1 - across)
                parts.append(weight * math.sqrt(flat + (self.slope * lean) ** 2))
        return math.fsum(parts) * 2 * math.pi / _STEPS * (high - low) / 6


@dataclass(frozen=True)
class Ball:
    """Part of a ball: its radius, the height of its middle, where it begins and ends, above the vessel's bottom [mm]."""

    radius: float
    middle: float
    low: float
    high: float

    def area(self, height: float) -> float:
        """Area of a section [mm²].

        height: above the vessel's bottom [mm].

        >>> round(Ball(50.0, 50.0, 0.0, 40.0).area(10.0), 3)
        2827.433
        """
        return math.pi * max(0.0, self.radius**2 - (height - self.middle) ** 2)

    def outline(self, height: float) -> Outline:
        """A section from above [outline].

        height: above the vessel's bottom [mm].

        >>> outlines.size(Ball(50.0, 50.0, 0.0, 40.0).outline(10.0))
        (60.0, 60.0)
        """
        return outlines.circle(2 * math.sqrt(max(0.0, self.radius**2 - (height - self.middle) ** 2)))

    def corners(self, height: float) -> tuple[Point, ...]:
        """Corners of a section [mm].

        height: above the vessel's bottom [mm].

        >>> len(Ball(50.0, 50.0, 0.0, 40.0).corners(10.0))
        96
        """
        return self.outline(height).points

    def breaks(self) -> list[float]:
        """Heights at which the law of its areas changes: none [mm].

        >>> Ball(50.0, 50.0, 0.0, 40.0).breaks()
        []
        """
        return []

    def surface(self, low: float, high: float) -> float:
        """Area of the ball between two heights [mm²].

        low: the lower one, above the vessel's bottom [mm].
        high: the higher one [mm].

        >>> round(Ball(50.0, 50.0, 0.0, 40.0).surface(0.0, 40.0), 3)
        12566.371
        """
        return 2 * math.pi * self.radius * (high - low)


Shell = Pulled | Ball


@lru_cache(maxsize=64)
def slabs(shell: Shell, high: float) -> tuple[Slab, ...]:
    """A side cut where the law of its areas changes, from its bottom to a height [slabs].

    shell: the side [shell].
    high: above the vessel's bottom [mm].

    >>> len(slabs(Pulled(Family("rectangle", (80.0, 60.0, 5.0)), 0.0, 0.1, 0.0, 70.0), 70.0))
    2
    """
    cuts = [shell.low, *(each for each in shell.breaks() if shell.low < each < high), high]
    return tuple(Slab(one, two, shell.area(one), shell.area((one + two) / 2), shell.area(two)) for one, two in zip(cuts, cuts[1:]))


def volume(shell: Shell, high: float) -> float:
    """What lies within a side, from its bottom to a height [mL].

    shell: the side [shell].
    high: above the vessel's bottom [mm].

    Source: Simpson's rule, exact where areas follow a parabola: prisms, cones, pyramids, balls.

    >>> round(volume(Ball(50.0, 50.0, 0.0, 100.0), 100.0), 3)
    523.599
    """
    return math.fsum(slab.volume for slab in slabs(shell, high))
