"""How long it takes, and how much memory, to read a model's file: in the page, and by trimesh over numpy on the same file."""

import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path

from workshop.bench import sites
from workshop.bench.engines import Engine
from workshop.bench.numbers import middle, ratio
from workshop.bench.reading_file import bumpy_cup
from workshop.bench.sessions import Place, session
from workshop.places import DIST, PY
from workshop.say import Trouble

# About so many triangles in each made-up file.
COUNTS = (50_000, 500_000)
SITE = "ours"
# Who reads: the page, our core in CPython, and the outside reference.
BY = ("page", "core", "reference")
_SCRIPTS = {"core": "workshop.bench.reading_core", "reference": "workshop.bench.reading_reference"}
_PATIENCE = 300.0


def reading(engine: Engine, runs: int, tell) -> dict:
    """For each file what each of the three needed: times in ms, memory in MB, in order of the runs. Raises Trouble."""
    found = {}
    with tempfile.TemporaryDirectory(prefix="brimbook-bench-") as name:
        folder = sites.write(sites.ours(DIST), Path(name))
        place = Place(engine, {}, {SITE: folder})
        for count in COUNTS:
            data = bumpy_cup(count)
            path = folder / f"made-{count}.stl"
            path.write_bytes(data)
            got = {each: [] for each in BY}
            for _ in range(runs):
                # By turns, so that all three share the machine's weather.
                got["page"] += session(place, [{"site": SITE, "task": "reading", "file": path.name, "stay": 1000 * _PATIENCE}], tell)
                for each, module in _SCRIPTS.items():
                    got[each].append(_in_cpython(module, path))
            found[str(count)] = {"triangles": (len(data) - 84) // 50, "bytes": len(data), "runs": got}
            tell(f"{engine.name}, reading {count:,} triangles: " + ", ".join(
                f"{each} {middle([one['ms'] for one in got[each]]):.0f} ms" for each in BY))
    return found


def _in_cpython(module: str, path: Path) -> dict:
    surroundings = {**os.environ, "PYTHONPATH": str(PY)}
    done = subprocess.run([sys.executable, "-m", module, str(path)], env=surroundings, capture_output=True, text=True, timeout=_PATIENCE)
    if done.returncode:
        raise Trouble(f"{module} could not read a made-up file: {done.stderr.strip().splitlines()[-1]}")
    return json.loads(done.stdout)


def told(measured: dict) -> dict:
    """The medians of each file: ms and MB of all three, and how many times longer the page takes than the reference.

    plain_ms: how long the reference takes without sections and fill curve.

    volumes_agree: is the reference's volume that of the page's core, to a millionth?
    """
    said = {}
    for count, one in measured.items():
        runs = one["runs"]
        ms = {each: middle([run["ms"] for run in runs[each]]) for each in BY}
        memory = {each: middle([run["memory"] for run in runs[each] if run["memory"]]) for each in BY}
        plain = middle([run["plain"] for run in runs["reference"]])
        volumes = [runs[each][0]["volume"] for each in ("core", "reference")]
        said[count] = {"triangles": one["triangles"], "bytes": one["bytes"], "ms": ms, "memory": memory, "n": len(runs["page"]),
                       "ratio": ratio(ms["page"], ms["reference"]), "plain_ms": plain, "volumes_agree": abs(volumes[0] / volumes[1] - 1) < 1e-6}
    return said


def table(said: dict) -> str:
    """The table that a person reads."""
    lines = ["Reading a binary STL: from the file to all that the page tells of it, rooms and walls too, with the start of its Python;",
             "trimesh, numpy and shapely in CPython: load, join corners, check that it is closed, bodies, volume, surface (so far the",
             "last column), and as many sections and volumes below a height.", "",
             "| Triangles | Page [ms] | Core in CPython [ms] | trimesh [ms] | Page / trimesh | Page [MB] | Core [MB] | trimesh [MB] | trimesh, volume only [ms] |",
             "|---:|---:|---:|---:|---:|---:|---:|---:|---:|"]
    for one in said.values():
        cells = [f"{one['ms'][each]:.0f}" for each in BY] + [f"{one['ratio']}"] + [f"{one['memory'][each] or 0:.0f}" for each in BY] + [f"{one['plain_ms']:.0f}"]
        lines.append(f"| {one['triangles']:,} | {' | '.join(cells)} |")
    lines += [] if all(one["volumes_agree"] for one in said.values()) else ["", "The two volumes do not agree."]
    return "\n".join(lines)
