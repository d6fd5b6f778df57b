"""How a model stands: turned so that the chosen axis of its file points up, and moved to the left, front and bottom of 0."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import repeat
from operator import neg, sub

from brimbook.mesh.model import UPS
from brimbook.mesh.triangles import ModelError, Triangles
from brimbook.mesh.volumes import columns

# For each way up: the axes of the file that run to the right, to the back and up, and which of them run the other way.
_TURNS = {
    "+z": ((0, 1), (1, 1), (2, 1)), "-z": ((0, 1), (1, -1), (2, -1)), "+y": ((0, 1), (2, -1), (1, 1)),
    "-y": ((0, 1), (2, 1), (1, -1)), "+x": ((2, -1), (1, 1), (0, 1)), "-x": ((2, 1), (1, 1), (0, -1)),
}


def stood(mesh: Triangles, up: str) -> Triangles:
    """A mesh turned and moved so that its bounding box begins at 0, 0, 0; never mirrored [triangles].

    mesh: as in the file, all its corners used [triangles].
    up: the axis of the file that shall point up [one of UPS].

    Raises ModelError.

    >>> stood(Triangles([(0, 0, 0), (4, 2, 0), (0, 2, 3)], [0], [1], [2]), "+y").corners
    [(0, 3, 0), (4, 3, 2), (0, 0, 2)]
    """
    if up not in UPS:
        raise ModelError(f"A model stands on one of its six sides; the axis that points up is one of {', '.join(UPS)}.")
    if not len(mesh.corners):
        return mesh
    axes = columns(mesh)
    return replace(mesh, corners=list(zip(*(_from_zero(axes[axis], way) for axis, way in _TURNS[up]))))


def _from_zero(values: Sequence[float], way: int) -> list[float]:
    if way < 0:
        values = list(map(neg, values))
    return list(map(sub, values, repeat(min(values))))
