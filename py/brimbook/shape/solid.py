"""Volumes of simple solids by formula, and what an error in each dimension does to them."""

import math
from collections.abc import Callable
from dataclasses import dataclass


def cylinder(diameter: float, height: float) -> float:
    """Volume of a straight round solid [mL].

    diameter: across [mm].
    height: upright [mm].

    >>> round(cylinder(80.0, 70.0), 1)
    351.9
    """
    return math.pi / 4 * diameter**2 * height / 1000


def tapered(top_diameter: float, bottom_diameter: float, height: float) -> float:
    """Volume of a round solid whose wall leans straight from bottom to top, a cone frustum [mL].

    top_diameter: across the top [mm].
    bottom_diameter: across the bottom [mm].
    height: upright [mm].

    Source: π h (R² + R r + r²) ÷ 3.

    >>> round(tapered(70.0, 100.0, 50.0), 1)
    286.7
    """
    squares = top_diameter**2 + top_diameter * bottom_diameter + bottom_diameter**2
    return math.pi / 12 * squares * height / 1000


def box(length: float, width: float, height: float) -> float:
    """Volume of a rectangular solid [mL].

    length: one side [mm].
    width: the other side [mm].
    height: upright [mm].

    >>> box(100.0, 60.0, 50.0)
    300.0
    """
    return length * width * height / 1000


def opening_area(across: float, other_way: float | None = None) -> float:
    """Area of an opening: round, or rectangular where the other way is given [mm²].

    across: diameter, or one side [mm].
    other_way: the other side of a rectangle, none for round [mm].

    >>> round(opening_area(80.0)), opening_area(100.0, 60.0)
    (5027, 6000.0)
    """
    return math.pi / 4 * across**2 if other_way is None else across * other_way


@dataclass(frozen=True)
class Solid:
    """A solid's formula, the dimensions it takes, and how it is written out."""

    volume: Callable[..., float]
    dimensions: tuple[str, ...]
    written: str


SOLIDS = {
    "cylinder": Solid(cylinder, ("diameter", "height"), "π ÷ 4 × {diameter}² × {height} ÷ 1000"),
    "tapered": Solid(tapered, ("top_diameter", "bottom_diameter", "height"),
                     "π ÷ 12 × ({top_diameter}² + {top_diameter} × {bottom_diameter} + {bottom_diameter}²)"
                     " × {height} ÷ 1000"),
    "box": Solid(box, ("length", "width", "height"), "{length} × {width} × {height} ÷ 1000"),
}


def plus_minus(solid: str, dimensions: dict[str, float], ruler: float) -> float:
    """The ± on a solid's volume when each dimension is read to within a ± [mL].

    solid: cylinder, tapered or box [text].
    dimensions: the solid's own dimensions by name [mm].
    ruler: the ± of each dimension [mm].

    >>> round(plus_minus("box", {"length": 100.0, "width": 60.0, "height": 50.0}, 0.5), 2)
    4.18
    """
    formula = SOLIDS[solid].volume
    exact = {name: dimensions[name] for name in SOLIDS[solid].dimensions}
    shifts = []
    for name in exact:
        more = formula(**{**exact, name: exact[name] + ruler})
        less = formula(**{**exact, name: exact[name] - ruler})
        shifts.append((more - less) / 2)
    return math.hypot(*shifts)
