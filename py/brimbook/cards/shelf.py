"""The shelf: the maker's own materials and wicks, and both as answers to choose from in a vessel."""

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.shelf_reading import LISTS, MOST_MATERIALS, item_said
from brimbook.quantity.show import Display
from brimbook.record.fields import Choice, leaf_at
from brimbook.record.leaves.materials import FACTS, MATERIAL, MEASURES, MIX_ROLES, ROLES
from brimbook.record.leaves.scent import SENSITIZER
from brimbook.record.leaves.supply import PACKS
from brimbook.record.leaves.wicks import WICK
from brimbook.record.said import Said
from brimbook.record.tree import item_of

# What a choice of material writes into a mix; a generic one stands for its figures by its kind alone.
COPIED = tuple(name for name in MATERIAL if name not in ("kind", "name", "role"))
MINE = "mine: "
# What a maker settles with a vessel: a sheet that says nothing of it leaves it as it is.
_SETTLED = ("wax_most", "melts_at", "melt_at", "scent_at", "pour_at")
_OTHERS = {"fragrance": "Another scent", "packaging": "Other packaging"}


@dataclass(frozen=True)
class Shelf:
    """The maker's own materials and wicks, each as the canonical texts of its leaves by path, as in packs.0.price."""

    materials: tuple[dict[str, str], ...] = ()
    wicks: tuple[dict[str, str], ...] = ()

    def named(self) -> list[dict[str, str]]:
        """Those that have a name, to choose from [texts]."""
        return _named(self.materials)

    def of_role(self, role: str) -> list[dict[str, str]]:
        """Those of a role that have a name [texts].

        role: one of the roles of materials, or wick [text].
        """
        return _named(self.wicks) if role == "wick" else [each for each in self.named() if role_of(each) == role]


def _named(items: tuple[dict[str, str], ...]) -> list[dict[str, str]]:
    return [item for item in items if item.get("name", "").strip()]


def shelf_of(materials: Any, wicks: Any, display: Display) -> Shelf:
    """The maker's materials and wicks from what the page keeps; what can't be read is left out [shelf].

    materials: a list of materials, each with the texts of its leaves [record].
    wicks: a list of wicks, each with the texts of its leaves [record].
    display: how this maker reads figures [display].
    """
    return Shelf(*(tuple(_texts(name, item, display) for item in items[:MOST_MATERIALS]) if isinstance(items, list) else ()
                   for name, items in zip(LISTS, (materials, wicks))))


def _texts(name: str, item: Any, display: Display) -> dict[str, str]:
    place = f"{name}.0."
    return {path.removeprefix(place): text for path, text in item_said(name, item, display).canonical.items() if path.startswith(place)}


def role_of(material: dict[str, str]) -> str:
    """What a material of the shelf is [text].

    material: the texts of its leaves [texts].
    """
    return material.get("role", "") or "binder"


def role_label(role: str) -> str:
    """What to call a role [text].

    role: of a material [text].
    """
    return next(choice.label for choice in ROLES if choice.value == role)


def pack_name(role: str) -> str:
    """The leaf that says what a pack of it holds [text].

    role: one of the roles of materials, or wick [text].

    >>> pack_name("wax"), pack_name("coating"), pack_name("wick")
    ('pack_weight', 'pack_volume', 'pack_pieces')
    """
    return PACKS[MEASURES.get(role, "mass")][0]


def rows_of(item: dict[str, str], name: str) -> list[int]:
    """The rows of a list of a material or wick in which something stands, in their order [counts].

    item: the texts of its leaves [texts].
    name: of the list, as in lots [text].
    """
    return sorted({int(path.split(".")[1]) for path in item if path.startswith(f"{name}.")})


def current_lot(item: dict[str, str]) -> str:
    """The lot that is in use: the newest of its lots, which stands last, else the one noted with its pack [text].

    item: the texts of a material or a wick [texts].

    >>> current_lot({"lot": "17", "lots.0.lot": "18", "lots.1.lot": "19"}), current_lot({"lot": "17"}), current_lot({})
    ('19', '17', '')
    """
    lots = [item.get(f"lots.{row}.lot", "").strip() for row in rows_of(item, "lots")]
    return next((lot for lot in reversed(lots) if lot), item.get("lot", "").strip())


def kind_of(material: dict[str, str]) -> str:
    """How a vessel's record names one of the maker's own materials [text].

    material: the texts of its leaves [texts].

    >>> kind_of({"name": "Gray bag mix"})
    'mine: Gray bag mix'
    """
    return f"{MINE}{material['name'].strip()}"


def as_it_is(value: str, label: str) -> dict[str, Any]:
    """What stands in a vessel and not on this shelf, as an answer to choose [choice].

    value: as it stands [text].
    label: what to call it [text].
    """
    return {**plain_choice(Choice(value, label, "As it is in this vessel.")), "group": "In this vessel"}


def own_choice(value: str, item: dict[str, str], sets: dict[str, str]) -> dict[str, Any]:
    """One of the maker's own things as an answer to choose [choice].

    value: what choosing it writes where it is asked [text].
    item: the texts of a material or a wick [texts].
    sets: what else choosing it writes, by path [texts].
    """
    return {**plain_choice(Choice(value, item["name"].strip(), "From your shelf."), sets), "group": "Mine"}


def copied(item: dict[str, str], role: str, place: str) -> dict[str, str]:
    """What a vessel takes a copy of when a thing of the shelf is chosen: every leaf that it has there [texts].

    item: the texts of a material or a wick [texts].
    role: one of the roles of materials, or wick [text].
    place: path of the thing in the vessel [text].
    """
    told = {**item, "lot": current_lot(item), "role": role_of(item)}
    sets = {path: told.get(name, "") for name, path in _places(role, place) if told.get(name, "") or name not in _SETTLED}
    if leaf_at(f"{place}.kind") is not None:
        sets[f"{place}.kind"] = kind_of(item)
    return {**sets, **(_sensitizers(item, place) if role == "fragrance" else {})}


def _sensitizers(item: dict[str, str], place: str) -> dict[str, str]:
    """Those of a scent, one row after the other; a fragrance that lists no scents keeps none."""
    if leaf_at(f"{place}.sensitizers.0.name") is None:
        return {}
    told = [(f"{place}.sensitizers.{row}.{name}", item.get(f"sensitizers.{each}.{name}", ""))
            for row, each in enumerate(rows_of(item, "sensitizers")) for name in SENSITIZER]
    return {path: text for path, text in told if text}


def _surplus(said: Said, place: str, item: dict[str, str], role: str) -> dict[str, str]:
    """Sensitizers of another scent must not stay. Those do that were typed of this one, or of who knows which, where the shelf lists none."""
    present = said.text(f"{place}.name").strip().casefold()
    if role != "fragrance" or (present in ("", item["name"].strip().casefold()) and not rows_of(item, "sensitizers")):
        return {}
    return {f"{place}.sensitizers.{row}.{name}": "" for row in range(said.count(f"{place}.sensitizers")) for name in SENSITIZER}


@lru_cache(maxsize=512)
def _places(role: str, place: str) -> tuple[tuple[str, str], ...]:
    """The leaves of a thing of the shelf that a vessel has too, and where."""
    facts = ("role", *COPIED) if role in MIX_ROLES else WICK if role == "wick" else FACTS.get(role, {})
    names = dict.fromkeys(("name", *(name for name in facts if "*" not in name), pack_name(role), "pack_price", "lot"))
    return tuple((name, path) for name in names for path in (_place_of(place, name),) if leaf_at(path) is not None)


def _place_of(place: str, name: str) -> str:
    """Where a vessel keeps a leaf of a thing: most beside its name, some where they are asked."""
    if name in _SETTLED:
        # What is blended in says nothing of the whole pot.
        topic = "fragrance" if name == "wax_most" else "melting"
        return f"{item_of(place)}.{topic}.{name}" if place.endswith(".wax") else ""
    return f"{place}_{name}" if name in ("coverage", "hours") else f"{place}.{name}"


def on_shelf(said: Said, place: str, shelf: Shelf, role: str) -> dict[str, str] | None:
    """The thing of the shelf that stands at a place of a vessel, found by its name, if there is one [texts].

    said: the record as understood [said].
    place: path of the thing in the vessel [text].
    shelf: the maker's own materials and wicks [shelf].
    role: one of the roles of materials, or wick [text].
    """
    kind = said.text(f"{place}.kind").strip()
    name = kind.removeprefix(MINE).strip() if kind.startswith(MINE) else "" if role in MIX_ROLES else said.text(f"{place}.name").strip()
    return next((item for item in shelf.of_role(role) if name and item["name"].strip().casefold() == name.casefold()), None)


def supply_choices(said: Said, place: str, shelf: Shelf, role: str) -> list[dict[str, Any]]:
    """The things of the shelf that can stand at a place of a vessel, asked by name; none where the shelf has none of the role [choices].

    said: the record as understood [said].
    place: path of the thing, as in packaging.0 [text].
    shelf: the maker's own materials and wicks [shelf].
    role: one of the roles of materials, or wick [text].

    Each writes a copy of all that a vessel keeps of it: name, kind, facts, pack, price and the lot in use.
    """
    own, present = shelf.of_role(role), said.text(f"{place}.name")
    if not own:
        return []
    gone = left_behind(said, place, shelf, role)
    offered = [own_choice(item["name"].strip(), item, taken_of(said, place, role, item, gone)) for item in own]
    offered.append(_another(place, role, gone))
    if present not in [choice["value"] for choice in offered]:
        offered.insert(0, as_it_is(present, present.strip()) if present.strip() else plain_choice(Choice(present, "None of my shelf")))
    return list({choice["value"]: choice for choice in reversed(offered)}.values())[::-1]


def taken_of(said: Said, place: str, role: str, item: dict[str, str], gone: dict[str, str]) -> dict[str, str]:
    """What choosing a thing of the shelf writes at a place of a vessel; what is empty there is not emptied again [texts].

    said: the record as understood [said].
    place: path of the thing in the vessel [text].
    role: one of the roles of materials, or wick [text].
    item: the texts of the one that is chosen [texts].
    gone: what goes with the one that stands there, by left_behind [texts].
    """
    sets = {**gone, **_surplus(said, place, item, role), **copied(item, role, place)}
    return {path: text for path, text in sets.items() if text or said.typed(path)}


def _another(place: str, role: str, gone: dict[str, str]) -> dict[str, Any]:
    """A thing that is not on the shelf: what was copied of the one before goes."""
    label = _OTHERS.get(role, f"Another {role}")
    sets = {path: "own" if path == f"{place}.kind" else text for path, text in gone.items() if path != f"{place}.name"}
    return plain_choice(Choice(label, label, "Not on your shelf: give it a name here."), sets)


def left_behind(said: Said, place: str, shelf: Shelf, role: str) -> dict[str, str]:
    """What goes when something else is chosen: all that still stands as it was copied of the shelf [texts].

    said: the record as understood [said].
    place: path of the thing in the vessel [text].
    shelf: the maker's own materials and wicks [shelf].
    role: one of the roles of materials, or wick [text].
    """
    before = on_shelf(said, place, shelf, role)
    taken = copied(before, role, place) if before is not None else {}
    # Its pack, price and lot were its own even where the shelf has others by now.
    bought = {f"{place}.{name}" for name in (pack_name(role), "pack_price", "lot")}
    return {path: "" for path, text in taken.items() if said.typed(path) and (path in bought or said.canonical.get(path) == text)}


def supply_field(said: Said, place: str, shelf: Shelf, role: str, label: str = "") -> dict[str, Any]:
    """What a thing is: chosen from the shelf where that has any; a name that is not on it stays to be typed [field].

    said: the record as understood [said].
    place: path of the thing in the vessel [text].
    shelf: the maker's own materials and wicks [shelf].
    role: one of the roles of materials, or wick [text].
    label: what to call the question, if not by its own name [text].
    """
    choices, path = supply_choices(said, place, shelf, role), f"{place}.name"
    if choices and said.typed(path) and on_shelf(said, place, shelf, role) is None:
        return {**ask(said, path, label), "note": "Empty it to choose from your shelf."}
    return ask(said, path, label, choices=choices)
