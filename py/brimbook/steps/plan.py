"""What one bowl of mix is planned to be: each ingredient's weight, the mix it makes, the pieces it fills."""

import math
from dataclasses import dataclass

from brimbook.cast.recipe import Recipe


@dataclass(frozen=True)
class Portion:
    """One thing to weigh: name is powder, others.0 … or water; place is where the record speaks of it."""

    name: str
    label: str
    grams: float
    place: str


@dataclass(frozen=True)
class Filled:
    """One mold that the bowl fills: how many pieces, and the mix that one takes without allowance [mL]."""

    place: str
    pieces: int
    volume: float


@dataclass(frozen=True)
class Plan:
    """A bowl of mix as planned; volumes in mL, weights in g.

    portions are what to weigh, the powder first and the water last; bare is the room of
    all the pieces, allowance the share of mix beyond it, per_gram the mix from a gram of
    powder as it is now known; the ± of the volume and of the mix's density are shares.
    """

    portions: tuple[Portion, ...]
    filled: tuple[Filled, ...]
    bare: float
    allowance: float
    per_gram: float
    volume_relative: float
    density_relative: float
    recipe: Recipe

    @property
    def relative(self) -> float:
        """The ± of each weight as a share of it [–]."""
        return math.hypot(self.volume_relative, self.density_relative)

    @property
    def volume(self) -> float:
        """Mix needed, with its allowance [mL]."""
        return self.bare * (1 + self.allowance)

    @property
    def pieces(self) -> int:
        """Pieces that the bowl fills, of all its molds [count]."""
        return sum(each.pieces for each in self.filled)

    @property
    def density(self) -> float:
        """Of the fresh mix as it is now known [g/mL]."""
        return self.recipe.mass / self.per_gram
