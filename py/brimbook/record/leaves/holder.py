"""The holder: bars across the opening, with a slot for each wick."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import Choice, Leaf

DIRECTIONS = (
    Choice("auto", "As few as can be", "The direction that takes the fewest bars."),
    Choice("across", "Left to right"),
    Choice("deep", "Front to back"),
)

HOLDER = {
    "bar_width": Leaf("length", "Width of a bar", "18 mm", Bounds(6, 100, "A bar is between 6 and 100 mm wide."),
                      "Of the stick that you cut it from."),
    "slot_width": Leaf("length", "Width of a slot", "2 mm", Bounds(0.3, 10, "A slot is between 0.3 and 10 mm wide."),
                       "The wick's thickness and a little."),
    "overhang": Leaf("length", "Over the rim, each side", "15 mm", Bounds(5, 200, "A bar reaches between 5 and 200 mm over the rim."),
                     "As far as the bar lies on the wall."),
    "bar_thickness": Leaf("length", "Thickness of a bar", "2 mm", Bounds(0.4, 30, "A bar is between 0.4 and 30 mm thick."),
                          "Only for a printed one."),
    "wider": Leaf("length", "The rim is wider than the wax by", "0 mm",
                  Bounds(0, 500, "The rim is wider than the wax by between 0 and 500 mm."),
                  "The opening at the rim less the wax at the line, both measured across."),
    "clearance": Leaf("length", "Least gap between bars", "2 mm", Bounds(0, 100, "A gap between bars is between 0 and 100 mm.")),
    "direction": Leaf("choice", "The bars lie", "auto", choices=DIRECTIONS),
}

LEAVES: dict[str, Leaf] = {f"wells.*.holder.{name}": leaf for name, leaf in HOLDER.items()}
