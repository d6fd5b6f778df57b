"""What a vessel takes of everything that is bought."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.pot import Potful


@dataclass(frozen=True)
class Supply:
    """What one vessel takes of something that is bought, as really used: what is wasted counts.

    place: of the record, below which its pack, price and lot stand.
    role: on the shelf: one of the roles of materials, or wick.
    measure: mass, volume or pieces; each and pack are in g, mL or pieces.
    step: where it is lost when something fails: cast, candle or packing.
    key: of the figure that each is worked out from, if there is one.
    """

    place: str
    role: str
    name: str
    measure: str
    each: float
    step: str
    key: str = ""
    pack: float | None = None
    price: float | None = None
    lot: str = ""


def supplies_of(said: Said, figures: dict[str, Figure], potfuls: dict[str, Potful]) -> tuple[Supply, ...]:
    """What one vessel takes of everything that is bought, as far as it is known [supplies].

    said: the record as understood [said].
    figures: worked out so far, by key [figures].
    potfuls: by the path of the well whose pot it is [potfuls].
    """
    return ()
