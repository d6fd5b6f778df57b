"""Wicks: how many, and where they stand, so that their pools reach the whole surface of the wax."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.candle.wicks import fit, pool_of_area
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.leaves.wicks import MOST_WICKS
from brimbook.record.said import Said
from brimbook.shape.covering import Covering, cover, reach
from brimbook.shape.outline import Outline, Point, area, size, wall_distance
from brimbook.steps.wax_surface import area_figure, surface
from brimbook.steps.weighing import practice_or_yours
from brimbook.steps.wick_counts import FEW_WELLS, SAME, has_places, most_tried, tried, typed_places, usual_count

# Short of a clearance by less than this is rounding of places to 0.1 mm [mm].
_HAIR = 0.1
# A way is told within such a share; one longer than straight by more goes around something.
_TOLD = 1e-4


@dataclass(frozen=True)
class WickPlan:
    """The outline of the wax surface and the wicks in it.

    covering is that of the wicks shown; best is the best one for each count that has room, fewest first; is_moved says that the maker moved one.
    """

    outline: Outline
    covering: Covering | None
    best: tuple[Covering, ...]
    is_moved: bool
    figures: tuple[Figure, ...]
    notes: tuple[str, ...] = ()


def wicks(said: Said, place: str) -> WickPlan | None:
    """The wick plan of a well; none while its outline is unknown [plan].

    said: the record as understood [said].
    place: path of the well [text].
    """
    found, at = surface(said, place) if has_places(place) else None, f"{place}.wicks"
    clearances = tuple(said.value(f"{at}.{name}") for name in ("from_wall", "between"))
    if found is None or None in clearances:
        return None
    most, asked = most_tried(said), said.value(f"{at}.up_to")
    if asked is not None and asked > most:
        said.fault(f"{at}.up_to", f"In a vessel of more than {FEW_WELLS} wells up to {most} wicks are tried. Type {most} or less;"
                                  " more wicks are placed where you type their number.")
    best = _best(found.outline, tried(said, place), *clearances)
    covering, is_moved, notes = _shown(said, at, found.outline, best, clearances)
    figures = [area_figure(said, f"{at}.area", found)]
    if covering is not None:
        figures += _figures(said, at, found.outline, covering)
        notes += _near(said, found.outline, covering, clearances)
    return WickPlan(found.outline, covering, best, is_moved, tuple(figures), tuple(notes))


def _best(outline: Outline, most: int, from_wall: float, between: float) -> tuple[Covering, ...]:
    found = (cover(outline, count, from_wall, between) for count in range(1, most + 1))
    return tuple(each for each in found if each is not None)


def _shown(said: Said, at: str, outline: Outline, best: tuple[Covering, ...],
           clearances: tuple[float, ...]) -> tuple[Covering | None, bool, list[str]]:
    """The wicks as the maker placed them, else as they stand best; and why there are none."""
    typed = said.value(f"{at}.count") if said.typed(f"{at}.count") else usual_count(said, at, best)
    if typed is None:
        return None, False, []
    count, moved = int(typed), _moved(said, at, outline)
    if len(moved) == count:
        return reach(outline, moved), True, []
    covering = next((each for each in best if len(each.points) == count), None) or cover(outline, count, *clearances)
    return covering, False, [] if covering is not None else [_no_room(said, count if best else 1, *clearances)]


def _moved(said: Said, at: str, outline: Outline) -> tuple[Point, ...]:
    written = typed_places(said, at)
    rows, (wide, high) = min(1 + max(written, default=-1), MOST_WICKS + 1), size(outline)
    places = [(said.value(f"{at}.at.{row}.x"), said.value(f"{at}.at.{row}.y")) for row in range(rows)]
    return tuple((x - wide / 2, y - high / 2) for x, y in places) if all(None not in each for each in places) else ()


def _no_room(said: Said, count: int, from_wall: float, between: float) -> str:
    wall, apart = show.length(from_wall, said.display), show.length(between, said.display)
    if count == 1:
        return f"There is no room for a wick {wall} from every wall. Take one that may stand closer, or a wider vessel."
    return f"There is no room for {count} wicks {wall} from the wall and {apart} from each other. Take fewer, or let them stand closer."


def _near(said: Said, outline: Outline, covering: Covering, clearances: tuple[float, ...]) -> list[str]:
    """What is too close, of wicks that the maker moved."""
    told, (from_wall, between) = [], clearances
    for number, point in enumerate(covering.points, 1):
        away = wall_distance(outline, point)
        if away < -_HAIR:
            told.append(f"Wick {number} stands outside the wax.")
        elif away < from_wall - _HAIR:
            told.append(f"Wick {number} stands {show.length(max(0.0, away), said.display)} from the wall, less than the "
                        f"{show.length(from_wall, said.display)} you keep.")
    apart = _apart(covering)
    if apart is not None and apart < between - _HAIR:
        told.append(f"Two wicks stand {show.length(apart, said.display)} apart, less than the "
                    f"{show.length(between, said.display)} you keep.")
    return told


def is_outside(plan: WickPlan) -> bool:
    """Does a wick of a plan stand outside the wax [yes or no]?

    plan: of the wicks [plan].
    """
    points = plan.covering.points if plan.covering is not None else ()
    return any(wall_distance(plan.outline, point) < -_HAIR for point in points)


def _apart(covering: Covering) -> float | None:
    """The least distance of two wicks; none for a single one."""
    points = covering.points
    return min((math.dist(one, other) for row, one in enumerate(points) for other in points[:row]), default=None)


def pool_label(count: int) -> str:
    """What the needed pool is called beside its number [text].

    count: of wicks [count].

    >>> pool_label(1), pool_label(2)
    ('pool, 1 wick', 'each pool, 2 wicks')
    """
    return "pool, 1 wick" if count == 1 else f"each pool, {count} wicks"


def _figures(said: Said, at: str, outline: Outline, covering: Covering) -> list[Figure]:
    count = len(covering.points)
    needed = _needed(said, at, outline, covering)
    return [needed, *_of_wick(said, at, needed, count), _by_area(said, at, outline, count), *_to_wall(said, at, outline, covering),
            *_distance(said, at, outline, covering), *_places(said, at, outline, covering)]


def _told(said: Said, value: float) -> str:
    return show.significant(round(value, 9), 8, said.display)


def from_edges(outline: Outline, point: Point) -> Point:
    """A place from the left and the front edge of the surface [mm].

    outline: of the surface [outline].
    point: from its middle [mm].
    """
    wide, high = size(outline)
    return point[0] + wide / 2, point[1] + high / 2


def _straight(said: Said, outline: Outline, one: Point, other: Point) -> str:
    (left, front), (right, back) = (from_edges(outline, point) for point in (one, other))
    across, deep = (f"({_told(said, max(pair))} − {_told(said, min(pair))})²" for pair in ((left, right), (front, back)))
    return f"√({across} + {deep})"


def _needed(said: Said, at: str, outline: Outline, covering: Covering) -> Figure:
    """The pool that each wick must melt: as far as from the worst-served spot to its nearest wick, both ways."""
    count, value = len(covering.points), 2 * covering.radius
    # As the crow flies another wick may be nearer, beyond a wall.
    nearest = min(covering.points, key=lambda point: abs(math.dist(point, covering.worst) - covering.radius))
    off = abs(math.dist(nearest, covering.worst) - covering.radius)
    is_straight = off < 1e-6
    numbers = f"2 × {_straight(said, outline, nearest, covering.worst) if is_straight else _told(said, covering.radius)}"
    shown = show.length(value, said.display)
    says = f"{count} wicks, each a pool {shown} across" if count > 1 else f"1 wick, a pool {shown} across"
    way = "" if off <= _TOLD * covering.radius else _around(outline, covering)
    return Figure(f"{at}.needed", pool_label(count), value, "mm", shown,
                  formula="2 × the way from the spot that melts last to its nearest wick", numbers=numbers,
                  worked=f"{show.significant(value, 5, said.display)} mm", says=says,
                  constants=(Constant("Places", "those whose farthest spot is nearest, searched for from many starts",
                                      sources.COVERING),),
                  spread=f"Measured from the left and the front edge.{way}")


def _around(outline: Outline, covering: Covering) -> str:
    if any(wall_distance(outline, point) < 0 for point in covering.points):
        return " From a wick outside the wax the way leads to the nearest wall first."
    return " The way goes around a corner, for a pool doesn't pass through a wall."


def _of_wick(said: Said, at: str, needed: Figure, count: int) -> list[Figure]:
    """What the chosen wick makes of it."""
    pool, rate, found = said.value(f"{at}.pool"), said.value(f"{at}.rate"), []
    if pool is not None:
        value, short = fit(pool, needed.value), needed.value - pool
        # What comes short must not look like the whole.
        shown = show.percent(value, said.display, 1 if 0.99 < value < 1 else 0)
        gap = show.length(short if short > SAME else max(0.0, -short), said.display)
        says = f"Your wick's pool comes {gap} short" if short > SAME else f"Your wick's pool reaches, with {gap} to spare"
        found.append(Figure(f"{at}.reach", "Your wick's pool, of what is needed", value, "–", shown,
                            formula="pool of your wick ÷ pool needed", numbers=f"{_told(said, pool)} ÷ {_told(said, needed.value)} × 100",
                            says=says, uses=(needed.key,), constants=(Constant("Pool of your wick", show.length(pool, said.display),
                                                                               sources.YOURS),)))
    if rate is not None:
        told = f"{show.significant(count * rate, 3, said.display)} g/h"
        found.append(Figure(f"{at}.together", "All wicks together burn", count * rate, "g/h", told,
                            formula="wicks × rate of one", numbers=f"{count} × {_told(said, rate)}", says=f"Together they burn {told}",
                            worked=f"{show.significant(count * rate, 5, said.display)} g/h",
                            constants=(Constant("Rate of one", f"{_told(said, rate)} g/h", sources.YOURS),),
                            spread="As if none heated another; in a small vessel each does." if count > 1 else ""))
    return found


def _by_area(said: Said, at: str, outline: Outline, count: int) -> Figure:
    surface_area, value = area(outline), pool_of_area(area(outline), count)
    return Figure(f"{at}.least", "No layout needs less than", value, "mm", show.length(value, said.display),
                  formula="2 × √(surface ÷ (wicks × π))", numbers=f"2 × √({_told(said, surface_area)} ÷ ({count} × π))",
                  worked=f"{show.significant(value, 5, said.display)} mm", uses=(f"{at}.area",),
                  spread="As if pools could be cut to fit, without overlap.")


def _to_wall(said: Said, at: str, outline: Outline, covering: Covering) -> list[Figure]:
    value = min(wall_distance(outline, point) for point in covering.points)
    if value < -_HAIR:
        return []
    value = max(0.0, value)
    shown = show.length(value, said.display)
    return [Figure(f"{at}.to_wall", "From the wall, at least", value, "mm", shown, formula="the shortest way from a wick to the wall",
                   numbers=_told(said, value), worked=f"{show.significant(value, 5, said.display)} mm",
                   constants=(practice_or_yours(said, f"{at}.from_wall", "Kept from the wall",
                                                show.length(said.value(f"{at}.from_wall"), said.display)),))]


def _distance(said: Said, at: str, outline: Outline, covering: Covering) -> list[Figure]:
    value = _apart(covering)
    if value is None:
        return []
    one, other = min(((one, other) for row, one in enumerate(covering.points) for other in covering.points[:row]),
                     key=lambda pair: math.dist(*pair))
    return [Figure(f"{at}.apart", "From each other, at least", value, "mm", show.length(value, said.display),
                   formula="distance of the two that stand closest", numbers=_straight(said, outline, one, other),
                   worked=f"{show.significant(value, 5, said.display)} mm",
                   constants=(practice_or_yours(said, f"{at}.between", "Kept between wicks",
                                                show.length(said.value(f"{at}.between"), said.display)),))]


def _places(said: Said, at: str, outline: Outline, covering: Covering) -> list[Figure]:
    """Where each wick stands, from the left and from the front edge of the surface."""
    found, sides = [], size(outline)
    for number, point in enumerate(covering.points, 1):
        for axis, (name, edge, middle) in enumerate((("left", "left", "width"), ("front", "front", "depth"))):
            value, half = from_edges(outline, point)[axis], sides[axis] / 2
            sign, off = "−" if point[axis] < 0 else "+", abs(point[axis])
            found.append(Figure(f"{at}.{name}_{number}", f"Wick {number}, from the {edge}", value, "mm", show.length(value, said.display),
                                formula=f"half the {middle} of the surface + place from its middle",
                                numbers=f"{_told(said, half)} {sign} {_told(said, off)}",
                                worked=f"{show.significant(value, 5, said.display)} mm"))
    return found
