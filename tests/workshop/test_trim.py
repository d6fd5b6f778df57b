"""The runtime is cut to the exports that its own JavaScript names, and nothing else of it changes."""

import pytest

from workshop.say import Trouble
from workshop.trim import exports, trimmed, with_exports

# (module (func (result i32) i32.const 7) twice, exported as "seven" and "spare")
TINY = bytes.fromhex(
    "0061736d01000000" "010501600001" "7f" "0303020000" "0711" "02" "05736576656e0000" "0573706172650001"
    "0a0b02" "040041070b" "040041070b"
)


def test_exports_are_read_by_name():
    assert [name for name, _ in exports(TINY)] == ["seven", "spare"]


def test_only_what_is_named_is_exported():
    shorter = with_exports(TINY, {"seven"})
    assert [name for name, _ in exports(shorter)] == ["seven"]
    assert shorter.endswith(TINY[-13:]) and len(shorter) == len(TINY) - 8


def test_keeping_all_changes_nothing():
    assert with_exports(TINY, {"seven", "spare"}) == TINY


def test_javascript_laid_out_otherwise_is_told():
    with pytest.raises(Trouble, match="not laid out"):
        trimmed(TINY, "export default 1", "")


def test_the_built_runtime_exports_few_and_all_that_its_javascript_assigns(dist):
    wasm = (dist / "pyodide" / "pyodide.asm.wasm").read_bytes()
    javascript = (dist / "pyodide" / "pyodide.asm.mjs").read_text("utf-8")
    names = {name for name, _ in exports(wasm)}
    table = javascript.partition("function assignWasmExports(wasmExports){")[2].partition("}")[0]
    assigned = {part.partition('"]')[0] for part in table.split('wasmExports["')[1:]}
    assert assigned <= names and 100 < len(names) < 500
