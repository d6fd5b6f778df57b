"""The unit in which a file was probably drawn, where it names none."""

from collections.abc import Sequence

# Millimeters in one unit of the file. By the inch's and the foot's definitions; the others by their names.
MILLIMETERS = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8, "um": 0.001}
_NAMES = {"millimeter": "mm", "centimeter": "cm", "meter": "m", "inch": "in", "foot": "ft", "micron": "um"}
# A small vessel's or a mold's longest side [mm]. Common practice, no source.
_SMALLEST, _LARGEST = 20.0, 400.0
# The units that programs write into files without naming them, the likelier first. Common practice, no source.
_LIKELY = ("mm", "m", "in", "cm")


def short(name: str) -> str:
    """A unit's sign, or an empty text for what is none [text].

    name: a unit's sign or its name in a file [text].

    >>> short("millimeter"), short("in"), short("furlong")
    ('mm', 'in', '')
    """
    return name if name in MILLIMETERS else _NAMES.get(name.strip().lower(), "")


def guess(size: Sequence[float], unit: str) -> tuple[str, bool]:
    """The unit of a file, and whether that is sure [sign of a unit, yes or no].

    size: left to right, front to back, height [unit of the file].
    unit: the one that the file names, empty where it names none [text].

    A file that names its unit is believed. Otherwise the unit that makes the longest side that of a small vessel:
    millimeters where they do, and sure where no other unit does too. Common practice, no source.

    >>> guess((90.0, 90.0, 80.0), ""), guess((0.09, 0.09, 0.08), ""), guess((3.5, 3.5, 3.1), "")
    (('mm', True), ('m', True), ('in', False))
    >>> guess((3.5, 3.5, 3.1), "inch")
    ('in', True)
    """
    named = short(unit)
    if named:
        return named, True
    longest = max(size)
    fitting = [each for each in _LIKELY if _SMALLEST <= longest * MILLIMETERS[each] <= _LARGEST]
    if not fitting:
        return "mm", False
    return fitting[0], fitting[0] == "mm" or len(fitting) == 1
