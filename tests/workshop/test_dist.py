"""The built page: plain files, relative addresses, nothing asked of another origin."""

import json
import re

from workshop.places import WEB
from workshop.stamps import sha256, source_files

# A name for a kind of drawing, which nobody fetches.
NAMESPACES = ("http://www.w3.org/2000/svg", "http://www.w3.org/1999/xhtml")
FULL_ADDRESS = re.compile(r"""(?:https?:|wss?:)?//[a-z0-9-]+(?:\.[a-z0-9-]+)+[^\s"'`)<]*""", re.I)
FROM_THE_ROOT = re.compile(r"""(?:(?:src|href|action)=|url\(|import\(|from\s+|fetch\()["']?/(?!/)""")


def own_texts(dist):
    for path in source_files(WEB):
        if path.suffix in {".html", ".js", ".css", ".webmanifest", ".svg"}:
            name = path.relative_to(WEB).as_posix()
            yield name, (dist / name).read_text(encoding="utf-8")


def test_our_own_files_name_no_other_origin(dist):
    found = [
        (name, address)
        for name, text in own_texts(dist)
        for address in FULL_ADDRESS.findall(text)
        if address not in NAMESPACES
    ]
    assert found == []


def test_our_own_files_name_nothing_from_the_root_of_a_site(dist):
    assert [name for name, text in own_texts(dist) if FROM_THE_ROOT.search(text)] == []


def test_web_files_are_copied_as_they_are(dist):
    for path in source_files(WEB):
        name = path.relative_to(WEB).as_posix()
        shipped = (dist / name).read_bytes()
        if name == "offline.js":
            head, _, shipped = shipped.partition(b"\n")
            assert head.startswith(b"const RELEASE = {")
        assert shipped == path.read_bytes(), name


def test_the_release_lists_every_file_but_the_service_worker(dist):
    head = (dist / "offline.js").read_text(encoding="utf-8").partition("\n")[0]
    release = json.loads(head.removeprefix("const RELEASE = ").removesuffix(";"))
    there = {path.relative_to(dist).as_posix() for path in dist.rglob("*") if path.is_file()}
    lists = release["files"] + release["packed"] + release["later"]
    assert sorted(lists) == sorted(there - {"offline.js"})
    assert release["packed"] == ["image/pages.gz"]
    assert "pyodide/pyodide.asm.wasm" in release["files"] and "pyodide/python_stdlib.zip" in release["later"]
    assert re.fullmatch(r"[0-9a-f]{16}", release["version"])


def test_only_what_pyodide_needs_ships(dist):
    assert {path.name for path in (dist / "pyodide").iterdir()} == {
        "pyodide.mjs",
        "pyodide.asm.mjs",
        "pyodide.asm.wasm",
        "python_stdlib.zip",
        "pyodide-lock.json",
    }


def test_every_wheel_named_for_the_page_is_there_and_brimbook_comes_last(dist):
    names = json.loads((dist / "python/wheels.json").read_text())
    there = {path.name for path in (dist / "python").glob("*.whl")}
    assert set(names) == there
    assert names[-1].startswith("brimbook-")


def test_nothing_points_to_a_source_map_that_does_not_ship(dist):
    scripts = [path for path in dist.rglob("*") if path.suffix in {".js", ".mjs"}]
    assert len(scripts) > 10
    assert [path for path in scripts if b"sourceMappingURL=" in path.read_bytes()] == []


def test_lit_html_is_whole(dist):
    """Every module of lit-html finds the modules that it imports."""
    modules = list((dist / "vendor/lit").rglob("*.js"))
    assert dist / "vendor/lit/lit-html.js" in modules
    for module in modules:
        for wanted in re.findall(r'(?:from|import)\s*"([^"]+)"', module.read_text()):
            assert (module.parent / wanted).resolve().is_file(), f"{module.name} wants {wanted}"


def test_about_names_each_piece_with_its_license(dist):
    pieces = json.loads((dist / "about.json").read_text(encoding="utf-8"))
    by_name = {piece["name"].lower(): piece for piece in pieces}
    assert set(by_name) >= {"brimbook", "pyodide", "lit-html", "pint", "segno"}
    for piece in pieces[1:]:
        assert piece["version"] and piece["license"], piece["name"]
        assert re.fullmatch(r"[0-9a-f]{64}", piece["sha256"])


def test_about_tells_the_digest_of_the_wheel_that_ships(dist):
    pieces = json.loads((dist / "about.json").read_text(encoding="utf-8"))
    pint = next(piece for piece in pieces if piece["name"].lower() == "pint")
    [wheel] = (dist / "python").glob("pint-*.whl")
    assert pint["sha256"] == sha256(wheel.read_bytes())
