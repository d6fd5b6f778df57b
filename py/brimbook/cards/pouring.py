"""The card of pouring: the log of the pours, what it taught, and what the next pour takes."""

from dataclasses import replace
from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.cards.pour_history import history
from brimbook.cast.materials import generic
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.quantity.moments import show_day
from brimbook.quantity.read import Bounds, read
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.facts import name_of
from brimbook.steps.pour_log import mix_name, of_another_mix
from brimbook.steps.recipe import others_of
from brimbook.work_out import Answer

_ANY = Bounds(0.0, 1e15)

def pour_card(answer: Answer, place: str) -> dict[str, Any]:
    """The pours: what was weighed and left over, and what that teaches [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    said, count = answer.said, answer.said.count(f"{place}.pours")
    figures = figures_below(answer, f"{place}.pouring")
    others, cups = len(others_of(said, f"{place}.mix")), _cups(said, place, count)
    learned, apart = answer.learned.get(place), set(of_another_mix(said, place))
    drawing, drawing_text = history(learned, said.display) if learned is not None else ("", "")
    return card(
        place, "pour", "Pour", "What was really weighed, and left over?", waiting=_waiting(count), fields=[],
        more=_flow_fields(said, place), figures=figures,
        closed=("density",),
        answer=("density", "allowance" if f"{place}.pouring.allowance" in answer.figures else "needed"),
        notes=(*_notes(answer, place), *_apart_notes(said, place, sorted(apart))), cautions=cautions.POUR,
        drawing=drawing, drawing_text=drawing_text,
        groups=tuple(_pour(answer, place, row, row == count - 1, cups[row], others, row in apart)
                     for row in reversed(range(count))),
        actions=({"label": "Log a pour", "append": f"{place}.pours", "value": _planned(answer, place)},))


def _waiting(count: int) -> str:
    return "Weigh the rest, or a cup of it." if count else "Log a pour to learn from it."


def _flow_fields(said: Said, place: str) -> list[dict[str, Any]]:
    own = ["base"] if said.value(f"{place}.flow.cone") == "own" else []
    return [ask(said, f"{place}.flow.{name}") for name in ("cone", *own, "target")]


def _notes(answer: Answer, place: str) -> tuple[str, ...]:
    figures, learned = answer.figures, answer.learned.get(place)
    if learned is None:
        return ()
    notes = [f"{figures[f'{place}.pouring.{name}'].says}." for name in ("density", "needed", "allowance")
             if f"{place}.pouring.{name}" in figures]
    powder, water = figures.get(f"{place}.powder"), figures.get(f"{place}.water")
    if powder is not None and water is not None:
        notes.append(f"The next pour takes {powder.shown} of powder and {water.shown} of water: the mix card starts from here.")
    return tuple(notes)


def _apart_notes(said: Said, place: str, rows: list[int]) -> tuple[str, ...]:
    """A sentence for each other mix that pours of this log were of."""
    pours: dict[str, list[str]] = {}
    for row in rows:
        pours.setdefault(said.text(f"{place}.pours.{row}.of").strip(), []).append(str(row + 1))
    return tuple(f"{'Pour' if len(numbers) == 1 else 'Pours'} {', '.join(numbers)} "
                 f"{'was' if len(numbers) == 1 else 'were'} of another mix ({_mix_told(mix)}): kept, and not counted."
                 for mix, numbers in pours.items())


def _mix_told(mix: str) -> str:
    kinds = [kind.removeprefix("mine: ") for kind in mix.split(" + ")]
    return " + ".join(generic(kind).label if generic(kind) else kind for kind in kinds)


def _pour(answer: Answer, place: str, row: int, newest: bool, cup: dict[str, str], others: int,
          apart: bool) -> dict[str, Any]:
    said, pour = answer.said, f"{place}.pours.{row}"
    open_still = not any(said.typed(f"{pour}.{name}") for name in ("left_over", "short", "cup_full"))
    usual = {**({} if apart else _by_the_recipe(answer, place, pour)), **cup,
             "pieces": said.canonical.get(f"{place}.pieces", "1")}

    def field(name: str, label: str = "") -> dict[str, Any]:
        return ask(said, f"{pour}.{name}", label, usual=usual.get(name, ""))

    weighed = [field(f"others.{other}.weighed", f"{_ingredient(said, place, other)} weighed") for other in range(others)]
    rest = ("cup_full", "cup_empty", "cup_volume", "spread_1", "spread_2", "when", *(("of",) if said.typed(f"{pour}.of") else ()), "notes")
    return group(
        pour, f"Pour {row + 1}", _summary(answer, place, row, apart),
        [field(name) for name in ("powder", "water", "left_over", "pieces")],
        more=(field("short"), *weighed, *(field(name) for name in rest)),
        actions=({"label": "Remove this pour", "remove": pour},), open=newest and open_still)


def _ingredient(said: Said, place: str, other: int) -> str:
    return name_of(said, f"{place}.mix.others.{other}") or f"Ingredient {other + 2}"


def _by_the_recipe(answer: Answer, place: str, pour: str) -> dict[str, str]:
    """What is taken for water and ingredients that are left empty beside the powder of a pour."""
    recipe, powder = answer.recipes.get(place), answer.said.value(f"{pour}.powder")
    if recipe is None or powder is None:
        return {}
    weights = {"water": recipe.water, **{f"{part.name}.weighed": part.weighed for part in recipe.parts[1:]}}
    return {name: _written(weight * powder, answer.said.display) for name, weight in weights.items()}


def _cups(said: Said, place: str, count: int) -> list[dict[str, str]]:
    """For each pour, the cup of the pours before it, as it was last typed."""
    cup, cups = {}, []
    for row in range(count):
        cups.append(dict(cup))
        for name in ("cup_volume", "cup_empty"):
            if said.typed(f"{place}.pours.{row}.{name}"):
                cup[name] = said.canonical.get(f"{place}.pours.{row}.{name}", "")
    return cups


def _summary(answer: Answer, place: str, row: int, apart: bool) -> str:
    """The day, and what the pour told, in one short line."""
    if answer.said.is_marked_below(f"{place}.pours.{row}"):
        return "Mend the entry that is marked."
    when, figures = answer.said.value(f"{place}.pours.{row}.when"), answer.figures
    told = [show_day(when)] if when is not None else []
    told += ["of another mix"] if apart else []
    cup, needed = (figures.get(f"{place}.pouring.{name}_{row + 1}") for name in ("cup", "needed"))
    told += [cup.shown] if cup is not None else []
    told += [_needed_told(needed, answer.said.display)] if needed is not None else []
    return " · ".join(told)


def _needed_told(needed: Figure, display: Display) -> str:
    return f"needed {show.percent(abs(needed.value), display)} {'more' if needed.value >= 0 else 'less'}"


def _planned(answer: Answer, place: str) -> dict[str, Any]:
    """A new pour starts from what was to be weighed, so that it still says so when the recipe has changed."""
    said, plan = answer.said, answer.plans.get(place)
    if plan is None:
        return {"when": ""}
    scale, pieces = _one_mix(answer, place)
    grams = {portion.name: _written(portion.grams * scale, said.display) for portion in plan.portions}
    others = [{"weighed": grams[portion.name]} for portion in plan.portions[1:-1]]
    value = {"when": "", "powder": grams["powder"], "water": grams["water"], "pieces": str(pieces), "of": mix_name(said, place)}
    return {**value, "others": others} if others else value


def _one_mix(answer: Answer, place: str) -> tuple[float, int]:
    """The share of the plan that is in the bowl, and its pieces: one mix, as it was scooped and filled up to match.

    Where the mixes are of several molds, or of parts of a piece, it is all of the plan.
    """
    plan, figures = answer.plans[place], answer.figures
    first, volume = plan.filled[0], figures.get(f"{place}.batch.mix_1.volume")
    factor = figures.get(f"{place}.batch.scooped.factor")
    scooped = factor.value if factor is not None else 1.0
    if volume is None:
        return scooped, first.pieces
    pieces = int(volume.value / (first.volume * (1 + plan.allowance)) + 1e-6)
    if len(plan.filled) > 1 or pieces < 1:
        return 1.0, first.pieces
    return scooped * pieces / first.pieces, pieces


def _written(grams: float, display: Display) -> str:
    """A weight as the record keeps it: it reads the same under any settings."""
    plain = replace(display, mass=display.mass_word, decimal="point")
    return read(show.mass(grams, plain), "mass", _ANY, mark="point").canonical
