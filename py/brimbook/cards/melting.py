"""The card of melting: the temperatures, and when the pot has cooled to where it is poured."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.cards.cooling_chart import drawn, in_words
from brimbook.quantity import show
from brimbook.quantity.moments import moment_text
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.melting import Melt
from brimbook.steps.temperatures import melt_at, pour_at, rest_stands_in, window
from brimbook.work_out import Answer

# So many of the newest readings stand in the open, and so many are shown at all.
_NEWEST, _MOST = 2, 100
# What the card tells large: the first of these whose last figure is there.
_TOLD = (("second",), ("rested",), ("pour_at", "pour"))


def melting_card(answer: Answer, place: str) -> dict[str, Any]:
    """How hot it is melted, scented and poured, and when it is due by the thermometer [card].

    answer: everything worked out [answer].
    place: path of the well whose pot it is [text].
    """
    said, at, melt = answer.said, f"{place}.melting", answer.melts[place]
    figures = figures_below(answer, at)
    told = next((names for names in _TOLD if names[-1] in figures), ("pour_at",) if said.typed(f"{at}.pour_at") else ())
    return card(
        place, "melting", "Melt and pour", "What does the thermometer say?", answer=told,
        waiting=_waiting(said, place), figures=figures, fields=[_temperature(said, place, "pour_at")],
        more=[*(_temperature(said, place, name) for name in ("melt_at", "scent_at")), ask(said, f"{at}.stir"),
              ask(said, f"{at}.room"), _temperature(said, place, "second_at"), ask(said, f"{at}.melts_at"),
              ask(said, f"{at}.vessel_at")],
        groups=(_log(said, at, melt), _after(said, place, figures)), notes=(*melt.bench, *_vapor(answer, place), *melt.notes),
        cautions=cautions.MELT, drawing=drawn(said, place, melt), drawing_text=in_words(said, place, melt),
        timers=tuple({"label": due.label, "due": moment_text(due.at)} for due in melt.due))


def _vapor(answer: Answer, place: str) -> tuple[str, ...]:
    """What the Scent card says of a flash point that is passed: the fragrance goes in here."""
    return tuple(note for name, figure in figures_below(answer, f"{place}.scent").items() if name.startswith("flash_")
                 for note in figure.notes)


def _waiting(said: Said, place: str) -> str:
    hot, pours = melt_at(said, place), pour_at(said, place)
    if None in (hot, pours):
        return "Mend the entry that is marked."
    return f"Heat to {show.temperature(hot, said.display)}, pour at {show.temperature(pours, said.display)}."


def _temperature(said: Said, place: str, name: str) -> dict[str, Any]:
    """A temperature, with what is common for the wax."""
    common = window(said, place, name)
    field = ask(said, f"{place}.melting.{name}", usual=show.temperature(common.usual, said.display))
    return {**field, "hint": f"Common: {common.shown(said.display)}. {field['hint']}"}


def _log(said: Said, at: str, melt: Melt) -> dict[str, Any]:
    """The thermometer's log, the newest reading first."""
    count, path = said.count(f"{at}.readings"), f"{at}.readings"
    rows = [(ask(said, f"{path}.{row}.temperature", f"Reading {row + 1}"), ask(said, f"{path}.{row}.at"))
            for row in reversed(range(max(count - _MOST, 0), count))]
    newest, older = ([field for row in part for field in row] for part in (rows[:_NEWEST], rows[_NEWEST:]))
    remove = ({"label": f"Remove reading {count}", "remove": f"{path}.{count - 1}"},) if count else ()
    summary = (f"{show.temperature(melt.log.read, said.display)} at last" if melt.log is not None else
               "Log it as it cools: it then tells when to pour.")
    return group(path, "Thermometer", summary, newest, more=tuple(older), open=True, actions=(
        {"label": "Log the thermometer", "append": path, "value": {"at": "", "temperature": ""}, "now": ["at"]}, *remove))


def _after(said: Said, place: str, figures: dict[str, Any]) -> dict[str, Any]:
    """When it was poured, and how long it rests."""
    at = f"{place}.melting"
    summary = figures["rested"].says if "rested" in figures else "When it was poured, and how long it rests."
    return group(f"{at}.after", "After the pour", summary,
                 [ask(said, f"{at}.poured"), ask(said, f"{at}.rest", usual=rest_stands_in(said, place))])
