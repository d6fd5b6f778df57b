"""The card of drying: the newest weighing, the older ones, and the curve through them."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.cards.dry_chart import drawn, in_words
from brimbook.quantity import show
from brimbook.quantity.moments import show_moment
from brimbook.quantity.show import Display, small_mass
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.wetting import AFTER_TEST, was_filled
from brimbook.work_out import Answer


def dry_card(answer: Answer, place: str) -> dict[str, Any]:
    """What the vessel weighs now, and when it will be dry enough [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    said, at = answer.said, f"{place}.drying"
    count, dryness = said.count(f"{at}.weights"), answer.dryness.get(place)
    newest = [ask(said, f"{at}.weights.{count - 1}.{name}", label)
              for name, label in (("weight", "Weight now"), ("at", "Weighed"))] if count else []
    return card(
        place, "dry", "Dry", "What does the vessel weigh now?", answer=("left", "dry_at"),
        closed=("dry_at",) if f"{at}.dry_at" in answer.figures else ("left",), waiting=_waiting(said, at, count),
        fields=[*newest, ask(said, f"{at}.dry_weight")],
        more=[ask(said, f"{at}.margin"), ask(said, f"{at}.steady"), ask(said, f"{at}.readability", usual=_step(said))],
        figures=figures_below(answer, at), notes=(
            *(dryness.notes if dryness else ()), *_told(answer, at),
            *((AFTER_TEST,) if dryness is not None and was_filled(said, place) else ())),
        cautions=cautions.DRY, groups=tuple(_older(said, at, row) for row in reversed(range(count - 1))),
        actions=_actions(at, count), drawing=drawn(dryness) if dryness else "",
        drawing_text=in_words(dryness) if dryness else "")


def _waiting(said: Said, at: str, count: int) -> str:
    if said.is_marked_below(at):
        return "Mend the entry that is marked."
    newest = f"{at}.weights.{count - 1}"
    if not count:
        return "Weigh it now, and tomorrow."
    if not said.typed(f"{newest}.weight") or not said.typed(f"{newest}.at"):
        return "Type what it weighs, and when."
    return "Weigh it again tomorrow."


def _told(answer: Answer, at: str) -> tuple[str, ...]:
    figures = (answer.figures.get(f"{at}.{name}") for name in ("left", "dry_at"))
    return tuple(f"{figure.says}." for figure in figures if figure is not None)


def _actions(at: str, count: int) -> tuple[dict[str, Any], ...]:
    again = {"label": "Weigh it again" if count else "Weigh it", "append": f"{at}.weights", "value": {"weight": "", "at": ""}}
    if not count:
        return (again,)
    return (again, {"label": "Remove the newest weighing", "remove": f"{at}.weights.{count - 1}"})


def _older(said: Said, at: str, row: int) -> dict[str, Any]:
    path = f"{at}.weights.{row}"
    weight, moment = said.value(f"{path}.weight"), said.value(f"{path}.at")
    told = [show.mass(weight, said.display)] if weight is not None else []
    told += [show_moment(moment)] if moment is not None else []
    return group(path, f"Weighing {row + 1}", " · ".join(told) or "Nothing typed yet.",
                 [ask(said, f"{path}.weight"), ask(said, f"{path}.at")],
                 actions=({"label": "Remove this weighing", "remove": path},))


def _step(said: Said) -> str:
    """The step of the maker's own scale, as a record would keep it."""
    return small_mass(said.display.readability, Display(mass=said.display.mass_word))
