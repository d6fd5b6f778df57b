"""Walk a record by path: read a leaf, and make a copy with other leaves."""

from collections.abc import Iterator
from typing import Any

DEEPEST = 12
MOST_LEAVES = 3000


def leaves(tree: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Every leaf of a record with its path, in order [path and leaf].

    tree: a record, or a part of one [record].
    path: where that part stands [text].

    >>> list(leaves({"casts": [{"pieces": "2"}]}))
    [('casts.0.pieces', '2')]
    """
    if isinstance(tree, dict):
        branches = tree.items()
    elif isinstance(tree, list):
        branches = enumerate(tree)
    else:
        yield path, tree
        return
    for step, branch in branches:
        yield from leaves(branch, f"{path}.{step}" if path else str(step))


def copy_with(tree: Any, texts: dict[str, str], path: str = "") -> Any:
    """A copy of a record in which the leaves named have other texts [record].

    tree: a record, or a part of one [record].
    texts: the new text of each leaf, by its path [text].
    path: where that part stands [text].

    >>> copy_with({"casts": [{"pieces": "2"}]}, {"casts.0.pieces": "3"})
    {'casts': [{'pieces': '3'}]}
    """
    if isinstance(tree, dict):
        return {step: copy_with(branch, texts, f"{path}.{step}" if path else step) for step, branch in tree.items()}
    if isinstance(tree, list):
        return [copy_with(branch, texts, f"{path}.{step}" if path else str(step)) for step, branch in enumerate(tree)]
    return texts.get(path, tree)


def within_limits(tree: Any) -> bool:
    """Is this small and shallow enough to be a vessel's record [yes or no]?

    tree: anything read from outside [record].

    >>> within_limits({"name": "Tide cup"}), within_limits([[[[[[[[[[[[["too deep"]]]]]]]]]]]]])
    (True, False)
    """
    seen, level = 0, [tree]
    for _ in range(DEEPEST):
        level = [branch for part in level for branch in _branches(part)]
        seen += len(level)
        if not level or seen > MOST_LEAVES:
            break
    return not level and seen <= MOST_LEAVES


def _branches(part: Any) -> list[Any]:
    if isinstance(part, dict):
        return list(part.values())
    return part if isinstance(part, list) else []
