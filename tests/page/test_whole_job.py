"""From the mold to the wax, with what goes wrong on the way."""


def test_from_water_to_every_weight(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g", "301 g")
    maker.opens_card("Well")
    maker.types("Well", "Water", "300")
    maker.reads("Wax", "246 g", "15 g")


def test_the_scoop_came_out_different(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.opens_card("Bowl")
    maker.types("Bowl", "Powder you scooped instead", "1120")
    maker.reads("Bowl", "280 g")
    maker.types("Bowl", "Powder left in the bag", "900")
    maker.card("Bowl").get_by_role("button", name="From what is left").tap()
    maker.reads("Bowl", "Short of powder: 900 g of the 1205 g")


def test_poured_now_and_told_when_to_demold(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.page.keyboard.press("Escape")
    maker.opens_card("Clock")
    maker.card("Clock").get_by_role("button", name="Now: Poured", exact=True).tap()
    demold = maker.card("Clock").locator(".timers li").filter(has_text="Demold")
    demold.get_by_text("in 4").wait_for()
    maker.page.reload()
    maker.card("Clock").get_by_text("in 4").first.wait_for()


def test_the_rule_of_thumb_stands_beside_and_tells_its_allowance(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.opens_card("Mix")
    table = maker.card("Mix").get_by_role("table")
    table.wait_for()
    assert "1205 g" in table.inner_text() and "1203 g" in table.inner_text()
    maker.reads("Mix", "carries an allowance of 9.9 %")


def test_a_figure_opens_to_its_working_and_source(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.card("Mold").get_by_role("button", name="Volume").tap()
    maker.reads("Mold", "640 × 1.00285 = 642 mL", "Metrologia 38 (2001) 301")


def test_another_powder_brings_its_own_figures(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.opens_card("Mix")
    maker.chooses("Mix", "Portland cement")
    maker.reads("Mix", "983 g", "393 g")
    maker.opens_more("Mix")
    assert maker.field("Mix", "Particle density of the powder").input_value() == "3.15 g/mL"


def test_a_second_reading_is_averaged_and_can_be_taken_back(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mold", "642 mL")
    maker.card("Mold").get_by_role("button", name="Add a reading").tap()
    maker.types("Mold", "Water, reading 2", "650")
    maker.reads("Mold", "645 g")
    maker.card("Mold").get_by_role("button", name="Remove reading 2").tap()
    maker.reads("Mold", "640 g")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.reads("Mold", "645 g")


def test_every_way_to_measure_asks_its_own_question(maker):
    maker.opens()
    ways = maker.card("Mold").get_by_label("How it was measured")
    for way, label in (("full_minus_empty", "Full of water"), ("jug", "Jug before"), ("poured_out", "Water"),
                       ("dry_filler", "One mL of loose filler weighs"), ("dimensions", "Diameter inside")):
        ways.select_option(way)
        maker.field("Mold", label).wait_for()


def test_cautions_stand_at_their_steps(maker):
    maker.opens()
    maker.opens_card("Mix")
    maker.reads("Mix", "Powder dust harms the lungs", "Wet mix burns skin and eyes")
    maker.opens_card("Well")
    maker.reads("Well", "A damp vessel spits hot wax", "An unsealed vessel can burn like a wick")
    maker.opens_card("Wax")
    maker.reads("Wax", "Hot wax burns, and can catch fire")


def test_settings_change_how_figures_are_shown(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_role("link", name="Settings").tap()
    maker.page.get_by_role("radio", name="Pounds and ounces").tap()
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.locator("a.row-face").first.tap()
    maker.reads("Mix", "2 lb 10.50 oz")
    maker.opens_card("Mold")
    assert maker.field("Mold", "Water").input_value() == "640 g"
