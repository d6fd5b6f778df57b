"""The two sites that are compared: ours as built, and the same page over stock Pyodide."""

import json
from pathlib import Path

from workshop.packages import npm_package
from workshop.release import OFFLINE, PLAIN_START, release

HERE = Path(__file__).parent
STOCK_PYODIDE = ["pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip", "pyodide-lock.json"]
# What only our start has.
OURS_ALONE = ("pyodide/", "image/", "core/lend.js", "core/plain.js", "core/restore.js", "core/start.js")

Files = dict[str, bytes]


def ours(dist: Path) -> Files:
    """The built page, by name."""
    return {path.relative_to(dist).as_posix(): path.read_bytes() for path in sorted(dist.rglob("*")) if path.is_file()}


def stock(built: Files, pyodide: Files | None = None) -> Files:
    """The same page with stock Pyodide and a stock worker; its service worker keeps every file.

    pyodide: the files of the npm package; fetched if need be when left out.
    """
    pyodide = npm_package("pyodide").files if pyodide is None else pyodide
    files = {name: data for name, data in built.items() if not name.startswith(OURS_ALONE)}
    files |= {f"pyodide/{name}": pyodide[name] for name in STOCK_PYODIDE}
    files["core/worker.js"] = (HERE / "stock_worker.js").read_bytes()
    return files | {OFFLINE: _keeping_all(files)}


def _keeping_all(files: Files) -> bytes:
    """The service worker, its list of files made anew for these."""
    _, own = files[OFFLINE].split(b"\n", 1)
    made = release(files)
    kept = {**made, "files": sorted(made["files"] + made["packed"] + made["later"]), "packed": [], "later": []}
    return f"const RELEASE = {json.dumps(kept)};\n".encode() + own


def first_visit(files: Files, plain: bool) -> list[str]:
    """Names of what a first visit fetches, the install of the service worker included.

    plain: whether the start goes the plain way, with Python's library and the wheels.
    """
    return [name for name in sorted(files) if plain or not name.startswith(PLAIN_START)]


def write(files: Files, folder: Path) -> Path:
    """Write a site to a folder and return it."""
    for name, data in files.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
    return folder


def without_service_worker(files: Files) -> Files:
    """The site of which only the browser's HTTP cache keeps anything."""
    return {name: data for name, data in files.items() if name != OFFLINE}
