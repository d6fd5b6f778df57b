"""What keeping a piece of Portland cement damp does for its strength."""

from brimbook import sources
from brimbook.cast import maturity
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, HOUR, show_duration
from brimbook.record.said import Said
from brimbook.steps.aging import History, sum_written

_HOURS_IN_DAY = DAY / HOUR
# Of the strength that EN 1992 gives, cement of class N; it tells of 3 days and more, and roughly from 1 on.
_NORMAL, _LEAST_DAYS, _SURE_DAYS = 0.25, 1.0, 3.0


def strengths(said: Said, place: str, past: History, damp: float, until: float) -> list[Figure]:
    """What the days kept damp bring, and the strength at their end [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    past: the temperatures it had [history].
    damp: time kept damp [d].
    until: end of it, after the pour [h].
    """
    adjusted = _adjusted(said, place, past, until)
    figures = [_kept_damp(said, place, damp)]
    if adjusted.value >= _LEAST_DAYS:
        figures += [adjusted, _gained(said, place, adjusted, "By the end of the damp days" if damp else "At demolding")]
    return figures


def _kept_damp(said: Said, place: str, damp: float) -> Figure:
    value, display = maturity.strength_kept_damp(damp), said.display
    rows = zip(maturity.DAMP_SHARES, maturity.DAMP_SHARES[1:])
    (before, low), (after, high) = next((pair for pair in rows if damp <= pair[1][0]), [maturity.DAMP_SHARES[-1]] * 2)
    told, shown = (lambda number: show.significant(number, 8, display)), show.percent(value, display, 0)
    between = f"{told(low * 100)} + ({told(high * 100)} − {told(low * 100)}) × ({told(damp)} − {told(before)}) ÷ " \
              f"({told(after)} − {told(before)})"
    kept = f"Kept damp for {show_duration(damp * DAY, display)}" if damp else "Dried at once"
    table = "; ".join(f"{told(days)} d: {show.percent(share, display, 0)}" for days, share in maturity.DAMP_SHARES)
    return Figure(
        f"{place}.curing.kept_damp", "Strength by the days kept damp", value, "–", shown,
        formula="table of days kept damp, straight lines between its entries",
        numbers=between if after > before else told(low * 100), worked=f"{show.significant(value * 100, 5, display)} %",
        constants=(Constant("Share of the strength it is designed for", table, sources.KEPT_DAMP),),
        says=f"{kept}, Portland cement reaches about {shown} of the strength it is designed for",
        spread="Told for concrete; a thin wall dries faster, so keep it wrapped.")


def _adjusted(said: Said, place: str, past: History, until: float) -> Figure:
    spans, display = _up_to(past, until), said.display
    terms = [(hours, maturity.adjusted_pace(celsius)) for celsius, hours in spans]
    value = maturity.equivalent_age(spans, maturity.adjusted_pace) / _HOURS_IN_DAY
    told = show.significant
    slope, level = (told(each, 4, display) for each in (maturity.ADJUSTED_SLOPE, maturity.ADJUSTED_LEVEL))
    return Figure(
        f"{place}.curing.adjusted", "Age adjusted to 20 °C", value, "d", show_duration(value * DAY, display),
        formula=f"hours × exp({level} − {slope} ÷ (273 + °C)) of each stretch, ÷ 24",
        numbers=f"({sum_written(terms, display)}) ÷ {told(_HOURS_IN_DAY, 2, display)}",
        worked=f"{told(value, 5, display)} d",
        constants=(Constant("Adjusted age", f"{slope} and {level}", sources.ADJUSTED_AGE),))


def _up_to(past: History, until: float) -> maturity.Spans:
    """The spans cut off at a moment, the last temperature until then."""
    spans, passed = [], 0.0
    for celsius, hours in past.spans:
        if passed + hours >= until:
            break
        spans.append((celsius, hours))
        passed += hours
    else:
        return [*spans, (past.last, until - passed)]
    return [*spans, (celsius, until - passed)]


def _gained(said: Said, place: str, adjusted: Figure, then: str) -> Figure:
    value, told, display = maturity.strength_gain(adjusted.value, _NORMAL), show.significant, said.display
    shown, class_n = show.percent(value, display, 0), told(_NORMAL, 2, display)
    return Figure(
        f"{place}.curing.gained", "Strength by then", value, "–", shown, formula="exp(s × (1 − √(28 ÷ days)))",
        numbers=f"exp({class_n} × (1 − √(28 ÷ {told(adjusted.value, 8, display)}))) × 100",
        worked=f"{told(value * 100, 4, display)} %", constants=(Constant("s", class_n, sources.STRENGTH_GAIN),),
        uses=(adjusted.key,), says=f"{then} it has about {shown} of its strength at 28 days",
        notes=() if adjusted.value >= _SURE_DAYS else (
            "Strength before 3 days is rough: the formula is made for 3 days and more.",))
