"""The card of the design: its sizes, and what a vessel so large takes of mix and wax."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below
from brimbook.draw import design as drawing
from brimbook.draw.filled_cut import gaps_below
from brimbook.draw.model_section import Cut
from brimbook.figure import Figure
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.shape import outline as outlines
from brimbook.shape.outline import Outline, Point
from brimbook.shape.shell import Ball, Shell
from brimbook.steps.design import PLACE, Design, asked_sizes, design_of
from brimbook.work_out import Answer

_CURVE = 24
_LEFT_OUT = ("lean", "corner", "foot")
# What is measured by a design where nothing was yet; and what all that had been goes back to.
_FIRST = ("casts.0.cavity", "wells.0.fill")
_BACK = {"casts": ("cavity", "on_scale"), "wells": ("fill", "poured_out")}


def design_card(answer: Answer) -> list[dict[str, Any]]:
    """The design's card, where the vessel has a design [cards].

    answer: everything worked out [answer].
    """
    said = answer.said
    if not said.count("design"):
        return []
    found, figures, shape = design_of(said), figures_below(answer, PLACE), said.value(f"{PLACE}.shape") or "round"
    names = [name for name in asked_sizes(shape) if name not in _LEFT_OUT]
    seldom = [*(name for name in asked_sizes(shape) if name in _LEFT_OUT), "sizes", "off"]
    return [card(
        PLACE, "design", "Design", "How large is the vessel?", answer=("cast", "room", "weight", "filling"), closed=_closed(figures),
        waiting="Mend the entry that is marked." if said.is_marked_below(PLACE) else "Type the sizes that you want.",
        fields=[ask(said, f"{PLACE}.{name}") for name in ("shape", *names, "wall_thickness", "floor_thickness", "line")],
        more=[ask(said, f"{PLACE}.{name}") for name in seldom], figures=figures, actions=_actions(said),
        drawing=_drawn(said, found, figures) if found else "", drawing_text=_in_words(said, found) if found else "",
        notes=(_in_words(said, found),) if found else (),
        saves=({"label": "Save the vessel for a 3D printer", "ask": "design_model", "place": PLACE},) if found else ())]


def design_action(said: Said) -> list[dict[str, Any]]:
    """The button that adds a design; mold and well go by it where nothing was measured yet [actions].

    said: the record as understood [said].
    """
    if said.count("design"):
        return []
    fills = [fill for fill in _FIRST if not _is_measured(said, fill)]
    return [{"label": "Design a vessel", "append": "design", "value": {"shape": "round", "wall_thickness": "6 mm", "floor_thickness": "8 mm",
                                                                       "line": "10 mm"},
             "sets": {f"{fill}.way": "design" for fill in fills if said.count(fill.split(".")[0])}}]


def _is_measured(said: Said, fill: str) -> bool:
    """Was anything weighed, measured or read there?"""
    names = ("diameter", "top_diameter", "bottom_diameter", "length", "width", "height", "file.reading")
    readings = (f"readings.{row}.{part}" for row in range(said.count(f"{fill}.readings"))
                for part in ("water", "full", "empty", "before", "after", "filler"))
    return said.value(f"{fill}.way") == "cast_file" or any(said.typed(f"{fill}.{name}") for name in (*names, *readings))


def _actions(said: Said) -> tuple[dict[str, Any], ...]:
    fills = [(f"{name}.{number}.{part}.way", way) for name, (part, way) in _BACK.items() for number in range(said.count(name))]
    sets = {path: way for path, way in fills if said.value(path) == "design"}
    return ({"label": "Remove the design", "remove": PLACE, "sets": sets},)


def _closed(figures: dict[str, Figure]) -> tuple[str, ...]:
    return ("weight", "filling") if "weight" in figures and "filling" in figures else ("cast", "room")


def _in_words(said: Said, found: Design) -> str:
    """How large it is outside and inside."""
    body, display = found.body, said.display

    def across(outline: Outline) -> str:
        sides = outlines.size(outline)
        is_even = show.length(sides[0], display) == show.length(sides[1], display)
        return show_more.size(sides[:1] if is_even else sides, display) if max(sides) > 0 else "round"

    deep = show.length(body.height - body.room.low, display)
    return (f"Outside {across(body.outside.outline(body.height))} at the rim, {across(body.outside.outline(0.0))} at the bottom, "
            f"{show.length(body.height, display)} high. Room for wax {across(body.room.outline(body.height))} at the rim, "
            f"{across(body.room.outline(body.room.low))} at its floor, {deep} deep.")


def _drawn(said: Said, found: Design, figures: dict[str, Figure]) -> str:
    body = found.body
    line = f"{show.length(found.below, said.display)} below brim" if found.below else "to the brim"
    plans = (body.outside.corners(body.height), body.room.corners(body.height))
    told = [f"{figures['room'].shown} of wax", f"{figures['cast'].shown} of mix", line] if "room" in figures else []
    return drawing.vessel(_half(body.outside), _half(body.room), found.line, plans, told)


def design_cut(said: Said, fill: str) -> Cut | None:
    """The design cut upright, a well's filled to its line; none while there is no design [cut].

    said: the record as understood [said].
    fill: path of the fill [text].
    """
    found = design_of(said)
    if found is None:
        return None
    outside, room = _half(found.body.outside), _half(found.body.room)
    middle = max(across for across, _ in outside)
    solid = tuple((middle + across, height) for across, height in (*drawing.mirrored(outside), *reversed(drawing.mirrored(room))))
    if not fill.startswith("wells."):
        return Cut((solid,))
    return Cut((solid,), gaps_below((solid,), found.body.room.low, found.line, (0.0, 2 * middle)), found.line)


def _half(shell: Shell) -> list[Point]:
    """The right half of a side in section, from its bottom up."""
    steps = _CURVE if isinstance(shell, Ball) else 1
    # A ball is flattest at its bottom: there the steps are closest.
    heights = [shell.low + (shell.high - shell.low) * (step / steps) ** 2 for step in range(steps + 1)]
    return [(outlines.size(shell.outline(height))[0] / 2, height) for height in heights]
