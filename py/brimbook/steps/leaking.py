"""The leak test by weight."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.cast import leak
from brimbook.figure import Constant, Figure
from brimbook.fill import readings
from brimbook.quantity import show
from brimbook.quantity.moments import show_duration
from brimbook.record.said import Said
from brimbook.shape.solid import opening_area
from brimbook.steps.weighing import practice_or_yours

_WEIGHTS = ("dry", "filled", "later", "emptied")
_CHECK = "Check both weights."
_LET_OUT = "Don't fill it: what lets water out lets out hot wax too. Seal it inside or set it aside, then dry it and test again."
# A test that is shorter says little of a day.
_LONG_ENOUGH = 0.8 * leak.DAY
LABELS = {"leaks": "Leaked", "holds": "Leaked, within the ±", "unclear": "Leaked or dried off"}


@dataclass(frozen=True)
class _Test:
    """The weights that were understood [g], the ± of two of them [g], and how it is told."""

    said: Said
    at: str
    weights: dict[str, float | None]
    off: float

    def told(self, value: float) -> str:
        """A number that is put in, to ten digits [text].

        value: any finite number [–].
        """
        return show.significant(value, 10, self.said.display)

    def mass(self, grams: float) -> str:
        """A small weight, to three digits [text].

        grams: weight [g].
        """
        return show.small_mass(grams, self.said.display, 3)

    def half(self, grams: float) -> str:
        """A ± of a weight [text].

        grams: half-width [g].
        """
        return show.mass_plus_minus(grams, self.said.display)


@dataclass(frozen=True)
class _Dried:
    """What dried off [g] and its ± [g], the figure of it if it was open, and where its ± comes from."""

    grams: float
    off: float
    figure: Figure | None
    spread: str


def leaking(said: Said, place: str) -> list[Figure]:
    """Every figure of this step [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    at = f"{place}.leaking"
    step = said.value(f"{at}.readability") if said.typed(f"{at}.readability") else said.display.readability
    if step is None:
        return []
    weights = {name: said.value(f"{at}.{name}") for name in _WEIGHTS}
    if not said.typed(f"{at}.dry"):
        weights["dry"] = said.value(f"{place}.drying.dry_weight")
    test = _Test(said, at, weights, readings.readability_of_difference(step))
    if _faulty(test):
        return []
    figures = _absorbed(test)
    if None in (weights["filled"], weights["later"]):
        return figures
    lost, dried = _lost(test), _dried(test)
    figures.append(lost)
    if dried is None:
        return figures
    return [*figures, *([dried.figure] if dried.figure else []), *_leaked(test, lost, dried)]


def opening_stand_ins(said: Said, place: str) -> tuple[str, str]:
    """The paths of the well's opening, both ways, which stand in while the test's own is empty [texts].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    fill = f"wells.{place.partition('.')[2]}.fill"
    return (f"{fill}.opening_across", f"{fill}.opening_other")


def _faulty(test: _Test) -> bool:
    """Weights that can't be so, beyond the ± of the scale; each is told beside its field."""
    weights = test.weights

    def wrong(light: str, heavy: str, slack: float, sentence: str, name: str) -> bool:
        if None in (weights[light], weights[heavy]) or weights[light] <= weights[heavy] + slack:
            return False
        test.said.fault(f"{test.at}.{name}", f"{sentence} {_CHECK}")
        return True

    return any([
        wrong("dry", "filled", -test.off, "Filled, it weighs no more than dry.", "filled"),
        wrong("later", "filled", test.off, "It weighs more now than when it was filled. Was it topped up, or were the two "
              "swapped?", "later"),
        wrong("dry", "later", test.off, "Still filled, it weighs less than dry.", "later"),
        wrong("dry", "emptied", test.off, "Emptied, it weighs less than it did dry. Was it dry before the test?", "emptied"),
        wrong("emptied", "later", test.off, "Emptied, it weighs more than filled.", "emptied"),
    ])


def _rounding(test: _Test) -> Constant:
    return Constant("± of two rounded displays", test.half(test.off).removeprefix("± "), sources.ROUNDING)


def _absorbed(test: _Test) -> list[Figure]:
    dry, emptied = test.weights["dry"], test.weights["emptied"]
    if None in (dry, emptied):
        return []
    value = emptied - dry
    share = show.percent(value / dry, test.said.display)
    nothing = value <= test.off
    return [Figure(
        f"{test.at}.absorbed", "In the wall", value, "g", test.mass(value), formula="emptied − dry",
        numbers=f"{test.told(emptied)} − {test.told(dry)}", worked=f"{show.significant(value, 6, test.said.display)} g",
        says="The wall drank nothing that the scale can show" if nothing else
        f"The wall drank {test.mass(value)}, {share} of its dry weight",
        plus_minus=test.off, plus_minus_shown=test.half(test.off), constants=(_rounding(test),),
        spread="± from the scale's steps. A film of water left inside counts as in the wall.",
        notes=() if nothing else ("What moved into the wall is still on the scale while the vessel is full: it sinks the "
                                  "water, but it is not counted as lost.",))]


def _lost(test: _Test) -> Figure:
    value, time = test.weights["filled"] - test.weights["later"], test.said.value(f"{test.at}.hours")
    within = f" in {show_duration(time, test.said.display)}" if time is not None else ""
    says = f"It lost {test.mass(value)}{within}" if value > 0 else f"It lost nothing{within}"
    open_still = test.said.value(f"{test.at}.air") != "covered"
    return Figure(
        f"{test.at}.lost", "Lost", value, "g", test.mass(value), formula="filled − filled, later",
        numbers=f"{test.told(test.weights['filled'])} − {test.told(test.weights['later'])}",
        worked=f"{show.significant(value, 6, test.said.display)} g", says=f"{says}, leaked or dried off" if open_still else says,
        plus_minus=test.off, plus_minus_shown=test.half(test.off), constants=(_rounding(test),),
        spread="± from the scale's steps.")


def _dried(test: _Test) -> _Dried | None:
    """What dried off by how it stood; nothing while an entry for it is missing or faulty."""
    way = test.said.value(f"{test.at}.air")
    if way == "covered":
        return _Dried(0.0, 0.0, None, "It stood covered: nothing is counted as dried off.")
    opening = _opening(test)
    if opening is None or way is None:
        return None
    return _by_cup(test, *opening) if way == "cup" else _by_air(test, *opening)


def _opening(test: _Test) -> tuple[float, str] | None:
    """Area of the vessel's opening [mm²], and the same in numbers."""
    paths = tuple(f"{test.at}.{name}" for name in ("opening", "opening_other"))
    if not any(test.said.typed(path) for path in paths):
        paths = opening_stand_ins(test.said, test.at.removesuffix(".leaking"))
    across, other = (test.said.value(path) for path in paths)
    if across is None or (other is None and test.said.typed(paths[1])):
        return None
    numbers = f"π ÷ 4 × {test.told(across)}²" if other is None else f"{test.told(across)} × {test.told(other)}"
    return opening_area(across, other), numbers


def _by_cup(test: _Test, area: float, numbers: str) -> _Dried | None:
    first, later, across = (test.said.value(f"{test.at}.{name}") for name in ("cup_first", "cup_later", "cup_opening"))
    if None in (first, later, across):
        return None
    if later > first + test.off:
        test.said.fault(f"{test.at}.cup_later", f"The cup weighs more than at first. Were the two swapped? {_CHECK}")
        return None
    ratio = area / opening_area(across)
    value = leak.evaporated_beside(first - later, opening_area(across), area)
    off = readings.combine(test.off * ratio, abs(value) * leak.CUP_OFF)
    if value - (test.weights["filled"] - test.weights["later"]) > readings.combine(off, test.off):
        test.said.fault(f"{test.at}.cup_later", "By the cup more dried off than the vessel lost: they did not stand alike. "
                        f"{_CHECK}")
        return None
    spread = "± from the scale's steps at the cup, and a fifth for how alike the two stood."
    figure = Figure(
        f"{test.at}.evaporated", "Dried off, by the cup", value, "g", test.mass(value),
        formula="lost by the cup × opening of the vessel ÷ opening of the cup",
        numbers=f"({test.told(first)} − {test.told(later)}) × ({numbers}) ÷ (π ÷ 4 × {test.told(across)}²)",
        worked=f"{show.significant(value, 6, test.said.display)} g", plus_minus=off, plus_minus_shown=test.half(off),
        constants=(_rounding(test), Constant("A cup dries as the vessel does, within", show.percent(
            leak.CUP_OFF, test.said.display), sources.MEMORY)), spread=spread)
    return _Dried(value, off, figure, spread)


def _by_air(test: _Test, area: float, numbers: str) -> _Dried | None:
    said, at = test.said, test.at
    temperature, humidity, time = (said.value(f"{at}.{name}") for name in ("temperature", "humidity", "hours"))
    if None in (temperature, humidity, time):
        return None
    value = leak.evaporated(area, temperature, humidity, time)
    off, pressure = value * leak.ESTIMATE_OFF, leak.saturation(temperature)
    spread = "Half to twice this: a draft, a deep rim and a small opening all change it."
    figure = Figure(
        f"{at}.evaporated", "Dried off, as estimated", value, "g", show.small_mass(value, said.display),
        formula="rate in still air × pressure of vapor × (1 − humidity) × opening × hours",
        numbers=f"{test.told(leak.STILL_AIR)} × {show.significant(pressure, 8, said.display)} × "
                f"(1 − {test.told(humidity)}) × ({numbers}) ÷ 1000 ÷ 1000 × {test.told(time / 3600)}",
        worked=f"{show.significant(value, 5, said.display)} g", plus_minus=off, plus_minus_shown=test.half(off),
        constants=(
            Constant("Still air", f"{test.told(leak.STILL_AIR)} g/(m²·h·kPa)", sources.STILL_WATER),
            Constant(f"Pressure of vapor at {show.temperature(temperature, said.display)}",
                     f"{show.significant(pressure, 4, said.display)} kPa", sources.VAPOR),
            practice_or_yours(said, f"{at}.temperature", "Room", show.temperature(temperature, said.display)),
            practice_or_yours(said, f"{at}.humidity", "Humidity", show.percent(humidity, said.display, 0)),
            Constant("Over a vessel it may be", "half to twice as much", sources.MEMORY)), spread=spread)
    return _Dried(value, off, figure, spread)


def _leaked(test: _Test, lost: Figure, dried: _Dried) -> list[Figure]:
    said, value = test.said, lost.value - dried.grams
    off, time = readings.combine(test.off, dried.off), said.value(f"{test.at}.hours")
    found = leak.verdict(value, test.off, dried.off)
    uses = (lost.key, *([dried.figure.key] if dried.figure else []))
    within = f" in {show_duration(time, said.display)}" if time is not None else ""
    figure = Figure(
        f"{test.at}.leaked", LABELS[found], value, "g", test.mass(value),
        formula="lost − dried off" if dried.figure else "lost, as nothing dried off",
        numbers=f"{test.told(lost.value)} − {test.told(dried.grams)}" if dried.figure else test.told(lost.value),
        worked=f"{show.significant(value, 6, said.display)} g", says=_verdict_told(test, found, value, off, within),
        plus_minus=off, plus_minus_shown=test.half(off), uses=uses,
        spread=f"± from the scale's steps and from what dried off, added as squares. {dried.spread}",
        notes=(_LET_OUT, "Water that seeped through the wall and dried off outside counts as leaked.")
        if found == "leaks" else ())
    if found == "holds":
        return [figure, _most(test, figure, None if time is None or time >= _LONG_ENOUGH else time)]
    if found == "unclear" or time is None or time == leak.DAY:
        return [figure]
    return [figure, _in_a_day(test, figure, time)]


def _verdict_told(test: _Test, found: str, value: float, off: float, within: str) -> str:
    if found == "leaks":
        return f"Leaks {test.mass(value)} {test.half(off)}{within}"
    if found == "holds":
        time, most = test.said.value(f"{test.at}.hours"), leak.most_leaked(value, off)
        if time is not None and time < _LONG_ENOUGH:
            return (f"No leak seen{within}, but one of {_least_promised(test, leak.in_a_day(most, time))} a day would not show: "
                    "leave it for a day")
        return f"Holds: a leak would be under {_least_promised(test, most)}{within}"
    hidden = _least_promised(test, leak.most_leaked(value, off))
    return f"A leak under {hidden} can't be told from what dried off: cover it and repeat"


def _least_promised(test: _Test, grams: float) -> str:
    """A bound, rounded up."""
    return test.half(grams).removeprefix("± ")


def _most(test: _Test, leaked: Figure, short: float | None) -> Figure:
    """The most that can have leaked; of a short test, told for a day."""
    value = leak.most_leaked(leaked.value, leaked.plus_minus)
    off = show.significant(leaked.plus_minus, 8, test.said.display)
    if short is not None:
        a_day = leak.in_a_day(value, short)
        return Figure(
            f"{test.at}.most", "Could still leak", a_day, "g/d", f"{_least_promised(test, a_day)} a day",
            formula="the most that can have leaked × 24 ÷ hours",
            numbers=f"{test.told(value)} × 24 ÷ {test.told(short / 3600)}",
            worked=f"{show.significant(a_day, 6, test.said.display)} g/d", uses=(leaked.key,))
    return Figure(
        f"{test.at}.most", "At most: it holds", value, "g", _least_promised(test, value),
        formula="leaked + its ±" if leaked.value > 0 else "the ± of what leaked",
        numbers=f"{test.told(leaked.value)} + {off}" if leaked.value > 0 else off,
        worked=f"{show.significant(value, 5, test.said.display)} g", uses=(leaked.key,))


def _in_a_day(test: _Test, leaked: Figure, time: float) -> Figure:
    said, value = test.said, leak.in_a_day(leaked.value, time)
    off = leak.in_a_day(leaked.plus_minus, time)
    return Figure(
        f"{test.at}.a_day", "Leaks in a day", value, "g/d", f"{test.mass(value)} a day", formula="leaked × 24 ÷ hours",
        numbers=f"{test.told(leaked.value)} × 24 ÷ {test.told(time / 3600)}",
        worked=f"{show.significant(value, 6, said.display)} g/d", says=f"That is {test.mass(value)} {test.half(off)} in a day",
        plus_minus=off, plus_minus_shown=test.half(off), uses=(leaked.key,))
