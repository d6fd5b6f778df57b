"""What is bought of a material: its pack, what that costs, and the lot it is of."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import MONEY, VOLUME, WEIGHT, Leaf

PIECES = Bounds(1, 1_000_000, "A pack holds at least 1 piece, and at most 1000000.")

PACKS = {
    "mass": ("pack_weight", Leaf("mass", "A pack weighs", "", WEIGHT)),
    "volume": ("pack_volume", Leaf("volume", "A pack holds", "", VOLUME)),
    "pieces": ("pack_pieces", Leaf("count", "Pieces in a pack", "", PIECES)),
}
PRICE = Leaf("money", "A pack costs", "", MONEY, private=True)
LOT = Leaf("text", "Lot", longest=60, hint="As printed on the pack: with it a batch can be traced.")


def bought(measure: str, named: bool = True) -> dict[str, Leaf]:
    """The leaves of something that a vessel takes of a pack [leaves].

    measure: mass, volume or pieces [text].
    named: is its name asked here [yes or no]?

    >>> list(bought("pieces"))
    ['name', 'pack_pieces', 'pack_price', 'lot']
    """
    path, pack = PACKS[measure]
    name = {"name": Leaf("text", "What you call it", longest=80)} if named else {}
    return {**name, path: pack, "pack_price": PRICE, "lot": LOT}
