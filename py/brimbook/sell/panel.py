"""The principal display panel of a package by United States rules: its area, and how high letters on it must be."""

# Exact, by definition [mm, mm²].
INCH = 25.4
SQUARE_INCH = INCH * INCH
# What is seen of a package from the front, where no one side of it is the front.
SEEN = 0.4
# Up to so large a panel [in²], letters are at least so high [in].
TIERS = ((5.0, 1 / 16), (25.0, 1 / 8), (100.0, 3 / 16), (400.0, 1 / 4))
LARGEST = 1 / 2
# On a smaller panel the net quantity may stand anywhere [in²].
ANYWHERE = 5.0
# An area typed in inches must not fall on the other side of a limit by binary fractions.
_HAIR = 1e-9


def flat_area(height: float, width: float) -> float:
    """Area of the panel of a package with a flat side in front [mm²].

    height: of that side [mm].
    width: of that side [mm].

    Source: 16 CFR 500.21(a)(1).

    >>> flat_area(50.0, 70.0)
    3500.0
    """
    return height * width


def round_area(height: float, around: float) -> float:
    """Area of the panel of a package that is round, or nearly so: 40 % of its side [mm²].

    height: without shoulder, neck and flanges [mm].
    around: its circumference [mm].

    Source: 16 CFR 500.21(a)(2).

    >>> round_area(90.0, 250.0)
    9000.0
    """
    return SEEN * height * around


def other_area(surface: float) -> float:
    """Area of the panel of a package of any other shape, without an obvious front or top: 40 % of all its surface [mm²].

    surface: of the package [mm²].

    Source: 16 CFR 500.21(a)(3).

    >>> other_area(25000.0)
    10000.0
    """
    return SEEN * surface


def square_inches(area: float) -> float:
    """An area in the unit of the rules [in²].

    area: of a panel [mm²].

    >>> square_inches(3225.8)
    5.0
    """
    return round(area / SQUARE_INCH, 9)


def least_height(area: float) -> float:
    """Least height of letters and numerals of the net quantity, printed and not molded in [mm].

    area: of the panel [mm²].

    Where small letters are among them, the letter o must be that high. What is molded into the vessel is 1/16 in higher, and
    is not told here.

    Source: 16 CFR 500.21(b), the first tier as read there, the next two in a food labeling guide that has the same ladder,
    the last two from memory.

    >>> [least_height(area * 645.16) for area in (5, 6, 25, 26, 400, 401)]
    [1.5875, 3.175, 3.175, 4.7625, 6.35, 12.7]
    """
    inches = square_inches(area)
    return round(INCH * next((height for most, height in TIERS if inches <= most * (1 + _HAIR)), LARGEST), 6)


def stands_low(area: float) -> bool:
    """Must the net quantity stand in the lowest 30 % of the panel [yes or no]?

    area: of the panel [mm²].

    Source: 16 CFR 500.6, from memory; 21 CFR 101.7(f) has the same words for food, as quoted.

    >>> stands_low(3225.8), stands_low(3226.0)
    (False, True)
    """
    return square_inches(area) > ANYWHERE * (1 + _HAIR)
