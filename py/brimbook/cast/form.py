"""A mold full of fresh mix: the pressure of a liquid, the forces it makes, and how a seam stays shut."""

import math

GRAVITY = 9.80665  # m/s²
# A seam closed by one bolt turns about it.
LEAST_BOLTS = 2


def pressure(density: float, depth: float) -> float:
    """Pressure of a fresh mix that pours, at a depth below its surface [kPa].

    density: of the fresh mix [g/mL].
    depth: below the surface [mm].

    Source: full liquid head, ACI 347 for mixes too fluid for its wall formulas.

    >>> round(pressure(2.2, 150.0), 4)
    3.2362
    """
    return density * GRAVITY * depth / 1000


def side_force(density: float, width: float, depth: float) -> float:
    """Force of a fresh mix on an upright face, which is also what pushes two halves of a mold apart [N].

    density: of the fresh mix [g/mL].
    width: of the face, or of the mold as it is seen square to its seam [mm].
    depth: of the mix [mm].

    Source: hydrostatics, half the pressure at the bottom over the whole face.

    >>> round(side_force(2.2, 80.0, 150.0), 3)
    19.417
    """
    return pressure(density, depth) / 1000 * width * depth / 2


def force_height(depth: float) -> float:
    """How far above the bottom the force on an upright face acts [mm].

    depth: of the mix [mm].

    >>> force_height(150.0)
    50.0
    """
    return depth / 3


def uplift(density: float, core_volume: float, core_weight: float = 0.0) -> float:
    """Force that lifts a core out of the mix; below zero it stays down by itself [N].

    density: of the fresh mix [g/mL].
    core_volume: the part of the core that is in the mix [mL].
    core_weight: of the core itself [g].

    Source: Archimedes' principle.

    >>> round(uplift(2.2, 200.0), 3), round(uplift(2.2, 200.0, 440.0), 3)
    (4.315, 0.0)
    """
    return (density * core_volume - core_weight) * GRAVITY / 1000


def bearing_force(stress: float, outside: float, hole: float) -> float:
    """Force that a washer may press on a flange [N].

    stress: that the flange may bear [MPa].
    outside: diameter of the washer [mm].
    hole: diameter of the hole under it [mm].

    >>> round(bearing_force(8.0, 10.0, 5.3), 1)
    451.8
    """
    return stress * math.pi / 4 * (outside**2 - hole**2)


def stiffness_of_flange(modulus: float, width: float, thickness: float) -> float:
    """Bending stiffness E I of a flange along its seam [N·mm²].

    modulus: of elasticity of the plastic [MPa].
    width: of the flange, away from the mold [mm].
    thickness: of the flange, along the bolt [mm].

    >>> stiffness_of_flange(2000.0, 15.0, 8.0)
    1280000.0
    """
    return modulus * width * thickness**3 / 12


def seam_load(density: float, width: float, depth: float, seams: float) -> float:
    """What pulls on one millimeter of a seam at the bottom of the mold, where it is most [N/mm].

    density: of the fresh mix [g/mL].
    width: of the mold as it is seen square to its seam [mm].
    depth: of the mix [mm].
    seams: upright seams that share the load [count].

    >>> round(seam_load(2.2, 80.0, 150.0, 2), 4)
    0.1294
    """
    return pressure(density, depth) / 1000 * width / seams


def seam_opening(load: float, spacing: float, stiffness: float) -> float:
    """How far a seam opens midway between two bolts, as both of its flanges bend [mm].

    load: on one millimeter of the seam [N/mm].
    spacing: of the bolts [mm].
    stiffness: E I of one flange [N·mm²].

    Source: beam fixed at both ends under an even load, w L⁴ ÷ (384 E I), for each flange.

    >>> round(seam_opening(0.1294, 200.0, 1.28e6), 3)
    0.842
    """
    return 2 * load * spacing**4 / (384 * stiffness)


def spacing_for_opening(load: float, opening: float, stiffness: float) -> float:
    """How far apart bolts may stand for a seam to open no more than so far [mm].

    load: on one millimeter of the seam [N/mm].
    opening: of the seam midway between two bolts [mm].
    stiffness: E I of one flange [N·mm²].

    Source: the same beam as in seam_opening.

    >>> round(spacing_for_opening(0.1294, 0.1, 1.28e6), 1)
    117.4
    """
    return (opening * 384 * stiffness / (2 * load)) ** 0.25


def bolts_a_seam(by_force: float, by_spacing: float) -> int:
    """Bolts in one seam: enough for the force, close enough for the flange, and never fewer than two [count].

    by_force: bolts that the force alone needs in a seam [–].
    by_spacing: bolts from end to end of a seam at their widest spacing [–].

    >>> bolts_a_seam(0.4, 1.6), bolts_a_seam(2.1, 1.6), bolts_a_seam(0.4, 4.0)
    (2, 3, 4)
    """
    return max(LEAST_BOLTS, *(math.ceil(each - 1e-9) for each in (by_force, by_spacing)))
