"""What the bench found: one object for programs, one table for people."""

from workshop.bench import book, reading, wire
from workshop.bench.engines import Engine
from workshop.bench.numbers import middle, percentile, ratio, spread
from workshop.bench.starts import SITES, Results, start_time

ENGINES = ("chromium", "firefox", "webkit")
CONDITIONS = ("cold", "warm", "offline")
NAMES = {"chromium": "Chromium", "firefox": "Firefox", "webkit": "WebKitGTK"}

# From where to where, by the key under which it is reported.
TIMES = {
    "ms": start_time,
    "ms_shown": lambda result: result["shown"] - result["started"],
    "ms_from_navigation": lambda result: result["shown"],
}


def gathered(measured: dict, engines: list[Engine], lacking: dict[str, str]) -> dict:
    """The whole object. Times in ms, bytes in B, memory in MB; null is what was not measured.

    stock_ms, ours_ms: medians from the start of the core to its answer. ratio: stock over ours.
    """
    found = {name: one["starts"] for name, one in measured["engines"].items()}
    said = {f"{site}_ms": _medians(found, site, start_time) for site in SITES}
    return {
        **said,
        "ratio": _ratios(said),
        "bytes": {f"{site}_{kind}": wire.total(measured["weights"][site], kind) for site in reversed(SITES) for kind in wire.KINDS},
        **_edits(measured["engines"]),
        **{f"{site}_{key}": _medians(found, site, TIMES[key]) for key in TIMES if key != "ms" for site in SITES},
        "spread": {site: _each(found, lambda results, site=site: spread([start_time(one) for one in results[site]])) for site in SITES},
        "memory": {site: _memory(found, site) for site in SITES},
        "plain_starts": _plain_starts(found),
        "engines": {engine.name: engine.version for engine in engines},
        "lacking": lacking,
        "trouble": {name: one["trouble"] for name, one in measured["engines"].items() if one["trouble"]},
        "parts": measured["parts"],
        "files": measured["weights"],
    }


def _each(found: dict[str, dict[str, Results]], read) -> dict[str, dict]:
    """Something of every engine and condition; None where it was not measured."""
    return {name: {condition: read(found[name][condition]) if condition in found.get(name, {}) else None
                   for condition in CONDITIONS} for name in ENGINES}


def _medians(found: dict, site: str, time) -> dict:
    return _each(found, lambda results: middle([time(one) for one in results[site]]))


def _ratios(said: dict) -> dict:
    return {name: {condition: ratio(said["stock_ms"][name][condition], said["ours_ms"][name][condition])
                   for condition in CONDITIONS} for name in ENGINES}


def _edits(engines: dict) -> dict:
    times = engines.get("chromium", {}).get("edits")
    if not times:
        return {"edit_ms": None}
    told = {site: {"p50": percentile(each, 50), "p95": percentile(each, 95), "n": len(each)} for site, each in times.items()}
    return {"edit_ms": told["ours"], "stock_edit_ms": told["stock"]}


def _memory(found: dict, site: str) -> dict[str, float | None]:
    """The middle peak of the page's process in the cold runs, each of which has a process of its own."""
    return {name: middle([one["memory"] for one in found.get(name, {}).get("cold", {}).get(site, []) if one["memory"]])
            for name in ENGINES}


def _plain_starts(found: dict) -> dict:
    """How many of our starts fell back to the plain way; it should be none."""
    return _each(found, lambda results: sum(one["slow"] for one in results["ours"]))


def markdown(said: dict) -> str:
    """The tables that a person reads."""
    blocks = [_starts(said), _weights(said), _rest(said)] if "ours_ms" in said else []
    if said.get("reading"):
        blocks.append(reading.table(said["reading"]))
    if said.get("book"):
        blocks.append(book.table(said["book"]))
    return "\n\n".join(block for block in blocks if block)


def _starts(said: dict) -> str:
    lines = ["From the start of the core to its first answer [ms]: median (min to max, runs).", "",
             "| Engine | Start | Stock | Ours | Stock / ours | Ours, navigation to figure |", "|---|---|---:|---:|---:|---:|"]
    for name in ENGINES:
        for condition in CONDITIONS:
            if said["ours_ms"][name][condition] is not None:
                cells = [_range(said["spread"][site][name][condition]) for site in SITES]
                whole = said["ours_ms_from_navigation"][name][condition]
                lines.append(f"| {NAMES[name]} | {condition} | {' | '.join(cells)} | {said['ratio'][name][condition]} | {whole:.0f} |")
    notes = [f"{NAMES[name]} was not measured: {why}." for name, why in said["lacking"].items()]
    notes += [f"{NAMES[name]}: {trouble}" for name, trouble in said["trouble"].items()]
    for name in ENGINES:
        fell = {condition: count for condition, count in said["plain_starts"][name].items() if count}
        notes += [f"{NAMES[name]}, {condition}: {count} of our starts went the plain way." for condition, count in fell.items()]
    return "\n".join(lines + [""] * bool(notes) + notes)


def _range(one: dict) -> str:
    return f"{one['median']:.0f} ({one['min']:.0f} to {one['max']:.0f}, {one['n']})"


def _weights(said: dict) -> str:
    lines = ["| First visit [MB] | Stock | Ours |", "|---|---:|---:|"]
    for kind, name in (("raw", "as they are"), ("gzip", "gzip -9"), ("brotli", "Brotli 11")):
        lines.append(f"| {name} | {_mb(said['bytes'][f'stock_{kind}'])} | {_mb(said['bytes'][f'ours_{kind}'])} |")
    for name in ENGINES:
        stock, ours = (said["memory"][site][name] for site in SITES)
        if ours is not None:
            lines.append(f"| {NAMES[name]}: peak memory of the page's process | {stock or 0:.0f} | {ours:.0f} |")
    return "\n".join(lines)


def _mb(count: int | None) -> str:
    return "not measured" if count is None else f"{count / 1e6:.2f}"


def _rest(said: dict) -> str:
    edit = said["edit_ms"]
    words = f"An edit to its figures, Chromium: p50 {edit['p50']} ms, p95 {edit['p95']} ms ({edit['n']} edits).\n\n" if edit else ""
    parts = ", ".join(f"{name}/ {_mb(count)}" if name != "." else f"files beside them {_mb(count)}"
                      for name, count in sorted(said["parts"].items(), key=lambda part: -part[1]))
    return f"{words}dist/ [MB]: {parts}."
