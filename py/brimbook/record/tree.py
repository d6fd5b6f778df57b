"""Walk a record by path: read a leaf, and make a copy with other leaves."""

from collections.abc import Callable, Iterable, Iterator
from typing import Any

DEEPEST = 12
# Worked out in full, more than this would keep the maker waiting, whoever sent it.
MOST_LEAVES = 3000
# Batches are hundreds over the years, and little work each: they are counted apart.
LOG, MOST_OF_LOG = "batches", 20_000


def parts(tree: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Every part of a record with its path, each before those inside it [path and part].

    tree: a record, or a part of one [record].
    path: where that part stands [text].

    >>> list(parts({"casts": [{"pieces": "2"}]}))[1:]
    [('casts', [{'pieces': '2'}]), ('casts.0', {'pieces': '2'}), ('casts.0.pieces', '2')]
    """
    yield path, tree
    for step, branch in _branches(tree):
        yield from parts(branch, _below(path, step))


def copy_with(tree: Any, texts: dict[str, str], path: str = "") -> Any:
    """A copy of a record in which the leaves named have other texts [record].

    tree: a record, or a part of one [record].
    texts: the new text of each leaf, by its path [text].
    path: where that part stands [text].

    >>> copy_with({"casts": [{"pieces": "2"}]}, {"casts.0.pieces": "3"})
    {'casts': [{'pieces': '3'}]}
    """
    branches = {step: copy_with(branch, texts, _below(path, step)) for step, branch in _branches(tree)}
    if isinstance(tree, dict):
        return branches
    return list(branches.values()) if isinstance(tree, list) else texts.get(path, tree)


def without(tree: Any, left_out: Callable[[str], bool], path: str = "") -> Any:
    """A copy of a record without some of its named parts, and all that is inside them [record].

    tree: a record, or a part of one [record].
    left_out: is the part at a path left out [yes or no]?
    path: where that part stands [text].

    >>> without({"name": "Tide cup", "notes": {"more": "x"}}, lambda path: path == "notes")
    {'name': 'Tide cup'}
    """
    if isinstance(tree, dict):
        return {step: without(branch, left_out, _below(path, step)) for step, branch in tree.items()
                if not left_out(_below(path, step))}
    return [without(branch, left_out, _below(path, step)) for step, branch in enumerate(tree)] if isinstance(tree, list) else tree


def _branches(part: Any) -> Iterable[tuple[Any, Any]]:
    if isinstance(part, dict):
        return part.items()
    return enumerate(part) if isinstance(part, list) else ()


def _below(path: str, step: Any) -> str:
    """The path of a branch. A name that holds a dot must not pass for a path of its own."""
    name = str(step).replace(".", "\u2024")
    return f"{path}.{name}" if path else name


def item_of(path: str) -> str:
    """The cast or well that a path goes through, or the path itself where it has no more than two steps [text].

    path: as in casts.0.pieces [text].

    >>> item_of("casts.0.mix.air"), item_of("name")
    ('casts.0', 'name')
    """
    return ".".join(path.split(".", 2)[:2])


def within_limits(tree: Any) -> bool:
    """Is this small and shallow enough to be a vessel's record [yes or no]?

    tree: anything read from outside [record].

    >>> within_limits({"name": "Tide cup"}), within_limits([[[[[[[[[[[[["too deep"]]]]]]]]]]]]])
    (True, False)
    """
    log = tree.get(LOG) if isinstance(tree, dict) else None
    if not isinstance(log, list):
        return _is_small(tree, DEEPEST, MOST_LEAVES)
    rest = {step: branch for step, branch in tree.items() if step != LOG}
    return _is_small(rest, DEEPEST, MOST_LEAVES) and _is_small(log, DEEPEST - 1, MOST_OF_LOG)


def _is_small(tree: Any, deepest: int, most: int) -> bool:
    # A whole book of records is looked at while somebody waits: only parts that have branches are gone into.
    seen, level = 0, [tree] if isinstance(tree, (dict, list)) else []
    for _ in range(deepest - 1):
        below: list[Any] = []
        for part in level:
            seen += len(part)
            for branch in part.values() if isinstance(part, dict) else part:
                if isinstance(branch, (dict, list)):
                    below.append(branch)
        level = below
        if not level or seen > most:
            break
    return not any(level) and seen <= most
