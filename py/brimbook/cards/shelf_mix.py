"""What can stand in a mix: generic materials and those of the shelf, as answers to choose from."""

from typing import Any

from brimbook.cards.asking import plain_choice
from brimbook.cards.shelf import COPIED, Shelf, as_it_is, copied, kind_of, own_choice, role_label, role_of
from brimbook.cast.materials import GENERIC, Material, generic
from brimbook.record.fields import Choice
from brimbook.record.said import Said


def material_choices(said: Said, place: str, shelf: Shelf, roles: tuple[str, ...]) -> list[dict[str, Any]]:
    """The materials that can stand at a place of a mix, each with the leaves that choosing it writes [choices].

    said: the record as understood [said].
    place: path of the material in the mix [text].
    shelf: the maker's own materials [shelf].
    roles: what may stand there [texts].
    """
    offered = [_generic_choice(place, material) for material in GENERIC if material.role in roles]
    offered += [_own_choice(place, material) for material in shelf.named() if role_of(material) in roles]
    present = said.text(f"{place}.kind")
    if present and present not in [choice["value"] for choice in offered]:
        offered.append(as_it_is(present, said.text(f"{place}.name").strip() or "Another material"))
    return offered


def _generic_choice(place: str, material: Material) -> dict[str, Any]:
    sets = {f"{place}.{name}": "" for name in ("name", *COPIED)}
    sets |= {f"{place}.role": material.role, f"{place}.particle_density": material.facts["particle_density"][0]}
    return {**plain_choice(Choice(material.kind, material.label, material.hint), sets), "group": role_label(material.role)}


def _own_choice(place: str, material: dict[str, str]) -> dict[str, Any]:
    return own_choice(kind_of(material), material, copied(material, role_of(material), place))


def dose_of(kind: str) -> str:
    """The usual share of a generic material, or nothing [text].

    kind: as a record names it [text].

    >>> dose_of("red_oxide")
    '3 %'
    """
    known = generic(kind)
    return known.dose if known else ""
