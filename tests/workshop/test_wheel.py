"""Brimbook's own wheel."""

import base64
import csv
import hashlib
import io
import os
import zipfile

import pytest

from workshop.say import Trouble
from workshop.wheel import version, wheel, wheel_name


@pytest.fixture
def package(tmp_path):
    folder = tmp_path / "brimbook"
    (folder / "part").mkdir(parents=True)
    (folder / "__init__.py").write_text("one = 1\n")
    (folder / "part" / "__init__.py").write_text("")
    return folder


def test_the_same_files_give_the_same_bytes_whenever_they_were_written(package):
    first = wheel(package)
    os.utime(package / "__init__.py", (1e9, 1e9))
    assert wheel(package) == first


def test_another_content_gives_another_wheel(package):
    first = wheel(package)
    (package / "__init__.py").write_text("one = 2\n")
    assert wheel(package) != first


def test_what_python_leaves_behind_stays_out(package):
    first = wheel(package)
    (package / "__pycache__").mkdir()
    (package / "__pycache__" / "x.pyc").write_bytes(b"x")
    (package / ".hidden").write_text("x")
    assert wheel(package) == first


def test_the_record_holds_every_file_with_its_digest(package):
    with zipfile.ZipFile(io.BytesIO(wheel(package))) as archive:
        record = f"brimbook-{version()}.dist-info/RECORD"
        rows = {name: digest for name, digest, _ in csv.reader(archive.read(record).decode().splitlines())}
        assert set(rows) == set(archive.namelist())
        for name in set(rows) - {record}:
            digest = hashlib.sha256(archive.read(name)).digest()
            assert rows[name] == "sha256=" + base64.urlsafe_b64encode(digest).rstrip(b"=").decode()


def test_the_wheel_that_ships_is_the_one_written_now(dist):
    assert (dist / "python" / wheel_name()).read_bytes() == wheel()


def test_no_core_is_told_in_a_sentence(tmp_path):
    with pytest.raises(Trouble, match="no core"):
        wheel(tmp_path)
