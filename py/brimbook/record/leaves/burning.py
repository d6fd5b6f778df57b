"""The burn test: its log, cycle by cycle."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import ROOM_AIR, WEIGHT, Choice, Leaf

LONG = Bounds(0.1, 1000, "A length here is between 0.1 mm and 1 m. Check the digits and the unit.")
FLAME = Bounds(0.0, 500, "A flame here is between 0 and 500 mm (20 in) tall. Check the digits and the unit.")
BURN = Bounds(60, 72 * 3600, "A burn here takes between 1 minute and 72 hours. Check the digits and the unit.")
SMOKE = Bounds(0, 7200, "After-smoke here lasts between 0 seconds and 2 hours. Check the digits and the unit.")
WALL = Bounds(-20, 400, "A wall here is between −20 and 400 °C (−4 and 752 °F). Check the digits and the unit.")
REST = Bounds(1, 200, "What is left is between 1 and 200 mm high: usually 13 mm (1/2 in).")
STEP = Bounds(0.001, 100, "The steps of a scale are between 0.001 g and 100 g: usually 1 g.")

RESTS = (Choice("height", "So high", "In a straight vessel: its height over the surface of the wax."),
         Choice("weight", "So heavy", "Where the vessel narrows below, or its size is not known."))
REACHED = (Choice("unseen", "Not looked"), Choice("no", "Not yet"), Choice("wall", "To the wall"))
SOOT = (Choice("none", "None seen"), Choice("little", "A little"), Choice("much", "Much"))
WICK_LOOKS = (Choice("fine", "Fine"), Choice("mushroom", "Mushroomed"), Choice("drowned", "Drowned"))

CYCLE = {
    "lit_at": Leaf("moment", "Lit"),
    "out_at": Leaf("moment", "Put out"),
    "before": Leaf("mass", "Weight before", "", WEIGHT, "The whole candle, vessel and all, cold."),
    "after": Leaf("mass", "Weight after", "", WEIGHT, "Once the wax is firm again, or carried level while it is not."),
    "pool": Leaf("length", "Melt pool, across", "", LONG, "Of one wick, just before it is put out."),
    "reached": Leaf("choice", "Did the pool reach the wall?", "unseen", choices=REACHED),
    "flame": Leaf("length", "Tallest flame", "", FLAME, "From the side, the ruler well clear of the flame."),
    "soot": Leaf("choice", "Soot", "none", choices=SOOT),
    "wick_looks": Leaf("choice", "Wick", "fine", choices=WICK_LOOKS),
    "wall": Leaf("temperature", "Hottest wall", "", WALL, "By a surface thermometer, never by hand."),
    "trimmed": Leaf("length", "Wick trimmed to", "", Bounds(0.0, 100, "A wick here stands between 0 and 100 mm high.")),
    "minutes": Leaf("duration", "Burned for", "", BURN, "Only if it was not noted when it was lit and put out."),
    "after_smoke": Leaf("duration", "Smoked on after it was put out", "", SMOKE, "In seconds.", unit="s"),
    "remarks": Leaf("text", "Remarks", longest=300),
}

BURNING = {
    "wick": Leaf("text", "Wick tried", hint="Its name and size."),
    "rest": Leaf("choice", "Leave at the end", "height", choices=RESTS),
    "rest_height": Leaf("length", "Wax left at the end, high", "13 mm", REST, "Usually 13 mm (1/2 in)."),
    "rest_weight": Leaf("mass", "Wax left at the end, weight", "", WEIGHT),
    "vessel_weight": Leaf("mass", "Vessel empty, with its wick", "", WEIGHT,
                          "If you weighed it before it was filled: the first weight then tells the wax."),
    "room": Leaf("temperature", "Room", "", ROOM_AIR),
    "readability": Leaf("mass", "Your scale shows steps of", "", STEP),
    **{f"cycles.*.{name}": leaf for name, leaf in CYCLE.items()},
}

LEAVES: dict[str, Leaf] = {f"wells.*.burning.{name}": leaf for name, leaf in BURNING.items()}
