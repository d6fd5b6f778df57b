"""A wanted weight for a vessel measured by its file: the line, or the size at which it is printed."""

from brimbook.figure import Figure
from brimbook.mesh.curve import height_of, volume_at
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.design import written
from brimbook.steps.model_file import Modeled, file_of, has_line, modeled
from brimbook.steps.target_design import factor_figure
from brimbook.steps.target_way import Found, Way, Wish, cast_told, factor_for, line_figure, too_shallow


def by_file(said: Said, wish: Wish) -> Found:
    """The line and the size for what is wanted [found].

    said: the record as understood [said].
    wish: what is wanted [wish].
    """
    fill = f"{wish.place}.fill"
    found = modeled(said, fill)
    if found is None:
        return Found(against="Once the file of the vessel is read.")
    brim, height = found.levels[-1].height, height_of(found.levels, wish.volume * 1000)
    figures, ways, against = [], [], ""
    if height is None:
        against = f"That is more than comes to the brim, {show.volume(found.levels[-1].volume / 1000, said.display)}. Print it larger."
    elif has_line(said, fill, found.file):
        line, against = line_figure(said, wish, brim, height), too_shallow(said, height - found.levels[0].height)
        figures.append(line)
        ways.append(Way("The line", f"{line.shown} below the brim", _cast(said, wish, found, 1.0), line.says,
                        {f"{fill}.file.line": written(line.value, said)}))
    scaled, way = _scaled(said, wish, found)
    return Found((*ways, *way), (*figures, *scaled), against)


def _scaled(said: Said, wish: Wish, found: Modeled) -> tuple[list[Figure], list[Way]]:
    """The whole model larger or smaller; the line stays as far below the brim as it is."""
    brim, below = found.levels[-1].height, found.levels[-1].height - found.line

    def room(factor: float) -> float | None:
        line = brim - below / factor
        return None if line <= found.levels[0].height else volume_at(found.levels, line) * factor**3 / 1000

    factor = factor_for(room, wish.volume)
    if factor is None:
        return [], []
    figure = factor_figure(said, wish, factor, "The line stays as far below the brim as it is. Without a line it is the cube root of the volumes.",
                           _changed_too(said, wish, found))
    scales = {path: said.value(path) for path in _scales(said, wish, found)}
    told = show.percent(scales[f"{found.file}.file.scale"] * factor, said.display)
    thin = f", thinnest wall {show.length(found.model.thinnest[0] * factor, said.display)}" if found.model.thinnest else ""
    return [figure], [Way("All of it, printed at", f"{told}{thin}", _cast(said, wish, found, factor), f"{figure.says}{thin}",
                          {path: f"{round(scale * factor * 100, 2):g} %" for path, scale in scales.items()})]


def _changed_too(said: Said, wish: Wish, found: Modeled) -> tuple[str, ...]:
    """What another size of the print changes besides."""
    fills = (f"wells.{number}.fill" for number in range(said.count("wells")))
    others = [fill for fill in fills if fill != f"{wish.place}.fill" and file_of(said, fill) == found.file]
    told = ("Printed at another size, the other wells of this file change too.",) if others else ()
    is_read = said.value(f"casts.{wish.place.split('.')[1]}.cavity.way") == "file" or found.file.startswith("casts.")
    return told if is_read else (*told, "The mold was not measured by a file: printed at another size, measure it again.")


def _scales(said: Said, wish: Wish, found: Modeled) -> list[str]:
    """The well's own file, and those of the cast that has it: they are one vessel."""
    number = wish.place.split(".")[1]
    others = [f"casts.{number}.cavity", f"{wish.place}.fill"]
    files = dict.fromkeys([found.file, *(each for each in others if said.value(f"{each}.way") == "file")])
    return [f"{each}.file.scale" for each in files if said.value(f"{each}.file.scale") is not None]


def _cast(said: Said, wish: Wish, found: Modeled, factor: float) -> str:
    """What the first cast weighs, where it is measured by a file too."""
    cavity = "casts.0.cavity"
    room = wish.rooms.get(cavity) if said.value(f"{cavity}.way") == "file" else None
    return cast_told(said, None if room is None else room.volume * factor**3, wish.fresh)
