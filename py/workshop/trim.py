"""Pyodide's runtime, less what the page never calls: its exports cut to those that its own JavaScript names.

Stock Pyodide exports 8,560 functions and variables so that compiled packages can be
loaded beside it; the page has none. Linking that many names takes a tenth of a second
at each start, and code that only they keep alive is a tenth of the file.
"""

import re
import tempfile
from pathlib import Path

from workshop.node import run_node
from workshop.packages import npm_package
from workshop.say import Trouble

EXPORTS = 7
# Reached by name from inside the runtime, not from its JavaScript.
ALWAYS = {"main", "__main_argc_argv", "memory", "__indirect_function_table", "__wasm_call_ctors"}
FEATURES = ["bulk-memory", "bulk-memory-opt", "mutable-globals", "sign-ext", "nontrapping-float-to-int",
            "exception-handling", "reference-types", "multivalue", "simd", "extended-const"]

_TABLE = re.compile(r"function assignWasmExports\(wasmExports\)\{(?P<body>[^}]*)\}")
_ONE = re.compile(r'(?:_\w+=|Module\["\w+"\]=)+wasmExports\["(?P<name>\w+)"\](?:\.value>>>0)?')
_NAMES = re.compile(r"var (?:_\w+,){1000,}(?:\w+,)*\w+;")
_WORD = re.compile(r"[A-Za-z_$][\w$]*")


def trimmed(wasm: bytes, javascript: str, loader: str) -> tuple[bytes, str]:
    """The runtime and its JavaScript without the exports that neither it nor the loader names. Raises Trouble."""
    table, names = _TABLE.search(javascript), _NAMES.search(javascript)
    if not table or not names:
        raise Trouble("Pyodide's JavaScript is not laid out as py/workshop/trim.py knows it: look there first.")
    rest = javascript.replace(table[0], "").replace(names[0], "")
    used = set(_WORD.findall(rest)) | set(_WORD.findall(loader))
    kept = {name for name, _ in exports(wasm) if name in used or f"_{name}" in used} | ALWAYS
    return _without_dead_code(with_exports(wasm, kept)), _cut(javascript, table, names[0], kept)


def _cut(javascript: str, table: re.Match, names: str, kept: set[str]) -> str:
    """The JavaScript without the assignments and declarations of the exports that are gone."""
    statements, gone = [], set()
    for statement in table["body"].split(";"):
        one = _ONE.fullmatch(statement)
        if one and one["name"] not in kept:
            gone |= set(re.findall(r"(_\w+)=", statement))
        else:
            statements.append(statement)
    declared = [name for name in names[4:-1].split(",") if name not in gone]
    shorter = javascript.replace(table["body"], ";".join(statements))
    return shorter.replace(names, f"var {','.join(declared)};")


def exports(wasm: bytes) -> list[tuple[str, bytes]]:
    """Every export of a WebAssembly file: its name, and its bytes in the section."""
    body = dict(_sections(wasm))[EXPORTS]
    count, at = _number(body, 0)
    found = []
    for _ in range(count):
        start = at
        length, at = _number(body, at)
        name, at = body[at : at + length].decode(), at + length
        _, at = _number(body, at + 1)
        found.append((name, body[start:at]))
    return found


def with_exports(wasm: bytes, kept: set[str]) -> bytes:
    """A WebAssembly file that exports only what is named."""
    parts = [entry for name, entry in exports(wasm) if name in kept]
    shorter = _written(len(parts)) + b"".join(parts)
    sections = ((kind, shorter if kind == EXPORTS else body) for kind, body in _sections(wasm))
    return wasm[:8] + b"".join(bytes([kind]) + _written(len(body)) + body for kind, body in sections)


def _sections(wasm: bytes) -> list[tuple[int, bytes]]:
    found, at = [], 8
    while at < len(wasm):
        kind = wasm[at]
        length, at = _number(wasm, at + 1)
        found.append((kind, wasm[at : at + length]))
        at += length
    return found


def _number(data: bytes, at: int) -> tuple[int, int]:
    """An unsigned LEB128 number and the place behind it."""
    value = shift = 0
    while True:
        value |= (data[at] & 127) << shift
        shift += 7
        at += 1
        if data[at - 1] < 128:
            return value, at


def _written(value: int) -> bytes:
    """An unsigned LEB128 number."""
    out = bytearray()
    while value >= 128:
        out.append(value & 127 | 128)
        value >>= 7
    return bytes([*out, value])


def _without_dead_code(wasm: bytes) -> bytes:
    """The file without what nothing in it reaches any more."""
    package = npm_package("binaryen")
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for file in ("bin/wasm-opt", "bin/package.json", "package.json"):
            path = folder / file
            path.parent.mkdir(exist_ok=True)
            path.write_bytes(package.files[file])
        (folder / "in.wasm").write_bytes(wasm)
        wanted = ["--remove-unused-module-elements", *(f"--enable-{feature}" for feature in FEATURES)]
        run_node(folder / "bin" / "wasm-opt", folder / "in.wasm", "-o", folder / "out.wasm", *wanted, log="wasm-opt")
        return (folder / "out.wasm").read_bytes()
