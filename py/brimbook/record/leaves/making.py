"""A plan of what to make, a record of its own: so many of each vessel in the book."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import Leaf

MAKE = Bounds(0, 100_000, "Type how many to make: at most 100000.")

LEAVES: dict[str, Leaf] = {
    "plan.*.id": Leaf("text", "Vessel", longest=64),
    "plan.*.count": Leaf("count", "How many to make", "1", MAKE),
}
