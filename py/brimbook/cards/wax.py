"""The card that weighs out wax and fragrance."""

from typing import Any

from brimbook.candle.waxes import WAXES
from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.card import beside, card, figures_below
from brimbook.cards.measuring import well_profile
from brimbook.draw import section
from brimbook.record.fields import Choice
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.work_out import Answer


def wax_card(answer: Answer, place: str) -> dict[str, Any]:
    """The wax: wax, fragrance and dye to weigh [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    """
    said = answer.said
    figures = figures_below(answer, place)
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


def _wax_waiting(answer: Answer, place: str) -> str:
    said = answer.said
    if f"{place}.fill" not in answer.rooms:
        return "Once the well is measured."
    if not said.typed(f"{place}.wax.density_{said.value(f'{place}.basis') or 'poured'}"):
        return "Type the density of your wax: weigh a known volume of it."
    return "Mend the entry that is marked."


def _wax_field(said: Said, place: str) -> dict[str, Any]:
    return ask(said, f"{place}.wax.kind", choices=[
        plain_choice(Choice(wax.kind, wax.label, wax.hint), {} if wax.density_set is None else {
            f"{place}.wax.density_poured": f"{wax.density_poured:.2f} g/mL",
            f"{place}.wax.density_set": f"{wax.density_set:.2f} g/mL"})
        for wax in WAXES])
