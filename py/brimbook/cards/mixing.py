"""The mix card: the recipe, and what to weigh."""

from typing import Any

from brimbook import sources
from brimbook.cards.asking import ask
from brimbook.cards.card import beside, card, figures_below, group
from brimbook.cards.shelf import Shelf, left_behind
from brimbook.cards.shelf_mix import dose_of, material_choices
from brimbook.cast.materials import generic
from brimbook.quantity import show
from brimbook.record.leaves.materials import MIX_ROLES
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.facts import fact, name_of, stands_in
from brimbook.steps.recipe import BULK, bulk, others_of, role_of
from brimbook.work_out import Answer, has_own_bowl

_POWDER_FACTS = ("particle_density", "binder_share", "water_least", "water_most")


def mix_card(answer: Answer, place: str, shelf: Shelf) -> dict[str, Any]:
    """The mix: what to weigh for the cast [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    shelf: the maker's own materials [shelf].
    """
    if not has_own_bowl(answer.said, place):
        return _shared_card(answer, place)
    said, mix = answer.said, f"{place}.mix"
    figures = figures_below(answer, place)
    weighed = [name for name in figures if name.endswith(".weigh")]
    return card(
        place, "mix", "Mix", "What to weigh for the cast", answer=("powder", *weighed, "water"), closed=("powder", "water"),
        waiting=_waiting(answer, place), figures=figures, fields=_fields(answer, place, shelf),
        more=[*_bowl_field(said, place), ask(said, f"{place}.allowance_from"), ask(said, f"{mix}.recipe"),
              *(ask(said, f"{mix}.powder.{name}", usual=stands_in(said, f"{mix}.powder", name)) for name in _powder_facts(said, mix)),
              *(ask(said, f"{mix}.{name}") for name in ("air", "rule"))],
        cautions=cautions.MIX, groups=tuple(_ingredient(answer, place, row, shelf)
                                            for row in range(len(others_of(said, mix)))),
        actions=({"label": "Add an ingredient", "append": f"{mix}.others",
                  "value": {"kind": "red_oxide", "role": "pigment", "share": "3 %", "particle_density": "5.20 g/mL"}},
                 {"label": "My materials", "go": "#/materials"}),
        beside=beside(figures, ("By volume", ("powder", "water")), ("Your rule", ("rule_powder", "rule_water")),
                      "rule_allowance"))


def _shared_card(answer: Answer, place: str) -> dict[str, Any]:
    said = answer.said
    return card(place, "mix", "Mix", "How many pieces, from the first mold's bowl?", answer=("taken",),
                waiting="Once the mold is measured.", figures=figures_below(answer, place),
                fields=[ask(said, f"{place}.pieces"), *_bowl_field(said, place)], more=[], cautions=cautions.MIX)


def _bowl_field(said: Said, place: str) -> list[dict[str, Any]]:
    return [] if place == "casts.0" else [ask(said, f"{place}.bowl")]


def _fields(answer: Answer, place: str, shelf: Shelf) -> list[dict[str, Any]]:
    said, mix = answer.said, f"{place}.mix"
    return [ask(said, f"{place}.pieces"), _powder_field(said, mix, shelf), *_density_field(said, mix), *_amount_fields(said, mix),
            _allowance_field(answer, place)]


def _allowance_field(answer: Answer, place: str) -> dict[str, Any]:
    """The allowance, with a word where that of the pours is taken instead."""
    said, plan = answer.said, answer.plans.get(place)
    field = ask(said, f"{place}.allowance")
    if plan is None or plan.allowance == said.value(f"{place}.allowance"):
        return field
    return {**field, "note": f"Your pours say {show.percent(plan.allowance, said.display)}, and that is taken: see below."}


def _amount_fields(said: Said, mix: str) -> list[dict[str, Any]]:
    """How much water, and of the dry ingredients where they are told by parts."""
    way = said.value(f"{mix}.recipe")
    if way == "weights":
        return [ask(said, f"{mix}.trial_powder"), ask(said, f"{mix}.trial_water")]
    if way == "percent":
        return [ask(said, f"{mix}.water_share")]
    grains = bulk(said, mix)
    if not grains:
        return [ask(said, f"{mix}.water_to_powder")]
    names = [name_of(said, path) or f"ingredient {row + 2}" for row, path in enumerate(grains)]
    return [ask(said, f"{mix}.parts", " : ".join(["Powder", *names, "water"]))]


def _powder_field(said: Said, mix: str, shelf: Shelf) -> dict[str, Any]:
    """Choosing a powder copies its figures into the record, so that a link is whole by itself."""
    choices = material_choices(said, f"{mix}.powder", shelf, ("binder",))
    for choice in choices:
        known = generic(choice["value"])
        if known:
            choice["sets"][f"{mix}.water_to_powder"] = known.ratio
    own = {"value": "own", "label": "Another powder", "hint": "A mix with sand, or what your data sheet says.",
           "sets": {**_without_generic_density(said, f"{mix}.powder"), **_without_own_powder(said, f"{mix}.powder", shelf)}, "group": "Mine"}
    return ask(said, f"{mix}.powder.kind",
               choices=[*(choice for choice in choices if choice["value"] != "own"), own])


def _without_generic_density(said: Said, powder: str) -> dict[str, str]:
    """Another powder has another density; one that the maker typed stays."""
    known = fact(said, powder, "particle_density")
    generic_one = generic(said.text(f"{powder}.kind")) is not None and known is not None and known.source is not sources.YOURS
    return {f"{powder}.particle_density": ""} if generic_one else {}


def _without_own_powder(said: Said, powder: str, shelf: Shelf) -> dict[str, str]:
    """Nor has it the name, the pack or the figures of one of the shelf, where they still stand as they were copied."""
    kept = (f"{powder}.kind", f"{powder}.role")
    return {path: text for path, text in left_behind(said, powder, shelf, "binder").items() if path not in kept}


def _powder_facts(said: Said, mix: str) -> list[str]:
    asked = {field["path"] for field in _density_field(said, mix)}
    return [name for name in _POWDER_FACTS if f"{mix}.powder.{name}" not in asked]


def _density_field(said: Said, mix: str) -> list[dict[str, Any]]:
    """Asked in the open as long as nothing is known of it."""
    powder = f"{mix}.powder"
    unknown = fact(said, powder, "particle_density") is None
    return [ask(said, f"{powder}.particle_density")] if unknown else []


def _ingredient(answer: Answer, place: str, row: int, shelf: Shelf) -> dict[str, Any]:
    said, mix = answer.said, f"{place}.mix"
    other = f"{mix}.others.{row}"
    role, way = role_of(said, other), said.value(f"{mix}.recipe")
    amount = _amount_of(said, other, role, way)
    of_mix = role == "fiber" and said.value(f"{other}.base") == "mix"
    labels = {"share": "Of the whole wet mix", "most": "Most of it, of the wet mix"} if of_mix else {}
    seldom = ["particle_density"] + {"sand": ["moisture"], "plasticizer": ["water_content", "most"],
                                     "polymer": ["water_content", "most"]}.get(role, ["most"])
    return group(
        f"{other}", name_of(said, other) or f"Ingredient {row + 2}", _summary(answer, other, amount),
        [_ingredient_field(said, mix, row, shelf), *(ask(said, f"{other}.{name}", labels.get(name, "")) for name in amount)],
        more=tuple(ask(said, f"{other}.{name}", labels.get(name, ""), usual=stands_in(said, other, name)) for name in seldom),
        actions=({"label": "Remove this ingredient", "remove": other, "sets": _parts_without(said, mix, row)},))


def _amount_of(said: Said, other: str, role: str, way: str | None) -> list[str]:
    if way == "weights":
        return ["trial"]
    if way == "ratio" and role in BULK:
        return []
    return ["share", "base"] if role == "fiber" else ["share"]


def _summary(answer: Answer, other: str, amount: list[str]) -> str:
    if answer.said.is_marked_below(other):
        return "Mend the entry that is marked."
    weigh = answer.figures.get(f"{other}.weigh")
    if weigh is not None:
        return weigh.shown
    return "Type how much of it." if amount else ""


def _ingredient_field(said: Said, mix: str, row: int, shelf: Shelf) -> dict[str, Any]:
    other = f"{mix}.others.{row}"
    choices = material_choices(said, other, shelf, MIX_ROLES)
    for choice in choices:
        role = choice["sets"].get(f"{other}.role")
        dose = dose_of(choice["value"])
        if dose:
            choice["sets"][f"{other}.share"] = dose
            choice["sets"][f"{other}.base"] = generic(choice["value"]).base
        if role is not None:
            choice["sets"] |= _parts_with(said, mix, row, role in BULK)
    return ask(said, f"{other}.kind", choices=choices)


def _places_of(said: Said, mix: str) -> list[bool]:
    """Of each ingredient beside the powder: does it take part in the ratio?"""
    return [role_of(said, place) in BULK for place in others_of(said, mix)]


def _parts_with(said: Said, mix: str, row: int, in_ratio: bool) -> dict[str, str]:
    """The parts as they must be when an ingredient enters the ratio or leaves it, so that the rest stays as typed."""
    before = _places_of(said, mix)
    if before[row] == in_ratio:
        return {}
    after = [*before[:row], in_ratio, *before[row + 1:]]
    return _parts_changed(said, mix, before, row, after)


def _parts_without(said: Said, mix: str, row: int) -> dict[str, str]:
    before = _places_of(said, mix)
    return _parts_changed(said, mix, before, row, [*before[:row], False, *before[row + 1:]]) if before[row] else {}


def _parts_changed(said: Said, mix: str, before: list[bool], row: int, after: list[bool]) -> dict[str, str]:
    written = said.canonical.get(f"{mix}.parts", "").split(":")
    if len(written) != sum(before) + 2 or not any(before):
        written = ["1", *["1"] * sum(before), _water_part(said, mix)]
    at = 1 + sum(before[:row])
    changed = [*written[:at], "1", *written[at:]] if after[row] else [*written[:at], *written[at + 1:]]
    return {f"{mix}.parts": ":".join(changed), **({} if any(after) else _powder_alone(said, mix))}


def _powder_alone(said: Said, mix: str) -> dict[str, str]:
    """Powder to water as the parts have it: it stays so when nothing but the powder is left."""
    parts = said.value(f"{mix}.parts")
    if parts is None or parts[-1] > parts[0]:
        return {}
    powder, water = (show.trimmed(part, 6, show.Display()) for part in (parts[0], parts[-1]))
    return {f"{mix}.water_to_powder": f"{powder}:{water}"}


def _water_part(said: Said, mix: str) -> str:
    ratio = said.value(f"{mix}.water_to_powder")
    return show.significant(ratio, 3, show.Display()) if ratio else "0.4"


def _waiting(answer: Answer, place: str) -> str:
    if f"{place}.cavity" not in answer.rooms:
        return "Once the mold is measured."
    if answer.said.is_marked_below(place):
        return "Mend the entry that is marked."
    if not answer.said.typed(f"{place}.mix.powder.particle_density"):
        return "Type the particle density, from the powder's data sheet."
    return "Type how much of each ingredient."
