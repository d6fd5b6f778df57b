"""Every leaf of a vessel's record: what it is called, what it holds, what makes sense there.

A record is plain data. Its leaves are texts as the maker typed them, so that a
number keeps its unit and nothing typed is lost, right or wrong. A path names a
leaf, as in casts.0.cavity.temperature; here a star stands for any place in a list.
"""

from dataclasses import dataclass, field
from functools import lru_cache

from brimbook.quantity.read import Bounds

VERSION = 1


@dataclass(frozen=True)
class Choice:
    """One of the answers to a choice."""

    value: str
    label: str
    hint: str = ""


@dataclass(frozen=True)
class Leaf:
    """What one leaf of the record holds.

    kind is a kind of quantity, or text, date or choice. usual is taken when the
    maker leaves the place empty. bounds are in the base unit of the kind.
    """

    kind: str
    label: str
    usual: str = ""
    bounds: Bounds = Bounds(0.0, 1e6)
    hint: str = ""
    longest: int = 60
    choices: tuple[Choice, ...] = field(default=())


WEIGHT = Bounds(0.001, 100_000, "A weight here is more than 0 and at most 100 kg. Check the digits and the unit.")
DIMENSION = Bounds(0.1, 3000, "A length here is between 0.1 mm and 3 m. Check the digits and the unit.")
SMALL_LENGTH = Bounds(0.0, 20, "This is how far off it may be: between 0 and 20 mm.")
WATER = Bounds(5, 40, "Water here is between 5 and 40 °C (41 and 104 °F). Let it come to room temperature first.")
PARTICLES = Bounds(1.0, 8.0, "The particles of a powder weigh between 1 and 8 g/mL: 2.98 for a rapid-setting cement. "
                             "This is not the weight of the loose heap.")
HEAP = Bounds(0.05, 12.0, "A loose filler weighs between 0.05 and 12 g/mL. Dry sand is near 1.6 g/mL.")
OIL = Bounds(0.5, 1.6, "Wax and fragrance weigh between 0.5 and 1.6 g/mL.")

WAYS = (
    Choice("on_scale", "Filled on the scale", "Empty vessel on the scale, scale set to zero, filled with water."),
    Choice("full_minus_empty", "Full minus empty", "Weighed empty, then weighed full of water."),
    Choice("jug", "From a jug", "The jug of water weighed before and after filling."),
    Choice("poured_out", "Poured out", "Filled, then the water poured out and weighed. Best for unsealed vessels."),
    Choice("dry_filler", "Dry filler", "Filled with sand or beads whose weight per mL you know."),
    Choice("dimensions", "By its dimensions", "No water: worked out from a ruler or the drawing."),
)
SOLIDS = (Choice("cylinder", "Straight round"), Choice("tapered", "Tapered round"), Choice("box", "Rectangular"))
YES_NO = (Choice("no", "No"), Choice("yes", "Yes"))

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

LOAD = Bounds(0.0, 0.5, "A share here is between 0 and 50 %. 6 % is common; 1 oz/lb is 6.25 %.")

LEAVES = {
    "id": Leaf("text", "Mark", longest=64),
    "name": Leaf("text", "Name", longest=120),
    "made_on": Leaf("date", "Made on"),
    "notes": Leaf("text", "Notes", longest=2000),
    "casts.*.pieces": Leaf("count", "Pieces", "1", Bounds(1, 10_000, "Cast at least 1 piece, and at most 10000.")),
    **{f"casts.*.cavity.{key}": leaf for key, leaf in _FILL.items()},
    "casts.*.allowance": Leaf("share", "Allowance", "10 %", Bounds(0, 2, "An allowance is between 0 and 200 %."),
                              "Extra mix for what stays in the bowl and on the tools."),
    "casts.*.mix.powder.kind": Leaf("text", "Powder"),
    "casts.*.mix.powder.particle_density": Leaf(
        "density", "Particle density of the powder", "", PARTICLES,
        "On the data sheet as specific gravity or absolute density; not the loose heap."),
    "casts.*.mix.water_to_powder": Leaf(
        "ratio", "Powder to water, by weight", "4:1",
        Bounds(0.05, 1.0, "Type powder to water, such as 4:1, or the water for one part of powder, such as 0.25."),
        "4:1 and 0.25 are the same mix."),
    "casts.*.mix.air": Leaf("share", "Air left in the mix", "0 %", Bounds(0, 0.5, "Air is between 0 and 50 %."),
                            "Usually 0 to 3 %."),
    "casts.*.mix.rule": Leaf("number", "Your rule: g of powder per g of water in the mold", "1.88",
                             Bounds(0.1, 10, "A rule is between 0.1 and 10 g of powder for a gram of water.")),
    "casts.*.scooped": Leaf("mass", "Powder you scooped instead", bounds=WEIGHT,
                            hint="If the scoop came out different: how much water, and will it fill the mold?"),
    "casts.*.left": Leaf("mass", "Powder left in the bag", bounds=WEIGHT, hint="How many pieces it still makes."),
    **{f"wells.*.fill.{key}": leaf for key, leaf in _FILL.items()},
    "wells.*.sealed": Leaf("choice", "Is the inside sealed?", "no", choices=YES_NO),
    "wells.*.wax.kind": Leaf("text", "Wax"),
    "wells.*.wax.density_poured": Leaf("density", "Wax, hot as poured", "", OIL),
    "wells.*.wax.density_set": Leaf("density", "Wax, cold and set", "", OIL),
    "wells.*.basis": Leaf("choice", "The line is for", "poured", choices=(
        Choice("poured", "Hot wax, as poured", "The hot wax comes to the line, and sinks as it sets."),
        Choice("set", "Set wax", "The cold wax comes to the line, after topping up."))),
    "wells.*.fragrance.load": Leaf("share", "Fragrance load", "6 %", LOAD, "0 for none. 1 oz/lb is 6.25 % of the wax."),
    "wells.*.fragrance.basis": Leaf("choice", "The load is a share of", "wax", choices=(
        Choice("wax", "The wax"), Choice("blend", "The blend", "Wax and fragrance together."))),
    "wells.*.fragrance.density": Leaf("density", "One mL of fragrance weighs", "1 g/mL", OIL,
                                      "On your supplier's sheet as specific gravity."),
    "wells.*.dye": Leaf("share", "Dye, of the wax", "0 %", Bounds(0, 0.1, "Dye is between 0 and 10 % of the wax.")),
    "wells.*.rule": Leaf("number", "Your rule: g of wax per g of water to the line", "0.834",
                         Bounds(0.1, 3, "A rule is between 0.1 and 3 g of wax for a gram of water.")),
}


def _shapes() -> dict[str, type]:
    """What each part above a leaf must be: a list where its branches are numbered, else named parts."""
    shapes: dict[str, type] = {"": dict}
    for path in LEAVES:
        steps = path.split(".")
        for end in range(1, len(steps)):
            shapes[".".join(steps[:end])] = list if steps[end] == "*" else dict
    return shapes


SHAPES = _shapes()


def shape_at(path: str) -> type | None:
    """Whether a part of the record is a list or has named parts; nothing for a leaf or an unknown part [type].

    path: as in casts.0 [text].

    >>> shape_at("casts"), shape_at("casts.0"), shape_at("casts.0.pieces")
    (<class 'list'>, <class 'dict'>, None)
    """
    return SHAPES.get(_starred(path))


def _starred(path: str) -> str:
    return ".".join("*" if step.isdigit() else step for step in path.split("."))


@lru_cache(maxsize=1024)
def leaf_at(path: str) -> Leaf | None:
    """What a path of the record holds, or nothing where none is known [leaf].

    path: as in casts.0.pieces [text].

    >>> leaf_at("casts.0.pieces").label
    'Pieces'
    """
    return LEAVES.get(_starred(path))
