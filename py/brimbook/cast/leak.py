"""A leak test by weight: what left the vessel, what only dried off, and what that proves."""

import math

DAY = 86400.0
# Of undisturbed water in still air [g/(m²·h·kPa)]: 0.74 × 95 in lb/(ft²·h) for inHg and Btu/lb, at 2454 kJ/kg.
STILL_AIR = 96.1
# A cup beside the vessel dries as the vessel does, within this; the estimate is off by up to a factor of two.
CUP_OFF, ESTIMATE_OFF = 0.2, 1.0
# A leak can hide where the ± of what dried off is so many times that of the scale.
HIDES = 3.0


def saturation(temperature: float) -> float:
    """Pressure of the vapor over water [kPa].

    temperature: of the water [°C].

    Source: Magnus formula with the constants 17.62 and 243.12 °C.

    >>> round(saturation(20.0), 2)
    2.33
    """
    return 0.6112 * math.exp(17.62 * temperature / (243.12 + temperature))


def evaporated(area: float, temperature: float, humidity: float, seconds: float) -> float:
    """Water that dries off from an open vessel in still room air, within a factor of two [g].

    area: of the water's surface [mm²].
    temperature: of the room and the water [°C].
    humidity: relative, of the room's air [–].
    seconds: that it stood [s].

    Source: rates measured over undisturbed pools, ASHRAE Transactions 104 (1998) 1A.

    >>> round(evaporated(3848.0, 20.0, 0.5, 86400.0), 1)
    10.4
    """
    return STILL_AIR * saturation(temperature) * (1 - humidity) * area / 1e6 * seconds / 3600


def evaporated_beside(cup_lost: float, cup_area: float, area: float) -> float:
    """Water that dries off from an open vessel, by a cup that stood beside it as long [g].

    cup_lost: what the cup lost [g].
    cup_area: of the cup's water surface [mm²].
    area: of the vessel's water surface [mm²].

    >>> evaporated_beside(8.0, 4000.0, 3000.0)
    6.0
    """
    return cup_lost * area / cup_area


def in_a_day(grams: float, seconds: float) -> float:
    """A loss told for a day [g/d].

    grams: lost [g].
    seconds: in which it was lost [s].

    >>> in_a_day(2.0, 43200.0)
    4.0
    """
    return grams * DAY / seconds


def most_leaked(leaked: float, off: float) -> float:
    """The most that can have leaked where nothing was seen to [g].

    leaked: lost beyond what dried off [g].
    off: its ± [g].

    >>> most_leaked(0.5, 0.8), most_leaked(-0.5, 0.8)
    (1.3, 0.8)
    """
    return max(leaked, 0.0) + off


def verdict(leaked: float, scale_off: float, evaporation_off: float) -> str:
    """What a leak test proves: leaks, holds, or unclear [text].

    leaked: lost beyond what dried off [g].
    scale_off: ± from the scale [g].
    evaporation_off: ± of what dried off [g].

    It leaks where more is gone than the ± explains. Else it holds, unless the ± of what
    dried off is so much larger than the scale's that a leak could hide in it.

    >>> verdict(4.0, 0.8, 0.0), verdict(0.5, 0.8, 0.0), verdict(4.0, 0.8, 9.0)
    ('leaks', 'holds', 'unclear')
    """
    off = math.hypot(scale_off, evaporation_off)
    if leaked > off:
        return "leaks"
    could_hide = evaporation_off > HIDES * scale_off and leaked > -off
    return "unclear" if could_hide else "holds"
