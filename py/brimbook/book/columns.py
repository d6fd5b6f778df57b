"""The leaves of many records as columns: each place of a record that holds a text is one."""

import json
import re
from collections.abc import Iterable
from itertools import repeat
from operator import itemgetter
from typing import Any

from brimbook.record.fields import LEAVES

_FIRST = ("id", "name", "made_on", "notes")
_NUMBER = re.compile(r"(?<![^.])[0-9]+(?![^.])")
_RANKS = {path: rank for rank, path in enumerate((*_FIRST, *(path for path in LEAVES if path not in _FIRST)))}
_UNKNOWN = len(_RANKS)
# A name that holds a dot must not pass for a path of its own.
_DOT = "\u2024"


class _Place:
    """A part of the records that has branches: the columns of its leaves, and the parts below."""

    __slots__ = ("path", "leaves", "below")

    def __init__(self, path: str):
        self.path, self.leaves, self.below = path, {}, {}


class Columns:
    """Columns found so far, each by the path of its leaf; a record that has leaves elsewhere adds more."""

    def __init__(self, paths: Iterable[str] = ()):
        self.numbers: dict[str, int] = {path: number for number, path in enumerate(dict.fromkeys(paths))}
        self._root = _Place("")

    def row(self, record: dict[str, Any]) -> dict[int, str]:
        """The texts of a record by column; empty ones are left out [texts].

        record: plain data [record].

        >>> Columns().row({"name": "Tide cup", "casts": [{"pieces": "2", "left": ""}]})
        {0: 'Tide cup', 1: '2'}
        """
        row: dict[int, str] = {}
        ahead = [(self._root, record)]
        for place, part in ahead:
            # Every leaf of a book passes here while the maker waits: one plain loop is quickest in the page.
            leaves, below = place.leaves, place.below
            for step, branch in part.items() if type(part) is dict else enumerate(part):
                kind = type(branch)
                try:
                    if kind is str:
                        if branch:
                            row[leaves[step]] = branch
                    elif kind is dict or kind is list:
                        if branch:
                            ahead.append((below[step], branch))
                    else:
                        row[leaves[step]] = json.dumps(branch)
                except KeyError:
                    self._grow(place, step, branch)
                    if kind is dict or kind is list:
                        ahead.append((below[step], branch))
                    else:
                        row[leaves[step]] = branch if kind is str else json.dumps(branch)
        return row

    def _grow(self, place: _Place, step: Any, branch: Any) -> None:
        path = _below(place.path, step)
        if isinstance(branch, (dict, list)):
            place.below[step] = _Place(path)
        else:
            place.leaves[step] = self.numbers.setdefault(path, len(self.numbers))


def laid_out(row: dict[int, str], columns: Iterable[int]) -> list[str]:
    """The cells of a row in a table's order, empty where nothing stands [texts].

    row: as Columns made it [texts].
    columns: by number, in the order of the table [numbers].

    >>> laid_out({0: "Tide cup", 5: "2"}, [5, 3, 0])
    ['2', '', 'Tide cup']
    """
    return list(map(row.get, columns, repeat("")))


def _below(path: str, step: Any) -> str:
    name = str(step).replace(".", _DOT)
    return f"{path}.{name}" if path else name


def steps_of(path: str) -> list[str]:
    """The steps of a column's path, each the name of a branch or a place in a list [texts].

    path: as in casts.0.pieces [text].

    >>> steps_of("casts.0.pieces")
    ['casts', '0', 'pieces']
    """
    return [step.replace(_DOT, ".") for step in path.split(".")]


def in_order(paths: list[str]) -> list[int]:
    """The columns in the order of a table: mark, name, date and notes, then the leaves as they are asked, then unknown ones [numbers].

    paths: of the columns [texts].

    >>> in_order(["casts.1.pieces", "name", "casts.0.pieces", "id"])
    [3, 1, 2, 0]
    """
    return sorted(range(len(paths)), key=lambda column: _rank(paths[column]))


def _rank(path: str) -> tuple[Any, ...]:
    places = tuple(map(int, (number[:9] for number in _NUMBER.findall(path))))
    return _RANKS.get(_NUMBER.sub("*", path), _UNKNOWN), places, path


def picked(columns: list[int]) -> Any:
    """What takes the cells of so many columns out of a row, in their order, as a tuple [function].

    columns: by number [numbers].

    >>> picked([2, 0])("abc"), picked([1])("abc")
    (('c', 'a'), ('b',))
    """
    if len(columns) == 1:
        return lambda row: (row[columns[0]],)
    return itemgetter(*columns) if columns else lambda row: ()
