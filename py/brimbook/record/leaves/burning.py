"""The burn test: its log, cycle by cycle."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
