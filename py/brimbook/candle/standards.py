"""What published test methods ask of a candle, as far as it can be seen at a bench. None of this is a certificate.

The bodies of the standards were not read here: limits are those that others quote, and their standing says so.
"""

# Source: ASTM F2417, flame under 3 in; second hand.
FLAME_ASTM = 76.2
# A flame typed in inches may stand a hair beside its limit: decimals of a millimeter that count.
_DUST = 6
# Source: EN 15493, 2007 text, flame at most 75 mm for all but tea lights; second hand.
FLAME_EN = 75.0
# Source: EN 15493, after-smoke at most 20 s by its 2007 text, 30 s on average by its 2019 edition; second hand [s].
AFTER_SMOKE_2007, AFTER_SMOKE_2019 = 20.0, 30.0
# Source: the method of ASTM F2417 as quoted by a candle-makers' association: burns of 4 h, at least 3 h between [h].
BURN, COOLING = 4.0, 3.0
# The same: room of 20 to 30 °C, wick trimmed to 1/4 in before each burn.
COLDEST_ROOM, WARMEST_ROOM, TRIM = 20.0, 30.0, 6.35
# Source: NIST figures as quoted: skin hurts, burns, blisters; second hand [°C].
SKIN_PAIN, SKIN_BURN, SKIN_BLISTER = 44.0, 48.0, 55.0


def below_flame_astm(flame: float) -> float:
    """How much lower a flame is than the limit of ASTM F2417, which it must stay under [mm].

    flame: the tallest seen [mm].

    >>> below_flame_astm(75.5)
    0.7
    """
    return round(FLAME_ASTM - flame, _DUST)


def below_flame_en(flame: float) -> float:
    """How much lower a flame is than the limit of EN 15493, which it may just reach [mm].

    flame: the tallest seen [mm].

    >>> below_flame_en(75.5)
    -0.5
    """
    return round(FLAME_EN - flame, _DUST)


def passes_flame_astm(flame: float) -> bool:
    """Is a flame under 3 in, as ASTM F2417 is quoted [yes or no]?

    flame: the tallest seen [mm].

    >>> passes_flame_astm(75.5), passes_flame_astm(76.2)
    (True, False)
    """
    return below_flame_astm(flame) > 0


def passes_flame_en(flame: float) -> bool:
    """Is a flame no taller than 75 mm, as EN 15493 is quoted [yes or no]?

    flame: the tallest seen [mm].

    >>> passes_flame_en(75), passes_flame_en(75.5)
    (True, False)
    """
    return below_flame_en(flame) >= 0


def below_after_smoke(seconds: float, edition: int) -> float:
    """How much sooner the smoke ended than EN 15493 allows; the 2019 edition means the average of several candles [s].

    seconds: it smoked on after it was put out [s].
    edition: 2007 or 2019 [year].

    >>> below_after_smoke(22, 2007), below_after_smoke(22, 2019)
    (-2.0, 8.0)
    """
    return (AFTER_SMOKE_2007 if edition < 2019 else AFTER_SMOKE_2019) - seconds


def over_burn(hours: float) -> float:
    """How much longer it burned than the method's 4 h at a time, below 0 where it burned shorter [h].

    hours: of one cycle [h].

    >>> over_burn(5.5)
    1.5
    """
    return hours - BURN


def short_of_cooling(hours: float) -> float:
    """How much too soon it was lit again for the method's 3 h of cooling, below 0 where it waited longer [h].

    hours: from putting out to lighting [h].

    >>> short_of_cooling(1)
    2.0
    """
    return COOLING - hours
