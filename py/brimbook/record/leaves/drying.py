"""The drying vessel: its weight, again and again."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import WEIGHT, Leaf

DRYING = {
    "dry_weight": Leaf("mass", "Dry weight", "", WEIGHT,
                       "Bone dry, before it last met water. Leave empty if it was never weighed dry."),
    "weights.*.weight": Leaf("mass", "Weight", bounds=WEIGHT, hint="Empty, outside wiped, always the same way."),
    "weights.*.at": Leaf("moment", "Weighed"),
    "margin": Leaf("share", "Dry enough within", "0.5 %",
                   Bounds(0.0005, 0.1, "Dry enough is within 0.05 to 10 % of the dry weight: usually 0.5 %.")),
    "steady": Leaf("share", "Steady: loses in a day at most", "0.1 %",
                   Bounds(0.0001, 0.1, "A steady weight loses between 0.01 and 10 % in a day: usually 0.1 %.")),
    "readability": Leaf("mass", "Your scale shows steps of", "",
                        Bounds(0.001, 100, "The steps of a scale are between 0.001 g and 100 g: usually 1 g.")),
}

LEAVES: dict[str, Leaf] = {f"casts.*.drying.{name}": leaf for name, leaf in DRYING.items()}
