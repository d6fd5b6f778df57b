"""The card of the burn test: its log, what it tells, and what is due while it burns."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.burn_chart import drawn, in_words
from brimbook.cards.card import card, figures_below, group
from brimbook.quantity import show
from brimbook.quantity.moments import HOUR, moment_text, show_duration, show_moment
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.burn_figures import per_hour
from brimbook.steps.burn_log import MOST_CYCLES, Burned
from brimbook.steps.burning import Burn
from brimbook.work_out import Answer

_WEIGHED = ("before", "lit_at", "out_at", "after")
_LOOKS = ("reached", "pool", "flame", "soot", "wick_looks", "wall", "trimmed", "minutes", "after_smoke", "remarks")


def burning_card(answer: Answer, place: str) -> dict[str, Any]:
    """The burn test: what it weighed before and after, and what that tells [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    said, at, burn = answer.said, f"{place}.burning", answer.burns.get(place, Burn(()))
    rest = "rest_weight" if said.value(f"{at}.rest") == "weight" else "rest_height"
    return card(
        place, "burning", "Burn test", "What did it weigh, before and after?", waiting=_waiting(said, at, burn), fields=[],
        more=[ask(said, f"{at}.wick", usual=said.text(f"{place}.wicks.name")[:60]),
              *(ask(said, f"{at}.{name}") for name in ("rest", rest, "vessel_weight", "room")),
              ask(said, f"{at}.readability", usual=show.small_mass(said.display.readability, Display(mass=said.display.mass_word)))],
        figures=figures_below(answer, at), answer=("rate", "hours"), notes=(*burn.verdicts, *_without_hours(answer, place, burn)),
        cautions=cautions.BURN, drawing=drawn(burn, said.display), drawing_text=in_words(burn, said.display),
        groups=_groups(said, at, burn), actions=_actions(at, burn),
        timers=tuple({"label": due.label, "due": moment_text(due.at)} for due in burn.due))


def _waiting(said: Said, at: str, burn: Burn) -> str:
    if said.is_marked_below(at):
        return "Mend the entry that is marked."
    if not burn.cycles:
        return "Weigh it, then light it."
    return "It burns: weigh it when it is out." if burn.cycles[-1].burns else "Type both weights, and how long it burned."


def _without_hours(answer: Answer, place: str, burn: Burn) -> tuple[str, ...]:
    """Why there is no burn time, where only what stays at the end is missing."""
    at = f"{place}.burning"
    if burn.rate is None or f"{at}.rest" in answer.figures or answer.said.is_marked_below(at):
        return ()
    missing = "the density of the wax on the Wax card" if place in answer.wick_plans else "the size of the wax on the Wicks card"
    return (f"For the burn time, type {missing}, or what is left at the end by its weight.",)


def _actions(at: str, burn: Burn) -> tuple[dict[str, Any], ...]:
    older = {"label": "Log an older burn", "append": f"{at}.cycles",
             "value": {"lit_at": "", "out_at": "", "before": "", "after": ""}}
    if burn.cycles and burn.cycles[-1].burns:
        return (older,)
    return ({"label": "Light it", "append": f"{at}.cycles", "value": {"lit_at": ""}, "now": ["lit_at"]}, older)


def _groups(said: Said, at: str, burn: Burn) -> tuple[dict[str, Any], ...]:
    """The newest cycle first, unfolded until it is weighed."""
    count, known, groups, last = said.count(f"{at}.cycles"), {burned.number: burned for burned in burn.cycles}, [], ""
    for row in range(max(count - MOST_CYCLES, 0), count):
        burned = known.get(row + 1)
        groups.append(_group(said, f"{at}.cycles.{row}", burned, last, row == count - 1))
        last = last if burned is None else said.canonical.get(f"{burned.path}.after", "")
    return tuple(reversed(groups))


def _group(said: Said, path: str, burned: Burned | None, last: str, newest: bool) -> dict[str, Any]:
    """One cycle; last is what it weighed after the one before, which stands in for its weight before."""
    number = int(path.rpartition(".")[2]) + 1
    fields = [ask(said, f"{path}.{name}", usual=last if name == "before" else "") for name in _WEIGHED]
    return group(path, f"Cycle {number}", _summary(said, burned), fields, more=tuple(ask(said, f"{path}.{name}") for name in _LOOKS),
                 actions=({"label": "Remove this cycle", "remove": path},), open=newest and (burned is None or burned.cycle is None))


def _summary(said: Said, burned: Burned | None) -> str:
    if burned is None:
        return "Nothing typed yet."
    if burned.cycle is not None:
        lost = show.small_mass(burned.cycle.burned, said.display, 3)
        return f"{lost} in {show_duration(burned.cycle.hours * HOUR, said.display)} · {per_hour(burned.cycle.rate, said.display)}"
    if burned.burns:
        return f"Lit {show_moment(burned.lit)}"
    return "Not weighed yet." if None in (burned.before, burned.after) else "For how long?"
