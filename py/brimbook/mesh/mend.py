"""A mesh made closed for measuring: triangles that face the wrong way turned, gaps closed from their middles."""

import math
from dataclasses import replace

from brimbook.mesh.edges import Edges
from brimbook.mesh.triangles import Corner, Triangles


def mended(mesh: Triangles, found: Edges) -> Triangles:
    """The mesh as it can be measured; what was turned is told in its notes, gaps are told by the edges [triangles].

    mesh: welded [triangles].
    found: what its edges tell [edges].

    A gap is closed by triangles between its edge and the middle of the edge's corners: flat where the edge is.
    """
    if found.astray:
        mesh = _turned(mesh, found.astray)
    return _closed(mesh, found.loops) if found.loops else mesh


def _turned(mesh: Triangles, astray: tuple[int, ...]) -> Triangles:
    second, third = list(mesh.second), list(mesh.third)
    for number in astray:
        second[number], third[number] = third[number], second[number]
    note = ("1 triangle faced the wrong way; it was turned." if len(astray) == 1 else
            f"{len(astray):,} triangles faced the wrong way; they were turned.")
    return replace(mesh, second=second, third=third, notes=(*mesh.notes, note))


def _closed(mesh: Triangles, loops: tuple[tuple[int, ...], ...]) -> Triangles:
    corners, triangles = list(mesh.corners), []
    for loop in loops:
        if len(loop) == 3:
            triangles.append(loop)
        elif len(loop) > 3:
            middle = len(corners)
            corners.append(_middle([corners[corner] for corner in loop]))
            triangles += [(start, end, middle) for start, end in zip(loop, (*loop[1:], loop[0]))]
    return replace(mesh, corners=corners, first=[*mesh.first, *(triple[0] for triple in triangles)],
                   second=[*mesh.second, *(triple[1] for triple in triangles)], third=[*mesh.third, *(triple[2] for triple in triangles)])


def _middle(places: list[Corner]) -> Corner:
    return tuple(math.fsum(axis) / len(places) for axis in zip(*places))
