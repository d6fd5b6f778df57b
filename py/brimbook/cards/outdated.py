"""Vessels whose copy of a material has another price or pack than the shelf has now."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from brimbook.cards.shelf import MINE, Shelf, pack_name, role_of, rows_of
from brimbook.quantity import show_more
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.leaves.materials import MIX_ROLES
from brimbook.record.said import MOST_ITEMS, Said, localize, understand_text

_COATS = ("sealer", "primer", "paint")
# All that can stand in a mix is told apart by its name alone.
_MIX = "mix"


@dataclass(frozen=True)
class _Pack:
    """How something is bought: texts that always mean it, and what they mean [base unit and currency]; none where it is not told."""

    size_text: str = ""
    price_text: str = ""
    size: float | None = None
    price: float | None = None


@dataclass(frozen=True)
class _Own:
    """A thing of the shelf: its name, the leaf of its pack, its packs, the usual one first."""

    name: str
    pack: str
    packs: tuple[_Pack, ...]


# By role and name.
_Key = tuple[str, str]


@dataclass
class _Counter:
    """What the shelf says of each copy; the same texts come in vessel after vessel, so what was found is remembered."""

    own: dict[_Key, _Own]
    display: Display
    known: dict[tuple[_Key, str, str], tuple[_Pack, _Pack] | None] = field(default_factory=dict)

    def newer(self, key: _Key, size: Any, price: Any) -> tuple[_Pack, _Pack] | None:
        """A copy and what it should say by now; nothing where it is as the shelf has it, or says nothing [packs].

        key: role and name of a thing of the shelf [texts].
        size: of the copy's pack, as it stands in a record [text].
        price: of the copy's pack, as it stands in a record [text].
        """
        texts = (key, size if isinstance(size, str) else "", price if isinstance(price, str) else "")
        if texts not in self.known:
            copy = _read_pack(self.own[key].pack, *texts[1:], self.display)
            newer = _newer(self.own[key], copy)
            self.known[texts] = None if newer is copy or copy.size is copy.price is None else (copy, newer)
        return self.known[texts]


@dataclass(frozen=True)
class _Late:
    """A thing of the shelf of which one vessel has other packs or prices: these, what they should be, and what to write."""

    pairs: list[tuple[_Pack, _Pack]]
    sets: dict[str, str]


def outdated(entries: Any, shelf: Shelf, display: Display) -> list[dict[str, Any]]:
    """Each material of the shelf that some vessels have an older copy of: name, says, and vessels, each with id, name and what to write (sets) [list].

    entries: of the book, each with its record [entries].
    shelf: the maker's own materials [shelf].
    display: how this maker reads figures [display].
    """
    own, found = _own(shelf, display), {}
    counter = _Counter(own, display)
    for entry in entries if own and isinstance(entries, list) else ():
        record = entry.get("record") if isinstance(entry, dict) else None
        for key, late in _behind(record, counter).items():
            found.setdefault(key, []).append((record, late))
    return [{"name": own[key].name, "says": _told_of_book(own[key], [late for _, late in found[key]], display),
             "vessels": [{"id": _text(record, "id"), "name": _text(record, "name"), "sets": late.sets} for record, late in found[key]]}
            for key in own if key in found]


def behind(said: Said, shelf: Shelf) -> list[tuple[str, dict[str, str]]]:
    """What this vessel has another price or pack of than the shelf: a sentence for each thing, and what brings it up to date [sentences and texts].

    said: the record as understood [said].
    shelf: the maker's own materials and wicks [shelf].
    """
    own, display = _own(shelf, said.display), said.display
    return [(f"{own[key].name} is {_told(late, 1, display)} on your shelf; here it is {_told(late, 0, display)}.", late.sets)
            for key, late in _behind(said.record, _Counter(own, display)).items()]


def _own(shelf: Shelf, display: Display) -> dict[_Key, _Own]:
    """The things of the shelf that have a name and a price or pack; of two that are called alike the first."""
    things = [(role_of(item), item) for item in shelf.named()] + [("wick", item) for item in shelf.of_role("wick")]
    own: dict[_Key, _Own] = {}
    for role, item in things:
        name = pack_name(role)
        bare = name.removeprefix("pack_")
        usual = _read_pack(name, item.get(name, ""), item.get("pack_price", ""), display)
        others = [_read_pack(name, item.get(f"packs.{row}.{bare}", ""), item.get(f"packs.{row}.price", ""), display)
                  for row in rows_of(item, "packs")]
        packs = (usual, *(pack for pack in others if None not in (pack.size, pack.price)))
        own.setdefault((_MIX if role in MIX_ROLES else role, _plain(item["name"])), _Own(item["name"].strip(), name, packs))
    return {key: thing for key, thing in own.items() if (thing.packs[0].size, thing.packs[0].price) != (None, None)}


def _read_pack(name: str, size: str, price: str, display: Display) -> _Pack:
    """What a pack's two texts say; what can't be read says nothing."""
    (amount, size_text), (money, price_text) = (_read(leaf, text, display) for leaf, text in ((name, size), ("pack_price", price)))
    return _Pack(size_text, price_text, amount, money)


@lru_cache(maxsize=2048)
def _read(name: str, text: str, display: Display) -> tuple[float | None, str]:
    try:
        return understand_text(leaf_at(f"materials.0.{name}"), text, display) if text.strip() else (None, "")
    except QuantityError:
        return None, ""


def _behind(record: Any, counter: _Counter) -> dict[_Key, _Late]:
    """The things of a vessel that are behind the shelf."""
    found: dict[_Key, _Late] = {}
    for path, role, part in _bought(record):
        key = (role, _name(role, part))
        thing = counter.own.get(key)
        pair = counter.newer(key, part.get(thing.pack), part.get("pack_price")) if thing is not None else None
        if pair is not None:
            late = found.setdefault(key, _Late([], {}))
            late.pairs.append(pair)
            late.sets.update(_sets(path, thing.pack, *pair))
    return found


def _sets(path: str, name: str, copy: _Pack, newer: _Pack) -> dict[str, str]:
    """What makes a copy say what the shelf says; what the shelf does not tell stays."""
    sets = {}
    if newer.size is not None and newer.size != copy.size:
        sets[f"{path}.{name}"] = newer.size_text
    if newer.price is not None and newer.price != copy.price:
        sets[f"{path}.pack_price"] = newer.price_text
    return sets


def _newer(thing: _Own, copy: _Pack) -> _Pack:
    """What a copy should say: itself where the shelf has such a pack, the price of its own size where that has changed, else the usual pack."""
    if any(_says(pack.size, copy.size) and _says(pack.price, copy.price) for pack in thing.packs):
        return copy
    of_size = (pack for pack in thing.packs if pack.size is not None and pack.price is not None and pack.size == copy.size)
    return next(of_size, thing.packs[0])


def _says(shelf: float | None, copy: float | None) -> bool:
    """What the shelf does not tell is no reason to change a copy."""
    return shelf is None or shelf == copy


def _bought(record: Any) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Every place of a raw record where something that is bought may stand: its path, its role, and what stands there."""
    if not isinstance(record, dict):
        return
    for path, cast in _items(record, "casts", ""):
        mix, finishing = cast.get("mix"), cast.get("finishing")
        if isinstance(mix, dict):
            yield from ((f"{path}.mix.{name}", _MIX, part) for name, part in _parts(mix, ("powder",)))
            yield from ((place, _MIX, part) for place, part in _items(mix, "others", f"{path}.mix."))
        if isinstance(finishing, dict):
            yield from ((f"{path}.finishing.{name}", "coating", part) for name, part in _parts(finishing, _COATS))
    for path, well in _items(record, "wells", ""):
        for name, part in _parts(well, ("wax", "fragrance", "coloring", "wicks")):
            inside = [each for below in ("blended", "scents") for each in _items(part, below, f"{path}.{name}.")]
            # A fragrance that lists its scents is not bought itself.
            if name != "fragrance" or not any(any(scent.values()) for _, scent in inside):
                yield f"{path}.{name}", _OF_WELL[name], part
            yield from ((place, _OF_WELL[name], inner) for place, inner in inside)
    yield from ((path, "packaging", part) for path, part in _items(record, "packaging", ""))


_OF_WELL = {"wax": "wax", "fragrance": "fragrance", "coloring": "dye", "wicks": "wick"}


def _items(part: dict[str, Any], name: str, before: str) -> Iterator[tuple[str, dict[str, Any]]]:
    items = part.get(name)
    for row, item in enumerate(items[:MOST_ITEMS]) if isinstance(items, list) else ():
        if isinstance(item, dict):
            yield f"{before}{name}.{row}", item


def _parts(part: dict[str, Any], names: tuple[str, ...]) -> Iterator[tuple[str, dict[str, Any]]]:
    return ((name, part[name]) for name in names if isinstance(part.get(name), dict))


def _name(role: str, part: dict[str, Any]) -> str:
    kind, name = part.get("kind"), part.get("name")
    if isinstance(kind, str) and kind.strip().startswith(MINE):
        return _plain(kind.strip().removeprefix(MINE))
    return _plain(name) if role != _MIX and isinstance(name, str) else ""


def _plain(name: str) -> str:
    return name.strip().casefold()


def _text(record: dict[str, Any], name: str) -> str:
    text = record.get(name)
    return text.strip() if isinstance(text, str) else ""


def _told_of_book(thing: _Own, late: list[_Late], display: Display) -> str:
    """How many vessels have what, and what the shelf says."""
    whole = _Late([pair for each in late for pair in each.pairs], {})
    whose = "1 vessel has" if len(late) == 1 else f"{len(late)} vessels have"
    return f"{whose} {thing.name} at {_told(whole, 0, display)}; the shelf says {_told(whole, 1, display)}."


def _told(late: _Late, side: int, display: Display) -> str:
    """The copies (side 0) or what they should be (side 1): in full where they are all alike."""
    # Most vessels of a book have one and the same pair.
    different = {id(pair): pair for pair in late.pairs}.values()
    told = list(dict.fromkeys(_told_pack(pair[side], display) for pair in different))
    return told[0] if len(told) == 1 else "several packs or prices"


def _told_pack(pack: _Pack, display: Display) -> str:
    size, price = localize(pack.size_text, display), "" if pack.price is None else show_more.money(pack.price, display)
    return " for ".join(word for word in (price, size) if word)
