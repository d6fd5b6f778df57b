"""The finishing card: areas, sealer, primer and paint."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.cards.shelf import Shelf, supply_field
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.finishing import COATS
from brimbook.work_out import Answer

_BARE = "No sealer is planned: hot wax soaks into a bare wall, and an unsealed vessel can burn like a wick."
_LINE = 34
_ROUND, _OUTLINE = ("top", "bottom", "height"), ("outline", "height")


def finish_card(answer: Answer, place: str, shelf: Shelf) -> dict[str, Any]:
    """How much sealer and paint it takes, and how long they dry [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    shelf: the maker's own materials [shelf].
    """
    said, figures, at = answer.said, figures_below(answer, f"{place}.finishing"), f"{place}.finishing"
    names = _OUTLINE if said.value(f"{at}.shape") == "outline" else _ROUND
    return card(
        place, "finish", "Finish", "How large is it inside, to be sealed?", answer=_answer(figures),
        closed=_closed(figures),
        waiting=_waiting(said, at), figures=figures, more=[ask(said, f"{at}.inside_area")],
        fields=[ask(said, f"{at}.shape"), *(ask(said, f"{at}.inside_{name}") for name in names)],
        groups=(_outside(said, at, names, figures), *(_coat(said, at, name, label, figures, shelf) for name, label, _ in COATS)),
        notes=(_BARE,) if said.value(f"{at}.sealer_coats") == 0 else (), cautions=cautions.FINISH)


def _answer(figures: dict[str, Any]) -> tuple[str, ...]:
    amounts = [name for name, *_ in COATS if name in figures]
    return tuple(amounts[:2]) if amounts else ()


def _closed(figures: dict[str, Any]) -> tuple[str, ...]:
    """As many amounts as one line of a phone has room for."""
    names = _answer(figures)
    told = "   ".join(f"{figures[name].shown} {figures[name].label}" for name in names)
    return names if len(told) <= _LINE else names[:1]


def _outside(said: Said, at: str, names: tuple[str, ...], figures: dict[str, Any]) -> dict[str, Any]:
    summary = figures["outside"].shown if "outside" in figures else "Its sizes, for primer and paint."
    return group(f"{at}.outside", "Outside", summary, [ask(said, f"{at}.outside_{name}") for name in names],
                 more=(ask(said, f"{at}.outside_area"),))


def _coat(said: Said, at: str, name: str, label: str, figures: dict[str, Any], shelf: Shelf) -> dict[str, Any]:
    coats = said.value(f"{at}.{name}_coats")
    summary = "None." if coats == 0 else figures[name].shown if name in figures else "Coats, coverage and drying time."
    # Without coatings on the shelf there is nothing to choose, and its name is asked where it is paid for.
    chosen = [supply_field(said, f"{at}.{name}", shelf, "coating", "Which one")] if shelf.of_role("coating") else []
    return group(f"{at}.{name}", label, summary, [*chosen, *(ask(said, f"{at}.{name}_{part}") for part in ("coats", "coverage", "hours"))])


def _waiting(said: Said, at: str) -> str:
    marked = said.is_marked_below(at)
    return "Mend the entry that is marked." if marked else "Type its sizes."
