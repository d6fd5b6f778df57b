"""A phone's browser for the tests, which lets no fault of the page go by unseen."""

from urllib.parse import urlsplit

SCREEN = {
    "viewport": {"width": 390, "height": 844},
    "device_scale_factor": 2,
    "has_touch": True,
    "is_mobile": True,
    "locale": "en-US",
}

# Addresses that stay inside the browser.
INSIDE = ("data", "blob", "about")


class Phone:
    """One page in a fresh context: `.page` and `.context` are Playwright's own.

    Errors of the page, errors in its console and requests to another origin are
    collected, and `check` fails on them unless `allow` has named them.
    """

    def __init__(self, browser, address: str, **screen):
        self.address = address
        self.faults: list[str] = []
        self._allowed: list[str] = []
        self.context = browser.new_context(**{**SCREEN, **screen})
        self.context.on("request", self._watch_request)
        self.context.on("console", self._watch_console)
        self.context.on("weberror", self._watch_error)
        self.page = self.context.new_page()

    def open(self, rest: str = "") -> None:
        """Go to the page, at `rest` after its address: "#/settings", say."""
        self.page.goto(f"{self.address}{rest}")

    def allow(self, text: str) -> None:
        """Let faults pass that hold `text`, such as what the browser says without a network."""
        self._allowed.append(text)

    def check(self) -> None:
        """Fail with all that went wrong and was not allowed."""
        unexpected = [
            fault for fault in self.faults if not any(text in fault for text in self._allowed)
        ]
        assert not unexpected, "the page went wrong:\n" + "\n".join(unexpected)

    def close(self) -> None:
        """Close the page and its context."""
        self.context.close()

    def _watch_request(self, request) -> None:
        asked, own = urlsplit(request.url), urlsplit(self.address)
        if asked.scheme not in INSIDE and (asked.scheme, asked.netloc) != (own.scheme, own.netloc):
            self.faults.append(f"request to another origin: {request.url}")

    def _watch_console(self, message) -> None:
        if message.type == "error":
            place = message.location.get("url", "")
            self.faults.append(f"console error: {message.text} ({place})")

    def _watch_error(self, error) -> None:
        self.faults.append(f"page error: {error.error}")
