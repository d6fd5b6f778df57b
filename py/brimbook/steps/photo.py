"""The wax surface out of a photo: what was marked, the outline at true size, and how sure it is."""

import re
from dataclasses import dataclass, replace
from typing import Any

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.shape.outline import size
from brimbook.shape.path_data import OutlineError, Point
from brimbook.shape.photo import FEWEST, Photo, Ruler, Sheet, Traced, area_off, traced
from brimbook.steps.weighing import practice_or_yours

# Longer and shorter side [mm].
SHEETS = {"a4": (297.0, 210.0), "letter": (279.4, 215.9)}
# How many marks the sheet or the ruler takes.
KNOWN = {"sheet": 4, "ruler": 2}
_MARK = re.compile(r"(\d{1,4}),(\d{1,4})")
_SIZE = re.compile(r"(\d{1,5}) (\d{1,5})")
# A photo is at least so many pixels wide and high, and one way at most so many times the other.
_LEAST, _LONGEST = 50, 4
# A ± of more than this share of the area is told as rough.
_ROUGH = 0.08
_THROUGH = Constant("From the photo to the table", "by four corners, or by two ends of a ruler", sources.PERSPECTIVE)


@dataclass(frozen=True)
class Photographed:
    """The rim at true size, the photo it was traced on, and the ± of its area [mm²]."""

    traced: Traced
    photo: Photo
    off: float


def known_marks(said: Said, at: str) -> int:
    """How many marks come before those of the rim [count].

    said: the record as understood [said].
    at: path of the photo [text].
    """
    return KNOWN[said.value(f"{at}.by") or "sheet"]


def size_of(said: Said, at: str) -> tuple[int, int] | None:
    """The photo's pixels, across and down; none while no photo was chosen [counts].

    said: the record as understood [said].
    at: path of the photo [text].
    """
    found = _SIZE.fullmatch(said.text(f"{at}.size").strip())
    wide, high = (int(found[1]), int(found[2])) if found else (0, 0)
    return (wide, high) if _LEAST <= min(wide, high) and max(wide, high) <= _LONGEST * min(wide, high) else None


def marks_of(said: Said, at: str) -> list[tuple[int, int]] | None:
    """All marks in order; none where they can't be read [thousandths of the photo's width].

    said: the record as understood [said].
    at: path of the photo [text].
    """
    found = [_MARK.fullmatch(word) for word in said.text(f"{at}.marks").split()]
    return [(int(each[1]), int(each[2])) for each in found] if None not in found else None


def photographed(said: Said, place: str) -> Photographed | None:
    """The wax surface out of a photo; none while marks or sizes are missing or faulty [photographed].

    said: the record as understood [said].
    place: path of the well [text].
    """
    at = f"{place}.outline.photo"
    _check(said, at)
    photo, off = _photo(said, at), said.value(f"{at}.off")
    if photo is None or off is None or said.fault_at(f"{at}.marks"):
        return None
    try:
        found = traced(photo)
        return Photographed(found, photo, area_off(photo, off * 1000))
    except OutlineError as error:
        said.fault(f"{at}.marks", str(error))
        return None


def _check(said: Said, at: str) -> None:
    if said.fault_at(f"{at}.marks") or said.fault_at(f"{at}.size"):
        return
    if marks_of(said, at) is None:
        said.fault(f"{at}.marks", "These marks can't be read. Each is right as 120,85, with a space between two.")
    if said.typed(f"{at}.size") and size_of(said, at) is None:
        said.fault(f"{at}.size", "The photo's pixels are right as 1600 1200, across and down, one at most 4 times the other.")


def _photo(said: Said, at: str) -> Photo | None:
    marks, pixels, by, count = marks_of(said, at), size_of(said, at), sides_of(said, at), known_marks(said, at)
    nearer = _nearer(said, at)
    if by is None or pixels is None or nearer is None or marks is None or len(marks) < count + FEWEST:
        return None
    points: tuple[Point, ...] = tuple((float(x), float(y)) for x, y in marks)
    return Photo(by, points[:count], points[count:], pixels[1] / pixels[0], nearer, said.value(f"{at}.curve") != "straight")


def sides_of(said: Said, at: str) -> Sheet | Ruler | None:
    """The sheet or the ruler; none while its size is missing [sheet or ruler].

    said: the record as understood [said].
    at: path of the photo [text].
    """
    if said.value(f"{at}.by") == "ruler":
        distance = said.value(f"{at}.distance")
        return Ruler(distance) if distance is not None else None
    sides = SHEETS.get(said.value(f"{at}.paper")) or (said.value(f"{at}.wide"), said.value(f"{at}.high"))
    if None in sides:
        return None
    return Sheet(max(sides), min(sides), said.value(f"{at}.lies") == "other")


def _nearer(said: Said, at: str) -> float | None:
    """By which share all on the rim looks too large; none while the camera's height is missing."""
    rim, camera = said.value(f"{at}.rim"), said.value(f"{at}.camera")
    if rim == 0 or rim is None:
        return rim
    if camera is not None and camera <= 2 * rim and not said.fault_at(f"{at}.camera"):
        said.fault(f"{at}.camera", "The camera is at least twice as far above the sheet as the rim. Check both.")
    return rim / camera if camera is not None and camera > 2 * rim else None


def photo_figures(said: Said, place: str) -> list[Figure]:
    """What the photo tells beside the area: size, scale, and what was taken off for a rim nearer to the camera [figures].

    said: the record as understood [said].
    place: path of the well [text].
    """
    at, key = f"{place}.outline.photo", f"{place}.wicks.photo"
    found = photographed(said, place)
    if found is None:
        return []
    wide, high = size(found.traced.outline)
    return [replace(_length(said, f"{key}_wide", "The rim, left to right", wide), notes=_unsure(said, found)), _length(said, f"{key}_high", "The rim, the other way", high),
            _pixel(said, at, f"{key}_scale", found.traced.scale), *_too_large(said, at, f"{key}_nearer", found.photo)]


def _unsure(said: Said, found: Photographed) -> tuple[str, ...]:
    """How to be surer, where the marks tell the area only roughly."""
    share = found.off / found.traced.area
    if share <= _ROUGH:
        return ()
    return (f"These marks tell the area to ± {show.percent(share, said.display, 0)} only. Let sheet and rim lie close together and fill the photo, "
            "and mend the marks of the sheet with the arrows.",)


def _length(said: Said, key: str, label: str, value: float) -> Figure:
    return Figure(key, label, value, "mm", show.length(value, said.display), formula="from edge to edge of the rim as it was traced",
                  numbers=show.significant(value, 8, said.display), worked=f"{show.significant(value, 5, said.display)} mm",
                  constants=(_THROUGH,))


def _pixel(said: Said, at: str, key: str, scale: float) -> Figure:
    wide, _ = size_of(said, at)
    unit = said.display.length_word
    told = f"{show.significant(from_base(scale / wide, unit), 3, said.display)} {unit}"
    return Figure(key, "A pixel of the photo at the rim", scale / wide, "mm", told, formula="width of the photo at the rim ÷ its pixels across",
                  numbers=f"{show.significant(scale, 8, said.display)} ÷ {wide}", worked=f"{show.significant(scale / wide, 5, said.display)} mm")


def _too_large(said: Said, at: str, key: str, photo: Photo) -> list[Figure]:
    if not photo.nearer:
        return []
    rim, camera = (show.significant(said.value(f"{at}.{name}"), 8, said.display) for name in ("rim", "camera"))
    return [Figure(key, "Taken off all lengths, for the rim is nearer", photo.nearer, "–", show.percent(photo.nearer, said.display),
                   formula="rim above the sheet ÷ camera above the sheet", numbers=f"{rim} ÷ {camera} × 100",
                   worked=f"{show.significant(photo.nearer * 100, 5, said.display)} %",
                   constants=(Constant("Formula", "similar triangles", sources.IDENTITY),))]


def how_sure(said: Said, place: str, found: Photographed) -> dict[str, Any]:
    """The ± of the area out of a photo, and how it came about [parts of a figure].

    said: the record as understood [said].
    place: path of the well [text].
    found: its surface [photographed].
    """
    path, count = f"{place}.outline.photo.off", len(found.photo.known) + len(found.photo.rim)
    off = show.percent(said.value(path), said.display, 2)
    spread = (f"Each of {count} marks off by {off} of the photo's width, across and down: the root of the sum of squares of what each does. "
              "The lens is taken to draw straight lines straight" + (", the heights as exact." if found.photo.nearer else "."))
    return {"plus_minus": found.off / 100, "plus_minus_shown": show_more.area_plus_minus(found.off, said.display), "spread": spread,
            "constants": (_THROUGH, practice_or_yours(said, path, "A mark is off by", f"{off} of the photo's width"))}
