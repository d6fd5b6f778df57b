"""Moments in the device's picker, and the timers that come from them: here the page's side, on a stand-in for the core."""

import datetime
import re

STARTED = {"casts": [{"weight": "640 g", "started": "2026-11-24T09:30"}]}
DUE = {"casts": [{"weight": "640 g", "due": ["2026-11-24T10:02", "2026-11-24T12:00"]}]}
NOW = datetime.datetime(2026, 11, 24, 10, 0, 0)


def timed(tried, record: dict):
    """A maker whose device says ten o'clock and whose clock the test turns."""
    maker = tried(record, "#/")
    maker.page.clock.install(time=NOW)
    return maker.opens("#/vessel/v1")


def test_a_moment_is_picked_and_kept(tried):
    maker = tried(STARTED)
    maker.opens_card("Log")
    field = maker.field("Log", "Started")
    assert field.get_attribute("type") == "datetime-local" and field.input_value() == "2026-11-24T09:30"
    field.fill("2026-11-25T10:45")
    assert '2026-11-25T10:45' in maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')")


def test_now_writes_what_the_device_s_clock_says(tried):
    maker = tried(STARTED, timezone_id="Asia/Tokyo")
    maker.opens_card("Log")
    now = maker.card("Log").get_by_role("button", name="Now: Started")
    assert min(now.bounding_box()["height"], now.bounding_box()["width"]) >= 48
    maker.page.clock.set_fixed_time(datetime.datetime(2026, 3, 4, 20, 7, 9, tzinfo=datetime.UTC))
    now.tap()
    assert maker.field("Log", "Started").input_value() == "2026-03-05T05:07"


PLAN = {"casts": [{"weight": "640 g"}], "plan": {"count": "2"}}


def test_what_is_added_now_begins_with_what_the_device_s_clock_says(tried):
    maker = timed(tried, PLAN)
    maker.opens_card("Plan")
    maker.card("Plan").get_by_role("button", name="Light it").tap()
    lit = maker.field("Plan", "Lit at")
    lit.wait_for()
    assert lit.input_value() == "2026-11-24T10:00" and maker.field("Plan", "Note").input_value() == "new"


def test_a_timer_of_a_well_s_card_rings_too(tried):
    maker = timed(tried, PLAN)
    maker.opens_card("Plan")
    maker.card("Plan").get_by_role("button", name="Light it").tap()
    maker.card("Plan").locator(".timers li").get_by_text(re.compile("in 60 min|in 59 min")).wait_for()
    maker.page.clock.fast_forward(3_600_000)
    maker.page.get_by_text("It is time: Put it out.").wait_for()


def test_a_half_filled_picker_wipes_nothing(tried):
    maker = tried(STARTED)
    maker.opens_card("Log")
    field = maker.field("Log", "Started")
    field.focus()
    maker.page.keyboard.press("Delete")
    assert field.evaluate("each => each.validity.badInput")
    assert '"started":"2026-11-24T09:30"' in maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')")
    field.blur()
    assert field.input_value() == "2026-11-24T09:30"


def test_what_no_picker_holds_is_shown_as_text(tried):
    maker = tried({"casts": [{"weight": "640 g", "started": "last Tuesday"}]})
    maker.opens_card("Log")
    field = maker.field("Log", "Started")
    assert field.get_attribute("type") == "text" and field.input_value() == "last Tuesday"
    field.fill("2026-11-24T09:30")
    assert field.get_attribute("type") == "text" and field.evaluate("each => each === document.activeElement")
    field.blur()
    maker.page.locator("input[type=datetime-local]").wait_for()
    assert maker.field("Log", "Started").input_value() == "2026-11-24T09:30"


def test_a_timer_counts_down_and_rings_once(tried):
    maker = timed(tried, DUE)
    face = maker.card("Log").locator(".card-face")
    face.get_by_text(re.compile("in 1 min|in 2 min|in 60 s")).wait_for()
    assert "Unwrap" not in face.inner_text()
    maker.page.clock.fast_forward(125_000)
    maker.page.get_by_text("It is time: Demold.").wait_for()
    face.get_by_text("now").wait_for()
    maker.page.get_by_role("button", name="Dismiss").tap()
    maker.page.clock.fast_forward(60_000)
    # What is past makes way for what comes next, and does not ring again.
    face.get_by_text("Unwrap").wait_for()
    assert maker.page.get_by_text("It is time").count() == 0
    maker.opens_card("Log")
    assert maker.card("Log").locator(".timers li").count() == 2
    assert "ago" in maker.card("Log").locator(".timers li").first.inner_text()


def test_a_way_back_and_the_bell_stand_side_by_side(tried):
    maker = timed(tried, DUE)
    maker.card("Log").locator(".card-face .timer").wait_for()
    maker.page.clock.fast_forward(115_000)
    maker.page.evaluate("navigator.vibrate = () => { window.buzzed = true; }; 0")
    maker.opens_card("Mold")
    maker.card("Mold").get_by_role("button", name="Clear the weight").tap()
    maker.page.clock.fast_forward(10_000)
    maker.page.get_by_text("It is time: Demold.").wait_for()
    assert maker.page.evaluate("window.buzzed")
    maker.page.get_by_role("button", name="Undo").tap()
    assert maker.field("Mold", "Water").input_value() == "640 g"


ASKED = """const own = Worker.prototype.postMessage; window.asked = [];
Worker.prototype.postMessage = function (message) { window.asked.push(message.ask); return own.call(this, message); }; 0"""


def asked(maker) -> int:
    return maker.page.evaluate("window.asked.filter((name) => name === 'countdown').length")


def is_asked_again(maker) -> None:
    """A second later the core is asked once more."""
    before = asked(maker)
    maker.page.clock.fast_forward(1_000)
    maker.page.wait_for_function("(before) => window.asked.filter((name) => name === 'countdown').length > before", arg=before)


def hide(maker, hidden: bool) -> None:
    maker.page.evaluate("""(hidden) => { Object.defineProperty(document, 'hidden', { configurable: true, get: () => hidden });
        document.dispatchEvent(new Event('visibilitychange')); }""", hidden)


def test_the_core_is_asked_only_while_there_is_a_timer_to_see(tried):
    maker = timed(tried, DUE)
    maker.page.evaluate(ASKED)
    maker.card("Log").locator(".card-face .timer").wait_for()
    is_asked_again(maker)
    is_asked_again(maker)
    hide(maker, True)
    before = asked(maker)
    maker.page.clock.run_for(10_000)
    assert asked(maker) == before
    hide(maker, False)
    assert asked(maker) == before + 1
    is_asked_again(maker)
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.locator(".shelf").first.wait_for()
    before = asked(maker)
    maker.page.clock.run_for(10_000)
    assert asked(maker) == before


def test_without_timers_nothing_is_asked(tried):
    maker = timed(tried, STARTED)
    maker.page.evaluate(ASKED)
    maker.opens_card("Log")
    maker.page.clock.run_for(5_000)
    assert asked(maker) == 0


def test_what_the_maker_does_is_answered_before_the_clock(tried):
    maker = tried(STARTED)
    maker.reads("Mold", "642 mL")
    answers = maker.page.evaluate("""async () => {
        const { ask, askIfIdle } = await import("./core/door.js");
        const clock = { now: "2026-11-24T10:00:00", due: ["2026-11-24T10:02"] };
        const first = ask("work_out", { record: {}, materials: [], wicks: [] });
        const beside = await askIfIdle("countdown", clock);
        await first;
        return [beside ?? null, await askIfIdle("countdown", clock)];
    }""")
    assert answers == [None, [{"shown": "in 2 min 0 s", "state": "running"}]]


def test_a_burn_is_lit_now_and_rings_when_it_is_due(maker):
    maker.opens("#/demo/demo-keel-bowl")
    maker.card("Burn test").wait_for()
    maker.page.clock.install(time=NOW)
    maker.opens_card("Burn test")
    maker.card("Burn test").get_by_role("button", name="Light it").tap()
    timers = maker.card("Burn test").locator(".timers li")
    timers.first.get_by_text(re.compile("in (1 h|59 min)")).wait_for()
    maker.page.clock.fast_forward(3_605_000)
    maker.page.get_by_text("It is time: Look").wait_for()
