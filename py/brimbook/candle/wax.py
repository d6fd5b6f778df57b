"""Wax, fragrance and dye that together come to the line; fragrance load on both bases."""

import math


def load_of_blend(load_of_wax: float, dye: float = 0.0) -> float:
    """Fragrance load told of the blend, from the load told of the wax [–].

    load_of_wax: grams of fragrance for a gram of wax [–].
    dye: grams of dye for a gram of wax, part of the blend too [–].

    >>> round(load_of_blend(0.10), 6)
    0.090909
    """
    return load_of_wax / (1 + load_of_wax + dye)


def load_of_wax(load_of_blend: float, dye: float = 0.0) -> float:
    """Fragrance load told of the wax, from the load told of the whole blend [–].

    load_of_blend: grams of fragrance in a gram of wax, fragrance and dye together [–].
    dye: grams of dye for a gram of wax [–].

    >>> round(load_of_wax(0.10), 6)
    0.111111
    """
    return load_of_blend * (1 + dye) / (1 - load_of_blend)


def volume_per_gram_of_wax(wax_density: float, fragrance_density: float, load_of_wax: float, dye: float = 0.0) -> float:
    """Blend that one gram of wax makes with its fragrance and dye [mL/g].

    wax_density: as poured or as set, whichever the line is for [g/mL].
    fragrance_density: of the fragrance oil [g/mL].
    load_of_wax: grams of fragrance for a gram of wax [–].
    dye: grams of dye for a gram of wax; it takes room like wax [–].

    Volumes are taken to add up, which for oils in wax is good to a fraction of a percent
    (from memory).

    >>> round(volume_per_gram_of_wax(0.86, 1.0, 0.06), 4)
    1.2228
    """
    return (1 + dye) / wax_density + load_of_wax / fragrance_density


def blend_density(volume_per_gram: float, load_of_wax: float, dye: float = 0.0) -> float:
    """Density of the whole blend [g/mL].

    volume_per_gram: blend from a gram of wax, hot or set [mL/g].
    load_of_wax: grams of fragrance for a gram of wax [–].
    dye: grams of dye for a gram of wax [–].

    >>> round(blend_density(1.2228, 0.06), 4)
    0.8669
    """
    return (1 + load_of_wax + dye) / volume_per_gram


def wax_for_volume(volume: float, volume_per_gram: float) -> float:
    """Wax that comes to the line together with its fragrance and dye [g].

    volume: to the line [mL].
    volume_per_gram: blend from a gram of wax [mL/g].

    >>> round(wax_for_volume(122.28, 1.2228), 6)
    100.0
    """
    return volume / volume_per_gram


def wax_by_rule(water: float, wax_per_water: float) -> float:
    """Wax by the maker's rule of thumb [g].

    water: what the water to the line weighed [g].
    wax_per_water: grams of wax for a gram of that water [–].

    >>> wax_by_rule(300.0, 0.834)
    250.2
    """
    return water * wax_per_water


def density_behind_rule(wax_per_water: float, milliliters_per_gram: float, fragrance_density: float, load_of_wax: float,
                        dye: float = 0.0) -> float:
    """The wax density for which a rule of thumb comes to the line, fragrance and dye included [g/mL].

    wax_per_water: grams of wax for a gram of the water to the line [–].
    milliliters_per_gram: volume of that water [mL/g].
    fragrance_density: of the fragrance oil [g/mL].
    load_of_wax: grams of fragrance for a gram of wax [–].
    dye: grams of dye for a gram of wax [–].

    Without fragrance it is the rule itself told per milliliter. Infinite where the
    fragrance alone would fill the well, so that no wax fits.

    >>> round(density_behind_rule(0.834, 1.0029, 1.0, 0.0), 4), round(density_behind_rule(0.834, 1.0029, 1.0, 0.06), 3)
    (0.8316, 0.875)
    """
    room_for_wax = milliliters_per_gram / wax_per_water - load_of_wax / fragrance_density
    return (1 + dye) / room_for_wax if room_for_wax > 0 else math.inf


def sink(volume: float, poured_density: float, set_density: float) -> float:
    """How much the wax loses between poured and set [mL].

    volume: hot wax poured [mL].
    poured_density: hot [g/mL].
    set_density: cold [g/mL].

    The mass stays; only the density changes.

    >>> round(sink(100.0, 0.847, 0.9408), 2)
    9.97
    """
    return volume * (1 - poured_density / set_density)
