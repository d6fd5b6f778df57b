"""Wicks: what their pools must reach, and what a metal core may hold."""

# More lead than this in the metal of a wick's core, by weight, is a hazard by law in the United States.
_LEAD_MOST = 0.0006


def pool_of_area(area: float, count: int) -> float:
    """Pool that each of so many wicks needs at the very least, as if pools were cut to fit without overlap [mm].

    area: of the surface [mm²].
    count: of wicks [count].

    Source: n × π ÷ 4 × d² is no less than the area.

    >>> round(pool_of_area(4800.0, 2), 2)
    55.28
    """
    return 2 * (area / (count * 3.141592653589793)) ** 0.5


def fit(pool: float, needed: float) -> float:
    """How a wick's pool compares with what it must melt: 1 where it just reaches, less where it comes short [–].

    pool: that the wick was seen to melt, across [mm].
    needed: that each wick must melt, across [mm].

    >>> fit(60.0, 58.0) > 1
    True
    """
    return pool / needed


def is_lead_core(lead: float) -> bool:
    """Does the metal of a wick's core hold more lead than the law of the United States allows [yes or no]?

    lead: share of lead in the metal, by weight [–].

    Source: 16 CFR 1500.12(a)(2).

    >>> is_lead_core(0.0006), is_lead_core(0.000601)
    (False, True)
    """
    return lead > _LEAD_MOST
