"""The age of a piece by the temperatures it had: its law, its log, and when it can leave the mold."""

import math
from collections.abc import Callable
from dataclasses import dataclass

from brimbook import sources
from brimbook.cast import maturity
from brimbook.cast.batch import HALVING
from brimbook.cast.maturity import Reached, Spans
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, HOUR, MINUTE, show_duration
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.steps.facts import fact

# A reading so long after the pour is a slip of the date.
_LOGGED_DAYS = 90
# Two readings are averaged over so many hours; farther apart a straight line is cut into stretches of no more than these.
_AVERAGED, _STRETCH = 12.0, 2.0
# A sum is written with so many terms at the end; what comes before stands as one.
_TERMS = 4
# The ± of a corrected time: a share of the time, and a share of its correction.
_OFF = {"portland": (0.1, 0.25), "observed": (0.25, 1.0)}
_WHY = {
    "portland": "± a tenth of the time for how mixes differ, and a quarter of the correction, as the activation energies "
                "in use differ by a quarter.",
    "observed": "± a quarter of the time, and the whole correction once more: the rule is for slabs of Portland cement, "
                "and your powder may follow another one.",
}


@dataclass(frozen=True)
class History:
    """The temperatures of a piece: spans from the pour on [°C, h], the one that lasts from then on [°C], all that count."""

    spans: Spans
    last: float
    seen: tuple[float, ...]


@dataclass(frozen=True)
class Law:
    """How a binder ages with temperature: as Portland cement or as observed, its pace, the same written, its sources."""

    follows: str
    pace: Callable[[float], float]
    written: Callable[[float], str]
    formula: str
    constants: tuple[Constant, ...]


def history(said: Said, place: str, poured: float | None) -> History | None:
    """The temperatures from the pour on; nothing while the bench's own is faulty [history].

    said: the record as understood [said].
    place: path of the cast [text].
    poured: moment of the pour, none while it is not known [s since 2000].

    Between two readings their average is taken, over a longer time a straight line in short stretches; the last one lasts
    until another is logged.
    """
    bench = said.value(f"{place}.curing.temperature")
    if bench is None:
        return None
    readings = _readings(said, place, poured) if poured is not None else {}
    if not readings:
        return History([], bench, (bench,))
    # A bench that nobody told of is as the first reading has it.
    first = bench if said.typed(f"{place}.curing.temperature") else readings[min(readings)]
    points = sorted({poured: first, **readings}.items())
    spans = [stretch for (start, one), (end, other) in zip(points, points[1:])
             for stretch in _stretches(one, other, (end - start) / HOUR)]
    return History(spans, points[-1][1], tuple(celsius for _, celsius in points))


def _stretches(one: float, other: float, hours: float) -> Spans:
    """The temperatures between two readings: a reading of the next morning says little of the hour after the pour."""
    parts = 1 if hours <= _AVERAGED or one == other else math.ceil(hours / _STRETCH)
    return [(one + (other - one) * (part + 0.5) / parts, hours / parts) for part in range(parts)]


def _readings(said: Said, place: str, poured: float) -> dict[float, float]:
    """The logged temperatures by moment; of two at one moment the later entry counts."""
    found = {}
    for row in range(said.count(f"{place}.curing.temperatures")):
        path = f"{place}.curing.temperatures.{row}"
        at, celsius = said.value(f"{path}.at"), said.value(f"{path}.temperature")
        if at is not None and at < poured:
            said.fault(f"{path}.at", "This is before the pour. Type a moment after it, or mend the pour's.")
        elif at is not None and at > poured + _LOGGED_DAYS * DAY:
            said.fault(f"{path}.at", f"This is more than {_LOGGED_DAYS} days after the pour. Check the date.")
        elif None not in (at, celsius):
            found[at] = celsius
    return found


def law_of(said: Said, place: str, powder: str, reference: float) -> Law | None:
    """How the powder's times follow the temperature; nothing while an entry for it is faulty [law].

    said: the record as understood [said].
    place: path of the cast [text].
    powder: path of the powder in the mix [text].
    reference: the temperature that its times are told for [°C].
    """
    follows = fact(said, powder, "follows")
    if follows is None:
        return None
    if follows.value != "portland":
        return _observed(said, reference)
    return {"arrhenius": _arrhenius, "nurse_saul": _nurse_saul, None: _no_law}[said.value(f"{place}.curing.law")](
        said, f"{place}.curing", reference)


def _no_law(said: Said, at: str, reference: float) -> None:
    return None


def _observed(said: Said, reference: float) -> Law:
    display = said.display
    return Law(
        "observed", lambda celsius: maturity.observed_pace(celsius, reference),
        lambda celsius: f"2 ^ (({_put(celsius, display)} − {_put(reference, display)}) ÷ {_put(HALVING, display)})",
        f"2 ^ ((temperature − that of its time) ÷ {show.number(HALVING, 1, display)}), in °C",
        (Constant("Setting time", "halves per 20 °F warmer, doubles per 20 °F colder", sources.SETTING_RULE),))


def _arrhenius(said: Said, at: str, reference: float) -> Law | None:
    energy, display = said.value(f"{at}.energy"), said.display
    if energy is None:
        return None
    kelvin = show.number(maturity.KELVIN, 2, display)
    shown = f"{show.significant(energy, 4, display)} kJ/mol"
    return Law(
        "portland", lambda celsius: maturity.arrhenius_pace(celsius, reference, energy),
        lambda celsius: f"exp(−{_put(energy, display)} × 1000 ÷ {_put(maturity.GAS, display)} × (1 ÷ ({_put(celsius, display)} "
                        f"+ {kelvin}) − 1 ÷ ({_put(reference, display)} + {kelvin})))",
        "exp(−E ÷ R × (1 ÷ temperature − 1 ÷ that of its time)), in kelvin",
        (Constant("Equivalent age", "for Portland cement only", sources.EQUIVALENT_AGE),
         Constant("E, activation energy", shown, sources.ACTIVATION if said.is_usual(f"{at}.energy") else sources.YOURS),
         Constant("R", f"{_put(maturity.GAS, display)} J/(mol·K)", sources.GAS_CONSTANT)))


def _nurse_saul(said: Said, at: str, reference: float) -> Law | None:
    datum, display = said.value(f"{at}.datum"), said.display
    if datum is not None and datum >= reference:
        said.fault(f"{at}.datum", f"The datum must lie below {show.temperature(reference, display)}, the bench that the time "
                   "to demold is for: usually 0 or −10 °C.")
    if datum is None or datum >= reference:
        return None
    return Law(
        "portland", lambda celsius: maturity.nurse_saul_pace(celsius, reference, datum),
        lambda celsius: f"({_put(celsius, display)} − {_put(datum, display)}) ÷ ({_put(reference, display)} − "
                        f"{_put(datum, display)})",
        "(temperature − datum) ÷ (that of its time − datum)",
        (Constant("Temperature-time factor", "for Portland cement only", sources.TEMPERATURE_TIME),
         Constant("Datum", show.temperature(datum, display),
                  sources.DATUM if said.is_usual(f"{at}.datum") else sources.YOURS)))


def _put(value: float, display: Display) -> str:
    """A number as it is put into a working."""
    shown = show.significant(value, 8, display)
    return f"({shown})" if value < 0 else shown


def sum_written(terms: list[tuple[float, float]], display: Display) -> str:
    """A sum of products, written: the last ones in full, those before them as one number [text].

    terms: the two factors of each [–].
    display: how this maker reads figures [display].

    >>> sum_written([(2.0, 0.5), (3.0, 1.0)], Display())
    '2 × 0.5 + 3 × 1'
    """
    early, late = terms[:-_TERMS], terms[-_TERMS:]
    lump = [_put(sum(one * other for one, other in early), display)] if early else []
    return " + ".join([*lump, *(f"{_put(one, display)} × {_put(other, display)}" for one, other in late)])


def demolding(said: Said, place: str, law: Law, past: History, needed: float, constants: tuple[Constant, ...],
              reference: float) -> list[Figure]:
    """The pace at the temperature it has, the age that counts by then, and the hours to demolding, last [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    law: of its binder [law].
    past: the temperatures it had [history].
    needed: time to demold at the reference temperature [h].
    constants: that time, and where it comes from [constants].
    reference: the temperature that it is told for [°C].

    Empty where the piece does not go on setting.
    """
    found = maturity.reach(needed, past.spans, past.last, law.pace)
    if found is None:
        return []
    speed = law.pace(found.celsius)
    before = [] if found.passed == 0 else [_age(said, place, law, past, found)]
    pace = [] if found.celsius == reference else [_pace(said, place, law, found.celsius, reference)]
    figures = [*pace, *before]
    left = _put(needed, said.display)
    if before:
        left = f"({left} − {_put(found.age, said.display)})"
    if pace:
        left = f"{left} ÷ {_put(speed, said.display)}"
    share, again = _OFF[law.follows]
    off = share * found.hours + again * abs(found.hours - needed)
    formula = "hours passed + (time to demold − age by then) ÷ pace" if before else "time to demold ÷ pace"
    return [*figures, Figure(
        f"{place}.curing.demold", "Demold", found.hours, "h", "", formula=formula if figures else "time to demold",
        numbers=f"{_put(found.passed, said.display)} + {left}" if before else left,
        worked=f"{show.significant(found.hours, 6, said.display)} h", plus_minus=off,
        plus_minus_shown=f"± {roughly(off * HOUR, said.display)}", constants=constants,
        uses=tuple(figure.key for figure in figures), spread=_WHY[law.follows])]


def roughly(seconds: float, display: Display) -> str:
    """A ± of a time, rounded up so as not to promise too much [text].

    seconds: half-width [s].
    display: how this maker reads figures [display].

    >>> roughly(675.0, Display()), roughly(32_000.0, Display())
    ('12 min', '9 h')
    """
    step = MINUTE if seconds < HOUR else 10 * MINUTE if seconds < 10 * HOUR else HOUR
    return show_duration(max(1, math.ceil(seconds / step - 1e-9)) * step, display)


def _pace(said: Said, place: str, law: Law, celsius: float, reference: float) -> Figure:
    value, display = law.pace(celsius), said.display
    shown, told = show.percent(value, display, 0 if value >= 0.1 else 2), show.temperature(round(celsius, 1), display)
    return Figure(
        f"{place}.curing.pace", f"Pace at {told}", value, "–", shown, formula=law.formula,
        numbers=f"({law.written(celsius)}) × 100", worked=f"{show.significant(value * 100, 5, display)} %",
        constants=law.constants,
        says=f"At {told} it sets at {shown} of its pace at {show.temperature(reference, display)}")


def _age(said: Said, place: str, law: Law, past: History, found: Reached) -> Figure:
    """What the spans count that were passed before the last one."""
    terms, passed = [], 0.0
    for celsius, hours in past.spans:
        if passed >= found.passed:
            break
        terms.append((hours, law.pace(celsius)))
        passed += hours
    shown, lasted = (show_duration(hours * HOUR, said.display) for hours in (found.age, found.passed))
    return Figure(
        f"{place}.curing.age", "Age that counts, by the log", found.age, "h", shown, formula="hours × pace, of each stretch "
        "between the readings at its average", numbers=sum_written(terms, said.display),
        worked=f"{show.significant(found.age, 6, said.display)} h", constants=law.constants,
        says=f"The first {lasted} count as {shown}")


def ripe_at(said: Said, place: str, law: Law, needed: float, reference: float) -> list[Figure]:
    """The temperature-time factor at which it leaves the mold, where the piece ages by that [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    law: of its binder [law].
    needed: time to demold at the reference temperature [h].
    reference: the temperature that it is told for [°C].
    """
    if law.follows != "portland" or said.value(f"{place}.curing.law") != "nurse_saul":
        return []
    datum, display = said.value(f"{place}.curing.datum"), said.display
    value = maturity.temperature_time([(reference, needed)], datum)
    shown = f"{show.significant(value, 3, display)} °C·h"
    return [Figure(
        f"{place}.curing.ripe", "Maturity to demold at", value, "°C·h", shown, formula="hours × (temperature − datum), in °C",
        numbers=f"{_put(needed, display)} × ({_put(reference, display)} − {_put(datum, display)})",
        worked=f"{show.significant(value, 6, display)} °C·h", constants=law.constants,
        says=f"It leaves the mold at a maturity of {shown}")]
