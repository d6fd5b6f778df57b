"""A wanted weight of wax: where the line then lies, or how large the vessel then is."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.measure import Measurement
from brimbook.steps.target_design import by_design
from brimbook.steps.target_file import by_file
from brimbook.steps.target_room import by_dimensions, by_opening
from brimbook.steps.target_way import Way, Wish


@dataclass(frozen=True)
class Target:
    """Ways to a wanted weight, their figures, and what stands against the first of them [text]."""

    ways: tuple[Way, ...]
    figures: tuple[Figure, ...]
    against: str = ""


def target(said: Said, place: str, blend: Blend | None, rooms: dict[str, Measurement], fresh: Figure | None) -> Target | None:
    """Where a wanted weight leads; none while no weight is wanted, or its room can't be told [target].

    said: the record as understood [said].
    place: path of the well [text].
    blend: of the pot that it is filled from [blend].
    rooms: all that were measured, by their places [measurements].
    fresh: what one mL of the first cast's fresh mix weighs, where it is known [figure].
    """
    wanted, of = said.value(f"{place}.want"), said.value(f"{place}.want_of")
    if wanted is None or of is None or blend is None:
        return None
    volume = _volume(said, place, wanted, of, blend)
    wish = Wish(place, volume.value, volume.key, rooms, fresh)
    way = said.value(f"{place}.fill.way")
    found = {"design": by_design, "file": by_file, "cast_file": by_file, "dimensions": by_dimensions}.get(way, by_opening)(said, wish)
    return Target(found.ways, (volume, *found.figures), found.against)


def _volume(said: Said, place: str, wanted: float, of: str, blend: Blend) -> Figure:
    """The room that a wanted weight takes."""
    def put(number: float) -> str:
        return show.significant(number, 8, said.display)

    value, formula, numbers = wanted * blend.per_gram, "wanted wax × blend from one gram of wax", f"{put(wanted)} × {put(blend.per_gram)}"
    if of == "fill":
        value, formula = value / blend.mass, "wanted weight ÷ (1 + fragrance load of the wax + dye) × blend from one gram of wax"
        numbers = f"{put(wanted)} ÷ (1 + {put(blend.load)} + {put(blend.dye)}) × {put(blend.per_gram)}"
    return Figure(f"{place}.target.volume", "Room that it takes", value, "mL", show.volume(value, said.display), formula, numbers,
                  worked=f"{show.significant(value, 6, said.display)} mL", uses=(f"{blend.place}.blend_per_gram",))
