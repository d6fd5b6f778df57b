"""Water on a scale: its density by temperature, and the volume that a weighing means."""

COLDEST, WARMEST = 5.0, 40.0
USUAL_TEMPERATURE = 20.0
AIR_DENSITY = 0.0012
WEIGHTS_DENSITY = 8.0


def density(temperature: float) -> float:
    """Density of air-free water at ordinary pressure [g/mL].

    temperature: of the water [°C], 0 to 40.

    Source: Recommended table for the density of water between 0 °C and 40 °C,
    Metrologia 38 (2001) 301, doi 10.1088/0026-1394/38/4/3.

    >>> round(density(20.0), 7)
    0.9982067
    """
    t = temperature
    departure = (t - 3.983035) ** 2 * (t + 301.797) / (522528.9 * (t + 69.34881))
    return 0.999974950 * (1 - departure)


def true_mass(reading: float, of_density: float, air_density: float = AIR_DENSITY,
              weights_density: float = WEIGHTS_DENSITY) -> float:
    """Mass of a thing that a scale in air shows a reading for [g].

    reading: what the scale shows [g].
    of_density: density of the thing weighed [g/mL].
    air_density: of the air around it [g/mL].
    weights_density: of the weights the scale was set with [g/mL].

    Air carries part of what it surrounds, more of water than of the dense weights.
    Source: ISO 8655-6, factor Z.

    >>> round(true_mass(9.9736, 0.99705, weights_density=8.40), 4)
    9.9842
    """
    return reading * (1 - air_density / weights_density) / (1 - air_density / of_density)


def milliliters_per_gram(temperature: float, air_density: float = AIR_DENSITY,
                         weights_density: float = WEIGHTS_DENSITY) -> float:
    """Volume of the water that makes a scale in air show one gram, the factor Z [mL/g].

    temperature: of the water [°C].
    air_density: of the air around it [g/mL].
    weights_density: of the weights the scale was set with [g/mL].

    Source: ISO 8655-6.

    >>> round(milliliters_per_gram(20.0), 4)
    1.0029
    """
    water = density(temperature)
    return true_mass(1.0, water, air_density, weights_density) / water


def volume(reading: float, temperature: float) -> float:
    """Volume of the water that a scale in air shows a reading for [mL].

    reading: what the scale shows [g].
    temperature: of the water [°C].

    >>> round(volume(500.0, 20.0), 2)
    501.43
    """
    return reading * milliliters_per_gram(temperature)


def reading(volume: float, temperature: float) -> float:
    """What a scale in air shows for a volume of water [g].

    volume: of the water [mL].
    temperature: of the water [°C].

    >>> round(reading(501.43, 20.0), 1)
    500.0
    """
    return volume / milliliters_per_gram(temperature)
