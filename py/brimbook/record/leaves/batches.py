"""The batches that were made: their lots, what went in, and who got what."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import Leaf
from brimbook.record.leaves.supply import LOT

MADE = Bounds(0, 10_000, "Type how many: at most 10000.")

BATCH = {
    "lot": Leaf("text", "Lot of the batch", longest=60),
    "made_on": Leaf("date", "Made on"),
    "vessels": Leaf("count", "Vessels made", "", MADE),
    "failed": Leaf("count", "Of these, failed", "0", MADE),
    "used.*.role": Leaf("text", "What it is", longest=40),
    "used.*.name": Leaf("text", "Material", longest=80),
    "used.*.lot": LOT,
    "went_to.*.who": Leaf("text", "Who got them", longest=120, hint="As much as you want to note. It leaves with no link unless you say so.",
                          private=True),
    "went_to.*.vessels": Leaf("count", "How many", "", MADE, private=True),
    "went_to.*.on": Leaf("date", "When", private=True),
    "remarks": Leaf("text", "Remarks", longest=500, private=True),
}

LEAVES: dict[str, Leaf] = {f"batches.*.{name}": leaf for name, leaf in BATCH.items()}
