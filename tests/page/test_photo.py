"""A rim marked on a photo, by finger and arrow keys: a drawn photo of a sheet and an oval rim whose area is known."""

import io
import math

import numpy as np
import pytest
from PIL import Image, ImageDraw

WIDE, HIGH = 1800, 1350
# A sheet of A4 and an oval rim of 90 × 64 mm beside it, on one table [mm].
SHEET = [(0.0, 0.0), (297.0, 0.0), (297.0, 210.0), (0.0, 210.0)]
MIDDLE, ACROSS, DEEP = (355.0, 110.0), 90.0, 64.0
AREA = math.pi * ACROSS * DEEP / 4 / 100


def seen(point):
    """Where the camera, a little aslant, sees a place of the table [pixels]."""
    lean, lens = math.radians(12), 0.9 * WIDE
    away = np.array([*point, 0.0]) - np.array([205.0, 0.0, 560.0])
    deep = away @ [0.0, math.sin(lean), -math.cos(lean)]
    return WIDE / 2 + lens * away[0] / deep, HIGH / 2 - lens * (away @ [0.0, math.cos(lean), math.sin(lean)]) / deep


def oval(count):
    return [(MIDDLE[0] + ACROSS / 2 * math.cos(2 * math.pi * step / count), MIDDLE[1] + DEEP / 2 * math.sin(2 * math.pi * step / count))
            for step in range(count)]


@pytest.fixture(scope="module")
def photo():
    """The photo as a file that the device's chooser hands over."""
    picture = Image.new("RGB", (WIDE, HIGH), (96, 84, 72))
    pen = ImageDraw.Draw(picture)
    pen.polygon([seen(corner) for corner in SHEET], fill=(244, 242, 236))
    pen.polygon([seen(point) for point in oval(180)], fill=(205, 170, 96), outline=(40, 30, 20))
    kept = io.BytesIO()
    picture.save(kept, "JPEG", quality=85)
    return {"name": "rim.jpg", "mimeType": "image/jpeg", "buffer": kept.getvalue()}


def opens_photo(maker, photo):
    """Tell that the outline is from a photo, and choose one."""
    maker.opens("#/new")
    maker.opens_card("Wicks")
    maker.field("Wicks", "The wax from above").select_option(label="From a photo")
    maker.card("Wicks").locator(".photo").wait_for(timeout=20_000)
    chooses(maker, photo)
    return maker


def chooses(maker, photo):
    maker.card("Wicks").locator(".photo input[type=file]").set_input_files(photo)
    maker.card("Wicks").locator(".photo-frame img").wait_for()


def box(maker):
    frame = maker.card("Wicks").locator(".photo-frame")
    frame.scroll_into_view_if_needed()
    return frame.locator("svg.photo-marks").bounding_box()


def on_screen(maker, point):
    """Where a place of the photo [pixels] is on the screen."""
    at = box(maker)
    return at["x"] + point[0] / WIDE * at["width"], at["y"] + point[1] / HIGH * at["height"]


def taps(maker, points):
    for point in points:
        before = handles(maker).count()
        maker.page.touchscreen.tap(*on_screen(maker, seen(point)))
        maker.page.wait_for_function("(count) => document.querySelectorAll('.photo-marks .handle').length > count", arg=before, timeout=20_000)


def handles(maker):
    return maker.card("Wicks").locator(".photo-marks .handle")


def says(maker):
    return maker.card("Wicks").locator(".photo > .note").first


def place(maker, row):
    """A mark's place [thousandths of the photo's width]."""
    circle = handles(maker).nth(row).locator("circle").first
    return float(circle.get_attribute("cx")), float(circle.get_attribute("cy"))


def record(maker):
    return maker.page.evaluate("""() => Object.keys(localStorage).filter((key) => key.startsWith("brimbook.vessel."))
        .map((key) => JSON.parse(localStorage.getItem(key)).record)[0]""")


def wide_of(maker):
    return record(maker)["wells"][0]["outline"]["photo"]


def test_marks_on_a_photo_become_the_outline_of_the_wax(maker, photo):
    opens_photo(maker, photo)
    assert says(maker).inner_text() == "Tap corner 1 of 4 of the sheet."
    taps(maker, SHEET)
    assert says(maker).inner_text() == "Tap round the inner edge of the rim, in order: 0 so far."
    taps(maker, oval(10))
    maker.reads("Wicks", "10 so far. Drag a mark to mend it.")
    area = maker.page.evaluate("""async () => {
        const { opened } = await import("./parts/opened.js");
        return opened.sheet.cards.find(({ id }) => id === "wicks").figures.find(({ key }) => key.endsWith(".area")).value; }""")
    assert area == pytest.approx(AREA, rel=0.02)
    kept = wide_of(maker)
    assert kept["size"] == "1600 1200" and len(kept["marks"].split()) == 14


def test_the_photo_is_still_there_next_time(maker, photo):
    opens_photo(maker, photo)
    taps(maker, SHEET[:2])
    maker.page.reload()
    maker.opens_card("Wicks")
    image = maker.card("Wicks").locator(".photo-frame img")
    image.wait_for(timeout=20_000)
    assert image.evaluate("(image) => image.decode().then(() => image.naturalWidth)") == 1600
    assert handles(maker).count() == 2


def test_a_mark_is_dragged_with_the_part_around_it_shown_larger_and_one_undo_takes_it_back(maker, photo):
    opens_photo(maker, photo)
    taps(maker, [SHEET[0]])
    before = place(maker, 0)
    x, y = on_screen(maker, seen(SHEET[0]))
    maker.page.mouse.move(x + 6, y - 6)
    maker.page.mouse.down()
    maker.page.mouse.move(x + 26, y - 26)
    maker.page.mouse.move(x + 46, y - 36)
    maker.card("Wicks").locator(".photo-loupe").wait_for()
    maker.page.mouse.up()
    unit = box(maker)["width"] / 1000
    maker.page.wait_for_function("(x) => Math.abs(document.querySelector('.photo-marks circle').cx.baseVal.value - x) < 3", arg=before[0] + 40 / unit)
    assert place(maker, 0)[1] == pytest.approx(before[1] - 30 / unit, abs=3)
    assert handles(maker).count() == 1 and maker.card("Wicks").locator(".photo-loupe").count() == 0
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.wait_for_function("(x) => document.querySelector('.photo-marks circle').cx.baseVal.value === x", arg=before[0])


def test_arrows_move_the_mark_that_was_set_last(maker, photo):
    opens_photo(maker, photo)
    taps(maker, SHEET[:2])
    x, y = place(maker, 1)
    maker.card("Wicks").get_by_role("button", name="Up", exact=True).tap()
    maker.page.wait_for_function("(y) => document.querySelectorAll('.photo-marks .handle')[1].querySelector('circle').cy.baseVal.value === y", arg=y - 1)
    handles(maker).nth(0).focus()
    left = place(maker, 0)[0]
    maker.page.keyboard.press("Shift+ArrowRight")
    maker.page.wait_for_function("(x) => document.querySelector('.photo-marks circle').cx.baseVal.value === x", arg=left + 5)
    maker.page.keyboard.press("ArrowRight")
    maker.page.wait_for_function("(x) => document.querySelector('.photo-marks circle').cx.baseVal.value === x", arg=left + 6)


def test_the_last_mark_is_taken_back_and_all_begun_again(maker, photo):
    opens_photo(maker, photo)
    taps(maker, SHEET[:3])
    maker.card("Wicks").get_by_role("button", name="Take back the last mark").tap()
    maker.page.wait_for_function("() => document.querySelectorAll('.photo-marks .handle').length === 2")
    maker.card("Wicks").get_by_role("button", name="Begin again").tap()
    maker.page.wait_for_function("() => document.querySelectorAll('.photo-marks .handle').length === 0")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.wait_for_function("() => document.querySelectorAll('.photo-marks .handle').length === 2")


def test_where_the_photo_is_not_on_the_device_its_marks_are(maker, another_phone, photo):
    opens_photo(maker, photo)
    taps(maker, SHEET[:2])
    link = maker.shares()
    other = another_phone()
    other.opens(link[link.index("#"):])
    other.opens_card("Wicks")
    other.reads("Wicks", "The photo stays on the device that took it")
    assert handles(other).count() == 2


def test_what_is_no_photo_is_told(maker, photo):
    maker.opens("#/new")
    maker.opens_card("Wicks")
    maker.field("Wicks", "The wax from above").select_option(label="From a photo")
    maker.card("Wicks").locator(".photo input[type=file]").set_input_files({"name": "x.jpg", "mimeType": "image/jpeg", "buffer": b"no photo"})
    maker.page.get_by_text("This photo can't be shown. Choose another one.").wait_for()


def test_buttons_are_large_and_nothing_is_wider_than_the_phone(maker, photo):
    opens_photo(maker, photo)
    taps(maker, SHEET[:1])
    for button in maker.card("Wicks").locator(".photo button").all():
        at = button.bounding_box()
        assert at["height"] >= 48 and at["width"] >= 48
    assert maker.page.evaluate("document.querySelector('main').scrollWidth <= document.querySelector('main').clientWidth")


def test_arrows_keep_inside_their_card_on_a_narrow_phone(maker, photo):
    maker.page.set_viewport_size({"width": 360, "height": 640})
    opens_photo(maker, photo)
    taps(maker, SHEET[:1])
    inside = maker.card("Wicks").locator(".photo").bounding_box()
    right = maker.card("Wicks").locator(".photo-steps .right").bounding_box()
    assert right["width"] >= 48 and right["x"] + right["width"] <= inside["x"] + inside["width"] + 0.5


def test_a_forgotten_photo_leaves_its_marks_and_can_come_back(maker, photo):
    opens_photo(maker, photo)
    taps(maker, SHEET[:1])
    maker.card("Wicks").get_by_role("button", name="Forget the photo").tap()
    maker.reads("Wicks", "The photo stays on the device that took it")
    assert handles(maker).count() == 1 and maker.card("Wicks").locator(".photo-frame img").count() == 0
    maker.page.get_by_role("button", name="Undo").tap()
    maker.card("Wicks").locator(".photo-frame img").wait_for()


def test_a_drawing_is_read_into_the_outline(maker):
    drawing = b'<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="60mm" viewBox="0 0 90 60"><rect width="80" height="50"/></svg>'
    maker.opens("#/new")
    maker.opens_card("Wicks")
    maker.field("Wicks", "The wax from above").select_option(label="Another outline")
    chooser = maker.card("Wicks").locator(".pick input[type=file]")
    chooser.wait_for(state="attached", timeout=20_000)
    chooser.set_input_files({"name": "rim.svg", "mimeType": "image/svg+xml", "buffer": drawing})
    maker.reads("Wicks", "The outline is 80 mm across and 50 mm the other way.")
    assert record(maker)["wells"][0]["outline"] == {"shape": "path", "path": "M0 0L80 0L80 50L0 50Z"}
