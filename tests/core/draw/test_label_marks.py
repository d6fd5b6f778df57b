"""Signs of a label: at their height, in their place, and plain SVG."""

import re
import xml.etree.ElementTree as ET

import pytest
import zxingcpp
from PIL import Image

from brimbook.draw.code import modules
from brimbook.draw.label_marks import ALERT_WIDTH, alert, average, code, code_side, line_of_text

LINK = "https://example.org/#1.abc"


def dots(path):
    """The first corner of each piece, its width, in modules."""
    return [tuple(map(int, each)) for each in re.findall(r"M(\d+) (\d+)h(\d+)", path)]


@pytest.mark.parametrize("sign", [alert, average])
def test_a_sign_is_drawn_to_its_height(sign):
    group = ET.fromstring(sign(3.0, 4.0, 5.0))
    assert group.get("transform") == "translate(3 4) scale(0.05)"
    numbers = [float(each) for path in group for each in re.findall(r"-?\d+(?:\.\d+)?", path.get("d"))]
    # The points that pull on a rounded corner lie a little outside of it.
    assert max(numbers) <= 100 * ALERT_WIDTH + 3 and min(numbers) >= -3


def test_the_modules_are_drawn_as_they_are():
    _, path = ET.fromstring(code(LINK, 0.0, 0.0))
    rows, drawn = modules(LINK), set()
    for along, down, length in dots(path.get("d")):
        drawn |= {(along + step, down) for step in range(length)}
    assert drawn == {(along, down) for down, row in enumerate(rows) for along, dark in enumerate(row) if dark}
    assert path.get("transform") == "translate(4 4)" and path.get("fill") == "#000"


def test_the_modules_are_read_back_as_the_link():
    rows = modules(LINK)
    image = Image.new("L", ((len(rows) + 8) * 4,) * 2, 255)
    for down, row in enumerate(rows):
        for along, dark in enumerate(row):
            if dark:
                image.paste(0, ((along + 4) * 4, (down + 4) * 4, (along + 5) * 4, (down + 5) * 4))
    assert [found.text for found in zxingcpp.read_barcodes(image)] == [LINK]


def test_a_code_lies_on_white_with_its_quiet_zone():
    quiet, _ = ET.fromstring(code(LINK, 1.0, 2.0))
    side = len(modules(LINK)) + 8
    assert quiet.get("fill") == "#fff" and quiet.get("d") == f"M0 0h{side}v{side}h-{side}z"
    assert code_side(len(modules(LINK))) == pytest.approx(side * 0.4)


def test_a_line_is_only_text():
    element = ET.fromstring(line_of_text('<b onload="x"> & "', 1.0, 2.0, 3.0, 4.0, bold=True))
    assert element.tag == "text" and element.text == '<b onload="x"> & "' and element.get("font-weight") == "700"
