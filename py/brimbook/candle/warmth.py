"""How the density of hot wax follows its temperature, and what a cup of it tells."""

import math


def density_at(told: float, told_at: float, temperature: float, expansion: float) -> float:
    """Density of liquid wax at another temperature [g/mL].

    told: its density at the temperature it is told for [g/mL].
    told_at: that temperature [°C].
    temperature: the one that is asked for [°C].
    expansion: what it loses for each degree [g/mL per °C].

    Source: oils lose density along a straight line, JAOCS 76 (1999) 1415.

    >>> round(density_at(0.86, 80.0, 60.0, 0.00064), 4)
    0.8728
    """
    return told - expansion * (temperature - told_at)


def density_of_cup(full: float, empty: float, volume: float) -> float:
    """Density of the wax that fills a cup level [g/mL].

    full: the cup with the wax [g].
    empty: the cup [g].
    volume: what it holds, level [mL].

    Source: weight ÷ volume.

    >>> density_of_cup(198.0, 12.0, 200.0)
    0.93
    """
    return (full - empty) / volume


def plus_minus_of_cup(net: float, volume: float, weighed: float, off: float) -> float:
    """± of the density that a cup tells, both parts added as squares [g/mL].

    net: wax in the cup [g].
    volume: what the cup holds [mL].
    weighed: ± of the weight of the wax [g].
    off: how far the volume may be off [mL].

    Source: relative ± of a quotient, the parts independent.

    >>> round(plus_minus_of_cup(186.0, 200.0, 0.8, 1.0), 4)
    0.0061
    """
    return net / volume * math.hypot(weighed / net, off / volume)
