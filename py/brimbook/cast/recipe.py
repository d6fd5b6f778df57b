"""A recipe of any number of ingredients, told for one gram of powder, by absolute volume.

Formulas hold in any units that belong together; here g, mL and g/mL.
"""

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Part:
    """One dry or wet ingredient of a mix, apart from the water that is poured in.

    name is its place in the mix (powder, others.0), label what the maker calls it.
    weighed is what lies on the scale for one gram of powder [–], water_share the share
    of that which is water [–], density that of the rest [g/mL], and binder_share the
    share of the dry rest that binds [–].
    """

    name: str
    label: str
    role: str
    weighed: float
    density: float
    water_share: float = 0.0
    binder_share: float = 0.0

    @property
    def dry(self) -> float:
        """What is left without its water, for one gram of powder [–]."""
        return self.weighed * (1 - self.water_share)

    @property
    def water(self) -> float:
        """The water it brings along, for one gram of powder [–]."""
        return self.weighed * self.water_share

    @property
    def binder(self) -> float:
        """The part of it that binds, for one gram of powder [–]."""
        return self.dry * self.binder_share


@dataclass(frozen=True)
class Recipe:
    """A mix for one gram of powder: its parts, the water poured in [–], the water's density [g/mL], the air [–]."""

    parts: tuple[Part, ...]
    water: float
    water_density: float
    air: float = 0.0

    @property
    def mass(self) -> float:
        """Weight of the mix for one gram of powder [–]."""
        return math.fsum(part.weighed for part in self.parts) + self.water

    @property
    def total_water(self) -> float:
        """All the water in it, that of wet ingredients too, for one gram of powder [–]."""
        return math.fsum(part.water for part in self.parts) + self.water

    @property
    def binder(self) -> float:
        """All that binds, for one gram of powder [–]."""
        return math.fsum(part.binder for part in self.parts)

    @property
    def water_to_binder(self) -> float | None:
        """All the water over all that binds; nothing where nothing binds [–]."""
        return self.total_water / self.binder if self.binder else None

    @property
    def volume(self) -> float:
        """Fresh mix from one gram of powder, with its air [mL/g]."""
        solid = math.fsum(part.dry / part.density for part in self.parts)
        return (solid + self.total_water / self.water_density) / (1 - self.air)

    @property
    def density(self) -> float:
        """Of the fresh mix, by its table [g/mL]."""
        return self.mass / self.volume


def binder_for_shares(powder_binder_share: float, other_shares: list[float]) -> float | None:
    """All the binder beside one gram of powder, where the others are shares of all the binder [–].

    powder_binder_share: what of the powder binds [–].
    other_shares: of the other binders, each as a share of all the binder [–].

    Nothing where the others leave no room for the powder.

    >>> round(binder_for_shares(1.0, [0.1]), 4)
    1.1111
    """
    rest = 1 - math.fsum(other_shares)
    return powder_binder_share / rest if rest > 1e-9 else None


def wet(dry: float, moisture: float) -> float:
    """What a damp material weighs, for its dry weight [g].

    dry: its dry weight [g].
    moisture: free water in it over its dry weight [–].

    Source: moisture correction as in an army engineering course, EN5466, page 51.

    >>> wet(1083.0, 0.06) - 1083.0
    64.98...
    """
    return dry * (1 + moisture)


def share_of_wet(moisture: float) -> float:
    """The share of a damp material's weight that is water [–].

    moisture: free water in it over its dry weight [–].

    >>> round(share_of_wet(0.06), 4)
    0.0566
    """
    return moisture / (1 + moisture)


def weighed_for_share_of_mix(rest: float, shares: list[float]) -> list[float]:
    """What ingredients weigh that are told as shares of the whole wet mix [g].

    rest: weight of everything else in the mix [g].
    shares: of the whole mix, one for each of them [–].

    >>> [round(each, 3) for each in weighed_for_share_of_mix(1450.0, [0.02, 0.01])]
    [29.897, 14.948]
    """
    total = rest / (1 - math.fsum(shares))
    return [total * share for share in shares]


# The standard's limit for all the pigment together, of the cement.
MOST_PIGMENT = 0.10


def most_pigment(cement: float, own_limits: list[float]) -> float:
    """The most that all the pigment in a mix may weigh together, dry [g].

    cement: all that binds [g].
    own_limits: the largest dose that is told for each of the pigments, of the cement [–].

    Source: ASTM C979: at most 10 % of the cement by mass, and no more than the lowest limit of any of them.

    >>> most_pigment(1000.0, []), most_pigment(1000.0, [0.06, 0.10])
    (100.0, 60.0)
    """
    return cement * min([MOST_PIGMENT, *own_limits])


# ACI 211.1 water-cement ratio and mean 28-day strength of concrete that is not air-entrained, MPa.
STRENGTHS = ((0.41, 41.4), (0.48, 34.5), (0.57, 27.6), (0.68, 20.7), (0.82, 13.8))


def strength(water_to_cement: float) -> float | None:
    """Compressive strength at 28 days of concrete without added air; nothing outside the table [MPa].

    water_to_cement: all the water over all the cement, by weight [–].

    Source: table of ACI 211.1, straight lines between its entries.

    >>> strength(0.48), strength(0.9)
    (34.5, None)
    """
    for (low, strong), (high, weak) in zip(STRENGTHS, STRENGTHS[1:]):
        if low <= water_to_cement <= high:
            return strong + (weak - strong) * (water_to_cement - low) / (high - low)
    return None
