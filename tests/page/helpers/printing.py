"""The print path of the page: what stands on the paper when a button for sheets is pressed."""

import re

# The device's own dialog would wait for a person; what the page lays down for it is read instead.
_NO_DIALOG = "window.print = () => { window.printed = (window.printed ?? 0) + 1; }; 0"
_POINT = 25.4 / 72


def prints(maker, card: str, label: str) -> bytes:
    """Press a button for sheets on an open card, and give the paper as a PDF."""
    maker.page.evaluate(_NO_DIALOG)
    maker.card(card).get_by_role("button", name=label).tap()
    maker.page.wait_for_function("() => window.printed")
    maker.page.evaluate("window.printed = 0")
    return paper(maker)


def paper(maker) -> bytes:
    """What a printer gets now, as a PDF."""
    return maker.page.pdf(prefer_css_page_size=True, print_background=True)


def sizes(pdf: bytes) -> list[tuple[float, float]]:
    """Width and height of each page [mm]."""
    boxes = re.findall(rb"/MediaBox \[([^\]]+)\]", pdf)
    return [tuple(round((high - low) * _POINT, 1) for low, high in zip(*_halves(box))) for box in boxes]


def _halves(box: bytes) -> tuple[list[float], list[float]]:
    left, bottom, right, top = (float(part) for part in box.split())
    return [left, bottom], [right, top]
