"""The mix: from the room of the molds to what to weigh, by absolute volume and by the maker's rule."""

import math

from brimbook import sources
from brimbook.cast import mix
from brimbook.cast.learning import Learned
from brimbook.cast.materials import generic
from brimbook.cast.recipe import Part, Recipe
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.facts import fact
from brimbook.steps.measure import Measurement
from brimbook.steps.plan import Filled, Plan, Portion
from brimbook.steps.recipe import BINDING
from brimbook.steps.weighing import practice_or_yours, sum_as_weighed, weigh_out


def plan_of(said: Said, place: str, rooms: dict[str, Measurement], recipe: Recipe,
            learned: Learned | None) -> Plan | None:
    """What the bowl of a cast is planned to hold; nothing while an entry is missing or faulty [plan].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    rooms: the measured cavity of each cast that is poured from this bowl, by the cast's path [measurements].
    recipe: for one gram of powder [recipe].
    learned: what the pours taught, if any [learned].
    """
    filled = [(other, said.value(f"{other}.pieces"), room) for other, room in rooms.items()]
    allowance = _allowance(said, place, learned)
    if allowance is None or any(pieces is None for _, pieces, _ in filled):
        return None
    molds = tuple(Filled(other, int(pieces), room.volume) for other, pieces, room in filled)
    bare = math.fsum(mold.pieces * mold.volume for mold in molds)
    spread = math.fsum(pieces * room.plus_minus for _, pieces, room in filled)
    per_gram = recipe.volume / (learned.density_ratio if learned else 1.0)
    powder = bare * (1 + allowance) / per_gram
    portions = [Portion(part.name, part.label, part.weighed * powder, f"{place}.mix.{part.name}") for part in recipe.parts]
    portions.append(Portion("water", "Water", recipe.water * powder, f"{place}.mix.water"))
    return Plan(tuple(portions), molds, bare, allowance, per_gram, spread / bare, _density_relative(said, place, learned),
                recipe)


def _from_pours(said: Said, place: str, learned: Learned | None) -> bool:
    return learned is not None and learned.allowance is not None and said.value(f"{place}.allowance_from") == "pours"


def _allowance(said: Said, place: str, learned: Learned | None) -> float | None:
    return learned.allowance if _from_pours(said, place, learned) else said.value(f"{place}.allowance")


def _density_relative(said: Said, place: str, learned: Learned | None) -> float:
    """Density and allowance that the same pours taught are known better together than the density alone."""
    if learned is None:
        return 0.0
    return learned.taken.plus_minus if _from_pours(said, place, learned) else learned.density_relative


def mixing(said: Said, place: str, plan: Plan, cavity: Measurement) -> list[Figure]:
    """Every figure of one bowl's mix [figures].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    plan: what the bowl is to hold [plan].
    cavity: of the cast itself, as measured [measurement].
    """
    needed = _mix_needed(said, place, plan)
    table = _mix_per_gram(said, place, plan.recipe)
    figures = [needed, table]
    per_gram = table if plan.per_gram == table.value else _mix_per_gram_known(said, place, plan, table)
    figures += [] if per_gram is table else [per_gram]
    figures += _weigh_outs(said, place, plan, needed, per_gram)
    figures.append(_fresh_density(said, place, plan))
    return figures + _by_rule(said, place, plan, cavity, per_gram)


def shared(said: Said, place: str, cavity: Measurement) -> list[Figure]:
    """What a cast takes that is poured from the first one's bowl [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    cavity: as measured [measurement].
    """
    pieces = said.value(f"{place}.pieces")
    if pieces is None:
        return []
    told, volume = show.significant, pieces * cavity.volume
    return [Figure(
        f"{place}.taken", "From the first bowl", volume, "mL", show.volume(volume, said.display),
        formula="pieces × cavity", numbers=f"{told(pieces, 8, said.display)} × {told(cavity.volume, 8, said.display)}",
        says=f"Takes {show.volume(volume, said.display)} of the mix in the first mold's bowl",
        plus_minus=pieces * cavity.plus_minus,
        plus_minus_shown=f"± {show.plus_minus(pieces * cavity.plus_minus, said.display)} mL",
        uses=(f"{cavity.place}.volume",))]


def _mix_needed(said: Said, place: str, plan: Plan) -> Figure:
    told = show.significant
    rooms = [f"{told(mold.pieces, 8, said.display)} × {told(mold.volume, 8, said.display)}" for mold in plan.filled]
    sum_of_rooms = rooms[0] if len(rooms) == 1 else f"({' + '.join(rooms)})"
    typed = plan.allowance == said.value(f"{place}.allowance")
    shown = show.percent(plan.allowance, said.display)
    constant = practice_or_yours(said, f"{place}.allowance", "Allowance", shown) if typed else Constant(
        "Allowance", shown, sources.YOUR_POURS)
    spread = plan.volume * plan.volume_relative
    return Figure(
        f"{place}.mix_needed", "Mix needed", plan.volume, "mL", show.volume(plan.volume, said.display),
        formula="pieces × cavity × (1 + allowance)" if len(rooms) == 1 else
        "(pieces × cavity, of each mold, added up) × (1 + allowance)",
        numbers=f"{sum_of_rooms} × (1 + {told(plan.allowance, 8, said.display)})", plus_minus=spread,
        plus_minus_shown=f"± {show.plus_minus(spread, said.display)} mL", constants=(constant,),
        uses=tuple(f"{mold.place}.cavity.volume" for mold in plan.filled))


def _volume_terms(said: Said, recipe: Recipe) -> tuple[str, str]:
    """The room of each ingredient and of the water for one gram of powder: in words, and in numbers."""
    told = show.significant
    words = [_part_words(part) for part in recipe.parts]
    numbers = [f"{told(part.dry, 8, said.display)} ÷ {told(part.density, 8, said.display)}" for part in recipe.parts]
    words.append("water-to-powder ratio ÷ density of water")
    numbers.append(f"{told(recipe.total_water, 8, said.display)} ÷ {told(recipe.water_density, 8, said.display)}")
    return " + ".join(words), " + ".join(numbers)


def _part_words(part: Part) -> str:
    return "1 ÷ particle density" if part.name == "powder" else f"{part.label.lower()} ÷ its density"


def _mix_per_gram(said: Said, place: str, recipe: Recipe) -> Figure:
    told, volume = show.significant, recipe.volume
    words, numbers = _volume_terms(said, recipe)
    constants = [Constant(f"Particle density of the {part.label.lower()}", show.density(part.density, said.display),
                          fact(said, f"{place}.mix.{part.name}", "particle_density").source) for part in recipe.parts]
    return Figure(
        f"{place}.mix_per_gram", "Mix from one gram of powder", volume, "mL/g", f"{told(volume, 4, said.display)} mL",
        formula=f"({words}) ÷ (1 − air)", numbers=f"({numbers}) ÷ (1 − {told(recipe.air, 4, said.display)})",
        says=f"One mL of mix holds {told(1 / volume, 3, said.display)} g of powder",
        constants=(*constants, Constant("Density of water at 20 °C", show.density(recipe.water_density, said.display),
                                        sources.WATER_DENSITY),
                   Constant("Method", "absolute volume", sources.ABSOLUTE_VOLUME)))


def _mix_per_gram_known(said: Said, place: str, plan: Plan, table: Figure) -> Figure:
    told = show.significant
    ratio = table.value / plan.per_gram
    return Figure(
        f"{place}.mix_per_gram_known", "Mix from one gram, by your pours", plan.per_gram, "mL/g",
        f"{told(plan.per_gram, 4, said.display)} mL", formula="mix from one gram by the table ÷ your density over the table's",
        numbers=f"{told(table.value, 8, said.display)} ÷ {told(ratio, 8, said.display)}",
        says=f"Your pours say that one mL of mix holds {told(1 / plan.per_gram, 3, said.display)} g of powder",
        uses=(table.key, f"{place}.pouring.density"))


def _weigh_outs(said: Said, place: str, plan: Plan, needed: Figure, per_gram: Figure) -> list[Figure]:
    told, portions = show.significant, plan.portions
    powder = weigh_out(said, f"{place}.powder", "Powder", "powder", portions[0].grams, plan.relative,
                       formula="mix needed ÷ mix from one gram of powder",
                       numbers=f"{told(needed.value, 8, said.display)} ÷ {told(per_gram.value, 8, said.display)}",
                       uses=(needed.key, per_gram.key), notes=_range_notes(said, place, plan.recipe), spread=_spread_told(plan))
    others = [_other(said, place, plan, part, portion, powder)
              for part, portion in zip(plan.recipe.parts[1:], portions[1:])]
    poured = _poured_water(said, place, plan, powder)
    return [powder, *others, poured, sum_as_weighed(said, f"{place}.bowl", "In the bowl", [powder, *others, poured])]


def _other(said: Said, place: str, plan: Plan, part: Part, portion: Portion, powder: Figure) -> Figure:
    told = show.significant
    wet = f", with {show.percent(part.water_share, said.display)} water in it" if part.water_share else ""
    return weigh_out(said, f"{place}.mix.{part.name}.weigh", part.label, part.label.lower(), portion.grams, plan.relative,
                     formula=f"powder × {part.label.lower()} for one gram of powder, as it lies on the scale{wet}",
                     numbers=f"{told(powder.value, 8, said.display)} × {told(part.weighed, 8, said.display)}",
                     uses=(powder.key,), spread=_spread_told(plan))


def _poured_water(said: Said, place: str, plan: Plan, powder: Figure) -> Figure:
    told, recipe = show.significant, plan.recipe
    brought = [part for part in recipe.parts if part.water]
    numbers = f"{told(powder.value, 8, said.display)} × {told(recipe.water, 8, said.display)}"
    formula = "powder × water-to-powder ratio"
    if brought:
        formula = f"powder × (water-to-powder ratio − water in the {' and the '.join(part.label.lower() for part in brought)})"
        less = " − ".join(told(part.water, 8, said.display) for part in brought)
        numbers = f"{told(powder.value, 8, said.display)} × ({told(recipe.total_water, 8, said.display)} − {less})"
    return weigh_out(said, f"{place}.water", "Water", "water", plan.portions[-1].grams, plan.relative, formula=formula,
                     numbers=numbers, uses=(powder.key,), spread=_spread_told(plan))


def _spread_told(plan: Plan) -> str:
    if not plan.density_relative:
        return "± from the volume alone."
    return "± from the volume, and from how well your pours tell the mix's density, added as squares."


def _range_notes(said: Said, place: str, recipe: Recipe) -> tuple[str, ...]:
    """A tradesman's warning where the powder is asked to take less or more water than its sheet says."""
    least, most = (fact(said, f"{place}.mix.powder", name) for name in ("water_least", "water_most"))
    told, plasticized = show.significant, any(part.role == "plasticizer" for part in recipe.parts)
    # Sand asks for more water, never for less; what else binds takes water as the powder does.
    ratio = recipe.total_water / math.fsum(part.dry for part in recipe.parts if part.role in BINDING)
    if least is None or most is None or least.value > most.value:
        return ()
    between = f"{told(least.value, 3, said.display)} to {told(most.value, 3, said.display)} of its weight"
    if ratio < least.value * (1 - 1e-9) and not plasticized:
        return (f"This powder takes {between} in water; {told(ratio, 3, said.display)} may be too stiff to pour.",)
    if ratio > most.value * (1 + 1e-9):
        return (f"This powder takes {between} in water; {told(ratio, 3, said.display)} makes it weak and it may settle "
                "out. A plasticizer makes it flow instead.",)
    return ()


def _fresh_density(said: Said, place: str, plan: Plan) -> Figure:
    told = show.significant
    return Figure(
        f"{place}.fresh_density", "One mL of fresh mix weighs", plan.density, "g/mL", show.density(plan.density, said.display),
        formula="weight of the mix for one gram of powder ÷ mix from one gram of powder",
        numbers=f"{told(plan.recipe.mass, 8, said.display)} ÷ {told(plan.per_gram, 8, said.display)}",
        uses=(f"{place}.mix_per_gram",))


def _by_rule(said: Said, place: str, plan: Plan, cavity: Measurement, per_gram: Figure) -> list[Figure]:
    rule, pieces = said.value(f"{place}.mix.rule"), said.value(f"{place}.pieces")
    if rule is None or len(plan.filled) > 1 or len(plan.recipe.parts) > 1 or _is_of_another_powder(said, place):
        return []
    told = show.significant
    ratio = plan.recipe.water
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
        numbers=f"({told(rule, 8, said.display)} × {told(per_gram.value, 8, said.display)} ÷ "
                f"{told(cavity.milliliters_per_gram, 8, said.display)} − 1) × 100",
        says=f"Your rule: {powder.shown} powder and {rule_water.shown} water. "
             + _hidden_told(hidden, said),
        constants=(constant,), uses=(powder.key, per_gram.key))
    return [powder, rule_water, allowance]


def _is_of_another_powder(said: Said, place: str) -> bool:
    """The usual rule is that of a rapid-setting cement; nobody has it for plaster or Portland cement."""
    kind = said.text(f"{place}.mix.powder.kind")
    return said.is_usual(f"{place}.mix.rule") and generic(kind) is not None and kind != "rapid"


def _hidden_told(hidden: float, said: Said) -> str:
    share = show.percent(abs(hidden), said.display)
    if hidden >= 0:
        return f"It carries an allowance of {share}: that much more mix than fills the mold"
    return f"It makes {share} less mix than fills the mold"
