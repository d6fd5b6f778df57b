"""Melting: temperatures, stirring, the thermometer's log, and the rest before a burn test."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import ROOM_AIR, Leaf

DAY = 86400
HOT = Bounds(30.0, 120.0, "Wax here is between 30 and 120 °C (86 and 248 °F): hotter comes too near its flash point.")
READ = Bounds(0.0, 120.0, "A reading here is between 0 and 120 °C (32 and 248 °F). If the wax is hotter: heat off, lid on.")
WARM = Bounds(0.0, 80.0, "A vessel is warmed to 80 °C (176 °F) at most.")
STIR = Bounds(0.0, 7200.0, "Stirring takes between 0 and 120 minutes: usually 2.")
REST = Bounds(0.0, 366 * DAY, "A rest here is between 0 and a year. Check the digits and the unit.")

MELTING = {
    "melt_at": Leaf("temperature", "Heat the wax to", "", HOT, "In a water bath: it stays below 100 °C (212 °F)."),
    "scent_at": Leaf("temperature", "Fragrance goes in at", "", HOT, "The sheets of your wax and your fragrance decide."),
    "stir": Leaf("duration", "Stir for", "2 min", STIR, "Slowly, without beating in air."),
    "pour_at": Leaf("temperature", "Pour at", "", HOT, "The sheet of your wax decides."),
    "second_at": Leaf("temperature", "Second pour at", "", HOT, "A little hotter than the first, so that it takes hold."),
    "melts_at": Leaf("temperature", "Its sheet says it melts at", "", Bounds(
        20.0, 100.0, "A wax melts between 20 and 100 °C (68 and 212 °F)."), "Empty: as its kind does."),
    "room": Leaf("temperature", "Room", "20 °C", ROOM_AIR, "Where the pot cools."),
    "vessel_at": Leaf("temperature", "Warm the vessel to", "", WARM, "If you warm it: dry and gently."),
    "readings.*.at": Leaf("moment", "Read"),
    "readings.*.temperature": Leaf("temperature", "The thermometer says", "", READ, "In the middle of the wax, off the bottom."),
    "poured": Leaf("moment", "Poured into the vessel"),
    "rest": Leaf("duration", "Rests before its burn test", "", REST, "Wax goes on hardening for days.", unit="d"),
}

LEAVES: dict[str, Leaf] = {f"wells.*.melting.{name}": leaf for name, leaf in MELTING.items()}
