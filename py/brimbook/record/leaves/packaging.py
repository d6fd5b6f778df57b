"""What a finished vessel is packed in."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import Leaf
from brimbook.record.leaves.supply import bought

EACH = Bounds(0.0, 1000, "Type how many of it one vessel takes: 1, or 0.5 where two share one.")

PACKAGING = {**bought("pieces"), "each": Leaf("number", "For one vessel", "1", EACH, "Two vessels in one box: 0.5.")}

LEAVES: dict[str, Leaf] = {f"packaging.*.{name}": leaf for name, leaf in PACKAGING.items()}
