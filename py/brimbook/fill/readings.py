"""Several readings of one thing: their mean, their spread, the stray one, and the ±.

Every ± here is about 95 %: twice a standard uncertainty, or Student's t times the
standard deviation of the mean where only a few readings were taken.
"""

import math

# Student's t, two-sided 95 %, for 1, 2, 3 ... degrees of freedom.
STUDENT_T = (12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160, 2.145,
             2.131, 2.120, 2.110, 2.101, 2.093)
LARGE_SAMPLE_T = 2.09

# Grubbs' test for one outlier, two-sided 5 %, for 3, 4, 5 ... readings.
GRUBBS = (1.1543, 1.4813, 1.7150, 1.8871, 2.0200, 2.1266, 2.2150, 2.2900, 2.3547, 2.4116, 2.4620, 2.5073, 2.5483,
          2.5857, 2.6200, 2.6516, 2.6809, 2.7082)


def mean(values: list[float]) -> float:
    """The average [unit of the values].

    values: one or more readings [any unit].

    >>> mean([640.0, 641.0, 642.0])
    641.0
    """
    return math.fsum(values) / len(values)


def standard_deviation(values: list[float]) -> float:
    """The spread of single readings, 0 for a single one [unit of the values].

    values: one or more readings [any unit].

    >>> standard_deviation([640.0, 641.0, 642.0])
    1.0
    """
    if len(values) < 2:
        return 0.0
    middle = mean(values)
    return math.sqrt(math.fsum((value - middle) ** 2 for value in values) / (len(values) - 1))


def student_t(count: int) -> float:
    """Student's t for the mean of so many readings, two-sided, 95 % [–].

    count: how many, two or more [count].

    >>> student_t(3)
    4.303
    """
    freedom = count - 1
    return STUDENT_T[freedom - 1] if freedom <= len(STUDENT_T) else LARGE_SAMPLE_T


def spread_of_mean(values: list[float]) -> float:
    """The ± that the spread of the readings leaves on their mean [unit of the values].

    values: one or more readings [any unit].

    >>> round(spread_of_mean([640.0, 641.0, 642.0]), 2)
    2.48
    """
    if len(values) < 2:
        return 0.0
    return student_t(len(values)) * standard_deviation(values) / math.sqrt(len(values))


def readability_of_difference(readability: float) -> float:
    """The ± on a weight that is the difference of two displays, each rounded [g].

    readability: the smallest step the scale shows [g].

    A tared weight is such a difference too: the zero was rounded as well. Rounding
    has the standard uncertainty step ÷ √12 (GUM 4.3.7); two of them, twice over.

    >>> round(readability_of_difference(1.0), 3)
    0.816
    """
    return 2 * readability / math.sqrt(6)


def combine(*plus_minus: float) -> float:
    """Independent ± added as squares [unit of the parts].

    plus_minus: half-widths, all at about 95 % [any unit].

    >>> combine(3.0, 4.0)
    5.0
    """
    return math.hypot(*plus_minus)


def stray(values: list[float], readability: float) -> int | None:
    """The place of the one reading that does not belong with the others, if any [place in the list].

    values: the readings [g].
    readability: the smallest step the scale shows [g].

    Grubbs' test; and it must stand off by more than the scale's own steps, so that
    640, 640, 641 is no outlier.

    >>> stray([640.0, 641.0, 702.0], 1.0), stray([640.0, 640.0, 641.0], 1.0)
    (2, None)
    """
    if not 3 <= len(values) <= len(GRUBBS) + 2:
        return None
    middle, spread = mean(values), standard_deviation(values)
    farthest = max(range(len(values)), key=lambda place: abs(values[place] - middle))
    distance = abs(values[farthest] - middle)
    if distance <= 3 * readability or distance <= GRUBBS[len(values) - 3] * spread:
        return None
    return farthest
