"""The pot: how many vessels are filled from it, what stays in it, how large it is."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import VOLUME, WEIGHT, Leaf

PIECES = Bounds(1, 10_000, "Fill at least 1 vessel, and at most 10000.")
LEFT = Bounds(0.0, 100_000, "What stays behind is between 0 and 100 kg. Check the digits and the unit.")
FULL = Bounds(0.05, 1.0, "A pot is filled to between 5 and 100 %: usually to 75 %.")

POT = {
    "pieces": Leaf("count", "Vessels to fill", "", PIECES),
    "left": Leaf("mass", "Stays in the pot and on tools", "5 g", LEFT),
    "melted": Leaf("mass", "Wax you melted instead", bounds=WEIGHT, hint="If it came out different, the fragrance follows."),
    "capacity": Leaf("volume", "Your pot holds, to the brim", "", VOLUME),
    "fill_to": Leaf("share", "Fill it at most to", "75 %", FULL, "Room to stir and to carry it."),
}

LEAVES: dict[str, Leaf] = {f"wells.*.batch.{name}": leaf for name, leaf in POT.items()}
