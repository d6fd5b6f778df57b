"""A build that fails leaves the page that was there; one that works takes its place whole."""

import pytest

from workshop import dist as workshop_dist
from workshop import stamps
from workshop.image import image
from workshop.release import with_release
from workshop.say import Trouble


@pytest.fixture
def elsewhere(dist, tmp_path, monkeypatch):
    """A dist/ of its own, with an older page in it."""
    folder = tmp_path / "dist"
    folder.mkdir()
    (tmp_path / "build").mkdir()
    (folder / "old.txt").write_text("old")
    monkeypatch.setattr(workshop_dist, "DIST", folder)
    monkeypatch.setattr(workshop_dist, "BUILD", tmp_path / "build")
    monkeypatch.setattr(stamps, "STAMPS", tmp_path / "stamps")
    return folder


def test_a_failed_proof_leaves_the_old_page(elsewhere, monkeypatch):
    def fail(*_):
        raise Trouble("The core does not load.")

    monkeypatch.setattr(workshop_dist, "prove", fail)
    with pytest.raises(Trouble, match="does not load"):
        workshop_dist.build()
    assert [path.name for path in elsewhere.iterdir()] == ["old.txt"]


def test_a_missing_page_is_told_and_leaves_the_old_one(elsewhere, monkeypatch, tmp_path):
    monkeypatch.setattr(workshop_dist, "WEB", tmp_path)
    with pytest.raises(Trouble, match="web/index.html is missing"):
        workshop_dist.build()
    assert [path.name for path in elsewhere.iterdir()] == ["old.txt"]


def test_a_new_page_takes_the_place_of_the_old_one_whole(elsewhere, tmp_path):
    ahead = tmp_path / "ahead"
    ahead.mkdir()
    (ahead / "new.txt").write_text("new")
    workshop_dist._put_in_place(ahead)
    assert [path.name for path in elsewhere.iterdir()] == ["new.txt"]


def test_the_same_sources_give_the_same_release(dist):
    files = workshop_dist._assemble((dist / "first.json").read_bytes())
    again = with_release(files | image(dist))
    assert again["offline.js"] == (dist / "offline.js").read_bytes()


def test_a_web_file_may_not_stand_in_for_a_built_one(elsewhere, monkeypatch):
    web = {**workshop_dist._web(), "first.json": b"{}"}
    monkeypatch.setattr(workshop_dist, "_web", lambda: web)
    with pytest.raises(Trouble, match="web/first.json stands where"):
        workshop_dist._assemble(b"{}")
