"""A stand-in for the core, laid under the page, so that the page's side can be tried by itself."""

import json
from pathlib import Path

WORKER = (Path(__file__).parent / "stand_in.js").read_text("utf-8")
SHELF = {"record": {"materials": []}, "sheet": {"title": "Materials", "line": "", "cards": [], "faults": [], "actions": []}}


def lay_under(maker) -> None:
    """Have the page of this maker ask the stand-in; what the build worked out beforehand is an empty sheet."""
    maker.phone.context.route("**/core/worker.js", lambda route: route.fulfill(body=WORKER, content_type="text/javascript"))
    maker.phone.context.route("**/first.json", lambda route: route.fulfill(json=_first(route)))


def _first(route) -> dict:
    first = route.fetch().json()["answer"]
    return {"answer": {**first, "blank": {"casts": [{}]}, "sheet": {**first["sheet"], "cards": []}, "shelf": SHELF}}


def keep(maker, record: dict, id: str = "v1") -> str:
    """Put a vessel into the book on this device; gives its address."""
    entry = {"record": {"id": id, "made_on": "2026-11-20", **record}, "line": "", "saved": "2026-11-20T10:00:00.000Z"}
    maker.opens("#/")
    maker.page.evaluate("([name, text]) => localStorage.setItem(`brimbook.vessel.${name}`, text)", [id, json.dumps(entry)])
    return f"#/vessel/{id}"
