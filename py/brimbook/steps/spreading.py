"""How the logged mixes spread, and how many grams of water move that."""

import math

from brimbook import sources
from brimbook.cast import flow
from brimbook.cast.flow import Line
from brimbook.cast.learning import student_factor
from brimbook.cast.recipe import Recipe
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.steps.pour_log import Pour, base_of

# Water is told for so many grams of powder.
_PORTION = 100
# A sum of more terms than this is put in as one number.
_TERMS = 8


def spreading(said: Said, place: str, recipe: Recipe, pours: list[Pour]) -> list[Figure]:
    """The spread of the logged pours, the flow, and the water that moves it [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    recipe: for one gram of powder, as planned now [recipe].
    pours: of the log [pours].
    """
    seen = [pour for pour in pours if pour.spread is not None]
    if not seen:
        return []
    waters, spreads = [pour.own.total_water for pour in seen], [pour.spread for pour in seen]
    spread = _spread(said, place, spreads)
    figures = [spread, _flow(said, place, spread)]
    line = flow.line(waters, spreads)
    if line is None:
        return figures
    target = said.value(f"{place}.flow.target")
    sure = line.slope > line.plus_minus
    near = sure and target is not None and line.is_near(line.water_for(target))
    notes = () if sure else ("That is too little to go by: pour once with a little more water and once with less.",)
    if sure and target is not None and not near:
        notes = (f"A spread of {show.length(target, said.display)} lies too far from what your pours had to say how much water "
                 "it takes: go there in small steps.",)
    figures.append(_slope(said, place, line, waters, spreads, notes))
    return [*figures, _water(said, place, line, target, recipe)] if near else figures


def _key(place: str, name: str) -> str:
    return f"{place}.pouring.{name}"


def _spread(said: Said, place: str, spreads: list[float]) -> Figure:
    told, mean = show.significant, flow.mean_diameter(spreads)
    terms = " + ".join(told(spread, 8, said.display) for spread in spreads) if len(spreads) <= _TERMS else told(
        math.fsum(spreads), 9, said.display)
    shown, target = show.length(mean, said.display), said.value(f"{place}.flow.target")
    aim = "aim for that with the next one" if target is None else f"you want {show.length(target, said.display)}"
    return Figure(
        _key(place, "spread"), "Spread of your pours", mean, "mm", shown, formula="average of the pours' spreads",
        numbers=f"({terms}) ÷ {len(spreads)}", worked=f"{told(mean, 5, said.display)} mm",
        says=f"Your pours spread {shown} on average: {aim}")


def _flow(said: Said, place: str, spread: Figure) -> Figure:
    told, base = show.significant, base_of(said, place)
    share = flow.flow(spread.value, base)
    cone = said.value(f"{place}.flow.cone")
    size = Constant("Base of the cone or ring", show.length(base, said.display),
                    sources.CONE_SIZES if cone in flow.CONES else sources.YOURS)
    words, more = f"A flow of {show.percent(share, said.display, 0)}: so much wider than the base it stood on", ()
    if cone == "mortar_table":
        words += f", and a {flow.consistency(spread.value)} mortar, by its class"
        more = (Constant("Class of the flow value", flow.consistency(spread.value), sources.CONSISTENCY),)
    return Figure(
        _key(place, "flow"), "Flow", share, "–", show.percent(share, said.display, 0), says=words,
        formula="(spread − base) ÷ base", numbers=f"({told(spread.value, 8, said.display)} − {told(base, 8, said.display)}) "
        f"÷ {told(base, 8, said.display)} × 100", worked=f"{told(share * 100, 5, said.display)} %",
        constants=(size, Constant("Flow", "increase over the base", sources.FLOW), *more), uses=(spread.key,))


def _slope(said: Said, place: str, line: Line, waters: list[float], spreads: list[float],
           notes: tuple[str, ...]) -> Figure:
    display, slope, half = said.display, line.slope / _PORTION, line.plus_minus / _PORTION
    way = f"{_length(abs(slope), said)} {'wider' if slope > 0 else 'narrower'}"
    limits = f"Seen from {_water_told(line.least, said)} to {_water_told(line.most, said)} of water for {_PORTION} g of powder"
    return Figure(
        _key(place, "spread_slope"), f"One gram of water in {_PORTION} g of powder moves the spread", slope, "mm",
        _length(slope, said), formula="slope of the straight line through your pours, for one gram of water in "
        f"{_PORTION} g of powder", numbers=_slope_numbers(said, line, waters, spreads),
        worked=f"{show.significant(slope, 4, display)} mm", plus_minus=half, plus_minus_shown=f"± {_half(half, said)}",
        says=f"A gram more of water for {_PORTION} g of powder spreads it {way}. {limits}: no good far from there",
        constants=(Constant("Line", "least squares", sources.LEAST_SQUARES),
                   Constant("Scatter expected of a spread", show.percent(flow.SPREAD_SCATTER, display), sources.MEMORY),
                   Constant("Student's t, 95 %", show.significant(student_factor(line.freedom), 4, display),
                            sources.STUDENT_SERIES)),
        spread="± at about 95 %, from how far the pours lie off the line and what is expected, together.", notes=notes)


def _length(millimeters: float, said: Said) -> str:
    """A small length to two digits in the maker's unit."""
    if said.display.length == "in":
        return f"{show.significant(from_base(millimeters, 'in'), 2, said.display)} in"
    return f"{show.significant(millimeters, 2, said.display)} mm"


def _half(millimeters: float, said: Said) -> str:
    inches = said.display.length == "in"
    value = from_base(millimeters, "in") if inches else millimeters
    return f"{show.plus_minus(value, said.display)} {'in' if inches else 'mm'}"


def _water_told(water: float, said: Said) -> str:
    return f"{show.trimmed(water * _PORTION, 1, said.display)} g"


def _slope_numbers(said: Said, line: Line, waters: list[float], spreads: list[float]) -> str:
    def told(value: float) -> str:
        return show.significant(value, 10, said.display)

    pairs = list(zip(waters, spreads))
    if len(pairs) > _TERMS:
        width = math.fsum((water - line.middle) ** 2 for water in waters)
        return f"{told(line.slope * width)} ÷ {told(width)} ÷ {_PORTION}"
    middle, height = told(line.middle), told(line.height)
    above = " + ".join(f"({told(water)} − {middle}) × ({told(spread)} − {height})" for water, spread in pairs)
    below = " + ".join(f"({told(water)} − {middle})²" for water in waters)
    return f"({above}) ÷ ({below}) ÷ {_PORTION}"


def _water(said: Said, place: str, line: Line, target: float, recipe: Recipe) -> Figure:
    told, display = show.significant, said.display
    water = line.water_for(target)
    return Figure(
        _key(place, "spread_water"), f"Water for that spread, in {_PORTION} g of powder", water * _PORTION, "g",
        _water_told(water, said), formula="(average water + (spread wanted − average spread) ÷ slope) × powder",
        numbers=f"({told(line.middle, 10, display)} + ({told(target, 8, display)} − {told(line.height, 10, display)}) ÷ "
                f"{told(line.slope, 10, display)}) × {_PORTION}", worked=f"{told(water * _PORTION, 4, display)} g",
        says=f"For {show.length(target, display)} take {_water_told(water, said)} of water in {_PORTION} g of powder; the recipe "
             f"has {_water_told(recipe.total_water, said)}",
        uses=(_key(place, "spread_slope"),))
