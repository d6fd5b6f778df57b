"""The card of curing: when it was poured, and what is due when."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, group
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.quantity.moments import moment_text, show_moment
from brimbook.record.said import Said, localize
from brimbook.steps import cautions
from brimbook.steps.damp import damp_stands_in
from brimbook.steps.facts import fact, stands_in
from brimbook.steps.mold_heat import mix_of
from brimbook.steps.poured import logged_at
from brimbook.steps.wetting import AFTER_TEST, was_filled
from brimbook.work_out import Answer, has_own_bowl

# So many of the newest readings stand in the open.
_NEWEST = 2
_TOLD = ("kept_damp", "gained")


def cure_card(answer: Answer, place: str) -> dict[str, Any]:
    """The clock: what is due when, from the pour to the wax [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    said, at, schedule = answer.said, f"{place}.curing", answer.schedules[place]
    figures = {figure.key.rpartition(".")[2]: figure for figure in schedule.figures}
    powder = f"{mix_of(said, place)}.powder"
    own, known = has_own_bowl(said, place), fact(said, powder, "demold_time") is not None
    first = [] if known or not own else [_fact_field(said, powder, "demold_time")]
    return card(
        place, "cure", "Clock", "When was it poured?", answer=("demold", "fill") if schedule.events else (),
        closed=("fill",) if schedule.events else (),
        waiting=schedule.waiting or "Type when, or tap Now.", fields=[_poured_field(said, place), ask(said, f"{at}.temperature"), *first],
        more=[ask(said, f"{at}.damp", usual=damp_stands_in(said, place).text), ask(said, f"{at}.dry"),
              ask(said, f"{at}.before_filling")],
        figures=figures, notes=(*schedule.notes, *_told(figures), *_wetted(said, place, figures)), cautions=cautions.CURE,
        groups=(*_setting(said, place, powder, own, known), _log(said, at)),
        timers=tuple({"label": event.label, "due": moment_text(event.at)} for event in schedule.events),
        saves=({"label": "Put it into my calendar", "ask": "calendar", "place": place},) if schedule.events else ())


def _poured_field(said: Said, place: str) -> dict[str, Any]:
    """The moment of the pour; what stands in for it was logged with the pour."""
    path = f"{place}.curing.poured_at"
    field, logged = ask(said, path), logged_at(said, place)
    if said.typed(path) or logged is None:
        return field
    return {**field, "note": f"Empty, so the newest pour's is taken: {show_moment(logged)}."}


def _wetted(said: Said, place: str, figures: dict[str, Figure]) -> tuple[str, ...]:
    return (AFTER_TEST,) if "fill" in figures and was_filled(said, place) else ()


def _told(figures: dict[str, Figure]) -> list[str]:
    return [f"{figures[name].says}." for name in _TOLD if name in figures]


def _fact_field(said: Said, powder: str, name: str) -> dict[str, Any]:
    return ask(said, f"{powder}.{name}", usual=stands_in(said, powder, name))


def _setting(said: Said, place: str, powder: str, own: bool, known: bool) -> tuple[dict[str, Any], ...]:
    """The powder's own time and how it follows the temperature; what is shared with another mold is asked there."""
    at, follows = f"{place}.curing", fact(said, powder, "follows")
    portland = follows is not None and follows.value == "portland"
    law = said.value(f"{at}.law") or "arrhenius"
    constant = "datum" if law == "nurse_saul" else "energy"
    by_law = [ask(said, f"{at}.law", usual=law), ask(said, f"{at}.{constant}")] if portland else []
    if not own:
        return (group(f"{at}.setting", "Colder or warmer", "", by_law),) if by_law else ()
    fields = [_fact_field(said, powder, name) for name in ("demold_time", "reference_temperature")][0 if known else 1:]
    chosen = ask(said, f"{powder}.follows", usual=follows.value if follows is not None else "observed")
    return (group(f"{at}.setting", "Time to demold", _time_told(said, powder), [*fields, chosen], more=tuple(by_law)),)


def _time_told(said: Said, powder: str) -> str:
    time, reference = (fact(said, powder, name) for name in ("demold_time", "reference_temperature"))
    if None in (time, reference):
        return "From its data sheet, or as you have seen it."
    return f"{localize(time.text, said.display)} at {show.temperature(reference.value, said.display)}"


def _log(said: Said, at: str) -> dict[str, Any]:
    """The temperature log, the newest reading first."""
    count, path = said.count(f"{at}.temperatures"), f"{at}.temperatures"
    rows = [(ask(said, f"{path}.{row}.at", f"Reading {row + 1}"), ask(said, f"{path}.{row}.temperature", "Temperature then"))
            for row in reversed(range(count))]
    newest, older = ([field for row in part for field in row] for part in (rows[:_NEWEST], rows[_NEWEST:]))
    remove = ({"label": f"Remove reading {count}", "remove": f"{path}.{count - 1}"},) if count else ()
    return group(path, "Temperatures", _log_told(said, path, count), newest, more=tuple(older), actions=(
        {"label": "Log the temperature", "append": path, "value": {"at": "", "temperature": ""}}, *remove))


def _log_told(said: Said, path: str, count: int) -> str:
    seen = [said.value(f"{path}.{row}.temperature") for row in range(count)]
    known = [celsius for celsius in seen if celsius is not None]
    if not known:
        return "Log them where the bench gets colder or warmer."
    low, high = (show.temperature(celsius, said.display) for celsius in (min(known), max(known)))
    return low if low == high else f"{low} to {high}"
