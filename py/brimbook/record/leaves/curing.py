"""The clock: from the pour to demolding, curing and the days after."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import ROOM_AIR, Choice, Leaf

DAY = 86400
WAIT = Bounds(0.0, 366 * DAY, "A wait here is between 0 and a year. Check the digits and the unit.")
ENERGY = Bounds(1.0, 200.0, "An activation energy is between 1 and 200 kJ/mol: usually 33.5.")
STANDSTILL = Bounds(-20.0, 30.0, "A datum is between −20 and 30 °C (−4 and 86 °F): usually 0 or −10 °C.")

LAWS = (
    Choice("arrhenius", "Equivalent age", "By activation energy (Arrhenius): better over a wide range."),
    Choice("nurse_saul", "Temperature-time", "By degrees above a datum (Nurse–Saul): simple, and rough in the cold."),
)

CURING = {
    "poured_at": Leaf("moment", "Poured"),
    "temperature": Leaf("temperature", "Bench", "20 °C", ROOM_AIR, "Where the piece stands. If it changes, log it."),
    "temperatures.*.at": Leaf("moment", "Read"),
    "temperatures.*.temperature": Leaf("temperature", "Temperature", "", ROOM_AIR, "Beside the piece, or on it."),
    "law": Leaf("choice", "It ages by", "arrhenius", choices=LAWS),
    "energy": Leaf("number", "Activation energy, in kJ/mol", "33.5", ENERGY,
                   "33.5 is today's default for Portland cement, 41.5 an older one."),
    "datum": Leaf("temperature", "It stands still at", "0 °C", STANDSTILL,
                  "The datum: 0 °C is the standard's default, −10 °C the traditional one."),
    "damp": Leaf("duration", "Keep damp for", "", WAIT, "From demolding on, wrapped or misted. 0 for plaster.", unit="d"),
    "dry": Leaf("duration", "Then dry for", "7 d", WAIT, "Until you weigh it as it dries: then its weights tell.", unit="d"),
    "before_filling": Leaf("duration", "From the last coat to the wax", "1 d", WAIT,
                           "The label of the sealer or paint decides.", unit="d"),
}

LEAVES: dict[str, Leaf] = {f"casts.*.curing.{name}": leaf for name, leaf in CURING.items()}
