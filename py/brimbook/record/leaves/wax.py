"""The wax: its densities, hot and cold, blends of waxes, and weighing them."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
