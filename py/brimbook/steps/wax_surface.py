"""The outline of the wax surface: as typed, else as the well was measured."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.record.leaf import Choice
from brimbook.record.leaves.wicks import OUTLINES
from brimbook.record.said import Said
from brimbook.shape import outline as outlines
from brimbook.shape.outline import Outline, OutlineError
from brimbook.steps.design import surface_at_line, written
from brimbook.steps.file_outline import outline_at
from brimbook.steps.model_file import modeled
from brimbook.steps.photo import Photographed, how_sure, photographed

# What each shape is told by, and the entry that is at fault where it can't be.
SIZES = {"round": ("across",), "oval": ("across", "other"), "rectangle": ("across", "other", "corner"),
         "polygon": ("across", "sides"), "path": ("path",), "file": (), "photo": ()}
_AT_FAULT = {"rectangle": "corner", "polygon": "sides", "path": "path"}
# As a well was measured by its dimensions: its shape from above, and the entries of its fill that tell it.
_BY_DIMENSIONS = {"cylinder": ("round", ("diameter",)), "tapered": ("round", ("top_diameter",)),
                  "box": ("rectangle", ("length", "width"))}


@dataclass(frozen=True)
class Surface:
    """The wax from above: its outline, its shape, the sizes that tell it [mm], whether they are those of the well, and its photo."""

    outline: Outline
    shape: str
    sizes: tuple[float, ...]
    from_well: bool
    photo: Photographed | None = None


def stand_ins(said: Said, place: str) -> dict[str, str]:
    """Shape and sizes of the surface as the well was measured, by leaf; empty where nothing tells them [texts].

    said: the record as understood [said].
    place: path of the well [text].
    """
    fill = f"{place}.fill"
    if said.value(f"{fill}.way") == "design":
        return _designed(said)
    if outline_in_file(said, place) is not None:
        return {"shape": "file"}
    if said.value(f"{fill}.way") == "dimensions":
        shape, names = _BY_DIMENSIONS[said.value(f"{fill}.solid") or "cylinder"]
    else:
        names = ("opening_across", "opening_other") if said.typed(f"{fill}.opening_other") else ("opening_across",)
        shape = "oval" if len(names) == 2 else "round"
    texts = [said.canonical.get(f"{fill}.{name}", "") if said.value(f"{fill}.{name}") is not None else "" for name in names]
    return {"shape": shape, **dict(zip(("across", "other"), texts))} if all(texts) else {}


def outline_in_file(said: Said, place: str) -> Outline | None:
    """The surface as the file of the well shows it at the line; none where no file does [outline].

    said: the record as understood [said].
    place: path of the well [text].
    """
    found = modeled(said, f"{place}.fill")
    return outline_at(found, found.line) if found is not None else None


def shapes(said: Said, place: str) -> list[Choice]:
    """The shapes that a surface can be told to have; that of its file only where there is one [choices].

    said: the record as understood [said].
    place: path of the well [text].
    """
    known = shape_of(said, place) == "file" or outline_in_file(said, place) is not None
    return [each for each in OUTLINES if known or each.value != "file"]


def shape_of(said: Said, place: str) -> str:
    """The shape of the surface [text].

    said: the record as understood [said].
    place: path of the well [text].
    """
    path = f"{place}.outline.shape"
    return said.value(path) if said.typed(path) and said.value(path) else stand_ins(said, place).get("shape", "round")


def usual_size(said: Said, place: str, name: str) -> str:
    """What stands in for a size that is not typed, where the well tells it [text].

    said: the record as understood [said].
    place: path of the well [text].
    name: across or other [text].
    """
    known = stand_ins(said, place)
    return known.get(name, "") if known.get("shape") == shape_of(said, place) else ""


def surface(said: Said, place: str) -> Surface | None:
    """The wax surface; none while a size of it is missing or faulty [surface].

    said: the record as understood [said].
    place: path of the well [text].
    """
    shape, at = shape_of(said, place), f"{place}.outline"
    if shape == "path" and said.value(f"{place}.fill.way") == "design" and not said.typed(f"{at}.path"):
        known = surface_at_line(said)
        return Surface(known.outline, "path", (), True) if known is not None and known.shape == "path" else None
    if shape == "path":
        return _drawn(said, at)
    if shape == "photo":
        found = photographed(said, place)
        return Surface(found.traced.outline, "photo", (), False, found) if found is not None else None
    if shape == "file":
        outline = outline_in_file(said, place)
        return None if outline is None else Surface(outline, shape, (), True)
    sizes, borrowed = [], 0
    for name in SIZES[shape]:
        value = said.value(f"{at}.{name}")
        if not said.typed(f"{at}.{name}") and usual_size(said, place, name):
            value, borrowed = _in_well(said, place, name), borrowed + 1
        if value is None:
            return None
        sizes.append(value)
    try:
        return Surface(_outline(shape, sizes), shape, tuple(sizes), borrowed > 0)
    except OutlineError as error:
        said.fault(f"{at}.{_AT_FAULT[shape]}", str(error))
        return None


def _designed(said: Said) -> dict[str, str]:
    """Shape and sizes of the wax in the vessel that is designed."""
    known = surface_at_line(said)
    if known is None:
        return {}
    sizes = {name: written(size, said) for name, size in zip(SIZES[known.shape], known.sizes)}
    return {"shape": known.shape, **sizes, **({"sides": f"{known.sizes[1]:.0f}"} if known.shape == "polygon" else {})}


def _in_well(said: Said, place: str, name: str) -> float | None:
    fill = f"{place}.fill"
    if said.value(f"{fill}.way") == "design":
        known = surface_at_line(said)
        return dict(zip(SIZES[known.shape], known.sizes))[name]
    if said.value(f"{fill}.way") == "dimensions":
        names = _BY_DIMENSIONS[said.value(f"{fill}.solid") or "cylinder"][1]
    else:
        names = ("opening_across", "opening_other")
    return said.value(f"{fill}.{names[0 if name == 'across' else 1]}")


def _drawn(said: Said, at: str) -> Surface | None:
    text = said.text(f"{at}.path").strip()
    if not text or said.fault_at(f"{at}.path"):
        return None
    try:
        return Surface(outlines.path(text), "path", (), False)
    except OutlineError as error:
        said.fault(f"{at}.path", str(error))
        return None


def _outline(shape: str, sizes: list[float]) -> Outline:
    if shape == "round":
        return outlines.circle(*sizes)
    if shape == "oval":
        return outlines.oval(*sizes)
    return outlines.rounded_rectangle(*sizes) if shape == "rectangle" else outlines.regular_polygon(sizes[0], int(sizes[1]))


def area_figure(said: Said, key: str, found: Surface) -> Figure:
    """How large the surface is [figure].

    said: the record as understood [said].
    key: of the figure [text].
    found: the surface [surface].
    """
    value, formula, numbers = _area(said, found)
    notes = (_whose(said, f"{key.partition('.wicks.')[0]}.fill", found.shape),) if found.from_well else ()
    return Figure(key, "Surface of the wax", value / 100, "cm²", show_more.area(value, said.display), formula=formula,
                  numbers=numbers, worked=f"{show.significant(value / 100, 6, said.display)} cm²", notes=notes,
                  **(how_sure(said, key.partition(".wicks.")[0], found.photo) if found.photo is not None else
                     {"constants": (Constant("Formula", "lengths in mm, ÷ 100 for cm²", sources.GEOMETRY),)}))


def _whose(said: Said, fill: str, shape: str) -> str:
    if shape == "file":
        return "The outline is that of its file at the fill line."
    if said.value(f"{fill}.way") == "design":
        return "The size is that of the design at its line."
    return "The size is that of the well, as you measured it."


def _area(said: Said, found: Surface) -> tuple[float, str, str]:
    told = [show.significant(each, 8, said.display) for each in found.sizes]
    if found.shape in ("round", "oval"):
        across, other = (told * 2)[:2]
        return (math.pi * found.sizes[0] * found.sizes[-1] / 4, "π × across × the other way ÷ 4",
                f"π × {across} × {other} ÷ 4 ÷ 100")
    if found.shape == "rectangle":
        value = found.sizes[0] * found.sizes[1] - (4 - math.pi) * found.sizes[2] ** 2
        return value, "across × the other way − (4 − π) × corner²", f"({told[0]} × {told[1]} − (4 − π) × {told[2]}²) ÷ 100"
    value = outlines.area(found.outline)
    return value, "area within its corners", f"{show.significant(value, 8, said.display)} ÷ 100"
