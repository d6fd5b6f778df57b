"""What a maker should know about a file: what is wrong with its surface, what is in doubt, what will be hard to cast."""

from brimbook.mesh.model import Draft, Gap
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.steps.brim import brim_notes
from brimbook.steps.model_file import Modeled, rooms_taken

# Common practice, no source: walls thinner than this break [mm]; walls that lean less stick in a stiff mold [°].
_THIN, _STEEP = 3.0, 1.0
# A smaller share of the walls is an edge or a rounding.
_SOME = 0.02
# Common practice, no source: the longest side of a small vessel or its mold is seldom beyond these [mm].
_SMALL, _LARGE = 20.0, 400.0


def file_notes(said: Said, place: str, found: Modeled) -> list[str]:
    """What to know about a fill's file, as sentences [texts].

    said: the record as understood [said].
    place: path of the fill [text].
    found: the model of the fill [model].
    """
    told = [*_to_the_brim(said, place, found), *_twice(said, place, found)]
    if place != found.file:
        return told
    return [*told, *_surface(said, found), *_bodies(found), *_doubts(said, found), *_castable(said, place, found), *_left_over(said, place, found),
            *found.model.notes]


def _to_the_brim(said: Said, place: str, found: Modeled) -> list[str]:
    """A room drawn to its brim; a space for wax is drawn to where the wax ends."""
    if not place.startswith("wells.") or found.holds == "wax":
        return []
    return brim_notes(said, found.levels[-1].height - found.line)


def _twice(said: Said, place: str, found: Modeled) -> list[str]:
    """Wells that name the same room of the same piece."""
    wells = _filled_from(said, found.file) if place.startswith("wells.") and place != found.file else {}
    others = [well for well, rooms in wells.items() if well != place and rooms == wells.get(place)]
    return [f"Well {int(others[0].split('.')[1]) + 1} is filled from the same room. Choose another of its rooms."] if others else []


def _left_over(said: Said, place: str, found: Modeled) -> list[str]:
    """Rooms of a piece that no well here is filled from."""
    wells = _filled_from(said, place) if place.startswith("casts.") and not found.rooms else {}
    count, used = len(found.model.rooms), len(set(wells.values()))
    if not wells or used >= count:
        return []
    return [f"The piece has {count} rooms, and wells here are filled from {used} of them. Below, add a well for each of the others, measured from the "
            "file of the cast."]


def _filled_from(said: Said, file: str) -> dict[str, int]:
    """The room of a file that each well is filled from."""
    return {fill: room for fill, (cavity, room) in rooms_taken(said).items() if cavity == file}


def _surface(said: Said, found: Modeled) -> list[str]:
    """Holes, and triangles that face the wrong way."""
    model, notes = found.model, []
    if model.open_edges:
        count = len(model.gaps)
        holes = "is open" if not count else "has a hole" if count == 1 else f"has {count} holes"
        largest = "" if not count else f", {'the largest ' if count > 1 else ''}{_where(said, model.gaps[0])}"
        notes.append(f"The surface {holes}{largest}. The volume may be wrong: mend the drawing.")
    if model.turned:
        one = model.turned == 1
        notes.append(f"{model.turned} triangle{' faces' if one else 's face'} the wrong way, or meet{'s' if one else ''} others at an edge of more "
                     "than two. The volume may be wrong: mend the drawing.")
    return notes


def _where(said: Said, gap: Gap) -> str:
    left, front, height, around = (show.length(each, said.display) for each in (gap.left, gap.front, gap.height, gap.around))
    return f"near {left} from the left, {front} from the front, {height} above the bottom, {around} around"


def _bodies(found: Modeled) -> list[str]:
    model, notes = found.model, []
    if model.crossing:
        notes.append("Bodies in the file overlap: where they do, the volume is counted twice. Join them in the drawing.")
    if model.bodies > 1 and not found.rooms:
        notes.append(f"The file holds {model.bodies} bodies. All are counted.")
    if model.hollows:
        hollows = "a closed hollow" if model.hollows == 1 else f"{model.hollows} closed hollows"
        notes.append(f"The file has {hollows} inside, left out of the volume. No mold makes a closed hollow: check the drawing.")
    return notes


def _doubts(said: Said, found: Modeled) -> list[str]:
    """The unit, and the scale of the print."""
    notes, scale, unit = [], said.value(f"{found.file}.file.scale"), said.value(f"{found.file}.file.unit")
    high = show.length(found.model.size[2], said.display)
    if not found.sure:
        notes.append(f"The file doesn't say its unit: it is {high} high if drawn in {_UNIT_WORDS[unit]}. Choose another unit if that is wrong.")
    elif not _SMALL <= max(found.model.size) <= _LARGE:
        size = show_more.size(found.model.size, said.display)
        notes.append(f"So printed it is {size}, which is {'large' if max(found.model.size) > _LARGE else 'small'} for a vessel or its mold. "
                     "Check what it is drawn in, and the printed scale.")
    if scale != 1:
        notes.append(f"Printed at {show.percent(scale, said.display)} of the drawing: {high} high.")
    return notes


_UNIT_WORDS = {"mm": "millimeters", "cm": "centimeters", "m": "meters", "in": "inches", "ft": "feet", "um": "micrometers"}


def _castable(said: Said, place: str, found: Modeled) -> list[str]:
    """Walls of a piece to be cast that are thin, or hard to draw out of a mold."""
    if not place.startswith("casts."):
        return []
    if found.holds == "mold":
        return _drawn_out("room", found.model.inner)
    notes, thinnest = [], found.model.thinnest
    if thinnest is not None and thinnest[0] < _THIN:
        wall, height, least = (show.length(each, said.display) for each in (*thinnest, _THIN))
        notes.append(f"The thinnest wall is {wall}, {height} above the bottom. Thin walls of cement break: {least} or more is common practice, "
                     "no source.")
    return [*notes, *_drawn_out("outside", found.model.outer), *_drawn_out("room", found.model.inner)]


def _drawn_out(what: str, draft: Draft | None) -> list[str]:
    if draft is None:
        return []
    # All of an outside that narrows upward was drawn as it stands, and is cast the other way up.
    if _SOME < draft.overhanging < 1 - _SOME:
        return [f"{round(100 * draft.overhanging)} % of the walls of the {what} hang over: a stiff mold must come apart there, or be soft."]
    if draft.upright > _SOME and draft.least < _STEEP:
        share = "All" if draft.upright > 1 - _SOME else f"{round(100 * draft.upright)} % of the"
        return [f"{share} walls of the {what} stand upright: they may stick in a stiff mold. "
                "A draft of 1° or more is common practice, no source."]
    return []
