"""The drying vessel: its weight, again and again."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
