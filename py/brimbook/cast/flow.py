"""How a fresh mix spreads: its flow over the cone's base, its class, and how water moves it."""

import math
from dataclasses import dataclass

from brimbook.cast.learning import EXPECTED_FREEDOM, student_factor

# EN 1015-6, flow values in mm: below the first a mortar is stiff, above the second it is soft.
STIFF_BELOW, SOFT_ABOVE = 140.0, 200.0


@dataclass(frozen=True)
class Cone:
    """A cone or ring that is filled and lifted: diameters and height [mm]."""

    base: float
    top: float
    height: float


# Dimensions as the standards give them, from memory.
CONES = {"mini": Cone(38.0, 19.0, 57.0), "flow_table": Cone(100.0, 70.0, 50.0), "mortar_table": Cone(100.0, 70.0, 60.0)}


@dataclass(frozen=True)
class Line:
    """Spread over water: the slope [mm], the scatter of a spread [mm], pooled with the one expected, and its freedom.

    width is the sum of the squares of the waters off their middle [–]; height is the average
    spread [mm]; least and most are the waters seen [–].
    """

    slope: float
    scatter: float
    freedom: float
    width: float
    middle: float
    height: float
    least: float
    most: float

    @property
    def plus_minus(self) -> float:
        """Half of the interval that holds the slope with 95 % [mm]."""
        return student_factor(self.freedom) * self.scatter / math.sqrt(self.width)

    def water_for(self, spread: float) -> float:
        """The water that the line gives for a spread [–].

        spread: wanted [mm].

        >>> round(line([0.24, 0.26], [140.0, 160.0]).water_for(155.0), 4)
        0.255
        """
        return self.middle + (spread - self.height) / self.slope

    def is_near(self, water: float) -> bool:
        """Does a water lie among those that were seen, or no farther off than half their width [yes or no]?

        water: grams for a gram of powder [–].

        >>> line([0.24, 0.26], [140.0, 160.0]).is_near(0.27)
        True
        """
        near = (self.most - self.least) / 2
        return self.least - near <= water <= self.most + near


def mean_diameter(diameters: list[float]) -> float:
    """The average of the diameters that were measured across one spread [mm].

    diameters: two of them at right angles, or four [mm].

    >>> mean_diameter([148.0, 152.0])
    150.0
    """
    return math.fsum(diameters) / len(diameters)


def flow(spread: float, base: float) -> float:
    """The flow: by how much the mix has spread beyond the base of the cone, as a share of it [–].

    spread: average diameter [mm].
    base: diameter of the cone's base [mm].

    Source: ASTM C1437, flow as percent of the original base diameter.

    >>> round(flow(210.0, 100.0), 2)
    1.1
    """
    return (spread - base) / base


def consistency(flow_value: float) -> str:
    """The class of a mortar by its flow value [text].

    flow_value: average diameter on the mortar flow table [mm].

    Source: EN 1015-6, from memory.

    >>> consistency(139.0), consistency(140.0), consistency(201.0)
    ('stiff', 'plastic', 'soft')
    """
    if flow_value < STIFF_BELOW:
        return "stiff"
    return "soft" if flow_value > SOFT_ABOVE else "plastic"


# Waters nearer to each other than this can't carry a slope: a scale's step is as much.
NEAREST = 0.004
# Standard deviation of a spread, as a share of it, among mixes alike: from memory.
SPREAD_SCATTER = 0.025


def line(waters: list[float], spreads: list[float]) -> Line | None:
    """The straight line of spread over water; nothing where the waters are too much alike [line].

    waters: grams of water for a gram of powder, of each pour [–].
    spreads: average diameter, of each pour [mm].

    Source: least squares; scatter pooled with the one expected, as for the pours, from memory.

    >>> seen = line([0.24, 0.25, 0.26], [140.0, 150.0, 160.0])
    >>> round(seen.slope), round(seen.water_for(155.0), 4)
    (1000, 0.255)
    """
    if len(waters) < 2 or max(waters) - min(waters) < NEAREST:
        return None
    count, middle, height = len(waters), math.fsum(waters) / len(waters), math.fsum(spreads) / len(spreads)
    width = math.fsum((water - middle) ** 2 for water in waters)
    slope = math.fsum((water - middle) * (spread - height) for water, spread in zip(waters, spreads)) / width
    off = math.fsum((spread - height - slope * (water - middle)) ** 2 for water, spread in zip(waters, spreads))
    freedom = EXPECTED_FREEDOM + count - 2
    scatter = math.sqrt((EXPECTED_FREEDOM * (SPREAD_SCATTER * height) ** 2 + off) / freedom)
    return Line(slope, scatter, freedom, width, middle, height, min(waters), max(waters))
