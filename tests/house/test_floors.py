"""The floors of the core: imports only go down, and each outside library has one door."""

import ast
from pathlib import Path

import pytest

CORE = Path(__file__).parents[2] / "py" / "brimbook"
FLOORS = ["reading", "door", "settings", "cards", "work_out", "steps", "sell", "candle", "cast", "draw", "fill", "mesh", "shape", "book", "record", "figure",
          "sources", "quantity"]
FILES = sorted(CORE.rglob("*.py"))
# The standard library that a pure core may use: no clock, no chance, no files, no network.
PURE = {"array", "ast", "base64", "bisect", "collections", "copy", "csv", "dataclasses", "datetime", "functools", "heapq", "io", "itertools", "json",
        "math", "operator", "re", "struct", "traceback", "typing", "unicodedata", "xml", "zlib"}
OUTSIDE = {"pint": "quantity/units.py", "segno": "draw/code.py"}


def imports(path: Path) -> set[str]:
    """Full names of all that a file imports, wherever in the file."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            found |= {name.name for name in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative import"
            found |= {node.module} | {f"{node.module}.{name.name}" for name in node.names}
    return found


def floor(module: str) -> int | None:
    """A module's floor, the top one 0; none for what is not the core's."""
    parts = module.split(".")
    return FLOORS.index(parts[1]) if len(parts) > 1 and parts[0] == "brimbook" and parts[1] in FLOORS else None


def name(path: Path) -> str:
    return path.relative_to(CORE).as_posix()


def test_every_module_stands_on_a_floor():
    modules = {name(path).split("/")[0].removesuffix(".py") for path in FILES} - {"__init__"}
    assert modules == set(FLOORS)


def test_the_core_tells_its_own_floors_in_this_order():
    words = [line.split()[0] for line in (CORE / "__init__.py").read_text("utf-8").splitlines()
             if line.startswith("    ") and line.strip()]
    assert words == FLOORS


@pytest.mark.parametrize("path", FILES, ids=name)
def test_imports_only_go_down(path):
    own = floor("brimbook." + name(path).split("/")[0].removesuffix(".py"))
    for module in imports(path):
        other = floor(module)
        if own is not None and other is not None:
            assert other >= own, f"{name(path)} looks up to {module}"


@pytest.mark.parametrize("path", FILES, ids=name)
def test_only_pure_libraries_and_each_outside_one_in_one_file(path):
    for module in imports(path):
        root = module.split(".")[0]
        if root in OUTSIDE:
            assert name(path) == OUTSIDE[root]
        else:
            assert root in PURE | {"brimbook"}, f"{name(path)} imports {module}"


IMPURE_CALLS = {"open", "print", "input", "exec", "eval", "__import__", "now", "today", "utcnow", "time"}


@pytest.mark.parametrize("path", FILES, ids=name)
def test_no_clock_no_files_no_global_state(path):
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        assert not isinstance(node, (ast.Global, ast.Nonlocal)), f"{name(path)}:{node.lineno} keeps global state"
        if isinstance(node, ast.Call):
            called = getattr(node.func, "id", getattr(node.func, "attr", ""))
            assert called not in IMPURE_CALLS, f"{name(path)}:{node.lineno} calls {called}"


@pytest.mark.parametrize("path", FILES, ids=name)
def test_a_file_stays_short(path):
    assert len(path.read_text("utf-8").splitlines()) <= 300


def test_the_rules_would_notice():
    assert floor("brimbook.fill.water") > floor("brimbook.steps.measure")
    assert imports(CORE / "door.py") >= {"brimbook.record.link", "json"}


@pytest.mark.parametrize("path", FILES, ids=name)
def test_imports_stand_at_the_top(path):
    """What a function imports when it first runs would be missing from the memory image."""
    inside = [node for function in ast.walk(ast.parse(path.read_text("utf-8")))
              if isinstance(function, (ast.FunctionDef, ast.Lambda, ast.ClassDef))
              for node in ast.walk(function) if isinstance(node, (ast.Import, ast.ImportFrom))]
    assert inside == []


def test_the_door_does_not_stand_on_what_only_reading_takes():
    """It is not in the memory image, and the page would have to fetch it before its first answer."""
    modules = {"brimbook." + name(path).removesuffix(".py").replace("/", "."): path for path in FILES}
    found, ahead = set(), ["brimbook.door"]
    while ahead:
        module = ahead.pop()
        if module in modules and module not in found:
            found.add(module)
            ahead += imports(modules[module])
    assert "brimbook.mesh.digest" in found
    assert not found & {"brimbook.reading.file", "brimbook.mesh.whole", "brimbook.mesh.read", "brimbook.shape.drawing_file"}
