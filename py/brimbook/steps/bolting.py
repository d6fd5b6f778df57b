"""The bolts of a mold: what one of them holds, how far apart they may stand, and so how many it takes."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.cast import bolts, form
from brimbook.cast.bolts import Thread
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.steps.plastic_facts import fact_constant, plastic_fact, plastic_name
from brimbook.steps.weighing import practice_or_yours

# So far apart, or farther, bolts can be reached with a wrench: two washers.
_CLOSE = 2.0
_POUND_INCH = 0.1129848290276167  # N·m

_LOWER = "Near the bottom a bolt carries up to twice the average: set them closer together there."


@dataclass(frozen=True)
class Load:
    """What a seam must hold: density of the mix [g/mL], width and depth [mm], and the figure of the force."""

    density: float
    width: float
    depth: float
    force: Figure


@dataclass(frozen=True)
class _Bolt:
    """A bolt as chosen: its thread, and the washer and the hole under it [mm] with where they come from."""

    name: str
    thread: Thread
    washer: float
    hole: float
    washer_constant: Constant


def bolting(said: Said, at: str, load: Load) -> list[Figure]:
    """The figures of the bolts, as far as the entries go [figures].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    load: what the seam must hold [load].
    """
    bolt = _chosen(said, at)
    if bolt is None:
        return []
    found = [_proof(said, at, bolt), _bearing(said, at, bolt), _spacing(said, at, load, bolt)]
    figures = [figure for figure in found if figure is not None]
    count = _count(said, at, load, found) if None not in found else None
    if count is None:
        return figures
    return [*figures, *count, _torque(said, at, bolt, found[0], found[1])]


def strength_leaf(said: Said, at: str) -> str:
    """The leaf that tells how strong the bolt is: property_class of metric bolts, grade of inch bolts [text].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    """
    thread = bolts.THREADS.get(said.value(f"{at}.thread"))
    return "grade" if thread is not None and thread.standard is bolts.INCH else "property_class"


def washer_usual(said: Said, at: str) -> tuple[str, str]:
    """The texts that are taken for the washer's outside and hole while they are left empty [texts].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    """
    thread = bolts.THREADS.get(said.value(f"{at}.thread"))
    return (f"{thread.washer:.4g} mm", f"{thread.hole:.4g} mm") if thread else ("", "")


def _chosen(said: Said, at: str) -> _Bolt | None:
    name = said.value(f"{at}.thread")
    thread = bolts.THREADS.get(name)
    if thread is None:
        return None
    typed = {leaf: said.typed(f"{at}.{leaf}") for leaf in ("washer_outside", "washer_hole")}
    washer = said.value(f"{at}.washer_outside") if typed["washer_outside"] else thread.washer
    hole = said.value(f"{at}.washer_hole") if typed["washer_hole"] else thread.hole
    if washer is None or hole is None:
        return None
    if typed["washer_hole"] and hole < thread.diameter * 0.99:
        said.fault(f"{at}.washer_hole", f"{thread.label} doesn't go through {show.length(hole, said.display)}. Type a hole of "
                   f"{show.length(thread.diameter, said.display)} or more.")
        return None
    if hole >= washer:
        said.fault(f"{at}.washer_hole" if typed["washer_hole"] else f"{at}.washer_outside",
                   "The hole is as wide as the washer: nothing would bear. Type a smaller hole or a larger washer.")
        return None
    shown = f"{show.length(washer, said.display)} over a hole of {show.length(hole, said.display)}"
    source = sources.YOURS if any(typed.values()) else thread.washer_source
    return _Bolt(name, thread, washer, hole, Constant("Washer", shown, source))


def _proof(said: Said, at: str, bolt: _Bolt) -> Figure | None:
    leaf = strength_leaf(said, at)
    strength = said.value(f"{at}.{leaf}")
    if strength is None:
        return None
    told, standard = show.significant, bolt.thread.standard
    area, stress = bolts.stress_area(bolt.name), standard.proof[strength]
    value = bolts.proof_load(bolt.name, strength)
    return Figure(
        f"{at}.proof", "One bolt holds", value, "N", show_more.force(value, said.display),
        formula="stressed area of the thread × proof stress",
        numbers=f"π ÷ 4 × ({told(bolt.thread.diameter, 8, said.display)} − "
                f"{told(standard.pitches_less, 8, said.display)} × {told(bolt.thread.pitch, 8, said.display)})² × "
                f"{told(stress, 8, said.display)}", worked=f"{told(value, 6, said.display)} N",
        says=f"One {bolt.thread.label} bolt holds {show_more.force(value, said.display)}",
        constants=(Constant(f"Proof stress, {leaf.replace('_', ' ')} {strength}",
                            show_more.stress(stress, said.display), standard.source),
                   Constant(f"Stressed area of {bolt.thread.label}", f"{told(area, 4, said.display)} mm²", standard.source)))


def _bearing(said: Said, at: str, bolt: _Bolt) -> Figure | None:
    stress = plastic_fact(said, at, "bearing")
    if stress is None:
        return None
    told, value = show.significant, form.bearing_force(stress.value, bolt.washer, bolt.hole)
    shown, width = show_more.force(value, said.display), said.value(f"{at}.flange_width")
    over = width is not None and bolt.washer > width
    notes = ("The washer is wider than the flange: take a narrower one, or only what lies on the flange bears.",) if over else ()
    return Figure(
        f"{at}.bearing", "The plastic bears, under one washer", value, "N", shown,
        formula="pressure it may bear × area of the washer without the hole",
        numbers=f"{told(stress.value, 8, said.display)} × π ÷ 4 × ({told(bolt.washer, 8, said.display)}² − "
                f"{told(bolt.hole, 8, said.display)}²)", worked=f"{told(value, 5, said.display)} N",
        says=f"{plastic_name(said, at)} bears about {shown} under one washer", notes=notes,
        constants=(fact_constant(said, "Pressure the plastic may bear", stress), bolt.washer_constant))


def _spacing(said: Said, at: str, load: Load, bolt: _Bolt) -> Figure | None:
    modulus = plastic_fact(said, at, "modulus")
    names = ("flange_width", "flange_thickness", "gap", "seams")
    width, thickness, gap, seams = (said.value(f"{at}.{name}") for name in names)
    if modulus is None or None in (width, thickness, gap, seams):
        return None
    told = show.significant
    pull = form.seam_load(load.density, load.width, load.depth, seams)
    stiffness = form.stiffness_of_flange(modulus.value, width, thickness)
    value = form.spacing_for_opening(pull, gap, stiffness)
    shown, close = show.length(round(value) if value >= 10 else value, said.display), value < _CLOSE * bolt.washer
    note = "The flange is too weak for its bolts to be set so far apart that a wrench fits: make it thicker."
    inertia = f"{told(width, 8, said.display)} × {told(thickness, 8, said.display)}³ ÷ 12"
    return Figure(
        f"{at}.spacing", "Bolts apart, at most", value, "mm", shown,
        formula="fourth root of (opening × 384 × E × I ÷ (2 flanges × pull on 1 mm of seam)); I = width × thickness³ ÷ 12",
        numbers=f"({told(gap, 8, said.display)} × 384 × {told(modulus.value, 8, said.display)} × {inertia} ÷ "
                f"(2 × {told(pull, 8, said.display)})) ^ (1 ÷ 4)", worked=f"{told(value, 5, said.display)} mm",
        says=f"The seam opens less than {show.length(gap, said.display)} with bolts up to {shown} apart",
        constants=(fact_constant(said, "Stiffness E of the plastic", modulus),
                   practice_or_yours(said, f"{at}.gap", "The seam may open by", show.length(gap, said.display)),
                   practice_or_yours(said, f"{at}.flange_thickness", "Thickness of the flange",
                                     show.length(thickness, said.display)),
                   practice_or_yours(said, f"{at}.flange_width", "Width of the flange", show.length(width, said.display)),
                   Constant("Flange between two bolts", "fixed at both", sources.BEAM)),
        uses=(f"{at}.pressure",), notes=(note,) if close else ())


def _count(said: Said, at: str, load: Load, found: list[Figure]) -> list[Figure] | None:
    """Bolts that the force needs in a seam, that the spacing needs, and so how many in all."""
    proof, bearing, spacing = found
    safety, seams = said.value(f"{at}.safety"), said.value(f"{at}.seams")
    if safety is None or seams is None:
        return None
    holds, told = min(proof, bearing, key=lambda figure: figure.value), show.significant
    by_force = load.force.value * safety / (holds.value * seams)
    by_spacing = load.depth / spacing.value + 1
    each = form.bolts_a_seam(by_force, by_spacing)
    needed = Figure(
        f"{at}.by_force", "Bolts a seam, by force", by_force, "pieces", told(by_force, 2, said.display),
        formula="force × safety factor ÷ (what one bolt or its washer holds × seams)",
        numbers=f"{told(load.force.value, 8, said.display)} × {told(safety, 8, said.display)} ÷ "
                f"({told(holds.value, 8, said.display)} × {told(seams, 8, said.display)})",
        worked=told(by_force, 5, said.display),
        says=f"By force, {told(by_force, 2, said.display)} bolts a seam would do: {_weaker(holds, proof)}",
        constants=(practice_or_yours(said, f"{at}.safety", "Safety factor", told(safety, 4, said.display)),),
        uses=(load.force.key, proof.key, bearing.key))
    apart = Figure(
        f"{at}.by_spacing", "Bolts a seam, by spacing", by_spacing, "pieces", told(by_spacing, 2, said.display),
        formula="depth ÷ spacing + 1", worked=told(by_spacing, 5, said.display),
        numbers=f"{told(load.depth, 8, said.display)} ÷ {told(spacing.value, 8, said.display)} + 1",
        says=f"By spacing, {told(by_spacing, 2, said.display)} bolts a seam from end to end", uses=(spacing.key,))
    total = int(seams) * each
    reason = _reason(each, by_force, by_spacing)
    return [needed, apart, Figure(
        f"{at}.bolts", "Bolts", float(total), "pieces", str(total),
        formula=f"seams × the most of {form.LEAST_BOLTS}, bolts by force and bolts by spacing, rounded up",
        numbers=f"{told(seams, 8, said.display)} × {each}", says=f"{total} bolts, {each} a seam: {reason}",
        constants=(Constant("Least in a seam", str(form.LEAST_BOLTS), sources.PRACTICE),
                   practice_or_yours(said, f"{at}.seams", "Upright seams", told(seams, 4, said.display))),
        uses=(needed.key, apart.key), notes=(_LOWER,) if each > form.LEAST_BOLTS else ())]


def _weaker(holds: Figure, proof: Figure) -> str:
    if holds is proof:
        return "the bolt gives way before the plastic under its washer"
    long = "long " if holds.value < proof.value / 2 else ""
    return f"the plastic governs, under its washer it gives way {long}before the bolt"


def _reason(each: int, by_force: float, by_spacing: float) -> str:
    if each == form.LEAST_BOLTS:
        return "the least that keeps a seam from turning"
    return "the force sets it" if math.ceil(by_force - 1e-9) >= each else "the flange would bend open with fewer"


def _torque(said: Said, at: str, bolt: _Bolt, proof: Figure, bearing: Figure) -> Figure:
    told, holds = show.significant, min(proof, bearing, key=lambda figure: figure.value)
    by_bolt = holds is proof
    value = bolts.torque(bolt.thread.diameter, holds.value * (bolts.TIGHTENED if by_bolt else 1.0))
    shown, share = _torque_told(value, said), told(bolts.TIGHTENED, 4, said.display)
    kept = (Constant("Of what the bolt holds", show.percent(bolts.TIGHTENED, said.display), sources.PRACTICE),) if by_bolt else ()
    return Figure(
        f"{at}.torque", "Tighten to, at most", value, "N·m", shown,
        formula=f"nut factor × diameter × {'share of the force' if by_bolt else 'force'} ÷ 1000",
        numbers=f"{told(bolts.NUT_FACTOR, 4, said.display)} × {told(bolt.thread.diameter, 8, said.display)} × "
                f"{f'{share} × ' if by_bolt else ''}{told(holds.value, 8, said.display)} ÷ 1000",
        worked=f"{told(value, 5, said.display)} N·m",
        says=f"Tighten to {shown} at most: more could " + ("stretch the bolt" if by_bolt else "press the washer into the plastic"),
        constants=(Constant("Nut factor", told(bolts.NUT_FACTOR, 2, said.display), sources.NUT_FACTOR), *kept), uses=(holds.key,))


def _torque_told(value: float, said: Said) -> str:
    if said.display.length == "in":
        return f"{show.significant(value / _POUND_INCH, 2, said.display)} lbf·in"
    return f"{show.significant(value, 2, said.display)} N·m"
