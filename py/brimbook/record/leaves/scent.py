"""Scents: what the supplier's sheet says of them."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
