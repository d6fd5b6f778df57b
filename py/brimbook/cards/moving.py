"""A wick of the plan moved by hand: what is written into the record for it."""

from typing import Any

from brimbook.draw.plan import frame
from brimbook.quantity.error import QuantityError
from brimbook.shape.inside import inside
from brimbook.shape.outline import Outline, Point
from brimbook.steps.wick_counts import emptied
from brimbook.steps.wicks import WickPlan, from_edges
from brimbook.work_out import Answer

_STEPS = {"left": (-1, 0), "right": (1, 0), "up": (0, 1), "down": (0, -1)}
_NEAR, _FAR = 1.0, 5.0


def move_wick(answer: Answer, request: dict[str, Any]) -> dict[str, Any]:
    """The leaves to write for a wick that was moved; it stays in the wax and clear of the wall [texts].

    answer: everything worked out from the record [answer].
    request: place of the well, row of the wick, and x and y in the drawing or a step, with far for a large one [request].

    Raises QuantityError with a sentence when there is no such wick, or no such place.
    """
    place, row = request.get("place"), request.get("row")
    plan = answer.wick_plans.get(place) if isinstance(place, str) else None
    if plan is None or plan.covering is None or type(row) is not int or not 0 <= row < len(plan.covering.points):
        raise QuantityError("There is no such wick in this plan.")
    kept = answer.said.value(f"{place}.wicks.from_wall") or 0.0
    points = list(plan.covering.points)
    points[row] = _clear(plan.outline, _wanted(plan, row, request), kept)
    sets = {f"{place}.wicks.count": str(len(points)), **emptied(answer.said, f"{place}.wicks", len(points))}
    for number, point in enumerate(points):
        for axis, value in zip("xy", from_edges(plan.outline, point)):
            sets[f"{place}.wicks.at.{number}.{axis}"] = f"{max(0.0, value):.1f} mm"
    return {"sets": sets}


def _wanted(plan: WickPlan, row: int, request: dict[str, Any]) -> Point:
    step, x, y = (request.get(name) for name in ("step", "x", "y"))
    if isinstance(step, str) and step in _STEPS:
        far, (across, deep) = _FAR if request.get("far") is True else _NEAR, _STEPS[step]
        old = plan.covering.points[row]
        return old[0] + across * far, old[1] + deep * far
    if all(isinstance(each, (int, float)) and not isinstance(each, bool) and abs(each) < 1e6 for each in (x, y)):
        return frame(plan.outline).back(x, y)
    raise QuantityError("A wick can only be moved to a place in the drawing.")


def _clear(outline: Outline, wanted: Point, kept: float) -> Point:
    """The nearest place that keeps clear of the wall, as far as there is room."""
    found = inside(outline, wanted, kept)
    return found if found is not None else inside(outline, wanted, 0.0)
