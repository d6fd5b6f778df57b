"""Fetched files are checked against the locks each time."""

import shutil

import pytest

from workshop import packages
from workshop.say import Trouble


@pytest.fixture
def fetched(dist, tmp_path, monkeypatch):
    """A copy of what the build has fetched, free to be spoiled."""
    copy = tmp_path / "fetched"
    shutil.copytree(packages.FETCHED, copy)
    monkeypatch.setattr(packages, "FETCHED", copy)
    return copy


def test_the_locked_wheels_are_found_in_the_order_of_the_lock(fetched):
    names = [path.name.partition("-")[0] for path in packages.wheels("page")]
    assert names == ["flexcache", "flexparser", "pint", "platformdirs", "segno", "typing_extensions"]


def test_a_changed_wheel_is_refused(fetched):
    [wheel] = fetched.glob("page-*/segno-*.whl")
    wheel.write_bytes(wheel.read_bytes() + b"x")
    with pytest.raises(Trouble, match="segno.*does not match its locked hash"):
        packages.wheels("page")


def test_a_missing_wheel_is_told(fetched):
    [wheel] = fetched.glob("page-*/segno-*.whl")
    wheel.unlink()
    with pytest.raises(Trouble, match="segno 1.6.6 is missing"):
        packages.wheels("page")


def test_a_changed_npm_package_is_refused_and_thrown_away(fetched):
    [tarball] = fetched.glob("lit-html-*.tgz")
    tarball.write_bytes(tarball.read_bytes() + b"x")
    with pytest.raises(Trouble, match="lit-html.*does not match its locked hash"):
        packages.npm_package("lit-html")
    assert not tarball.exists()


def test_an_npm_package_shows_its_files(fetched):
    package = packages.npm_package("lit-html")
    assert b"render" in package.files["lit-html.js"]
    assert package.version == "3.3.3"
