"""All that planned vessels take together, each thing once, beside what the shelf has of it."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from brimbook.cards.shelf import Shelf, pack_name, role_label, role_of, rows_of
from brimbook.cards.shopping_vessels import MIX, Made, Needed, Planned, family_of
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display
from brimbook.quantity.show_more import money
from brimbook.record.fields import leaf_at
from brimbook.record.leaves.materials import MEASURES, STOCK
from brimbook.record.said import localize, understand_text
from brimbook.steps.shopping import Pack, Take, Wanted, told

# Family and name; of what has no name also the vessel.
Key = tuple[str, str, str]
# The families in the order in which a vessel needs them.
_JOB = (MIX, "coating", "wax", "fragrance", "dye", "wick", "packaging")


@dataclass(frozen=True)
class Own:
    """A thing of the shelf: its name, its packs, the usual one first, and what is on hand, where that is counted [g, mL or pieces]."""

    name: str
    role: str
    packs: tuple[Pack, ...]
    stock: float | None


@dataclass
class _Gathered:
    """A thing while it is gathered from vessel after vessel."""

    need: Needed
    vessel: str
    takes: list[Take] = field(default_factory=list)
    packs: dict[float, Pack] = field(default_factory=dict)
    differ: bool = False


@dataclass(frozen=True)
class Things:
    """Everything that is needed, by key, in the order of the job; and what should be said of it, in sentences."""

    wanted: dict[Key, Wanted]
    notes: tuple[str, ...]


def key_of(need: Needed, made: Made) -> Key:
    """By what a thing is the same in several vessels: what has no name is another in each [key].

    need: what a vessel takes of it [need].
    made: the vessel [vessel].
    """
    return need.family, need.name.casefold(), "" if need.is_named else made.name


def own_things(shelf: Shelf, display: Display) -> dict[Key, Own]:
    """The named things of the shelf; of two that are called alike the first [things].

    shelf: the maker's own materials and wicks [shelf].
    display: how this maker reads figures [display].
    """
    found: dict[Key, Own] = {}
    for role, item in [*((role_of(item), item) for item in shelf.named()), *(("wick", item) for item in shelf.of_role("wick"))]:
        name, measure = " ".join(item["name"].split()), MEASURES.get(role, "mass")
        stock = _read(STOCK[measure][0], item, STOCK[measure][0], display)
        packs = tuple(pack for pack in _packs(item, role, measure, display) if pack is not None)
        found.setdefault((family_of(role), name.casefold(), ""), Own(name, role, packs, stock))
    return found


def _packs(item: dict[str, str], role: str, measure: str, display: Display) -> Iterable[Pack | None]:
    name = pack_name(role)
    yield _pack(item, (name, name), "pack_price", measure, display)
    bare = name.removeprefix("pack_")
    for row in rows_of(item, "packs"):
        yield _pack(item, (f"packs.{row}.{bare}", name), f"packs.{row}.price", measure, display)


def _pack(item: dict[str, str], size: tuple[str, str], price: str, measure: str, display: Display) -> Pack | None:
    """A pack whose size is told; its text as it was typed."""
    holds = _read(size[1], item, size[0], display)
    if not holds:
        return None
    text = told(holds, measure, display) if measure == "pieces" else localize(item[size[0]], display)
    return Pack(holds, _read("pack_price", item, price, display), text)


def _read(leaf: str, item: dict[str, str], path: str, display: Display) -> float | None:
    """What a text of the shelf means; nothing where it is not told or can't be read."""
    text = item.get(path, "")
    try:
        return understand_text(leaf_at(f"materials.0.{leaf}"), text, display)[0] if text.strip() else None
    except QuantityError:
        return None


def things_for(rows: Iterable[Planned], own: dict[Key, Own], display: Display) -> Things:
    """All that planned vessels take [things].

    rows: of the plan [rows].
    own: things of the shelf [things].
    display: how this maker reads figures [display].
    """
    gathered: dict[Key, _Gathered] = {}
    for planned in rows:
        for need in planned.made.needs if planned.made is not None and planned.count else ():
            thing = gathered.setdefault(key_of(need, planned.made), _Gathered(need, planned.made.name))
            thing.takes.append(Take(planned.made.name, planned.count, need.each, need.turns_out))
            _add_pack(thing, need.pack)
    gathered = dict(sorted(gathered.items(), key=lambda each: _JOB.index(each[0][0])))
    names = _names(gathered, own)
    wanted = {key: _wanted(names[key], thing, own.get(key)) for key, thing in gathered.items()}
    return Things(wanted, _notes(gathered, own, names, display))


def _add_pack(thing: _Gathered, pack: Pack | None) -> None:
    """The vessels' own packs; of one size the dearest, so that the money is enough."""
    if pack is None:
        return
    known = thing.packs.get(pack.size)
    thing.differ |= known is not None and None not in (known.price, pack.price) and known.price != pack.price
    if known is None or (pack.price is not None and (known.price is None or pack.price > known.price)):
        thing.packs[pack.size] = pack


def _wanted(name: str, thing: _Gathered, own: Own | None) -> Wanted:
    """The shelf's packs come before the copies in vessels, which may be old."""
    packs = own.packs if own is not None and own.packs else tuple(thing.packs.values())
    return Wanted(name, thing.need.role, thing.need.measure, tuple(thing.takes), packs, own.stock if own is not None else None)


def _names(gathered: dict[Key, _Gathered], own: dict[Key, Own]) -> dict[Key, str]:
    """What to call each: what is called alike is told apart by its vessel or by what it is."""
    plain = {key: own[key].name if key in own else thing.need.name for key, thing in gathered.items()}
    alike = [name.casefold() for name in plain.values()]
    return {key: name if alike.count(name.casefold()) == 1 else f"{name} ({key[2] or _role(gathered[key].need.role)})" for key, name in plain.items()}


def _role(role: str) -> str:
    return "wick" if role == "wick" else role_label(role).lower()


def _notes(gathered: dict[Key, _Gathered], own: dict[Key, Own], names: dict[Key, str], display: Display) -> tuple[str, ...]:
    notes = []
    nameless = {thing.need.name: None for key, thing in gathered.items() if key[2]}
    several = [name for name in nameless if sum(thing.need.name == name and bool(key[2]) for key, thing in gathered.items()) > 1]
    if several:
        notes.append(f"Without a name in the vessels, and so listed for each of them: {'; '.join(several)}. Name it there, and it is added up.")
    roles: dict[str, list[str]] = {}
    for key, thing in gathered.items():
        if not key[2]:
            roles.setdefault(key[1], []).append(_role(thing.need.role))
    notes += [f"{_first_name(gathered, name)} is listed {len(known)} times, as {' and as '.join(known)}: these are not added up."
              for name, known in roles.items() if len(known) > 1]
    for key, thing in gathered.items():
        if thing.differ and not (key in own and own[key].packs):
            dearest = max(pack.price for pack in thing.packs.values() if pack.price is not None)
            notes.append(f"The vessels have {names[key]} at several prices for the same pack. The highest, {money(dearest, display)}, is taken.")
    return tuple(notes)


def _first_name(gathered: dict[Key, _Gathered], name: str) -> str:
    return next(thing.need.name for key, thing in gathered.items() if key[1] == name and not key[2])
