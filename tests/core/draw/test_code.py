"""A link as a QR code."""

import xml.etree.ElementTree as ET

import pytest

from brimbook.draw.code import qr


def test_a_code_is_a_drawing_with_its_quiet_zone():
    drawing = ET.fromstring(qr("https://example.org/#1.abc"))
    width = int(drawing.get("viewBox").split()[2])
    assert (width - 8 - 17) % 4 == 0
    assert drawing.tag.endswith("svg") and drawing.get("width") is None


def test_a_longer_link_has_more_modules():
    def width(link):
        return int(ET.fromstring(qr(link)).get("viewBox").split()[2])

    assert width("https://example.org/#1." + "a" * 900) > width("https://example.org/#1.a")


def test_too_much_for_a_code_is_told_in_a_sentence():
    with pytest.raises(ValueError, match=r"too large for a QR code.*\.$"):
        qr("https://example.org/#1." + "a" * 3000)
