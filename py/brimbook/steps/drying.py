"""Dry enough to fill: the vessel's weight as it dries."""

from dataclasses import dataclass, field

from brimbook.cast import dryness
from brimbook.cast.dryness import Forecast
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, HOUR, show_day
from brimbook.record.said import Said
from brimbook.steps.damp import wrapped
from brimbook.steps.dry_figures import dry_at, dry_by, halving, lost_in_a_day, water_left
from brimbook.steps.dry_weighings import Weighed, is_dry


@dataclass
class Dryness:
    """How dry a vessel is: when it will be dry enough, or was [s since 2000], if that can be told, and the figures.

    dry says whether it is dry enough by its newest weighing; weighed holds the weighings that count, and forecast the
    curve through them; notes are what the maker should know. A curve that should be dry by now, of a vessel that is
    not, tells no moment.
    """

    dry_at: float | None
    figures: list[Figure] = field(default_factory=list)
    dry: bool = False
    weighed: Weighed | None = None
    forecast: Forecast | None = None
    notes: tuple[str, ...] = ()

    @property
    def newest(self) -> float | None:
        """Moment of the newest weighing that counts [s since 2000]."""
        return None if self.weighed is None else self.weighed.first + self.weighed.times[-1]

    @property
    def between(self) -> str:
        """The days between which it will be dry, where that is a forecast [text]."""
        if self.dry or self.dry_at is None or self.forecast is None:
            return ""
        early, late = (show_day(self.weighed.first + each) for each in (self.forecast.earliest, self.forecast.latest))
        return f"on {early}" if early == late else f"between {early} and {late}"


def drying(said: Said, place: str) -> Dryness | None:
    """How dry the vessel is; nothing before anything is weighed [dryness].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    at = f"{place}.drying"
    rows, notes = _unwrapped(said, place, *_rows(said, place, at))
    weighed, wetted = _weighed(said, at, rows) if rows else (None, ())
    if weighed is None:
        return Dryness(None, notes=notes) if notes else None
    forecast = _forecast(weighed)
    dry = is_dry(weighed, forecast)
    figures = [*water_left(weighed, forecast), *lost_in_a_day(weighed)]
    if dry:
        when = dry_by(weighed, forecast)
    else:
        figures += halving(weighed, forecast) if forecast else []
        when = dry_at(weighed, forecast) if forecast else None
    figures += [when] if when else []
    told = when is not None and (dry or when.value * HOUR > weighed.times[-1])
    return Dryness(weighed.first + when.value * HOUR if told else None, figures, dry, weighed, forecast,
                   (*notes, *wetted, *_coarse(weighed)))


def _rows(said: Said, place: str, at: str) -> tuple[list[tuple[float, float]], tuple[str, ...]]:
    """The weighings that can be used, as moment and weight in the order of time, and what keeps others from it."""
    rows, at_once, undated, usual, begins = [], {}, False, None, said.value(f"{place}.curing.poured_at")
    for row in range(said.count(f"{at}.weights")):
        path = f"{at}.weights.{row}"
        weight, moment = said.value(f"{path}.weight"), said.value(f"{path}.at")
        undated = undated or (weight is not None and not said.typed(f"{path}.at"))
        if weight is None or moment is None or _misdated(said, f"{path}.at", moment, begins, rows):
            continue
        usual = usual or weight
        if not usual / 2 < weight < usual * 2:
            said.fault(f"{path}.weight", f"The first weighing was {show.mass(usual, said.display)}; this one is less than half "
                       "or more than twice of that. Check the digits and the unit of both.")
            continue
        other = at_once.setdefault(moment, weight)
        if abs(weight - other) > _SAME * other:
            said.fault(f"{path}.at", f"At this moment it weighed {show.mass(other, said.display)} too. Check the time of both.")
            continue
        rows.append((moment, weight))
    notes = ("A weighing counts once its time is typed too.",) if undated else ()
    return sorted(rows, key=lambda each: each[0]), notes


def _misdated(said: Said, path: str, moment: float, poured: float | None, rows: list[tuple[float, float]]) -> bool:
    """Is a weighing before the pour, or a year and more away from where it should be? That is told beside its moment."""
    if poured is not None and moment < poured:
        said.fault(path, "This is before the pour. Type a moment after it, or mend the pour's.")
        return True
    begins, what = (poured, "the pour") if poured is not None else (rows[0][0] if rows else moment, "the first weighing")
    if abs(moment - begins) <= _LONGEST_WAIT:
        return False
    said.fault(path, f"This is more than a year away from {what}. Check the year.")
    return True


def _unwrapped(said: Said, place: str, rows: list[tuple[float, float]], notes: tuple[str, ...]) -> tuple[
        list[tuple[float, float]], tuple[str, ...]]:
    """Without the weighings of the days in which it is kept damp and rests wet, but for the last one: so it begins to dry."""
    span = wrapped(said, place)
    inside = [] if span is None or not rows or rows[0][0] < span[0] else [row for row in rows if row[0] < span[1]]
    if len(inside) < 2:
        return rows, notes
    return rows[len(inside) - 1:], (*notes, f"Kept damp until about {show_day(span[1])}, its weight rests without being dry: of "
                                    "the weighings till then only the last counts. If it dries at once, keep it damp for 0 days.")


# Two weighings at one moment agree within so much.
_SAME = 0.01
# A vessel that stood for longer has seen more weather than one curve tells.
_LONGEST_WAIT = 366 * DAY


def _coarse(weighed: Weighed) -> tuple[str, ...]:
    """A scale that shows less than the margin asks for."""
    display, near = weighed.said.display, weighed.near_dry
    if weighed.step <= weighed.margin * near:
        return ()
    share = f"One step of this scale is {show.percent(weighed.step / near, display)} of the vessel's weight"
    if weighed.is_coarse:
        return (f"{share}: that can't tell dry from damp. Weigh it on a finer scale.",)
    return (f"{share}, more than the {show.percent(weighed.margin, display, 2)} that may be left: a finer scale tells more surely.",)


def _weighed(said: Said, at: str, rows: list[tuple[float, float]]) -> tuple[Weighed | None, tuple[str, ...]]:
    """The weighings since the vessel was last wetted, with what they are held against."""
    margin, steady = said.value(f"{at}.margin"), said.value(f"{at}.steady")
    dry_weight = said.value(f"{at}.dry_weight")
    step = said.value(f"{at}.readability") if said.typed(f"{at}.readability") else said.display.readability
    if None in (margin, steady, step) or (dry_weight is None and said.typed(f"{at}.dry_weight")):
        return None, ()
    gain = max(_GAIN_STEPS * step, margin * rows[0][1] / 2)
    first = dryness.since_wetted([weight for _, weight in rows], gain)
    notes = (_wetted(said, rows, first, dry_weight),) if first else ()
    counted = rows[first:]
    lightest = min(weight for _, weight in counted)
    if dry_weight is not None and lightest < dry_weight - gain:
        less = show.small_mass(dry_weight - lightest, said.display)
        said.fault(f"{at}.dry_weight", f"It weighed {show.mass(lightest, said.display)} since, {less} less than this. Weigh it "
                   "again, or leave the dry weight empty.")
        dry_weight = None
    start = counted[0][0]
    return Weighed(said, at, start, tuple(moment - start for moment, _ in counted),
                   tuple(weight for _, weight in counted), dry_weight, margin, steady, step), notes


# A weighing is heavier than the lightest before by this many steps of the scale only if water came in.
_GAIN_STEPS = 3


def _wetted(said: Said, rows: list[tuple[float, float]], first: int, dry_weight: float | None) -> str:
    gained = show.small_mass(rows[first][1] - min(weight for _, weight in rows[:first]), said.display)
    stale = "" if dry_weight is None else " If it was coated, its dry weight holds no more: leave that empty."
    return (f"It gained {gained} by {show_day(rows[first][0])}: was it wetted, or coated? Only the weighings from then on are "
            f"counted.{stale}")


def _forecast(weighed: Weighed) -> Forecast | None:
    if weighed.is_coarse or weighed.times[-1] - weighed.times[0] < _SHORTEST_SPAN:
        return None
    return dryness.forecast(weighed.times, weighed.weights, weighed.dry_weight, weighed.spare / weighed.near_dry,
                            weighed.step)


# Two weighings closer than this say nothing of a wall that dries for days.
_SHORTEST_SPAN = 2 * HOUR
