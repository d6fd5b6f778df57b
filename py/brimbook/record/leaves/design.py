"""A vessel designed by its sizes, and a wanted weight of wax."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, SMALL_LENGTH, WEIGHT, Choice, Leaf

SHAPES = (
    Choice("round", "Round"), Choice("tapered", "Tapered round", "Its bottom narrower than its rim."),
    Choice("oval", "Oval"), Choice("rectangle", "Rectangular", "With sharp or rounded corners."),
    Choice("polygon", "Equal sides", "A hexagon, an octagon, and so on."),
    Choice("bowl", "Bowl", "Part of a ball, with a flat foot or none."),
    Choice("path", "Another outline", "Its corners, or the path data of a drawing, pulled up."),
)
SIZES = (Choice("outside", "The outside"), Choice("inside", "The room for wax", "To its brim; wall and floor come outside of it."))
WANTED = (Choice("fill", "All that is filled in", "Wax, fragrance and dye together, as on a label."), Choice("wax", "The wax alone"))
NONE_OR_MORE = Bounds(0.0, 1000, "A length here is between 0 mm and 1 m. Check the digits and the unit.")
THICKNESS = Bounds(0.5, 100, "A wall or floor here is between 0.5 and 100 mm: usually 5 to 10 mm.")

DESIGN = {
    "shape": Leaf("choice", "Shape", "round", choices=SHAPES),
    "sizes": Leaf("choice", "The sizes are those of", "outside", choices=SIZES),
    "across": Leaf("length", "Across, at the rim", "", DIMENSION),
    "other": Leaf("length", "The other way, at the rim", "", DIMENSION),
    "bottom": Leaf("length", "Across, at the bottom", "", DIMENSION),
    "corner": Leaf("length", "Corners rounded by", "0 mm", NONE_OR_MORE, "Their radius, at the rim."),
    "sides": Leaf("count", "Sides", "6", Bounds(3, 96, "A polygon has 3 to 96 sides.")),
    "foot": Leaf("length", "Flat foot, across", "0 mm", NONE_OR_MORE, "Without a foot it rolls."),
    "path": Leaf("text", "Corners or path data of the rim, in mm", longest=2000,
                 hint="Such as 0 0, 80 0, 80 40, 0 40, or the d of an SVG path."),
    "height": Leaf("length", "Height", "", DIMENSION),
    "wall_thickness": Leaf("length", "Wall", "6 mm", THICKNESS, "Its thickness, square to it."),
    "floor_thickness": Leaf("length", "Floor", "8 mm", THICKNESS, "Its thickness."),
    "line": Leaf("length", "Wax ends below the brim by", "10 mm", NONE_OR_MORE),
    "lean": Leaf("number", "Wall leans, in degrees", "0", Bounds(0, 60, "A wall leans by 0 to 60 degrees: usually 1 to 3."),
                 "From upright, outward to the rim: so it comes out of its mold, and its core out of it."),
    "off": Leaf("length", "Sizes of the print may be off by", "0.2 mm", SMALL_LENGTH, "By calipers. Shrinkage is counted apart."),
}

LEAVES: dict[str, Leaf] = {
    **{f"design.*.{name}": leaf for name, leaf in DESIGN.items()},
    "wells.*.want": Leaf("mass", "Wanted", "", WEIGHT),
    "wells.*.want_of": Leaf("choice", "That is the weight of", "fill", choices=WANTED),
}
