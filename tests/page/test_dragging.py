"""Marks of a drawing are moved by finger, mouse and arrow keys. On a stand-in for the core, but for the last."""

import json
import re

import pytest

PLAN = {"name": "Tide cup", "casts": [{"weight": "640 g"}], "plan": {"count": "2"}}


def shown(tried, record=PLAN, **screen):
    maker = tried(record, **screen)
    maker.opens_card("Plan")
    handle(maker, 0).scroll_into_view_if_needed()
    return maker


def handle(maker, row: int):
    return maker.card("Plan").locator(f".handle[data-row='{row}']")


def record(maker) -> dict:
    return json.loads(maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')"))["record"]


def place(maker, row: int) -> tuple[float, float]:
    """Where a mark is told to be, as [mm]."""
    words = handle(maker, row).get_attribute("aria-label").split(", ")
    return float(words[1].split()[0]), float(words[2].split()[0])


def middle(maker, row: int) -> tuple[float, float]:
    """Where the middle of a mark is on the screen."""
    box = handle(maker, row).locator("circle").first.bounding_box()
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def scale(maker) -> float:
    """Pixels of the screen for one unit of the drawing."""
    return maker.card("Plan").locator("svg.plan").bounding_box()["width"] / 350


def told(maker, row: int, x: float, y: float) -> None:
    """Wait until a mark is told to be near a place."""
    maker.page.wait_for_function("""([row, x, y]) => {
        const [, across, down] = document.querySelector(`.handle[data-row='${row}']`)?.getAttribute("aria-label").split(", ") ?? [];
        return across && Math.abs(parseFloat(across) - x) < 1 && Math.abs(parseFloat(down) - y) < 1;
    }""", arg=[row, x, y])


def drags(maker, row: int, across: float, down: float, off: tuple[float, float] = (0, 0)) -> None:
    """Drag a mark with the mouse by units of the drawing, taken `off` its middle [pixels]."""
    (x, y), unit = middle(maker, row), scale(maker)
    maker.page.mouse.move(x + off[0], y + off[1])
    maker.page.mouse.down()
    for share in (0.2, 0.4, 0.6, 0.8, 1):
        maker.page.mouse.move(x + off[0] + across * unit * share, y + off[1] + down * unit * share)
    told(maker, row, 120 + across, 100 + down)
    maker.page.mouse.up()


def test_a_mark_follows_the_mouse_and_the_figures_follow_the_mark(tried):
    maker = shown(tried)
    drags(maker, 0, 40, 30)
    assert record(maker)["plan"]["at"][1] == {"x": "240 mm", "y": "100 mm"}
    maker.opens_card("Mold")
    maker.reads("Plan", "160.0 mm, 240 mm")


def test_a_mark_taken_at_its_edge_does_not_jump(tried):
    maker = shown(tried)
    drags(maker, 0, 40, 30, off=(15, -15))
    x, y = place(maker, 0)
    assert abs(x - 160) < 0.6 and abs(y - 130) < 0.6


def test_one_undo_takes_a_whole_drag_back(tried):
    maker = shown(tried)
    drags(maker, 0, 40, 30)
    maker.page.get_by_role("button", name="Undo").tap()
    told(maker, 0, 120, 100)
    assert "at" not in record(maker)["plan"]


def test_a_tap_moves_nothing(tried):
    maker = shown(tried)
    maker.page.mouse.click(*middle(maker, 0))
    handle(maker, 0).tap()
    maker.page.keyboard.press("ArrowRight")
    told(maker, 0, 121, 100)
    assert place(maker, 0) == (121, 100)


FINGER = "Input.dispatchTouchEvent"


def swipes(maker, start: tuple[float, float], across: float, down: float) -> None:
    """A finger from one place to another, in pixels of the screen."""
    session = maker.phone.context.new_cdp_session(maker.page)
    session.send(FINGER, {"type": "touchStart", "touchPoints": [{"x": start[0], "y": start[1]}]})
    for share in (0.1, 0.3, 0.5, 0.7, 0.9, 1):
        session.send(FINGER, {"type": "touchMove", "touchPoints": [{"x": start[0] + across * share, "y": start[1] + down * share}]})
    session.send(FINGER, {"type": "touchEnd", "touchPoints": []})


def scrolled(maker) -> float:
    return maker.page.evaluate("document.querySelector('main').scrollTop")


def test_a_finger_moves_a_mark_while_the_page_stays(tried):
    maker = shown(tried, viewport={"width": 360, "height": 480})
    before, unit = scrolled(maker), scale(maker)
    swipes(maker, middle(maker, 0), 30 * unit, -40 * unit)
    told(maker, 0, 150, 60)
    assert scrolled(maker) == before
    maker.page.get_by_role("button", name="Undo").tap()
    told(maker, 0, 120, 100)


def test_a_finger_beside_the_marks_scrolls_the_page(tried):
    maker = shown(tried, viewport={"width": 360, "height": 480})
    box, before = maker.card("Plan").locator("svg.plan").bounding_box(), scrolled(maker)
    swipes(maker, (box["x"] + box["width"] / 2, box["y"] + box["height"] * 0.4), 0, 150)
    maker.page.wait_for_function("(before) => document.querySelector('main').scrollTop < before", arg=before)
    assert "at" not in record(maker)["plan"]


def test_arrow_keys_move_a_mark_that_keeps_the_focus(tried):
    maker = shown(tried)
    handle(maker, 1).focus()
    before = scrolled(maker)
    for key, x, y in (("ArrowLeft", 239, 100), ("ArrowUp", 239, 99), ("Shift+ArrowRight", 244, 99), ("ArrowDown", 244, 100)):
        maker.page.keyboard.press(key)
        told(maker, 1, x, y)
        assert handle(maker, 1).evaluate("each => each === document.activeElement")
    assert scrolled(maker) == before
    # One way back for the whole run of keys.
    maker.page.get_by_role("button", name="Undo").tap()
    told(maker, 1, 240, 100)


def test_what_a_move_changes_is_spoken(tried):
    maker = shown(tried)
    handle(maker, 0).focus()
    maker.page.keyboard.press("Shift+ArrowLeft")
    maker.page.locator("p[aria-live=polite]", has_text="115.0 mm").wait_for(state="attached")


def test_those_who_listen_find_the_marks_as_buttons(tried):
    maker = shown(tried)
    assert maker.card("Plan").get_by_role("button", name="Mark 2, 240 mm from the left, 100 mm down").count() == 1
    assert maker.card("Mold").count() == 1
    maker.opens_card("Mold")
    assert maker.card("Mold").get_by_role("img", name="A chart.").count() == 1


COUNTED = """const under = new Set(); window.most = 0; window.sent = 0;
window.Worker = class extends Worker {
  constructor(...how) {
    super(...how);
    this.addEventListener('message', ({ data }) => under.delete(data.id));
  }
  postMessage(message) {
    if (message.ask === 'move_mark') {
      under.add(message.id);
      window.most = Math.max(window.most, under.size);
      window.sent += 1;
    }
    super.postMessage(message);
  }
};"""


def test_the_core_is_asked_one_move_at_a_time_and_the_newest_place_wins(tried):
    maker = shown(tried)
    maker.page.add_init_script(COUNTED)
    maker.page.reload()
    handle(maker, 0).wait_for()
    (x, y), unit = middle(maker, 0), scale(maker)
    # Forty places in one turn of the page, as a fast finger gives them.
    maker.page.evaluate("""([x, y, unit]) => {
        const frame = document.querySelector('.movable');
        const at = (type, step) => new PointerEvent(type, { bubbles: true, pointerId: 1, clientX: x + step * unit, clientY: y + step * unit / 2 });
        frame.setPointerCapture = () => {};
        document.querySelector('.handle').dispatchEvent(at('pointerdown', 0));
        for (let step = 1; step <= 40; step += 1) frame.dispatchEvent(at('pointermove', step));
        frame.dispatchEvent(at('pointerup', 40));
    }""", [x, y, unit])
    told(maker, 0, 160, 120)
    assert maker.page.evaluate("[window.most, window.sent]") == [1, 2]


@pytest.mark.parametrize("width", [390, 360])
def test_a_mark_is_as_large_as_a_thumb_needs(tried, width):
    maker = shown(tried, viewport={"width": width, "height": 844})
    x, y = middle(maker, 0)
    for across, down in ((23.5, 0), (-23.5, 0), (0, 23.5), (0, -23.5)):
        assert maker.page.evaluate("([x, y]) => document.elementFromPoint(x, y).closest('.handle')?.dataset.row", [x + across, y + down]) == "0"


def test_a_fault_of_the_core_is_told_and_nothing_is_lost(tried):
    maker = shown(tried, {**PLAN, "plan": {"fixed": "yes"}})
    handle(maker, 0).focus()
    maker.page.keyboard.press("ArrowRight")
    maker.page.get_by_text("This mark stays where it is.").wait_for()
    assert "at" not in record(maker)["plan"]


def test_a_wick_is_moved_and_what_it_must_melt_grows(maker):
    maker.opens("#/demo/demo-keel-bowl")
    maker.opens_card("Wicks")
    wick = maker.card("Wicks").locator(".handle").first
    wick.wait_for(timeout=20_000)
    maker.reads("Wicks", "68 mm")
    wick.scroll_into_view_if_needed()
    box, whole = wick.locator(".hit").bounding_box(), maker.card("Wicks").locator(".outline").first.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    maker.page.mouse.move(x, y)
    maker.page.mouse.down()
    # A quarter of the way across, of 68 mm: the far wall is then 51 mm away.
    maker.page.mouse.move(x + whole["width"] / 8, y)
    maker.page.mouse.move(x + whole["width"] / 4, y)
    maker.card("Wicks").locator(".tells > .figures").get_by_text(re.compile(r"^10[123](\.\d)? mm$")).first.wait_for()
    maker.page.mouse.up()
    maker.page.get_by_role("button", name="Undo").tap()
    maker.reads("Wicks", "68 mm")
