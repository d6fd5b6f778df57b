"""What is sold: costs, prices and labels on a vessel's page, and what a link holds of them."""

from brimbook.record import link

DEMO = "#/demo/demo-keel-bowl"
PRIVATE = {"own_notes": "Rim chips", "selling": [{"hour_rate": "22", "vessels": "4"}]}


def opens_demo(maker):
    maker.opens(DEMO)
    maker.reads("Cost", "$")
    return maker


def top(maker, selector: str) -> float:
    return maker.page.locator(selector).first.bounding_box()["y"]


def test_the_bar_of_the_cost_stands_above_its_table(maker):
    opens_demo(maker).opens_card("Cost")
    assert top(maker, "[data-card=cost] .drawing") < top(maker, "[data-card=cost] .answer-table")


def test_a_label_is_black_on_white_in_the_dark_too(another_phone):
    maker = another_phone(color_scheme="dark")
    opens_demo(maker).opens_card("Label")
    maker.types("Label", "Width", "120 mm")
    maker.types("Label", "Height", "90 mm")
    # Each answer draws it anew, so it is looked for until the last one stands.
    maker.page.wait_for_function("""() => {
        const parts = [...document.querySelectorAll('[data-card=label] svg.label-face *')].map((each) => getComputedStyle(each));
        const colors = parts.flatMap(({ fill, stroke }) => [fill, stroke]);
        return ['rgb(255, 255, 255)', 'rgb(0, 0, 0)'].every((color) => colors.includes(color));
    }""")


def test_the_price_changes_with_what_the_work_costs(maker):
    opens_demo(maker).opens_card("Cost")
    before = maker.card("Cost").locator(".figure .number").first.inner_text()
    maker.card("Cost").locator("summary", has_text="Your work").tap()
    maker.types("Cost", "An hour of your work", "100")
    maker.page.wait_for_function("(before) => document.querySelector('[data-card=cost] .figure .number').textContent !== before", arg=before)


def keeps_private(maker) -> None:
    """A vessel of the maker's own, with a note to themselves."""
    maker.opens()
    maker.taps_digits("640")
    maker.page.get_by_label("Name of the vessel").fill("Gull cup")
    maker.page.locator("summary", has_text="Notes and date").tap()
    maker.page.get_by_label("Notes to yourself", exact=True).fill("Rim chips")
    maker.reads("Mix", "1205 g")


def shared(address: str) -> dict:
    return link.from_fragment(address.partition("#")[2])


def test_a_link_leaves_out_notes_to_oneself_unless_it_is_asked_to_hold_them(maker):
    keeps_private(maker)
    assert "own_notes" not in shared(maker.shares())
    maker.page.get_by_text("but for prices, buyers and notes to yourself").wait_for()
    plain = maker.page.get_by_label("Link", exact=True).input_value()
    maker.page.get_by_label("With prices and notes to yourself").tap()
    maker.page.get_by_text("The link holds everything you typed").wait_for()
    maker.page.wait_for_function("(plain) => document.getElementById('link')?.value && document.getElementById('link').value !== plain", arg=plain)
    assert shared(maker.page.get_by_label("Link", exact=True).input_value())["own_notes"] == "Rim chips"


def test_each_link_begins_without_what_is_private(maker):
    keeps_private(maker)
    maker.shares()
    maker.page.get_by_label("With prices and notes to yourself").tap()
    maker.page.get_by_role("button", name="Close").tap()
    assert "own_notes" not in shared(maker.shares())
    assert not maker.page.get_by_label("With prices and notes to yourself").is_checked()


def test_notes_to_oneself_are_kept(maker):
    keeps_private(maker)
    maker.page.reload()
    maker.reads("Mix", "1205 g")
    maker.page.locator("summary", has_text="Notes and date").tap()
    assert maker.page.get_by_label("Notes to yourself", exact=True).input_value() == "Rim chips"


def test_what_is_noted_today_bears_the_date_of_today(tried):
    maker = tried({"casts": [{}], "plan": {"count": "1"}})
    maker.opens_card("Plan")
    maker.card("Plan").get_by_role("button", name="Note a batch").tap()
    made_on, today = maker.page.evaluate("""() => [JSON.parse(localStorage.getItem('brimbook.vessel.v1')).record.plan.batches[0].made_on,
      new Date().toLocaleDateString('sv')]""")
    assert made_on == today
