"""The book on a maker's device, looked at and filled from outside the page."""

import json


def entries(maker) -> dict[str, dict]:
    """The entries that are kept, by the vessel's id."""
    texts = maker.page.evaluate("Object.entries(localStorage).filter(([k]) => k.startsWith('brimbook.vessel.')).map(([, v]) => v)")
    return {entry["record"]["id"]: entry for entry in map(json.loads, texts)}


def names(maker) -> list[str]:
    """The names of the vessels in the book, sorted."""
    return sorted(entry["record"].get("name", "") for entry in entries(maker).values())


def fill(maker, book: list[dict], rest: str = "#/") -> None:
    """Put entries into the book, and open the page anew."""
    maker.opens(rest)
    maker.page.evaluate("(all) => { for (const e of all) localStorage.setItem(`brimbook.vessel.${e.record.id}`, JSON.stringify(e)); }", book)
    maker.page.reload()
    maker.opens(rest)


def vessel(id: str, name: str, saved: str = "2026-11-20T10:00:00.000Z", stamps: dict | None = None, **record) -> dict:
    """An entry with a small vessel."""
    entry = {"record": {"id": id, "name": name, "casts": [{}], "wells": [{}], **record}, "line": "640 g powder", "saved": saved}
    return entry if stamps is None else {**entry, "stamps": stamps}
