"""Runs inside Pyodide, just before its memory becomes the image: import all, use all once, tidy up."""

import gc
import json
import linecache
import random
import sys
import types
import typing


def stand_in(name, **has):
    """A module in place of one that the libraries import but never call here."""
    module = types.ModuleType(name)
    module.__dict__.update(has)
    sys.modules[name] = module


def refuse(*_, **__):
    """What a stand-in's functions do."""
    raise ImportError("not in the image")


# The real ones bring in email, http, sockets and network addresses. After the image is made they are gone again,
# and who imports them is told that they are not there.
STAND_INS = ("importlib.metadata", "platformdirs", "urllib.request", "ipaddress")


def import_the_core():
    """The door, with all that it stands on."""
    stand_in("importlib.metadata", version=lambda name: "0", PackageNotFoundError=ImportError, entry_points=refuse)
    stand_in("platformdirs", user_cache_dir=refuse)
    stand_in("urllib.request", urlopen=refuse, Request=refuse)
    stand_in("ipaddress", ip_address=refuse)
    from brimbook import door

    for name in STAND_INS:
        del sys.modules[name]
    return door


def exercise(door):
    """Ask everything once, so that what is made on first use is in the image."""
    from brimbook.quantity import units

    for unit in units.UNITS.values():
        units.to_base(1.0, unit)
    # Every factor is known now, so the registry that gave them need not be shipped.
    units._registry.cache_clear()
    settings = {"mass": "lb", "length": "in", "temperature": "F", "decimal": "comma"}
    door.ask("shelf", json.dumps({"record": {"materials": [{}]}}))
    door.ask("countdown", json.dumps({"now": "2026-11-24T09:30:00", "due": ["2026-11-24T10:00"]}))
    for demo in json.loads(door.ask("first", "{}"))["answer"]["demos"]:
        for chosen in ({}, settings):
            door.ask("work_out", json.dumps({"record": demo["record"], "settings": chosen}))
        door.ask("calendar", json.dumps({"record": demo["record"], "place": "casts.0", "now": "2026-11-24T09:30:00",
                                         "stamp": "20261124T093000Z"}))
        reply = door.ask("share", json.dumps({"record": demo["record"], "address": ""}))
        door.ask("open_link", json.dumps({"fragment": json.loads(reply)["answer"]["link"][1:]}))


# What is not in the image comes from an archive when a file is read: the core's part that reads, but not the standard
# library that it needs, nor how files may be written.
ENCODINGS = ("utf-16", "utf-16-le", "utf-16-be", "latin-1", "cp1252")


def be_ready_to_read():
    """The libraries that reading takes, and each kind of text read once."""
    import array  # noqa: F401
    import heapq  # noqa: F401
    import xml.parsers.expat  # noqa: F401

    for encoding in ENCODINGS:
        "a".encode(encoding).decode(encoding)


def own_modules():
    """The core's modules that are here."""
    return {name: module for name, module in sys.modules.items() if name.partition(".")[0] == "brimbook"}


def bring(archive):
    """Let the core's modules that are not here be imported from an archive."""
    for name, module in own_modules().items():
        if hasattr(module, "__path__"):
            module.__path__.append(f"{archive}/{name.replace('.', '/')}")


# Every factor is known when the image is made, and a start from it asks for no other: what made them need not be shipped,
# nor what only that had asked for.
SPENT = ("pint", "flexparser", "flexcache", "typing_extensions", "logging", "fractions", "numbers", "decimal", "_pydecimal",
         "pickle", "_compat_pickle", "csv", "_csv", "platform", "hmac", "ctypes", "_ctypes", "sysconfig", "contextvars")


def leave_out_spent(there_before):
    """Drop the libraries whose work is done."""
    from brimbook.quantity import units

    for name in set(sys.modules) - there_before:
        if name.partition(".")[0] in SPENT:
            del sys.modules[name]
    del units.pint


def tidy_up(there_before):
    """Drop what was remembered on the way, and the modules that came for it."""
    from brimbook.quantity import units

    # The factors of the units stay: their registry is gone.
    for module in [module for name, module in sys.modules.items() if name.startswith("brimbook.") and module is not units]:
        for kept in vars(module).values():
            if hasattr(kept, "cache_clear") and kept.__module__ == module.__name__:
                kept.cache_clear()
    sys.path_importer_cache.clear()
    linecache.clearcache()
    # What type hints left behind; nothing asks for it again.
    for cleanup in typing._cleanups:
        cleanup()
    leave_out_spent(there_before)
    gc.collect()


# What a restored start takes out of here: new chance, lest every start have the same, and how to bring the rest.
reseed = random.seed
before = set(sys.modules)
door = import_the_core()
exercise(door)
be_ready_to_read()
tidy_up(before)
loaded = " ".join(own_modules())
