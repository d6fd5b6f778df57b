"""The release's version follows from the files and from nothing else."""

import json

import pytest

from workshop.release import release, with_release

FILES = {"index.html": b"<p>", "core/a.js": b"1", "offline.js": b"work()"}


def test_the_version_is_the_same_for_the_same_files_in_any_order():
    turned = dict(reversed(FILES.items()))
    assert release(turned) == release(FILES)


@pytest.mark.parametrize(
    "change",
    [
        {"index.html": b"<b>"},
        {"core/a.js": b"1 "},
        {"new.txt": b""},
    ],
)
def test_the_version_changes_when_a_file_does(change):
    assert release({**FILES, **change})["version"] != release(FILES)["version"]


def test_the_version_changes_when_a_file_is_renamed():
    renamed = {"index.html": b"<p>", "core/b.js": b"1", "offline.js": b"work()"}
    assert release(renamed)["version"] != release(FILES)["version"]


def test_the_release_stands_above_the_service_worker():
    head, _, rest = with_release(FILES)["offline.js"].decode().partition("\n")
    assert rest == "work()"
    told = json.loads(head.removeprefix("const RELEASE = ").removesuffix(";"))
    assert told == release(FILES)
    assert told["files"] == ["core/a.js", "index.html"]
