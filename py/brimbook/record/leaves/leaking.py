"""The leak test: the vessel filled with water, weighed, and weighed again."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, ROOM_AIR, TIME, WEIGHT, Choice, Leaf

AIR = (Choice("covered", "Covered"), Choice("open", "Open"), Choice("cup", "Beside a cup"))

LEAKING = {
    "dry": Leaf("mass", "Dry, before the test", bounds=WEIGHT, hint="As it is tested: a sealer in it weighs too."),
    "filled": Leaf("mass", "Filled with water", bounds=WEIGHT, hint="Outside wiped dry."),
    "later": Leaf("mass", "Still filled, later", bounds=WEIGHT, hint="Outside wiped dry again; nothing topped up."),
    "emptied": Leaf("mass", "Emptied and wiped", bounds=WEIGHT, hint="What it weighs more than dry is in its wall."),
    "hours": Leaf("duration", "Time between the two", "24 h", TIME, unit="h"),
    "air": Leaf("choice", "It stood", "covered", choices=AIR,
                hint="Covered, nothing dries off and the test is sharpest. A cup of water beside it tells what dries off."),
    "opening": Leaf("length", "Opening of the vessel, across", "", DIMENSION, "At the water."),
    "opening_other": Leaf("length", "Opening, other way", "", DIMENSION, "Leave empty if it is round."),
    "temperature": Leaf("temperature", "Room", "20 °C", ROOM_AIR),
    "humidity": Leaf("share", "Humidity of the room", "50 %", Bounds(0.01, 1.0, "Humidity is between 1 and 100 %.")),
    "cup_first": Leaf("mass", "Cup of water, at first", bounds=WEIGHT),
    "cup_later": Leaf("mass", "Cup of water, later", bounds=WEIGHT, hint="Weighed when the vessel is."),
    "cup_opening": Leaf("length", "Opening of the cup, across", "", DIMENSION, "A round one, as full as the vessel."),
    "readability": Leaf("mass", "Your scale shows steps of", "",
                        Bounds(0.001, 100, "The steps of a scale are between 0.001 g and 100 g: usually 1 g.")),
}

LEAVES: dict[str, Leaf] = {f"casts.*.leaking.{name}": leaf for name, leaf in LEAKING.items()}
