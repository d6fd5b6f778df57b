"""The card of the closed mold: pressure, bolts, heat, and the print."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.cast.plastic import OWN
from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.bolting import strength_leaf, washer_usual
from brimbook.steps.clamping import measured_size
from brimbook.steps.facts import stands_in
from brimbook.steps.mold_heat import mix_of
from brimbook.steps.plastic_facts import plastic_usual
from brimbook.work_out import Answer

_OWN_FIGURES = ("bearing", "modulus", "softens")


def clamp_card(answer: Answer, place: str) -> dict[str, Any]:
    """What the mix does to the closed mold, and what holds it shut [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    said, at = answer.said, f"{place}.clamping"
    figures, cavity = figures_below(answer, at), answer.rooms.get(f"{place}.cavity")
    sizes = {name: said.canonical.get(measured_size(said, cavity, name), "") for name in ("depth", "width")}
    return card(
        place, "clamp", "Clamp", "What holds the mold shut?", answer=("bolts", "pressure"),
        closed=("bolts",) if "bolts" in figures else ("pressure",),
        waiting=_waiting(said, at), fields=[
            *(ask(said, f"{at}.{name}", usual=usual) for name, usual in sizes.items()),
            ask(said, f"{at}.thread"), ask(said, f"{at}.plastic")],
        more=[ask(said, f"{at}.{name}") for name in ("density", "core_volume", "core_weight")], figures=figures,
        notes=_notes(said, at, figures), cautions=cautions.CLAMP,
        groups=(_bolts(said, at, figures), _heat(said, place, at, figures), _print(said, at, figures)))


def _waiting(said: Said, at: str) -> str:
    if said.is_marked_below(at):
        return "Mend the entry that is marked."
    return "Type its depth and its width."


def _notes(said: Said, at: str, figures: dict[str, Figure]) -> tuple[str, ...]:
    """The findings in words; what a plastic of the maker's own still lacks."""
    notes = [f"{figures[name].says}." for name in ("bolts", "torque", "uplift", "heat_share") if name in figures]
    if "pressure" in figures and "force" not in figures:
        notes.append("Type the width at the seam too, and the bolts are worked out.")
    if said.value(f"{at}.plastic") == OWN and not all(said.typed(f"{at}.{name}") for name in _OWN_FIGURES):
        notes.append("For a plastic of your own, type what it may bear, its stiffness and where it softens.")
    return tuple(notes)


def _plastic_field(said: Said, at: str, name: str) -> dict[str, Any]:
    return ask(said, f"{at}.{name}", usual=plastic_usual(said, at, name))


def _bolts(said: Said, at: str, figures: dict[str, Figure]) -> dict[str, Any]:
    outside, hole = washer_usual(said, at)
    plain = ("flange_thickness", "flange_width", "gap", "safety", "seams")
    return group(
        f"{at}.bolts", "Bolts and flange", figures["spacing"].shown + " apart, at most" if "spacing" in figures else "",
        [ask(said, f"{at}.{strength_leaf(said, at)}"), ask(said, f"{at}.washer_outside", usual=outside),
         *(ask(said, f"{at}.{name}") for name in plain[:2]), _plastic_field(said, at, "bearing")],
        more=(ask(said, f"{at}.washer_hole", usual=hole), *(ask(said, f"{at}.{name}") for name in plain[2:]),
              _plastic_field(said, at, "modulus")))


def _heat(said: Said, place: str, at: str, figures: dict[str, Figure]) -> dict[str, Any]:
    powder = f"{mix_of(said, place)}.powder"
    summary = f"{figures['peak'].shown} if none got away" if "peak" in figures else ""
    return group(f"{at}.heat", "Heat", summary, [
        _plastic_field(said, at, "softens"), ask(said, f"{powder}.heat", usual=stands_in(said, powder, "heat"))])


def _print(said: Said, at: str, figures: dict[str, Figure]) -> dict[str, Any]:
    summary = f"{figures['cost_per_cast'].shown} a cast" if "cost_per_cast" in figures else ""
    return group(
        f"{at}.print", "The print", summary,
        [ask(said, f"{at}.{name}") for name in ("print_weight", "print_volume", "spool_price", "lasts", "print_time")],
        more=(ask(said, f"{at}.spool_weight"), _plastic_field(said, at, "plastic_density"), ask(said, f"{at}.filament")))
