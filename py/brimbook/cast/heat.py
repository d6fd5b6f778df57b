"""How warm a mix could get as it sets, if none of its heat got away."""

# Of water and of dry cement, sand or pigment [J/(g·K)].
WATER, SOLID = 4.18, 0.75


def heat_capacity(water: float, solids: float) -> float:
    """Heat that warms one gram of a fresh mix by one degree [J/(g·K)].

    water: in it [g].
    solids: in it [g].

    Source: 4.18 × water + 0.75 × cement, NIST paper on hydrating cement paste.

    >>> round(heat_capacity(0.4, 1.0), 2)
    1.73
    """
    return (WATER * water + SOLID * solids) / (water + solids)


def rise(heat: float, water: float, solids: float) -> float:
    """Warming of a mix that keeps all its heat: an upper bound, thin walls lose most of it [K].

    heat: given off [J].
    water: in the mix [g].
    solids: in the mix [g].

    >>> round(rise(100.0, 0.4, 1.0), 1)
    41.3
    """
    return heat / ((water + solids) * heat_capacity(water, solids))


def share_to_soften(softens: float, start: float, most: float) -> float:
    """The share of the heat that must stay in the piece to soften its mold [–].

    softens: temperature at which the plastic begins to give [°C].
    start: temperature of the fresh mix [°C].
    most: warming of a mix that keeps all its heat [K].

    >>> share_to_soften(55.0, 20.0, 70.0)
    0.5
    """
    return (softens - start) / most
