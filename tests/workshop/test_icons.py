"""The icons the build draws."""

import io
import xml.etree.ElementTree as xml

import pytest
from PIL import Image

from workshop.icons import icons
from workshop.paint import corners, paint
from workshop.png import png


@pytest.fixture(scope="module")
def drawn(dist):
    return {path.name: path.read_bytes() for path in (dist / "icons").iterdir()}


def opened(data):
    return Image.open(io.BytesIO(data)).convert("RGBA")


@pytest.mark.parametrize(
    ("name", "side"),
    [
        ("icon-192.png", 192),
        ("icon-512.png", 512),
        ("icon-maskable-512.png", 512),
        ("apple-touch-icon.png", 180),
    ],
)
def test_each_picture_has_its_size_and_shows_something(drawn, name, side):
    picture = opened(drawn[name])
    assert picture.size == (side, side)
    assert len(set(picture.get_flattened_data())) > 20


@pytest.mark.parametrize("name", ["icon-maskable-512.png", "apple-touch-icon.png"])
def test_an_icon_that_is_cut_by_others_is_opaque_to_its_edge(drawn, name):
    assert opened(drawn[name]).getextrema()[3] == (255, 255)


def test_a_maskable_icon_keeps_its_drawing_within_the_safe_circle(drawn):
    picture = opened(drawn["icon-maskable-512.png"])
    ground = picture.getpixel((0, 0))
    outside = [
        (x, y)
        for x in range(512)
        for y in range(512)
        if (x - 255.5) ** 2 + (y - 255.5) ** 2 > (0.4 * 512) ** 2
    ]
    assert {picture.getpixel(place) for place in outside} == {ground}


def test_the_card_has_clear_corners(drawn):
    picture = opened(drawn["icon-512.png"])
    assert picture.getpixel((0, 0))[3] == 0
    assert picture.getpixel((256, 500))[3] == 255


def test_the_svg_is_drawn_from_the_same_outlines(drawn):
    paths = xml.fromstring(drawn["icon.svg"]).findall("{http://www.w3.org/2000/svg}path")
    picture = opened(drawn["icon-512.png"])
    seen = {"#%02x%02x%02x" % pixel[:3] for pixel in picture.get_flattened_data()}
    assert len(paths) == 7
    assert {path.get("fill") for path in paths} <= seen


def test_what_ships_is_what_the_build_draws_now(drawn):
    assert icons() == {f"icons/{name}": data for name, data in drawn.items()}


def test_half_a_pixel_covered_is_half_a_color():
    half = [("M", 0, 0), ("L", 0.5, 0), ("L", 0.5, 1), ("L", 0, 1)]
    assert paint([(half, "#ff0000")], square=1, side=1) == bytes([255, 0, 0, 128])


def test_a_later_layer_lies_on_top():
    full = [("M", 0, 0), ("L", 2, 0), ("L", 2, 2), ("L", 0, 2)]
    assert paint([(full, "#ff0000"), (full, "#0000ff")], 2, 2) == bytes([0, 0, 255, 255]) * 4


def test_a_curve_ends_where_it_says():
    assert corners([("M", 0, 0), ("C", 0, 5, 5, 10, 10, 10)])[-1] == (10, 10)


def test_a_png_can_be_read_back():
    pixels = bytes(range(16))
    assert opened(png(2, 2, pixels)).tobytes() == pixels


def test_a_png_of_the_wrong_size_is_refused():
    with pytest.raises(ValueError, match="do not fill"):
        png(2, 2, b"x")
