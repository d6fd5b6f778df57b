"""The three conditions of a start, each with stock and ours by turns so that both share the machine's weather."""

from dataclasses import replace

from workshop.bench.numbers import middle
from workshop.bench.sessions import Place, session

SITES = ("stock", "ours")
# Long enough for the page to run its core hot, which it begins once the maker pauses.
SETTLE = 5000
# Nobody comes back within a moment, and the worker of the last visit needs one to be gone.
BREATH = 1200
EDITS = 300

Results = dict[str, list[dict]]


def cold(place: Place, runs: int, tell) -> Results:
    """First visits: for each a fresh profile and a browser of its own, ended after the answer."""
    got: Results = {site: [] for site in SITES}
    for run in range(runs):
        for site in SITES:
            got[site] += session(place, [{"site": site, "task": "answer"}], tell)
        tell(f"{place.engine.name}, cold, {run + 1} of {runs}: {_so_far(got)}")
    return got


def warm(place: Place, plain: dict, runs: int, tell) -> Results:
    """Later visits that find everything in the HTTP cache: from the third on in one profile, without a service worker.

    plain: the folders of the sites that have no service worker.
    """
    before = _by_turns(2, {"stay": SETTLE})
    got = _parted(session(replace(place, folders=plain), before + _by_turns(runs, {"stay": BREATH}), tell), len(before))
    tell(f"{place.engine.name}, warm: {_so_far(got)}")
    return got


def offline(place: Place, runs: int, tell) -> Results:
    """Later visits without a network: the service worker is there, the page had time to settle, the server is dead."""
    # One visit to fill the service worker's cache, one out of that cache to run the core hot.
    before = _by_turns(1, {"ready": True, "stay": BREATH}) + _by_turns(1, {"dead": True, "stay": SETTLE})
    after = _by_turns(runs, {"dead": True, "stay": BREATH})
    got = _parted(session(place, before + after, tell), len(before))
    tell(f"{place.engine.name}, offline: {_so_far(got)}")
    return got


def edits(place: Place, tell) -> dict[str, list[float]]:
    """How long each of many edits takes, from the input event to the figure, by site [ms]."""
    got = {site: session(place, [{"site": site, "task": "edits", "count": EDITS}], tell)[0]["times"] for site in SITES}
    tell(f"{place.engine.name}, {EDITS} edits")
    return got


def _by_turns(rounds: int, more: dict) -> list[dict]:
    return [{"site": site, "task": "answer", **more} for _ in range(rounds) for site in SITES]


def _parted(results: list[dict], before: int) -> Results:
    measured = results[before:]
    return {site: measured[place :: len(SITES)] for place, site in enumerate(SITES)}


def start_time(result: dict) -> float:
    """From the start of the core to its answer [ms]."""
    return result["answered"] - result["started"]


def _so_far(got: Results) -> str:
    return ", ".join(f"{site} {middle(list(map(start_time, results)))} ms" for site, results in got.items())
