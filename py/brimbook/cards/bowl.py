"""The bowl card: how many mixes, what is held back, and what to do when the scoop came out different."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.facts import name_of, stands_in
from brimbook.steps.recipe import others_of
from brimbook.work_out import Answer


def bowl_card(answer: Answer, place: str) -> dict[str, Any]:
    """The bowl: mixes, shortages, and weights that came out different [card].

    answer: everything worked out [answer].
    place: path of the cast whose bowl it is [text].
    """
    said, figures, molds = answer.said, figures_below(answer, f"{place}.batch"), _molds(answer, place)
    fields = [ask(said, f"{place}.{name}") for name in ("batch.bowl", "scooped", "left")]
    return card(
        place, "bowl", "Bowl", "Does it fit the bowl? Did the scoop come out different?", answer=_answer(figures),
        closed=_answer(figures)[:1],
        waiting=_waiting(answer, place), figures=figures, fields=[*fields[:1], *(molds if len(molds) == 1 else ()), *fields[1:]],
        more=[*(molds if len(molds) > 1 else ()), *_more(said, place)],
        groups=tuple(_groups(said, place)), cautions=cautions.POUR)


def _answer(figures: dict[str, Figure]) -> tuple[str, ...]:
    """What the closed card tells first: a shortage, then what follows from the scoop, then the plan."""
    left = figures.get("left_pieces")
    short = ("left_pieces",) if left is not None and " of " in left.shown else ()
    names = (*short, "scooped.water", "scooped.powder", "scooped.spare", "mixes", "first_water", "mix_1.first_water")
    return tuple(name for name in names if name in figures)[:2]


def _molds(answer: Answer, place: str) -> list[dict[str, Any]]:
    """How many of each mold are at hand that is poured from this bowl."""
    said, plan = answer.said, answer.plans.get(place)
    filled = [mold.place for mold in plan.filled] if plan is not None else [place]
    return [ask(said, f"{mold}.batch.molds", "" if len(filled) == 1 else f"Of mold {int(mold.split('.')[1]) + 1} at hand")
            for mold in filled]


def _more(said: Said, place: str) -> list[dict[str, Any]]:
    powder = f"{place}.mix.powder"
    return [ask(said, f"{powder}.working_time", "Working time of the powder", usual=stands_in(said, powder, "working_time")),
            *(ask(said, f"{place}.{name}") for name in ("batch.mixing_time", "batch.pouring_time", "held_back"))]


def _groups(said: Said, place: str) -> list[dict[str, Any]]:
    """One for each ingredient beside the powder, and one for the water."""
    found = []
    for row, other in enumerate(others_of(said, f"{place}.mix")):
        name = name_of(said, other) or f"Ingredient {row + 2}"
        fields = [ask(said, f"{other}.scooped"), ask(said, f"{other}.left")]
        found.append(group(f"{other}.bowl", name, _summary(said, f"{other}.scooped", f"{other}.left"), fields))
    water = f"{place}.scooped_water"
    return [*found, group(f"{place}.water", "Water", _summary(said, water), [ask(said, water)])]


def _summary(said: Said, *paths: str) -> str:
    if any(said.fault_at(path) for path in paths):
        return "Mend the entry that is marked."
    return "Filled in." if any(said.typed(path) for path in paths) else "As planned."


def _waiting(answer: Answer, place: str) -> str:
    return "Mend the entry that is marked." if answer.said.is_marked_below(place) else "Once the mix is known."
