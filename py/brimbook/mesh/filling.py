"""How much liquid stands on a part of a mesh's surface, up to any height, exactly.

Over each triangle stands an upright column up to the liquid's level; columns over triangles that face down count off.
A triangle's column is its area seen from above times the mean of what the level is above it, where it is above it at all.
"""

import math
from array import array
from collections.abc import Sequence
from itertools import accumulate

from brimbook.mesh.model import Level
from brimbook.mesh.slices import Slicer


class Filling:
    """The liquid over some triangles of a mesh.

    flat: for each triangle of the mesh its area seen from above, below 0 if it faces down, 0 for those not of the part.
    """

    def __init__(self, slicer: Slicer, triangles: Sequence[int]):
        self._slicer = slicer
        self.flat = array("d", bytes(8 * len(slicer.low)))
        areas, middles = [0.0] * len(slicer.heights), [0.0] * len(slicer.heights)
        mesh, high = slicer.mesh, slicer.high
        corners, first, second, third = mesh.corners, mesh.first, mesh.second, mesh.third
        for number in triangles:
            (ax, ay, az), (bx, by, bz), (cx, cy, cz) = corners[first[number]], corners[second[number]], corners[third[number]]
            flat = ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2
            self.flat[number] = flat
            rank = high[number]
            areas[rank] += flat
            middles[rank] += flat * (az + bz + cz) / 3
        self._areas = [0.0, *accumulate(areas)]
        self._middles = [0.0, *accumulate(middles)]

    def at(self, height: float) -> Level:
        """What stands below a height, and how large its surface is just below and just above [level].

        height: above the model's bottom [unit of the file].
        """
        volume, below = self._up_to(height, self._slicer.rank_at(height))
        rank = self._slicer.rank_at(height, True)
        above = below if rank == self._slicer.rank_at(height) else self._up_to(height, rank)[1]
        return Level(height, volume, below, above)

    def volume(self, height: float) -> float:
        """What stands below a height [unit of the file³].

        height: above the model's bottom [unit of the file].
        """
        return self._up_to(height, self._slicer.rank_at(height))[0]

    def _up_to(self, height: float, rank: int) -> tuple[float, float]:
        slicer, heights = self._slicer, self._slicer.heights
        volume, area = height * self._areas[rank] - self._middles[rank], self._areas[rank]
        one, two, three = slicer.ranks
        for number in slicer.crossing(rank):
            flat = self.flat[number]
            if flat:
                low, high = slicer.low[number], slicer.high[number]
                middle = one[number] + two[number] + three[number] - low - high
                share, lying = _share(height, heights[low], heights[middle], heights[high])
                volume += flat * lying
                area += flat * share
        return volume, area


def standing(slicer: Slicer, triangles: Sequence[int], height: float) -> float:
    """What stands over some triangles below a height [unit of the file³].

    slicer: the mesh [mesh].
    triangles: their numbers [numbers].
    height: above the model's bottom [unit of the file].
    """
    mesh, corners = slicer.mesh, slicer.mesh.corners
    first, second, third = mesh.first, mesh.second, mesh.third
    columns = []
    for number in triangles:
        (ax, ay, az), (bx, by, bz), (cx, cy, cz) = corners[first[number]], corners[second[number]], corners[third[number]]
        flat = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)
        if flat:
            low, middle, high = (az, bz, cz) if az <= bz <= cz else sorted((az, bz, cz))
            columns.append(flat * (height - (low + middle + high) / 3 if high <= height else _share(height, low, middle, high)[1]))
    return math.fsum(columns) / 2


def wetted(slicer: Slicer, triangles: Sequence[int], sizes: Sequence[float], height: float) -> float:
    """Area of some triangles as far as they lie below a height [unit of the file²].

    slicer: the mesh [mesh].
    triangles: their numbers [numbers].
    sizes: the area of each triangle of the mesh [unit of the file²].
    height: above the model's bottom [unit of the file].
    """
    rank, low, high, heights = slicer.rank_at(height), slicer.low, slicer.high, slicer.heights
    whole = [sizes[number] for number in triangles if high[number] < rank]
    one, two, three = slicer.ranks
    parts = [sizes[number] * _share(height, heights[low[number]], heights[one[number] + two[number] + three[number] - low[number] - high[number]],
                                    heights[high[number]])[0] for number in triangles if high[number] >= rank]
    return math.fsum((*whole, *parts))


def _share(height: float, low: float, middle: float, high: float) -> tuple[float, float]:
    """Of a triangle that a level crosses: the share of it below the level, and the mean of what the level is above it."""
    if height <= low:
        return 0.0, 0.0
    if height >= high:
        return 1.0, height - (low + middle + high) / 3
    if height <= middle:
        share = (height - low) * (height - low) / ((middle - low) * (high - low))
        return share, share * (height - low) / 3
    missing = (high - height) * (high - height) / ((high - middle) * (high - low))
    return 1 - missing, height - (low + middle + high) / 3 + missing * (high - height) / 3
