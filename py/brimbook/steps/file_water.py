"""Water on the scale beside what the file tells: how far they are apart, and what that may mean."""

import math

from brimbook.figure import Figure
from brimbook.mesh.units import MILLIMETERS
from brimbook.quantity import show
from brimbook.record.leaves.file import UNITS
from brimbook.record.said import Said
from brimbook.steps.model_file import Modeled, has_line

# Volumes that are nearer than this to what another unit would give point to that unit; and so far apart is no matter of layers [–].
_NEAR, _FAR = 0.15, 0.08
# A print is seldom smaller or larger than so.
_LEAST_SCALE, _MOST_SCALE = 0.25, 4.0


def against_water(said: Said, place: str, found: Modeled, plus_minus: float, water: tuple[float, float], uses: tuple[str, ...]) -> Figure:
    """How much more water a fill takes than its file tells, and what that may mean [figure].

    said: the record as understood [said].
    place: path of the fill [text].
    found: the model of the fill [model].
    plus_minus: of the file's volume [mL].
    water: volume that the water tells, and its ± [mL].
    uses: keys of the figures that tell the water [texts].
    """
    volume, off = water
    ratio = volume / found.volume
    both = ratio * math.hypot(off / volume, plus_minus / found.volume)
    told = show.significant
    shown = f"{show.percent(abs(ratio - 1), said.display)} {'less' if ratio < 1 else 'more'}"
    return Figure(
        f"{place}.file.difference", "Water, beside the file", ratio - 1, "–", shown, formula="(water ÷ file − 1) × 100",
        numbers=f"({told(volume, 8, said.display)} ÷ {told(found.volume, 8, said.display)} − 1) × 100",
        worked=f"{told((ratio - 1) * 100, 4, said.display)} %", plus_minus=both, plus_minus_shown=f"± {show.plus_minus(both * 100, said.display)} %",
        says=f"The water comes to {show.volume(volume, said.display)}, {shown} than the file tells",
        uses=(*uses, f"{place}.volume"), spread="± of the water and of the file, as shares, added as squares.",
        notes=(_meaning(said, place, found, ratio, both), *_of_line(said, place, found, volume)))


def _meaning(said: Said, place: str, found: Modeled, ratio: float, both: float) -> str:
    if abs(ratio - 1) <= both:
        return "Water and file agree within their ±."
    unit = _unit_meant(said, found, ratio)
    if unit:
        return f"Water and file differ as if the file were drawn in {unit.lower()}: check what it is drawn in."
    scale = ratio ** (1 / 3)
    if abs(ratio - 1) > _FAR and _LEAST_SCALE < scale < _MOST_SCALE:
        as_printed = show.percent(scale * (said.value(f"{found.file}.file.scale") or 1.0), said.display)
        return f"Water and file are far apart: a print at {as_printed} would hold so much. Check the printed scale, the line, and what the file shows."
    if ratio < 1:
        return "The water finds less than the file: layer lines and shrinkage, a line held lower, or air caught under an edge."
    return "The water finds more than the file: a leak, a mold that bulges, a line held higher, or water drunk by the wall."


def _unit_meant(said: Said, found: Modeled, ratio: float) -> str:
    present = said.value(f"{found.file}.file.unit")
    near = ((abs(math.log(ratio * (MILLIMETERS[present] / MILLIMETERS[each.value]) ** 3)), each.label) for each in UNITS if each.value != present)
    off, label = min(near)
    return label if off < _NEAR else ""


def _of_line(said: Said, place: str, found: Modeled, volume: float) -> list[str]:
    """What the difference is worth at the fill line."""
    if not has_line(said, place, found.file) or found.area <= 0:
        return []
    height = abs(volume - found.volume) * 1000 / found.area
    if height > found.line - found.levels[0].height:
        return []
    return [f"The difference is as much as {show.length(height, said.display)} of the fill line."]
