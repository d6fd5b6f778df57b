"""The page on every screen: nothing cut off, targets large, text readable."""

import pytest

SCREENS = {
    "390x844": {"viewport": {"width": 390, "height": 844}},
    "360x640": {"viewport": {"width": 360, "height": 640}},
    "320x568": {"viewport": {"width": 320, "height": 568}},
    "844x390": {"viewport": {"width": 844, "height": 390}},
}
PLACES = {"new": "#/new", "demo": "#/demo/demo-ballast-tumblers", "shelf": "#/", "settings": "#/settings"}
CARDS = ("Mold", "Mix", "Well", "Wax")


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
            maker.reads("Mix", "1611 g")
            for card in CARDS:
                maker.opens_card(card)
                assert overflow(maker.page) <= 0, (place, card)
        assert overflow(maker.page) <= 0, place


TARGETS = "button, a, select, summary, input:not([type=radio]), .option"


@pytest.mark.parametrize("place", PLACES.values(), ids=PLACES)
def test_targets_are_large_enough_for_a_wet_thumb(maker, place):
    maker.opens(place)
    small = []
    for target in maker.page.locator(TARGETS).filter(visible=True).all():
        box = target.bounding_box()
        if box and min(box["width"], box["height"]) < 47.5:
            small.append((target.evaluate("each => each.outerHTML.slice(0, 120)"), box))
    assert small == []


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
  return [...document.querySelectorAll('.number, .answer, h1, h2, label, legend, p, button, a, summary, input')]
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
    maker.reads("Mix", "1611 g")
    seen = 0
    for card in CARDS:
        maker.opens_card(card)
        for style, text, ratio, figure in maker.page.evaluate(CONTRAST):
            seen += 1
            assert ratio >= (7 if figure else 4.5), (card, style, text, ratio)
    assert seen > 50
