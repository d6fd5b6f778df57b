"""The quick start from the memory image, and the plain start where the image can't be had: the same answers."""

import importlib.util
import json
from pathlib import Path

import pytest

from brimbook.record import blank

KEPT = json.loads((Path(__file__).parents[1] / "core" / "record" / "kept_links.json").read_text("utf-8"))
ROWS = Path(__file__).parents[1] / "published" / "rows.py"
SLOW = "Starting took longer than usual today"

# A worker that starts the core as the page's own does, then runs Python for the test.
PROBE = """
const at = (path) => new URL(path, import.meta.url);
const begun = {
  runtime: WebAssembly.compileStreaming(fetch(at("../pyodide/pyodide.asm.wasm"))), pages: fetch(at("../image/pages.gz")),
  module: import("../pyodide/pyodide.asm.mjs"), loader: import("../pyodide/pyodide.mjs"), image: import("../image/image.js"),
};
const start = async () => {
  if (new URL(self.location).hash === "#plain") return (await import("./plain.js")).plainStart(begun, () => {});
  return (await import("./restore.js")).restore(begun);
};
const opened = start();
addEventListener("message", async ({ data }) => {
  try {
    const { ask } = (await opened).pyimport("brimbook.door");
    const space = ask.__globals__.get("__builtins__");
    const names = space.get("dict")();
    space.get("exec")(data, names);
    postMessage({ told: names.get("told") });
  } catch (error) {
    postMessage({ told: `failed: ${error}` });
  }
});
"""


@pytest.fixture
def python(maker):
    """Runs Python in a core that was started in the page: python(code, plain=False) gives what it left in `told`."""
    maker.phone.context.route("**/core/probe.js", lambda route: route.fulfill(
        body=PROBE, content_type="text/javascript"))
    maker.opens()

    def run(code: str, plain: bool = False) -> str:
        return maker.page.evaluate("""([code, hash]) => new Promise((resolve) => {
            const worker = new Worker(new URL(`./core/probe.js${hash}`, location.href), { type: "module" });
            worker.onmessage = ({ data }) => { worker.terminate(); resolve(data.told); };
            worker.postMessage(code);
        })""", [code, "#plain" if plain else ""])

    return run


def test_the_usual_start_is_the_quick_one(maker):
    asked = []
    maker.page.on("request", lambda request: asked.append(request.url))
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    assert maker.page.get_by_text(SLOW).count() == 0
    assert [url for url in asked if url.endswith("image/pages.gz")]
    # Nothing that only a plain start needs is asked for.
    assert not [url for url in asked if url.endswith((".whl", "python_stdlib.zip", "pyodide-lock.json"))]


BREAKS = {
    "missing": lambda route: route.fulfill(status=404, body=""),
    "cut short": lambda route: route.fulfill(body=route.fetch().body()[:-1000], content_type="application/gzip"),
    "not packed": lambda route: route.fulfill(body=b"no image", content_type="application/gzip"),
}


@pytest.mark.parametrize("how", BREAKS)
def test_a_broken_image_starts_plainly_with_the_same_answers(another_phone, how):
    maker = another_phone(service_workers="block")
    maker.phone.allow("Failed to load resource")
    maker.phone.context.route("**/image/pages.gz", BREAKS[how])
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g", "301 g")
    maker.page.get_by_text(SLOW).wait_for()


def test_an_image_of_another_build_starts_plainly(another_phone):
    maker = another_phone(service_workers="block")

    def other_build(route):
        module = route.fetch().text()
        head, _, rest = module.partition("from([")
        numbers, _, rest = rest.partition("]")
        changed = [int(number) for number in numbers.split(",")]
        changed[20] ^= 255
        route.fulfill(body=f"{head}from({changed}{rest}".replace("from([", "from([", 1), content_type="text/javascript")

    maker.phone.context.route("**/image/image.js", other_build)
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g", "301 g")
    maker.page.get_by_text(SLOW).wait_for()


def published() -> str:
    """Python that works every published row out again, with no file at hand."""
    spec = importlib.util.spec_from_file_location("published_rows", ROWS)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    rows = json.dumps(module.rows())
    source = ROWS.read_text("utf-8").replace("import csv\n", "")
    return f"import json\nnames = {{'__name__': 'rows'}}\nexec({source!r}, names)\n" \
           f"rows = json.loads({rows!r})\ntold = f'{{len(rows)}} rows: ' + '; '.join(names['failures'](rows))"


@pytest.mark.parametrize("plain", [False, True], ids=["image", "plain"])
def test_published_values_hold(python, plain):
    told = python(published(), plain)
    count, _, failures = told.partition(" rows: ")
    assert int(count) > 150 and failures == ""


def test_kept_links_and_demos_are_worked_out_alike(python):
    fragments = [each["link"].partition("#")[2] or each["link"] for each in KEPT]
    demos = json.dumps([{"record": demo, "settings": {}} for demo in blank.demos()])
    code = f"""
import json
from brimbook import door
told = json.dumps([json.loads(door.ask("open_link", json.dumps({{"fragment": each}}))) for each in {fragments!r}]
                  + [json.loads(door.ask("work_out", json.dumps(each))) for each in json.loads({demos!r})])
"""
    here: dict = {}
    exec(code, here)  # the same lines, in this Python
    assert json.loads(python(code)) == json.loads(python(code, plain=True)) == json.loads(here["told"])


def test_chance_differs_from_start_to_start(python):
    code = "import random, os\ntold = f'{random.random()} {os.urandom(8).hex()}'"
    one, other = python(code).split(), python(code).split()
    assert one[0] != other[0] and one[1] != other[1]


def test_the_clock_is_the_device_s(python, maker):
    told = python("import time, datetime\ntold = f'{time.time()} {datetime.datetime.now().isoformat()} {time.monotonic()}'")
    seconds, local, _ = told.split()
    device = maker.page.evaluate("[Date.now() / 1000, new Date().getFullYear(), new Date().getHours()]")
    assert abs(float(seconds) - device[0]) < 60
    assert int(local[:4]) == device[1]


@pytest.mark.parametrize("zone", ["Asia/Tokyo", "America/New_York"])
def test_the_time_zone_is_the_device_s(another_phone, zone):
    maker = another_phone(timezone_id=zone)
    maker.phone.context.route("**/core/probe.js", lambda route: route.fulfill(
        body=PROBE, content_type="text/javascript"))
    maker.opens()
    code = "import datetime\ntold = str(datetime.datetime.fromtimestamp(0).hour)"
    told = maker.page.evaluate("""(code) => new Promise((resolve) => {
        const worker = new Worker(new URL("./core/probe.js", location.href), { type: "module" });
        worker.onmessage = ({ data }) => resolve(data.told);
        worker.postMessage(code);
    })""", code)
    assert int(told) == maker.page.evaluate("new Date(0).getHours()")


def test_a_fault_names_our_own_lines(python):
    told = python("""
import traceback
from brimbook.cast import mix
try:
    mix.powder_for_volume(1.0, 0.0)
except ZeroDivisionError:
    told = traceback.format_exc()
""")
    assert "brimbook/cast/mix.py\", line " in told and "line None, in powder_for_volume" not in told


def test_an_error_inside_a_library_is_still_told(python):
    told = python("""
import traceback
import segno
try:
    segno.make("x", version=99)
except ValueError:
    told = traceback.format_exc()
""")
    assert "segno" in told and "Error" in told


def test_memory_grows(python):
    told = python("block = bytearray(300_000_000)\nblock[-1] = 7\ntold = f'{len(block)} {block[-1]} {block[0]}'")
    assert told == "300000000 7 0"
