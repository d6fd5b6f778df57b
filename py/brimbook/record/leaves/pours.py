"""The log of the pours: what was really weighed, what was left over, a cup of fresh mix, its spread."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, VOLUME, WEIGHT, Choice, Leaf

NONE_OR_MORE = Bounds(0.0, 100_000, "A weight here is 0, or at most 100 kg. Check the digits and the unit.")

CONES = (
    Choice("mini", "Mini-slump cone", "38 mm at the base, 19 mm at the top, 57 mm high; lifted, no jolts."),
    Choice("flow_table", "Flow table, 50 mm ring", "100 mm at the base, 70 mm at the top; 25 drops in 15 s."),
    Choice("mortar_table", "Flow table, 60 mm ring", "100 mm at the base, 70 mm at the top; 15 jolts, one a second."),
    Choice("own", "A ring of my own", "Any pipe will do, if it is always the same one."),
)

POUR = {
    "when": Leaf("moment", "Poured"),
    "powder": Leaf("mass", "Powder weighed", bounds=WEIGHT, hint="What your scale really showed."),
    "water": Leaf("mass", "Water poured in", bounds=NONE_OR_MORE, hint="All of it, with what you held back and added later."),
    "others.*.weighed": Leaf("mass", "Weighed of it", bounds=NONE_OR_MORE, hint="Empty: as the recipe says."),
    "left_over": Leaf("mass", "Mix left over", bounds=NONE_OR_MORE,
                      hint="What could still have been poured, not the film on the bowl. 0 if it was just enough."),
    "short": Leaf("mass", "Mix that was lacking", bounds=NONE_OR_MORE, hint="What you weighed in to fill up, of a second batch."),
    "pieces": Leaf("count", "Pieces filled", bounds=Bounds(1, 10_000, "Fill at least 1 piece, and at most 10000.")),
    "cup_volume": Leaf("volume", "Cup holds", bounds=VOLUME,
                       hint="A small cup, level full of fresh mix. Fill it with water once: 1 g is 1 mL."),
    "cup_full": Leaf("mass", "Cup, full of mix", bounds=WEIGHT),
    "cup_empty": Leaf("mass", "Cup, empty", bounds=NONE_OR_MORE, hint="0 if the scale was set to zero with it."),
    "spread_1": Leaf("length", "Spread", bounds=DIMENSION, hint="How wide the mix lies when the cone is lifted."),
    "spread_2": Leaf("length", "Spread, the other way", bounds=DIMENSION, hint="At right angles to the first."),
    "of": Leaf("text", "Mix it was of", longest=1000,
               hint="A pour of another mix is kept, and not counted. Empty: counted as the mix is now."),
    "notes": Leaf("text", "Notes", longest=500),
}

LEAVES: dict[str, Leaf] = {
    **{f"casts.*.pours.*.{name}": leaf for name, leaf in POUR.items()},
    "casts.*.flow.cone": Leaf("choice", "The spread is measured with", "mini", choices=CONES),
    "casts.*.flow.base": Leaf("length", "Base of the ring, inside", "", DIMENSION, "The diameter it stands on."),
    "casts.*.flow.target": Leaf("length", "Spread wanted", "", DIMENSION, "Empty: what your pours had."),
}
