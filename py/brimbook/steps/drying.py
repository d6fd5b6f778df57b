"""Dry enough to fill: the vessel's weight as it dries."""

from dataclasses import dataclass, field

from brimbook.cast import dryness
from brimbook.cast.dryness import Forecast
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.quantity.moments import HOUR, show_day
from brimbook.record.said import Said
from brimbook.steps.dry_figures import dry_at, dry_by, halving, lost_in_a_day, water_left
from brimbook.steps.dry_weighings import Weighed, is_dry


@dataclass
class Dryness:
    """How dry a vessel is: when it will be dry enough, or was [s since 2000], if that can be told, and the figures.

    dry says whether it is dry enough by its newest weighing; weighed holds the weighings that count, and forecast the
    curve through them; notes are what the maker should know.
    """

    dry_at: float | None
    figures: list[Figure] = field(default_factory=list)
    dry: bool = False
    weighed: Weighed | None = None
    forecast: Forecast | None = None
    notes: tuple[str, ...] = ()


def drying(said: Said, place: str) -> Dryness | None:
    """How dry the vessel is; nothing before anything is weighed [dryness].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    at = f"{place}.drying"
    rows, notes = _rows(said, at)
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
    return Dryness(weighed.first + when.value * HOUR if when else None, figures, dry, weighed, forecast,
                   (*notes, *wetted))


def _rows(said: Said, at: str) -> tuple[list[tuple[float, float]], tuple[str, ...]]:
    """The weighings that can be used, as moment and weight in the order of time, and what keeps others from it."""
    rows, undated, usual = [], False, None
    for row in range(said.count(f"{at}.weights")):
        path = f"{at}.weights.{row}"
        weight, moment = said.value(f"{path}.weight"), said.value(f"{path}.at")
        undated = undated or (weight is not None and not said.typed(f"{path}.at"))
        if weight is None or moment is None:
            continue
        usual = usual or weight
        if not usual / 2 < weight < usual * 2:
            said.fault(f"{path}.weight", f"The first weighing was {show.mass(usual, said.display)}; this one is less than half "
                       "or more than twice of that. Check the digits and the unit of both.")
            continue
        rows.append((moment, weight))
    notes = ("A weighing counts once its time is typed too.",) if undated else ()
    return sorted(rows, key=lambda each: each[0]), notes


def _weighed(said: Said, at: str, rows: list[tuple[float, float]]) -> tuple[Weighed | None, tuple[str, ...]]:
    """The weighings since the vessel was last wetted, with what they are held against."""
    margin, steady = said.value(f"{at}.margin"), said.value(f"{at}.steady")
    dry_weight = said.value(f"{at}.dry_weight")
    step = said.value(f"{at}.readability") if said.typed(f"{at}.readability") else said.display.readability
    if None in (margin, steady, step) or (dry_weight is None and said.typed(f"{at}.dry_weight")):
        return None, ()
    gain = max(_GAIN_STEPS * step, margin * rows[0][1] / 2)
    first = dryness.since_wetted([weight for _, weight in rows], gain)
    notes = (_wetted(said, rows, first),) if first else ()
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


def _wetted(said: Said, rows: list[tuple[float, float]], first: int) -> str:
    gained = show.small_mass(rows[first][1] - min(weight for _, weight in rows[:first]), said.display)
    return (f"It gained {gained} by {show_day(rows[first][0])}: was it wetted? Only the weighings from then on are counted.")


def _forecast(weighed: Weighed) -> Forecast | None:
    if weighed.times[-1] - weighed.times[0] < _SHORTEST_SPAN:
        return None
    return dryness.forecast(weighed.times, weighed.weights, weighed.dry_weight, weighed.spare / weighed.near_dry,
                            weighed.step)


# Two weighings closer than this say nothing of a wall that dries for days.
_SHORTEST_SPAN = 2 * HOUR
