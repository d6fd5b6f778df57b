"""The outline of a flat shape, such as the surface of the wax seen from above."""

from dataclasses import dataclass

Point = tuple[float, float]


class OutlineError(ValueError):
    """An outline that can't be: its message is a sentence for the maker."""


@dataclass(frozen=True)
class Outline:
    """A closed outline as a polygon, counterclockwise, in mm; its origin is the middle of its bounding box.

    Curves are drawn from just outside, so that nothing measured on the polygon comes out smaller than on the curve.
    """

    points: tuple[Point, ...]
