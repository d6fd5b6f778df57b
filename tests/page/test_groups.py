"""Chapters, groups of fields, and the buttons that add and take away.

On a stand-in for the core, but for the last ones.
"""

POURS = {"casts": [{"weight": "640 g", "pours": [{"left": "41 g"}, {"left": "12 g"}]}]}


def group(maker, title: str):
    return maker.page.locator("details.group-item").filter(has=maker.page.get_by_text(title, exact=True))


def opens_group(maker, title: str) -> None:
    group(maker, title).locator("> summary").tap()


def is_open(maker, title: str) -> bool:
    return group(maker, title).evaluate("each => each.open")


def test_a_chapter_is_a_heading_above_the_titles_of_its_cards(tried):
    maker = tried(POURS)
    levels = maker.page.locator("h1, h2, h3").evaluate_all("all => all.map(each => [each.localName, each.innerText.split('\\n')[0]])")
    assert [level for level, _ in levels] == ["h1", "h2", "h3", "h2", "h3"]
    assert [text for level, text in levels if level == "h2"] == ["Cast", "Set and dry"]


def test_a_group_tells_itself_in_one_line_and_opens_to_its_fields(tried):
    maker = tried(POURS)
    maker.opens_card("Log")
    assert "12 g left over" in group(maker, "Pour 2").locator("> summary").inner_text()
    assert group(maker, "Pour 2").locator("> summary").bounding_box()["height"] >= 48
    assert not is_open(maker, "Pour 2")
    opens_group(maker, "Pour 2")
    assert group(maker, "Pour 2").get_by_label("Left over").input_value() == "12 g"


def test_repaints_leave_open_what_was_opened_and_shut_what_was_shut(tried):
    maker = tried(POURS)
    maker.opens_card("Log")
    opens_group(maker, "Pour 1")
    group(maker, "Pour 1").get_by_label("Left over").fill("50 g")
    group(maker, "Pour 1").get_by_text("50 g left over").wait_for()
    assert is_open(maker, "Pour 1") and not is_open(maker, "Pour 2")
    opens_group(maker, "Pour 1")
    opens_group(maker, "Pour 2")
    group(maker, "Pour 2").get_by_label("Left over").fill("60 g")
    group(maker, "Pour 2").get_by_text("60 g left over").wait_for()
    assert not is_open(maker, "Pour 1") and is_open(maker, "Pour 2")


def test_an_added_group_lies_open_with_the_focus_in_its_first_field(tried):
    maker = tried(POURS)
    maker.opens_card("Log")
    maker.card("Log").get_by_role("button", name="Add a pour").tap()
    third = group(maker, "Pour 3").get_by_label("Left over")
    third.wait_for()
    assert third.evaluate("each => each === document.activeElement") and is_open(maker, "Pour 3")
    maker.page.keyboard.type("7 g")
    group(maker, "Pour 3").get_by_text("7 g left over").wait_for()
    # What the button writes beside the new item.
    maker.opens_card("Mold")
    assert maker.field("Mold", "Binder").input_value() == "Dune sand"


def test_a_group_is_removed_with_a_way_back(tried):
    maker = tried(POURS)
    maker.opens_card("Log")
    opens_group(maker, "Pour 1")
    maker.card("Log").get_by_role("button", name="Remove pour 1").tap()
    group(maker, "Pour 2").wait_for(state="detached")
    assert "12 g" in group(maker, "Pour 1").locator("> summary").inner_text() and not is_open(maker, "Pour 1")
    maker.page.get_by_role("button", name="Undo").tap()
    group(maker, "Pour 2").wait_for()
    assert "41 g" in group(maker, "Pour 1").locator("> summary").inner_text()


def test_a_way_back_still_leads_back_from_the_shelf(tried):
    maker = tried(POURS)
    maker.opens_card("Log")
    opens_group(maker, "Pour 2")
    maker.card("Log").get_by_role("button", name="Remove pour 2").tap()
    group(maker, "Pour 2").wait_for(state="detached")
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.locator(".shelf").first.wait_for()
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.locator("a.row-face").first.tap()
    maker.opens_card("Log")
    group(maker, "Pour 2").wait_for()


def test_a_faulty_entry_in_a_group_opens_its_card_and_the_group(tried):
    maker = tried({"casts": [{"weight": "640 g", "pours": [{"left": "41 g"}, {"left": "some"}]}]})
    maker.reads("Log", "Left over can't be read")
    assert is_open(maker, "Pour 2") and not is_open(maker, "Pour 1")
    maker.field("Log", "Left over").last.fill("5 g")
    group(maker, "Pour 2").get_by_text("5 g left over").wait_for()
    assert is_open(maker, "Pour 2")


def test_next_goes_through_open_groups_only(tried):
    maker = tried(POURS)
    maker.opens_card("Log")
    opens_group(maker, "Pour 2")
    second = group(maker, "Pour 2")
    second.get_by_label("Left over").tap()
    maker.page.get_by_role("button", name="Next", exact=True).tap()
    assert second.get_by_label("Poured at", exact=True).evaluate("each => each === document.activeElement")


def test_clearing_has_a_way_back(tried):
    maker = tried(POURS)
    maker.opens_card("Mold")
    maker.card("Mold").get_by_role("button", name="Clear the weight").tap()
    assert maker.field("Mold", "Water").input_value() == ""
    maker.page.get_by_role("button", name="Undo").tap()
    assert maker.field("Mold", "Water").input_value() == "640 g"


def test_a_second_mold_opens_where_it_begins_and_goes_with_a_way_back(tried):
    maker = tried(POURS)
    maker.page.get_by_role("button", name="Add a mold").tap()
    water = maker.field("Mold 2", "Water")
    water.wait_for()
    assert water.evaluate("each => each === document.activeElement")
    maker.page.keyboard.type("300 g")
    maker.page.get_by_role("button", name="Remove mold 2").tap()
    maker.card("Mold 2").wait_for(state="detached")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.opens_card("Mold 2")
    assert maker.field("Mold 2", "Water").input_value() == "300 g"


def test_a_long_list_is_told_by_its_groups(tried):
    maker = tried({"casts": [{"weight": "640 g", "binder": "Moon dust"}]})
    maker.opens_card("Mold")
    binder = maker.field("Mold", "Binder")
    assert binder.locator("optgroup").evaluate_all("all => all.map(({label, children}) => [label, children.length])") == [["Binders", 3], ["Sands", 3]]
    # What is not on the list stands there as it is.
    assert binder.input_value() == "Moon dust"
    binder.select_option("Fine sand")
    assert binder.input_value() == "Fine sand" and binder.locator("option", has_text="Moon dust").count() == 0


def test_an_ingredient_is_added_and_weighed(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.opens_card("Mix")
    maker.reads("Mix", "1205 g")
    maker.card("Mix").get_by_role("button", name="Add an ingredient").tap()
    maker.reads("Mix", "Weigh", "red iron oxide")
    maker.field("Mix", "Material").select_option(label="Silica sand")
    maker.reads("Mix", "silica sand")
    maker.card("Mix").get_by_role("button", name="Remove this ingredient").tap()
    maker.reads("Mix", "1205 g")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.reads("Mix", "silica sand")


def test_another_mold_and_another_well(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.page.keyboard.press("Escape")
    maker.page.get_by_role("button", name="Add another mold").tap()
    maker.field("Mold 2", "Water").wait_for()
    maker.taps_digits("200")
    maker.reads("Mold 2", "201 mL")
    maker.page.keyboard.press("Escape")
    maker.page.get_by_role("button", name="Add another well").tap()
    maker.field("Well 2", "Water").wait_for()
    maker.page.reload()
    maker.reads("Mold 2", "201 mL")
    maker.page.get_by_role("button", name="Remove mold 2").tap()
    maker.card("Mold 2").wait_for(state="detached")
    assert maker.card("Well 2").count() == 1


def test_pours_are_logged_newest_first_and_what_is_folded_stays_so(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.page.keyboard.press("Escape")
    maker.opens_card("Pour")
    for weight in ("120 g", "90 g"):
        maker.card("Pour").get_by_role("button", name="Log a pour").tap()
        newest = maker.card("Pour").locator("details.group-item").first
        newest.get_by_label("Powder weighed").and_(maker.page.locator(":focus")).wait_for()
        newest.get_by_label("Mix left over").fill(weight)
        newest.get_by_label("Mix left over").blur()
        newest.locator(".group-summary").get_by_text("needed").wait_for()
        assert newest.evaluate("each => each.open")
    titles = maker.card("Pour").locator(".group-title").all_inner_texts()
    assert titles == ["Pour 2", "Pour 1"]
    opens_group(maker, "Pour 1")
    maker.field("Pour", "Mix left over").first.fill("95 g")
    maker.field("Pour", "Mix left over").first.blur()
    maker.reads("Pour", "Your mix")
    assert not is_open(maker, "Pour 1") and is_open(maker, "Pour 2")


def test_sand_comes_into_the_parts_and_goes_out_of_them(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.page.keyboard.press("Escape")
    maker.opens_card("Mix")
    maker.card("Mix").get_by_role("button", name="Add an ingredient").tap()
    maker.card("Mix").get_by_label("Material", exact=True).select_option("sand")
    maker.reads("Mix", "silica sand")
    assert maker.field("Mix", "Powder : Silica sand : water").input_value() == "1:1:0.25"
    maker.card("Mix").get_by_role("button", name="Remove this ingredient").tap()
    maker.reads("Mix", "1205 g", "301 g")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.reads("Mix", "silica sand")
