"""A wanted weight for a well that was measured: the height to the line, or how much higher or lower the line goes."""

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.shape import solid as solids
from brimbook.steps.design import written
from brimbook.steps.target_way import Found, Way, Wish, factor_for

_ESTIMATE = "An estimate: as if the wall stood upright between the two lines."


def by_dimensions(said: Said, wish: Wish) -> Found:
    """The height to the line for what is wanted, the wall going on as it leans [found].

    said: the record as understood [said].
    wish: what is wanted [wish].
    """
    fill = f"{wish.place}.fill"
    kind = said.value(f"{fill}.solid")
    sizes = {} if kind is None else {name: said.value(f"{fill}.{name}") for name in solids.SOLIDS[kind].dimensions}
    if kind is None or None in sizes.values():
        return Found(against="Once the well is measured.")

    def room(factor: float) -> float | None:
        changed = _higher(kind, sizes, factor)
        return None if changed.get("top_diameter", 1.0) <= 0 else solids.SOLIDS[kind].volume(**changed)

    factor = factor_for(room, wish.volume)
    if factor is None:
        return Found(against="No line in this well has that much below it.")
    changed, told = _higher(kind, sizes, factor), show.significant
    height, shown = changed["height"], show.length(changed["height"], said.display)
    figure = Figure(
        f"{wish.place}.target.height", "Height to the line", height, "mm", shown, "height at which the room is what is wanted",
        told(height, 6, said.display), says=f"The line lies {shown} above the floor", worked=f"{told(height, 6, said.display)} mm",
        uses=(wish.key,), constants=(Constant("Formula", "of the solid, its wall going on as it leans", sources.GEOMETRY),))
    sets = {f"{fill}.{name}": written(changed[name], said) for name in ("height", "top_diameter") if name in changed}
    return Found((Way("The line", f"{shown} above the floor", "", figure.says, sets),), (figure,))


def _higher(kind: str, sizes: dict[str, float], factor: float) -> dict[str, float]:
    """The room up to another line."""
    changed = {**sizes, "height": sizes["height"] * factor}
    if kind == "tapered":
        changed["top_diameter"] = sizes["bottom_diameter"] + (sizes["top_diameter"] - sizes["bottom_diameter"]) * factor
    return changed


def by_opening(said: Said, wish: Wish) -> Found:
    """How much higher or lower the line goes, by the opening where the water stopped [found].

    said: the record as understood [said].
    wish: what is wanted [wish].
    """
    fill = f"{wish.place}.fill"
    room, across, other = wish.rooms.get(fill), said.value(f"{fill}.opening_across"), said.value(f"{fill}.opening_other")
    if room is None:
        return Found(against="Once the well is measured.")
    if across is None or (other is None and said.typed(f"{fill}.opening_other")):
        return Found(against="Type on the card of the well how wide its opening is.")
    area, told = solids.opening_area(across, other), show.significant
    change = (wish.volume - room.volume) * 1000 / area
    word, more, less = ("higher", wish.volume, room.volume) if change >= 0 else ("lower", room.volume, wish.volume)
    shown = show.length(abs(change), said.display)
    figure = Figure(
        f"{wish.place}.target.change", f"Line {word}", abs(change), "mm", shown, "difference of the volumes × 1000 ÷ area of the opening",
        f"({told(more, 9, said.display)} − {told(less, 9, said.display)}) × 1000 ÷ {told(area, 9, said.display)}",
        says=f"The line goes {shown} {word}", worked=f"{told(abs(change), 4, said.display)} mm", uses=(wish.key, f"{fill}.volume"),
        constants=(Constant("Area of the opening", f"{told(area / 100, 5, said.display)} cm²", sources.YOURS),), spread=_ESTIMATE)
    return Found((), (figure,))
