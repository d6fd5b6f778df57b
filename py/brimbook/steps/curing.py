"""The clock: when to demold, how long to keep damp, when to seal, paint and fill."""

from dataclasses import dataclass, field, replace

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, HOUR, show_duration, show_moment
from brimbook.record.said import Said, localize
from brimbook.steps.aging import History, demolding, history, law_of, ripe_at
from brimbook.steps.damp import kept_damp
from brimbook.steps.drying import Dryness
from brimbook.steps.facts import fact
from brimbook.steps.limits import limits
from brimbook.steps.mold_heat import mix_of
from brimbook.steps.poured import poured_at
from brimbook.steps.strength import strengths
from brimbook.steps.weighing import practice_or_yours

# What is farther away is no plan [h].
_FARTHEST = 100 * 366 * DAY / HOUR
_NOT_DRY = "By its newest weighing it is not sure to be dry. Weigh it again: the dates from then on follow its weights."
_READY, _IF_DRY = "Ready to fill {}", "Fill {}, if its weight tells that it is dry"
_MEND = "Mend the entry that is marked."
_COATS = (("sealer", "sealed", "Sealer dry"), ("primer", "primed", "Primer dry"), ("paint", "painted", "Paint dry"))
_TO_DO = {
    "demold": "Loosen the mold all around before you lift the cast out.",
    "damp_until": "Unwrap it and let it dry slowly, out of the sun and away from drafts.",
    "dry": "Weigh it: when its weight rests, it is dry. Then seal it.",
    "sealed": "Follow the label of the sealer: it may ask for more time.",
    "primed": "Follow the label of the primer: it may ask for more time.",
    "painted": "Follow the label of the paint: it may ask for more time.",
    "fill": "Weigh it once more before any wax goes in.",
}


@dataclass(frozen=True)
class Event:
    """One step of the schedule: its name, what to call it, its moment [s since 2000], its ± [s], what to do then."""

    name: str
    label: str
    at: float
    plus_minus: float | None
    note: str


@dataclass
class Schedule:
    """The steps after the pour with their moments, and the figures behind them.

    There are events only when it is known when it was poured. waiting says what is
    missing while there is no schedule; notes are what the maker should know of it.
    """

    figures: list[Figure] = field(default_factory=list)
    events: tuple[Event, ...] = ()
    notes: tuple[str, ...] = ()
    waiting: str = ""


@dataclass
class _Chain:
    """The steps as they follow on each other, told from the pour on."""

    said: Said
    place: str
    poured: float | None
    hours: float = 0.0
    last: str = ""
    figures: list[Figure] = field(default_factory=list)
    events: list[Event] = field(default_factory=list)

    @property
    def over(self) -> bool:
        """Is the next step too far away to be a plan [yes or no]?"""
        return self.hours > _FARTHEST

    def put(self, hours: float) -> str:
        """Hours as they stand in a working [text].

        hours: any [h].
        """
        return show.significant(hours, 8, self.said.display)

    def when(self, hours: float) -> str:
        """A moment, or while the pour's is not known the time after it [text].

        hours: after the pour [h].
        """
        if self.poured is not None:
            return show_moment(self.poured + hours * HOUR)
        return f"{show_duration(hours * HOUR, self.said.display)} after the pour"

    def tell(self, figure: Figure, says: str) -> None:
        """Add a step whose figure is worked out, with its moment [nothing].

        figure: of the hours after the pour [figure].
        says: its sentence, with room for the moment [text].
        """
        self.hours, self.last = figure.value, figure.key
        if self.over:
            return
        shown = self.when(figure.value)
        self.figures.append(replace(figure, shown=shown, says=says.format(shown)))
        if self.poured is not None:
            name = figure.key.rpartition(".")[2]
            off = None if figure.plus_minus is None else figure.plus_minus * HOUR
            self.events.append(Event(name, figure.label, self.poured + figure.value * HOUR, off, _TO_DO[name]))

    def wait(self, name: str, label: str, says: str, hours: float, formula: str, numbers: str,
             constants: tuple[Constant, ...], notes: tuple[str, ...] = ()) -> None:
        """Add a step that comes so many hours after the one before [nothing].

        name: of its figure [text].
        label: what to call it [text].
        says: its sentence, with room for the moment [text].
        hours: after the step before [h].
        formula: how it goes on from the step before, in words [text].
        numbers: the same with the numbers put in [text].
        constants: what it takes from outside the record [constants].
        notes: what else the maker should know of it [texts].
        """
        value = self.hours + hours
        self.tell(Figure(
            f"{self.place}.curing.{name}", label, value, "h", "", formula=f"the step before{formula}",
            numbers=f"{self.put(self.hours)}{numbers}", worked=f"{show.significant(value, 7, self.said.display)} h",
            constants=constants, uses=(self.last,), notes=notes), says)


def curing(said: Said, place: str, dry: Dryness | None) -> Schedule:
    """The schedule of one cast [schedule].

    said: the record as understood [said].
    place: path of the cast [text].
    dry: how dry the vessel is, where that is known [dryness].
    """
    powder, poured = f"{mix_of(said, place)}.powder", poured_at(said, place)
    needed, reference = fact(said, powder, "demold_time"), fact(said, powder, "reference_temperature")
    past = history(said, place, poured)
    if None in (needed, reference):
        return Schedule(waiting="Type its time to demold.")
    law = law_of(said, place, powder, reference.value)
    if None in (past, law) or (poured is None and said.typed(f"{place}.curing.poured_at")):
        return Schedule(waiting=_MEND)
    constants = (Constant(f"Time to demold at {show.temperature(reference.value, said.display)}",
                          localize(needed.text, said.display), needed.source),)
    hours = needed.value / HOUR
    figures = [*ripe_at(said, place, law, hours, reference.value),
               *demolding(said, place, law, past, hours, constants, reference.value)]
    notes = _notes(said, place, powder, law.follows, past, poured)
    if not figures or figures[-1].key != f"{place}.curing.demold" or figures[-1].value > _FARTHEST:
        return Schedule(notes=notes, waiting="Too cold to set: warm it up.")
    chain = _Chain(said, place, poured, figures=figures[:-1])
    chain.tell(figures[-1], "Demold {}")
    # Weights from before the pour are another piece's.
    dry = None if dry is not None and None not in (dry.newest, poured) and dry.weighed.first < poured else dry
    _after_demolding(chain, powder, law.follows, past, dry)
    if chain.events and chain.events[-1].name != "fill":
        wet = _outlasts_its_plan(chain, dry)
        return Schedule(chain.figures, tuple(chain.events), (*notes, _NOT_DRY) if wet else notes,
                        "Not dry yet: weigh it again." if wet else _MEND)
    return Schedule(chain.figures, tuple(chain.events), notes)


def _after_demolding(chain: _Chain, powder: str, follows: str, past: History, dry: Dryness | None) -> None:
    said, at = chain.said, f"{chain.place}.curing"
    damp = kept_damp(said, chain.place)
    if damp is None:
        return
    if damp.value > 0:
        hours = damp.value / HOUR
        chain.wait("damp_until", "Stop keeping damp", "Keep it damp until {}", hours, " + time kept damp",
                   f" + {chain.put(hours)}", (Constant("Keep damp for", localize(damp.text, said.display), damp.source),))
    if follows == "portland" and not chain.over:
        chain.figures += strengths(said, chain.place, past, damp.value / DAY, chain.hours)
    if not _dry(chain, dry):
        return
    coats = _coats(chain)
    waits = said.value(f"{at}.before_filling")
    if chain.over or waits is None or coats is None:
        return
    shown = show_duration(waits, said.display)
    chain.wait("fill", "Fill", _READY if dry is not None and dry.dry else _IF_DRY, waits / HOUR if coats else 0.0,
               " + wait after the last coat" if coats else ", as there are no coats",
               f" + {chain.put(waits / HOUR)}" if coats else "",
               (practice_or_yours(said, f"{at}.before_filling", "From the last coat to the wax", shown),) if coats else ())


def _outlasts_its_plan(chain: _Chain, dry: Dryness | None) -> bool:
    """Was it weighed after it should have been dry, and is still not known to be dry, or when it will be?"""
    days = chain.said.value(f"{chain.place}.curing.dry")
    if None in (dry, chain.poured, days) or dry.newest is None or dry.dry_at is not None:
        return False
    return chain.poured + (chain.hours + days / HOUR) * HOUR <= dry.newest


def _dry(chain: _Chain, dry: Dryness | None) -> bool:
    """Add when it is dry: by its weights where they tell, else after the usual days. Can there be a step after it?"""
    if dry is not None and dry.dry_at is not None and chain.poured is not None:
        left = max(0.0, (dry.dry_at - chain.poured) / HOUR - chain.hours)
        label, says = ("Likely dry, by its weights", "Likely dry {}, by its weights") if dry.between else (
            "Dry, by its weights", "Dry by its weights {}")
        chain.wait("dry", label, says, left,
                   " + hours until its weight rests" if left else ": by its weights it is dry already",
                   f" + {chain.put(left)}" if left else "",
                   (Constant("When its weight rests", show_moment(dry.dry_at), sources.YOURS),),
                   (f"It is likely dry {dry.between}, 90 % sure: the dates after that move with it.",) if dry.between else ())
        return True
    path = f"{chain.place}.curing.dry"
    days = chain.said.value(path)
    if days is None or chain.over or _outlasts_its_plan(chain, dry):
        return False
    shown = show_duration(days, chain.said.display)
    source = "common practice" if chain.said.is_usual(path) else "a plan"
    guess = (f"{shown if days else 'No time'} of drying is {source}, not a measurement: weigh it as it dries, and the date "
             "follows its weights.",)
    chain.wait("dry", "Dry, as planned", "Let it dry until {}", days / HOUR, " + time to dry",
               f" + {chain.put(days / HOUR)}", (practice_or_yours(chain.said, path, "Time to dry", shown),), guess)
    return True


def _coats(chain: _Chain) -> bool | None:
    """Add the coats that are planned, each kind after the one before. Are there any? Nothing where an entry is faulty."""
    found = False
    for name, done, label in _COATS:
        path = f"{chain.place}.finishing.{name}"
        coats, each = chain.said.value(f"{path}_coats"), chain.said.value(f"{path}_hours")
        if coats is None or (coats and each is None):
            return None
        if not coats or chain.over:
            continue
        found = True
        shown = f"{show.significant(coats, 3, chain.said.display)} × {show_duration(each, chain.said.display)}"
        source = practice_or_yours(chain.said, f"{path}_hours", f"Coats of {name}, and the time each dries", shown)
        chain.wait(done, label, f"{label} {{}}", coats * each / HOUR, " + coats × time each dries",
                   f" + {chain.put(coats)} × {chain.put(each / HOUR)}", (source,))
    return found


def _notes(said: Said, place: str, powder: str, follows: str, past: History, poured: float | None) -> tuple[str, ...]:
    notes = []
    if said.text(f"{powder}.kind") != "gypsum":
        notes += limits(said, past.seen)
    if follows != "portland" and len({*past.seen, fact(said, powder, "reference_temperature").value}) > 1:
        notes.append("Maturity laws hold for Portland cement only. Your own time is corrected by a rough rule here, hence the "
                     "wide ±: look at the piece, not only at the clock.")
    if len(past.spans) > 0:
        notes.append("Between two readings a straight line is taken; the last one lasts until you log another.")
    elif poured is None and said.count(f"{place}.curing.temperatures"):
        notes.append("Type when it was poured: then the temperatures that you logged count.")
    return tuple(notes)
