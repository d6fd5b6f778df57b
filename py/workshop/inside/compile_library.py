"""Runs inside Pyodide: the standard library and the page's wheels as compiled files.

Left out are docstrings, assertions and line tables; of our own core each function keeps
the line where it begins, which a fault report then names. ssl is left out whole; without
it asyncio loads without it.
"""

import importlib._bootstrap_external as loader
import os
import types
import zipfile

LEFT_OUT = {"ssl.py"}
OWN = "brimbook/"


# Entries of a line table, each for eight units of code: a line that is not known, and no line further than the last.
UNKNOWN, SAME = b"\xff", b"\xef\x00"


def with_lines(code, entry):
    """The code object with a line table that says the same of every instruction."""
    # An empty table will not do: the traceback module stops at the first frame that has one.
    units = len(code.co_code) // 2
    rest = bytes([entry[0] - 8 + units % 8]) + entry[1:] if units % 8 else b""
    constants = tuple(with_lines(each, entry) if isinstance(each, types.CodeType) else each for each in code.co_consts)
    return code.replace(co_linetable=entry * (units // 8) + rest, co_consts=constants)


def compiled(source, name):
    """A source file as the bytes of a .pyc that is taken without a check."""
    code = compile(source, f"/lib/python/{name}", "exec", dont_inherit=True, optimize=2)
    code = with_lines(code, SAME if name.startswith(OWN) else UNKNOWN)
    return loader._code_to_hash_pyc(code, bytes(8), False)


def put(archive, name, data):
    """Add a file to an archive, compiled where it is Python."""
    if name.endswith(".py"):
        name, data = name[:-3] + ".pyc", compiled(data, name)
    archive.writestr(zipfile.ZipInfo(name), data)


def compile_library(stdlib, site, out):
    """Write out/stdlib.zip and out/site.zip from a zip of sources and a folder of unpacked wheels."""
    with zipfile.ZipFile(stdlib) as given, zipfile.ZipFile(f"{out}/stdlib.zip", "w") as archive:
        for name in given.namelist():
            if not name.endswith("/") and name not in LEFT_OUT:
                put(archive, name, given.read(name))
    with zipfile.ZipFile(f"{out}/site.zip", "w") as archive:
        for folder, _, names in sorted(os.walk(site)):
            for name in sorted(names):
                path = os.path.join(folder, name)
                with open(path, "rb") as file:
                    put(archive, os.path.relpath(path, site), file.read())
