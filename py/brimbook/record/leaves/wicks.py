"""Wicks: the outline of the wax surface, the wicks in it, and the maker's own wicks."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, Choice, Leaf
from brimbook.record.leaves.materials import KEPT
from brimbook.record.leaves.supply import bought

MOST_WICKS = 8
OUTLINES = (
    Choice("round", "Round"), Choice("oval", "Oval"), Choice("rectangle", "Rectangular", "With sharp or rounded corners."),
    Choice("polygon", "Equal sides", "A hexagon, an octagon, and so on."),
    Choice("path", "Another outline", "Its corners, or the path data of a drawing."),
    Choice("file", "As its file shows", "The outline at the fill line."),
    Choice("photo", "From a photo", "Its rim marked on a photo taken from above, beside a sheet of paper."),
)
CORES = (
    Choice("none", "No metal in it", "Cotton, paper, wood."),
    Choice("free", "Metal, lead-free by its sheet", "Zinc or tin."),
    Choice("unknown", "Metal, I don't know which"),
)
COUNT = Bounds(1, MOST_WICKS, "A plan has 1 to 8 wicks.")
APART = Bounds(0.0, 500, "A distance here is between 0 and 500 mm. Check the digits and the unit.")
PLACE = Bounds(0.0, 3000, "A place is between 0 mm and 3 m from the edge. Check the digits and the unit.")
RATE = Bounds(0.1, 100, "A wick burns between 0.1 and 100 g of wax an hour: many burn 3 to 7.")

WICK = {
    "name": Leaf("text", "Wick", longest=80, hint="Your own name for it: kind and size."),
    "pool": Leaf("length", "Pool it melted, across", "", DIMENSION, "As you saw it after some hours, in a wax like this."),
    "rate": Leaf("number", "It burned, in g an hour", "", RATE, "From a burn test of one wick alone."),
}

LEAVES: dict[str, Leaf] = {
    "wells.*.outline.shape": Leaf("choice", "The wax from above", "round", choices=OUTLINES),
    "wells.*.outline.across": Leaf("length", "Across", "", DIMENSION, "At the line of the wax, from wall to wall."),
    "wells.*.outline.other": Leaf("length", "The other way", "", DIMENSION),
    "wells.*.outline.corner": Leaf("length", "Corners rounded by", "0 mm", APART, "Their radius."),
    "wells.*.outline.sides": Leaf("count", "Sides", "6", Bounds(3, 96, "A polygon has 3 to 96 sides.")),
    "wells.*.outline.path": Leaf("text", "Corners or path data, in mm", longest=2000,
                                 hint="Such as 0 0, 80 0, 80 40, 0 40, or the d of an SVG path."),
    "wells.*.wicks.count": Leaf("count", "Wicks", "", COUNT),
    "wells.*.wicks.up_to": Leaf("count", "Try up to so many wicks", "", COUNT, "Up to 8; more take longer to place."),
    "wells.*.wicks.from_wall": Leaf("length", "From the wall, at least", "12 mm", APART, "A flame near a wall heats it."),
    "wells.*.wicks.between": Leaf("length", "From each other, at least", "25 mm", APART, "Flames that stand close heat one another."),
    "wells.*.wicks.at.*.x": Leaf("length", "From the left", "", PLACE, "From the left edge of the wax."),
    "wells.*.wicks.at.*.y": Leaf("length", "From the front", "", PLACE, "From the front edge of the wax."),
    **{f"wells.*.wicks.{name}": leaf for name, leaf in WICK.items()},
    **{f"wells.*.wicks.{name}": leaf for name, leaf in bought("pieces", named=False).items()},
    **{f"wicks.*.{name}": leaf for name, leaf in WICK.items()},
    "wicks.*.core": Leaf("choice", "Its core", "none", choices=CORES),
    **{f"wicks.*.{name}": leaf for name, leaf in bought("pieces", named=False).items()},
    **{f"wicks.*.{name}": leaf for name, leaf in KEPT.items() if name.split(".")[-1] not in ("weight", "volume", "stock_weight", "stock_volume")},
    "wicks.*.notes": Leaf("text", "What you saw", longest=200),
}
