"""The bowl: how much it takes, how fast one pours from it, what is held back of the water."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import VOLUME, Leaf

MINUTES = Bounds(1.0, 86_400, "A time here is between 1 second and a day. Check the digits and the unit.")

LEAVES: dict[str, Leaf] = {
    "casts.*.batch.bowl": Leaf("volume", "Mix your bowl takes", "", VOLUME,
                               "About two thirds of what it holds to the brim, so that you can stir. Empty: enough for all."),
    "casts.*.batch.molds": Leaf("count", "Molds at hand", "", Bounds(
        1, 10_000, "Type how many of the mold you have: at least 1, and at most 10000."), "Empty: one for each piece."),
    "casts.*.batch.mixing_time": Leaf("duration", "Mixing takes", "3 min", MINUTES, "From the water to the first pour."),
    "casts.*.batch.pouring_time": Leaf("duration", "Pouring one piece takes", "1 min", MINUTES,
                                       "With tapping out the bubbles."),
    "casts.*.held_back": Leaf("share", "Water held back at first", "25 %", Bounds(
        0.0, 0.9, "Hold back between 0 and 90 % of the water."), "Added little by little until the mix flows. Plaster: none, it is sifted into all of its water."),
}
