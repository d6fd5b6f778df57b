"""Powder and water by absolute volume: each ingredient takes the room of its own particles.

Formulas hold in any units that belong together; here g, mL and g/mL.
"""

import math


def absolute_volume(masses: list[float], densities: list[float], air: float = 0.0) -> float:
    """Volume of a fresh mix of ingredients, with the air in it [mL].

    masses: of the ingredients [g].
    densities: of their particles, in the same order [g/mL].
    air: share of the fresh mix that is air [–].

    Source: absolute-volume method, ACI 211.1.

    >>> round(absolute_volume([1000.0, 250.0], [2.98, 0.9982]), 1)
    586.0
    """
    solid = math.fsum(mass / density for mass, density in zip(masses, densities, strict=True))
    return solid / (1 - air)


def volume_per_gram_of_powder(particle_density: float, water_to_powder: float, water_density: float,
                              air: float = 0.0) -> float:
    """Fresh mix that one gram of powder makes with its water [mL/g].

    particle_density: of the powder's particles, not of the heap [g/mL].
    water_to_powder: grams of water for a gram of powder [–].
    water_density: of the mixing water [g/mL].
    air: share of the fresh mix that is air [–].

    >>> round(1 / volume_per_gram_of_powder(2.98, 0.25, 0.9982), 2)
    1.71
    """
    return absolute_volume([1.0, water_to_powder], [particle_density, water_density], air)


def powder_for_volume(volume: float, volume_per_gram: float) -> float:
    """Powder for a volume of fresh mix [g].

    volume: of fresh mix wanted [mL].
    volume_per_gram: fresh mix from a gram of powder [mL/g].

    >>> round(powder_for_volume(586.0, 0.586), 6)
    1000.0
    """
    return volume / volume_per_gram


def powder_by_rule(water: float, powder_per_water: float) -> float:
    """Powder by the maker's rule of thumb [g].

    water: what the water that fills the mold weighed [g].
    powder_per_water: grams of powder for a gram of that water [–].

    >>> round(powder_by_rule(640.0, 1.88), 6)
    1203.2
    """
    return water * powder_per_water


def allowance_in_rule(powder_per_water: float, milliliters_per_gram: float, volume_per_gram: float) -> float:
    """The share by which a rule of thumb makes more mix than the cavity holds [–].

    powder_per_water: grams of powder for a gram of the water that filled the mold [–].
    milliliters_per_gram: volume of that water [mL/g].
    volume_per_gram: fresh mix from a gram of powder [mL/g].

    >>> round(allowance_in_rule(1.88, 1.0029, 0.58602), 3)
    0.099
    """
    return powder_per_water * volume_per_gram / milliliters_per_gram - 1


def pieces_from(volume: float, piece: float) -> int:
    """Whole pieces that a volume of mix fills [count].

    volume: of fresh mix there is [mL].
    piece: mix that one piece takes, its allowance included [mL].

    >>> pieces_from(1280.0, 640.0), pieces_from(1279.0, 640.0)
    (2, 1)
    """
    return math.floor(volume / piece + 1e-9)
