"""The pot: how many vessels and wells it fills."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
