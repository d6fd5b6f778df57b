"""The page of the shelf: a card for each of the maker's own materials and wicks, then generic ones to copy."""

from typing import Any

from brimbook import sources
from brimbook.candle.waxes import WAXES, Wax
from brimbook.cards.asking import ask
from brimbook.cards.card import card, group
from brimbook.cards.shelf import role_label
from brimbook.cards.shelf_reading import MOST_MATERIALS, beyond
from brimbook.cards.shelf_stock import stock_actions, stock_fields, stock_figures, stock_groups, stock_notes, told_in_a_line
from brimbook.cast.materials import GENERIC, Material
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import show_duration
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.leaves.materials import MIX_ROLES
from brimbook.record.leaves.scent import SENSITIZER
from brimbook.record.said import Said, localize, understand_text
from brimbook.steps import cautions
from brimbook.steps.sensitizers import MOST_ENTRIES

_MARKED = "Mend the entry that is marked."
_ASK_CORE = "Ask your supplier what the core is made of before you burn it: a core with lead is banned."
# What the sheet of each says, in the open; below it, what is seldom asked.
_BY_ROLE = {
    "binder": ("particle_density", "water_least", "water_most", "working_time", "demold_time"),
    "pozzolan": ("particle_density", "most"), "sand": ("particle_density",), "pigment": ("particle_density", "most"),
    "fiber": ("particle_density", "most"), "plasticizer": ("particle_density", "water_content", "most"),
    "polymer": ("particle_density", "water_content", "most"), "wax": ("density_poured", "density_set", "wax_most", "pour_at"),
    "fragrance": ("supplier_most", "ifra_most", "flash", "density"), "coating": ("coverage", "hours"), "plastic": ("plastic_density",),
}
_SELDOM = {
    "binder": ("reference_temperature", "follows", "binder_share", "heat"),
    "wax": ("density_at", "expansion", "melts_at", "melt_at", "scent_at"), "fragrance": ("supplier_basis", "flash_cup"),
}


def shelf_sheet(said: Said) -> dict[str, Any]:
    """The page of materials and wicks: the maker's own, then generic materials [sheet].

    said: the record of the shelf as understood [said].
    """
    own = [_own_card(said, row) for row in range(said.count("materials"))]
    wicks = [_wick_card(said, row) for row in range(said.count("wicks"))]
    copied = [*(_generic_card(said, material) for material in GENERIC),
              *(_generic_wax_card(said, wax) for wax in WAXES if wax.density_set is not None)]
    for title, cards in (("My materials", own), ("My wicks", wicks), ("To copy from", copied)):
        if cards:
            cards[0]["chapter"] = title
    for name, cards in (("materials", own), ("wicks", wicks)):
        if beyond(said, name):
            cards[-1]["notes"].append(f"The first {MOST_MATERIALS} {name} are shown here, and {beyond(said, name)} more are kept.")
    return {"title": "Materials and wicks", "line": "", "cards": [*own, *wicks, *copied], "faults": _faults(said, [*own, *wicks]),
            "actions": [*_with_room(said, {"label": "Add a material", "append": "materials", "value": {"role": "binder"}}),
                        *_with_room(said, {"label": "Add a wick", "append": "wicks", "value": {}})]}


def _with_room(said: Said, action: dict[str, Any]) -> tuple[dict[str, Any], ...]:
    """A button that adds a thing, while it would be shown."""
    return (action,) if said.count(action["append"]) < MOST_MATERIALS else ()


def _faults(said: Said, cards: list[dict[str, Any]]) -> list[dict[str, str]]:
    """What is wrong with what is asked, or can't be asked. What was typed of another role is kept, and bothers nobody."""
    asked = {field["path"] for made in cards for field in _asked(made)}
    return [{"path": fault.path, "label": fault.label, "sentence": fault.sentence} for fault in said.faults
            if fault.path in asked or leaf_at(fault.path) is None]


def _asked(made: dict[str, Any]) -> list[dict[str, Any]]:
    return [field for part in (made, *made["groups"]) for field in (*part["fields"], *part["more"])]


def _own_card(said: Said, row: int) -> dict[str, Any]:
    place = f"materials.{row}"
    role = said.value(f"{place}.role") or "binder"
    figures = stock_figures(said, place, role)
    made = card("materials.0", f"material-{row + 1}", said.text(f"{place}.name").strip() or "New material",
                "What does its data sheet say?" if role in _BY_ROLE else "What is it called, and what does it cost?",
                waiting=_waiting(said, place, role),
                fields=[ask(said, f"{place}.{name}") for name in ("name", "role", *_BY_ROLE.get(role, ()))] + stock_fields(said, place, role),
                more=[ask(said, f"{place}.{name}") for name in (*_SELDOM.get(role, ()), "sheet")], figures=figures, answer=(),
                notes=stock_notes(said, place, role),
                groups=(*(_sensitizers(said, place) if role == "fragrance" else ()), *stock_groups(said, place, role)),
                actions=(*(_adds_sensitizer(place) if role == "fragrance" else ()), *stock_actions(place),
                         {"label": "Remove this material", "remove": place}))
    return _finished(said, place, role, made, figures)


def _finished(said: Said, place: str, role: str, made: dict[str, Any], figures: dict[str, Figure]) -> dict[str, Any]:
    """With what it tells closed; that an entry is marked is said only where the card marks one."""
    unread = [fault.sentence for fault in said.faults if f"{fault.path}.".startswith(f"{place}.") and leaf_at(fault.path) is None]
    return {**made, "answer": told_in_a_line(figures, said, role), "generic": False, "notes": list(dict.fromkeys([*unread, *made["notes"]])),
            "waiting": _MARKED if any(field["fault"] for field in _asked(made)) else made["waiting"]}


def _sensitizers(said: Said, place: str) -> list[dict[str, Any]]:
    rows = range(min(said.count(f"{place}.sensitizers"), MOST_ENTRIES))
    return [_sensitizer(said, f"{place}.sensitizers.{row}", row) for row in rows]


def _sensitizer(said: Said, path: str, row: int) -> dict[str, Any]:
    share = said.value(f"{path}.share")
    summary = _MARKED if said.is_marked_below(path) else (
        "Its share of the scent, and its category." if share is None else f"{show.percent(share, said.display, 3)} of the scent")
    first = ("name", "share", "class")
    return group(path, said.text(f"{path}.name").strip() or f"Sensitizer {row + 1}", summary, [ask(said, f"{path}.{name}") for name in first],
                 more=tuple(ask(said, f"{path}.{name}") for name in SENSITIZER if name not in first),
                 actions=({"label": "Remove this sensitizer", "remove": path},))


def _adds_sensitizer(place: str) -> tuple[dict[str, Any], ...]:
    return ({"label": "Add a sensitizer", "append": f"{place}.sensitizers", "value": {"name": ""}},)


def _wick_card(said: Said, row: int) -> dict[str, Any]:
    place = f"wicks.{row}"
    figures, pool = stock_figures(said, place, "wick"), said.canonical.get(f"{place}.pool")
    made = card("wicks.0", f"wick-{row + 1}", said.text(f"{place}.name").strip() or "New wick", "How far did it melt, alone?",
                waiting=f"Melts {localize(pool, said.display)} across" if pool else "Type the pool that you saw it melt.",
                fields=[ask(said, f"{place}.{name}") for name in ("pool", "name", "rate", "core")] + stock_fields(said, place, "wick"),
                more=[ask(said, f"{place}.notes")], figures=figures, answer=(), cautions=cautions.WICKS,
                notes=(*((_ASK_CORE,) if said.value(f"{place}.core") == "unknown" else ()), *stock_notes(said, place, "wick")),
                groups=stock_groups(said, place, "wick"),
                actions=(*stock_actions(place), {"label": "Remove this wick", "remove": place}))
    return _finished(said, place, "wick", made, figures)


def _waiting(said: Said, place: str, role: str) -> str:
    known = said.canonical.get(f"{place}.{_BY_ROLE[role][0]}") if role in _BY_ROLE else None
    if known:
        return f"{role_label(role)}, {localize(known, said.display)}"
    return "Type its particle density, from its data sheet." if role in MIX_ROLES else f"{role_label(role)}: type its pack and price."


def _generic_card(said: Said, material: Material) -> dict[str, Any]:
    figures = {name: _fact_figure(material.kind, name, *material.facts[name], said.display) for name in material.facts if name != "follows"}
    return _to_copy(said, material.kind, material.label, material.hint, material.role, figures, material.texts())


def _generic_wax_card(said: Said, wax: Wax) -> dict[str, Any]:
    facts = {"density_poured": (f"{wax.density_poured:.2f} g/mL", wax.poured_source), "density_set": (f"{wax.density_set:.2f} g/mL", wax.set_source)}
    if wax.told_at is not None:
        facts["density_at"] = (f"{wax.told_at:g} °C", wax.poured_source)
    figures = {name: _fact_figure(wax.kind, name, *facts[name], said.display) for name in facts}
    return _to_copy(said, wax.kind, wax.label, wax.hint, "wax", figures, {name: text for name, (text, _) in facts.items()})


def _to_copy(said: Said, kind: str, label: str, hint: str, role: str, figures: dict[str, Figure], texts: dict[str, str]) -> dict[str, Any]:
    made = card("materials.0", f"generic-{kind}", label, hint, waiting=role_label(role), fields=[], more=[], figures=figures, answer=(),
                actions=_with_room(said, {"label": "Copy to my materials", "append": "materials", "value": {"name": label, "role": role, **texts}}))
    return {**made, "generic": True}


def _fact_figure(kind: str, name: str, text: str, source: sources.Source, display: Display) -> Figure:
    """A generic figure with its source, as a figure whose working is where it comes from."""
    leaf = leaf_at(f"materials.0.{name}")
    value = understand_text(leaf, text, Display())[0]
    shown = _shown(leaf.kind, text, value, display)
    return Figure(f"generic.{kind}.{name}", leaf.label, value, "", shown, formula="as told by its source",
                  numbers=show.significant(value * (100 if leaf.kind == "share" else 1), 8, display), worked=shown,
                  constants=(Constant(leaf.label, shown, source if source else sources.MEMORY),))


def _shown(kind: str, text: str, value: float, display: Display) -> str:
    if kind == "duration":
        return show_duration(value, display)
    return show.temperature(value, display) if kind == "temperature" else localize(text, display)
