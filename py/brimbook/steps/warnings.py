"""What a tradesman would say to a recipe: its water and the strength that goes with it, and doses that are too large."""

from brimbook import sources
from brimbook.cast.recipe import MOST_PIGMENT, STRENGTHS, Part, Recipe, most_pigment, strength
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.quantity.units import UNITS, to_base
from brimbook.record.said import Said
from brimbook.steps.facts import Fact, fact
from brimbook.steps.recipe import BINDING, BULK

_SLACK = 1e-9


def warnings(said: Said, place: str, recipe: Recipe) -> list[Figure]:
    """The recipe's ratios, each with a warning where it is out of bounds [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    recipe: for one gram of powder [recipe].
    """
    figures = [*_water(said, place, recipe), *_pigment(said, place, recipe), *_fiber(said, place, recipe)]
    return figures + [each for part in recipe.parts[1:] for each in _dose(said, place, part, recipe)]


def _water(said: Said, place: str, recipe: Recipe) -> list[Figure]:
    ratio, told = recipe.water_to_binder, show.significant
    if ratio is None:
        return []
    follows = fact(said, f"{place}.mix.powder", "follows")
    portland = follows is not None and follows.value == "portland"
    water = Figure(
        f"{place}.water_to_binder", "Water to binder", ratio, "–", show.percent(ratio, said.display),
        formula="all the water, that of wet ingredients too ÷ all that binds",
        numbers=f"{told(recipe.total_water, 8, said.display)} ÷ {told(recipe.binder, 8, said.display)} × 100",
        worked=f"{told(ratio * 100, 5, said.display)} %",
        says=f"All the water is {show.percent(ratio, said.display)} of the binder, a ratio of {told(ratio, 3, said.display)}",
        notes=_beyond_the_table(said, ratio) if portland else ())
    return [water, *_strength(said, place, ratio, water.key)] if portland else [water]


def _beyond_the_table(said: Said, ratio: float) -> tuple[str, ...]:
    (low, strong), (high, weak) = STRENGTHS[0], STRENGTHS[-1]
    told = show.significant
    if ratio < low:
        return (f"The strength table of ACI 211.1 begins at a water-cement ratio of {told(low, 3, said.display)}, with "
                f"{show_more.stress(strong, said.display)}. It does not reach down to {told(ratio, 3, said.display)}.",)
    if ratio > high:
        return (f"The strength table of ACI 211.1 ends at a water-cement ratio of {told(high, 3, said.display)}, with "
                f"{show_more.stress(weak, said.display)}. {told(ratio, 3, said.display)} is weaker: use less water.",)
    return ()


def _strength(said: Said, place: str, ratio: float, water_key: str) -> list[Figure]:
    value, told = strength(ratio), show.significant
    if value is None:
        return []
    (low, strong), (high, weak) = next(pair for pair in zip(STRENGTHS, STRENGTHS[1:]) if pair[0][0] <= ratio <= pair[1][0])
    shown = show_more.stress(round(value / _rough(said)) * _rough(said), said.display)
    step = f"({told(weak, 4, said.display)} − {told(strong, 4, said.display)}) × ({told(ratio, 8, said.display)} − " \
           f"{told(low, 4, said.display)}) ÷ ({told(high, 4, said.display)} − {told(low, 4, said.display)})"
    return [Figure(
        f"{place}.strength", "Strength at 28 days", value, "MPa", shown,
        formula="between two entries of the table, along a straight line", numbers=f"{told(strong, 4, said.display)} + {step}",
        worked=f"{told(value, 5, said.display)} MPa", says=f"Kept damp for 28 days it may reach about {shown}",
        constants=(Constant("Table", "water-cement ratio and strength", sources.ACI_STRENGTH),), uses=(water_key,),
        spread="The table is for Portland concrete without added air, in damp cylinders. A thin mortar or a neat paste may "
               "differ by far: take it as a hint.")]


def _rough(said: Said) -> float:
    """No table tells the strength of a thin cast nearer than a MPa, or 100 psi."""
    return to_base(100.0, UNITS["psi"]) if said.display.length == "in" else 1.0


def _pigment(said: Said, place: str, recipe: Recipe) -> list[Figure]:
    pigments = [part for part in recipe.parts if part.role == "pigment"]
    if not pigments or not recipe.binder:
        return []
    told = show.significant
    share = sum(part.dry for part in pigments) / recipe.binder
    own = [(part, _most(said, place, part)) for part in pigments]
    limit = most_pigment(1.0, [most.value for _, most in own if most is not None])
    amounts = " + ".join(told(part.dry, 8, said.display) for part in pigments)
    shown = show.percent(share, said.display)
    return [Figure(
        f"{place}.pigment_share", "Pigment", share, "–", shown, formula="all the dry pigment ÷ all that binds",
        numbers=f"({amounts}) ÷ {told(recipe.binder, 8, said.display)} × 100", worked=f"{told(share * 100, 5, said.display)} %",
        says=f"Pigment is {shown} of the binder",
        constants=(Constant("Most pigment, all together", show.percent(MOST_PIGMENT, said.display), sources.PIGMENT_LIMIT),
                   *(Constant(f"Most {part.label.lower()}", show.percent(most.value, said.display), most.source)
                     for part, most in own if most is not None)),
        notes=_too_much_pigment(said, share, limit, len(pigments)))]


def _too_much_pigment(said: Said, share: float, limit: float, kinds: int) -> tuple[str, ...]:
    if share <= limit * (1 + _SLACK):
        return ()
    of_several = " (the lowest of their own limits)" if kinds > 1 and limit < MOST_PIGMENT else ""
    return (f"Pigment is {show.percent(share, said.display)} of the binder. More than {show.percent(limit, said.display)}"
            f"{of_several} makes the cast weaker and thirstier: use less, or a stronger pigment.",)


def _most(said: Said, place: str, part: Part) -> Fact | None:
    return fact(said, f"{place}.mix.{part.name}", "most")


def _fiber(said: Said, place: str, recipe: Recipe) -> list[Figure]:
    fibers = [part for part in recipe.parts if part.role == "fiber"]
    if not fibers:
        return []
    told, weight = show.significant, sum(part.weighed for part in fibers)
    share = weight / recipe.mass
    of_binder = f", which is {show.percent(weight / recipe.binder, said.display)} of the binder" if recipe.binder else ""
    amounts = " + ".join(told(part.weighed, 8, said.display) for part in fibers)
    return [Figure(
        f"{place}.fiber_share", "Fiber in the wet mix", share, "–", show.percent(share, said.display, 2),
        formula="all the fiber ÷ weight of the mix, both for one gram of powder",
        numbers=f"({amounts}) ÷ {told(recipe.mass, 8, said.display)} × 100", worked=f"{told(share * 100, 5, said.display)} %",
        says=f"Fiber is {show.percent(share, said.display, 2)} of the wet mix{of_binder}",
        notes=tuple(note for part in fibers for note in _too_much_fiber(said, place, part, recipe)))]


def _too_much_fiber(said: Said, place: str, part: Part, recipe: Recipe) -> tuple[str, ...]:
    """A fiber's limit is meant in the base that its share is told in: sheets differ in it."""
    most, of_mix = _most(said, place, part), said.value(f"{place}.mix.{part.name}.base") == "mix"
    base = recipe.mass if of_mix else recipe.binder
    if most is None or not base or part.weighed / base <= most.value * (1 + _SLACK):
        return ()
    of = "the wet mix" if of_mix else "the binder"
    return (f"{part.label} is {show.percent(part.weighed / base, said.display)} of {of}, more than the "
            f"{show.percent(most.value, said.display)} told for it: the mix may ball up. Look which base its data sheet means.",)


def _dose(said: Said, place: str, part: Part, recipe: Recipe) -> list[Figure]:
    """A dose is told by itself only where it is more than the largest one."""
    most = _most(said, place, part) if part.role not in ("pigment", "fiber") else None
    amount, told = _dosed(part), show.significant
    if most is None or not recipe.binder or amount / recipe.binder <= most.value * (1 + _SLACK):
        return []
    share = amount / recipe.binder
    shown = show.percent(share, said.display)
    return [Figure(
        f"{place}.mix.{part.name}.dose", f"{part.label}, dose", share, "–", shown, formula="as dosed ÷ all that binds",
        numbers=f"{told(amount, 8, said.display)} ÷ {told(recipe.binder, 8, said.display)} × 100",
        worked=f"{told(share * 100, 5, said.display)} %", says=f"{part.label} is {shown} of the binder",
        constants=(Constant("Most of it", show.percent(most.value, said.display), most.source),),
        notes=(f"{part.label} is {shown} of the binder; {show.percent(most.value, said.display)} is the most that is told "
               "for it. Its data sheet decides.",))]


def _dosed(part: Part) -> float:
    """What a share of it counts: of a binder what binds, of sand the dry weight, of a small dose all of it."""
    if part.role in BINDING:
        return part.binder
    return part.dry if part.role in BULK else part.weighed
