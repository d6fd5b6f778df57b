"""Scents: what the supplier's sheets say of them, and of the sensitizers in them."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import SHARE, Choice, Leaf
from brimbook.record.leaves.supply import bought

OIL = Bounds(0.5, 1.6, "A fragrance weighs between 0.5 and 1.6 g/mL.")
PARTS = Bounds(0.0, 10_000, "Type its parts by weight, such as 3: between 0 and 10000.")
LIMIT = Bounds(1e-6, 1.0, "A limit is more than 0 and at most 100 %. If its sheet allows none of it, leave it out.")
FLASH = Bounds(-30.0, 300.0, "A flash point here is between −30 and 300 °C (−22 and 572 °F). Check the digits and the unit.")

CUPS = (
    Choice("closed", "Closed cup", "The usual one on a safety data sheet."),
    Choice("open", "Open cup", "Reads some 5 to 10 °C (9 to 18 °F) higher: the lower end is taken."))
BASES = (Choice("wax", "The wax"), Choice("blend", "The candle", "Wax, fragrance and dye together."))
CLASSES = (
    Choice("1", "1", "Skin Sens. 1, without a letter."), Choice("1A", "1A", "Skin Sens. 1A, the strong ones."),
    Choice("1B", "1B", "Skin Sens. 1B."))

SENSITIZER = {
    "name": Leaf("text", "Substance", hint="Its name or number as on the safety data sheet: the same in each scent."),
    "share": Leaf("share", "Share of this scent", "", SHARE, "If the sheet gives a range, its upper end."),
    "class": Leaf("choice", "Skin sensitizer of category", "1", choices=CLASSES),
    "specific": Leaf("share", "Its own limit, if the sheet names one", "", LIMIT,
                     "A specific concentration limit for skin sensitization: it stands instead of that of its category."),
}
SCENT = {
    "name": Leaf("text", "Scent", longest=80),
    "parts": Leaf("number", "Parts by weight", "1", PARTS, "How much of it for the parts of the other scents."),
    "supplier_most": Leaf("share", "Supplier's sheet allows at most", "", LIMIT),
    "supplier_basis": Leaf("choice", "That is a share of", "wax", choices=BASES),
    "ifra_most": Leaf("share", "IFRA certificate allows at most", "", LIMIT,
                      "Category 12, candles: a share of the finished candle."),
    "flash": Leaf("temperature", "Flash point", "", FLASH, "In section 9 of its safety data sheet."),
    "flash_cup": Leaf("choice", "Measured in", "closed", choices=CUPS),
    "density": Leaf("density", "One mL of it weighs", "", OIL, "On its sheet as specific gravity."),
    **bought("mass", named=False),
    **{f"sensitizers.*.{name}": leaf for name, leaf in SENSITIZER.items()},
}

LEAVES: dict[str, Leaf] = {
    "wells.*.fragrance.wax_most": Leaf("share", "Your wax takes at most", "", LIMIT,
                                       "Fragrance in all, as a share of the wax: on the sheet of the wax."),
    **{f"wells.*.fragrance.{name}": leaf for name, leaf in bought("mass").items()},
    **{f"wells.*.coloring.{name}": leaf for name, leaf in bought("mass").items()},
    **{f"wells.*.fragrance.scents.*.{name}": leaf for name, leaf in SCENT.items()},
}
