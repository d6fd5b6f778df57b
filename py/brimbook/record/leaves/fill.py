"""How a room was measured: the mold's cavity, or the well for wax."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, SMALL_LENGTH, WEIGHT, Choice, Leaf
from brimbook.record.leaves.file import CAST_FILE, WELL_FILE

WATER = Bounds(5, 40, "Water here is between 5 and 40 °C (41 and 104 °F). Let it come to room temperature first.")
HEAP = Bounds(0.05, 12.0, "A loose filler weighs between 0.05 and 12 g/mL. Dry sand is near 1.6 g/mL.")

WAYS = (
    Choice("on_scale", "Filled on the scale", "Empty vessel on the scale, scale set to zero, filled with water."),
    Choice("full_minus_empty", "Full minus empty", "Weighed empty, then weighed full of water."),
    Choice("jug", "From a jug", "The jug of water weighed before and after filling."),
    Choice("poured_out", "Poured out", "Filled, then the water poured out and weighed. Best for unsealed vessels."),
    Choice("dry_filler", "Dry filler", "Filled with sand or beads whose weight per mL you know."),
    Choice("dimensions", "By its dimensions", "No water: worked out from a ruler or the drawing."),
    Choice("file", "From its file", "No water: an STL, 3MF or OBJ, as it is printed."),
    Choice("design", "As designed", "No water: worked out from the design on its card."),
)
WELL_WAYS = (*WAYS, Choice("cast_file", "From the file of the cast", "No water: the room in the piece that is cast."))
SOLIDS = (Choice("cylinder", "Straight round"), Choice("tapered", "Tapered round"), Choice("box", "Rectangular"))

_FILL = {
    "way": Leaf("choice", "How it was measured", "on_scale", choices=WAYS),
    "readings.*.water": Leaf("mass", "Water", bounds=WEIGHT),
    "readings.*.full": Leaf("mass", "Full of water", bounds=WEIGHT),
    "readings.*.empty": Leaf("mass", "Empty", bounds=WEIGHT),
    "readings.*.before": Leaf("mass", "Jug before", bounds=WEIGHT),
    "readings.*.after": Leaf("mass", "Jug after", bounds=WEIGHT),
    "readings.*.filler": Leaf("mass", "Filler", bounds=WEIGHT),
    "temperature": Leaf("temperature", "Water temperature", "20 °C", WATER, "Room temperature is close enough."),
    "readability": Leaf("mass", "Your scale shows steps of", "1 g",
                        Bounds(0.001, 100, "The steps of a scale are between 0.001 g and 100 g: usually 1 g.")),
    "line_error": Leaf("length", "The fill line may be off by", "0.5 mm", SMALL_LENGTH,
                       "How well you can see where the water stops."),
    "opening_across": Leaf("length", "Opening across", "", DIMENSION,
                           "Where the water stops. With it, the ± of the fill line is counted."),
    "opening_other": Leaf("length", "Opening, other way", "", DIMENSION, "Leave empty if it is round."),
    "filler_density": Leaf("density", "One mL of loose filler weighs", "", HEAP,
                           "Fill a cup of known volume the same way, weigh it, divide."),
    "solid": Leaf("choice", "Shape", "cylinder", choices=SOLIDS),
    "diameter": Leaf("length", "Diameter inside", "", DIMENSION),
    "top_diameter": Leaf("length", "Diameter at the top", "", DIMENSION),
    "bottom_diameter": Leaf("length", "Diameter at the bottom", "", DIMENSION),
    "length": Leaf("length", "Length inside", "", DIMENSION),
    "width": Leaf("length", "Width inside", "", DIMENSION),
    "height": Leaf("length", "Height to the line", "", DIMENSION),
    "ruler": Leaf("length", "Each dimension may be off by", "0.5 mm", SMALL_LENGTH),
}

FILL = {**_FILL, **{f"file.{name}": leaf for name, leaf in CAST_FILE.items()}}
WELL_FILL = {**_FILL, "way": Leaf("choice", "How it was measured", "on_scale", choices=WELL_WAYS),
             **{f"file.{name}": leaf for name, leaf in WELL_FILE.items()}}
