"""The batches of a vessel: their lots, how many came out, how many are left, and how many fail."""

import datetime
import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import show_date
from brimbook.record.lots import lots_of
from brimbook.record.said import Said
from brimbook.sell import failing_share
from brimbook.sources import Source

# So many batches are worked out, the newest of the record; those before them are kept.
MOST_BATCHES = 200
# Below this many vessels a share that failed says next to nothing.
FEWEST_TO_TELL = 5
WILSON = Source("Interval of E. B. Wilson (1927), as in the NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1; agrees with scipy",
                "reference library")


@dataclass(frozen=True)
class Batch:
    """One batch: its lot, as typed or made from its date, and the vessels that came out and are still there [count].

    place: in the record [text].
    """

    place: str
    lot: str
    made_on: str
    made: float | None
    left: float | None
    figures: tuple[Figure, ...] = ()


def batches_of(said: Said) -> tuple[Batch, ...]:
    """The batches of a vessel by their days, the newest last, with what all of them tell on the last one [batches].

    said: the record as understood [said].

    A batch without a day is as old as the one that was noted before it.
    """
    places = [f"batches.{row}" for row in range(said.count("batches"))]
    # Lots of a day are numbered among all of them, those that are no longer worked out too.
    lots = lots_of(said.text("name"), [(said.text(f"{place}.lot"), said.text(f"{place}.made_on")) for place in places])
    made = _by_day([_batch(said, place, lot) for place, lot in [*zip(places, lots)][-MOST_BATCHES:]])
    if not made:
        return ()
    together = (*_all_left(said, made), *_failing(said, made))
    return (*made[:-1], replace(made[-1], figures=(*made[-1].figures, *together)))


def _by_day(made: list[Batch]) -> list[Batch]:
    days, day = {}, ""
    for batch in made:
        days[batch.place] = day = batch.made_on or day
    return sorted(made, key=lambda batch: days[batch.place])


def _batch(said: Said, place: str, lot: str) -> Batch:
    made_on = said.value(f"{place}.made_on") or ""
    vessels, failed = said.value(f"{place}.vessels"), said.value(f"{place}.failed")
    if vessels is None or failed is None:
        return Batch(place, lot, made_on, None, None)
    if failed > vessels:
        said.fault(f"{place}.failed", f"More failed than were made: at most {vessels:.0f}. Type how many of the {vessels:.0f} failed.")
        return Batch(place, lot, made_on, None, None)
    out = _figure(said, f"{place}.made", "Came out", vessels - failed, "vessels made − failed", f"{vessels:.0f} − {failed:.0f}")
    gone = _gone(said, place, made_on, out.value)
    if gone is None:
        return Batch(place, lot, made_on, out.value, None, (out,))
    passed = math.fsum(gone)
    numbers = " − ".join(f"{each:.0f}" for each in (out.value, *gone))
    left = _figure(said, f"{place}.left", "Still here", out.value - passed, "came out − passed on", numbers, uses=(out.key,))
    return Batch(place, lot, made_on, out.value, left.value, (out, left))


def _gone(said: Said, place: str, made_on: str, out: float) -> list[float] | None:
    """How many each got; nothing where one of them is faulty, or where they got more than there were."""
    gone, passed = [], 0.0
    for row in range(said.count(f"{place}.went_to")):
        given = f"{place}.went_to.{row}"
        _check_day(said, f"{given}.on", made_on)
        vessels = said.value(f"{given}.vessels")
        if vessels is None and said.typed(f"{given}.vessels"):
            return None
        gone.append(vessels or 0.0)
        passed += gone[-1]
        if passed > out:
            said.fault(f"{given}.vessels", f"More went out than came out of this batch: {passed:.0f} of {out:.0f}. Check how many each got.")
            return None
    return gone


def _check_day(said: Said, path: str, made_on: str) -> None:
    day = said.value(path)
    if day and made_on and day < made_on:
        said.fault(path, f"This is before the batch was made, on {show_date(datetime.date.fromisoformat(made_on))}. Check both dates.")


def _figure(said: Said, key: str, label: str, value: float, formula: str, numbers: str, uses: tuple[str, ...] = ()) -> Figure:
    shown = vessels_told(value)
    return Figure(key, label, value, "vessels", shown, formula=formula, numbers=numbers, worked=shown, uses=uses)


def vessels_told(count: float) -> str:
    """A number of vessels in words [text].

    count: how many [count].

    >>> vessels_told(1), vessels_told(12)
    ('1 vessel', '12 vessels')
    """
    return "1 vessel" if count == 1 else f"{count:.0f} vessels"


def _all_left(said: Said, batches: list[Batch]) -> list[Figure]:
    """What is still here of all batches, where there are several."""
    known = [batch for batch in batches if batch.left is not None]
    if len(known) < 2:
        return []
    value = math.fsum(batch.left for batch in known)
    return [_figure(said, f"{batches[-1].place}.all_left", "Still here of all", value, "still here, of each batch",
                    _sum(batch.left for batch in known), uses=tuple(f"{batch.place}.left" for batch in known))]


def _failing(said: Said, batches: list[Batch]) -> list[Figure]:
    """How many of all failed so far, and what share may fail in the long run."""
    counted = [(said.value(f"{batch.place}.vessels"), said.value(f"{batch.place}.failed")) for batch in batches
               if not said.fault_at(f"{batch.place}.failed")]
    known = [(vessels, failed) for vessels, failed in counted if vessels is not None and failed is not None]
    made, failed = (math.fsum(each[part] for each in known) for part in (0, 1))
    if made < FEWEST_TO_TELL:
        return []
    place = batches[-1].place
    return [_failed(said, place, known, made, failed), *_long_run(said, place, made, failed)]


def _failed(said: Said, place: str, known: list[tuple[float, float]], made: float, failed: float) -> Figure:
    share, told = failed / made, show.significant(100 * failed / made, 5, said.display)
    least, most = (show.percent(end(failed, made), said.display) for end in (failing_share.least_failing, failing_share.most_failing))
    return Figure(
        f"{place}.failing", "Failed so far", share, "–", show.percent(share, said.display), formula="failed ÷ made, of all batches",
        numbers=f"({_sum(each for _, each in known)}) ÷ ({_sum(each for each, _ in known)}) × 100", worked=f"{told} %",
        says=f"{failed:.0f} of {made:.0f} failed so far: {show.percent(share, said.display)}; in the long run between {least} and {most}")


def _sum(numbers: Iterable[float]) -> str:
    return " + ".join(f"{each:.0f}" for each in numbers)


def _long_run(said: Said, place: str, made: float, failed: float) -> list[Figure]:
    """The ends of the range that holds the share in the long run 95 times in 100."""
    told, share = show.significant, failed / made
    z, p = told(failing_share.WITHIN_95, 10, said.display), told(share, 10, said.display)
    middle, root = f"{p} + {z}² ÷ (2 × {made:.0f})", f"{z} × √({p} × (1 − {p}) ÷ {made:.0f} + {z}² ÷ (4 × {made:.0f}²))"
    # At the very ends the formula comes to 0 and 1 but for a hair.
    ends = [("least", "−", failing_share.least_failing(failed, made))] if failed else []
    ends += [("most", "+", failing_share.most_failing(failed, made))] if failed < made else []
    return [Figure(
        f"{place}.failing_{name}", f"Fail in the long run, at {name}", value, "–", show.percent(value, said.display),
        formula=f"(p + z² ÷ 2n {sign} z × √(p (1 − p) ÷ n + z² ÷ 4n²)) ÷ (1 + z² ÷ n), with p failed of n",
        numbers=f"({middle} {sign} {root}) ÷ (1 + {z}² ÷ {made:.0f}) × 100", worked=f"{told(100 * value, 5, said.display)} %",
        constants=(Constant("z, for 95 of 100", told(failing_share.WITHIN_95, 4, said.display), WILSON),),
        uses=(f"{place}.failing",)) for name, sign, value in ends]
