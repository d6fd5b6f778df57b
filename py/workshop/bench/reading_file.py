"""A made-up file: a cup with a room, bumpy all over, as a binary STL."""

import math
import struct

_WALL = 4.0


def bumpy_cup(count: int) -> bytes:
    """A closed cup of about so many triangles, some 90 mm wide and 80 mm high."""
    facets = round(math.sqrt(count / 2))
    rows = count // (2 * facets)
    outside = rows // 2
    inside = rows - outside - 6
    profile = [(30.0, 0.0)]
    profile += [(40 + 5 * step / outside + 0.4 * math.sin(80 * step / outside), 80 * step / outside) for step in range(1, outside + 1)]
    profile += [(40 - _WALL + 5 * (1 - step / inside) - 0.2 * math.sin(40 * step / inside), 80 - 72 * step / inside)
                for step in range(inside)]
    profile += [(25.0, 8.0)]
    around = [(math.cos(turn) * (1 + 0.01 * math.sin(7 * turn)), math.sin(turn) * (1 + 0.01 * math.sin(7 * turn)))
              for turn in (2 * math.pi * facet / facets for facet in range(facets))]
    rings = [[struct.pack("<3f", radius * x, radius * y, height) for x, y in around] for radius, height in profile]
    rings = [[struct.pack("<3f", 0, 0, 0)] * facets, *rings, [struct.pack("<3f", 0, 0, 8)] * facets]
    triangles = [triangle for one, other in zip(rings, rings[1:]) for facet in range(facets)
                 for triangle in _pair(one[facet], one[facet - facets + 1], other[facet], other[facet - facets + 1])]
    return b"made up".ljust(80) + struct.pack("<I", len(triangles)) + b"".join(triangles)


def _pair(a: bytes, b: bytes, c: bytes, d: bytes) -> list[bytes]:
    """The two triangles between two rings, without one that has no area."""
    normal, color = bytes(12), bytes(2)
    return [normal + b"".join(each) + color for each in ((a, b, d), (a, d, c)) if len(set(each)) == 3]
