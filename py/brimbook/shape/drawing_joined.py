"""Pieces of an outline that a drawing program saved one by one, joined end to end."""

from brimbook.shape.path_data import Curve, Point

# Ends that are nearer than this meet [mm].
_MEET = 0.02
# More open pieces than this are no outline but a picture.
_MOST = 5000
Row = tuple[Curve, ...]


def joined(pieces: list[Row]) -> list[tuple[Row, bool]]:
    """Pieces joined where their ends meet, and whether each row came back to its beginning [rows].

    pieces: open ones, in any order and either sense [mm].

    >>> corner = [((0.0, 0.0), (4.0, 0.0)), ((4.0, 3.0), (4.0, 0.0)), ((4.0, 3.0), (0.0, 0.0))]
    >>> [(len(row), is_closed) for row, is_closed in joined([(side,) for side in corner])]
    [(3, True)]
    """
    if len(pieces) > _MOST:
        return [(piece, False) for piece in pieces]
    ends: dict[tuple[int, int], list[int]] = {}
    for number, piece in enumerate(pieces):
        for point in (piece[0][0], piece[-1][-1]):
            ends.setdefault(_cell(point), []).append(number)
    free, rows = dict.fromkeys(range(len(pieces))), []
    while free:
        first = next(iter(free))
        del free[first]
        row = _onward(_onward(pieces[first], pieces, ends, free), pieces, ends, free, is_turned=True)
        rows.append((row, _meet(row[0][0], row[-1][-1])))
    return rows


def _onward(row: Row, pieces: list[Row], ends: dict[tuple[int, int], list[int]], free: dict[int, None], is_turned: bool = False) -> Row:
    """A row made longer at its end as far as there are pieces; turned around first if that is wished."""
    curves = list(_turned(row) if is_turned else row)
    while not _meet(curves[0][0], curves[-1][-1]):
        at = curves[-1][-1]
        number = next((each for cell in _cells(at) for each in ends.get(cell, ()) if each in free and _touches(pieces[each], at)), None)
        if number is None:
            break
        del free[number]
        piece = pieces[number] if _meet(pieces[number][0][0], at) else _turned(pieces[number])
        curves += [(at, *piece[0][1:]), *piece[1:]]
    return tuple(curves)


def _touches(piece: Row, at: Point) -> bool:
    return _meet(piece[0][0], at) or _meet(piece[-1][-1], at)


def _turned(row: Row) -> Row:
    return tuple(curve[::-1] for curve in reversed(row))


def _meet(one: Point, other: Point) -> bool:
    return abs(one[0] - other[0]) <= _MEET and abs(one[1] - other[1]) <= _MEET


def _cell(point: Point) -> tuple[int, int]:
    return round(point[0] / _MEET), round(point[1] / _MEET)


def _cells(point: Point) -> list[tuple[int, int]]:
    across, down = _cell(point)
    return [(across + right, down + below) for right in (0, -1, 1) for below in (0, -1, 1)]
