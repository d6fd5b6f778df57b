"""The card of the wicks: the outline of the wax, how many wicks stand where, and which of the maker's own reach."""

from typing import Any

from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.card import card, figures_below
from brimbook.cards.drawing import drawing_picks
from brimbook.cards.photo import photo_fields, photo_more, photo_part
from brimbook.cards.shelf import Shelf, supply_field
from brimbook.cards.wick_table import wick_table
from brimbook.draw import plan as drawing
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.shape.covering import pool
from brimbook.shape.inside import room
from brimbook.shape.outline import is_convex
from brimbook.steps import cautions
from brimbook.steps.wax_surface import SIZES, shape_of, shapes, usual_size
from brimbook.steps.wick_counts import PLACED, has_places, tried, usual_count
from brimbook.steps.wicks import WickPlan, from_edges
from brimbook.work_out import Answer

# Lengths that a scale bar can have, the longest that is at most so large a part of the surface [mm].
_BARS, _INCH_BARS, _PART = (5.0, 10.0, 20.0, 50.0, 100.0, 200.0), (6.35, 12.7, 25.4, 50.8, 101.6), 0.4


def wicks_card(answer: Answer, place: str, shelf: Shelf) -> dict[str, Any]:
    """How many wicks stand where, so that their pools reach the whole wax [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    shelf: the maker's own materials and wicks [shelf].
    """
    said, at, plan = answer.said, f"{place}.wicks", answer.wick_plans.get(place)
    figures = figures_below(answer, at)
    drawn, is_photo = plan is not None and plan.covering is not None, shape_of(said, place) == "photo"
    return card(
        place, "wicks", "Wicks", "How large is the wax, seen from above?",
        waiting=_waiting(said, place, plan), figures=figures, answer=("needed", "reach"), closed=("needed",),
        fields=[*_sizes(said, place), _shape(said, place), *(photo_fields(said, place) if is_photo else ()), *_wick(said, at, shelf, plan)],
        more=[*(ask(said, f"{at}.{name}") for name in ("from_wall", "between")),
              ask(said, f"{at}.up_to", usual=str(tried(said, place))), *(ask(said, f"{at}.{name}") for name in ("pool", "rate")),
              *(photo_more(said, place) if is_photo else ())],
        notes=plan.notes if plan is not None else (), cautions=cautions.WICKS,
        table=wick_table(said, place, plan, shelf) if plan is not None else None,
        drawing=_drawing(said, at, plan) if drawn else "", drawing_text=_words(said, plan) if drawn else "",
        drag={"ask": "move_wick", "place": place} if drawn else None,
        picks=drawing_picks(said, place), photo=photo_part(said, place) if is_photo else None, actions=_actions(at, plan))


def _sizes(said: Said, place: str) -> list[dict[str, Any]]:
    names = SIZES[shape_of(said, place)]
    return [ask(said, f"{place}.outline.{name}", usual=usual_size(said, place, name)) for name in names]


def _shape(said: Said, place: str) -> dict[str, Any]:
    choices = [plain_choice(each) for each in shapes(said, place)]
    return ask(said, f"{place}.outline.shape", choices=choices, usual=shape_of(said, place))


def _wick(said: Said, at: str, shelf: Shelf, plan: WickPlan | None) -> list[dict[str, Any]]:
    """How many, and which of the maker's own."""
    usual = str(usual_count(said, at, plan.best)) if plan is not None else "1"
    return [ask(said, f"{at}.count", usual=usual), supply_field(said, at, shelf, "wick")]


def _waiting(said: Said, place: str, plan: WickPlan | None) -> str:
    if said.is_marked_below(f"{place}.outline") or said.is_marked_below(f"{place}.wicks"):
        return "Mend the entry that is marked."
    if plan is None and shape_of(said, place) == "photo" and has_places(place):
        return "Mark the rim on a photo."
    if plan is None:
        return "Type the size of the wax surface." if has_places(place) else f"Wicks are placed in the first {PLACED} wells of a vessel."
    return "No room for so many wicks." if plan.best else "No room for a wick."


def _actions(at: str, plan: WickPlan | None) -> tuple[dict[str, Any], ...]:
    shelf = {"label": "My wicks", "go": "#/materials"}
    if plan is None or not plan.is_moved:
        return (shelf,)
    places = [f"{at}.at.{row}.{axis}" for row in range(len(plan.covering.points)) for axis in ("x", "y")]
    return ({"label": "Put the wicks back where they serve best", "clear": places}, shelf)


def _drawing(said: Said, at: str, plan: WickPlan) -> str:
    across = said.value(f"{at}.pool")
    radius = across / 2 if across is not None else plan.covering.radius
    wicks = [drawing.Wick(point, pool(plan.outline, point, radius), name)
             for point, name in zip(plan.covering.points, _names(said, plan))]
    kept = room(plan.outline, said.value(f"{at}.from_wall") or 0.0) if is_convex(plan.outline) else ()
    return drawing.plan(plan.outline, wicks, plan.covering.worst, _bar(said, plan), kept)


def _bar(said: Said, plan: WickPlan) -> tuple[float, str]:
    lengths = _INCH_BARS if said.display.length == "in" else _BARS
    wide = (drawing.WIDTH / drawing.frame(plan.outline).scale) * _PART
    length = max((each for each in lengths if each <= wide), default=lengths[0])
    return length, show.length(length, said.display)


def _names(said: Said, plan: WickPlan) -> list[str]:
    """What each wick is called by those who hear the plan."""
    told = []
    for number, point in enumerate(plan.covering.points, 1):
        left, front = (show.length(max(0.0, each), said.display) for each in from_edges(plan.outline, point))
        told.append(f"Wick {number}, {left} from the left, {front} from the front")
    return told


def _words(said: Said, plan: WickPlan) -> str:
    return f"The wax from above. {'; '.join(_names(said, plan))}. Each needs a pool {show.length(2 * plan.covering.radius, said.display)} across."
