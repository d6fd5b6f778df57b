"""The first step, for a cavity and for a well: from the fill's readings to a volume with its ±."""

from dataclasses import dataclass, field

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.fill import readings, water
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.shape import solid as solids
from brimbook.steps.design import fill_figure
from brimbook.steps.file_fill import from_file
from brimbook.steps.file_notes import file_notes
from brimbook.steps.file_water import against_water
from brimbook.steps.model_file import Modeled, has_line, modeled

# What one reading of each way is made of: the weight itself, or the larger and the smaller.
READINGS = {
    "on_scale": ("water",),
    "full_minus_empty": ("full", "empty"),
    "jug": ("before", "after"),
    "poured_out": ("water",),
    "dry_filler": ("filler",),
}
# Measured by a file: water may be weighed besides, to compare.
FROM_FILE = ("file", "cast_file")
_SWAPPED = {
    "full_minus_empty": "Full weighs no more than empty. Were the two swapped?",
    "jug": "The jug weighs no less after filling than before. Were the two swapped?",
}


@dataclass
class Measurement:
    """A measured room: its volume and ± [mL], the water that fills it [g], and that water's mL per g."""

    place: str
    volume: float
    plus_minus: float
    water: float
    milliliters_per_gram: float
    figures: list[Figure] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)

    @property
    def relative(self) -> float:
        """The ± as a share of the volume [–]."""
        return self.plus_minus / self.volume


def measure(said: Said, place: str, porous: bool = False) -> Measurement | None:
    """The room that a fill's readings mean, or nothing while a reading is missing or faulty [measurement].

    said: the record as understood [said].
    place: path of the fill [text].
    porous: can the vessel drink water [yes or no].
    """
    way = said.value(f"{place}.way")
    if way == "dimensions":
        return _by_dimensions(said, place)
    if way in FROM_FILE:
        return _by_file(said, place)
    if way == "design":
        return _by_design(said, place)
    names = ("readability", "line_error") if way == "dry_filler" else ("temperature", "readability", "line_error")
    if way is None or _needed(said, place, *names) is None:
        return None
    nets = _nets(said, place, way)
    if not nets:
        return None
    return _by_filler(said, place, nets) if way == "dry_filler" else _by_water(said, place, way, nets, porous)


def _needed(said: Said, place: str, *names: str) -> list[float] | None:
    values = [said.value(f"{place}.{name}") for name in names]
    return None if None in values else values


def _nets(said: Said, place: str, way: str) -> list[tuple[float, str, int]]:
    """Each reading's weight, how it was come by, and its number; empty while one of them is faulty."""
    nets = []
    for row in range(said.count(f"{place}.readings")):
        paths = [f"{place}.readings.{row}.{part}" for part in READINGS[way]]
        values = [said.value(path) for path in paths]
        if None in values:
            if any(said.typed(path) and said.value(path) is None for path in paths):
                return []
            continue
        if len(values) == 2 and values[0] <= values[1]:
            said.fault(paths[0], _SWAPPED[way])
            return []
        numbers = " − ".join(show.significant(value, 10, said.display) for value in values)
        nets.append((values[0] - sum(values[1:]), numbers, row + 1))
    return nets


def _net_figure(said: Said, place: str, way: str, nets: list[tuple[float, str, int]]) -> Figure:
    values = [value for value, _, _ in nets]
    numbers = nets[0][1]
    if len(nets) > 1:
        numbers = f"({' + '.join(f'({each})' if '−' in each else each for _, each, _ in nets)}) ÷ {len(nets)}"
    label = "Filler" if way == "dry_filler" else "Water"
    parts = {"full_minus_empty": "full − empty", "jug": "jug before − jug after"}.get(way, f"{label.lower()} weighed")
    average = readings.mean(values)
    return Figure(
        f"{place}.weighed", label, average, "g", _finely(average, said), formula=(
            parts if len(nets) == 1 else f"average of {len(nets)} readings of {parts}"), numbers=numbers,
        worked=f"{show.significant(average, 6, said.display)} g")


def _finely(grams: float, said: Said) -> str:
    """An average may be told one digit finer than the scale."""
    unit_shown = show.mass(grams, said.display)
    return f"{show.number(grams, 1, said.display)} g" if said.display.mass == "g" and grams % 1 else unit_shown


def _spread_figure(said: Said, place: str, values: list[float]) -> Figure:
    spread, average = readings.standard_deviation(values), readings.mean(values)
    told = show.significant
    squares = " + ".join(f"({told(value, 10, said.display)} − {told(average, 12, said.display)})²" for value in values)
    return Figure(
        f"{place}.spread", "Spread of the readings", spread, "g", show.small_mass(spread, said.display),
        worked=f"{told(spread, 3, said.display)} g",
        formula="standard deviation of single readings", numbers=f"√(({squares}) ÷ ({len(values)} − 1))",
        says=f"{len(values)} readings, from {show.mass(min(values), said.display)} to "
             f"{show.mass(max(values), said.display)}",
        constants=(Constant("A reading that stands apart", "told of from three readings on", sources.STRAY_READING),))


def _by_water(said: Said, place: str, way: str, nets: list, porous: bool) -> Measurement:
    values = [value for value, _, _ in nets]
    temperature = said.value(f"{place}.temperature")
    per_gram = water.milliliters_per_gram(temperature)
    net = _net_figure(said, place, way, nets)
    scale, spread = _scale_and_spread(said, place, values)
    line, line_told = _line(said, place)
    plus_minus = readings.combine(per_gram * scale, per_gram * spread, line)
    volume = net.value * per_gram
    told = show.temperature(temperature, said.display)
    at = f"at {told}" if said.typed(f"{place}.temperature") else f"at {told}, assumed"
    factor = show.significant(per_gram, 6, said.display)
    figure = Figure(
        f"{place}.volume", "Volume", volume, "mL", show.volume(volume, said.display),
        formula="water weighed × mL of water that shows 1 g on a scale in air",
        numbers=f"{show.significant(net.value, 8, said.display)} × {factor}", plus_minus=plus_minus,
        plus_minus_shown=_plus_minus_shown(plus_minus, said),
        constants=(
            Constant(f"Water {at}: density", show.significant(water.density(temperature), 7, said.display) + " g/mL",
                     sources.WATER_DENSITY),
            Constant(f"Water {at}: mL for 1 g in air", factor, sources.AIR_BUOYANCY), *_spread_constants(values, said)),
        uses=(net.key,), spread=_spread_told(said, place, per_gram * scale, per_gram * spread, len(values), line_told))
    figures = [net, *([_spread_figure(said, place, values)] if len(values) > 1 else []), figure]
    notes = _stray_notes(said, place, nets) + _drink_notes(way, porous)
    return Measurement(place, volume, plus_minus, net.value, per_gram, figures, notes)


def _scale_and_spread(said: Said, place: str, values: list[float]) -> tuple[float, float]:
    return (readings.readability_of_difference(said.value(f"{place}.readability")), readings.spread_of_mean(values))


def _spread_constants(values: list[float], said: Said) -> list[Constant]:
    """What the ± of a weighing takes from outside the record."""
    rounding = Constant("± of two rounded displays", "2 steps ÷ √6", sources.ROUNDING)
    if len(values) == 1:
        return [rounding]
    student = show.significant(readings.student_t(len(values)), 4, said.display)
    return [rounding, Constant(f"Student's t for {len(values)} readings", student, sources.STUDENT)]


def _line(said: Said, place: str) -> tuple[float, str]:
    """The ± of the fill line over the opening's area, and how it is told."""
    across, other = said.value(f"{place}.opening_across"), said.value(f"{place}.opening_other")
    error = said.value(f"{place}.line_error")
    faulty = other is None and said.typed(f"{place}.opening_other")
    if across is None or faulty:
        return 0.0, "the fill line is left out: type how wide the opening is to count it"
    area = solids.opening_area(across, other)
    plus_minus = area * error / 1000
    told = f"the fill line, {show.length(error, said.display)} over an opening of " \
           f"{show.significant(area / 100, 3, said.display)} cm²: {show.plus_minus(plus_minus, said.display)} mL"
    return plus_minus, told


def _spread_told(said: Said, place: str, scale: float, spread: float, count: int, line_told: str) -> str:
    step = show.small_mass(said.value(f"{place}.readability"), said.display, 3)
    parts = [f"the scale's steps of {step}: {show.plus_minus(scale, said.display)} mL"]
    if count > 1:
        parts.append(f"the spread of {count} readings: {show.plus_minus(spread, said.display)} mL")
    return f"± at about 95 %, parts added as squares. From {'; '.join([*parts, line_told])}."


def _plus_minus_shown(plus_minus: float, said: Said) -> str:
    return f"± {show.plus_minus(plus_minus, said.display)} mL"


def _stray_notes(said: Said, place: str, nets: list) -> list[str]:
    values = [value for value, _, _ in nets]
    odd = readings.stray(values, said.value(f"{place}.readability"))
    if odd is None:
        return []
    return [f"Reading {nets[odd][2]}, {show.mass(values[odd], said.display)}, stands apart from the others. It is still "
            f"counted: weigh again, or remove it if you know what went wrong."]


def _drink_notes(way: str, porous: bool) -> list[str]:
    if not porous or way == "dry_filler":
        return []
    if way == "poured_out":
        return ["A film of water stays on the wall and an unsealed vessel drinks some: fill it once, empty it, then fill "
                "it to the line, pour out and weigh."]
    return ["An unsealed vessel drinks water, and what it drinks is counted here as room. Pour the water out and weigh "
            "that instead, or measure after sealing."]


def _by_filler(said: Said, place: str, nets: list) -> Measurement | None:
    density = said.value(f"{place}.filler_density")
    if density is None:
        return None
    values = [value for value, _, _ in nets]
    net = _net_figure(said, place, "dry_filler", nets)
    scale, spread = _scale_and_spread(said, place, values)
    line, line_told = _line(said, place)
    plus_minus = readings.combine(scale / density, spread / density, line)
    volume = net.value / density
    figure = Figure(
        f"{place}.volume", "Volume", volume, "mL", show.volume(volume, said.display),
        formula="filler weighed ÷ weight of one mL of loose filler",
        numbers=f"{show.significant(net.value, 8, said.display)} ÷ {show.significant(density, 6, said.display)}",
        plus_minus=plus_minus, plus_minus_shown=_plus_minus_shown(plus_minus, said),
        constants=(Constant("One mL of loose filler", show.density(density, said.display), sources.YOURS),
                   *_spread_constants(values, said)),
        uses=(net.key,),
        spread=_spread_told(said, place, scale / density, spread / density, len(values), line_told)
        + " How tightly the filler packs is not in it.")
    notes = [*_stray_notes(said, place, nets), "Filler packs tighter when it is tapped: fill the vessel just as you "
             "filled the cup that you weighed."]
    figures = [net, *([_spread_figure(said, place, values)] if len(values) > 1 else []), figure]
    return _with_water(place, volume, plus_minus, figures, notes)


def _with_water(place: str, volume: float, plus_minus: float, figures: list, notes: list) -> Measurement:
    per_gram = water.milliliters_per_gram(water.USUAL_TEMPERATURE)
    return Measurement(place, volume, plus_minus, volume / per_gram, per_gram, figures, notes)


def _by_dimensions(said: Said, place: str) -> Measurement | None:
    kind = said.value(f"{place}.solid")
    if kind is None or _needed(said, place, *solids.SOLIDS[kind].dimensions, "ruler") is None:
        return None
    solid = solids.SOLIDS[kind]
    dimensions = {name: said.value(f"{place}.{name}") for name in solid.dimensions}
    ruler = said.value(f"{place}.ruler")
    volume = solid.volume(**dimensions)
    plus_minus = solids.plus_minus(kind, dimensions, ruler)
    told = {name: show.significant(value, 6, said.display) for name, value in dimensions.items()}
    figure = Figure(
        f"{place}.volume", "Volume", volume, "mL", show.volume(volume, said.display),
        formula=solid.written.format(**{name: name.replace("_", " ") for name in dimensions}),
        numbers=solid.written.format(**told), plus_minus=plus_minus, plus_minus_shown=_plus_minus_shown(plus_minus, said),
        constants=(Constant("Formula", "lengths in mm, ÷ 1000 for mL", sources.GEOMETRY),),
        spread=f"± from each dimension being off by up to {show.length(ruler, said.display)}, added as squares.")
    return _with_water(place, volume, plus_minus, [figure], ["Printed and cast parts differ from the drawing by layer "
                       "lines and shrinkage: a weighing with water beats a ruler."])


def _by_design(said: Said, place: str) -> Measurement | None:
    if place.startswith("wells.") and _needed(said, place, "line_error") is None:
        return None
    found = fill_figure(said, place)
    return found and _with_water(place, found[0].value, found[0].plus_minus, [found[0]], found[1])


def _by_file(said: Said, place: str) -> Measurement | None:
    found = modeled(said, place)
    if found is None or _needed(said, place, "file.off", *(("line_error",) if has_line(said, place, found.file) else ())) is None:
        return None
    plus_minus, figures = from_file(said, place, found)
    compared = _compared(said, place, found, plus_minus)
    return _with_water(place, found.volume, plus_minus, [*figures, *compared], file_notes(said, place, found))


def _compared(said: Said, place: str, found: Modeled, plus_minus: float) -> list[Figure]:
    """What water on the scale tells beside the file, where it was weighed."""
    nets = _nets(said, place, "on_scale")
    if not nets or _needed(said, place, "temperature", "readability") is None:
        return []
    weighed = _by_water(said, place, "on_scale", nets, porous=False)
    net = weighed.figures[:-1]
    return [*net, against_water(said, place, found, plus_minus, (weighed.volume, weighed.plus_minus), (net[0].key,))]
