"""Heat in the mold: how warm the mix could get, and whether that softens the plastic."""

from brimbook import sources
from brimbook.cast import heat
from brimbook.cast.recipe import Part, Recipe
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.quantity.units import UNITS, from_base, to_base
from brimbook.record.said import Said, localize
from brimbook.steps.facts import Fact, fact
from brimbook.steps.plastic_facts import fact_constant, plastic_fact, plastic_name

_BOILING = 100.0


def mold_heat(said: Said, place: str, recipe: Recipe) -> list[Figure]:
    """How warm the mix could get, and the share of its heat that would soften the mold [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    recipe: of its mix [recipe].
    """
    start = said.value(f"{place}.curing.temperature")
    given = _given(said, mix_of(said, place), recipe)
    if start is None or not given:
        return []
    peak, rise = _peak(said, place, recipe, start, given)
    soft = plastic_fact(said, f"{place}.clamping", "softens")
    if soft is None or soft.value <= start or rise <= 0:
        return [peak]
    return [peak, _share(said, place, soft, start, rise, peak)]


def mix_of(said: Said, place: str) -> str:
    """The path of the mix that a cast is poured from [text].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    return "casts.0.mix" if said.value(f"{place}.bowl") == "first" else f"{place}.mix"


def _given(said: Said, mix: str, recipe: Recipe) -> list[tuple[Part, Fact, float]]:
    """Each binder with its heat and the grams of it that give it off; empty while the powder's is not known."""
    found = [(part, fact(said, f"{mix}.{part.name}", "heat")) for part in recipe.parts if part.binder > 0]
    if not found or found[0][0].name != "powder" or found[0][1] is None:
        return []
    # A generic figure is for pure cement; the maker's own is for a kilogram of the material as bagged.
    return [(part, given, part.dry if given.source is sources.YOURS else part.binder) for part, given in found
            if given is not None]


def _peak(said: Said, place: str, recipe: Recipe, start: float,
          given: list[tuple[Part, Fact, float]]) -> tuple[Figure, float]:
    told, display = show.significant, said.display
    solids = recipe.mass - recipe.total_water
    rise = heat.rise(sum(each.value * grams for _, each, grams in given), recipe.total_water, solids)
    terms = " + ".join(f"{told(each.value, 8, display)} × {told(grams, 8, display)}" for _, each, grams in given)
    begins = f"({told(start, 8, display)})" if start < 0 else told(start, 8, display)
    value, shown = start + rise, _whole(start + rise, display)
    constants = [Constant(f"Heat of the {part.label.lower()}, in the mold", localize(each.text, display), each.source)
                 for part, each, _ in given]
    return Figure(
        f"{place}.clamping.peak", "Warmest it could get", value, "°C", shown,
        formula="bench + heat of the binders in one gram of powder's mix ÷ (4.18 × its water + 0.75 × its solids)",
        numbers=f"{begins} + ({terms}) ÷ ({told(heat.WATER, 3, display)} × {told(recipe.total_water, 8, display)} + "
                f"{told(heat.SOLID, 2, display)} × {told(solids, 8, display)})",
        worked=f"{told(value, 5, display)} °C", says=_warmest(said, start, value, shown),
        constants=(*constants, Constant("Heat that warms the mix", "by its water and solids", sources.HEAT_CAPACITY)),
        spread="A bound: none of the heat lost, all of it in the mold. Thin walls lose most of it; a mix that sets in "
               "minutes keeps more than one that sets in hours."), rise


def _whole(celsius: float, display: Display) -> str:
    """A temperature to whole degrees of the maker's own unit: it is a bound, no measurement."""
    unit = "f" if display.temperature == "F" else "c"
    return show.temperature(to_base(float(round(from_base(celsius, unit))), UNITS[unit]), display)


def _warmest(said: Said, start: float, value: float, shown: str) -> str:
    begins = f"From {show.temperature(start, said.display)}"
    if value > _BOILING:
        return f"{begins} its heat would do for {shown}, past boiling: a thick piece gets hot, a thin wall loses most of it"
    return f"{begins} it could reach {shown} if no heat got away; a thin wall loses most of it"


def _share(said: Said, place: str, soft: Fact, start: float, rise: float, peak: Figure) -> Figure:
    told, display = show.significant, said.display
    value, name = heat.share_to_soften(soft.value, start, rise), plastic_name(said, f"{place}.clamping")
    limit, percent = show.temperature(soft.value, display), show.percent(value, display, 0)
    begins = f"({told(start, 8, display)})" if start < 0 else told(start, 8, display)
    says = (f"{name} softens from {limit}: it would, if {percent} of the heat stayed in the piece" if value < 1 else
            f"{name} softens from {limit}: this mix can't get so warm")
    return Figure(
        f"{place}.clamping.heat_share", "Heat that would soften the mold", value, "–", percent,
        formula="(softening − bench) ÷ (warmest − bench)",
        numbers=f"({told(soft.value, 8, display)} − {begins}) ÷ ({told(peak.value, 8, display)} − {begins}) × 100",
        worked=f"{told(value * 100, 4, display)} %", says=says,
        constants=(fact_constant(said, "The plastic softens from", soft),), uses=(peak.key,))
