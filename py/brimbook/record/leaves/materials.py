"""A material: what its data sheet says, on the maker's shelf and, copied, in a vessel."""

from dataclasses import replace

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import MONEY, SHARE, TIME, Choice, Leaf
from brimbook.record.leaves.clamping import CLAMPING
from brimbook.record.leaves.finishing import FINISHING
from brimbook.record.leaves.melting import MELTING
from brimbook.record.leaves.scent import LEAVES as OF_SCENT, SCENT
from brimbook.record.leaves.supply import LOT, PACKS, bought
from brimbook.record.leaves.wax import WAX
from brimbook.record.leaves.well import LEAVES as OF_WELL

PARTICLES = Bounds(0.05, 8.0, "Particles weigh between 0.05 and 8 g/mL: 3.15 for Portland cement, 2.65 for sand. "
                              "This is not the weight of the loose heap.")
DEMAND = Bounds(0.05, 1.5, "Type the water for one part of the material, such as 0.25, or the material to water, 4:1.")
GIVEN_OFF = Bounds(0.0, 1000, "Heat here is between 0 and 1000 kJ/kg.")

ROLES = (
    Choice("binder", "Binder", "What sets: cement, plaster, or a bagged castable."),
    Choice("pozzolan", "Pozzolan", "Counts as binder beside cement: metakaolin, silica fume, fly ash, slag."),
    Choice("sand", "Sand or filler", "Takes up room and does not set."),
    Choice("pigment", "Pigment", "Powder color."),
    Choice("fiber", "Fiber", "Glass or plastic, chopped."),
    Choice("plasticizer", "Plasticizer", "Makes the mix flow with less water."),
    Choice("polymer", "Polymer", "Acrylic or the like, often in water."),
    Choice("wax", "Wax"),
    Choice("fragrance", "Fragrance"),
    Choice("dye", "Dye"),
    Choice("coating", "Sealer, primer or paint"),
    Choice("packaging", "Packaging", "Boxes, lids, tissue, labels: what is counted."),
    Choice("plastic", "Print plastic", "By the spool."),
)
# What can stand in a mix.
MIX_ROLES = ("binder", "pozzolan", "sand", "pigment", "fiber", "plasticizer", "polymer")
# By what each is bought; what is not told here, by weight.
MEASURES = {"coating": "volume", "packaging": "pieces", "wick": "pieces"}
FOLLOWS = (
    Choice("portland", "As Portland cement", "Maturity: its time follows the bench temperature by a known law."),
    Choice("observed", "As I have seen it", "Your own time at your own temperature, corrected with a wide ±."),
)

MATERIAL = {
    "kind": Leaf("text", "Material", longest=100),
    "name": Leaf("text", "Name", longest=80),
    "role": Leaf("choice", "What it is", "binder", choices=ROLES),
    "particle_density": Leaf("density", "Particle density", "", PARTICLES,
                             "On the data sheet as specific gravity or absolute density; not the loose heap."),
    "binder_share": Leaf("share", "Binder in it", "100 %", SHARE,
                         "Less than 100 % for a bagged mix with sand in it. Pigment and water are counted against this."),
    "water_content": Leaf("share", "Water in it", "0 %", Bounds(0.0, 0.95, "Water in it is between 0 and 95 %."),
                          "Of a liquid polymer or plasticizer: 100 % less its solids."),
    "water_least": Leaf("ratio", "Least water it takes", "", DEMAND, "Of its own weight, by its data sheet."),
    "water_most": Leaf("ratio", "Most water it takes", "", DEMAND, "More than this weakens it."),
    "most": Leaf("share", "Most of it, of the binder", "", SHARE, "The largest dose on its data sheet. Of a fiber told as a share of the mix, that share."),
    "working_time": Leaf("duration", "Working time", "", TIME, "From the water to when it no longer pours."),
    "demold_time": Leaf("duration", "Time to demold", "", TIME, "From the pour, at the temperature below.", unit="h"),
    "reference_temperature": Leaf("temperature", "Those times are for a bench at", "20 °C",
                                  Bounds(0, 50, "A bench is between 0 and 50 °C (32 and 122 °F).")),
    "follows": Leaf("choice", "In the cold it slows down", "observed", choices=FOLLOWS),
    "heat": Leaf("heat", "Heat it gives off as it sets", "", GIVEN_OFF, "While it is in the mold, for a kg of it."),
    **bought("mass", named=False),
    "sheet": Leaf("text", "Data sheet it is copied from", longest=200),
}

NONE_LEFT = 0.0
STOCK = {
    "mass": ("stock_weight", Leaf("mass", "On hand", "", Bounds(NONE_LEFT, 10_000_000, "What is on hand is between 0 and 10 t."), "Empty: none counted.")),
    "volume": ("stock_volume", Leaf("volume", "On hand", "", Bounds(NONE_LEFT, 10_000_000, "What is on hand is between 0 and 10000 L."), "Empty: none counted.")),
    "pieces": ("stock_pieces", Leaf("count", "On hand", "", Bounds(NONE_LEFT, 10_000_000, "Type how many are on hand: 0 or more."), "Empty: none counted.")),
}
# What only the shelf keeps of anything that is bought: other packs it comes in, what is on hand, its lots, the newest last.
KEPT = {
    **{f"packs.*.{path.removeprefix('pack_')}": leaf for path, leaf in PACKS.values()},
    "packs.*.price": Leaf("money", "It costs", "", MONEY, private=True),
    **dict(STOCK.values()),
    "lots.*.lot": LOT,
    "lots.*.got_on": Leaf("date", "Got on"),
    "lots.*.remarks": Leaf("text", "Remarks", longest=200),
}

# What the sheet of each role says beside what is asked of everything; the same leaves as in a vessel, which takes a copy of them.
FACTS: dict[str, dict[str, Leaf]] = {
    "wax": {
        **{f"density_{state}": OF_WELL[f"wells.*.wax.density_{state}"] for state in ("poured", "set")},
        **{name: WAX[name] for name in ("density_at", "expansion")},
        "wax_most": replace(OF_SCENT["wells.*.fragrance.wax_most"], label="It takes at most, of fragrance"),
        **{name: MELTING[name] for name in ("melts_at", "melt_at", "scent_at", "pour_at")},
    },
    "fragrance": {
        **{name: SCENT[name] for name in ("density", "flash", "flash_cup", "supplier_most", "supplier_basis", "ifra_most")},
        **{name: leaf for name, leaf in SCENT.items() if name.startswith("sensitizers.")},
    },
    "coating": {
        "coverage": replace(FINISHING["sealer_coverage"], label="One liter of it covers"),
        "hours": replace(FINISHING["sealer_hours"], label="Each coat dries for", usual=""),
    },
    "plastic": {"plastic_density": CLAMPING["plastic_density"]},
}

LEAVES = {
    **{f"materials.*.{name}": leaf for name, leaf in MATERIAL.items()},
    **{f"materials.*.{name}": leaf for facts in FACTS.values() for name, leaf in facts.items()},
    **{f"materials.*.{path}": leaf for path, leaf in PACKS.values()},
    **{f"materials.*.{name}": leaf for name, leaf in KEPT.items()},
}
