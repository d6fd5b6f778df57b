"""The locks: every package pinned and hashed, no address, one version of each."""

import json
import re

import pytest

from workshop.places import LOCKS

NAMES = ["build", "page", "proof", "samples", "test"]


def entries(name):
    """Each requirement of a lock, its continued lines joined."""
    text = (LOCKS / f"{name}.txt").read_text().replace("\\\n", " ")
    return [line for line in text.splitlines() if line.strip()]


@pytest.mark.parametrize("name", NAMES)
def test_every_requirement_is_pinned_and_hashed(name):
    lines = entries(name)
    assert lines
    for line in lines:
        assert re.match(r"[a-z0-9-]+==[0-9][\w.]*( ;.*?)?\s+--hash=sha256:[0-9a-f]{64}\b", line), line


@pytest.mark.parametrize("path", sorted(LOCKS.iterdir()), ids=lambda path: path.name)
def test_no_lock_holds_an_address(path):
    text = path.read_text()
    assert "://" not in text
    assert "resolved" not in text
    assert not re.search(r"^\s*--(?!hash=)", text.replace("\\\n", ""), re.MULTILINE)


def test_npm_packages_are_pinned_with_their_integrity():
    for name, locked in json.loads((LOCKS / "npm.json").read_text()).items():
        assert set(locked) == {"version", "integrity"}, name
        assert re.fullmatch(r"\d+\.\d+\.\d+", locked["version"])
        assert re.fullmatch(r"sha512-[A-Za-z0-9+/]{86}==", locked["integrity"])


def test_the_tests_run_with_the_very_wheels_of_the_page():
    page, test = entries("page"), entries("test")
    assert page
    assert [line for line in page if line not in test] == []


def test_every_lock_has_the_list_it_was_made_from():
    for name in NAMES:
        assert (LOCKS / f"{name}.in").exists()
