"""Corners that are the same share one number."""

import itertools
from collections import defaultdict
from collections.abc import Callable, Generator, Iterable, Sequence

from brimbook.mesh.limits import check_places
from brimbook.mesh.triangles import Corner, ModelError, Progress, Triangles

_STEP = 100_000
_SAYS = "Joining corners"


def numbering() -> defaultdict:
    """Gives each key that it is asked for a number of its own, from 0 up in the order of asking [numbers by key]."""
    return defaultdict(itertools.count().__next__)


def floats(texts: Iterable[bytes | str]) -> list[float]:
    """What numbers of a file say [unit of the file].

    texts: each one number, with a decimal point [text].

    >>> floats([b"1.5", b"-2e-1"])
    [1.5, -0.2]
    """
    kept = list(texts)
    try:
        return list(map(float, kept))
    except ValueError:
        raise ModelError(_wrong(float, kept, "a number such as 12.5, with a point")) from None


def whole_numbers(texts: Iterable[bytes | str]) -> list[int]:
    """What whole numbers of a file say [numbers].

    texts: each one number [text].

    >>> whole_numbers(["12", "-1"])
    [12, -1]
    """
    kept = list(texts)
    try:
        return list(map(int, kept))
    except ValueError:
        raise ModelError(_wrong(int, kept, "a whole number such as 12")) from None


def shared(corners: Sequence[Corner], columns: Sequence[Sequence[int]], unit: str = "",
           notes: tuple[str, ...] = ()) -> Generator[Progress, None, Triangles]:
    """The mesh in which corners at the same place are one [steps, then the mesh].

    corners: as the file has them [unit of the file].
    columns: numbers of the triangles' first, second and third corners [numbers].
    unit: as the file names it, or empty [text].
    notes: what was left out [sentences].
    """
    if not columns[0]:
        raise ModelError("There are no triangles in this file. Save the model itself, as a mesh.")
    yield 0.9, _SAYS
    check_places(corners)
    numbers, anew = numbering(), []
    for begin in range(0, len(corners), _STEP):
        anew += map(numbers.__getitem__, corners[begin:begin + _STEP])
        yield 0.9 + 0.05 * begin / len(corners), _SAYS
    if len(numbers) < len(corners):
        columns = [list(map(anew.__getitem__, column)) for column in columns]
    yield 1.0, _SAYS
    # Adding 0 turns a minus 0 into 0.
    return Triangles([(x + 0.0, y + 0.0, z + 0.0) for x, y, z in numbers], *columns, unit, notes)


def _wrong(kind: Callable[[bytes | str], float], texts: Sequence[bytes | str], right: str) -> str:
    for text in texts:
        try:
            kind(text)
        except ValueError:
            break
    shown = (text if isinstance(text, str) else text.decode("utf-8", "replace"))[:20]
    return f"In this file “{shown}” stands where {right}, belongs. Save the file again."
