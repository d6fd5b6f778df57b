"""dist/: the page as plain files, put together whole and only then put in place."""

import json
import re
import shutil
from pathlib import Path

from workshop.about import about
from workshop.icons import icons
from workshop.image import image
from workshop.packages import npm_package, wheels
from workshop.places import BUILD, CORE, DIST, LOCKS, PROJECT, WEB, WORKSHOP
from workshop.proof import first_answer, prove
from workshop.release import with_release
from workshop.say import Trouble, say
from workshop.stamps import fingerprint, is_stamped, joined, kept, parted, source_files, stamp
from workshop.trim import trimmed
from workshop.turn import one_at_a_time
from workshop.wheel import wheel, wheel_name

LIT_FILES = re.compile(r"(directives/)?[a-z-]+\.js")
SOURCE_MAP = re.compile(rb"\n?//# sourceMappingURL=\S*\s*$")

Files = dict[str, bytes]


def build() -> Path:
    """Bring dist/ up to date and return it; a failed build leaves it as it was. Raises Trouble."""
    with one_at_a_time():
        digest = fingerprint(WEB, CORE, WORKSHOP, PROJECT)
        if DIST.is_dir() and is_stamped("dist", digest):
            say("dist/ is up to date")
            return DIST
        first = first_answer()
        files = _assemble(first)
        ahead = BUILD / "next"
        _write(files, ahead)
        prove(ahead, first)
        files = with_release(files | image(ahead))
        _write(files, ahead)
        _put_in_place(ahead)
        stamp("dist", digest)
        say(f"Built dist/: {len(files)} files, {sum(map(len, files.values())) / 1e6:.1f} MB")
    return DIST


def _assemble(first: bytes) -> Files:
    own, others = wheel(), wheels("page")
    pyodide, lit = npm_package("pyodide"), npm_package("lit-html")
    parts = [
        _web(),
        {f"vendor/lit/{name}": data for name, data in _lit(lit.files).items()},
        {f"pyodide/{name}": data for name, data in _pyodide(pyodide.files).items()},
        _python(own, others),
        _icons(),
        {"first.json": first, "about.json": about(own, others, [pyodide, lit])},
    ]
    files: Files = {}
    for part in parts:
        for name in part.keys() & files.keys():
            raise Trouble(f"web/{name} stands where the build puts a file of its own.")
        files |= part
    return files


def _web() -> Files:
    for name in ("index.html", "offline.js"):
        if not (WEB / name).is_file():
            raise Trouble(f"The page is not whole yet: web/{name} is missing.")
    return {path.relative_to(WEB).as_posix(): path.read_bytes() for path in source_files(WEB)}


def _lit(package: Files) -> Files:
    return {
        name: SOURCE_MAP.sub(b"\n", data)
        for name, data in package.items()
        if LIT_FILES.fullmatch(name)
    }


def _pyodide(package: Files) -> Files:
    loader, runtime = (SOURCE_MAP.sub(b"\n", package[name]) for name in ("pyodide.mjs", "pyodide.asm.mjs"))
    wasm, runtime = _runtime(package["pyodide.asm.wasm"], runtime, loader)
    files = {"pyodide.mjs": loader, "pyodide.asm.mjs": runtime, "pyodide.asm.wasm": wasm,
             "python_stdlib.zip": package["python_stdlib.zip"]}
    # The full list names hundreds of packages that the page neither has nor asks for.
    lock = {"info": json.loads(package["pyodide-lock.json"])["info"], "packages": {}}
    return files | {"pyodide-lock.json": json.dumps(lock).encode()}


def _runtime(wasm: bytes, runtime: bytes, loader: bytes) -> tuple[bytes, bytes]:
    """The trimmed runtime, made once for the same files."""
    digest = fingerprint(wasm, runtime, loader, WORKSHOP / "trim.py", WORKSHOP / "stamps.py", LOCKS / "npm.json")
    shorter, javascript = parted(kept("runtime", digest, lambda: _trim(wasm, runtime, loader)))
    return shorter, javascript


def _trim(wasm: bytes, runtime: bytes, loader: bytes) -> bytes:
    say("Trimming the runtime")
    shorter, javascript = trimmed(wasm, runtime.decode(), loader.decode())
    return joined(shorter, javascript.encode())


def _python(own: bytes, others: list[Path]) -> Files:
    names = [path.name for path in others] + [wheel_name()]
    files = {f"python/{path.name}": path.read_bytes() for path in others}
    files[f"python/{wheel_name()}"] = own
    return files | {"python/wheels.json": json.dumps(names).encode()}


def _icons() -> Files:
    makers = [WORKSHOP / name for name in ("icons.py", "paint.py", "png.py")]
    packed = kept("icons.json", fingerprint(*makers), _draw_icons)
    return {name: bytes.fromhex(data) for name, data in json.loads(packed).items()}


def _draw_icons() -> bytes:
    say("Drawing the icons")
    return json.dumps({name: data.hex() for name, data in icons().items()}).encode()


def _write(files: Files, folder: Path) -> None:
    shutil.rmtree(folder, ignore_errors=True)
    for name, data in files.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)


def _put_in_place(ahead: Path) -> None:
    behind = BUILD / "last"
    shutil.rmtree(behind, ignore_errors=True)
    if DIST.exists():
        DIST.rename(behind)
    ahead.rename(DIST)
    shutil.rmtree(behind, ignore_errors=True)
