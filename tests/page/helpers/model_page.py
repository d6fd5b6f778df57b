"""Files for the page to read: on the stand-in each tells what is to become of it; else they are models made by rule."""

import json
import sys
from pathlib import Path

# The models themselves are made as in the tests of the core.
sys.path.insert(0, str(Path(__file__).parents[2] / "core" / "helpers"))

import model_files  # noqa: E402,F401 - found only once the path is set
import models  # noqa: E402,F401


def file(name: str, content: bytes) -> dict:
    """A file as Playwright hands it to a chooser."""
    return {"name": name, "mimeType": "application/octet-stream", "buffer": content}


def told(name: str = "tide.stl", **what) -> dict:
    """A file for the stand-in: steps, wait [ms], and answer, fault or crash."""
    return file(name, json.dumps(what).encode())


def answer(says: str = "Read whole.", **sets) -> dict:
    """An answer of the stand-in that writes these texts, by path with double underscores for dots."""
    return {"answer": {"sets": {path.replace("__", "."): text for path, text in sets.items()}, "says": says}}


def pick(maker, card: str = "Mold"):
    """The place on a card where a file is chosen."""
    return maker.card(card).locator(".pick")


def chooses_file(maker, what: dict, card: str = "Mold") -> None:
    """Choose a file by the card's button."""
    with maker.page.expect_file_chooser() as chooser:
        pick(maker, card).get_by_role("button").first.tap()
    chooser.value.set_files(what)


def workers(maker, count: int) -> None:
    """Wait until the page has so many workers."""
    for _ in range(100):
        if len(maker.page.workers) == count:
            return
        maker.page.wait_for_timeout(50)
    raise AssertionError(f"{len(maker.page.workers)} workers, not {count}")
