"""Meshes made by rule, whose sizes are known, and files of them."""

import math
import struct

from brimbook.mesh.triangles import Triangles


def lathe(profile, facets=48):
    """A solid turned around the upright axis: profile is a closed polygon of radius and height, counterclockwise.

    Corners on the axis are single. The result is inside its circles, as facets are.
    """
    corners, rings = [], []
    for radius, height in profile:
        count = 1 if radius == 0 else facets
        rings.append([len(corners) + number for number in range(count)])
        corners += [(radius * math.cos(2 * math.pi * number / facets), radius * math.sin(2 * math.pi * number / facets), height)
                    for number in range(count)]
    triangles = []
    for one, other in zip(rings, [*rings[1:], rings[0]]):
        for number in range(facets):
            a, b = one[number % len(one)], one[(number + 1) % len(one)]
            c, d = other[number % len(other)], other[(number + 1) % len(other)]
            triangles += [each for each in ((a, b, d), (a, d, c)) if len(set(each)) == 3]
    return made(corners, triangles)


def made(corners, triangles, unit=""):
    """A mesh from corners and triples of their numbers."""
    return Triangles(corners, *([triple[place] for triple in triangles] for place in range(3)), unit)


def triples(mesh):
    """The triangles of a mesh, as triples of numbers."""
    return list(zip(mesh.first, mesh.second, mesh.third))


def facet_share(facets):
    """Area of a circle's facets over that of the circle."""
    return facets / (2 * math.pi) * math.sin(2 * math.pi / facets)


def cylinder(radius=40.0, height=70.0, facets=48):
    return lathe([(0, 0), (radius, 0), (radius, height), (0, height)], facets)


def cup(outer=45.0, height=80.0, wall=5.0, floor=8.0, lean=0.0, facets=48):
    """A cup: outer radius at the top, less by lean at the bottom; its room is narrower by the wall all the way."""
    inner = outer - wall
    low = inner - lean * (height - floor) / height
    return lathe([(0, 0), (outer - lean, 0), (outer, height), (inner, height), (low, floor), (0, floor)], facets)


def box(wide=60.0, deep=40.0, high=50.0, at=(0.0, 0.0, 0.0)):
    x, y, z = at
    corners = [(x + i * wide, y + j * deep, z + k * high) for k in (0, 1) for j in (0, 1) for i in (0, 1)]
    return made(corners, [(0, 2, 3), (0, 3, 1), (4, 5, 7), (4, 7, 6), (0, 1, 5), (0, 5, 4), (1, 3, 7), (1, 7, 5),
                          (3, 2, 6), (3, 6, 7), (2, 0, 4), (2, 4, 6)])


def sphere(radius=30.0, facets=48, rings=24):
    return lathe([(0, -radius), *((radius * math.sin(math.pi * ring / rings), -radius * math.cos(math.pi * ring / rings))
                                  for ring in range(1, rings)), (0, radius)], facets)


def turned_over(mesh):
    """The same corners, every triangle facing the other way: as a hollow inside something, or a mesh saved inside out."""
    return Triangles(mesh.corners, mesh.first, mesh.third, mesh.second, mesh.unit)


def moved(mesh, x=0.0, y=0.0, z=0.0, by=1.0):
    return Triangles([(by * a + x, by * b + y, by * c + z) for a, b, c in mesh.corners], mesh.first, mesh.second, mesh.third, mesh.unit)


def standing(mesh, how):
    """Laid so that what was up points along another axis of the file: +z, -z, +y, -y, +x or -x."""
    lay = {"+z": lambda a, b, c: (a, b, c), "-z": lambda a, b, c: (a, -b, -c), "+y": lambda a, b, c: (a, c, -b),
           "-y": lambda a, b, c: (a, -c, b), "+x": lambda a, b, c: (c, b, -a), "-x": lambda a, b, c: (-c, b, a)}[how]
    return Triangles([lay(*corner) for corner in mesh.corners], mesh.first, mesh.second, mesh.third, mesh.unit)


def joined(*meshes):
    """Several meshes in one, not touching each other's corners."""
    corners, triangles = [], []
    for mesh in meshes:
        triangles += [tuple(number + len(corners) for number in triple) for triple in triples(mesh)]
        corners += mesh.corners
    return made(corners, triangles)


def as_stl(mesh):
    """A binary STL file."""
    parts = [b"A vessel".ljust(80), struct.pack("<I", len(mesh.first))]
    for triple in triples(mesh):
        parts.append(struct.pack("<12fH", 0, 0, 0, *(value for number in triple for value in mesh.corners[number]), 0))
    return b"".join(parts)
