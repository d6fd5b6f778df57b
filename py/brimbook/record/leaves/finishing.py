"""Sealing, priming and painting: areas, coats and drying times."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, TIME, Choice, Leaf
from brimbook.record.leaves.supply import bought

OUTLINE = Bounds(1.0, 10_000, "An outline here is between 1 mm and 10 m. Check the digits and the unit.")
AREA = Bounds(0.1, 100_000, "An area here is between 0.1 and 100000 cm².")
COATS = Bounds(0, 20, "Type how many coats: 0 for none, and at most 20.")
COVERS = Bounds(0.1, 100, "A coverage is between 0.1 and 100 m²/L. It is on the label of the tin.")

SHAPES = (
    Choice("round", "Round", "Straight or tapered: its diameters at the top and at the foot, and its height."),
    Choice("outline", "Any outline", "The same from foot to rim: once around with a tape, and its height."),
)


def _side(side: str, name: str, bottom: str) -> dict[str, Leaf]:
    return {
        f"{side}_top": Leaf("length", f"{name}: diameter at the top", "", DIMENSION),
        f"{side}_bottom": Leaf("length", f"{name}: diameter at the {bottom}", "", DIMENSION, "Empty: as at the top."),
        f"{side}_outline": Leaf("length", f"{name}: once around", "", OUTLINE),
        f"{side}_height": Leaf("length", f"{name}: height", "", DIMENSION),
        f"{side}_area": Leaf("number", f"{name}: area, in cm²", "", AREA, "If you know it, from a drawing: it is taken as it is."),
    }


def _coat(name: str, label: str, coats: str, hours: str) -> dict[str, Leaf]:
    return {
        f"{name}_coats": Leaf("count", f"Coats of {label}", coats, COATS),
        f"{name}_hours": Leaf("duration", f"Each coat of {label} dries for", hours, TIME, "The label of your tin decides.",
                              unit="h"),
        f"{name}_coverage": Leaf("coverage", f"One liter of {label} covers", "8 m²/L", COVERS,
                                 "On the label of your tin. The first coat on bare casts sinks in: plan for more."),
    }


FINISHING = {
    "shape": Leaf("choice", "Its outline", "round", choices=SHAPES),
    **{f"{coat}.{name}": leaf for coat in ("sealer", "primer", "paint") for name, leaf in bought("volume").items()},
    **_side("inside", "Inside", "floor"), **_side("outside", "Outside", "foot"),
    **_coat("sealer", "sealer", "2", "4 h"), **_coat("primer", "primer", "0", "2 h"), **_coat("paint", "paint", "2", "2 h"),
}

LEAVES: dict[str, Leaf] = {f"casts.*.finishing.{name}": leaf for name, leaf in FINISHING.items()}
