"""The tree: what lies at the top, and what no file may hold."""

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "py", "web", "tests", "build.py"}
LISTED = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=False).stdout.split("\n")
TEXTS = [name for name in LISTED if name and Path(name).suffix in {".py", ".js", ".mjs", ".css", ".html", ".md", ".toml"}]
# Hosts that may be named: as the name of a format, or in an invented example.
NAMED_HOSTS = {"www.w3.org", "schemas.microsoft.com", "schemas.openxmlformats.org", "example.org", "localhost", "127.0.0.1"}


def test_the_top_holds_only_what_it_should():
    top = {name.split("/")[0] for name in LISTED if name}
    assert {name for name in top if not name.startswith(".")} <= TOP


@pytest.mark.parametrize("name", [name for name in TEXTS if name.endswith((".py", ".js", ".mjs", ".css", ".html"))])
def test_code_names_no_outside_address(name):
    hosts = set(re.findall(r"https?://([A-Za-z0-9.-]+)", (ROOT / name).read_text("utf-8")))
    assert hosts <= NAMED_HOSTS


@pytest.mark.parametrize("name", TEXTS)
def test_nothing_is_left_for_later(name):
    words = ["TO" + "DO", "FIX" + "ME", "X" * 3, "HA" + "CK"]
    text = (ROOT / name).read_text("utf-8")
    assert not [word for word in words if re.search(rf"\b{word}\b", text)]


@pytest.mark.parametrize("name", TEXTS)
def test_no_path_of_a_machine(name):
    folders = "|".join(["wo" + "rk", "ro" + "ot", "ho" + "me"])
    assert not re.search(rf"(?<![\w.])/({folders})/\w", (ROOT / name).read_text("utf-8"))


def test_there_is_something_to_look_at():
    assert "build.py" in TEXTS and len(TEXTS) > 50
