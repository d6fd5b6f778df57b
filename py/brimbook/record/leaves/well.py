"""The fill: wax, fragrance and dye for a well."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import YES_NO, Choice, Leaf
from brimbook.record.leaves.fill import WELL_FILL

OIL = Bounds(0.5, 1.6, "Wax and fragrance weigh between 0.5 and 1.6 g/mL.")
LOAD = Bounds(0.0, 0.5, "A share here is between 0 and 50 %. 6 % is common; 1 oz/lb is 6.25 %.")

POT = (Choice("own", "A pot of its own"), Choice("first", "The pot of the first well", "The same wax and fragrance."))

LEAVES = {
    **{f"wells.*.fill.{key}": leaf for key, leaf in WELL_FILL.items()},
    "wells.*.pot": Leaf("choice", "Filled from", "own", choices=POT),
    "wells.*.sealed": Leaf("choice", "Is the inside sealed?", "no", choices=YES_NO),
    "wells.*.wax.kind": Leaf("text", "Wax", longest=100),
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
