"""Bolts by their standards: threads, washers, and what a bolt holds before it stretches for good."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.sources import Source

_INCH, _KSI = 25.4, 6.894757293168363  # mm, MPa
NUT_FACTOR = 0.20  # of a dry, plain bolt
# The share of what it holds to which a bolt is tightened: friction, and so the force, is off by a quarter and more.
TIGHTENED = 0.75


@dataclass(frozen=True)
class Standard:
    """How a standard takes the stressed area of a thread, its proof stresses [MPa], and where they were read."""

    name: str
    pitches_less: float
    proof: dict[str, float]
    source: Source


@dataclass(frozen=True)
class Thread:
    """A thread [mm], its standard, and the usual washer for it [mm]."""

    label: str
    standard: Standard
    diameter: float
    pitch: float
    washer: float
    hole: float
    washer_source: Source


METRIC = Standard("ISO 898-1", 0.9382, {
    "4.6": 225.0, "4.8": 310.0, "5.8": 380.0, "6.8": 440.0, "8.8": 580.0, "10.9": 830.0, "12.9": 970.0},
    sources.ISO_BOLTS)
INCH = Standard("SAE J429", 0.9743, {"2": 55.0 * _KSI, "5": 85.0 * _KSI, "8": 120.0 * _KSI}, sources.SAE_BOLTS)


def _metric(size: int, pitch: float, washer: float, hole: float) -> Thread:
    return Thread(f"M{size}", METRIC, float(size), pitch, washer, hole, sources.METRIC_WASHER)


def _inch(label: str, diameter: float, threads: int, washer: float, hole: float) -> Thread:
    return Thread(label, INCH, diameter * _INCH, _INCH / threads, washer * _INCH, hole * _INCH, sources.WIDE_WASHER)


THREADS = {
    "m3": _metric(3, 0.5, 7.0, 3.2), "m4": _metric(4, 0.7, 9.0, 4.3), "m5": _metric(5, 0.8, 10.0, 5.3),
    "m6": _metric(6, 1.0, 12.0, 6.4), "m8": _metric(8, 1.25, 16.0, 8.4), "m10": _metric(10, 1.5, 20.0, 10.5),
    "1/4-20": _inch("1/4-20", 0.25, 20, 0.734, 0.312), "1/4-28": _inch("1/4-28", 0.25, 28, 0.734, 0.312),
    "5/16-18": _inch("5/16-18", 0.3125, 18, 0.875, 0.375), "3/8-16": _inch("3/8-16", 0.375, 16, 1.0, 0.438),
}


def stress_area(thread: str) -> float:
    """Area of a thread that carries its load [mm²].

    thread: a key of THREADS [text].

    Source: π ÷ 4 × (d − 0.9382 p)² of ISO 898-1, d − 0.9743 p of SAE J429.

    >>> round(stress_area("m6"), 2)
    20.12
    """
    known = THREADS[thread]
    return math.pi / 4 * (known.diameter - known.standard.pitches_less * known.pitch) ** 2


def proof_load(thread: str, strength: str) -> float:
    """What a bolt holds before it stretches for good [N].

    thread: a key of THREADS [text].
    strength: property class or grade, of the thread's own standard [text].

    Raises KeyError for a class or grade that the thread's standard does not have.

    >>> round(proof_load("m6", "8.8"))
    11672
    """
    return stress_area(thread) * THREADS[thread].standard.proof[strength]


def torque(diameter: float, clamp: float) -> float:
    """Tightening torque for a clamping force, for a dry, plain bolt [N·m].

    diameter: of the thread [mm].
    clamp: force of the bolt [N].

    Source: nut factor 0.20 × diameter × force.

    >>> round(torque(5.0, 450.0), 2)
    0.45
    """
    return NUT_FACTOR * diameter * clamp / 1000
