"""What setting does to hot wax: how much it shrinks, and the pours that fill what sinks."""


def of_hot(poured: float, cold: float) -> float:
    """Share of its hot volume that wax loses as it sets [–].

    poured: density hot as poured [g/mL].
    cold: density cold and set [g/mL].

    Source: the weight stays, m = ρ V hot and set.

    >>> round(of_hot(0.77, 0.90), 4)
    0.1444
    """
    return 1 - poured / cold


def of_set(poured: float, cold: float) -> float:
    """The same loss told as a share of the set volume [–].

    poured: density hot as poured [g/mL].
    cold: density cold and set [g/mL].

    Source: the weight stays, m = ρ V hot and set.

    >>> round(of_set(0.77, 0.90), 4)
    0.1688
    """
    return cold / poured - 1


def along(share: float) -> float:
    """Share of any length that is lost where a solid shrinks alike in every direction [–].

    share: of its volume that it loses [–].

    Source: volume is length cubed, 1 − (1 − s)³ of it is lost with s of each length.

    >>> round(along(0.0731), 4)
    0.025
    """
    return 1 - (1 - share) ** (1 / 3)


def pour(number: int, first: float, share: float) -> float:
    """What a pour takes that fills the sink of the one before, hot to the line [g].

    number: which pour, the first 1 [count].
    first: the first pour, hot to the line [g].
    share: of its hot volume that the wax loses as it sets [–].

    Source: geometric series; all pours together come to first ÷ (1 − share).

    >>> round(pour(2, 100.0, 0.1444), 2), round(pour(3, 100.0, 0.1444), 3)
    (14.44, 2.085)
    """
    return first * share ** (number - 1)


def missing_after(pours: int, volume: float, share: float) -> float:
    """How much is missing to the line when the last of some pours has set [mL].

    pours: each poured hot to the line on what has set [count].
    volume: to the line [mL].
    share: of its hot volume that the wax loses as it sets [–].

    Source: geometric series.

    >>> round(missing_after(1, 300.0, 0.1), 6), round(missing_after(2, 300.0, 0.1), 6)
    (30.0, 3.0)
    """
    return volume * share**pours
