"""The page on every screen: nothing cut off, targets large, text readable."""

import pytest

SCREENS = {
    "390x844": {"viewport": {"width": 390, "height": 844}},
    "360x640": {"viewport": {"width": 360, "height": 640}},
    "320x568": {"viewport": {"width": 320, "height": 568}},
    "844x390": {"viewport": {"width": 844, "height": 390}},
}
PLACES = {"new": "#/new", "demo": "#/demo/demo-ballast-tumblers", "shelf": "#/", "materials": "#/materials",
          "settings": "#/settings", "plan": "#/plan", "lots": "#/lots", "book": "#/book"}
# A vessel with everything that a card can hold, on a stand-in for the core.
FULL = {"name": "Tide cup", "casts": [{"weight": "640 g", "started": "2026-11-24T09:30", "due": ["2020-11-24T10:02", "2099-11-24T12:00"],
                                       "pours": [{"left": "41 g", "at": "2026-11-20T10:00"}, {"left": "some"}]}],
        "plan": {"count": "2", "across": "110 mm", "path": "M 0 0 " + "L 12.5 40 " * 40, "burns": [{"lit_at": "2026-11-24T09:30"}]}}


def titles(maker) -> list[str]:
    """The titles of all cards on the screen."""
    return maker.page.locator(".card").evaluate_all("all => all.map((each) => each.getAttribute('aria-label'))")


def overflow(page) -> float:
    return page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")


@pytest.mark.parametrize("screen", SCREENS.values(), ids=SCREENS)
@pytest.mark.parametrize("text", [1, 2], ids=["plain", "text 200 %"])
def test_nothing_scrolls_sideways(another_phone, screen, text):
    maker = another_phone(**screen)
    for place in PLACES.values():
        maker.opens(place)
        maker.page.evaluate(f"document.documentElement.style.fontSize = '{text * 100}%'")
        if "demo" in place:
            maker.reads("Mix", "3152 g")
            for card in titles(maker):
                maker.opens_card(card)
                assert overflow(maker.page) <= 0, (place, card)
        assert overflow(maker.page) <= 0, place


CLIPPED = """() => [...document.querySelectorAll('.card-body *')].filter((node) => node.checkVisibility() && !node.closest('svg, .table-frame > *'))
  .filter((node) => node.getBoundingClientRect().right > node.closest('.card').getBoundingClientRect().right + 0.5)
  .map((node) => node.outerHTML.slice(0, 120))"""


@pytest.mark.parametrize("screen", SCREENS.values(), ids=SCREENS)
@pytest.mark.parametrize("text", [1, 2], ids=["plain", "text 200 %"])
def test_nothing_of_a_full_card_is_cut_off(tried, screen, text):
    maker = tried(FULL, **screen)
    maker.page.evaluate(f"document.documentElement.style.fontSize = '{text * 100}%'")
    for card in titles(maker):
        maker.opens_card(card)
        assert maker.page.evaluate(CLIPPED) == [] and overflow(maker.page) <= 0, card


TARGETS = "button, a, select, summary, input:not([type=radio]), .option"


@pytest.mark.parametrize("place", PLACES.values(), ids=PLACES)
def test_targets_are_large_enough_for_a_wet_thumb(maker, place):
    maker.opens(place)
    assert small(maker) == []


def test_targets_of_a_full_card_are_as_large(tried):
    maker = tried(FULL)
    for card in titles(maker):
        maker.opens_card(card)
        maker.card(card).locator("details").evaluate_all("all => all.forEach((each) => { each.open = true; })")
        assert small(maker) == [], card


def small(maker) -> list:
    found = []
    for target in maker.page.locator(TARGETS).filter(visible=True).all():
        box = target.bounding_box()
        if box and min(box["width"], box["height"]) < 47.5:
            found.append((target.evaluate("each => each.outerHTML.slice(0, 120)"), box))
    return found


CONTRAST = """() => {
  const numbers = (color) => color.match(/[\\d.]+/g).map(Number);
  const light = (color) => {
    const [r, g, b] = numbers(color).slice(0, 3).map((c) => c / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const behind = (node) => {
    for (let at = node; at; at = at.parentElement) {
      const color = getComputedStyle(at).backgroundColor;
      if (numbers(color)[3] !== 0) return color;
    }
    return 'rgb(255, 255, 255)';
  };
  return [...document.querySelectorAll('.number, .answer, h1, h2, h3, label, legend, p, button, a, summary, input')]
    .filter((node) => node.checkVisibility() && node.textContent.trim())
    .map((node) => {
      const [one, other] = [light(getComputedStyle(node).color), light(behind(node))];
      const ratio = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
      return [node.className, node.textContent.trim().slice(0, 40), ratio, node.matches('.number, .answer')];
    });
}"""


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_contrast(another_phone, scheme):
    maker = another_phone(color_scheme=scheme)
    maker.opens(PLACES["demo"])
    maker.reads("Mix", "3152 g")
    assert seen_well(maker) > 50


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_contrast_of_a_full_card(tried, scheme):
    maker = tried(FULL, color_scheme=scheme)
    maker.page.locator(".timers .past").wait_for()
    assert seen_well(maker) > 40


def seen_well(maker) -> int:
    """How many texts of all cards, opened one after the other, have contrast enough."""
    seen = 0
    for card in titles(maker):
        maker.opens_card(card)
        for style, text, ratio, figure in maker.page.evaluate(CONTRAST):
            seen += 1
            assert ratio >= (7 if figure else 4.5), (card, style, text, ratio)
    return seen


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_words_of_a_chart_read_wherever_they_stand(tried, scheme):
    maker = tried(FULL, color_scheme=scheme)
    maker.opens_card("Mold")
    drawn = maker.page.locator("svg.chart text").evaluate_all(
        "all => all.map(each => getComputedStyle(each)).map(({fill, stroke, paintOrder}) => [fill, stroke, paintOrder])")
    assert len(drawn) == 2
    for fill, rim, order in drawn:
        one, other = sorted((lightness(fill), lightness(rim)))
        assert (other + 0.05) / (one + 0.05) >= 7 and order.startswith("stroke")


def lightness(color: str) -> float:
    """Relative luminance of "rgb(r, g, b)" by WCAG 2.2."""
    shares = [int(part) / 255 for part in color.strip("rgb()").split(",")]
    linear = [share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4 for share in shares]
    return sum(weight * part for weight, part in zip((0.2126, 0.7152, 0.0722), linear))
