"""The shelf: the maker's own materials and wicks, as a page of cards, and as answers to choose from."""

from dataclasses import dataclass
from typing import Any

from brimbook import sources
from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.card import card
from brimbook.cast.materials import GENERIC, Material, generic
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import show_duration
from brimbook.quantity.show import Display
from brimbook.record.fields import Choice, leaf_at
from brimbook.record.leaves.materials import MATERIAL, ROLES
from brimbook.record.leaves.wicks import WICK
from brimbook.record.said import Said, localize, understand, understand_text
from brimbook.steps import cautions

MOST_MATERIALS = 200
# What a choice of material writes into a mix; a generic one stands for its figures by its kind alone.
COPIED = tuple(name for name in MATERIAL if name not in ("kind", "name", "role"))
_WICK_MORE = ("core", "notes")
_ASK_CORE = "Ask your supplier what the core is made of before you burn it: a core with lead is banned."
_ASKED = ("name", "role", "particle_density")
_BY_ROLE = {
    "binder": ("water_least", "water_most", "working_time", "demold_time"),
    "pozzolan": ("most",), "sand": (), "pigment": ("most",), "fiber": ("most",), "plasticizer": ("water_content", "most"),
    "polymer": ("water_content", "most"),
}
_SELDOM = {"binder": ("reference_temperature", "follows", "binder_share", "heat")}
_PACK = ("pack_weight", "pack_price", "sheet")


@dataclass(frozen=True)
class Shelf:
    """The maker's own materials and wicks, each as the texts of its leaves."""

    materials: tuple[dict[str, str], ...] = ()
    wicks: tuple[dict[str, str], ...] = ()

    def named(self) -> list[dict[str, str]]:
        """Those that have a name, to choose from [texts]."""
        return [material for material in self.materials if material.get("name", "").strip()]


def shelf_of(materials: Any, wicks: Any, display: Display) -> Shelf:
    """The maker's materials and wicks from what the page keeps; what can't be read is left out [shelf].

    materials: a list of materials, each with the texts of its leaves [record].
    wicks: a list of wicks, each with the texts of its leaves [record].
    display: how this maker reads figures [display].
    """
    lists = {"materials": materials, "wicks": wicks}
    said = understand({name: each[:MOST_MATERIALS] for name, each in lists.items() if isinstance(each, list)}, display)
    return Shelf(_texts(said, "materials", tuple(MATERIAL)), _texts(said, "wicks", (*WICK, *_WICK_MORE)))


def _texts(said: Said, name: str, leaves: tuple[str, ...]) -> tuple[dict[str, str], ...]:
    return tuple({leaf: said.canonical[f"{name}.{row}.{leaf}"] for leaf in leaves if f"{name}.{row}.{leaf}" in said.canonical}
                 for row in range(said.count(name)))


def shelf_sheet(said: Said) -> dict[str, Any]:
    """The page of materials and wicks: the maker's own, then generic materials [sheet].

    said: the record of the shelf as understood [said].
    """
    own = [_own_card(said, row) for row in range(min(said.count("materials"), MOST_MATERIALS))]
    wicks = [_wick_card(said, row) for row in range(min(said.count("wicks"), MOST_MATERIALS))]
    copied = [_generic_card(material, said.display) for material in GENERIC]
    for title, cards in (("My materials", own), ("My wicks", wicks), ("To copy from", copied)):
        if cards:
            cards[0]["chapter"] = title
    return {"title": "Materials and wicks", "line": "", "cards": [*own, *wicks, *copied],
            "faults": [{"path": fault.path, "label": fault.label, "sentence": fault.sentence} for fault in said.faults],
            "actions": [{"label": "Add a material", "append": "materials", "value": {"role": "binder"}},
                        {"label": "Add a wick", "append": "wicks", "value": {}}]}


def kind_of(material: dict[str, str]) -> str:
    """How a vessel's record names one of the maker's own materials [text].

    material: the texts of its leaves [texts].

    >>> kind_of({"name": "Gray bag mix"})
    'mine: Gray bag mix'
    """
    return f"mine: {material['name'].strip()}"


def material_choices(said: Said, place: str, shelf: Shelf, roles: tuple[str, ...]) -> list[dict[str, Any]]:
    """The materials that can stand at a place of a mix, each with the leaves that choosing it writes [choices].

    said: the record as understood [said].
    place: path of the material in the mix [text].
    shelf: the maker's own materials [shelf].
    roles: what may stand there [texts].
    """
    offered = [_generic_choice(place, material) for material in GENERIC if material.role in roles]
    offered += [_own_choice(place, material) for material in shelf.named() if material.get("role", "binder") in roles]
    present = said.text(f"{place}.kind")
    if present and present not in [choice["value"] for choice in offered]:
        label = said.text(f"{place}.name").strip() or "Another material"
        offered.append({**plain_choice(Choice(present, label, "As it is in this vessel.")), "group": "In this vessel"})
    return offered


def _generic_choice(place: str, material: Material) -> dict[str, Any]:
    sets = {f"{place}.{name}": "" for name in ("name", *COPIED)}
    sets |= {f"{place}.role": material.role, f"{place}.particle_density": material.facts["particle_density"][0]}
    return {**plain_choice(Choice(material.kind, material.label, material.hint), sets), "group": _role(material.role)}


def _own_choice(place: str, material: dict[str, str]) -> dict[str, Any]:
    sets = {f"{place}.{name}": material.get(name, "") for name in ("name", "role", *COPIED)}
    return {**plain_choice(Choice(kind_of(material), material["name"].strip(), "From your shelf."), sets), "group": "Mine"}


def _role(role: str) -> str:
    return next(choice.label for choice in ROLES if choice.value == role)


def _own_card(said: Said, row: int) -> dict[str, Any]:
    place = f"materials.{row}"
    role = said.value(f"{place}.role") or "binder"
    made = card("materials.0", f"material-{row + 1}", said.text(f"{place}.name").strip() or "New material",
                "What does its data sheet say?", waiting=_waiting(said, place),
                fields=[ask(said, f"{place}.{name}") for name in (*_ASKED, *_BY_ROLE[role])],
                more=[ask(said, f"{place}.{name}") for name in (*_SELDOM.get(role, ()), *_PACK)], figures={}, answer=(),
                actions=({"label": "Remove this material", "remove": place},))
    return {**made, "generic": False}


def _wick_card(said: Said, row: int) -> dict[str, Any]:
    place = f"wicks.{row}"
    pool = said.canonical.get(f"{place}.pool")
    made = card("wicks.0", f"wick-{row + 1}", said.text(f"{place}.name").strip() or "New wick", "How far did it melt, alone?",
                waiting=f"Melts {localize(pool, said.display)} across" if pool else "Type the pool that you saw it melt.",
                fields=[ask(said, f"{place}.{name}") for name in ("pool", "name", "rate", "core")],
                more=[ask(said, f"{place}.notes")], figures={}, answer=(), cautions=cautions.WICKS,
                notes=(_ASK_CORE,) if said.value(f"{place}.core") == "unknown" else (),
                actions=({"label": "Remove this wick", "remove": place},))
    return {**made, "generic": False}


def _waiting(said: Said, place: str) -> str:
    known = said.canonical.get(f"{place}.particle_density")
    role = _role(said.value(f"{place}.role") or "binder")
    return f"{role}, {localize(known, said.display)}" if known else "Type its particle density, from its data sheet."


def _generic_card(material: Material, display: Display) -> dict[str, Any]:
    figures = {name: _fact_figure(material, name, display) for name in material.facts if name != "follows"}
    made = card("materials.0", f"generic-{material.kind}", material.label, material.hint, waiting=_role(material.role),
                fields=[], more=[], figures=figures, answer=(),
                actions=({"label": "Copy to my materials", "append": "materials", "value": {
                    "name": material.label, "role": material.role, **material.texts()}},))
    return {**made, "generic": True}


def _fact_figure(material: Material, name: str, display: Display) -> Figure:
    """A generic figure with its source, as a figure whose working is where it comes from."""
    leaf, (text, source) = leaf_at(f"materials.0.{name}"), material.facts[name]
    value = understand_text(leaf, text, Display())[0]
    shown = _shown(leaf.kind, text, value, display)
    return Figure(f"generic.{material.kind}.{name}", leaf.label, value, "", shown, formula="as told by its source",
                  numbers=show.significant(value * (100 if leaf.kind == "share" else 1), 8, display), worked=shown,
                  constants=(Constant(leaf.label, shown, source if source else sources.MEMORY),))


def _shown(kind: str, text: str, value: float, display: Display) -> str:
    if kind == "duration":
        return show_duration(value, display)
    return show.temperature(value, display) if kind == "temperature" else localize(text, display)


def dose_of(kind: str) -> str:
    """The usual share of a generic material, or nothing [text].

    kind: as a record names it [text].

    >>> dose_of("red_oxide")
    '3 %'
    """
    known = generic(kind)
    return known.dose if known else ""
