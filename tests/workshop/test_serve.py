"""The server: kinds of files, no stale copies, stop and start again."""

import urllib.error
import urllib.request

import pytest

from workshop import serve
from workshop.say import Trouble
from workshop.serve import Server


@pytest.fixture
def server(tmp_path):
    for name in ("a.wasm", "a.js", "a.mjs", "a.json", "a.webmanifest", "a.svg", "a.whl", "a.zip", "a.css"):
        (tmp_path / name).write_bytes(b"x")
    (tmp_path / "index.html").write_text("<p>")
    server = Server(tmp_path).start()
    yield server
    server.stop()


def kind(server, name):
    with urllib.request.urlopen(server.address + name, timeout=10) as answer:
        return answer.headers["Content-Type"].partition(";")[0]


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("", "text/html"),
        ("a.wasm", "application/wasm"),
        ("a.js", "text/javascript"),
        ("a.mjs", "text/javascript"),
        ("a.css", "text/css"),
        ("a.json", "application/json"),
        ("a.webmanifest", "application/manifest+json"),
        ("a.svg", "image/svg+xml"),
        ("a.whl", "application/zip"),
        ("a.zip", "application/zip"),
    ],
)
def test_each_file_is_served_as_its_kind(server, name, expected):
    assert kind(server, name) == expected


def test_a_browser_is_told_to_ask_again(server):
    with urllib.request.urlopen(server.address, timeout=10) as answer:
        assert answer.headers["Cache-Control"] == "no-cache"


def test_a_stopped_server_is_gone_and_comes_back_on_its_port(server):
    address = server.address
    server.stop()
    with pytest.raises(urllib.error.URLError):
        urllib.request.urlopen(address, timeout=10)
    server.start()
    assert server.address == address
    assert kind(server, "a.js") == "text/javascript"


def test_a_port_in_use_makes_way_for_the_next_free_one(server, capsys):
    found = serve._first_free(server.port)
    try:
        assert found.port > server.port
        assert f"Port {server.port} is in use; {found.port} is free." in capsys.readouterr().out
    finally:
        found.stop()


def test_no_free_port_is_told_in_a_sentence(server, monkeypatch):
    monkeypatch.setattr(serve, "PORTS_TO_TRY", 1)
    with pytest.raises(Trouble, match="in use"):
        serve._first_free(server.port)
