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
_MINE = "mine: "


@dataclass(frozen=True)
class _Found:
    """One vessel that holds the lot: what to say of it, how many batches and vessels, how many of these are passed on.

    exact: is it this very lot? Then only batches of this very lot are counted, however many others hold its letters.
    uncounted: batches that nobody noted the vessels of.
    """

    row: dict[str, Any]
    exact: bool
    batches: int
    vessels: int
    gone: int
    uncounted: int


def trace(entries: Any, sought: str, display: Display) -> dict[str, Any]:
    """The batches in which a lot stands, its own or that of a material: rows, each with id, name, lines; and a sentence (says) [found].

    entries: of the book, each with its record [entries].
    sought: the lot, or a part of it [text].
    display: how this maker reads figures [display].

    The same lot comes before lots that only hold these letters. Spaces, dashes and capitals make no other lot.

    >>> cup = {"id": "1", "name": "Tide cup", "batches": [{"lot": "T 7", "vessels": "4", "used": [{"name": "Soy wax", "lot": "4711"}]}]}
    >>> trace([{"record": cup}], "4711", Display())["rows"][0]["lines"]
    ['Batch T 7, 4 vessels: Soy wax, lot 4711', 'Still here: 4']
    """
    plain = plain_lot(sought)
    records = [entry.get("record") for entry in entries if isinstance(entry, dict)] if isinstance(entries, list) else []
    found = [each for each in (_in_vessel(record, plain) for record in records if isinstance(record, dict)) if each] if plain else []
    exact, other = [each for each in found if each.exact], [each for each in found if not each.exact]
    return {"rows": [each.row for each in (*exact, *other)],
            "says": _says(sought.strip(), exact, other) if plain else "Type a lot, or a part of it."}


def _says(sought: str, exact: list[_Found], other: list[_Found]) -> str:
    """What became of this very lot; of lots that only hold its letters where there is no such lot."""
    if exact:
        more = f" {_many(len(other), 'other vessel')} below {'has' if len(other) == 1 else 'have'} lots that only hold these letters."
        return _went_into(f"“{sought}”", "stands", exact) + (more if other else "")
    if other:
        return _went_into(f"There is no lot “{sought}” itself. Lots that hold these letters", "stand", other)
    return f"No batch and no material in the book has the lot “{sought}”."


def _went_into(lot: str, stands: str, found: list[_Found]) -> str:
    made = [each for each in found if each.batches]
    if not made:
        return f"{lot} {stands} in {_many(len(found), 'vessel')} as the lot of a material or a label, and in no batch."
    batches, vessels, gone, uncounted = (sum(getattr(each, name) for each in made) for name in ("batches", "vessels", "gone", "uncounted"))
    where = f", of {len(made)} vessels in the book" if len(made) > 1 else ""
    told = [f"{_many(vessels, 'vessel')} came out" if vessels else "how many came out is not noted"]
    told += [f"{gone} of them passed on"] if gone else []
    told += [f"{vessels - gone} still here"] if 0 < gone < vessels else []
    more = f" Of {_many(uncounted, 'batch', 'batches')} it is not noted how many came out." if vessels and uncounted else ""
    rest = len(found) - len(made)
    more += f" {_many(rest, 'more vessel')} {'has' if rest == 1 else 'have'} it now, and no batch of it." if rest else ""
    return f"{lot} went into {_many(batches, 'batch', 'batches')}{where}: {', '.join(told)}.{more}"


def _many(count: int, one: str, more: str = "") -> str:
    return f"{count} {one if count == 1 else more or one + 's'}"


def _in_vessel(record: dict[str, Any], plain: str) -> _Found | None:
    batches = [each for each in _list(record, "batches") if isinstance(each, dict)]
    lots = lots_of(_text(record, "name"), [(_text(each, "lot"), _text(each, "made_on")) for each in batches])
    hits = [(batch, lot, held) for batch, lot in zip(batches, lots) if (held := _held(batch, lot, plain))]
    present = [(told, lot) for told, lot in _present(record) if plain in plain_lot(lot)]
    if not hits and not present:
        return None
    same = [hit for hit in hits if any(plain_lot(lot) == plain for lot in (hit[1], *(lot for _, lot in hit[2])))]
    exact = bool(same) or any(plain_lot(lot) == plain for _, lot in present)
    ordered = [*same, *(hit for hit in hits if hit not in same)]
    lines = [line for batch, lot, held in ordered for line in _lines(batch, lot, held)]
    lines += dict.fromkeys(f"{told}, lot {lot}" for told, lot in sorted(present, key=lambda each: plain_lot(each[1]) != plain))
    row = {"id": _text(record, "id"), "name": _text(record, "name").strip() or _NAMELESS, "lines": lines}
    return _Found(row, exact, *_counted([batch for batch, _, _ in (same if exact else hits)]))


def _counted(batches: list[dict[str, Any]]) -> tuple[int, int, int, int]:
    """How many batches, vessels that came out of them, passed on, and batches without a count."""
    return (len(batches), sum(_out(batch) for batch in batches), sum(_gone(batch) for batch in batches),
            sum(not _whole(batch, "vessels") for batch in batches))


def _out(batch: dict[str, Any]) -> int:
    return max(_whole(batch, "vessels") - _whole(batch, "failed"), 0)


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
    here = _out(batch) - _gone(batch)
    return [", ".join(told) + (f": {materials}" if materials else ""), *(line for line in went if line),
            *([f"Still here: {here}"] if here > 0 else [])]


def _went(given: dict[str, Any]) -> str:
    who, vessels, day = _text(given, "who").strip(), _whole(given, "vessels"), day_of(_text(given, "on"))
    if not who and not vessels:
        return ""
    told = f"Went to: {f'{vessels} to ' if vessels else ''}{who or 'somebody not noted'}"
    return f"{told}, {show_date(day)}" if day else told


def _gone(batch: dict[str, Any]) -> int:
    return sum(_whole(each, "vessels") for each in _list(batch, "went_to") if isinstance(each, dict))


def _present(record: dict[str, Any]) -> list[tuple[str, str]]:
    """Each material of the vessel as it is now that has a lot, and each label with a lot of its own."""
    parts = [(name, part) for name, part in _bought(record) if isinstance(part, dict)]
    found = [(f"In the recipe now: {_called(part, name)}", lot) for name, part in parts if (lot := _text(part, "lot").strip())]
    labels = [label for label in _list(record, "labels") if isinstance(label, dict)]
    return found + [("On its label", lot) for label in labels if (lot := _text(label, "lot").strip())]


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
    kind = _text(part, "kind")
    own = kind.removeprefix(_MINE) if kind.startswith(_MINE) else ""
    return _text(part, "name").strip() or own.strip() or f"the {name}"


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
