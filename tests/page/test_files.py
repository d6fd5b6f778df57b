"""A model's file, from the chooser to the weights: read by a second Python in the page."""

import json
import struct

import pytest
from model_page import chooses_file, file, model_files, models, pick, workers

CUP = models.as_stl(models.cup(facets=96))
BOX = models.box(60.0, 40.0, 50.0)
BLOCK = models.as_stl(BOX)
# Large enough to be caught in the middle, on any machine.
LARGE = 100_000


def large_file(count: int = LARGE) -> bytes:
    """A cylinder of very many triangles."""
    facets = count // 4
    return models.as_stl(models.cylinder(40.0, 70.0, facets))


def from_file(maker) -> None:
    """A new vessel whose mold is measured by a file."""
    maker.opens()
    maker.page.get_by_label("How it was measured").select_option(label="From its file")
    pick(maker).wait_for()


def record(maker) -> dict:
    return json.loads(maker.page.evaluate("Object.entries(localStorage).find(([key]) => key.startsWith('brimbook.vessel.'))[1]"))["record"]


def cavity(maker) -> dict:
    return record(maker)["casts"][0]["cavity"]


def test_a_cup_is_read_from_its_file_and_weighed_out(maker):
    from_file(maker)
    chooses_file(maker, file("gull.stl", CUP))
    maker.reads("Mold", "Read gull.stl", "Volume")
    workers(maker, 1)
    assert cavity(maker)["file"]["name"] == "gull.stl" and len(cavity(maker)["file"]["reading"]) <= 1500
    assert maker.card("Mold").locator("figure.drawing svg").count() >= 1
    assert maker.card("Mix").locator(".answer").count()
    maker.opens_card("Well")
    maker.reads("Well", "Volume")
    assert maker.card("Wax").locator(".answer").count()
    maker.opens_card("Wicks")
    maker.reads("Wicks", "The outline at the fill line", "80.3 mm")
    assert maker.card("Wicks").locator("figure.drawing svg").is_visible()


def spoken(text: bytes, encoding: str) -> bytes:
    """A text file as an older program may write it."""
    return text.decode().encode(encoding)


KINDS = {"binary STL": ("a.stl", BLOCK), "text STL": ("a.stl", model_files.as_text_stl(BOX)), "OBJ": ("a.obj", model_files.as_obj(BOX)),
         "3MF": ("a.3mf", model_files.as_3mf(BOX)), "text STL in UTF-16": ("a.stl", spoken(model_files.as_text_stl(BOX), "utf-16")),
         "OBJ in UTF-16": ("a.obj", spoken(model_files.as_obj(BOX), "utf-16"))}


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_file_is_read(maker, kind):
    from_file(maker)
    chooses_file(maker, file(*KINDS[kind]))
    maker.reads("Mold", f"Read {KINDS[kind][0]}: 60\u00a0×\u00a040\u00a0×\u00a050\u00a0mm, 120 mL")


def test_the_second_python_is_fetched_only_when_a_file_is_chosen(another_phone):
    maker = another_phone(service_workers="block")
    asked = []
    maker.phone.context.on("request", lambda request: asked.append(request.url))
    from_file(maker)
    maker.page.wait_for_timeout(500)
    assert not [url for url in asked if url.endswith("core/reader.js")]
    chooses_file(maker, file("block.stl", BLOCK))
    maker.reads("Mold", "Read block.stl")
    assert [url for url in asked if url.endswith("core/reader.js")]


def test_the_figures_go_on_while_a_large_file_is_read(maker):
    from_file(maker)
    chooses_file(maker, file("large.stl", large_file()))
    pick(maker).get_by_role("progressbar").wait_for()
    maker.opens_card("Well")
    maker.types("Well", "Water", "300")
    maker.reads("Wax", "246 g")
    maker.opens_card("Mold")
    pick(maker).get_by_role("button", name="Cancel").wait_for()
    assert "reading" not in cavity(maker).get("file", {})
    maker.card("Mold").get_by_text("Read large.stl").first.wait_for(timeout=120_000)
    assert record(maker)["wells"][0]["fill"]["readings"][0]["water"] == "300 g"
    workers(maker, 1)


def test_cancel_in_the_middle_of_a_large_file(maker):
    from_file(maker)
    before = record(maker)
    chooses_file(maker, file("large.stl", large_file()))
    maker.page.wait_for_function("() => document.querySelector('.pick progress')?.value > 0.05")
    pick(maker).get_by_role("button", name="Cancel").tap()
    maker.reads("Mold", "Stopped. Nothing was changed.")
    workers(maker, 1)
    assert record(maker) == before


BROKEN = {
    "empty": ("a.stl", b""),
    "no model": ("a.stl", b"This is a shopping list."),
    "cut short": ("a.stl", CUP[:5000]),
    "not a number": ("a.stl", CUP[:96] + struct.pack("<f", float("nan")) + CUP[100:]),
    "no archive": ("a.3mf", b"PK\3\4" + bytes(200)),
    "no triangle": ("a.obj", b"v 0 0 0\nv 1 0 0\n"),
}


@pytest.mark.parametrize("how", BROKEN)
def test_a_broken_file_is_told_in_a_sentence(maker, how):
    from_file(maker)
    before = record(maker)
    chooses_file(maker, file(*BROKEN[how]))
    fault = pick(maker).locator(".fault")
    fault.wait_for()
    assert fault.inner_text().strip().endswith(".") and "Something went wrong" not in fault.inner_text()
    workers(maker, 1)
    assert record(maker) == before


def test_a_file_that_is_too_large_is_refused_before_it_is_read(maker):
    from_file(maker)
    maker.page.evaluate("""() => {
        const input = document.querySelector(".pick input");
        const large = new File(Array(65).fill(new Uint8Array(1e6)), "huge.stl");
        const carried = new DataTransfer();
        carried.items.add(large);
        input.files = carried.files;
        input.dispatchEvent(new Event("change", { bubbles: true }));
    }""")
    pick(maker).locator(".fault").get_by_text("larger than 64 MB").wait_for()
    assert len(maker.page.workers) == 1


def stands(maker, how: str) -> None:
    """Say how the model is to stand."""
    more = maker.card("Mold").locator("details.more > summary").get_by_text("More", exact=True)
    if not maker.card("Mold").get_by_label("How it stands").is_visible():
        more.tap()
    maker.card("Mold").get_by_label("How it stands").select_option(label=how)


def test_a_kept_file_is_read_anew_when_it_is_to_stand_another_way(maker):
    from_file(maker)
    chooses_file(maker, file("gull.stl", CUP))
    maker.reads("Mold", "Read gull.stl")
    first = cavity(maker)["file"]["reading"]
    stands(maker, "With its right side up")
    maker.page.wait_for_function("""(first) => Object.entries(localStorage).some(([key, text]) => key.startsWith("brimbook.vessel.")
        && ![undefined, first].includes(JSON.parse(text).record.casts[0].cavity.file.reading))""", arg=first)
    maker.reads("Mold", "Read gull.stl", "Volume")
    workers(maker, 1)


def test_without_the_kept_file_it_is_asked_for_again(maker):
    from_file(maker)
    chooses_file(maker, file("gull.stl", CUP))
    maker.reads("Mold", "Read gull.stl")
    pick(maker).get_by_role("button", name="Forget the file").tap()
    stands(maker, "With its right side up")
    maker.reads("Mold", "Choose gull.stl again")


def test_a_file_is_read_without_a_network(maker, site):
    maker.phone.allow("Failed to load resource")
    maker.phone.allow("net::ERR")
    maker.phone.allow("An unknown error occurred when fetching the script")
    maker.opens()
    maker.waits_until_offline_works()
    site.stop()
    maker.page.reload()
    from_file(maker)
    chooses_file(maker, file("block.stl", BLOCK))
    maker.reads("Mold", "Read block.stl", "120 mL")


def test_a_plain_start_reads_files_too(another_phone):
    maker = another_phone(service_workers="block")
    maker.phone.allow("Failed to load resource")
    maker.phone.context.route("**/image/pages.gz", lambda route: route.fulfill(status=404, body=""))
    from_file(maker)
    chooses_file(maker, file("block.stl", BLOCK))
    maker.reads("Mold", "Read block.stl", "120 mL")
