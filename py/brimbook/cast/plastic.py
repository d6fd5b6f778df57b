"""What molds are printed in: generic plastics, and what a print costs."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.sources import Source


@dataclass(frozen=True)
class Plastic:
    """A plastic; facts are leaves of the clamping topic with their texts and where each comes from."""

    label: str
    facts: dict[str, tuple[str, Source]]


OWN = "own"


def _plastic(label: str, density: tuple[str, Source], softens: tuple[str, Source], bearing: str,
             modulus: str) -> Plastic:
    return Plastic(label, {"plastic_density": density, "softens": softens, "bearing": (bearing, sources.PRINT_STRENGTH),
                           "modulus": (modulus, sources.PRINT_STRENGTH)})


PLASTICS = {
    "pla": _plastic("PLA", ("1.24 g/mL", sources.PLA), ("55 °C", sources.PLA), "8 MPa", "2500 MPa"),
    "petg": _plastic("PETG", ("1.27 g/mL", sources.PETG), ("75 °C", sources.PETG), "7 MPa", "1700 MPa"),
    "abs": _plastic("ABS", ("1.04 g/mL", sources.MEMORY), ("95 °C", sources.MEMORY), "7 MPa", "1800 MPa"),
    "pp": _plastic("Polypropylene", ("0.905 g/mL", sources.POLYPROPYLENE), ("90 °C", sources.MEMORY), "3 MPa",
                   "1000 MPa"),
    "tpu": _plastic("TPU", ("1.21 g/mL", sources.MEMORY), ("70 °C", sources.MEMORY), "1 MPa", "40 MPa"),
}


def weight(volume: float, density: float) -> float:
    """Weight of a print [g].

    volume: of the plastic in it, infill counted as printed [mL].
    density: of the plastic [g/mL].

    >>> weight(100.0, 1.24)
    124.0
    """
    return volume * density


def cost(grams: float, spool_price: float, spool_grams: float) -> float:
    """What the plastic of a print costs [currency].

    grams: of plastic [g].
    spool_price: of a full spool [currency].
    spool_grams: of plastic on a full spool [g].

    >>> cost(124.0, 25.0, 1000.0)
    3.1
    """
    return grams / spool_grams * spool_price


def filament_length(grams: float, density: float, diameter: float) -> float:
    """Length of the filament in a print [m].

    grams: of plastic [g].
    density: of the plastic [g/mL].
    diameter: of the filament [mm].

    >>> round(filament_length(1000.0, 1.24, 1.75), 1)
    335.3
    """
    return grams / density / (math.pi / 4 * diameter**2)
