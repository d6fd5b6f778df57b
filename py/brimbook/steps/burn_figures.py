"""The figures of a burn test: rate, drift, heat, pool and flame."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.candle import burning, standards
from brimbook.candle.burning import Rate
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.shape.outline import area
from brimbook.steps.burn_log import Burned
from brimbook.steps.filling import Filled
from brimbook.steps.waxes_in_pot import waxes_of
from brimbook.steps.wicks import WickPlan

_HEATS = {"paraffin": (burning.PARAFFIN_HEAT, "as n-eicosane"), "soy": (burning.ESTER_HEAT, "as stearic acid")}
_SCATTER = Constant("Scatter between cycles that is expected", "8 %", sources.MEMORY)


@dataclass(frozen=True)
class Test:
    """A burn test with all that its figures need; needed is how wide the pool of one wick must grow [mm]."""

    said: Said
    place: str
    at: str
    cycles: tuple[Burned, ...]
    rate: Rate | None
    plan: WickPlan | None
    filled: Filled | None
    needed: float | None

    @property
    def display(self) -> Display:
        """How this maker reads figures [display]."""
        return self.said.display

    @property
    def counted(self) -> list[Burned]:
        """The cycles whose weights and hours are known [cycles]."""
        return [burned for burned in self.cycles if burned.cycle is not None]

    @property
    def weighed(self) -> tuple[float, float] | None:
        """The first and the newest weight of the log that nothing is wrong with, those of cycles without hours too [g and g]."""
        sound = [each for each in self.cycles if not any(self.said.fault_at(f"{each.path}.{name}") for name in ("before", "after"))]
        weights = [grams for each in sound for grams in (each.before, each.after) if grams is not None]
        return (weights[0], weights[-1]) if weights else None

    @property
    def wicks(self) -> int:
        """How many wicks the plan has; 1 where there is none [count]."""
        return len(self.plan.covering.points) if self.plan is not None and self.plan.covering is not None else 1

    @property
    def wax(self) -> str:
        """Path of the well whose wax it is: the first one's, where it is filled from that pot [text]."""
        return "wells.0" if self.said.value(f"{self.place}.pot") == "first" else self.place

    def put(self, value: float) -> str:
        """A number that is put in, to eight digits [text].

        value: any finite number [–].
        """
        return show.significant(value, 8, self.display)

    def worked(self, value: float) -> str:
        """A result before it is rounded, to five digits [text].

        value: any finite number [–].
        """
        return show.significant(value, 5, self.display)


def per_hour(grams: float, display: Display) -> str:
    """A weight that burns in an hour, to two digits [text].

    grams: in an hour [g/h].
    display: how this maker reads figures [display].

    >>> per_hour(5.18, Display()), per_hour(14.2, Display(mass="oz"))
    ('5.2 g/h', '0.5 oz/h')
    """
    return f"{show.small_mass(grams, display)}/h"


def needed_pool(plan: WickPlan | None) -> float | None:
    """How wide the pool of each wick must grow to reach the whole surface; none where the plan can't tell [mm].

    plan: of the wicks [plan].
    """
    known = plan is not None and plan.covering is not None and plan.covering.radius > 0
    return 2 * plan.covering.radius if known else None


def surface(plan: WickPlan | None) -> float | None:
    """Area of the surface of the wax, where its outline is known [mm²].

    plan: of the wicks [plan].
    """
    return None if plan is None else area(plan.outline)


def rates(test: Test) -> list[Figure]:
    """The rate of each cycle, of all together, of a wick, how it drifts, and the heat [figures].

    test: with its log [test].
    """
    if test.rate is None:
        return []
    rate = _rate(test)
    return [*(_one(test, burned, half) for burned, half in zip(test.counted, test.rate.each)), rate, *_per_wick(test, rate),
            *_drift(test), *_power(test, rate)]


def _one(test: Test, burned: Burned, half: float) -> Figure:
    value = burned.cycle.rate
    return Figure(
        f"{test.at}.rate_{burned.number}", f"Cycle {burned.number}", value, "g/h", per_hour(value, test.display),
        formula="(weight before − weight after) ÷ hours",
        numbers=f"({test.put(burned.before)} − {test.put(burned.after)}) ÷ {test.put(burned.hours)}",
        worked=f"{test.worked(value)} g/h", says=f"Cycle {burned.number} burned {per_hour(value, test.display)}",
        plus_minus=half, plus_minus_shown=f"{show.mass_plus_minus(half, test.display)}/h",
        constants=(Constant("Rounding", "step ÷ √12 for each weighing", sources.ROUNDING),),
        spread="± of the scale's steps and of a clock read to the minute.")


def _rate(test: Test) -> Figure:
    rate, counted = test.rate, test.counted
    burned = " + ".join(test.put(each.cycle.burned) for each in counted)
    hours = " + ".join(test.put(each.cycle.hours) for each in counted)
    told, half = per_hour(rate.value, test.display), f"{show.mass_plus_minus(rate.plus_minus, test.display)}/h"
    scatter = f"Between your cycles it scatters by {show.percent(rate.scatter, test.display)}, pooled with the scatter expected."
    one = "One cycle says nothing of the next: the scatter that is expected stands in for it."
    return Figure(
        f"{test.at}.rate", "Rate", rate.value, "g/h", told, formula="all that burned ÷ all the hours",
        numbers=f"({burned}) ÷ ({hours})", worked=f"{test.worked(rate.value)} g/h", says=f"It burns {told}",
        plus_minus=rate.plus_minus, plus_minus_shown=half,
        constants=(_SCATTER, Constant("Student's t", show.significant(burning.student_factor(rate.freedom), 4, test.display),
                                      sources.STUDENT_SERIES), Constant("Rounding", "step ÷ √12", sources.ROUNDING)),
        uses=tuple(f"{test.at}.rate_{each.number}" for each in counted), spread=f"± at about 95 %. {one if len(counted) == 1 else scatter}")


def _per_wick(test: Test, rate: Figure) -> list[Figure]:
    if test.wicks < 2:
        return []
    value = rate.value / test.wicks
    told = per_hour(value, test.display)
    alone = test.said.value(f"{test.place}.wicks.rate")
    notes = ()
    if alone:
        expected = burning.rate_of_wicks(alone, test.wicks)
        notes = (f"By the rate of one such wick alone, {test.wicks} would burn {per_hour(expected, test.display)} if none heated "
                 "the others.",)
    return [Figure(
        f"{test.at}.per_wick", "Of each wick", value, "g/h", told, formula="burn rate ÷ wicks",
        numbers=f"{test.put(rate.value)} ÷ {test.wicks}", worked=f"{test.worked(value)} g/h", says=f"Each wick burns {told}",
        uses=(rate.key,), notes=notes)]


def _drift(test: Test) -> list[Figure]:
    drift = test.rate.drift
    if drift is None:
        return []
    counted, weights = test.counted, burning.slope_weights(len(test.counted))
    terms = " + ".join(f"{test.put(weight)} × {test.put(each.cycle.rate)}" for weight, each in zip(weights, counted))
    told = per_hour(drift.slope, test.display)
    changes = f"It is {drift.word}: by {per_hour(abs(drift.slope), test.display)} from each cycle to the next"
    return [Figure(
        f"{test.at}.drift", "From cycle to cycle", drift.slope, "g/h", told,
        formula="slope of the line through the rates of the cycles", numbers=terms, worked=f"{test.worked(drift.slope)} g/h",
        says="The rate is steady from cycle to cycle" if drift.word == "steady" else changes, plus_minus=drift.plus_minus,
        plus_minus_shown=f"{show.mass_plus_minus(drift.plus_minus, test.display)}/h",
        constants=(Constant("Line", "through the rates, by number of the cycle", sources.LEAST_SQUARES), _SCATTER),
        uses=tuple(f"{test.at}.rate_{each.number}" for each in counted),
        spread="± at about 95 %. A slope within it is told as steady.")]


def _power(test: Test, rate: Figure) -> list[Figure]:
    kinds = {test.said.text(f"{part.path}.kind") for part in waxes_of(test.said, test.wax)}
    heat = _HEATS.get(kinds.pop()) if len(kinds) == 1 else None
    if heat is None:
        return []
    value, shown = burning.net_power(rate.value, heat[0]), f"{test.put(heat[0])} MJ/kg, {heat[1]}"
    told = f"{show.significant(value, 2, test.display)} W"
    return [Figure(
        f"{test.at}.power", "Heat of the flame", value, "W", told, formula="burn rate × net heat of combustion ÷ 3.6",
        numbers=f"{test.put(rate.value)} × {test.put(heat[0])} ÷ {test.put(3.6)}", worked=f"{test.worked(value)} W",
        says=f"All flames together give about {told}", constants=(Constant("Net heat of combustion", shown, sources.NET_HEAT),),
        uses=(rate.key,), spread="For information: wax, fragrance and soot shift it by some percent.")]


def pools(test: Test) -> list[Figure]:
    """How fast the pool grew at first, how long the rule of thumb gives it, and its share of the width it needs [figures].

    test: with its log [test].
    """
    seen = [each for each in test.cycles if each.pool is not None]
    growing = [each for each in seen if each.hours is not None and each.reached != "wall"]
    found = [_growth(test, growing[0])] if growing else []
    if test.needed is None:
        return found
    found.append(_by_rule(test))
    return [*found, _share(test, seen[-1])] if seen else found


def _growth(test: Test, burned: Burned) -> Figure:
    value = burning.pool_growth(burned.pool, burned.hours)
    told = f"{show.length(value, test.display)}/h"
    return Figure(
        f"{test.at}.growth", "Pool growth", value, "mm/h", told, formula="width of the pool ÷ hours",
        numbers=f"{test.put(burned.pool)} ÷ {test.put(burned.hours)}", worked=f"{test.worked(value)} mm/h",
        says=f"In cycle {burned.number} the pool grew {told} across",
        constants=(Constant("Rule of thumb, in no standard", f"{show.length(burning.POOL_RULE, test.display)} across in an hour",
                            sources.PRACTICE),), spread="On average since it was lit: a pool slows down as it widens.")


def _by_rule(test: Test) -> Figure:
    value = burning.hours_by_rule(test.needed)
    return Figure(
        f"{test.at}.by_rule", "Full pool by the rule of thumb", value, "h", f"{show.significant(value, 2, test.display)} h",
        formula="width that the pool of each wick needs ÷ 1 in an hour",
        numbers=f"{test.put(test.needed)} ÷ {test.put(burning.POOL_RULE)}", worked=f"{test.worked(value)} h",
        says=f"By the rule of thumb the pool takes {show.significant(value, 2, test.display)} h to reach all of the wax",
        constants=(Constant("Rule of thumb, in no standard", f"{show.length(burning.POOL_RULE, test.display)} across in an hour",
                            sources.PRACTICE),))


def _share(test: Test, burned: Burned) -> Figure:
    value = burned.pool / test.needed
    return Figure(
        f"{test.at}.pool", "Pool, of the width it needs", value, "–", show.percent(value, test.display, 0),
        formula="width of the newest pool ÷ width that the pool of each wick needs × 100",
        numbers=f"{test.put(burned.pool)} ÷ {test.put(test.needed)} × 100", worked=show.percent(value, test.display, 3),
        says=f"The pool of cycle {burned.number} is {show.percent(value, test.display, 0)} as wide as it needs to be")


def flames(test: Test) -> list[float]:
    """The flames that were measured [mm].

    test: with its log [test].
    """
    seen = (test.said.value(f"{each.path}.flame") for each in test.cycles)
    return [flame for flame in seen if flame]


def tallest_flame(test: Test) -> list[Figure]:
    """How far the tallest flame is from two published limits [figures].

    test: with its log [test].
    """
    seen = flames(test)
    if not seen:
        return []
    flame = max(seen)
    limits = (("flame_astm", "ASTM F2417", standards.FLAME_ASTM, standards.below_flame_astm(flame), sources.FLAME_ASTM),
              ("flame_en", "EN 15493", standards.FLAME_EN, standards.below_flame_en(flame), sources.FLAME_EN))
    return [Figure(
        f"{test.at}.{name}", f"Flame below {standard}", below, "mm", show.length(below, test.display),
        formula="limit − tallest flame", numbers=f"{test.put(limit)} − {test.put(flame)}", worked=f"{test.worked(below)} mm",
        says=f"The tallest flame was {show.length(flame, test.display)}; the limit of {standard} is {show.length(limit, test.display)}",
        constants=(Constant(f"Flame, {standard}", show.length(limit, test.display), source),),
        spread="A flame is read to a few millimeters at best.") for name, standard, limit, below, source in limits]
