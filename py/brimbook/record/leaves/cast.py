"""The mix of a cast: how many pieces, from what, and how it was scooped."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import WEIGHT, Choice, Leaf
from brimbook.record.leaves.fill import FILL
from brimbook.record.leaves.materials import MATERIAL

PARTICLES = Bounds(1.0, 8.0, "The particles of a powder weigh between 1 and 8 g/mL: 2.98 for a rapid-setting cement. "
                             "This is not the weight of the loose heap.")

RECIPES = (
    Choice("ratio", "By parts", "4:1, or 1:2:0.4 for cement, sand and water; small doses by percent."),
    Choice("percent", "By percent", "Each ingredient as a percent of the binder, water too."),
    Choice("weights", "By a trial batch", "What you weighed for a batch that was right."),
)
BASES = (
    Choice("binder", "The binder", "Cement and pozzolans together."),
    Choice("mix", "The whole wet mix", "As fiber is often given."),
)
DOSE = Bounds(0.0, 10.0, "A share here is between 0 and 1000 % of the binder.")

OTHER = {
    **MATERIAL,
    "share": Leaf("share", "Of the binder", "", DOSE, "By weight, dry."),
    "base": Leaf("choice", "That share is of", "binder", choices=BASES),
    "trial": Leaf("mass", "In the trial batch", bounds=WEIGHT),
    "moisture": Leaf("share", "Free moisture in it", "0 %", Bounds(0.0, 0.3, "Free moisture is between 0 and 30 %."),
                     "Of damp sand: what it loses when dried, over its dry weight, less what its grains "
                     "soak up (about 1 %). That much less water is added."),
    "scooped": Leaf("mass", "Weighed instead", bounds=WEIGHT, hint="If it came out different, all else follows."),
    "left": Leaf("mass", "Left of it", bounds=WEIGHT, hint="Empty: enough."),
}

LEAVES = {
    "casts.*.pieces": Leaf("count", "Pieces", "1", Bounds(1, 10_000, "Cast at least 1 piece, and at most 10000.")),
    **{f"casts.*.cavity.{key}": leaf for key, leaf in FILL.items()},
    "casts.*.allowance": Leaf("share", "Allowance", "10 %", Bounds(0, 2, "An allowance is between 0 and 200 %."),
                              "Extra mix for what stays in the bowl and on the tools."),
    "casts.*.allowance_from": Leaf("choice", "The allowance is taken from", "pours", choices=(
        Choice("pours", "My pours", "What the logged pours needed, and a margin."),
        Choice("typed", "What I type"))),
    "casts.*.bowl": Leaf("choice", "Poured from", "own", choices=(
        Choice("own", "A bowl of its own"), Choice("first", "The bowl of the first mold"))),
    **{f"casts.*.mix.powder.{name}": leaf for name, leaf in MATERIAL.items()},
    "casts.*.mix.powder.kind": Leaf("text", "Powder", longest=100),
    "casts.*.mix.powder.particle_density": Leaf(
        "density", "Particle density of the powder", "", PARTICLES,
        "On the data sheet as specific gravity or absolute density; not the loose heap."),
    "casts.*.mix.water_to_powder": Leaf(
        "ratio", "Powder to water, by weight", "4:1",
        Bounds(0.05, 1.0, "Type powder to water, such as 4:1, or the water for one part of powder, such as 0.25."),
        "4:1 and 0.25 are the same mix."),
    **{f"casts.*.mix.others.*.{name}": leaf for name, leaf in OTHER.items()},
    "casts.*.mix.recipe": Leaf("choice", "The recipe is given", "ratio", choices=RECIPES),
    "casts.*.mix.parts": Leaf(
        "parts", "Parts by weight, the water last", "",
        Bounds(0.001, 1000, "Type the parts in the order of the ingredients, the water last, such as 1:2:0.4."),
        "Dry ingredients in their order here, then the water."),
    "casts.*.mix.water_share": Leaf("share", "Water, of the binder", "40 %", Bounds(
        0.05, 1.5, "Water is between 5 and 150 % of the binder."), "Water-to-binder ratio; water in wet ingredients counts."),
    "casts.*.mix.trial_powder": Leaf("mass", "Powder in the trial batch", bounds=WEIGHT),
    "casts.*.mix.trial_water": Leaf("mass", "Water in the trial batch", bounds=WEIGHT),
    "casts.*.mix.air": Leaf("share", "Air left in the mix", "0 %", Bounds(0, 0.5, "Air is between 0 and 50 %."),
                            "Usually 0 to 3 %."),
    "casts.*.mix.rule": Leaf("number", "Your rule: g of powder per g of water in the mold", "1.88",
                             Bounds(0.1, 10, "A rule is between 0.1 and 10 g of powder for a gram of water.")),
    "casts.*.scooped": Leaf("mass", "Powder you scooped instead", bounds=WEIGHT,
                            hint="If the scoop came out different: how much water, and will it fill the mold?"),
    "casts.*.scooped_water": Leaf("mass", "Water you weighed instead", bounds=WEIGHT,
                                  hint="Too much: the powder follows. Too little: the rest is added."),
    "casts.*.left": Leaf("mass", "Powder left in the bag", bounds=WEIGHT, hint="How many pieces it still makes. Empty: enough."),
}
