"""With the network gone; and a newer version, taken when the maker agrees."""

import shutil

import pytest

from workshop.release import OFFLINE, with_release
from workshop.serve import Server


def test_the_server_stopped_and_the_page_reloaded(maker, site):
    maker.phone.allow("Failed to load resource")
    maker.phone.allow("net::ERR")
    maker.phone.allow("An unknown error occurred when fetching the script")
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.waits_until_offline_works()
    site.stop()
    maker.page.reload()
    maker.reads("Mix", "1205 g", "301 g")
    maker.opens_card("Well")
    maker.types("Well", "Water", "300")
    maker.reads("Wax", "246 g")


def kept(maker) -> list[str]:
    """The paths of all files that the service worker keeps."""
    return maker.page.evaluate("""async () => {
        const caches_ = await Promise.all((await caches.keys()).map((name) => caches.open(name)));
        const requests = await Promise.all(caches_.map((cache) => cache.keys()));
        return requests.flat().map(({ url }) => new URL(url).pathname);
    }""")


def test_a_second_visit_also_keeps_what_a_plain_start_needs(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.waits_until_offline_works()
    assert "/image/pages.gz" in kept(maker) and "/pyodide/python_stdlib.zip" not in kept(maker)
    maker.page.reload()
    maker.reads("Mix", "1205 g")
    for _ in range(100):
        if "/python/wheels.json" in kept(maker) and "/pyodide/python_stdlib.zip" in kept(maker):
            break
        maker.page.wait_for_timeout(100)
    else:
        pytest.fail("the rest was not fetched")


@pytest.fixture
def own_site(dist, tmp_path):
    """A copy of the page in a sub-folder, to be changed."""
    folder = tmp_path / "site" / "bench" / "book"
    shutil.copytree(dist, folder)
    server = Server(tmp_path / "site").start()
    yield server, folder
    server.stop()


def release_anew(folder, dist, name: str, more: bytes) -> None:
    """Put a changed file and the release that goes with it in place."""
    files = {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    files[name] += more
    worker = (dist / OFFLINE).read_bytes().split(b"\n", 1)[1]
    for changed, data in with_release({**files, OFFLINE: worker}).items():
        (folder / changed).write_bytes(data)


def is_second(maker) -> bool:
    """Does the page show the changed style?"""
    told = maker.page.evaluate("getComputedStyle(document.documentElement).getPropertyValue('--release-two')")
    return told.strip() == "yes"


def test_a_newer_version_is_announced_and_taken_and_the_record_survives(another_phone, own_site, dist):
    server, folder = own_site
    maker = another_phone(f"{server.address}bench/book/")
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.waits_until_offline_works()
    release_anew(folder, dist, "style.css", b"\n:root { --release-two: yes }\n")
    maker.page.reload()
    maker.page.get_by_text("A new version is ready").wait_for(timeout=60_000)
    assert not is_second(maker)
    with maker.page.expect_navigation():
        maker.page.get_by_role("button", name="Take it").tap()
    maker.reads("Mix", "1205 g")
    assert is_second(maker)
    maker.opens_card("Mold")
    assert maker.field("Mold", "Water").input_value() == "640 g"


def test_the_older_version_stays_whole_until_the_newer_is_taken(another_phone, own_site, dist):
    server, folder = own_site
    maker = another_phone(f"{server.address}bench/book/")
    maker.opens()
    maker.waits_until_offline_works()
    release_anew(folder, dist, "style.css", b"\n:root { --release-two: yes }\n")
    maker.page.reload()
    maker.page.get_by_text("A new version is ready").wait_for(timeout=60_000)
    maker.page.get_by_role("button", name="Later").tap()
    maker.page.reload()
    maker.page.locator("main .cards, main .shelf, main .empty").first.wait_for()
    assert not is_second(maker)
