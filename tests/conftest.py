"""What many tests share: the built page, the core under Node, a server and a phone's browser."""

import pytest

from workshop import dist as workshop_dist
from workshop.node_door import NodeDoor
from workshop.serve import Server


@pytest.fixture(scope="session")
def dist():
    """The folder of the built page, brought up to date first."""
    return workshop_dist.build()


@pytest.fixture(scope="session")
def node_door(dist):
    """The core under Pyodide: node_door.ask("work_out", {...}) gives the door's whole reply."""
    door = NodeDoor(dist)
    yield door
    door.close()


@pytest.fixture(scope="session")
def session_site(dist):
    """One server for all tests; use `site`."""
    server = Server(dist).start()
    yield server
    server.stop()


@pytest.fixture
def site(session_site):
    """The built page at site.address; site.stop() and site.start() take it away and back."""
    yield session_site
    session_site.start()


@pytest.fixture(scope="session")
def browser():
    """One Chromium for all tests, driven by Playwright."""
    from playwright.sync_api import sync_playwright

    from workshop.browser import find_browser, flags

    with sync_playwright() as playwright:
        chromium = playwright.chromium.launch(executable_path=find_browser(), args=flags())
        yield chromium
        chromium.close()


@pytest.fixture
def phone(browser, site):
    """A phone with a fresh page, not yet opened; the test fails on any fault of the page.

    phone.open() opens the page, phone.page drives it, phone.allow("text") lets faults pass.
    """
    from workshop.phone import Phone

    handset = Phone(browser, site.address)
    yield handset
    handset.close()
    handset.check()
