"""The mix: from the cavity's volume to powder and water, by absolute volume and by the maker's rule."""

import math

from brimbook import sources
from brimbook.cast import mix, powders
from brimbook.figure import Constant, Figure
from brimbook.fill import water
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.measure import Measurement
from brimbook.steps.weighing import practice_or_yours, sum_as_weighed, weigh_out


def mixing(said: Said, place: str, cavity: Measurement) -> list[Figure]:
    """Every figure of one cast's mix; empty while an entry is missing or faulty [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    cavity: the cavity as measured [measurement].
    """
    names = ("pieces", "allowance", "mix.powder.particle_density", "mix.water_to_powder", "mix.air")
    if any(said.value(f"{place}.{name}") is None for name in names):
        return []
    needed = _mix_needed(said, place, cavity)
    per_gram = _mix_per_gram(said, place)
    figures = [needed, per_gram, *_weigh_outs(said, place, cavity, needed, per_gram)]
    figures += _by_rule(said, place, cavity, per_gram)
    figures += _scooped(said, place, needed, per_gram)
    return figures + _left(said, place, cavity, per_gram)


def _mix_needed(said: Said, place: str, cavity: Measurement) -> Figure:
    pieces, allowance = said.value(f"{place}.pieces"), said.value(f"{place}.allowance")
    volume = pieces * cavity.volume * (1 + allowance)
    told = show.significant
    return Figure(
        f"{place}.mix_needed", "Mix needed", volume, "mL", show.volume(volume, said.display),
        formula="pieces × cavity × (1 + allowance)",
        numbers=f"{told(pieces, 8, said.display)} × {told(cavity.volume, 7, said.display)}"
                f" × (1 + {told(allowance, 4, said.display)})",
        plus_minus=volume * cavity.relative,
        plus_minus_shown=f"± {show.plus_minus(volume * cavity.relative, said.display)} mL",
        constants=(practice_or_yours(said, f"{place}.allowance", "Allowance", show.percent(allowance, said.display)),),
        uses=(f"{cavity.place}.volume",))


def _mix_per_gram(said: Said, place: str) -> Figure:
    density = said.value(f"{place}.mix.powder.particle_density")
    ratio, air = said.value(f"{place}.mix.water_to_powder"), said.value(f"{place}.mix.air")
    mixing_water = water.density(water.USUAL_TEMPERATURE)
    value = mix.volume_per_gram_of_powder(density, ratio, mixing_water, air)
    told = show.significant
    source = powders.source_of_density(said.text(f"{place}.mix.powder.kind"), density)
    return Figure(
        f"{place}.mix_per_gram", "Mix from one gram of powder", value, "mL/g", f"{told(value, 4, said.display)} mL",
        formula="(1 ÷ particle density + water-to-powder ratio ÷ density of water) ÷ (1 − air)",
        numbers=f"(1 ÷ {told(density, 8, said.display)} + {told(ratio, 8, said.display)} ÷ "
                f"{told(mixing_water, 8, said.display)}) ÷ (1 − {told(air, 4, said.display)})",
        says=f"One mL of mix holds {told(1 / value, 3, said.display)} g of powder",
        constants=(Constant("Particle density of the powder", show.density(density, said.display), source),
                   Constant("Density of water at 20 °C", show.density(mixing_water, said.display),
                            sources.WATER_DENSITY),
                   Constant("Method", "absolute volume", sources.ABSOLUTE_VOLUME)))


def _weigh_outs(said: Said, place: str, cavity: Measurement, needed: Figure, per_gram: Figure) -> list[Figure]:
    ratio = said.value(f"{place}.mix.water_to_powder")
    powder_grams = mix.powder_for_volume(needed.value, per_gram.value)
    told = show.significant
    powder = weigh_out(said, f"{place}.powder", "Powder", "powder", powder_grams, cavity.relative,
                       formula="mix needed ÷ mix from one gram of powder",
                       numbers=f"{told(needed.value, 7, said.display)} ÷ {told(per_gram.value, 7, said.display)}",
                       uses=(needed.key, per_gram.key))
    mixing_water = weigh_out(said, f"{place}.water", "Water", "water", powder_grams * ratio, cavity.relative,
                             formula="powder × water-to-powder ratio",
                             numbers=f"{told(powder_grams, 7, said.display)} × {told(ratio, 8, said.display)}",
                             uses=(powder.key,))
    return [powder, mixing_water, sum_as_weighed(said, f"{place}.bowl", "In the bowl", [powder, mixing_water])]


def _by_rule(said: Said, place: str, cavity: Measurement, per_gram: Figure) -> list[Figure]:
    rule, pieces = said.value(f"{place}.mix.rule"), said.value(f"{place}.pieces")
    if rule is None:
        return []
    told = show.significant
    ratio = said.value(f"{place}.mix.water_to_powder")
    constant = practice_or_yours(said, f"{place}.mix.rule", "Powder for a gram of water in the mold",
                               f"{told(rule, 8, said.display)} g")
    grams = mix.powder_by_rule(cavity.water, rule) * pieces
    powder = weigh_out(said, f"{place}.rule_powder", "Powder by your rule", "powder", grams, None,
                       formula="pieces × water in the mold × rule",
                       numbers=f"{told(pieces, 8, said.display)} × {told(cavity.water, 8, said.display)} × "
                               f"{told(rule, 8, said.display)}", constants=(constant,),
                       uses=(f"{cavity.place}.volume",), verb="Your rule:")
    rule_water = weigh_out(said, f"{place}.rule_water", "Water by your rule", "water", grams * ratio, None,
                           formula="powder by your rule × water-to-powder ratio",
                           numbers=f"{told(grams, 8, said.display)} × {told(ratio, 8, said.display)}", uses=(powder.key,),
                           verb="Your rule:")
    hidden = mix.allowance_in_rule(rule, cavity.milliliters_per_gram, per_gram.value)
    allowance = Figure(
        f"{place}.rule_allowance", "Allowance in your rule", hidden, "–", show.percent(hidden, said.display),
        formula="rule × mix from one gram of powder ÷ mL of water that shows 1 g − 1",
        numbers=f"({told(rule, 8, said.display)} × {told(per_gram.value, 7, said.display)} ÷ "
                f"{told(cavity.milliliters_per_gram, 7, said.display)} − 1) × 100",
        says=f"Your rule: {powder.shown} powder and {rule_water.shown} water. "
             + _hidden_told(hidden, said),
        constants=(constant,), uses=(powder.key, per_gram.key))
    return [powder, rule_water, allowance]


def _hidden_told(hidden: float, said: Said) -> str:
    share = show.percent(abs(hidden), said.display)
    if hidden >= 0:
        return f"It carries an allowance of {share}: that much more mix than fills the mold"
    return f"It makes {share} less mix than fills the mold"


def _scooped(said: Said, place: str, needed: Figure, per_gram: Figure) -> list[Figure]:
    """What to do when the scoop came out different."""
    scooped = said.value(f"{place}.scooped")
    if scooped is None:
        return []
    told = show.significant
    ratio = said.value(f"{place}.mix.water_to_powder")
    water_for_it = weigh_out(said, f"{place}.scooped_water", "Water for what you scooped", "water", scooped * ratio, None,
                             formula="powder scooped × water-to-powder ratio",
                             numbers=f"{told(scooped, 8, said.display)} × {told(ratio, 8, said.display)}")
    made = scooped * per_gram.value
    volume = Figure(
        f"{place}.scooped_mix", "Mix from what you scooped", made, "mL", show.volume(made, said.display),
        formula="powder scooped × mix from one gram of powder",
        numbers=f"{told(scooped, 8, said.display)} × {told(per_gram.value, 7, said.display)}", uses=(per_gram.key,))
    return [water_for_it, volume, _spare(said, place, volume, needed, per_gram)]


def _spare(said: Said, place: str, made: Figure, needed: Figure, per_gram: Figure) -> Figure:
    bare = needed.value / (1 + said.value(f"{place}.allowance"))
    spare = made.value - bare
    plus_minus = bare * (needed.plus_minus or 0.0) / needed.value
    told = show.significant
    return Figure(
        f"{place}.scooped_spare", "Left when the mold is full", spare, "mL", show.volume(spare, said.display),
        formula="mix from what you scooped − pieces × cavity",
        numbers=f"{told(made.value, 7, said.display)} − {told(bare, 7, said.display)}",
        says=_spare_told(said, spare, plus_minus, bare, per_gram.value), plus_minus=plus_minus,
        plus_minus_shown=f"± {show.plus_minus(plus_minus, said.display)} mL", uses=(made.key, needed.key))


def _spare_told(said: Said, spare: float, plus_minus: float, bare: float, per_gram: float) -> str:
    if abs(spare) <= plus_minus:
        return "It just fills the mold, with nothing for the bowl and the tools: scoop a little more"
    if spare > 0:
        return f"It fills the mold: {show.volume(spare, said.display)} over, " \
               f"{show.percent(spare / bare, said.display)} for the bowl and the tools"
    more = show.mass_at_least(-spare / per_gram, said.display)
    return f"It does not fill the mold: short by {show.volume(-spare, said.display)}. Scoop at least {more} more"


def _left(said: Said, place: str, cavity: Measurement, per_gram: Figure) -> list[Figure]:
    """How many pieces the powder that is left will make."""
    left = said.value(f"{place}.left")
    if left is None:
        return []
    told = show.significant
    allowance, ratio = said.value(f"{place}.allowance"), said.value(f"{place}.mix.water_to_powder")
    piece = cavity.volume * (1 + allowance)
    share = left * per_gram.value / piece
    pieces = mix.pieces_from(left * per_gram.value, piece)
    count = "1 piece" if pieces == 1 else f"{pieces} pieces"
    says = f"{show.mass(left, said.display)} of powder makes {count}"
    if pieces:
        says += f", with {show.mass(pieces * piece / per_gram.value * ratio, said.display)} of water for " \
                f"{show.mass(pieces * piece / per_gram.value, said.display)} of it"
    else:
        says += f": enough for {show.percent(math.floor(share * 100 + 1e-9) / 100, said.display, 0)} of one"
    return [Figure(
        f"{place}.left_pieces", "Pieces from what is left", share, "pieces", told(share, 3, said.display),
        formula="powder left × mix from one gram of powder ÷ (cavity × (1 + allowance)), whole pieces of it",
        numbers=f"{told(left, 8, said.display)} × {told(per_gram.value, 7, said.display)} ÷ "
                f"({told(cavity.volume, 7, said.display)} × (1 + {told(allowance, 4, said.display)}))",
        says=says, uses=(per_gram.key, f"{cavity.place}.volume"))]
