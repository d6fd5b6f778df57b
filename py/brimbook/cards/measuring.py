"""The two cards that measure a room: the mold's cavity, and the well for wax."""

from dataclasses import replace
from typing import Any

from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.card import card, figures_below
from brimbook.cards.design import design_cut
from brimbook.cards.model_file import cut_of, file_asked, file_drawing, file_table, file_waiting, file_words
from brimbook.draw import section
from brimbook.draw.section import Profile
from brimbook.quantity import show
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said
from brimbook.shape.solid import SOLIDS
from brimbook.steps import cautions
from brimbook.steps.measure import FROM_FILE, READINGS
from brimbook.steps.model_file import cast_files
from brimbook.work_out import Answer

_MOLD_QUESTIONS = {
    "on_scale": "What did the water weigh?",
    "full_minus_empty": "What did the mold weigh, full and empty?",
    "jug": "What did the jug weigh, before and after?",
    "poured_out": "What did the water you poured out weigh?",
    "dry_filler": "What did the filler weigh?",
    "dimensions": "How large is the cavity?",
    "file": "What does its file show?",
    "design": "How much mix does the design take?",
}
_WELL_QUESTIONS = {
    "on_scale": "What did the water to the line weigh?",
    "full_minus_empty": "What did the vessel weigh, full to the line and empty?",
    "jug": "What did the jug weigh, before and after filling to the line?",
    "poured_out": "What did the water to the line weigh, poured out?",
    "dry_filler": "What did the filler to the line weigh?",
    "dimensions": "How large is the well, to the line?",
    "file": "What does the file show, and up to which line?",
    "cast_file": "Which room of the piece, and up to which line?",
    "design": "What does the design hold, to its line?",
}
_WAITING = {
    "dimensions": "Measure it with a ruler, or take the sizes from the drawing.",
    "dry_filler": "Fill it with dry filler, weigh that, and type what one mL of it weighs.",
    "design": "Once the vessel is designed.",
}
_PROFILES = {"cylinder": ("diameter", "diameter", "height"), "tapered": ("top_diameter", "bottom_diameter", "height"),
             "box": ("length", "length", "height")}


def mold_card(answer: Answer, place: str) -> dict[str, Any]:
    """The mold: the water that fills it, and its volume [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    fill = f"{place}.cavity"
    told = _room_told(answer, fill, "to the brim")
    return card(
        place, "mold", "Mold", _MOLD_QUESTIONS[_way(answer.said, fill)], answer=("volume",),
        waiting=_waiting(answer.said, fill, "Fill the mold with water to the brim and weigh the water."),
        **_asked(answer.said, fill), **_worked(answer, fill), table=file_table(answer.said, fill),
        drawing=file_drawing(answer.said, fill, section.mold(_profile(answer.said, fill), told)),
        drawing_text=f"Section of {_shown(answer.said, fill)}: {', '.join(told)}.{file_words(answer.said, fill)}")


def well_card(answer: Answer, place: str) -> dict[str, Any]:
    """The well: the water to the line where the wax should end, and its volume [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    said, fill = answer.said, f"{place}.fill"
    told = _room_told(answer, fill, "to the line")
    asked = _asked(said, fill)
    shared = [] if place == "wells.0" else [ask(said, f"{place}.pot")]
    asked["fields"] = [*asked["fields"], ask(said, f"{place}.sealed"), *shared]
    sealed = said.value(f"{place}.sealed") == "yes"
    return card(
        place, "well", "Well", _WELL_QUESTIONS[_way(said, fill)], answer=("volume",),
        waiting=_waiting(said, fill, "Fill it with water to the wax line, weigh that."), **asked,
        **_worked(answer, fill), cautions=cautions.WELL if sealed else cautions.UNSEALED_WELL,
        table=file_table(said, fill), drawing=file_drawing(said, fill, section.vessel(_profile(said, fill), "water", told)),
        drawing_text=f"Section of the vessel, filled with water: {', '.join(told)}.{file_words(said, fill)}")


def well_profile(said: Said, place: str) -> Profile:
    """The shape of a well, as far as it is known, for a drawing [profile].

    said: the record as understood [said].
    place: path of the well [text].
    """
    return _profile(said, f"{place}.fill")


def _way(said: Said, fill: str) -> str:
    return said.value(f"{fill}.way") or "on_scale"


def _waiting(said: Said, fill: str, with_water: str) -> str:
    """What to do while there is no volume."""
    if said.is_marked_below(fill) and _way(said, fill) not in FROM_FILE:
        return "Mend the entry that is marked."
    way = _way(said, fill)
    return file_waiting(said, fill) if way in FROM_FILE else _WAITING.get(way, with_water)


def _shown(said: Said, fill: str) -> str:
    """What the drawing of a mold's card shows."""
    way = said.value(f"{fill}.way")
    is_piece = (way == "file" and said.value(f"{fill}.file.holds") != "mold" and cut_of(said, fill) is not None) or (
        way == "design" and design_cut(said, fill) is not None)
    return "the piece" if is_piece else "the mold, filled with water"


def _asked(said: Said, fill: str) -> dict[str, Any]:
    """What is asked in the open, what behind More, and the buttons for readings."""
    way = _way(said, fill)
    way_field = ask(said, f"{fill}.way", choices=[plain_choice(each) for each in leaf_at(f"{fill}.way").choices if _can_be(said, fill, each.value)])
    if way in FROM_FILE:
        return file_asked(said, fill, way_field)
    if way == "design":
        return {"fields": [way_field], "more": [ask(said, f"{fill}.line_error")] if fill.startswith("wells.") else [], "actions": ()}
    if way == "dimensions":
        solid = said.value(f"{fill}.solid") or "cylinder"
        names = ("solid", *SOLIDS[solid].dimensions)
        return {"fields": [*(ask(said, f"{fill}.{name}") for name in names), way_field],
                "more": [ask(said, f"{fill}.ruler")], "actions": ()}
    rows = said.count(f"{fill}.readings")
    fields = [_reading(said, fill, row, part, rows) for row in range(rows) for part in READINGS[way]]
    small = ["temperature", "readability", "line_error", "opening_across", "opening_other"]
    if way == "dry_filler":
        fields.append(ask(said, f"{fill}.filler_density"))
        small.remove("temperature")
    return {"fields": [*fields, way_field], "more": [ask(said, f"{fill}.{name}") for name in small],
            "actions": _reading_actions(fill, rows)}


def _can_be(said: Said, fill: str, way: str) -> bool:
    """Is there what a way of measuring needs?"""
    needs = {"design": said.count("design"), "cast_file": cast_files(said)}
    return way == said.value(f"{fill}.way") or bool(needs.get(way, True))


def _reading(said: Said, fill: str, row: int, part: str, rows: int) -> dict[str, Any]:
    path = f"{fill}.readings.{row}.{part}"
    label = leaf_at(path).label
    return ask(said, path, label if rows == 1 else f"{label}, reading {row + 1}")


def _reading_actions(fill: str, rows: int) -> tuple[dict[str, Any], ...]:
    add = {"label": "Add a reading", "append": f"{fill}.readings", "value": {}}
    remove = ({"label": f"Remove reading {row + 1}", "remove": f"{fill}.readings.{row}"} for row in range(rows))
    return (add, *remove) if rows > 1 else (add,)


def _worked(answer: Answer, fill: str) -> dict[str, Any]:
    room = answer.rooms.get(fill)
    return {"figures": figures_below(answer, fill), "notes": tuple(room.notes) if room else ()}


def _room_told(answer: Answer, fill: str, otherwise: str) -> list[str]:
    room, display = answer.rooms.get(fill), answer.said.display
    if room is None:
        return [otherwise]
    return [show.volume(room.volume, display), f"± {show.plus_minus(room.plus_minus, display)} mL"]


def _profile(said: Said, fill: str) -> Profile:
    """The room's shape where its dimensions are typed, or its file or the design shows it."""
    way = _way(said, fill)
    if way in FROM_FILE:
        return replace(section.UNKNOWN, cut=cut_of(said, fill))
    if way == "design":
        return replace(section.UNKNOWN, cut=design_cut(said, fill))
    if way != "dimensions":
        return section.UNKNOWN
    values = [said.value(f"{fill}.{name}") for name in _PROFILES[said.value(f"{fill}.solid") or "cylinder"]]
    return section.UNKNOWN if None in values else Profile(*values, to_scale=True)
