"""The tests' phone sees what goes wrong in a page."""

import pytest

from workshop.phone import Phone
from workshop.serve import Server


@pytest.fixture
def visit(browser, tmp_path):
    """Opens a page with this script in it and gives the phone back."""
    server = Server(tmp_path).start()
    phones = []

    def open_page(script):
        (tmp_path / "index.html").write_text(
            '<meta name="viewport" content="width=device-width">'
            f'<link rel="icon" href="data:,"><p>hello</p><script>{script}</script>'
        )
        phone = Phone(browser, server.address)
        phones.append(phone)
        phone.open()
        return phone

    yield open_page
    for phone in phones:
        phone.close()
    server.stop()


def wait_for_fault(phone):
    """Give the browser time to tell of a fault; the check that follows says whether it did."""
    for _ in range(100):
        if phone.faults:
            return
        phone.page.wait_for_timeout(100)


def test_a_sound_page_passes(visit):
    phone = visit("console.log('all is well')")
    phone.page.wait_for_load_state("networkidle")
    phone.check()


@pytest.mark.parametrize(
    ("script", "told"),
    [
        ("throw new Error('spilled')", "page error: .*spilled"),
        ("Promise.reject(new Error('leaked'))", "page error: .*leaked"),
        ("console.error('cracked')", "console error: cracked"),
        ("fetch('http://127.0.0.1:9/x').catch(() => {})", "another origin: http://127.0.0.1:9/x"),
        ("fetch('missing.json')", "console error: .*404"),
    ],
)
def test_a_fault_fails_unless_it_is_allowed(visit, script, told):
    phone = visit(script)
    wait_for_fault(phone)
    with pytest.raises(AssertionError, match=told):
        phone.check()
    phone.allow("")
    phone.check()


STRANGER = "http://127.0.0.1:9/far"


def test_what_a_worker_asks_of_another_origin_is_seen(visit, tmp_path):
    (tmp_path / "worker.js").write_text(f"fetch('{STRANGER}').catch(() => {{}})")
    phone = visit("new Worker('worker.js')")
    wait_for_fault(phone)
    with pytest.raises(AssertionError, match=f"another origin: {STRANGER}"):
        phone.check()


def test_what_a_service_worker_asks_of_another_origin_is_seen(visit, tmp_path):
    (tmp_path / "service.js").write_text(f"fetch('{STRANGER}').catch(() => {{}})")
    phone = visit("navigator.serviceWorker.register('service.js')")
    wait_for_fault(phone)
    with pytest.raises(AssertionError, match=f"another origin: {STRANGER}"):
        phone.check()


def test_the_phone_is_a_phone(visit):
    page = visit("").page
    assert page.evaluate("[innerWidth, devicePixelRatio, navigator.maxTouchPoints > 0]") == [390, 2, True]
