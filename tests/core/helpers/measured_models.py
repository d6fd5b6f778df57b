"""Meshes measured to the end, meshes spoiled in known ways, and families of them made from a seed."""

import math
import random

import models

from brimbook.mesh import bodies, edges, levels, mend, stand, weld
from brimbook.mesh.triangles import Triangles


def run(steps):
    """What a reading function returns; what it tells on the way must be shares and words."""
    while True:
        try:
            share, says = next(steps)
            assert 0 <= share <= 1 and says
        except StopIteration as end:
            return end.value


def measured(mesh, up="+z"):
    """Welded, stood and mended; its edges and bodies."""
    stood = stand.stood(run(weld.welded(mesh)), up)
    found = run(edges.check(stood))
    return found, run(bodies.bodies(mend.mended(stood, found)))


def levels_of(mesh):
    return run(levels.solid_levels(stand.stood(mesh, "+z")))


def without(mesh, numbers):
    """The same mesh with some triangles missing."""
    return models.made(mesh.corners, [triple for number, triple in enumerate(models.triples(mesh)) if number not in numbers])


def flipped(mesh, numbers):
    """The same mesh with some triangles facing the other way."""
    return models.made(mesh.corners, [triple[::-1] if number in numbers else triple for number, triple in enumerate(models.triples(mesh))])


def doubled(mesh, numbers):
    """The same mesh with some triangles there twice."""
    triples = models.triples(mesh)
    return models.made(mesh.corners, triples + [triples[number] for number in numbers])


def loose(mesh):
    """Each triangle with corners of its own, as some files have them."""
    corners = [mesh.corners[number] for triple in models.triples(mesh) for number in triple]
    return models.made(corners, [(place, place + 1, place + 2) for place in range(0, len(corners), 3)])


def rotated(mesh, x, y, z):
    """Turned around the three axes, one after the other, in radians."""
    def turn(a, b, angle):
        return a * math.cos(angle) - b * math.sin(angle), a * math.sin(angle) + b * math.cos(angle)
    corners = []
    for left, front, up in mesh.corners:
        front, up = turn(front, up, x)
        up, left = turn(up, left, y)
        left, front = turn(left, front, z)
        corners.append((left, front, up))
    return Triangles(corners, mesh.first, mesh.second, mesh.third, mesh.unit)


def torus(middle=40.0, tube=12.0, facets=32, around=16):
    angles = [2 * math.pi * step / around for step in range(around)]
    return models.lathe([(middle + tube * math.cos(angle), tube * math.sin(angle)) for angle in angles], facets)


def grown(seed):
    """A mesh by chance: lathes and boxes, alone or several apart, turned any way, far from or near to the middle."""
    chance = random.Random(seed)
    kinds = [
        lambda: models.cup(chance.uniform(30, 60), chance.uniform(40, 120), chance.uniform(2, 9), chance.uniform(3, 12),
                           chance.uniform(0, 15), chance.choice([3, 7, 24, 48])),
        lambda: models.box(chance.uniform(5, 90), chance.uniform(5, 90), chance.uniform(5, 90)),
        lambda: models.sphere(chance.uniform(5, 60), chance.choice([5, 12, 40]), chance.choice([4, 9, 20])),
        lambda: models.cylinder(chance.uniform(5, 60), chance.uniform(5, 90), chance.choice([3, 8, 60])),
        lambda: torus(chance.uniform(30, 60), chance.uniform(3, 25), chance.choice([5, 30]), chance.choice([3, 12])),
    ]
    parts = [models.moved(chance.choice(kinds)(), x=300 * number) for number in range(chance.choice([1, 1, 1, 2, 3]))]
    mesh = models.joined(*parts) if len(parts) > 1 else parts[0]
    if chance.random() < 0.6:
        mesh = rotated(mesh, *(chance.uniform(0, 6.3) for _ in range(3)))
    return models.moved(mesh, *(chance.choice([0, 1, 500]) * chance.uniform(-1, 1) for _ in range(3)), by=chance.choice([1, 1, 0.02, 30]))


def spoiled(seed):
    """A grown mesh with triangles missing, flipped or doubled."""
    chance = random.Random(seed)
    mesh = grown(seed)
    some = set(chance.sample(range(len(mesh.first)), chance.randint(1, max(1, len(mesh.first) // 20))))
    return chance.choice([without, flipped, doubled])(mesh, some)
