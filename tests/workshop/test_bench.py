"""The bench's own reckoning: medians, bytes, the stock site, its server; no browser is started."""

import json
import os
import subprocess
import sys
import urllib.error
import urllib.request

import pytest

from workshop.bench import numbers, processes, report, server, sites, starts, wire
from workshop.bench.engines import FIREFOX_SETTINGS, Engine
from workshop.bench.sessions import _server
from workshop.command import read

BUILT = {
    "index.html": b"<p>",
    "core/worker.js": b"ours",
    "core/restore.js": b"ours",
    "core/door.js": b"door",
    "image/pages.gz": b"pages",
    "pyodide/pyodide.asm.wasm": b"trimmed",
    "python/wheels.json": b"[]",
    "offline.js": b"const RELEASE = {};\nown();\n",
}
PYODIDE = {name: b"stock " + name.encode() for name in [*sites.STOCK_PYODIDE, "README.md"]}


def test_medians_spreads_and_percentiles():
    assert numbers.middle([3, 1, 2]) == 2
    assert numbers.middle([]) is None
    assert numbers.spread([30.04, 10, 20]) == {"min": 10, "median": 20, "max": 30.0, "n": 3}
    assert numbers.percentile(range(1, 301), 95) == 285
    assert numbers.percentile([5, 1, 9], 50) == 5
    assert numbers.percentile([7], 1) == 7


def test_a_ratio_is_stock_over_ours_and_none_where_one_is_missing():
    assert numbers.ratio(3000, 400) == 7.5
    assert numbers.ratio(None, 400) is None
    assert numbers.ratio(3000, None) is None


def test_the_stock_site_is_the_same_page_over_stock_pyodide():
    stock = sites.stock(BUILT, PYODIDE)
    assert stock["index.html"] == BUILT["index.html"] and stock["core/door.js"] == BUILT["core/door.js"]
    assert b"loadPyodide" in stock["core/worker.js"]
    assert {name for name in stock if name.startswith("pyodide/")} == {f"pyodide/{name}" for name in sites.STOCK_PYODIDE}
    assert stock["pyodide/pyodide.asm.wasm"] == PYODIDE["pyodide.asm.wasm"]
    assert not any(name.startswith("image/") for name in stock) and "core/restore.js" not in stock


def test_the_stock_service_worker_keeps_every_file_of_its_site():
    stock = sites.stock(BUILT, PYODIDE)
    head, own = stock["offline.js"].split(b"\n", 1)
    kept = json.loads(head.removeprefix(b"const RELEASE = ").removesuffix(b";"))
    assert own == b"own();\n"
    assert set(kept["files"]) == set(stock) - {"offline.js"}
    assert kept["packed"] == kept["later"] == []


def test_the_built_page_makes_a_stock_site(dist):
    ours = sites.ours(dist)
    stock = sites.stock(ours)
    assert len(stock["pyodide/pyodide.asm.wasm"]) > len(ours["pyodide/pyodide.asm.wasm"])
    assert {"python/wheels.json", "first.json", "app.js"} <= set(sites.first_visit(stock, plain=True))


def test_a_quick_first_visit_fetches_no_wheels_and_no_library():
    ours = BUILT | {"pyodide/python_stdlib.zip": b""}
    names = sites.first_visit(ours, plain=False)
    assert "image/pages.gz" in names and "offline.js" in names
    assert "python/wheels.json" not in names and "pyodide/python_stdlib.zip" not in names
    assert set(sites.first_visit(ours, plain=True)) == set(ours)


def test_only_the_service_worker_is_left_out_of_a_plain_site():
    assert set(BUILT) - set(sites.without_service_worker(BUILT)) == {"offline.js"}


@pytest.mark.parametrize("name", ["image/pages.gz", "a.zip", "a.png", "a.whl"])
def test_what_is_packed_counts_as_it_is(name):
    assert wire.file_sizes(name, b"a" * 1000) == {"raw": 1000, "gzip": 1000, "brotli": 1000}


def test_what_is_not_packed_is_packed_on_the_wire():
    sized = wire.file_sizes("a.js", b"a" * 1000)
    assert sized["raw"] == 1000 and sized["gzip"] < 50 and sized["brotli"] < sized["gzip"]


def test_a_total_is_not_told_where_a_part_of_it_is_missing():
    each = {"a": {"gzip": 2, "brotli": 1}, "b": {"gzip": 3, "brotli": None}}
    assert wire.total(each, "gzip") == 5
    assert wire.total(each, "brotli") is None


def test_parts_are_the_top_folders():
    assert wire.parts({"a/b/c": b"12", "a/d": b"3", "e": b"4567"}) == {"a": 3, ".": 4}


def test_conditions_go_by_turns_and_are_parted_again():
    steps = starts._by_turns(2, {"stay": 1})
    assert [step["site"] for step in steps] == ["stock", "ours", "stock", "ours"]
    assert starts._parted([9, 9, 1, 2, 3, 4], 2) == {"stock": [1, 3], "ours": [2, 4]}


def result(start, answered, slow=False):
    return {"started": start, "answered": answered, "shown": answered + 5, "slow": slow, "memory": 200.0}


def said():
    cold = {"stock": [result(100, 3100)] * 3, "ours": [result(100, 400), result(100, 500), result(100, 900, True)]}
    edits = {"stock": [9.0] * 20, "ours": [*[5.0] * 19, 50.0]}
    one = {"starts": {"cold": cold}, "edits": edits, "trouble": ""}
    sized = {"a.js": {"raw": 9, "gzip": 7, "brotli": 6}}
    measured = {"engines": {"chromium": one}, "weights": {"ours": sized, "stock": sized}, "parts": {".": 9}}
    return report.gathered(measured, [Engine("chromium", "chromium", "1", "")], {"firefox": "no Firefox", "webkit": "no WebKitGTK"})


def test_the_object_has_every_engine_and_condition():
    told = said()
    assert told["stock_ms"]["chromium"] == {"cold": 3000, "warm": None, "offline": None}
    assert told["ours_ms"]["chromium"]["cold"] == 400
    assert told["ratio"]["chromium"]["cold"] == 7.5
    assert told["ratio"]["webkit"] == {"cold": None, "warm": None, "offline": None}
    assert {"ours_gzip", "ours_brotli", "stock_gzip", "stock_brotli"} <= set(told["bytes"])
    assert (told["edit_ms"]["p50"], told["edit_ms"]["p95"]) == (5, 5)
    assert told["ours_ms_from_navigation"]["chromium"]["cold"] == 505
    assert told["plain_starts"]["chromium"]["cold"] == 1
    json.dumps(told)


def test_the_table_tells_what_was_measured_what_was_not_and_what_fell_back():
    text = report.markdown(said())
    assert "| Chromium | cold | 3000 (3000 to 3000, 3) | 400 (300 to 800, 3) | 7.5 | 505 |" in text
    assert "Firefox was not measured: no Firefox." in text
    assert "Chromium, cold: 1 of our starts went the plain way." in text


def fetched(address):
    with urllib.request.urlopen(address, timeout=10) as answer:
        return answer.read()


def test_the_server_hands_out_the_plan_hands_on_results_and_plays_dead(tmp_path):
    (tmp_path / "a.js").write_text("here")
    steps = [{"site": "ours", "task": "answer"}, {"site": "ours", "task": "answer", "dead": True}]
    with _server({"ours": tmp_path}, steps) as (first, results):
        base = first.removesuffix("/bench.html?0")
        assert b"bench.js" in fetched(first)
        assert json.loads(fetched(f"{base}/bench/step?0")) == steps[0]
        assert fetched(f"{base}/site/a.js") == b"here"
        reply = json.loads(fetched(urllib.request.Request(f"{base}/bench/result", data=b'{"step": 0}')))
        assert json.loads(results.get(timeout=10)) == {"step": 0}
        assert reply == {"next": f"{base}/bench.html?1"}
        fetched(f"{base}/bench/step?1")
        with pytest.raises((urllib.error.URLError, ConnectionError)):
            fetched(f"{base}/site/a.js")
        assert b"bench.js" in fetched(first)


def test_a_plan_ends():
    plan = server.Plan([{"site": "ours"}])
    plan.ports = {"ours": 1}
    assert plan.address(0) and plan.address(1) == ""


@pytest.fixture
def system(tmp_path, monkeypatch):
    """A machine of invented processes: a browser 10, its helper 11, two pages below the helper, and a stranger 20."""
    monkeypatch.setattr(processes, "PROC", tmp_path)
    for pid, parent, peak, words in [(10, 1, 900, "it"), (11, 10, 50, "helper"), (12, 11, 200, "--kind=page"),
                                     (13, 11, 300, "--kind=page"), (20, 1, 800, "--kind=page")]:
        (tmp_path / str(pid)).mkdir()
        (tmp_path / str(pid) / "status").write_text(f"State:\tS (sleeping)\nPPid:\t{parent}\nVmHWM:\t  {peak}000 kB\n")
        (tmp_path / str(pid) / "cmdline").write_text(words)


def test_the_page_is_the_largest_of_the_browsers_own_page_processes(system):
    assert sorted(processes.descendants(10)) == [11, 12, 13]
    assert processes.peak_memory(10, "--kind=page") == 307.2
    assert processes.peak_memory(20, "--kind=page") is None


def test_no_memory_is_told_where_the_system_does_not_tell(tmp_path, monkeypatch):
    monkeypatch.setattr(processes, "PROC", tmp_path / "nothing")
    assert processes.peak_memory(os.getpid(), "") is None


def test_a_browser_is_ended_even_if_it_will_not_leave(monkeypatch):
    monkeypatch.setattr(processes, "GRACE", 0.2)
    stubborn = "import signal, time; signal.signal(signal.SIGTERM, signal.SIG_IGN); time.sleep(60)"
    with processes.running([sys.executable, "-c", stubborn], os.environ) as pid:
        os.kill(pid, 0)
    with pytest.raises(ProcessLookupError):
        os.kill(pid, 0)


def test_firefox_settings_are_javascript(tmp_path):
    Engine("firefox", "firefox", "", "").command("about:blank", tmp_path)
    lines = (tmp_path / "user.js").read_text().splitlines()
    assert len(lines) == len(FIREFOX_SETTINGS)
    assert 'user_pref("app.update.enabled", false);' in lines and 'user_pref("browser.startup.page", 0);' in lines


def test_the_command_takes_runs_and_json():
    assert (read(["bench"]).runs, read(["bench"]).json) == (7, False)
    assert (read(["bench", "--json", "--runs", "3"]).runs, read(["bench", "--json"]).json) == (3, True)


@pytest.mark.parametrize("runs", ["0", "many", "-1", "101"])
def test_runs_are_a_number_that_makes_sense(runs):
    with pytest.raises(SystemExit):
        read(["bench", "--runs", runs])


def test_the_stock_worker_and_the_page_of_the_bench_are_javascript():
    from workshop.node import node

    for name in ("stock_worker.js", "bench.js"):
        source = (sites.HERE / name).read_bytes()
        checked = subprocess.run([node(), "--check", "--input-type=module"], input=source, capture_output=True)
        assert checked.returncode == 0, checked.stderr
