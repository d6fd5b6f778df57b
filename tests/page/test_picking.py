"""A file is chosen, read by a second worker, and what it tells is written where it belongs. On a stand-in for the core."""

import json

import pytest
from model_page import answer, chooses_file, pick, told, workers

VESSEL = {"name": "Tide cup", "casts": [{"weight": "640 g"}], "pick": {}}
WEIGHT = answer(casts__0__weight="812 g")
SLOW = {"steps": 200, "wait": 100, **WEIGHT}


MOUSE = {"has_touch": False, "is_mobile": False}


def shown(tried, record=VESSEL, **screen):
    maker = tried(record, **screen)
    maker.card("Mold").locator("button.card-face").click()
    pick(maker).wait_for()
    return maker


def record(maker) -> dict:
    return json.loads(maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')"))["record"]


def weight(maker, text: str) -> None:
    """Wait until the water's field shows a text."""
    maker.page.wait_for_function("(text) => document.getElementById('at.casts.0.weight').value === text", arg=text)


def is_forgettable(maker) -> bool:
    return pick(maker).get_by_role("button", name="Forget the file").is_visible()


def test_a_file_is_read_and_written_and_can_be_undone(tried):
    maker = shown(tried)
    workers(maker, 1)
    chooses_file(maker, told(steps=10, wait=100, **WEIGHT))
    pick(maker).get_by_role("progressbar").wait_for()
    maker.reads("Mold", "Layer 2…")
    assert len(maker.page.workers) == 2
    maker.reads("Mold", "Read whole.")
    weight(maker, "812 g")
    workers(maker, 1)
    assert pick(maker).get_by_role("progressbar").count() == 0
    maker.page.get_by_text("tide.stl was read.").wait_for()
    maker.page.get_by_role("button", name="Undo").tap()
    weight(maker, "640 g")
    assert record(maker)["casts"] == [{"weight": "640 g"}]


def test_progress_tells_its_share(tried):
    maker = shown(tried)
    chooses_file(maker, told(steps=4, wait=300, **WEIGHT))
    maker.page.wait_for_function("() => document.querySelector('.pick progress')?.value === 0.5")


def test_cancel_changes_nothing_and_ends_the_worker(tried):
    maker = shown(tried)
    before = record(maker)
    chooses_file(maker, told(**SLOW))
    maker.reads("Mold", "Layer 3…")
    cancel = pick(maker).get_by_role("button", name="Cancel")
    assert cancel.bounding_box()["height"] >= 48
    cancel.tap()
    maker.reads("Mold", "Stopped. Nothing was changed.")
    workers(maker, 1)
    assert record(maker) == before
    assert pick(maker).get_by_role("button", name="Choose the file").evaluate("each => each === document.activeElement")


def test_a_file_that_cannot_be_read_is_told_beside_the_button(tried):
    maker = shown(tried)
    before = record(maker)
    chooses_file(maker, told(fault={"sentence": "This file is damaged. Save it again.", "detail": ""}))
    pick(maker).locator(".fault").get_by_text("This file is damaged. Save it again.").wait_for()
    workers(maker, 1)
    assert record(maker) == before and not is_forgettable(maker)


def test_a_file_that_is_too_large_is_not_even_opened(tried):
    maker = shown(tried)
    chooses_file(maker, told(padding="x" * 1000))
    pick(maker).locator(".fault").get_by_text("This file is larger than 1 kB.").wait_for()
    assert len(maker.page.workers) == 1


def test_what_was_told_goes_when_the_entry_is_changed(tried):
    maker = shown(tried)
    chooses_file(maker, told(**WEIGHT))
    maker.reads("Mold", "Read whole.")
    maker.types("Mold", "Water", "700 g")
    pick(maker).get_by_text("Read whole.").wait_for(state="detached")


def test_a_worker_that_breaks_leaves_the_figures_alone(tried):
    maker = shown(tried)
    maker.phone.allow("out of memory")
    chooses_file(maker, told(crash=True))
    maker.reads("Mold", "couldn't read so large a file")
    workers(maker, 1)
    maker.types("Mold", "Water", "700 g")
    assert record(maker)["casts"] == [{"weight": "700 g"}]
    assert maker.page.get_by_text("cannot be worked out").count() == 0


def test_the_same_file_can_be_chosen_again(tried):
    maker = shown(tried)
    for _ in range(2):
        chooses_file(maker, told(**WEIGHT))
        weight(maker, "812 g")
        maker.page.get_by_role("button", name="Undo").tap()
        weight(maker, "640 g")


def test_a_second_file_takes_the_place_of_the_first(tried):
    maker = shown(tried)
    chooses_file(maker, told(**SLOW))
    maker.reads("Mold", "Layer 2…")
    pick(maker).locator("input").set_input_files(told("swell.stl", **answer(casts__0__weight="99 g")))
    weight(maker, "99 g")
    maker.page.get_by_text("swell.stl was read.").wait_for()
    workers(maker, 1)


def test_leaving_the_vessel_stops_the_reading_and_says_so(tried):
    maker = shown(tried)
    before = record(maker)
    chooses_file(maker, told(**SLOW))
    maker.reads("Mold", "Layer 2…")
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_text("nothing was changed").wait_for()
    workers(maker, 1)
    assert record(maker) == before


def test_what_the_maker_changes_meanwhile_stays(tried):
    maker = shown(tried)
    chooses_file(maker, told(steps=20, wait=100, **answer(casts__0__weight="812 g", casts__0__binder="Slate cement")))
    maker.reads("Mold", "Layer 2…")
    maker.types("Mold", "Water", "700 g")
    maker.reads("Mold", "Read whole.")
    assert record(maker)["casts"] == [{"weight": "700 g", "binder": "Slate cement"}]


def test_a_mold_that_came_meanwhile_keeps_the_file_out(tried):
    maker = shown(tried)
    chooses_file(maker, told(steps=20, wait=100, **WEIGHT))
    maker.reads("Mold", "Layer 2…")
    maker.page.get_by_role("button", name="Add a mold").tap()
    maker.page.locator(".toast").get_by_text("Molds or wells were added or removed").wait_for()
    assert record(maker)["casts"][0] == {"weight": "640 g"}


def test_a_kept_file_is_still_there_after_a_reload_and_can_be_forgotten(tried):
    maker = shown(tried)
    assert not is_forgettable(maker)
    chooses_file(maker, told(**WEIGHT))
    pick(maker).get_by_role("button", name="Forget the file").wait_for()
    maker.page.reload()
    pick(maker).get_by_role("button", name="Forget the file").tap()
    pick(maker).get_by_role("button", name="Forget the file").wait_for(state="detached")
    maker.page.get_by_role("button", name="Undo").tap()
    pick(maker).get_by_role("button", name="Forget the file").tap()
    pick(maker).get_by_role("button", name="Forget the file").wait_for(state="detached")
    maker.page.reload()
    maker.reads("Mold", "Choose the file")
    maker.page.wait_for_timeout(300)
    assert not is_forgettable(maker)


def test_undo_brings_the_former_file_back(tried):
    maker = shown(tried)
    chooses_file(maker, told("ebb.stl", **answer(pick__name="ebb.stl", casts__0__weight="1 g")))
    weight(maker, "1 g")
    chooses_file(maker, told("flow.stl", **answer(pick__name="flow.stl", casts__0__weight="2 g")))
    weight(maker, "2 g")
    maker.page.get_by_role("button", name="Undo").tap()
    weight(maker, "1 g")
    assert kept(maker) == [["v1/casts.0", "ebb.stl"]]


def kept(maker) -> list:
    """Keys and names of all files that this device keeps."""
    return maker.page.evaluate("""() => new Promise((resolve, reject) => {
        const asked = indexedDB.open("brimbook", 1);
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
            const files = asked.result.transaction("files").objectStore("files");
            const keys = files.getAllKeys(), all = files.getAll();
            all.onsuccess = () => {
                asked.result.close();
                resolve(keys.result.map((key, place) => [key, all.result[place].name]));
            };
        };
    })""")


def reads_anew(maker) -> None:
    """The kept file no longer fits: the stand-in says so when the record does."""
    chooses_file(maker, told("ebb.stl", **answer(pick__again="", pick__name="ebb.stl", casts__0__weight="5 g")))
    pick(maker).get_by_role("button", name="Forget the file").wait_for()
    weight(maker, "5 g")


def outdate(maker, **what) -> None:
    """Have the record say that what was read no longer fits."""
    entry = json.loads(maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')"))
    entry["record"]["pick"] |= {"again": True, **what}
    entry["record"]["casts"] = [{"weight": "640 g"}]
    maker.page.evaluate("(text) => localStorage.setItem('brimbook.vessel.v1', text)", json.dumps(entry))
    maker.page.reload()
    maker.card("Mold").wait_for()


def test_what_no_longer_fits_is_read_anew_by_itself(tried):
    maker = shown(tried)
    reads_anew(maker)
    outdate(maker)
    weight(maker, "5 g")
    maker.reads("Mold", "Read whole.")
    workers(maker, 1)


def test_another_file_is_not_read_in_its_place(tried):
    maker = shown(tried)
    reads_anew(maker)
    outdate(maker, name="flow.stl")
    maker.page.wait_for_timeout(500)
    weight(maker, "640 g")
    assert len(maker.page.workers) == 1


def test_a_file_that_never_fits_is_read_anew_once_only(tried):
    maker = shown(tried)
    chooses_file(maker, told("ebb.stl", **answer(pick__name="ebb.stl", casts__0__weight="5 g")))
    pick(maker).get_by_role("button", name="Forget the file").wait_for()
    outdate(maker)
    weight(maker, "5 g")
    maker.types("Mold", "Water", "640 g")
    maker.page.wait_for_timeout(500)
    weight(maker, "640 g")
    assert len(maker.page.workers) == 1


def test_a_visit_keeps_no_file(tried):
    maker = shown(tried)
    maker.page.evaluate("() => import('./parts/opened.js').then(({ opened }) => { opened.kind = 'visit'; })")
    chooses_file(maker, told(**WEIGHT))
    weight(maker, "812 g")
    assert not is_forgettable(maker)


def test_files_of_vessels_that_are_gone_are_forgotten_at_the_next_start(tried):
    maker = shown(tried)
    chooses_file(maker, told(**WEIGHT))
    pick(maker).get_by_role("button", name="Forget the file").wait_for()
    assert kept(maker) == [["v1/casts.0", "tide.stl"]]
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_role("button", name="Remove Tide cup").tap()
    maker.page.reload()
    maker.page.get_by_text("Removed lately").wait_for()
    maker.page.wait_for_timeout(500)
    assert kept(maker) == [["v1/casts.0", "tide.stl"]], "it can still be put back"
    maker.page.evaluate("localStorage.removeItem('brimbook.trash.v1')")
    maker.page.reload()
    for _ in range(50):
        maker.page.wait_for_timeout(100)
        if kept(maker) == []:
            return
    pytest.fail("the file is still there")


def test_a_device_that_keeps_no_files_reads_them_all_the_same(tried):
    maker = shown(tried)
    maker.page.evaluate("() => { IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError'); }; }")
    chooses_file(maker, told(**WEIGHT))
    weight(maker, "812 g")
    maker.reads("Mold", "Read whole.")


def test_a_file_dropped_on_the_card_is_read(tried):
    maker = shown(tried, viewport={"width": 1280, "height": 900}, **MOUSE)
    prevented = maker.page.evaluate("""(text) => {
        const carried = new DataTransfer();
        carried.items.add(new File([text], "tide.stl"));
        const drop = new DragEvent("drop", { dataTransfer: carried, bubbles: true, cancelable: true });
        document.querySelector("[data-card=mold] .question, [data-card=mold] .card-body").dispatchEvent(drop);
        return drop.defaultPrevented;
    }""", told(**WEIGHT)["buffer"].decode())
    assert prevented
    weight(maker, "812 g")


@pytest.mark.parametrize("pointer", ["finger", "mouse"])
def test_only_a_chooser_that_knows_endings_is_told_them(tried, pointer):
    maker = shown(tried, **({} if pointer == "finger" else MOUSE))
    accepted = pick(maker).locator("input").get_attribute("accept")
    assert accepted == (None if pointer == "finger" else ".stl")
