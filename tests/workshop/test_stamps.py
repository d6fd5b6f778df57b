"""Fingerprints and stamps: made again when, and only when, something changed."""

import pytest

from workshop import stamps
from workshop.stamps import fingerprint, kept


@pytest.fixture
def build_folder(tmp_path, monkeypatch):
    monkeypatch.setattr(stamps, "BUILD", tmp_path / "build")
    monkeypatch.setattr(stamps, "STAMPS", tmp_path / "build" / "stamps")


def test_a_fingerprint_follows_names_and_contents(tmp_path):
    folder = tmp_path / "source"
    folder.mkdir()
    (folder / "a.txt").write_text("one")
    before = fingerprint(folder)
    assert fingerprint(folder) == before
    (folder / "a.txt").write_text("two")
    changed = fingerprint(folder)
    (folder / "a.txt").rename(folder / "b.txt")
    assert len({before, changed, fingerprint(folder)}) == 3


def test_what_python_writes_beside_the_source_does_not_count(tmp_path):
    before = fingerprint(tmp_path)
    (tmp_path / "__pycache__").mkdir()
    (tmp_path / "__pycache__" / "a.pyc").write_text("x")
    assert fingerprint(tmp_path) == before


def test_a_kept_thing_is_made_once_for_one_fingerprint(build_folder):
    made = []

    def make():
        made.append(1)
        return b"thing"

    assert [kept("thing", digest, make) for digest in ("a", "a", "b")] == [b"thing"] * 3
    assert len(made) == 2
