"""A wanted weight for a vessel that is designed: the line, the height alone, or all its sizes but wall and floor."""

from dataclasses import replace

from brimbook.figure import Figure
from brimbook.mesh.curve import height_of
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.shape.designed import Designed, DesignError, designed
from brimbook.shape.path_data import OutlineError
from brimbook.steps.design import PLACE, Design, design_of, levels, written
from brimbook.steps.target_way import Found, Way, Wish, cast_told, factor_for, line_figure, too_shallow

# Sizes that are lengths; sides, lean and the text of a path are not.
_LENGTHS = ("across", "other", "bottom", "corner", "foot", "height")


def by_design(said: Said, wish: Wish) -> Found:
    """The line and the sizes for what is wanted [found].

    said: the record as understood [said].
    wish: what is wanted [wish].
    """
    found = design_of(said)
    if found is None:
        return Found(against="Once the design has its sizes.")
    curve = levels(found.body.room, found.body.height)
    height, brim = height_of(curve, wish.volume * 1000), found.body.height
    figures, ways, against = [], [], ""
    if height is None:
        against = f"That is more than comes to the brim, {show.volume(curve[-1].volume / 1000, said.display)}. Make the vessel larger."
    else:
        line, against = line_figure(said, wish, brim, height), too_shallow(said, height - found.body.room.low)
        figures.append(line)
        ways.append(Way("The line", f"{line.shown} below the brim", _weighs(said, wish, found.body), f"{line.says}",
                        {f"{PLACE}.line": written(line.value, said)}))
    for names, what in ((("height",), "The height"), (_LENGTHS, "All sizes, but wall and floor")):
        way = _sized(said, wish, found, names, what)
        if way is not None:
            ways.append(way)
    return Found(tuple(ways), tuple(figures), against)


def _weighs(said: Said, wish: Wish, body: Designed) -> str:
    return cast_told(said, body.cast, wish.fresh)


def _sized(said: Said, wish: Wish, found: Design, names: tuple[str, ...], what: str) -> Way | None:
    """The design with some of its sizes changed alike, so that the room to its line is what is wanted."""
    def room(factor: float) -> float | None:
        changed = resized(found, factor, names)
        if changed is None:
            return None
        return changed.room

    factor = factor_for(room, wish.volume)
    changed = None if factor is None else resized(found, factor, names)
    if changed is None:
        return None
    sizes = {name: changed.sizes[name] for name in names if name in changed.sizes and changed.sizes[name]}
    told = _in_words(said, sizes)
    sets = {f"{PLACE}.{name}": written(size, said) for name, size in sizes.items()}
    if "path" in changed.sizes and len(names) > 1:
        told = f"× {show.significant(factor, 4, said.display)}, {told}"
        sets[f"{PLACE}.path"] = changed.sizes["path"]
    weighs = _weighs(said, wish, changed.body)
    return Way(what, told, weighs, f"{what}: {told}", sets)


def _in_words(said: Said, sizes: dict[str, float]) -> str:
    """Sizes by what they are the sizes of."""
    across = [sizes[name] for name in ("across", "other") if name in sizes]
    told = [f"{show_more.size(across, said.display)} across"] if across else []
    others = (("bottom", "at the bottom"), ("foot", "at the foot"), ("corner", "at the corners"), ("height", "high"))
    return ", ".join([*told, *(f"{show_more.size((sizes[name],), said.display)} {words}" for name, words in others if name in sizes)])


def resized(found: Design, factor: float, names: tuple[str, ...]) -> Design | None:
    """A design with some of its sizes larger or smaller, its wall, floor and line as they are; none where there is none [design].

    found: the design [design].
    factor: new over old [–].
    names: of the sizes; with more than the height a drawn outline is scaled too [texts].
    """
    sizes = {name: size * factor if name in names else size for name, size in found.sizes.items()}
    if "path" in sizes and len(names) > 1:
        sizes["path"] = _scaled_path(found, factor)
    try:
        body = designed(found.shape, sizes, found.wall, found.floor, found.inside)
    except (DesignError, OutlineError):
        return None
    changed = replace(found, sizes=sizes, body=body)
    return changed if changed.line > body.room.low else None


def _scaled_path(found: Design, factor: float) -> str:
    """The corners of a drawn outline, made larger or smaller, as a text."""
    points = found.body.outside.family.points
    return ", ".join(f"{round(x * factor, 3):.7g} {round(y * factor, 3):.7g}" for x, y in points)


def factor_figure(said: Said, wish: Wish, factor: float, spread: str, notes: tuple[str, ...]) -> Figure:
    """By how much all of a model is scaled for what is wanted [figure].

    said: the record as understood [said].
    wish: what is wanted [wish].
    factor: new over old [–].
    spread: what stays, and how it was found [text].
    notes: what else the maker should know of it [texts].
    """
    shown = show.percent(factor, said.display)
    return Figure(f"{wish.place}.target.factor", "Of its present size", factor, "–", shown, "the size at which the room is what is wanted",
                  show.significant(factor * 100, 6, said.display), says=f"Printed at {shown} of its present size",
                  worked=f"{show.significant(factor * 100, 6, said.display)} %", uses=(wish.key,), spread=spread, notes=notes)
