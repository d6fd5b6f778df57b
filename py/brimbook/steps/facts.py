"""What is known of a material: the maker's own entry first, else the generic one of its kind."""

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from brimbook import sources
from brimbook.cast.materials import generic
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said, understand_text
from brimbook.sources import Source


@dataclass(frozen=True)
class Fact:
    """One figure of a material: its value in the base unit of its kind, its text, and where it comes from."""

    value: Any
    text: str
    source: Source


def fact(said: Said, material: str, name: str) -> Fact | None:
    """One figure of a material, or nothing where none is known or the entry is faulty [fact].

    said: the record as understood [said].
    material: path of the material, as in casts.0.mix.powder [text].
    name: a leaf of a material, as in working_time [text].
    """
    path = f"{material}.{name}"
    offered = _generic(said.text(f"{material}.kind"), name)
    if said.typed(path):
        value = said.value(path)
        same = offered is not None and value == _read(path, offered[0])
        return None if value is None else Fact(value, said.canonical[path], offered[1] if same else sources.YOURS)
    if offered is not None:
        return Fact(_read(path, offered[0]), offered[0], offered[1])
    leaf = leaf_at(path)
    return Fact(said.value(path), leaf.usual, sources.PRACTICE) if leaf is not None and leaf.usual else None


def stands_in(said: Said, material: str, name: str) -> str:
    """The text that is taken for a figure of a material while the maker leaves it empty [text].

    said: the record as understood [said].
    material: path of the material [text].
    name: a leaf of a material [text].
    """
    offered = _generic(said.text(f"{material}.kind"), name)
    return offered[0] if offered else leaf_at(f"{material}.{name}").usual


def name_of(said: Said, material: str) -> str:
    """What to call a material: the maker's own name for it, else the generic one [text].

    said: the record as understood [said].
    material: path of the material [text].
    """
    known = generic(said.text(f"{material}.kind"))
    return said.text(f"{material}.name").strip() or (known.label if known else "")


def _generic(kind: str, name: str) -> tuple[str, Source] | None:
    known = generic(kind)
    return known.facts.get(name) if known else None


@lru_cache(maxsize=512)
def _read(path: str, text: str) -> Any:
    """A generic text is written so that it reads the same under any settings."""
    return understand_text(leaf_at(path), text, Display())[0]
