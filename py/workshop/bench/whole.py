"""A whole run of the bench, in its order, and what it prints."""

import contextlib
import json
import signal
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

from workshop import dist
from workshop.bench import book, reading, sites, starts, wire
from workshop.bench.engines import Engine, installed, screen
from workshop.bench.report import gathered, markdown
from workshop.bench.sessions import Place
from workshop.places import DIST
from workshop.say import Trouble

# An engine whose stock start takes longer than this [ms] gets by with fewer runs, so that a whole run stays bearable.
SLOW_START = 8000
FEWER = 3


def tell(sentence: str) -> None:
    """One line of progress, away from what a program may read."""
    print(sentence, file=sys.stderr, flush=True)


def bench(runs: int, as_json: bool, only: str | None = None) -> int:
    """Build, measure on every engine that is installed, all or only one part, and print the table or the object; the exit code. Raises Trouble."""
    # A bench that is told to end still ends its browsers and clears its folders.
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))
    with contextlib.redirect_stdout(sys.stderr):
        dist.build()
        engines, lacking = installed()
        for name, why in lacking.items():
            tell(f"{name} is left out: {why} is installed here.")
        said = gathered(_measured(engines, runs), engines, lacking) if only in (None, "starts") else {}
        said["reading"] = _in_chromium(engines, reading.reading, reading.told, min(runs, FEWER)) if only in (None, "reading") else None
        said["book"] = _in_chromium(engines, book.book, book.told, runs) if only in (None, "book") else None
    print(json.dumps(said, indent=1, ensure_ascii=False) if as_json else markdown(said))
    return 0


def _in_chromium(engines: list[Engine], measure: Callable, told: Callable, runs: int) -> dict | None:
    """What a part of the bench found in Chromium; None where that is not here or did not come to an end."""
    chromium = next((engine for engine in engines if engine.name == "chromium"), None)
    if chromium is None:
        return None
    try:
        return told(measure(chromium, runs, tell))
    except Trouble as trouble:
        tell(f"{trouble} This part is left out.")
        return None


def _measured(engines: list[Engine], runs: int) -> dict:
    ours = sites.ours(DIST)
    stock = sites.stock(ours)
    tell("Packing files to weigh them")
    weights = {"ours": wire.sizes(ours, sites.first_visit(ours, plain=False)),
               "stock": wire.sizes(stock, sites.first_visit(stock, plain=True))}
    if wire.brotli is None:
        tell("The package brotli is missing, so sizes under Brotli are left out.")
    whole = {"ours": ours, "stock": stock}
    with tempfile.TemporaryDirectory(prefix="brimbook-bench-") as name:
        folders = {site: sites.write(files, Path(name) / site) for site, files in whole.items()}
        plain = {site: sites.write(sites.without_service_worker(files), Path(name) / f"{site}-plain")
                 for site, files in whole.items()}
        measured = {engine.name: _engine(engine, folders, plain, runs) for engine in engines}
    return {"engines": measured, "weights": weights, "parts": wire.parts(ours)}


def _engine(engine: Engine, folders: dict, plain: dict, runs: int) -> dict:
    """All conditions of one engine: results by condition and site, its edits, and why it stopped if it did."""
    tell(f"{engine.name}: {engine.version}")
    found: dict = {"starts": {}, "edits": None, "trouble": ""}
    try:
        with screen(engine) as variables:
            place = Place(engine, variables, folders)
            found["starts"]["cold"] = starts.cold(place, 1, tell)
            left = _still_to_do(found["starts"]["cold"], runs)
            if left < runs - 1:
                tell(f"{engine.name} is slow to start here: {left + 1} runs instead of {runs}.")
            for site, more in starts.cold(place, left, tell).items():
                found["starts"]["cold"][site] += more
            found["starts"]["warm"] = starts.warm(place, plain, left + 1, tell)
            found["starts"]["offline"] = starts.offline(place, left + 1, tell)
            if engine.name == "chromium":
                found["edits"] = starts.edits(place, tell)
    except Trouble as trouble:
        tell(f"{trouble} {engine.name} is left at what was measured so far.")
        found["trouble"] = str(trouble)
    return found


def _still_to_do(first: starts.Results, runs: int) -> int:
    """How many runs are still to do after the first."""
    slow = starts.start_time(first["stock"][0]) > SLOW_START
    return (min(runs, FEWER) if slow else runs) - 1
