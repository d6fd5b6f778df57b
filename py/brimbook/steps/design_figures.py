"""What a design comes to: its cast and room, surfaces, weights."""

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.shape.shell import Shell
from brimbook.steps.blending import Blend
from brimbook.steps.brim import brim_notes
from brimbook.steps.densities import TOLD_STATE
from brimbook.steps.design import PLACE, Design, area_constant, put_volume

_SIMPSON = "(area below + 4 × area half way + area above) ÷ 6 × height"
# A cast wall below this is hard to fill and breaks easily [mm].
_THIN = 5.0
_UPRIGHT = 1.0


def design_figures(said: Said, found: Design) -> list[Figure]:
    """How much a design holds and takes, and its surfaces [figures].

    said: the record as understood [said].
    found: the design [design].
    """
    body = found.body
    outside = _volume(said, found, "outside", "Outside, as if solid", body.outside, body.height)
    brim = _volume(said, found, "room_to_brim", "Room to the brim", body.room, body.height)
    room = _volume(said, found, "room", "Room for wax", body.room, found.line)
    cast = Figure(
        f"{PLACE}.cast", "Mix in the cast", body.cast, "mL", show.volume(body.cast, said.display), "outside − room to the brim",
        f"{_put(said, outside.value)} − {_put(said, brim.value)}", worked=f"{show.significant(body.cast, 6, said.display)} mL",
        uses=(outside.key, brim.key), notes=_notes(said, found))
    surfaces = [_surface(said, "skin", "Surface of the whole cast", body.skin),
                _surface(said, "wet", "Surface under the wax", body.wet(found.line))]
    least = [_least(said, found)] if body.least_wall < found.wall * (1 - 1e-6) else []
    return [outside, brim, room, cast, *surfaces, *least]


def _put(said: Said, number: float) -> str:
    return show.significant(number, 10, said.display)


def _volume(said: Said, found: Design, name: str, label: str, shell: Shell, high: float) -> Figure:
    value = found.room if name == "room" else found.body.room_to(high) if name == "room_to_brim" else (
        found.body.cast + found.body.room_to(high))
    told = f", {show.length(found.below, said.display)} below the brim" if name == "room" and found.below else ""
    return Figure(f"{PLACE}.{name}", label, value, "mL", show.volume(value, said.display), _SIMPSON, put_volume(said, shell, high),
                  says=f"{label}{told}: {show.volume(value, said.display)}", worked=f"{show.significant(value, 6, said.display)} mL",
                  constants=(area_constant(found), Constant("Simpson's rule", "exact where the sides are straight or round",
                                                            sources.GEOMETRY)),
                  spread="Areas in mm², heights in mm; cut where a corner or a side ends.")


def _surface(said: Said, name: str, label: str, value: float) -> Figure:
    return Figure(f"{PLACE}.{name}", label, value / 100, "cm²", show_more.area(value, said.display), "all its faces, added up",
                  f"{_put(said, value)} ÷ 100", worked=f"{show.significant(value / 100, 6, said.display)} cm²",
                  constants=(Constant("Faces", "length around × slant height; for a bowl, 2 × π × radius × height", sources.GEOMETRY),))


def _least(said: Said, found: Design) -> Figure:
    value = found.body.least_wall
    return Figure(
        f"{PLACE}.least_wall", "Thinnest wall", value, "mm", show.length(value, said.display),
        "least distance of two ovals, the inner one's half axes shorter by the wall", show.significant(value, 6, said.display),
        says=f"Between the ends of an oval the wall goes down to {show.length(value, said.display)}",
        worked=f"{show.significant(value, 6, said.display)} mm",
        constants=(Constant("Inner oval", "not parallel to the outer one", sources.GEOMETRY),))


def design_weights(said: Said, cast: Figure, room: Figure, fresh: Figure | None, blend: Blend | None) -> list[Figure]:
    """What the cast and its filling weigh, as far as mix and wax are known [figures].

    said: the record as understood [said].
    cast: the mix in it [figure].
    room: for wax [figure].
    fresh: what one mL of the first cast's fresh mix weighs, where it is known [figure].
    blend: of the first well's pot, where it is known [blend].
    """
    figures, told = [], show.significant
    if fresh is not None:
        grams = cast.value * fresh.value
        figures.append(Figure(
            f"{PLACE}.weight", "The cast, fresh", grams, "g", show.mass(grams, said.display), "mix in the cast × what one mL of it weighs",
            f"{_put(said, cast.value)} × {_put(said, fresh.value)}", worked=f"{told(grams, 5, said.display)} g",
            says=f"The cast weighs {show.mass(grams, said.display)} as poured", uses=(cast.key, fresh.key),
            spread="As it dries it gets lighter by the water that it does not bind."))
    if blend is not None:
        grams = room.value / blend.per_gram * blend.mass
        figures.append(Figure(
            f"{PLACE}.filling", "Filling", grams, "g", show.mass(grams, said.display),
            "room for wax ÷ blend from one gram of wax × (1 + fragrance load of the wax + dye)",
            f"{_put(said, room.value)} ÷ {_put(said, blend.per_gram)} × (1 + {_put(said, blend.load)} + {_put(said, blend.dye)})",
            says=f"It takes {show.mass(grams, said.display)} of wax, fragrance and dye, {TOLD_STATE[blend.basis]}",
            worked=f"{told(grams, 5, said.display)} g", uses=(room.key, f"{blend.place}.blend_per_gram")))
    return figures


def _notes(said: Said, found: Design) -> tuple[str, ...]:
    notes = []
    if min(found.body.least_wall, found.floor) < _THIN:
        notes.append(f"Cast walls and floors under {show.length(_THIN, said.display)} are hard to fill and break easily "
                     "(common practice, no source).")
    notes += brim_notes(said, found.below)
    lean = found.sizes.get("lean")
    if lean is not None and lean < _UPRIGHT:
        notes.append("An upright wall grips its mold and its core: lean it by 1 to 3 degrees, or wax the mold well "
                     "(common practice, no source).")
    if found.shape == "tapered" and found.sizes["bottom"] > found.sizes["across"]:
        notes.append("It is narrower at the rim than below: a core in one piece won't come out.")
    return tuple(notes)
