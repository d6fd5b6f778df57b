"""The card of the holder: bars across the opening, and sheets at true size."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below
from brimbook.draw.bars import across
from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.shape.bars import Holder, Sizes, placed, shape_of
from brimbook.steps import cautions
from brimbook.steps.holder import laid_of, sizes_of
from brimbook.steps.wicks import WickPlan, is_outside
from brimbook.work_out import Answer

_ASKED, _SELDOM = ("bar_width", "slot_width"), ("overhang", "wider", "clearance", "bar_thickness", "direction")
_HELD = "A wick that hangs in a slot stays where it is; one that is only taped drifts as the wax is poured (common practice, no source)."
_SAVES = (("Save the template as a drawing", "template"), ("Save the bars as a drawing", "holder_sheet"),
          ("Save the bars for a 3D printer", "holder_model"))
_PRINTS = (("Print the template", "template_pages"), ("Print the bars", "holder_pages"))


def holder_card(answer: Answer, place: str) -> dict[str, Any]:
    """The bars to cut, and what can be printed and saved [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    said, plan, figures = answer.said, answer.wick_plans.get(place), figures_below(answer, f"{place}.holder")
    has_wicks = plan is not None and plan.covering is not None
    laid, sizes = laid_of(said, place, plan), sizes_of(said, place)
    return card(
        place, "holder", "Template and holder", "How wide is a bar?", answer=_answer(figures), figures=figures,
        waiting=_waiting(said, place, plan if has_wicks else None), fields=[ask(said, f"{place}.holder.{name}") for name in _ASKED],
        more=[ask(said, f"{place}.holder.{name}") for name in _SELDOM], table=_table(figures, laid) if laid else None,
        drawing=_drawn(plan, laid, sizes) if laid else "", drawing_text=_in_words(figures) if laid else "",
        notes=(_HELD,) if laid else (), cautions=cautions.HOLDER,
        saves=_offered(_SAVES, place, has_wicks, laid), prints=_offered(_PRINTS, place, has_wicks, laid))


def _answer(figures: dict[str, Figure]) -> tuple[str, ...]:
    return ("bars", "stick") if "stick" in figures else ("bar_1.length",) if figures else ()


def _waiting(said: Said, place: str, plan: WickPlan | None) -> str:
    if said.is_marked_below(f"{place}.holder"):
        return "Mend the entry that is marked."
    if plan is None:
        return "Once the wicks have their places."
    return "Move the wicks that stand outside back into the wax." if is_outside(plan) else "Type the sizes of the bars."


def _offered(offers: tuple[tuple[str, str], ...], place: str, has_wicks: bool, laid: Holder | None) -> tuple[dict[str, str], ...]:
    """The template as soon as the wicks have their places, the bars as soon as they lie."""
    return tuple({"label": label, "ask": name, "place": place} for label, name in offers
                 if (has_wicks if name.startswith("template") else laid is not None))


def _table(figures: dict[str, Figure], laid: Holder) -> dict[str, Any]:
    """A row for each slot."""
    named = "{}: {}" if len(laid.bars) > 1 else "{1}"
    rows = [[named.format(number, figures[f"bar_{number}.length"].shown),
             *(figures[f"bar_{number}.slot_{slot}.{name}"].shown for name in ("along", "depth"))]
            for number, bar in enumerate(laid.bars, 1) for slot in range(1, len(bar.slots) + 1)]
    turn = f" {figures['turn'].says}." if "turn" in figures else ""
    return {"columns": ["Bar", "Slot at", "Deep"],
            "rows": [{"cells": cells, "chosen": False, "sets": {}, "says": ""} for cells in rows],
            "says": f"Slots are measured from the left end, with the slots towards you; the bar nearest to you is the first.{turn}"}


def _drawn(plan: WickPlan, laid: Holder, sizes: Sizes) -> str:
    over = sizes.overhang + sizes.wider / 2
    bars = [[placed((bar.left - over + x, bar.front + y), laid.angle) for x, y in shape_of(bar, sizes)] for bar in laid.bars]
    return across(plan.outline.points, bars, plan.covering.points)


def _in_words(figures: dict[str, Figure]) -> str:
    told = [figure.says for name, figure in figures.items() if name.endswith(".length")]
    return f"The opening from above, with the bars across it. {'. '.join(told)}."
