"""A card closed is one line; open, its question and its answer are on one screen."""

import pytest

DEMOS = ("demo-tide-cup", "demo-heron-bowl", "demo-ballast-tumblers", "demo-keel-bowl")
CARDS = "() => [...document.querySelectorAll('.card')].map((card) => card.dataset.card)"
CLOSE_ALL = "() => document.querySelectorAll('.card.is-open > .card-head > button').forEach((face) => face.click())"
# The answers of each closed card: the tops of their lines of text.
LINES = """() => [...document.querySelectorAll('.is-closed.answered')].map((card) => [card.dataset.card,
  new Set([...card.querySelectorAll('.answer .number')].map((node) => Math.round(node.getBoundingClientRect().bottom))).size])"""
OPEN = """(name) => new Promise((done) => {
  document.querySelector(`[data-card="${name}"] .card-face`).click();
  requestAnimationFrame(() => requestAnimationFrame(() => {
    const card = document.querySelector(`[data-card="${name}"]`);
    const answer = card.querySelector('.tells > .figures, .tells > .waiting');
    const fields = [...card.querySelectorAll('.tells > .field')];
    const page = document.querySelector('main').getBoundingClientRect();
    const last = [answer, ...fields].filter(Boolean).map((node) => node.getBoundingClientRect().bottom);
    done([card.querySelector('.question').getBoundingClientRect().top - page.top, Math.max(...last) - page.bottom]);
  }));
})"""


def shown(maker, demo):
    maker.opens(f"#/demo/{demo}")
    maker.page.locator(".card.answered").first.wait_for(timeout=20_000)


@pytest.mark.parametrize("screen", [(390, 844), (360, 640)], ids=str)
@pytest.mark.parametrize("demo", DEMOS)
def test_a_closed_card_answers_in_one_line(another_phone, demo, screen):
    maker = another_phone(viewport={"width": screen[0], "height": screen[1]})
    shown(maker, demo)
    maker.page.evaluate(CLOSE_ALL)
    lines = maker.page.evaluate(LINES)
    assert len(lines) > 4 and not [each for each in lines if each[1] != 1]


@pytest.mark.parametrize("demo", DEMOS)
def test_an_open_card_asks_and_answers_on_one_screen(maker, demo):
    shown(maker, demo)
    for name in maker.page.evaluate(CARDS):
        maker.page.evaluate(CLOSE_ALL)
        top, over = maker.page.evaluate(OPEN, name)
        assert top >= 0 and over <= 0, f"{name}: {top} below the top, {over} over the end"


def test_many_figures_are_folded_away_until_one_is_wanted(maker):
    shown(maker, "demo-keel-bowl")
    maker.opens_card("Pour")
    assert not maker.card("Pour").get_by_role("button", name="Your cups count for").is_visible()
    maker.opens_figures("Pour")
    maker.card("Pour").get_by_role("button", name="Your cups count for").tap()
    maker.reads("Pour", "1 ÷")
