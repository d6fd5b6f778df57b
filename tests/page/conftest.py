"""A maker at the bench: what they do with the page, in their own words.

Weights that these tests expect are what the core gives in CPython (regression): here they show that the page tells them.
Whether they are right is the business of tests/published and tests/core.
"""

import sys
from pathlib import Path

import pytest

# Files are collected by path, not as packages: helpers are found through the path.
sys.path.insert(0, str(Path(__file__).parent / "helpers"))


class Maker:
    """Drives the page on a phone as a maker would: taps, types and reads."""

    def __init__(self, phone):
        self.phone = phone
        self.page = phone.page

    def opens(self, rest: str = "") -> "Maker":
        """Open the page and wait until its first field or list is there."""
        self.phone.open(rest)
        self.page.locator("main .cards, main .shelf, main .group, main .empty, main .card-alone").first.wait_for()
        return self

    def taps_digits(self, text: str) -> None:
        """Type on the page's own number pad."""
        for key in text:
            self.page.get_by_role("group", name="Number pad").get_by_role(
                "button", name="decimal mark" if key in ".," else key, exact=True).tap()

    def card(self, title: str):
        """One step's card."""
        return self.page.get_by_role("region", name=title, exact=True)

    def opens_card(self, title: str) -> None:
        """Open a step that is closed."""
        face = self.card(title).locator("button.card-face")
        if face.get_attribute("aria-expanded") == "false":
            face.tap()

    def field(self, card: str, label: str):
        """A field of an open card."""
        return self.card(card).get_by_label(label, exact=True)

    def types(self, card: str, label: str, text: str) -> None:
        """Put a text into a field, as from a keyboard, and leave it."""
        field = self.field(card, label)
        field.tap()
        field.fill(text)
        field.blur()

    def reads(self, card: str, *texts: str) -> None:
        """Wait until a card shows these texts."""
        for text in texts:
            self.card(card).get_by_text(text, exact=False).filter(visible=True).first.wait_for(timeout=20_000)

    def opens_more(self, card: str) -> None:
        """Open what seldom changes on an open card."""
        self.card(card).locator("details.more > summary").get_by_text("More", exact=True).tap()

    def opens_figures(self, card: str) -> None:
        """Open the figures behind an open card's answer."""
        self.card(card).get_by_text("The figures behind it", exact=True).tap()

    def waits_until_offline_works(self) -> None:
        """Wait until the service worker has everything."""
        self.page.get_by_text("Ready to work offline").wait_for(timeout=60_000)

    def chooses(self, card: str, label: str) -> None:
        """Choose one of a few answers on an open card."""
        self.card(card).get_by_role("radio", name=label).tap()

    def shares(self) -> str:
        """Open the share sheet and take the link from it."""
        self.page.get_by_role("button", name="Pass this vessel on").tap()
        return self.page.get_by_label("Link", exact=True).input_value()


@pytest.fixture
def maker(phone):
    """A maker with a phone whose page is not open yet."""
    return Maker(phone)


@pytest.fixture
def another_phone(browser, site):
    """Makes more phones, each a profile of its own; all are checked at the end."""
    from workshop.phone import Phone

    made = []

    def make(address: str = site.address, **screen) -> Maker:
        made.append(Phone(browser, address, **screen))
        return Maker(made[-1])

    yield make
    for phone in made:
        phone.close()
        phone.check()


@pytest.fixture
def tried(another_phone):
    """A maker whose page asks a stand-in for the core: tried(record) opens that vessel of the book."""
    import stand_in

    def open_page(record: dict, rest: str = "", **screen) -> Maker:
        made = another_phone(service_workers="block", **screen)
        stand_in.lay_under(made)
        address = stand_in.keep(made, record)
        made.page.reload()
        return made.opens(rest or address)

    return open_page
