"""The project's own environment: made anew when it must be, and held to the locks."""

import sys

import pytest

from workshop import environment
from workshop.pip import pip
from workshop.say import Trouble
from workshop.stamps import sha256
from workshop.wheel import version, wheel, wheel_name


@pytest.fixture
def done(tmp_path, monkeypatch):
    """What make_ready did, noted instead of done, over locks and a stamp of its own."""
    steps = []
    for name in ("build", "page", "test"):
        (tmp_path / f"{name}.txt").write_text(name)
    monkeypatch.setattr(environment, "LOCKS", tmp_path)
    monkeypatch.setattr(environment, "STAMP", tmp_path / "stamp.json")
    monkeypatch.setattr(environment, "_create", lambda: steps.append("create"))
    monkeypatch.setattr(environment, "_install", steps.append)
    return steps


def test_a_second_run_has_nothing_to_do(done):
    for _ in range(2):
        environment.make_ready(for_tests=False)
    assert done == ["create", "build"]


def test_the_tests_add_what_they_need(done):
    for for_tests in (False, True, False):
        environment.make_ready(for_tests=for_tests)
    assert done == ["create", "build", "test"]


def test_a_changed_lock_makes_it_anew(done, tmp_path):
    environment.make_ready(for_tests=False)
    (tmp_path / "page.txt").write_text("newer")
    environment.make_ready(for_tests=False)
    assert done == ["create", "build"] * 2


def test_another_place_makes_it_anew(done, tmp_path, monkeypatch):
    environment.make_ready(for_tests=False)
    monkeypatch.setattr(environment, "ROOT", tmp_path)
    environment.make_ready(for_tests=False)
    assert done == ["create", "build"] * 2


def test_a_broken_stamp_makes_it_anew(done, tmp_path):
    (tmp_path / "stamp.json").write_text("{")
    environment.make_ready(for_tests=False)
    assert done == ["create", "build"]


@pytest.fixture
def shelf(tmp_path):
    """A folder with one wheel in it, from which pip fetches without a network."""
    (tmp_path / wheel_name()).write_bytes(wheel())
    return tmp_path


def fetch(shelf, digest):
    lock = shelf / "lock.txt"
    lock.write_text(f"brimbook=={version()} --hash=sha256:{digest}\n")
    from_shelf = ["--no-index", "--no-deps", "--find-links", shelf, "--dest", shelf / "got"]
    pip(sys.executable, "download", *from_shelf, "-r", lock, log="pip-of-a-test")
    return [path.name for path in (shelf / "got").iterdir()]


def test_pip_takes_a_wheel_with_the_locked_hash(shelf):
    assert fetch(shelf, sha256((shelf / wheel_name()).read_bytes())) == [wheel_name()]


def test_pip_refuses_a_wheel_with_another_hash(shelf):
    with pytest.raises(Trouble, match="does not match its locked hash"):
        fetch(shelf, "0" * 64)
