"""A mesh as it comes from a file: corners, and triangles between them."""

from collections.abc import Sequence
from dataclasses import dataclass

Corner = tuple[float, float, float]
# So much of the work that is done, 0 to 1, and what is being done, as work on a large mesh tells it.
Progress = tuple[float, str]


class ModelError(ValueError):
    """A file that can't be used: its message is a sentence for the maker."""


@dataclass(frozen=True)
class Triangles:
    """Corners [unit of the file], and for each triangle the numbers of its three corners, counterclockwise from outside.

    unit is the one that the file names, or empty where it names none. notes tell what was left out or taken apart
    while reading, as sentences for the maker.
    """

    corners: Sequence[Corner]
    first: Sequence[int]
    second: Sequence[int]
    third: Sequence[int]
    unit: str = ""
    notes: tuple[str, ...] = ()
