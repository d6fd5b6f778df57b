"""Areas to be sealed and painted, and the sealer and paint that they take."""

import math


def round_wall_and_floor(top_diameter: float, bottom_diameter: float, height: float) -> float:
    """Area of a round wall, straight or leaning, with the floor inside it or the foot below it [mm²].

    top_diameter: across the top [mm].
    bottom_diameter: across the floor or foot [mm].
    height: upright [mm].

    Source: lateral area of a cone frustum π (R + r) √(h² + (R − r)²), and a circle.

    >>> round(round_wall_and_floor(80.0, 80.0, 100.0))
    30159
    """
    slant = math.hypot(height, (top_diameter - bottom_diameter) / 2)
    return math.pi / 2 * (top_diameter + bottom_diameter) * slant + math.pi / 4 * bottom_diameter**2


def upright_wall_and_floor(outline: float, height: float) -> float:
    """Area of an upright wall of any outline with its floor, the floor taken as a circle of that outline [mm²].

    outline: length once around [mm].
    height: upright [mm].

    Source: of all floors with the same outline a circle is the largest, so the area is never told too small.

    >>> round(upright_wall_and_floor(math.pi * 80, 100.0))
    30159
    """
    return outline * height + outline**2 / (4 * math.pi)


def coating(area: float, coverage: float, coats: float) -> float:
    """Sealer or paint for an area [mL].

    area: to be coated [mm²].
    coverage: that one liter covers in one coat [m²/L].
    coats: how many [count].

    >>> coating(80_000.0, 8.0, 2)
    20.0
    """
    return area / 1000 / coverage * coats
