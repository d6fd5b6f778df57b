"""Wicks: the outline of the wax surface, the wicks in it, and the maker's own wicks."""

from brimbook.record.leaf import Leaf

LEAVES: dict[str, Leaf] = {}
