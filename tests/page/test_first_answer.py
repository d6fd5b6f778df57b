"""The first run: from an empty page to the first weights, within two taps and the digits."""

import pytest

SCREENS = {"390x844": (390, 844), "360x640": (360, 640)}


@pytest.mark.parametrize("size", SCREENS.values(), ids=SCREENS)
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_two_taps_and_the_digits(another_phone, size, scheme):
    maker = another_phone(viewport={"width": size[0], "height": size[1]}, color_scheme=scheme)
    maker.opens()
    # No tap at all: the first field is asked for and the pad lies open.
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g", "301 g")
    pad = maker.page.get_by_role("group", name="Number pad").bounding_box()
    for thing in (maker.page.locator("input.reading").first, maker.card("Mix").get_by_text("1205 g"),
                  maker.card("Mix").get_by_text("301 g")):
        box = thing.bounding_box()
        assert 0 <= box["y"] and box["y"] + box["height"] <= pad["y"], "hidden without scrolling"


def test_the_first_paint_needs_no_python(browser, site, another_phone):
    maker = another_phone()
    maker.phone.allow("Failed to load resource")
    maker.phone.allow("net::ERR")
    maker.phone.context.route("**/pyodide/**", lambda route: route.abort())
    maker.opens()
    maker.taps_digits("640")
    assert maker.page.locator("input.reading").first.input_value() == "640"


def test_what_was_typed_before_the_core_came_is_answered(another_phone):
    maker = another_phone()
    maker.opens()
    maker.page.keyboard.type("1 lb 4 oz")
    maker.reads("Mold", "567 g")
    maker.reads("Mix", "1067 g")


def test_what_was_understood_stands_beside_the_field(maker):
    maker.opens()
    maker.page.keyboard.type("0,640 kg")
    maker.reads("Mold", "640 g")


@pytest.mark.parametrize(("typed", "sentence"), [
    ("12 fl oz", "Fluid ounces (fl oz) are volume"), ("water", "can't be read as a weight"), ("-5", "can't be below zero"),
    ("1e99", "Type the number in full"), ("1,250 oz", "could be 1250 oz or 1.25 oz")])
def test_a_wrong_entry_gets_a_sentence_and_is_kept(maker, typed, sentence):
    maker.opens()
    maker.page.keyboard.type(typed)
    maker.reads("Mold", sentence)
    field = maker.page.locator("input.reading").first
    assert field.get_attribute("aria-invalid") == "true"
    maker.page.reload()
    maker.reads("Mold", sentence)
    assert maker.page.locator("input.reading").first.input_value() == typed
