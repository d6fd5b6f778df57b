"""Triangles of an OBJ file."""

import re
from collections.abc import Generator, Iterator, Sequence
from itertools import accumulate, chain

from brimbook.mesh import faces
from brimbook.mesh.corners import floats, shared, whole_numbers
from brimbook.mesh.limits import check_corners, check_places, check_triangles
from brimbook.mesh.triangles import ModelError, Progress, Triangles

_PIECE = 400_000
_LONGEST_LINE = 2_000_000
_LINE = re.compile(rb"^[ \t]*+([vf])[ \t]++([^\n]*+)", re.MULTILINE)
_FREE_FORM = re.compile(rb"^[ \t]*+(?:cstype|surf|curv2?|bzp|bsp|cdc|cdp)[ \t]", re.MULTILINE)
# Of 7/2/5 only the corner counts, not its texture and normal.
_MORE = re.compile(rb"/[^\s]*+")
_GOES_ON = re.compile(rb"\\(?:\r\n|\r|\n)")
_SAYS = "Reading triangles"
_STEP = 10_000
_LOOKS = 200_000


def is_obj(data: bytes) -> bool:
    """Whether a text has lines that belong in an OBJ file [yes or no].

    data: the file [bytes].
    """
    return any(found(data) for found in (_LINE.search, _FREE_FORM.search)) or _LINE.search(data.replace(b"\r", b"\n")) is not None


class _Reading:
    """What was read so far: corners, columns of triangles, and faces with more corners."""

    def __init__(self) -> None:
        self.corners: list[tuple[float, ...]] = []
        self.columns: tuple[list[int], ...] = ([], [], [])
        self.larger: list[tuple[int, ...]] = []
        self.triangles = 0

    def take(self, lines: list[tuple[bytes, bytes]]) -> None:
        """Adds the corners and faces of some lines [nothing].

        lines: the word that begins each, and the rest of it [text].
        """
        places = [rest for kind, rest in lines if kind == b"v"]
        rims = [_MORE.sub(b"", rest) for kind, rest in lines if kind == b"f"]
        before = None
        if any(b"-" in rim for rim in rims):
            counts = accumulate((kind == b"v" for kind, _ in lines), initial=len(self.corners))
            before = [count for count, (kind, _) in zip(counts, lines) if kind == b"f"]
        self._take_corners(places)
        self._take_faces([rim.partition(b"#")[0].split() for rim in rims], before)
        check_corners(len(self.corners))
        check_triangles(self.triangles)

    def _take_corners(self, places: list[bytes]) -> None:
        parts = [place.split(None, 3)[:3] for place in places]
        if any(len(part) < 3 for part in parts):
            raise ModelError("A corner in this OBJ file has fewer than three numbers. Save the file again.")
        values = iter(floats(chain.from_iterable(parts)))
        self.corners += zip(values, values, values)

    def _take_faces(self, rims: list[list[bytes]], before: Sequence[int] | None) -> None:
        lengths = list(map(len, rims))
        if any(length < 3 for length in lengths):
            raise ModelError("A face in this OBJ file has fewer than three corners. Save the file again.")
        numbers = [number - 1 for number in whole_numbers(chain.from_iterable(rims))]
        if before is not None:
            backward = chain.from_iterable([count] * length for count, length in zip(before, lengths))
            numbers = [number if number >= 0 else _counted_back(number, count) for number, count in zip(numbers, backward)]
        if all(length == 3 for length in lengths):
            self._take_triangles(numbers)
        else:
            self._take_mixed(numbers, lengths)
        self.triangles += len(numbers) - 2 * len(lengths)

    def _take_triangles(self, numbers: list[int]) -> None:
        for place, column in enumerate(self.columns):
            column += numbers[place::3]

    def _take_mixed(self, numbers: list[int], lengths: list[int]) -> None:
        ends = list(accumulate(lengths))
        cut = [tuple(numbers[end - length:end]) for end, length in zip(ends, lengths)]
        self._take_triangles(list(chain.from_iterable(face for face in cut if len(face) == 3)))
        self.larger += [face for face in cut if len(face) > 3]


def read(data: bytes) -> Generator[Progress, None, Triangles]:
    """Reads an OBJ file: corners and faces, whatever groups they are in [steps, then the mesh].

    data: the file [bytes].
    """
    reading = _Reading()
    for end, piece in _pieces(data):
        if _FREE_FORM.search(piece):
            raise ModelError("This OBJ file holds free-form curves or surfaces. Save it as a mesh of triangles, as STL, 3MF or OBJ.")
        reading.take(_LINE.findall(piece))
        yield 0.6 * end / len(data), _SAYS
    _check_numbers([*reading.columns, chain.from_iterable(reading.larger)], len(reading.corners))
    check_places(reading.corners)
    yield from _take_apart(reading)
    notes = ()
    if reading.larger:
        notes = (f"{len(reading.larger):,} faces with more than three corners were taken apart into triangles.",)
    return (yield from shared(reading.corners, reading.columns, notes=notes))


def _pieces(data: bytes) -> Iterator[tuple[int, bytes]]:
    """Where each piece ends, and its text: whole lines, those that go on in the next one joined."""
    rest, begin = b"", 0
    while begin < len(data):
        end = min(begin + _PIECE, len(data))
        # A line end of two letters is not taken apart.
        end += data[end - 1:end + 1] == b"\r\n"
        piece = _GOES_ON.sub(b" ", rest + data[begin:end]).replace(b"\r", b"\n")
        last = piece.rfind(b"\n") + 1 if end < len(data) else len(piece)
        piece, rest, begin = piece[:last], piece[last:], end
        if len(rest) > _LONGEST_LINE:
            raise ModelError("A line in this OBJ file is far too long. Save the file again.")
        yield end, piece


def _counted_back(number: int, count: int) -> int:
    """A number that counts backward from the newest corner; it was lessened by one already."""
    if number == -1 or number + 1 + count < 0:
        raise ModelError(_OUTSIDE)
    return number + 1 + count


_OUTSIDE = "A face in this OBJ file names a corner that is not there. The file is damaged: save or copy it again."


def _check_numbers(columns: Sequence[Iterator[int] | list[int]], count: int) -> None:
    for column in columns:
        kept = list(column)
        if kept and not 0 <= min(kept) <= max(kept) < count:
            raise ModelError(_OUTSIDE)


def _take_apart(reading: _Reading) -> Generator[Progress, None, None]:
    looks = told = 0
    for place, face in enumerate(reading.larger):
        triples, took = faces.apart(face, reading.corners)
        looks += took
        faces.check_looks(looks)
        for column, numbers in zip(reading.columns, zip(*triples)):
            column += numbers
        if place % _STEP == 0 or looks - told > _LOOKS:
            told = looks
            yield 0.6 + 0.3 * place / len(reading.larger), "Taking faces apart into triangles"
