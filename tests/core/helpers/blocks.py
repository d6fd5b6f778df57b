"""Solids built of cubes, where everything about rooms can be counted cube by cube."""

import itertools
import random

from models import made

_SIDES = ((1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1))


def cubes(wide, deep, high, at=(0, 0, 0)):
    """All cubes of a box."""
    x, y, z = at
    return {(x + i, y + j, z + k) for i in range(wide) for j in range(deep) for k in range(high)}


def solid(filled, side=1.0):
    """A closed mesh around cubes, two triangles a face, corners shared."""
    numbers, triangles = {}, []
    for cube in sorted(filled):
        for way in _SIDES:
            if tuple(map(sum, zip(cube, way))) not in filled:
                a, b, c, d = (numbers.setdefault(corner, len(numbers)) for corner in _face(cube, way))
                triangles += [(a, b, c), (a, c, d)]
    return made([(side * x, side * y, side * z) for x, y, z in numbers], triangles)


def _face(cube, way):
    axis = next(place for place in range(3) if way[place])
    one, two = (axis + 1) % 3, (axis + 2) % 3
    corners = []
    for first, second in ((0, 0), (1, 0), (1, 1), (0, 1)):
        corner = list(cube)
        corner[axis] += way[axis] > 0
        corner[one] += first
        corner[two] += second
        corners.append(tuple(corner))
    return corners if way[axis] > 0 else corners[::-1]


def is_clean(filled):
    """Do cubes, and what is between them, touch by whole faces only, never by an edge or a corner alone?"""
    reach = [range(min(cube[axis] for cube in filled) - 1, max(cube[axis] for cube in filled) + 1) for axis in range(3)]
    for x, y, z in itertools.product(*reach):
        near = {way: tuple(map(sum, zip((x, y, z), way))) in filled for way in itertools.product((0, 1), repeat=3)}
        if not (_in_one_piece([way for way in near if near[way]]) and _in_one_piece([way for way in near if not near[way]])):
            return False
    return True


def _in_one_piece(ways):
    if not ways:
        return True
    reached, left = {ways[0]}, set(ways[1:])
    while near := {way for way in left if any(sum(abs(a - b) for a, b in zip(way, other)) == 1 for other in reached)}:
        reached |= near
        left -= near
    return not left


def any_solid(seed, size=7):
    """A block that boxes were taken out of and put into, by chance; clean."""
    chance = random.Random(seed)
    while True:
        filled = cubes(size, size, size)
        for turn in range(chance.randint(2, 7)):
            at = [chance.randint(-1, size - 1) for _ in range(3)]
            box = cubes(chance.randint(1, 4), chance.randint(1, 4), size if turn % 3 == 0 else chance.randint(1, 4), at)
            filled = filled | {cube for cube in box if min(cube) >= 0 and max(cube) < size} if turn % 3 == 2 else filled - box
        if filled and is_clean(filled):
            return filled


def pools(filled):
    """By counting: floor, height where it runs over, and volume of each pool that runs over to the outside."""
    reach = [range(min(cube[axis] for cube in filled) - 1, max(cube[axis] for cube in filled) + 2) for axis in range(3)]
    found, before = [], []
    for top in reach[2]:
        air = {cube for cube in itertools.product(reach[0], reach[1], range(reach[2][0], top + 1)) if cube not in filled}
        pieces = _pieces(air)
        outside = next(piece for piece in pieces if (reach[0][0], reach[1][0], reach[2][0]) in piece)
        found += [(min(z for *_, z in piece), top, len(piece)) for piece in before if piece <= outside]
        before = [piece for piece in pieces if piece is not outside]
    return sorted(found)


def _pieces(air):
    pieces, left = [], set(air)
    while left:
        piece, edge = set(), [left.pop()]
        while edge:
            cube = edge.pop()
            piece.add(cube)
            near = {tuple(map(sum, zip(cube, way))) for way in _SIDES} & left
            left -= near
            edge += near
        pieces.append(piece)
    return pieces
