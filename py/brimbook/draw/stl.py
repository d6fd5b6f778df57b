"""Solids as a text file for a 3D printer: STL in ASCII, in mm."""

import math
import re

from brimbook.shape.prism import Corner


def stl(name: str, faces: list[tuple[Corner, Corner, Corner]]) -> str:
    """Triangles as STL [text].

    name: of the solid; only its letters and digits are kept [text].
    faces: counterclockwise as seen from outside [mm].

    >>> print(stl("bar 1", [((0, 0, 0), (4, 0, 0), (0, 3, 0))]).splitlines()[1])
      facet normal 0.000000 0.000000 1.000000
    """
    plain = "_".join(re.findall("[A-Za-z0-9]+", name))
    return "\n".join([f"solid {plain}", *(_facet(face) for face in faces), f"endsolid {plain}", ""])


def _facet(face: tuple[Corner, Corner, Corner]) -> str:
    corners = "\n".join(f"      vertex {_three(corner)}" for corner in face)
    return f"  facet normal {_three(_normal(face))}\n    outer loop\n{corners}\n    endloop\n  endfacet"


def _normal(face: tuple[Corner, Corner, Corner]) -> Corner:
    (a, b, c), (d, e, f) = ([high - low for low, high in zip(face[0], corner)] for corner in face[1:])
    across = (b * f - c * e, c * d - a * f, a * e - b * d)
    length = math.hypot(*across)
    return tuple(part / length for part in across)


def _three(numbers: Corner) -> str:
    return " ".join(f"{number + 0.0:.6f}" for number in (round(each, 6) for each in numbers))
