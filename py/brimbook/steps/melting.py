"""Melting: temperature windows, stirring, and when the pot will have cooled to where it is poured."""

from collections.abc import Callable
from dataclasses import dataclass

from brimbook import sources
from brimbook.candle.cooling import LEAST_ABOVE
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, MINUTE, show_day, show_duration
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.pot import Potful
from brimbook.steps.pot_cooling import Pace, comes_to, fragrance_cools, pace_figures, pace_of, show_clock
from brimbook.steps.temperatures import (
    melt_at, melts, pour_at, rest, rested_at, rest_stands_in, scent_at, second_at, temperature_constant, window)
from brimbook.steps.thermometer import Log, log_of

_BATH = 100.0
_NAMES = (("melt_at", "Heat to"), ("scent_at", "Fragrance at"), ("pour_at", "Pours at"))
# What skin bears, as NIST is quoted [°C].
_PAIN, _FIRST, _SECOND = 44.0, 48.0, 55.0
_AGAIN = "Log the thermometer again once it has fallen by 5 °C (9 °F): two readings tell how fast it cools."
_LATER = "So far the readings don't tell how fast it cools. Log it again in a few minutes."


@dataclass(frozen=True)
class Due:
    """Something to do at a moment [s]."""

    label: str
    at: float


@dataclass(frozen=True)
class Melt:
    """The melting of a pot: its figures, and what is due when, where the maker logged the thermometer.

    bench is the order of the work in short sentences, notes what else the maker should know. log and pace are there where
    the thermometer was read.
    """

    figures: tuple[Figure, ...]
    due: tuple[Due, ...] = ()
    bench: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    log: Log | None = None
    pace: Pace | None = None


def melting(said: Said, place: str, blend: Blend | None, potful: Potful | None) -> Melt:
    """The melting of a pot [melt].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    potful: all that is melted [potful].
    """
    at, room = f"{place}.melting", said.value(f"{place}.melting.room")
    load = (blend.load if blend is not None else said.value(f"{place}.fragrance.load")) or 0.0
    figures, notes, due = _temperatures(said, place, load), _notes(said, place, load), []
    log = pace = None
    poured, range_ = said.value(f"{at}.poured"), melts(said, place)
    if room is not None:
        log = log_of(said, place, room, scent_at(said, place) if load else None, range_[0] if range_ else None)
    if log is not None:
        notes += log.notes
        pace = pace_of(said, at, log, room)
        # A reading of the minute in which it was poured is of the first pour.
        again = poured is not None and log.newest > poured
        if poured is None or again:
            told, due = _forecast(said, place, pace, load, again) if pace is not None else ([], [])
            figures += told
            notes += _not_yet(said, place, log, pace, told)
    ready = _rested(said, place)
    if ready is not None:
        figures.append(ready)
        due.append(Due("Burn test from", rested_at(said, place)))
    return Melt(tuple(figures), tuple(due), _bench(said, place, load, blend), tuple(notes), log, pace)


def _temperatures(said: Said, place: str, load: float) -> list[Figure]:
    """The temperatures themselves, each with what is common for the wax."""
    figures, known = [], melts(said, place)
    for name, label in _NAMES:
        constant = temperature_constant(said, place, name, label)
        if constant is None or (name == "scent_at" and not load):
            continue
        value = {"melt_at": melt_at, "scent_at": scent_at, "pour_at": pour_at}[name](said, place)
        melting_range = [Constant("Melts at", _range(said, known), known[2])] if known and name == "pour_at" else []
        exact = f"{show.significant(value, 8, said.display)}"
        figures.append(Figure(
            f"{place}.melting.{name}", label, value, "°C", show.temperature(value, said.display),
            "as you typed it" if said.typed(f"{place}.melting.{name}") else "usual for this wax", exact, f"{label} {show.temperature(value, said.display)}", f"{exact} °C",
            constants=(constant, *melting_range),
            spread=f"Common for this wax: {window(said, place, name).shown(said.display)}. Its sheet decides."))
    return figures


def _range(said: Said, known: tuple) -> str:
    low, high = (show.temperature(celsius, said.display) for celsius in known[:2])
    return low if low == high else f"{low} to {high}"


def _forecast(said: Said, place: str, pace: Pace, load: float, again: bool) -> tuple[list[Figure], list[Due]]:
    """When the pot comes to its temperatures; after the vessel was poured, to that of the second pour."""
    figures, due, newest = pace_figures(pace), [], pace.log.newest
    if again:
        second = _comes(said, place, pace, "second", "Second pour", "second_at", second_at(said, place))
        if second is not None:
            figures.append(second)
            due = _due(second, newest)
        return figures, due
    scented, stir = scent_at(said, place), said.value(f"{place}.melting.stir")
    ahead = load > 0 and scented is not None and pace.log.read >= scented
    scent = _comes(said, place, pace, "scent", "Fragrance in", "scent_at", scented) if ahead else None
    pour = _comes(said, place, pace, "pour", "Pour time", "pour_at", pour_at(said, place), load if ahead else 0.0)
    if scent is not None:
        figures.append(scent)
        due += _due(scent, newest)
        if stir:
            due.append(Due("Stir until", newest + max(scent.value, 0.0) * MINUTE + stir))
    if pour is not None:
        figures.append(pour if scent is None or stir is None else _after_stirring(said, pour, scent, stir, newest))
        due += _due(figures[-1], newest, "Pour")
    return figures, due


def _comes(said: Said, place: str, pace: Pace, name: str, label: str, leaf: str, celsius: float | None,
           load: float = 0.0) -> Figure | None:
    constant = temperature_constant(said, place, leaf, "To come to")
    return None if None in (celsius, constant) else comes_to(pace, name, label, celsius, load, constant)


def _after_stirring(said: Said, pour: Figure, scent: Figure, stir: float, newest: float) -> Figure:
    """The pour, no sooner than the fragrance is stirred in."""
    least = scent.value + stir / MINUTE
    if pour.value >= least:
        return pour
    put = [show.significant(value, 8, said.display) for value in (scent.value, stir / MINUTE)]
    clock = show_clock(newest + least * MINUTE)
    return Figure(pour.key, pour.label, least, "min", clock, "time to the fragrance + stirring", f"{put[0]} + {put[1]}",
                  f"Pour at {clock}, once the fragrance is stirred in", f"{show.significant(least, 4, said.display)} min",
                  scent.plus_minus, scent.plus_minus_shown, pour.constants, (scent.key,), scent.spread)


def _due(figure: Figure, newest: float, label: str = "") -> list[Due]:
    return [Due(label or figure.label, newest + figure.value * MINUTE)] if figure.value >= 0 else []


def _not_yet(said: Said, place: str, log: Log, pace: Pace | None, told: list[Figure]) -> list[str]:
    """Why there is no moment to pour at, or that it is over."""
    if pace is None:
        return [_AGAIN if sum(map(len, log.runs)) == 1 else _LATER]
    pours = pour_at(said, place)
    if pours is not None and pours - pace.cooling.room < LEAST_ABOVE:
        return ["The room is as warm as where you pour: look at the two temperatures."]
    over = {figure.key.rpartition(".")[2]: figure.value < 0 for figure in told}
    if over.get("pour") or over.get("second"):
        return ["It has cooled past where it is poured: warm it up again in the water bath."]
    return [] if "pour" in over or "second" in over else [_LATER]


def _rested(said: Said, place: str) -> Figure | None:
    at, ready, rests = f"{place}.melting", rested_at(said, place), rest(said, place)
    if ready is None:
        return None
    days = rests / DAY
    source = sources.YOURS if said.typed(f"{at}.rest") and said.text(f"{at}.rest") != rest_stands_in(said, place) else sources.RESTING
    exact = show.significant(days, 8, said.display)
    return Figure(f"{at}.rested", "Burn test from", days, "d", show_day(ready), "moment of the pour + rest", exact,
                  f"It has rested for its burn test on {show_day(ready)}", f"{exact} d",
                  constants=(Constant("Rest", show_duration(rests, said.display), source),))


def _bench(said: Said, place: str, load: float, blend: Blend | None) -> tuple[str, ...]:
    """The order of the work, as far as its temperatures are known."""
    at, steps = f"{place}.melting", []
    hot, scented, pours = (each(said, place) for each in (melt_at, scent_at, pour_at))
    warm = said.value(f"{at}.vessel_at")
    stir, room = said.value(f"{at}.stir"), said.value(f"{at}.room")
    if hot is not None:
        steps.append(f"In the water bath to {show.temperature(hot, said.display)}, then off the heat.")
    if load and None not in (scented, stir):
        steps.append(f"At {show.temperature(scented, said.display)} the fragrance, then stir slowly for "
                     f"{show_duration(stir, said.display)}.")
        if room is not None and room < scented:
            steps.append(fragrance_cools(said, scented, room, load))
    if pours is not None:
        before = f"Warm the vessel to {show.temperature(warm, said.display)}. " if warm is not None else ""
        steps.append(f"{before}Pour at {show.temperature(pours, said.display)}, slowly.")
    return (*steps, *_again(said, place, blend))


def _again(said: Said, place: str, blend: Blend | None) -> tuple[str, ...]:
    """The second pour: of wax that is kept back where the line is for set wax, of wax besides where the maker tops it up."""
    kept = blend is not None and blend.basis == "set" and bool(blend.lost)
    second = second_at(said, place) if kept or said.typed(f"{place}.melting.second_at") else None
    if second is None:
        return ()
    shown = show.temperature(second, said.display)
    return (f"Once that has set, heat what you kept back to {shown} for the second pour." if kept else
            f"Once that has set, heat the wax for a top-up to {shown}.",)


def _notes(said: Said, place: str, load: float) -> list[str]:
    """What is odd about the temperatures, and what they do to skin."""
    hot, scented, pours = (each(said, place) for each in (melt_at, scent_at, pour_at))
    shown, notes, known = (lambda celsius: show.temperature(celsius, said.display)), [], melts(said, place)
    if hot is not None and hot >= _BATH:
        notes.append(f"A water bath can't reach {shown(hot)}: at {shown(_BATH)} its water boils. Type what your wax needs.")
    if hot is not None and known is not None and hot < known[1]:
        notes.append(f"At {shown(hot)} it may not melt all through: it melts at up to {shown(known[1])}.")
    if not load:
        scented = None
    if None not in (hot, pours) and pours > hot:
        notes.append(f"It is poured at {shown(pours)}, hotter than the wax gets, {shown(hot)}.")
    if None not in (hot, scented) and scented > hot:
        notes.append(f"Fragrance at {shown(scented)} is hotter than the wax gets, {shown(hot)}.")
    if None not in (scented, pours) and pours > scented:
        notes.append(f"It is poured at {shown(pours)}, hotter than where the fragrance goes in, {shown(scented)}: it cools no "
                     "further between.")
    if pours is not None and known is not None and pours <= known[1]:
        told = "It is set below" if pours < known[0] else "It may begin to set at"
        edge = known[0] if pours < known[0] else known[1]
        notes.append(f"{told} {shown(edge)}: {shown(pours)} is cold for a pour, and setting wax cools more slowly than told here.")
    warm = said.value(f"{place}.melting.vessel_at")
    if warm is not None and warm > 45:
        notes.append(f"Plaster crumbles when it is warmed above about {shown(45)}.")
    if pours is not None and pours >= _PAIN:
        notes.append(_burns(pours, shown))
    return notes


def _burns(pours: float, shown: Callable[[float], str]) -> str:
    edge, does = next(each for each in ((_SECOND, "burns skin to blisters"), (_FIRST, "burns skin"), (_PAIN, "hurts"))
                      if pours >= each[0])
    return f"At {shown(pours)} wax {does}: {shown(edge)} is enough. Sleeves and closed shoes."
