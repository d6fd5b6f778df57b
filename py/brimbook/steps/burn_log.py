"""The log of a burn test: which cycles count, which one burns now, and what can't be."""

from dataclasses import dataclass

from brimbook.candle.burning import Cycle
from brimbook.quantity import show
from brimbook.quantity.moments import HOUR
from brimbook.record.said import Said

# So many of the newest cycles are worked out.
MOST_CYCLES = 100
_LONGEST = 72.0
# No vessel candle burns faster; a digit too many does [g/h].
_FASTEST = 150.0
# Heavier than when it was put out by this many steps of the scale, something was added.
_GAIN_STEPS = 3
# A cycle without any of these says nothing.
_TELLING = ("lit_at", "out_at", "minutes", "before", "after", "pool", "reached", "flame", "soot", "wick_looks", "wall", "after_smoke")


@dataclass(frozen=True)
class Burned:
    """One cycle of the log by its number: lit and put out [s since 2000], for so long [h], weights [g], its pool [mm].

    cycle is there where hours and both weights are known; after_last is the time since the one before was put out [h].
    """

    number: int
    path: str
    lit: float | None
    out: float | None
    hours: float | None
    before: float | None
    after: float | None
    cycle: Cycle | None
    pool: float | None
    reached: str
    after_last: float | None

    @property
    def burns(self) -> bool:
        """Is it lit and not put out [yes or no]?"""
        return self.lit is not None and self.out is None and self.hours is None and self.after is None


def cycles_of(said: Said, at: str) -> list[Burned]:
    """The newest cycles, in the order they were logged, without those that say nothing [cycles].

    said: the record as understood [said].
    at: path of the burn test [text].
    """
    count, found = said.count(f"{at}.cycles"), []
    for row in range(max(count - MOST_CYCLES, 0), count):
        if any(said.typed(f"{at}.cycles.{row}.{name}") for name in _TELLING):
            found.append(_cycle(said, at, row, found[-1] if found else None))
    return found


def step_of(said: Said, at: str) -> float | None:
    """The step of the scale; none where it is faulty [g].

    said: the record as understood [said].
    at: path of the burn test [text].
    """
    return said.value(f"{at}.readability") if said.typed(f"{at}.readability") else said.display.readability


def _cycle(said: Said, at: str, row: int, last: Burned | None) -> Burned:
    path = f"{at}.cycles.{row}"
    lit, out = said.value(f"{path}.lit_at"), said.value(f"{path}.out_at")
    if last is not None and None not in (lit, last.out) and lit < last.out:
        said.fault(f"{path}.lit_at", f"Cycle {last.number} was still burning then. Check the day and the time of both.")
        lit = None
    if None not in (lit, out) and not 0 < out - lit <= _LONGEST * HOUR:
        said.fault(f"{path}.out_at", "It is put out after it was lit, at most 72 hours later. Check the day and the time of both.")
        out = None
    hours = _hours(said, path, lit, out)
    if out is None and lit is not None and hours is not None:
        out = lit + hours * HOUR
    typed = said.typed(f"{path}.before")
    after = said.value(f"{path}.after")
    before = said.value(f"{path}.before") if typed or last is None else last.after
    if typed and before is not None and last is not None and last.after is not None:
        _check_gain(said, at, path, before, last.after)
    cycle = _counted(said, path, before, after, hours, not typed and last is not None and last.cycle is not None)
    gap = (lit - last.out) / HOUR if last is not None and None not in (lit, last.out) else None
    return Burned(row + 1, path, lit, out, hours, before, after, cycle, said.value(f"{path}.pool"),
                  said.value(f"{path}.reached") or "unseen", gap)


def _hours(said: Said, path: str, lit: float | None, out: float | None) -> float | None:
    """As typed, else from lighting to putting out."""
    if said.typed(f"{path}.minutes"):
        seconds = said.value(f"{path}.minutes")
        return None if seconds is None else seconds / HOUR
    return None if None in (lit, out) else (out - lit) / HOUR


def _check_gain(said: Said, at: str, path: str, before: float, last: float) -> None:
    if before > last + _GAIN_STEPS * (step_of(said, at) or 0):
        said.fault(f"{path}.before", f"It weighed {show.mass(last, said.display)} when it was last put out, and can't weigh more now. "
                   "Check both; if wax was added, start the test anew.")


def _counted(said: Said, path: str, before: float | None, after: float | None, hours: float | None, shared: bool) -> Cycle | None:
    """The cycle where it can be counted; a fault stands beside the weight where it can't be."""
    if None in (before, after) or said.fault_at(f"{path}.before"):
        return None
    if after >= before:
        said.fault(f"{path}.after", f"It weighed {show.mass(before, said.display)} before, and must weigh less after it burned. "
                   "Check both.")
        return None
    if hours is None:
        return None
    if (before - after) / hours > _FASTEST:
        said.fault(f"{path}.after", f"That would be more than {show.small_mass(_FASTEST, said.display)} in an hour. Check the weights "
                   "and the time.")
        return None
    return Cycle(before - after, hours, shared)
