"""Texts written into a record at their paths, the way there made where it is missing."""

from typing import Any

from brimbook.book.columns import steps_of
from brimbook.book.kept import entry_text
from brimbook.record.strict import DECODER

HIGHEST_PLACE = 999
# A name that a browser takes for a part of its own machinery.
_NEVER = "__proto__"


class Frame:
    """The records that a table's columns make: each column a place, known before any row is read."""

    def __init__(self, paths: list[str]):
        self.refused: list[str] = []
        self._root: dict[str, Any] = {}
        for cell, path in enumerate(paths):
            if not self._grow(steps_of(path), cell):
                self.refused.append(path)

    def _grow(self, steps: list[str], cell: int) -> bool:
        part = self._root
        for step in steps[:-1]:
            part = part.setdefault(step, {})
            if not isinstance(part, dict):
                return False
        if _NEVER in steps or steps[-1] in part:
            return False
        part[steps[-1]] = cell
        return True

    def record(self, cells: tuple[str, ...]) -> dict[str, Any]:
        """The record of a row; what is empty is left out [record].

        cells: one for each column [texts].

        >>> Frame(["name", "casts.1.pieces"]).record(("Tide cup", "2"))
        {'name': 'Tide cup', 'casts': [{}, {'pieces': '2'}]}
        """
        return _framed(self._root, cells) or {}


def _framed(part: dict[str, Any], cells: tuple[str, ...]) -> Any:
    made = {step: cells[below] if type(below) is int else _framed(below, cells) for step, below in part.items()}
    kept = {step: branch for step, branch in made.items() if branch}
    if not kept or not all(map(_is_place, part)):
        return kept
    empty = "" if all(type(branch) is str for branch in kept.values()) else {}
    return [kept.get(str(place), empty) for place in range(max(map(int, kept)) + 1)]


def written(record: dict[str, Any], texts: dict[str, str]) -> tuple[dict[str, Any], list[str]]:
    """A copy of a record with other texts in it, and the paths at which none could be put [record and texts].

    record: plain data [record].
    texts: by path [texts].

    >>> written({"casts": [{"pieces": "2"}]}, {"casts.1.pieces": "3", "casts.pieces": "4"})
    ({'casts': [{'pieces': '2'}, {'pieces': '3'}]}, ['casts.pieces'])
    """
    copy = DECODER.decode(entry_text(record))
    return copy, [path for path, text in texts.items() if not _put(copy, steps_of(path), text)]


def _put(part: Any, steps: list[str], text: str) -> bool:
    for step, following in zip(steps, steps[1:]):
        part = _below(part, step, following)
        if part is None:
            return False
    return _set(part, steps[-1], text)


def _is_place(step: str) -> bool:
    return step.isascii() and step.isdigit() and len(step) <= 3 and int(step) <= HIGHEST_PLACE


def _below(part: Any, step: str, following: str) -> Any:
    """The branch that a step leads to, made if need be; nothing where something else stands there."""
    if isinstance(part, list):
        if not _is_place(step):
            return None
        # Places before it that nothing was said of stay empty.
        part.extend({} for _ in range(int(step) + 1 - len(part)))
        branch = part[int(step)]
        if branch == {} and _is_place(following):
            branch = part[int(step)] = []
    elif isinstance(part, dict) and step != _NEVER:
        branch = part.setdefault(step, [] if _is_place(following) else {})
    else:
        return None
    return branch if isinstance(branch, (dict, list)) else None


def _set(part: Any, step: str, text: str) -> bool:
    if isinstance(part, list) and _is_place(step):
        part.extend("" for _ in range(int(step) + 1 - len(part)))
        if isinstance(part[int(step)], (dict, list)):
            return False
        part[int(step)] = text
        return True
    if not isinstance(part, dict) or step == _NEVER or isinstance(part.get(step), (dict, list)):
        return False
    part[step] = text
    return True
