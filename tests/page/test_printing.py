"""What comes onto paper: sheets at true size alone, each on a page of its own; else the page itself, black on white.

On a stand-in for the core, but for the last.
"""

import pytest
from printing import paper, prints, sizes

PLAN = {"name": "Tide cup", "casts": [{"weight": "640 g"}], "plan": {"count": "2"}}
A4 = (210.0, 297.0)
# What Chromium takes where the page asks for no size.
LETTER = (215.9, 279.4)


def near(found: list, wanted: tuple[float, float]) -> bool:
    return all(abs(one - other) <= 0.2 for size in found for one, other in zip(size, wanted))


def shown(tried, record=PLAN, **screen):
    maker = tried(record, **screen)
    maker.opens_card("Plan")
    return maker


@pytest.mark.parametrize("sheets", [1, 2, 12])
def test_each_sheet_is_one_page_of_its_own_size(tried, sheets):
    maker = shown(tried, {**PLAN, "plan": {"sheets": sheets}})
    found = sizes(prints(maker, "Plan", "Print the sheet"))
    assert len(found) == sheets and near(found, A4)


@pytest.mark.parametrize("size", [("215.9mm", "279.4mm"), ("279.4mm", "215.9mm"), ("297mm", "210mm")], ids=" by ".join)
def test_any_paper_will_do(tried, size):
    maker = shown(tried, {**PLAN, "plan": {"paper": size}})
    found = sizes(prints(maker, "Plan", "Print the sheet"))
    assert len(found) == 2 and near(found, tuple(float(side.removesuffix("mm")) for side in size))


def test_only_the_sheets_are_seen_on_paper_and_only_there(tried):
    maker = shown(tried)
    prints(maker, "Plan", "Print the sheet")
    assert maker.page.title() == "Tide cup: template"
    assert not maker.page.locator(".sheets").is_visible() and maker.card("Plan").is_visible()
    maker.page.emulate_media(media="print")
    assert maker.page.locator(".sheets").is_visible() and not maker.card("Plan").is_visible()
    true = maker.page.locator(".sheet > svg").evaluate_all("all => all.map((each) => each.getBoundingClientRect().width / 96 * 25.4)")
    assert [round(width, 2) for width in true] == [210, 210]


def test_afterwards_the_screen_prints_as_itself(tried):
    maker = shown(tried)
    prints(maker, "Plan", "Print the sheet")
    # The first printing is that of the sheets; the next is the maker's own wish.
    pages = sizes(paper(maker))
    assert maker.page.locator(".sheets").count() == 0
    assert maker.page.evaluate("document.adoptedStyleSheets.length") == 0
    assert pages and near(pages, LETTER)


def test_sheets_asked_for_again_take_the_place_of_the_former(tried):
    maker = shown(tried)
    for _ in range(2):
        assert len(sizes(prints(maker, "Plan", "Print the sheet"))) == 2
    assert maker.page.locator(".sheets").count() == 1


def test_a_fault_is_told_and_nothing_is_printed(tried):
    maker = shown(tried, {**PLAN, "plan": {"sheets": 13}})
    maker.page.evaluate("window.print = () => { window.printed = true; }; 0")
    maker.card("Plan").get_by_role("button", name="Print the sheet").tap()
    maker.page.get_by_text("This takes too many pages.").wait_for()
    assert maker.page.evaluate("window.printed ?? false") is False and maker.page.locator(".sheets").count() == 0


INK = """() => [...document.querySelectorAll('.card.is-open :is(h2, h3, p, label, th, td, text, .number, .card-title, .says)')]
  .filter((node) => node.checkVisibility()).map((node) => [node.textContent.trim().slice(0, 30), getComputedStyle(node)])
  .map(([words, style]) => [words, style.fill !== 'rgb(0, 0, 0)' ? style.fill : style.color])
  .filter(([, color]) => color !== 'rgb(0, 0, 0)')"""


@pytest.mark.parametrize("theme", ["auto", "dark"])
def test_the_screen_prints_black_on_white_in_any_theme(tried, theme):
    maker = shown(tried, color_scheme="dark")
    maker.page.evaluate("(theme) => { if (theme === 'dark') document.documentElement.dataset.theme = 'dark'; }", theme)
    maker.page.emulate_media(media="print", color_scheme="dark")
    assert maker.page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(255, 255, 255)"
    assert maker.page.evaluate(INK) == []
    for gone in (".dock", ".bar .button", ".actions"):
        assert maker.page.locator(gone).first.is_hidden()


def test_the_whole_screen_is_printed_not_only_what_was_in_sight(tried):
    maker = shown(tried, viewport={"width": 360, "height": 500})
    maker.page.emulate_media(media="print")
    sight = maker.page.evaluate("document.querySelector('main').clientHeight")
    assert sight >= maker.page.evaluate("document.querySelector('main').scrollHeight") > 500


def test_a_template_is_printed_without_a_network(maker, site):
    for fault in ("Failed to load resource", "net::ERR", "An unknown error occurred when fetching the script"):
        maker.phone.allow(fault)
    maker.opens("#/demo/demo-keel-bowl")
    maker.waits_until_offline_works()
    site.stop()
    maker.page.reload()
    maker.opens_card("Template and holder")
    found = sizes(prints(maker, "Template and holder", "Print the template"))
    assert len(found) == 1 and near(found, A4)
