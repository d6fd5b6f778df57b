"""The model that a fill is measured by: read from its file, as large as it is printed, up to its line."""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.mesh import digest, units
from brimbook.mesh.curve import area_at, volume_at
from brimbook.mesh.model import Level, Model
from brimbook.mesh.scaled import scaled
from brimbook.mesh.triangles import ModelError
from brimbook.record.said import Said


@dataclass(frozen=True)
class Modeled:
    """A model in mm, as it is printed, and what of it is filled.

    file: path of the fill that has the file. holds: what the file shows. levels: of what is filled, to its brim.
    rooms: which of its rooms are filled; none where the solid itself is. factor: mm for one unit of the file.
    sure: is it known in which unit the file was drawn?
    line: height of the line above the model's bottom [mm]. volume: below the line [mL]. area: of the surface at the line [mm²].
    """

    file: str
    model: Model
    holds: str
    levels: tuple[Level, ...]
    rooms: tuple[int, ...]
    factor: float
    sure: bool
    line: float
    volume: float
    area: float


def modeled(said: Said, place: str) -> Modeled | None:
    """What a fill's file tells of it; none where it is measured otherwise, or nothing fits [model].

    said: the record as understood [said].
    place: path of the fill [text].
    """
    file = file_of(said, place)
    model = model_of(said, file) if file else None
    if model is None:
        return None
    holds, factor = said.value(f"{file}.file.holds"), factor_of(said, file)
    rooms = _filled(said, place, file, holds, model)
    below = said.value(f"{place}.file.line")
    if rooms is None or below is None or factor is None:
        return None
    levels = _joined([model.rooms[room].levels for room in rooms]) if rooms else model.solid
    line = levels[-1].height - (below if has_line(said, place, file) else 0.0)
    if line <= levels[0].height:
        _fault_once(said, f"{place}.file.line", "The line lies below the floor. Type how far it is below the brim.")
        return None
    volume = volume_at(levels, line) / 1000
    return Modeled(file, model, holds, levels, rooms, factor, is_unit_sure(said, file), line, volume, area_at(levels, line)) if volume > 0 else None


def file_of(said: Said, place: str) -> str:
    """The fill that has the file a fill is measured by: itself, or a cast's; empty where there is none [text].

    said: the record as understood [said].
    place: path of the fill [text].
    """
    way = said.value(f"{place}.way")
    if way != "cast_file":
        return place if way == "file" else ""
    taken = room_taken(said, place)
    return taken[0] if taken else next(iter(cast_files(said)), "")


def cast_files(said: Said) -> list[str]:
    """The cavities that are measured by the file of a piece [texts].

    said: the record as understood [said].
    """
    cavities = [f"casts.{number}.cavity" for number in range(said.count("casts"))]
    return [each for each in cavities if said.value(f"{each}.way") == "file" and said.value(f"{each}.file.holds") in ("piece", "cavity")]


def model_of(said: Said, file: str) -> Model | None:
    """The model of a fill's own file, in mm as it is printed; none while nothing that fits was read [model].

    said: the record as understood [said].
    file: path of the fill that has the file [text].
    """
    reading, factor = said.value(f"{file}.file.reading"), factor_of(said, file)
    if not reading or not reading.strip() or factor is None:
        return None
    try:
        model = _model(reading.strip(), (said.value(f"{file}.file.sections") or "").strip(), factor)
    except ModelError as error:
        _fault_once(said, f"{file}.file.reading", str(error))
        return None
    return model if model.up == said.value(f"{file}.file.up") else None


def is_outdated(said: Said, file: str) -> bool:
    """Was the file read as standing another way than it is now to stand [yes or no]?

    said: the record as understood [said].
    file: path of the fill that has the file [text].
    """
    return bool(said.text(f"{file}.file.reading").strip()) and not said.fault_at(f"{file}.file.reading") and (
        model_of(said, file) is None and not said.is_marked_below(f"{file}.file"))


def is_unit_sure(said: Said, file: str) -> bool:
    """Is it known in which unit the file was drawn [yes or no]?

    said: the record as understood [said].
    file: path of the fill that has the file [text].
    """
    try:
        model = _model(said.text(f"{file}.file.reading").strip(), said.text(f"{file}.file.sections").strip(), 1.0)
    except ModelError:
        return True
    return units.guess(model.size, model.unit)[1]


def factor_of(said: Said, file: str) -> float | None:
    """How long one unit of the file is in the print [mm].

    said: the record as understood [said].
    file: path of the fill that has the file [text].
    """
    unit, scale = said.value(f"{file}.file.unit"), said.value(f"{file}.file.scale")
    return None if unit is None or scale is None else units.MILLIMETERS[unit] * scale


def has_line(said: Said, place: str, file: str) -> bool:
    """Is what the file tells filled up to a line, and not the piece that is cast [yes or no]?

    said: the record as understood [said].
    place: path of the fill [text].
    file: path of the fill that has the file [text].
    """
    return place.startswith("wells.") or said.value(f"{file}.file.holds") == "mold"


@lru_cache(maxsize=64)
def _model(reading: str, sections: str, factor: float) -> Model:
    """A factor of 1 keeps the unit that the file names."""
    model = digest.model(reading, sections)
    return model if factor == 1.0 else scaled(model, factor)


def _fault_once(said: Said, path: str, sentence: str) -> None:
    if not said.fault_at(path):
        said.fault(path, sentence)


def _filled(said: Said, place: str, file: str, holds: str | None, model: Model) -> tuple[int, ...] | None:
    """Which rooms are filled; an empty tuple for the solid itself, and none where there is no such room."""
    if holds is None:
        return None
    is_well = place.startswith("wells.")
    if holds == "wax" or (not is_well and holds != "mold"):
        return ()
    if not model.rooms:
        return None
    if place != file:
        taken = room_taken(said, place)
        return None if taken is None else (taken[1],)
    typed = f"{place}.file.room"
    if said.typed(typed):
        room = said.value(typed)
        if room is not None and room > len(model.rooms):
            _no_such_room(said, typed, len(model.rooms))
            return None
        return None if room is None else (int(room) - 1,)
    return (0,) if is_well else tuple(range(len(model.rooms)))


def _no_such_room(said: Said, path: str, count: int) -> None:
    _fault_once(said, path, f"The file shows {count} room{'s' if count > 1 else ''}.")


def room_taken(said: Said, place: str) -> tuple[str, int] | None:
    """The room of a cast that a well is filled from; none where there is no such room [text and count].

    said: the record as understood [said].
    place: path of the fill of a well that is measured by the file of a cast [text].
    """
    typed = f"{place}.file.room"
    named = said.value(typed) if said.typed(typed) else None
    rooms = rooms_of_casts(said)
    if rooms and named is not None and named > len(rooms):
        _no_such_room(said, typed, len(rooms))
    return rooms_taken(said).get(place)


def rooms_taken(said: Said) -> dict[str, tuple[str, int]]:
    """The room of a cast, by its cavity, that each fill of a well takes: the one it names, else the first that is left [texts and counts].

    said: the record as understood [said].
    """
    rooms = rooms_of_casts(said)
    every = (f"wells.{number}.fill" for number in range(said.count("wells")))
    fills = [fill for fill in every if said.value(f"{fill}.way") == "cast_file"]
    named = {fill: said.value(f"{fill}.file.room") for fill in fills if said.typed(f"{fill}.file.room")}
    taken = {fill: rooms[int(room) - 1] for fill, room in named.items() if room is not None and room <= len(rooms)}
    left = [each for number, each in enumerate(rooms, 1) if number not in named.values()]
    return {**taken, **dict(zip((fill for fill in fills if fill not in named), left))}


def rooms_of_casts(said: Said) -> list[tuple[str, int]]:
    """The rooms of all pieces, each by the cavity whose file shows it: all of the first one's, then the next one's [texts and counts].

    said: the record as understood [said].
    """
    models = ((cavity, model_of(said, cavity)) for cavity in cast_files(said))
    return [(cavity, number) for cavity, model in models if model is not None for number in range(len(model.rooms))]


def _joined(curves: list[tuple[Level, ...]]) -> tuple[Level, ...]:
    """The levels of several rooms that are filled together."""
    if len(curves) == 1:
        return curves[0]
    heights = sorted({level.height for levels in curves for level in levels})
    return tuple(Level(height, math.fsum(volume_at(levels, height) for levels in curves),
                       math.fsum(_sides(levels, height)[0] for levels in curves),
                       math.fsum(_sides(levels, height)[1] for levels in curves)) for height in heights)


def _sides(levels: tuple[Level, ...], height: float) -> tuple[float, float]:
    """The areas just below and just above a height."""
    known = next((level for level in levels if level.height == height), None)
    return (known.below, known.above) if known else (area_at(levels, height),) * 2
