"""The wax: from the well's volume to wax, fragrance and dye that come to the line together."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.candle import wax, waxes
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.measure import Measurement
from brimbook.steps.weighing import practice_or_yours, sum_as_weighed, weigh_out

_HEAVIEST_WAX = 1.6
_TOLD_BASIS = {"poured": "hot, as poured", "set": "cold, as set"}


@dataclass(frozen=True)
class Filled:
    """One well filled to its line: what goes in all told, the second pour too [g], and how much of that is poured last [g]."""

    place: str
    wax: float
    fragrance: float
    dye: float
    top_up: float
    figures: tuple[Figure, ...]

    @property
    def total(self) -> float:
        """All that goes in [g]."""
        return self.wax + self.fragrance + self.dye


def filling(said: Said, place: str, room: Measurement, blend: Blend | None) -> Filled | None:
    """One well's wax, with every figure of it; none while an entry is missing or faulty [filled].

    said: the record as understood [said].
    place: path of the well [text].
    room: the well to its line, as measured [measurement].
    blend: of the pot that it is filled from; its place is that of the well whose pot it is [blend].
    """
    figures = tuple(_figures(said, place, room))
    if not figures:
        return None
    grams = {figure.key: figure.value for figure in figures}
    return Filled(place, *(grams.get(f"{place}.{name}", 0.0) for name in ("wax", "fragrance", "dye")), 0.0, figures)


def _figures(said: Said, place: str, room: Measurement) -> list[Figure]:
    basis = said.value(f"{place}.basis")
    names = (f"wax.density_{basis}", "fragrance.load", "fragrance.basis", "fragrance.density", "dye")
    if basis is None or any(said.value(f"{place}.{name}") is None for name in names):
        return []
    load = _load_of_wax(said, place)
    per_gram = _blend_per_gram(said, place, load.value)
    figures = [load, _load_of_blend(said, place, load), per_gram, *_weigh_outs(said, place, room, load, per_gram)]
    poured, cold = (said.value(f"{place}.wax.density_{state}") for state in ("poured", "set"))
    if None not in (poured, cold) and cold < poured:
        said.fault(f"{place}.wax.density_set", "Cold wax is denser than hot wax. Were the two densities swapped?")
    elif None not in (poured, cold):
        figures.append(_sink(said, place, room, poured, cold))
    return figures + _by_rule(said, place, room, load, figures)


def _load_of_wax(said: Said, place: str) -> Figure:
    load, dye = said.value(f"{place}.fragrance.load"), said.value(f"{place}.dye")
    told = show.significant
    shown = told(load * 100, 8, said.display)
    key, label = f"{place}.load_of_wax", "Fragrance load of the wax"
    if said.value(f"{place}.fragrance.basis") == "wax":
        return Figure(key, label, load, "–", show.percent(load, said.display, 2), "as you chose", shown,
                      says=f"{show.percent(load, said.display, 2)} of the wax")
    value = wax.load_of_wax(load, dye)
    return Figure(key, label, value, "–", show.percent(value, said.display, 2),
                  "load of the blend × (1 + dye) ÷ (1 − load of the blend)",
                  f"{shown} × (1 + {told(dye, 4, said.display)}) ÷ (1 − {told(load, 8, said.display)})",
                  says=f"{show.percent(value, said.display, 2)} of the wax",
                  constants=(Constant("Bases", "two ways to tell one load", sources.IDENTITY),))


def _load_of_blend(said: Said, place: str, of_wax: Figure) -> Figure:
    dye = said.value(f"{place}.dye")
    value = wax.load_of_blend(of_wax.value, dye)
    told = show.significant
    return Figure(f"{place}.load_of_blend", "Fragrance load of the blend", value, "–",
                  show.percent(value, said.display, 2), "load of the wax ÷ (1 + load of the wax + dye)",
                  f"{told(of_wax.value * 100, 8, said.display)} ÷ (1 + {told(of_wax.value, 8, said.display)} + "
                  f"{told(dye, 4, said.display)})", says=f"{show.percent(value, said.display, 2)} of the blend",
                  uses=(of_wax.key,),
                  constants=(Constant("Bases", "limits for a finished candle are of the blend", sources.IDENTITY),))


def _blend_per_gram(said: Said, place: str, load: float) -> Figure:
    basis, dye = said.value(f"{place}.basis"), said.value(f"{place}.dye")
    density, oil = said.value(f"{place}.wax.density_{basis}"), said.value(f"{place}.fragrance.density")
    value = wax.volume_per_gram_of_wax(density, oil, load, dye)
    told = show.significant
    source = waxes.source_of_density(said.text(f"{place}.wax.kind"), basis, density)
    return Figure(
        f"{place}.blend_per_gram", "Blend from one gram of wax", value, "mL/g", f"{told(value, 4, said.display)} mL",
        "(1 + dye) ÷ density of wax + fragrance load of the wax ÷ density of fragrance",
        f"(1 + {told(dye, 4, said.display)}) ÷ {told(density, 8, said.display)} + {told(load, 8, said.display)} ÷ "
        f"{told(oil, 8, said.display)}",
        constants=(Constant(f"Density of the wax, {_TOLD_BASIS[basis]}", show.density(density, said.display), source),
                   practice_or_yours(said, f"{place}.fragrance.density", "Density of the fragrance",
                                     show.density(oil, said.display))))


def _weigh_outs(said: Said, place: str, room: Measurement, load: Figure, per_gram: Figure) -> list[Figure]:
    grams = wax.wax_for_volume(room.volume, per_gram.value)
    told = show.significant
    first = weigh_out(said, f"{place}.wax", "Wax", "wax", grams, room.relative,
                      formula="volume to the line ÷ blend from one gram of wax",
                      numbers=f"{told(room.volume, 7, said.display)} ÷ {told(per_gram.value, 7, said.display)}",
                      uses=(f"{room.place}.volume", per_gram.key))
    parts = [first]
    dye = said.value(f"{place}.dye")
    for name, share, uses in (("Fragrance", load.value, (first.key, load.key)), ("Dye", dye, (first.key,))):
        if share:
            parts.append(weigh_out(
                said, f"{place}.{name.lower()}", name, name.lower(), grams * share, room.relative,
                formula=f"wax × {'fragrance load of the wax' if name == 'Fragrance' else 'dye, of the wax'}",
                numbers=f"{told(grams, 7, said.display)} × {told(share, 8, said.display)}", uses=uses))
    return [*parts, sum_as_weighed(said, f"{place}.pot", "In the pot", parts)]


def _sink(said: Said, place: str, room: Measurement, poured: float, cold: float) -> Figure:
    """What setting does to the level; for a set line, what stands above it while hot."""
    told = show.significant
    hot = said.value(f"{place}.basis") == "poured"
    volume = room.volume if hot else room.volume * cold / poured
    value = wax.sink(volume, poured, cold)
    start = told(room.volume, 7, said.display)
    if not hot:
        start += f" × {told(cold, 8, said.display)} ÷ {told(poured, 8, said.display)}"
    shown = show.volume(value, said.display)
    share = show.percent(1 - poured / cold, said.display)
    says = (f"As it sets it sinks by {shown}, {share} of the hot volume: keep some back to top it up" if hot else
            f"Hot, it would stand {shown} above the line: pour to the line, top up with the rest as it sets")
    kind = said.text(f"{place}.wax.kind")
    return Figure(
        f"{place}.sink", "Shrinks as it sets", value, "mL", shown,
        "hot volume × (1 − density as poured ÷ density as set)",
        f"{start} × (1 − {told(poured, 8, said.display)} ÷ {told(cold, 8, said.display)})", says=says,
        uses=(f"{room.place}.volume",),
        constants=tuple(
            Constant(f"Density of the wax, {_TOLD_BASIS[state]}", show.density(density, said.display),
                     waxes.source_of_density(kind, state, density))
            for state, density in (("poured", poured), ("set", cold))),
        spread="For the wax alone; fragrance shrinks less.")


def _by_rule(said: Said, place: str, room: Measurement, load: Figure, figures: list[Figure]) -> list[Figure]:
    rule = said.value(f"{place}.rule")
    if rule is None:
        return []
    told = show.significant
    constant = practice_or_yours(said, f"{place}.rule", "Wax for a gram of water to the line",
                                 f"{told(rule, 8, said.display)} g")
    by_rule = weigh_out(said, f"{place}.rule_wax", "Wax by your rule", "wax", wax.wax_by_rule(room.water, rule), None,
                        formula="water to the line × rule",
                        numbers=f"{told(room.water, 8, said.display)} × {told(rule, 8, said.display)}",
                        constants=(constant,), uses=(f"{room.place}.volume",), verb="Your rule:")
    weighed = next(figure for figure in figures if figure.key == f"{place}.wax")
    difference = _rule_difference(said, place, room, load, by_rule, weighed, constant)
    if not load.value:
        return [by_rule, difference]
    fragrance = weigh_out(said, f"{place}.rule_fragrance", "Fragrance by your rule", "fragrance",
                          by_rule.value * load.value, None, formula="wax by your rule × fragrance load of the wax",
                          numbers=f"{told(by_rule.value, 8, said.display)} × {told(load.value, 8, said.display)}",
                          uses=(by_rule.key, load.key), verb="Your rule:")
    return [by_rule, fragrance, difference]


def _rule_difference(said: Said, place: str, room: Measurement, load: Figure, by_rule: Figure, weighed: Figure,
                     constant: Constant) -> Figure:
    difference = by_rule.value / weighed.value - 1
    basis = said.value(f"{place}.basis")
    fits = wax.density_behind_rule(said.value(f"{place}.rule"), room.milliliters_per_gram,
                                   said.value(f"{place}.fragrance.density"), load.value, said.value(f"{place}.dye"))
    yours = said.value(f"{place}.wax.density_{basis}")
    told = show.significant
    more = "more" if difference >= 0 else "less"
    says = f"Your rule: {by_rule.shown} wax, {show.percent(abs(difference), said.display)} {more}. "
    if _HEAVIEST_WAX < fits:
        says += "With this much fragrance it fits no wax: it comes above the line"
    else:
        says += f"With this fragrance it comes to the line for a wax of {told(fits, 3, said.display)} g/mL; yours is " \
                f"{told(yours, 3, said.display)} g/mL {_TOLD_BASIS[basis]}"
    return Figure(
        f"{place}.rule_difference", "Your rule beside it", difference, "–", show.percent(difference, said.display),
        "wax by your rule ÷ wax − 1",
        f"({told(by_rule.value, 8, said.display)} ÷ {told(weighed.value, 8, said.display)} − 1) × 100", says=says,
        constants=(constant,), uses=(by_rule.key, weighed.key))
