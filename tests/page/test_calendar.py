"""A file for the maker's calendar: passed on where the device does so, else put among the downloads.

On a stand-in for the core, but for the last one.
"""

import re

RECORD = {"casts": [{"weight": "640 g"}]}
SHARES = """navigator.canShare = () => true;
navigator.share = ({ files: [file] }) => { window.passed = [file.name, file.type]; return window.answer ?? Promise.resolve(); }; 0"""


def saves(maker) -> None:
    maker.opens_card("Log")
    maker.card("Log").get_by_role("button", name="Put it into my calendar").tap()


def test_it_is_downloaded(tried):
    maker = tried(RECORD)
    maker.page.evaluate("navigator.canShare = undefined")
    with maker.page.expect_download() as taken:
        saves(maker)
    assert taken.value.suggested_filename == "tide-cup.ics"
    text = taken.value.path().read_text("utf-8")
    assert re.search(r"casts\.0 \d{4}-\d\d-\d\dT\d\d:\d\d:\d\d \d{8}T\d{6}Z$", text)


def test_it_is_passed_on_where_the_device_does_so(tried):
    maker = tried(RECORD)
    maker.page.evaluate(SHARES)
    saves(maker)
    maker.page.wait_for_function("() => window.passed")
    assert maker.page.evaluate("window.passed") == ["tide-cup.ics", "text/calendar"]


def test_a_device_that_will_not_pass_it_on_downloads_it(tried):
    maker = tried(RECORD)
    maker.page.evaluate(f"{SHARES}; window.answer = Promise.reject(new DOMException('no', 'NotAllowedError')); window.answer.catch(() => {{}})")
    with maker.page.expect_download() as taken:
        saves(maker)
    assert taken.value.suggested_filename == "tide-cup.ics"


def test_the_schedule_goes_into_the_calendar_without_a_network(maker, site):
    for fault in ("Failed to load resource", "net::ERR", "An unknown error occurred when fetching the script"):
        maker.phone.allow(fault)
    maker.opens()
    maker.taps_digits("640")
    maker.page.get_by_label("Name of the vessel").fill("Tide cup")
    maker.reads("Mix", "1205 g")
    maker.waits_until_offline_works()
    site.stop()
    maker.page.reload()
    maker.page.evaluate("navigator.canShare = undefined")
    maker.opens_card("Clock")
    maker.card("Clock").get_by_role("button", name="Now: Poured", exact=True).tap()
    with maker.page.expect_download() as taken:
        maker.card("Clock").get_by_role("button", name="Put it into my calendar").tap()
    assert taken.value.suggested_filename == "tide-cup.ics"
    text = taken.value.path().read_bytes().decode("utf-8")
    assert text.startswith("BEGIN:VCALENDAR\r\n") and "SUMMARY:Tide cup: demold\r\n" in text.replace("\\,", ",")
