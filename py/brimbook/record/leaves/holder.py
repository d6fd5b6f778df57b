"""The holder: bars across the opening."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
