"""From what the maker said of the mix to its recipe for one gram of powder."""

import math
from dataclasses import dataclass

from brimbook.cast.materials import generic
from brimbook.cast.recipe import Part, Recipe, binder_for_shares, share_of_wet, weighed_for_share_of_mix
from brimbook.fill import water
from brimbook.quantity import show
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said
from brimbook.steps.facts import fact, name_of

# These take part in a ratio such as 1:2:0.4; the others are small doses.
BULK = ("binder", "pozzolan", "sand")
BINDING = ("binder", "pozzolan")
# A bench keeps no more ingredients apart than this; what a record holds beyond them is kept, and told.
MOST_OTHERS = 100


@dataclass
class _Other:
    """An ingredient beside the powder, as far as it is understood."""

    place: str
    name: str
    label: str
    role: str
    density: float
    water_share: float
    binder_share: float
    dry: float | None = None


def recipe_of(said: Said, place: str) -> Recipe | None:
    """The recipe of one cast; nothing while an entry is missing or faulty [recipe].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    mix = f"{place}.mix"
    density, air = fact(said, f"{mix}.powder", "particle_density"), said.value(f"{mix}.air")
    binder_share = fact(said, f"{mix}.powder", "binder_share")
    others = _others(said, mix)
    if density is None or air is None or binder_share is None or others is None:
        return None
    way = said.value(f"{mix}.recipe")
    water_total = {"ratio": _by_parts, "percent": _by_percent, "weights": _by_trial}[way](
        said, mix, others, binder_share.value) if way else None
    if water_total is None or any(other.dry is None for other in others) or not _leaves_room(said, way, others):
        return None
    if not _water_makes_sense(said, mix, way, others, water_total):
        return None
    powder = Part("powder", name_of(said, f"{mix}.powder") or "Powder", "binder", 1.0, density.value, 0.0,
                  binder_share.value)
    parts = (powder, *_weighed(said, others, water_total))
    poured = water_total - sum(part.water for part in parts)
    if poured <= 0:
        said.fault(_water_path(mix, way, others), "The wet ingredients already hold more water than this: dry the sand, or "
                   "type more water.")
        return None
    return Recipe(parts, poured, water.density(water.USUAL_TEMPERATURE), air)


def bulk(said: Said, mix: str) -> list[str]:
    """The paths of the ingredients beside the powder that take part in a ratio [texts].

    said: the record as understood [said].
    mix: path of the mix [text].
    """
    return [place for place in others_of(said, mix) if role_of(said, place) in BULK]


def others_of(said: Said, mix: str) -> list[str]:
    """The paths of the ingredients beside the powder, as many as a mix has room for, and one more if it has more [texts].

    said: the record as understood [said].
    mix: path of the mix [text].
    """
    return [f"{mix}.others.{row}" for row in range(min(said.count(f"{mix}.others"), MOST_OTHERS + 1))]


def role_of(said: Said, material: str) -> str:
    """What an ingredient does in the mix [text].

    said: the record as understood [said].
    material: path of the ingredient [text].
    """
    known = generic(said.text(f"{material}.kind"))
    if known is not None and not said.typed(f"{material}.role"):
        return known.role
    return said.value(f"{material}.role") or "sand"


def _others(said: Said, mix: str) -> list[_Other] | None:
    found, places = [], others_of(said, mix)
    if len(places) > MOST_OTHERS:
        said.fault(f"{places[-1]}.kind", f"A mix here has room for {MOST_OTHERS} ingredients beside the powder. Remove this one.")
        return None
    for row, place in enumerate(places):
        density, content = fact(said, place, "particle_density"), fact(said, place, "water_content")
        moisture, binds = said.value(f"{place}.moisture"), fact(said, place, "binder_share")
        if None in (density, content, moisture, binds):
            return None
        role = role_of(said, place)
        water_share = share_of_wet(moisture) if role == "sand" else content.value
        label = name_of(said, place) or f"Ingredient {row + 2}"
        found.append(_Other(place, f"others.{row}", label, role, density.value, water_share,
                            binds.value if role in BINDING else 0.0))
    return found


def _water_makes_sense(said: Said, mix: str, way: str, others: list[_Other], water_total: float) -> bool:
    """Parts in another order, or a slip in the trial batch, show in the water beside all that sets."""
    path, bounds = _water_path(mix, way, others), leaf_at(f"{mix}.water_share").bounds
    share = water_total / (1 + math.fsum(other.dry for other in others if other.role in BINDING))
    if not path.endswith(("parts", "trial_water")) or bounds.least <= share <= bounds.most:
        return True
    told = f"So the water is {show.percent(share, said.display, 0)} of the powder that sets; it is between 5 and 150 %. "
    said.fault(path, told + ("Type the parts in the order named here, the water last." if path.endswith("parts")
                             else "Check both weights."))
    return False


def _water_path(mix: str, way: str, others: list[_Other]) -> str:
    in_parts = any(other.role in BULK for other in others)
    return {"ratio": f"{mix}.parts" if in_parts else f"{mix}.water_to_powder", "percent": f"{mix}.water_share",
            "weights": f"{mix}.trial_water"}[way]


def _by_parts(said: Said, mix: str, others: list[_Other], binder_share: float) -> float | None:
    """Dry weights from the parts; small doses are shares of the binder."""
    grains = [other for other in others if other.role in BULK]
    if not grains:
        total = said.value(f"{mix}.water_to_powder")
    else:
        parts = said.value(f"{mix}.parts")
        if parts is None:
            return None
        if len(parts) != len(grains) + 2:
            said.fault(f"{mix}.parts", f"The mix has {len(grains) + 1} dry ingredients and the water: type "
                       f"{len(grains) + 2} numbers, such as {':'.join(['1', *['2'] * len(grains), '0.4'])}.")
            return None
        for other, part in zip(grains, parts[1:]):
            other.dry = part / parts[0]
        total = parts[-1] / parts[0]
    _dose(said, [other for other in others if other.role not in BULK], _binder(others, binder_share))
    return total


def _by_percent(said: Said, mix: str, others: list[_Other], binder_share: float) -> float | None:
    """Dry weights from shares of all the binder, the water too."""
    shares = {other.name: said.value(f"{other.place}.share") for other in others if other.role in BINDING}
    water_share = said.value(f"{mix}.water_share")
    if None in shares.values() or water_share is None:
        return None
    binder = binder_for_shares(binder_share, list(shares.values()))
    if binder_share <= 0:
        said.fault(f"{mix}.powder.binder_share", "Nothing in this powder binds, so percents of it come to nothing: type how "
                   "much cement is in it.")
        return None
    binding = [other for other in others if other.role in BINDING]
    if binder is None:
        said.fault(f"{binding[0].place}.share", "The binders beside the powder come to 100 % or more: leave room for the "
                   "powder.")
        return None
    for other in binding:
        if other.binder_share <= 0:
            said.fault(f"{other.place}.share", "Nothing in this ingredient binds: call it sand or filler.")
        else:
            other.dry = shares[other.name] * binder / other.binder_share
    _dose(said, [other for other in others if other.role not in BINDING], binder)
    return water_share * binder


def _by_trial(said: Said, mix: str, others: list[_Other], binder_share: float) -> float | None:
    powder, poured = said.value(f"{mix}.trial_powder"), said.value(f"{mix}.trial_water")
    weights = [said.value(f"{other.place}.trial") for other in others]
    if None in (powder, poured, *weights):
        return None
    for other, weight in zip(others, weights):
        other.dry = weight * (1 - other.water_share) / powder
    return (poured + sum(weight * other.water_share for other, weight in zip(others, weights))) / powder


def _binder(others: list[_Other], binder_share: float) -> float:
    return binder_share + sum(other.dry * other.binder_share for other in others if other.dry is not None)


def _dose(said: Said, others: list[_Other], binder: float) -> None:
    """Doses told as shares of the binder; those of the whole mix wait until the rest is known."""
    for other in others:
        share = said.value(f"{other.place}.share")
        if share is not None and not _of_mix(said, other):
            other.dry = share * binder * (1 if other.role in BULK else 1 - other.water_share)
        elif share is not None and share < _MOST_OF_MIX:
            other.dry = 0.0
        elif share is not None:
            said.fault(f"{other.place}.share", "That is most of the mix. Fiber is usually 0.1 to 5 % of it.")


_MOST_OF_MIX = 0.1
# All the fiber together must leave room for the rest.
_MOST_FIBER = 0.5


def _leaves_room(said: Said, way: str, others: list[_Other]) -> bool:
    of_mix = [other for other in others if _of_mix(said, other)] if way != "weights" else []
    if math.fsum(said.value(f"{other.place}.share") for other in of_mix) < _MOST_FIBER:
        return True
    said.fault(f"{of_mix[-1].place}.share", "All the fiber together is most of the mix. It is usually 0.1 to 5 % of it.")
    return False


def _of_mix(said: Said, other: _Other) -> bool:
    return other.role == "fiber" and said.value(f"{other.place}.base") == "mix"


def _weighed(said: Said, others: list[_Other], water_total: float) -> list[Part]:
    """Each ingredient as it lies on the scale; what is told as a share of the whole mix comes last."""
    by_trial = bool(others) and said.value(f"{others[0].place.partition('.others.')[0]}.recipe") == "weights"
    of_mix = [] if by_trial else [other for other in others if _of_mix(said, other)]
    rest = 1.0 + water_total + sum(other.dry for other in others if other not in of_mix)
    amounts = weighed_for_share_of_mix(rest, [said.value(f"{other.place}.share") for other in of_mix])
    weighed = {other.name: other.dry / (1 - other.water_share) for other in others}
    weighed.update({other.name: amount for other, amount in zip(of_mix, amounts)})
    return [Part(other.name, other.label, other.role, weighed[other.name], other.density, other.water_share,
                 other.binder_share) for other in others]
