"""Holding the mold shut: pressure, bolts, seam, heat, and the plastic it is printed in."""

from brimbook import sources
from brimbook.cast import form
from brimbook.cast.recipe import Recipe
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.steps.bolting import Load, bolting
from brimbook.steps.measure import Measurement
from brimbook.steps.mold_heat import mold_heat
from brimbook.steps.print_cost import print_cost

# Taken for the fresh mix while there is no recipe [g/mL].
ASSUMED_DENSITY = 2.2
_SIZES = {("depth", "cylinder"): ("height",), ("depth", "tapered"): ("height",), ("depth", "box"): ("height",),
          ("width", "cylinder"): ("diameter",), ("width", "tapered"): ("top_diameter", "bottom_diameter"),
          ("width", "box"): ("length", "width")}


def clamping(said: Said, place: str, recipe: Recipe | None, cavity: Measurement | None) -> list[Figure]:
    """Every figure of the closed mold [figures].

    said: the record as understood [said].
    place: path of the cast [text].
    recipe: of its mix, where it is known [recipe].
    cavity: as measured, where it is known [measurement].
    """
    at, figures = f"{place}.clamping", []
    density, told_of = _density(said, at, recipe)
    depth, width = (_size(said, at, cavity, name) for name in ("depth", "width"))
    if density is not None and depth is not None:
        figures.append(_pressure(said, at, density, depth, told_of))
        if width is not None:
            push = _push(said, at, density, width, depth, told_of)
            figures += [push, *bolting(said, at, Load(density, width, depth, push))]
    figures += [] if density is None else _uplift(said, at, density, told_of)
    figures += [] if recipe is None else mold_heat(said, place, recipe)
    return [*figures, *print_cost(said, at)]


def measured_size(said: Said, cavity: Measurement | None, name: str) -> str:
    """The path of the cavity's dimension that stands in for the depth or the width of the mix, if there is one [text].

    said: the record as understood [said].
    cavity: as measured, where it is known [measurement].
    name: depth or width [text].

    Of two widths it is the larger.
    """
    if cavity is None or said.value(f"{cavity.place}.way") != "dimensions":
        return ""
    paths = [f"{cavity.place}.{each}" for each in _SIZES[name, said.value(f"{cavity.place}.solid")]]
    return max(paths, key=said.value)


def _size(said: Said, at: str, cavity: Measurement | None, name: str) -> float | None:
    path = f"{at}.{name}"
    return said.value(path) if said.typed(path) else said.value(measured_size(said, cavity, name))


def _density(said: Said, at: str, recipe: Recipe | None) -> tuple[float | None, Constant]:
    """Of the fresh mix, and where it comes from."""
    path = f"{at}.density"
    if said.typed(path):
        value, source = said.value(path), sources.YOURS
    elif recipe is None:
        value, source = ASSUMED_DENSITY, sources.PRACTICE
    else:
        value, source = recipe.density, sources.ABSOLUTE_VOLUME
    name = "Fresh mix, assumed" if source is sources.PRACTICE else "Fresh mix"
    return value, Constant(name, show.density(value or 0.0, said.display), source)


def _pressure(said: Said, at: str, density: float, depth: float, told_of: Constant) -> Figure:
    told, value = show.significant, form.pressure(density, depth)
    shown = show_more.pressure(value, said.display)
    return Figure(
        f"{at}.pressure", "Pressure at the bottom", value, "kPa", shown, formula="density × gravity × depth ÷ 1000",
        numbers=f"{told(density, 8, said.display)} × {told(form.GRAVITY, 8, said.display)} × "
                f"{told(depth, 8, said.display)} ÷ 1000",
        worked=f"{told(value, 5, said.display)} kPa",
        says=f"At the bottom the mix presses with {shown}, as a liquid does",
        constants=(told_of, _gravity(said), Constant("A mix that pours presses", "as a liquid", sources.LIQUID_HEAD)))


def _push(said: Said, at: str, density: float, width: float, depth: float, told_of: Constant) -> Figure:
    told, value = show.significant, form.side_force(density, width, depth)
    height = form.force_height(depth)
    shown = show_more.force(value, said.display)
    return Figure(
        f"{at}.force", "Pushes the halves apart", value, "N", shown,
        formula="half the pressure at the bottom × width at the seam × depth",
        numbers=f"{told(density, 8, said.display)} × {told(form.GRAVITY, 8, said.display)} × "
                f"{told(width, 8, said.display)} × {told(depth, 8, said.display)}² ÷ 2 ÷ 1000 ÷ 1000",
        worked=f"{told(value, 5, said.display)} N",
        says=f"It pushes the halves apart with {shown}, {show.length(height, said.display)} above the bottom",
        constants=(told_of, _gravity(said), Constant("Acts above the bottom", "a third of the depth", sources.HYDROSTATICS)),
        uses=(f"{at}.pressure",))


def _uplift(said: Said, at: str, density: float, told_of: Constant) -> list[Figure]:
    """Where a core stands in the mix: what lifts it."""
    volume, weight = said.value(f"{at}.core_volume"), said.value(f"{at}.core_weight")
    if volume is None or (weight is None and said.typed(f"{at}.core_weight")):
        return []
    told, own = show.significant, weight or 0.0
    value = form.uplift(density, volume, own)
    shown = show_more.force(value, said.display)
    numbers = f"{told(density, 8, said.display)} × {told(volume, 8, said.display)}"
    numbers = f"({numbers} − {told(own, 8, said.display)})" if weight is not None else numbers
    as_weight = show.small_mass(abs(value) / form.GRAVITY * 1000, said.display, 3)
    return [Figure(
        f"{at}.uplift", "Lifts the core", value, "N", shown,
        formula=f"({'density × volume − weight of the core' if weight is not None else 'density × volume'})"
                " × gravity ÷ 1000",
        numbers=f"{numbers} × {told(form.GRAVITY, 8, said.display)} ÷ 1000", worked=f"{told(value, 5, said.display)} N",
        says=f"The core floats up with {shown}: hold it down with more than {as_weight}" if value > 0 else
        "The core stays down: it is heavier than the mix that it displaces",
        constants=(told_of, _gravity(said), Constant("Lift", "weight of the mix displaced", sources.HYDROSTATICS)))]


def _gravity(said: Said) -> Constant:
    return Constant("Gravity", f"{show.significant(form.GRAVITY, 6, said.display)} m/s²", sources.GRAVITY)
