"""Level cuts of a mesh: its triangles laid out by height, so that a cut touches only those that it goes through."""

import bisect
import math
from functools import cached_property

from brimbook.mesh.joining import Loop, Plane, loops
from brimbook.mesh.triangles import Triangles

# Into so many cells, 2 to this power, the corners are shared out by height.
_CELL_BITS = 12


class Slicer:
    """A mesh that stands, ready to be cut level at any height.

    heights: of all corners, from bottom to top; a corner's place among them is its rank.
    ranks: for each triangle the ranks of its three corners, in three lists. low, high: its lowest and highest rank.
    left_out: how many ways around sections were left out so far because the surface has holes there. doubled: did a section
    show something solid inside something solid?
    notes: what else was left out, as sentences for the maker.
    """

    def __init__(self, mesh: Triangles):
        self.mesh = mesh
        self._upright = [height for _, _, height in mesh.corners]
        order = sorted(range(len(self._upright)), key=self._upright.__getitem__)
        self.heights = [self._upright[number] for number in order]
        rank = [0] * len(order)
        for place, number in enumerate(order):
            rank[number] = place
        self.ranks = tuple([rank[number] for number in numbers] for numbers in (mesh.first, mesh.second, mesh.third))
        self.low = list(map(min, *self.ranks))
        self.high = list(map(max, *self.ranks))
        self.left_out, self.doubled, self.notes = 0, False, []
        self._shift, self._cells = max(0, len(self.heights).bit_length() - _CELL_BITS), 1 << _CELL_BITS

    @cached_property
    def _within(self) -> list[list[int]]:
        """Each triangle in the smallest cell that holds all its ranks, of cells that are halved again and again.

        Cell 1 is the whole, cells 2n and 2n + 1 are the halves of cell n.
        """
        shift, within = self._shift, [[] for _ in range(2 * self._cells)]
        cells = [(self._cells + (low >> shift)) >> ((low >> shift) ^ (high >> shift)).bit_length()
                 for low, high in zip(self.low, self.high)]
        for number, cell in enumerate(cells):
            within[cell].append(number)
        return within

    def rank_at(self, height: float, above: bool = False) -> int:
        """How many corners are below a cut [count].

        height: of the cut [unit of the file].
        above: corners just at the height are below the cut too [yes or no].
        """
        return (bisect.bisect_right if above else bisect.bisect_left)(self.heights, height)

    def crossing(self, rank: int) -> list[int]:
        """Triangles with a corner below a cut and one above it [numbers].

        rank: how many corners are below the cut [count].
        """
        if not 0 < rank < len(self.heights):
            return []
        cell, low, high, found = self._cells + (rank >> self._shift), self.low, self.high, []
        while cell:
            found += [number for number in self._within[cell] if low[number] < rank <= high[number]]
            cell >>= 1
        return found

    def contours(self, height: float, above: bool = False) -> list[Loop]:
        """Loops around the section at a height, counterclockwise around what is solid, clockwise around its holes [unit of the file].

        height: above the model's bottom [unit of the file].
        above: whether it is the section just above a level face at this height, else the one just below [yes or no].

        Corners just at the height count as above it, or with above as below it: a level face is never cut itself.
        """
        below = math.nextafter(height, math.inf) if above else height
        plane = Plane(self._upright, height, below, 0, 1)
        found, left_out = loops(self.mesh, self.crossing(self.rank_at(height, above)), plane)
        self.left_out += left_out
        return found
