"""The part of the bench about a book of many vessels: its made-up book, its reckoning, its table; no browser is started."""

import json
import subprocess

from workshop.bench import book, report, server
from workshop.bench.book_made import book as made_book
from workshop.command import read
from workshop.node import node


def measured():
    times = {what: [3.0, 1.0, 2.0] for what in book.WORK}
    return {"250": {"letters": 500_000, "times": times, "read": {}}, "2000": {"letters": 4_000_000, "times": {**times, "json": [90.0]}, "read": {}}}


def test_medians_and_the_table():
    said = book.told(measured())
    assert said["250"]["ms"]["list"] == 2.0 and said["250"]["p95_ms"]["list"] == 3.0 and said["250"]["n"] == 3
    assert "| 2,000 | 4.0 | 2 | 2 | 90 | 2 | 2 | 2 | 2 | 2 | 2 |" in report.markdown({"book": said})


def test_the_made_up_book_is_the_same_each_time_and_rich():
    entries = made_book(50)
    assert entries == made_book(50) and entries != made_book(50, seed=8)
    sizes = [len(json.dumps(entry)) for entry in entries]
    assert 1000 < min(sizes) and max(sizes) < 3000
    assert len({entry["record"]["id"] for entry in entries}) == 50


def test_the_command_takes_this_part():
    assert read(["bench", "--only", "book"]).only == "book"


def test_the_page_s_part_is_javascript_and_is_served():
    path = server.HERE / "bench_book.js"
    subprocess.run([node(), "--input-type=module", "--check"], input=path.read_text("utf-8"), text=True, check=True)
    assert f"/{path.name}" in server.PAGES
    timed = path.read_text("utf-8")
    assert all(f"{what}: []" in timed for what in book.WORK)
