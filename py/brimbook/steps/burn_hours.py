"""How long a vessel burns until only so much is left as should stay."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.candle import burning
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.steps.burn_figures import Test, surface
from brimbook.steps.densities import Density, density_of
from brimbook.steps.weighing import practice_or_yours


@dataclass(frozen=True)
class _Wax:
    """What the vessel held when it was full [g], its ± as a share, and where that comes from."""

    grams: float
    relative: float
    spread: str
    numbers: str
    uses: tuple[str, ...]


def hours(test: Test) -> list[Figure]:
    """What stays at the end, the hours until then from full, and those that are left [figures].

    test: with its log [test].
    """
    rest, wax = _rest(test), _wax(test)
    figures = [] if rest is None else [rest]
    if None in (rest, wax, test.rate):
        return figures
    if rest.value >= wax.grams:
        name = "rest_weight" if test.said.value(f"{test.at}.rest") == "weight" else "rest_height"
        test.said.fault(f"{test.at}.{name}", f"The vessel holds {show.mass(wax.grams, test.display)} of wax: less must stay.")
        return figures
    return [*figures, _from_full(test, wax, rest), *_left(test, wax, rest)]


def told(hours: float, test: Test) -> str:
    """Hours to two digits [text].

    hours: any [h].
    test: with its display [test].
    """
    return f"{show.significant(hours, 2, test.display)} h"


def _wax(test: Test) -> _Wax | None:
    """The first weight less the empty vessel, where both are known, else what the fill worked out."""
    said, path = test.said, f"{test.at}.vessel_weight"
    vessel, first = said.value(path), next((each.before for each in test.cycles if each.before is not None), None)
    if None not in (vessel, first):
        if vessel >= first:
            said.fault(path, f"The first weight is {show.mass(first, test.display)}: the empty vessel must weigh less.")
            return None
        return _Wax(first - vessel, 0.0, "± of the rate.", f"{test.put(first)} − {test.put(vessel)}", ())
    if test.filled is None or said.typed(path) and vessel is None:
        return None
    parts = [figure for figure in test.filled.figures if figure.key in [f"{test.place}.{name}" for name in ("wax", "fragrance", "dye")]]
    relative = next((figure.plus_minus / figure.value for figure in parts if figure.plus_minus and figure.value), 0.0)
    return _Wax(test.filled.total, relative, "± of the rate and of the wax.", test.put(test.filled.total),
                tuple(figure.key for figure in parts))


def _rest(test: Test) -> Figure | None:
    """The wax that stays, by its weight or by its height."""
    said, key, label = test.said, f"{test.at}.rest", "Wax left at the end"
    if said.value(f"{test.at}.rest") == "weight":
        grams = said.value(f"{test.at}.rest_weight")
        return None if grams is None else Figure(
            key, label, grams, "g", show.mass(grams, test.display), formula="as typed", numbers=test.put(grams),
            worked=f"{test.put(grams)} g", constants=(Constant(label, show.mass(grams, test.display), sources.YOURS),))
    height, area = said.value(f"{test.at}.rest_height"), surface(test.plan)
    density = None if None in (height, area) else _density(test)
    if density is None:
        return None
    grams = burning.rest_of_wax(area, height, density.value)
    return Figure(
        key, label, grams, "g", show.mass(grams, test.display), formula="surface of the wax × height ÷ 1000 × density of the wax",
        numbers=f"{test.put(area)} × {test.put(height)} ÷ 1000 × {test.put(density.value)}", worked=f"{test.worked(grams)} g",
        says=f"{show.mass(grams, test.display)} of wax stays at the end, {show.length(height, test.display)} high",
        constants=(_height(test, height), *_told_density(test, density)),
        spread="As if the wall were upright: a vessel that narrows below holds less there.")


def _density(test: Test) -> Density | None:
    """That of all the wax in its pot, by the maker's cup where there is one: cold where that is known, else hot."""
    cold = density_of(test.said, test.wax, "set")
    return density_of(test.said, test.wax, "poured") if cold is None else cold


def _told_density(test: Test, density: Density) -> tuple[Constant, ...]:
    """The density that is put in, and what it was worked out from where it is not told itself."""
    one = len(density.constants) == 1
    whole = Constant("Density of the wax", show.density(density.value, test.display),
                     density.constants[0].source if one else sources.IDENTITY)
    return (whole,) if one else (whole, *density.constants)


def _height(test: Test, height: float) -> Constant:
    path, name, shown = f"{test.at}.rest_height", "Wax left at the end, high", show.length(height, test.display)
    return Constant(name, shown, sources.STOP_BURNING) if test.said.is_usual(path) else practice_or_yours(test.said, path, name, shown)


def _from_full(test: Test, wax: _Wax, rest: Figure) -> Figure:
    rate = test.rate
    value = burning.burn_hours(wax.grams - rest.value, rate.value)
    half = value * math.hypot(rate.plus_minus / rate.value, wax.relative * wax.grams / (wax.grams - rest.value))
    return Figure(
        f"{test.at}.hours", "Burn time", value, "h", told(value, test), formula="(wax when full − wax left at the end) ÷ burn rate",
        numbers=f"({wax.numbers} − {test.put(rest.value)}) ÷ {test.put(rate.value)}", worked=f"{test.worked(value)} h",
        says=f"From full to its rest it burns about {told(value, test)}", plus_minus=half,
        plus_minus_shown=f"± {show.plus_minus(half, test.display)} h", uses=(*wax.uses, rest.key, f"{test.at}.rate"),
        spread=f"{wax.spread} What stays at the end is taken as it is.")


def _left(test: Test, wax: _Wax, rest: Figure) -> list[Figure]:
    """The hours that are left by its newest weight; none once it is down to its rest."""
    first, newest = test.weighed
    left = wax.grams - rest.value - (first - newest)
    if left <= 0:
        return []
    value = burning.burn_hours(left, test.rate.value)
    half = value * math.hypot(test.rate.plus_minus / test.rate.value, wax.relative * wax.grams / left)
    return [Figure(
        f"{test.at}.left", "Left to burn", value, "h", told(value, test),
        formula="(wax when full − wax left at the end − (first weight − newest weight)) ÷ burn rate",
        numbers=f"({wax.numbers} − {test.put(rest.value)} − ({test.put(first)} − {test.put(newest)})) ÷ {test.put(test.rate.value)}",
        worked=f"{test.worked(value)} h", says=f"About {told(value, test)} are left to burn", plus_minus=half,
        plus_minus_shown=f"± {show.plus_minus(half, test.display)} h", uses=(*wax.uses, rest.key, f"{test.at}.rate"), spread=wax.spread)]
