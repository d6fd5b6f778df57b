"""How long the whole book takes in the page, by how many vessels are in it."""

import json
import tempfile
from pathlib import Path

from workshop.bench import sites
from workshop.bench.book_made import book as made_book
from workshop.bench.engines import Engine
from workshop.bench.numbers import middle, percentile
from workshop.bench.sessions import Place, session
from workshop.places import DIST
from workshop.say import Trouble

COUNTS = (250, 500, 1000, 2000)
SITE = "ours"
# What is timed, and how it is told.
WORK = {"list": "list", "search": "search", "json": "save all", "csv": "save a table", "read_json": "read all, a tenth edited",
        "read_csv": "read a table, a tenth edited", "restore": "read all into an empty book", "keep": "keep an edit", "trace": "find a lot"}
_PATIENCE = 240_000


def book(engine: Engine, runs: int, tell) -> dict:
    """For each count the times of all rounds, by what was done [ms], and how many letters the entries take. Raises Trouble."""
    found = {}
    with tempfile.TemporaryDirectory(prefix="brimbook-bench-") as name:
        folder = sites.write(sites.ours(DIST), Path(name))
        place = Place(engine, {}, {SITE: folder})
        for count in COUNTS:
            lines = [json.dumps(entry, ensure_ascii=False, separators=(",", ":")) for entry in made_book(count)]
            (folder / f"made-{count}.txt").write_text("\n".join(lines), "utf-8")
            step = {"site": SITE, "task": "book", "file": f"made-{count}.txt", "rounds": runs, "stay": _PATIENCE}
            got = session(place, [step], tell)[0]
            if got["vessels"] != count:
                raise Trouble(f"The page held {got['vessels']} of {count} vessels.")
            found[str(count)] = {"letters": sum(map(len, lines)), "times": got["times"], "read": got["read"]}
            tell(f"{engine.name}, {count} vessels: " + ", ".join(f"{what} {middle(got['times'][what]):.0f} ms" for what in WORK))
    return found


def told(measured: dict) -> dict:
    """By count: the median and the 95th percentile of each work [ms], its rounds, and how large the book is [letters]."""
    return {count: {"letters": one["letters"], "n": len(one["times"]["list"]),
                    "ms": {what: middle(one["times"][what]) for what in WORK},
                    "p95_ms": {what: percentile(one["times"][what], 95) for what in WORK}} for count, one in measured.items()}


def table(said: dict) -> str:
    """The table that a person reads."""
    lines = ["The whole book in Chromium, from the maker's touch to what it shows [ms], median:", "",
             f"| Vessels | Book [MB] | {' | '.join(WORK.values())} |", f"|---:|---:|{'---:|' * len(WORK)}"]
    for count, one in said.items():
        cells = [f"{one['letters'] / 1e6:.1f}", *(f"{one['ms'][what]:.0f}" for what in WORK)]
        lines.append(f"| {int(count):,} | {' | '.join(cells)} |")
    return "\n".join(lines)
