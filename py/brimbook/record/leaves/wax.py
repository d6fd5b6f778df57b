"""The wax: its densities, hot and cold, blends of waxes, and weighing a cup of it."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import SHARE, VOLUME, WEIGHT, Leaf
from brimbook.record.leaves.supply import bought
from brimbook.record.leaves.well import OIL

TOLD_AT = Bounds(20.0, 150.0, "A hot density is told for between 20 and 150 °C (68 and 302 °F).")
EXPANSION = Bounds(0.0, 0.002, "Hot wax loses between 0 and 0.002 g/mL for each °C: usually 0.00064.")
OFF = Bounds(0.0, 1000.0, "This is how far off the cup may be: between 0 and 1 L. Check the digits and the unit.")

BLENDED = {
    "kind": Leaf("text", "Wax blended in", longest=100),
    "name": Leaf("text", "What you call it", longest=80),
    "share": Leaf("share", "Its share of all the wax", "", SHARE, "By weight; the first wax is the rest."),
    "density_poured": Leaf("density", "It weighs, hot as poured", "", OIL),
    "density_set": Leaf("density", "It weighs, cold and set", "", OIL),
    **bought("mass", named=False),
}
WAX = {
    **bought("mass"),
    "density_at": Leaf("temperature", "That hot density is told for", "", TOLD_AT, "Empty: for where it is poured."),
    "expansion": Leaf("number", "Hot wax loses for each °C, in g/mL", "0.00064", EXPANSION,
                      "Oils and paraffins lose 0.0006 to 0.0007."),
    "cup_volume": Leaf("volume", "The cup holds, level", "", VOLUME, "Weigh it full of water, then empty: 1 g is 1 mL, near enough."),
    "cup_error": Leaf("volume", "That may be off by", "1 mL", OFF),
    "cup_empty": Leaf("mass", "Cup, empty", bounds=WEIGHT),
    "cup_poured": Leaf("mass", "Cup, full of hot wax", bounds=WEIGHT),
    "cup_temperature": Leaf("temperature", "The wax in it was at", "", TOLD_AT, "Empty: where you pour."),
    "cup_set": Leaf("mass", "Cup, set and topped up level", bounds=WEIGHT),
    **{f"blended.*.{name}": leaf for name, leaf in BLENDED.items()},
}

LEAVES: dict[str, Leaf] = {f"wells.*.wax.{name}": leaf for name, leaf in WAX.items()}
