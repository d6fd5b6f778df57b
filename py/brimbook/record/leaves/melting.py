"""Melting: temperatures, stirring, and the thermometer's log."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
