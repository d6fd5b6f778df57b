"""Every leaf of a vessel's record: what it is called, what it holds, what makes sense there.

A record is plain data. Its leaves are texts as the maker typed them, so that a
number keeps its unit and nothing typed is lost, right or wrong. A path names a
leaf, as in casts.0.cavity.temperature; here a star stands for any place in a list.
"""

import re
from functools import lru_cache

from brimbook.record.leaf import Choice, Leaf
from brimbook.record.leaves import (
    batches, bowl, burning, cast, clamping, curing, design, drying, finishing, holder, label, leaking, making, materials, melting, packaging, photo,
    pot, pours, scent, selling, vessel, wax, well, wicks)

VERSION = 1

LEAVES: dict[str, Leaf] = {
    **vessel.LEAVES, **design.LEAVES, **cast.LEAVES, **pours.LEAVES, **bowl.LEAVES, **clamping.LEAVES, **curing.LEAVES, **drying.LEAVES,
    **leaking.LEAVES, **finishing.LEAVES, **well.LEAVES, **pot.LEAVES, **wax.LEAVES, **scent.LEAVES, **melting.LEAVES,
    **wicks.LEAVES, **photo.LEAVES, **holder.LEAVES, **burning.LEAVES, **packaging.LEAVES, **selling.LEAVES, **label.LEAVES,
    **batches.LEAVES, **materials.LEAVES, **making.LEAVES,
}

__all__ = ["LEAVES", "VERSION", "Choice", "Leaf", "leaf_at", "shape_at"]


def _shapes() -> dict[str, type]:
    """What each part above a leaf must be: a list where its branches are numbered, else named parts."""
    shapes: dict[str, type] = {"": dict}
    for path in LEAVES:
        steps = path.split(".")
        for end in range(1, len(steps)):
            shapes[".".join(steps[:end])] = list if steps[end] == "*" else dict
    return shapes


SHAPES = _shapes()


def shape_at(path: str) -> type | None:
    """Whether a part of the record is a list or has named parts; nothing for a leaf or an unknown part [type].

    path: as in casts.0 [text].

    >>> shape_at("casts"), shape_at("casts.0"), shape_at("casts.0.pieces")
    (<class 'list'>, <class 'dict'>, None)
    """
    return SHAPES.get(_starred(path))


def _starred(path: str) -> str:
    return _PLACE_IN_LIST.sub("*", path)


_PLACE_IN_LIST = re.compile(r"(?<![^.])[0-9]+(?![^.])")


@lru_cache(maxsize=1024)
def leaf_at(path: str) -> Leaf | None:
    """What a path of the record holds, or nothing where none is known [leaf].

    path: as in casts.0.pieces [text].

    >>> leaf_at("casts.0.pieces").label
    'Pieces'
    """
    return LEAVES.get(_starred(path))


def _private() -> frozenset[str]:
    """The leaves that are left out of links, and the parts in which all leaves are: what is unknown in those goes with them."""
    told: dict[str, bool] = {}
    for path, leaf in LEAVES.items():
        steps = path.split(".")
        for end in range(1, len(steps) + 1):
            part = ".".join(steps[:end])
            told[part] = told.get(part, True) and leaf.private
    return frozenset(part for part, private in told.items() if private)


PRIVATE = _private()


def is_large(path: str) -> bool:
    """Is a leaf so large that no link would have room for it [yes or no]?

    path: as in casts.0.cavity.file.sections [text].

    >>> is_large("casts.0.cavity.file.sections"), is_large("own_notes")
    (True, False)
    """
    leaf = leaf_at(path)
    return leaf is not None and leaf.large


def is_private(path: str) -> bool:
    """Is a part of the record left out of links [yes or no]?

    path: as in casts.0.mix.powder.pack_price [text].

    >>> is_private("casts.0.mix.powder.pack_price"), is_private("batches.0.went_to"), is_private("name")
    (True, True, False)
    """
    return _starred(path) in PRIVATE
