"""The two cards that weigh out: powder and water for the cast, wax and fragrance for the fill."""

from typing import Any

from brimbook.candle.waxes import WAXES
from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.card import beside, card, figures_below
from brimbook.cards.measuring import well_profile
from brimbook.cast.powders import POWDERS
from brimbook.draw import section
from brimbook.record.fields import Choice
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.work_out import Answer


def mix_card(answer: Answer, place: str) -> dict[str, Any]:
    """The mix: powder and water to weigh, and what to do when the scoop came out different [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    said = answer.said
    figures = figures_below(answer, place, without=f"{place}.cavity")
    return card(
        place, "mix", "Mix", "What to weigh for the cast", answer=("powder", "water"),
        waiting=_mix_waiting(answer, place), figures=figures,
        fields=[ask(said, f"{place}.pieces"), _powder_field(said, place), ask(said, f"{place}.mix.water_to_powder"),
                ask(said, f"{place}.allowance"), ask(said, f"{place}.scooped"), ask(said, f"{place}.left")],
        more=[ask(said, f"{place}.mix.{name}") for name in ("powder.particle_density", "air", "rule")],
        cautions=cautions.MIX, beside=beside(figures, ("By volume", ("powder", "water")),
                                             ("Your rule", ("rule_powder", "rule_water")), "rule_allowance"))


def wax_card(answer: Answer, place: str) -> dict[str, Any]:
    """The wax: wax, fragrance and dye to weigh [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    said = answer.said
    figures = figures_below(answer, place, without=f"{place}.fill")
    told = [f"{figures[name].shown} {figures[name].label.lower()}" for name in ("wax", "fragrance", "dye")
            if name in figures]
    return card(
        place, "wax", "Wax", "What to weigh for the fill", answer=("wax", "fragrance"),
        waiting=_wax_waiting(answer, place), figures=figures,
        fields=[_wax_field(said, place), ask(said, f"{place}.basis"), ask(said, f"{place}.fragrance.load"),
                ask(said, f"{place}.fragrance.basis")],
        more=[ask(said, f"{place}.{name}") for name in
              ("wax.density_poured", "wax.density_set", "fragrance.density", "dye", "rule")],
        cautions=cautions.WAX, beside=beside(figures, ("By density", ("wax", "fragrance")),
                                             ("Your rule", ("rule_wax", "rule_fragrance")), "rule_difference"),
        drawing=section.vessel(well_profile(said, place), "wax", told or ["to the line"]),
        drawing_text=f"Section of the vessel, filled with wax: {', '.join(told) or 'to the line'}.")


def _mix_waiting(answer: Answer, place: str) -> str:
    if f"{place}.cavity" not in answer.rooms:
        return "Powder and water, once the mold is measured."
    if not answer.said.typed(f"{place}.mix.powder.particle_density"):
        return "Type the particle density of your powder, from its data sheet."
    return "Mend the entry that is marked."


def _wax_waiting(answer: Answer, place: str) -> str:
    said = answer.said
    if f"{place}.fill" not in answer.rooms:
        return "Wax and fragrance, once the well is measured."
    if not said.typed(f"{place}.wax.density_{said.value(f'{place}.basis') or 'poured'}"):
        return "Type the density of your wax: weigh a known volume of it."
    return "Mend the entry that is marked."


def _powder_field(said: Said, place: str) -> dict[str, Any]:
    """Choosing a powder copies its figures into the record, so that a link is whole by itself."""
    mix = f"{place}.mix"
    return ask(said, f"{mix}.powder.kind", choices=[
        plain_choice(Choice(powder.kind, powder.label, powder.hint), {} if powder.particle_density is None else {
            f"{mix}.powder.particle_density": f"{powder.particle_density:.2f} g/mL",
            f"{mix}.water_to_powder": powder.water_to_powder})
        for powder in POWDERS])


def _wax_field(said: Said, place: str) -> dict[str, Any]:
    return ask(said, f"{place}.wax.kind", choices=[
        plain_choice(Choice(wax.kind, wax.label, wax.hint), {} if wax.density_set is None else {
            f"{place}.wax.density_poured": f"{wax.density_poured:.2f} g/mL",
            f"{place}.wax.density_set": f"{wax.density_set:.2f} g/mL"})
        for wax in WAXES])
