"""Where a lot went: which vessels hold it, and who got them.

The whole book is gone through while somebody waits, so the records are read where lots can stand, and nowhere else.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from brimbook.quantity.moments import show_date
from brimbook.quantity.show import Display
from brimbook.record.lots import day_of, lots_of, plain_lot

_NAMELESS = "Vessel without a name"


@dataclass(frozen=True)
class _Found:
    """One vessel that holds the lot: what to say of it, how many batches and vessels, and how many of these are passed on."""

    row: dict[str, Any]
    exact: bool
    batches: int
    vessels: int
    gone: int


def trace(entries: Any, sought: str, display: Display) -> dict[str, Any]:
    """The batches in which a lot stands, its own or that of a material: rows, each with id, name, lines; and a sentence (says) [found].

    entries: of the book, each with its record [entries].
    sought: the lot, or a part of it [text].
    display: how this maker reads figures [display].

    The same lot comes before lots that only hold these letters. Spaces, dashes and capitals make no other lot.

    >>> cup = {"id": "1", "name": "Tide cup", "batches": [{"lot": "T 7", "vessels": "4", "used": [{"name": "Soy wax", "lot": "4711"}]}]}
    >>> trace([{"record": cup}], "4711", Display())["rows"][0]["lines"]
    ['Batch T 7, 4 vessels: Soy wax, lot 4711']
    """
    plain = plain_lot(sought)
    records = [entry.get("record") for entry in entries if isinstance(entry, dict)] if isinstance(entries, list) else []
    found = [each for each in (_in_vessel(record, plain) for record in records if isinstance(record, dict)) if each] if plain else []
    rows = sorted(found, key=lambda each: not each.exact)
    return {"rows": [each.row for each in rows], "says": _says(sought.strip(), found) if plain else "Type a lot, or a part of it."}


def _says(sought: str, found: list[_Found]) -> str:
    if not found:
        return f"No batch and no material in the book has the lot “{sought}”."
    batches, vessels, gone = (sum(getattr(each, name) for each in found) for name in ("batches", "vessels", "gone"))
    if not batches:
        return f"“{sought}” stands in {_many(len(found), 'vessel')} as the lot of a material, and in no batch."
    made = f"{_many(vessels, 'vessel')} came out" if vessels else "how many came out is not noted"
    passed = f", {gone} of them passed on" if gone else ""
    where = f", of {len(found)} vessels in the book" if len(found) > 1 else ""
    return f"“{sought}” went into {_many(batches, 'batch', 'batches')}{where}: {made}{passed}."


def _many(count: int, one: str, more: str = "") -> str:
    return f"{count} {one if count == 1 else more or one + 's'}"


def _in_vessel(record: dict[str, Any], plain: str) -> _Found | None:
    batches = [each for each in _list(record, "batches") if isinstance(each, dict)]
    lots = lots_of(_text(record, "name"), [(_text(each, "lot"), _text(each, "made_on")) for each in batches])
    hits = [(batch, lot, held) for batch, lot in zip(batches, lots) if (held := _held(batch, lot, plain))]
    lines = [line for batch, lot, held in hits for line in _lines(batch, lot, held)]
    present = [(name, lot) for name, lot in _present(record) if plain in plain_lot(lot)]
    lines += [f"In the recipe now: {name}, lot {lot}" for name, lot in dict.fromkeys(present)]
    if not lines:
        return None
    every = [lot for _, lot, _ in hits] + [lot for _, _, held in hits for _, lot in held] + [lot for _, lot in present]
    row = {"id": _text(record, "id"), "name": _text(record, "name").strip() or _NAMELESS, "lines": lines}
    made = sum(max(_whole(batch, "vessels") - _whole(batch, "failed"), 0) for batch, _, _ in hits)
    return _Found(row, any(plain_lot(lot) == plain for lot in every), len(hits), made, sum(_gone(batch) for batch, _, _ in hits))


def _held(batch: dict[str, Any], own: str, plain: str) -> list[tuple[str, str]]:
    """What of a batch has the lot: materials with theirs, or all of the batch."""
    held = [(_text(each, "name").strip() or "A material", _text(each, "lot").strip()) for each in _list(batch, "used")
            if isinstance(each, dict) and plain in plain_lot(_text(each, "lot")) and _text(each, "lot").strip()]
    return held or ([("", own)] if own and plain in plain_lot(own) else [])


def _lines(batch: dict[str, Any], lot: str, held: list[tuple[str, str]]) -> list[str]:
    day = day_of(_text(batch, "made_on"))
    told = [f"Batch {lot}" if lot else "A batch without a lot", *([f"made {show_date(day)}"] if day else [])]
    vessels, failed = _whole(batch, "vessels"), _whole(batch, "failed")
    told += [_many(vessels, "vessel") + (f", {failed} of them failed" if failed else "")] if vessels else []
    materials = "; ".join(f"{name}, lot {each}" for name, each in held if name)
    went = [_went(each) for each in _list(batch, "went_to") if isinstance(each, dict)]
    return [", ".join(told) + (f": {materials}" if materials else ""), *(line for line in went if line)]


def _went(given: dict[str, Any]) -> str:
    who, vessels, day = _text(given, "who").strip(), _whole(given, "vessels"), day_of(_text(given, "on"))
    if not who and not vessels:
        return ""
    told = f"Went to: {f'{vessels} to ' if vessels else ''}{who or 'somebody not noted'}"
    return f"{told}, {show_date(day)}" if day else told


def _gone(batch: dict[str, Any]) -> int:
    return sum(_whole(each, "vessels") for each in _list(batch, "went_to") if isinstance(each, dict))


def _present(record: dict[str, Any]) -> list[tuple[str, str]]:
    """Each material of the vessel as it is now that has a lot, with its name."""
    parts = [(name, part) for name, part in _bought(record) if isinstance(part, dict)]
    return [(_called(part, name), lot) for name, part in parts if (lot := _text(part, "lot").strip())]


def _bought(record: dict[str, Any]) -> Iterator[tuple[str, Any]]:
    """Every place of a record where a material with its lot can stand."""
    for cast in _list(record, "casts"):
        mix, coats = _dict(cast, "mix"), _dict(cast, "finishing")
        yield "powder", mix.get("powder")
        yield from (("ingredient", other) for other in _list(mix, "others"))
        yield from ((name, coats.get(name)) for name in ("sealer", "primer", "paint"))
    for well in _list(record, "wells"):
        wax, fragrance = _dict(well, "wax"), _dict(well, "fragrance")
        yield from (("wax", each) for each in (wax, *_list(wax, "blended")))
        yield from (("fragrance", each) for each in (fragrance, *_list(fragrance, "scents")))
        yield from (("dye", _dict(well, "coloring")), ("wick", _dict(well, "wicks")))
    yield from (("packaging", each) for each in _list(record, "packaging"))


def _called(part: dict[str, Any], name: str) -> str:
    kind = _text(part, "kind").removeprefix("mine: ").replace("_", " ").strip()
    return _text(part, "name").strip() or kind or name


def _list(part: Any, name: str) -> list[Any]:
    found = part.get(name) if isinstance(part, dict) else None
    return found if isinstance(found, list) else []


def _dict(part: Any, name: str) -> dict[str, Any]:
    found = part.get(name) if isinstance(part, dict) else None
    return found if isinstance(found, dict) else {}


def _text(part: dict[str, Any], name: str) -> str:
    found = part.get(name)
    return found if isinstance(found, str) else ""


def _whole(part: dict[str, Any], name: str) -> int:
    """A number of vessels as the record keeps it; what can't be read counts for nothing here."""
    digits = _text(part, name).split(" ")[0]
    return int(digits) if digits.isascii() and digits.isdigit() and len(digits) < 7 else 0
