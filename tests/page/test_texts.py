"""A long text has room; a short one stays in one line. On a stand-in for the core."""

LONG = "M 0 0 " + "L 12.5 40 " * 190
PLAN = {"casts": [{"weight": "640 g"}], "plan": {"path": LONG}}


def shown(tried, record):
    maker = tried(record)
    maker.opens_card("Plan")
    maker.field("Plan", "Path").wait_for()
    return maker


def kind(maker) -> str:
    return maker.field("Plan", "Path").evaluate("each => each.localName")


def test_a_long_text_is_seen_in_several_lines_and_kept_whole(tried):
    maker = shown(tried, PLAN)
    assert kind(maker) == "textarea" and maker.field("Plan", "Path").input_value() == LONG
    assert maker.field("Plan", "Path").bounding_box()["height"] >= 80
    maker.field("Plan", "Path").press("End")
    maker.page.keyboard.type("Z")
    assert LONG[:40] in maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')")
    assert len(maker.field("Plan", "Path").input_value()) == len(LONG) + 1


def test_a_field_keeps_its_caret_while_its_text_grows(tried):
    maker = shown(tried, {**PLAN, "plan": {"path": ""}})
    field = maker.field("Plan", "Path")
    field.tap()
    maker.page.keyboard.type("L 12.5 40 " * 8)
    assert kind(maker) == "input" and field.input_value() == "L 12.5 40 " * 8
    assert field.evaluate("each => each === document.activeElement")
    field.blur()
    maker.page.locator("textarea[data-path='plan.path']").wait_for()
