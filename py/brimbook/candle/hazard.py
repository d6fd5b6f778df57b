"""What Regulation (EC) 1272/2008 (CLP) makes of a flash point, and of a skin sensitizer in a candle."""

# An open cup reads 5 to 10 K higher than a closed one: the careful end.
OPEN_CUP_ABOVE = 10.0
# A share typed as 25 % of 4 % must reach 1 %, whatever binary fractions make of it.
_HAIR = 1e-9
_CLASSIFIES = {"1A": 0.001, "1": 0.01, "1B": 0.01}


def closed_cup(flash: float, cup: str) -> float:
    """Flash point in a closed cup, the lowest that it may be [°C].

    flash: as told [°C].
    cup: closed or open, the test that it was measured in [text].

    Source: a closed cup reads about 5 to 10 K below an open one (second hand).

    >>> closed_cup(65.0, "closed"), closed_cup(75.0, "open")
    (65.0, 65.0)
    """
    return flash - OPEN_CUP_ABOVE if cup == "open" else flash


def flammable_category(flash: float) -> int:
    """Category of a flammable liquid by its flash point alone; 0 for none [count].

    flash: in a closed cup [°C].

    2 stands for 1 or 2, which only the start of boiling tells apart: category 1 boils from 35 °C or less.

    Source: CLP, Table 2.6.1.

    >>> flammable_category(22.9), flammable_category(23.0), flammable_category(60.0), flammable_category(60.1)
    (2, 3, 3, 0)
    """
    if flash < 23.0:
        return 2
    return 3 if flash <= 60.0 else 0


def classifies_from(category: str, specific: float | None = None) -> float:
    """Share of a skin sensitizer from which a mixture is classified as one (H317) [–].

    category: 1, 1A or 1B [text].
    specific: its specific concentration limit, where it has one [–].

    Source: CLP, Table 3.4.5.

    >>> classifies_from("1A"), classifies_from("1B"), classifies_from("1B", 0.005)
    (0.001, 0.01, 0.005)
    """
    return _CLASSIFIES[category] if specific is None else specific


def named_from(category: str, specific: float | None = None) -> float:
    """Share of a skin sensitizer from which the label names it (EUH208) [–].

    category: 1, 1A or 1B [text].
    specific: its specific concentration limit, where it has one [–].

    Source: CLP, Table 3.4.6 and its note 1: one tenth of the share that classifies.

    >>> named_from("1A"), named_from("1"), named_from("1B", 0.005)
    (0.0001, 0.001, 0.0005)
    """
    return classifies_from(category, specific) / 10


def reaches(share: float, limit: float) -> bool:
    """Is a share at a limit or above it [yes or no]?

    share: of a substance [–].
    limit: from which a rule holds [–].

    >>> reaches(0.25 * 0.04, 0.01), reaches(0.0099999, 0.01)
    (True, False)
    """
    return share >= limit * (1 - _HAIR)


def exceeds(share: float, limit: float) -> bool:
    """Is a share above a limit that it may reach [yes or no]?

    share: of a scent [–].
    limit: the most that is allowed [–].

    >>> exceeds(0.1 + 0.2, 0.3), exceeds(0.3001, 0.3)
    (False, True)
    """
    return share > limit * (1 + _HAIR)
