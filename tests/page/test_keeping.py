"""The book on the device: nothing typed is lost, found by name, removed with undo."""


def test_a_reload_keeps_everything(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.page.get_by_label("Name of the vessel").fill("Gull cup")
    maker.reads("Mix", "1205 g")
    maker.page.reload()
    maker.reads("Mix", "1205 g")
    assert maker.page.get_by_label("Name of the vessel").input_value() == "Gull cup"


def test_every_keystroke_is_kept_at_once(maker):
    maker.opens()
    maker.taps_digits("6")
    maker.taps_digits("4")
    stored = maker.page.evaluate("Object.values(localStorage).join()")
    assert '"water":"64"' in stored.replace("64 g", "64")


def test_newest_first_found_by_name_removed_with_undo(maker):
    maker.opens()
    for name, weight in (("Gull cup", "640"), ("Kelp bowl", "300")):
        maker.page.goto(f"{maker.phone.address}#/new")
        maker.page.locator("input.reading").first.wait_for()
        maker.page.locator("input.reading").first.fill(weight)
        maker.page.get_by_label("Name of the vessel").fill(name)
        maker.reads("Mix", "g")
        maker.page.get_by_role("link", name="Back to the shelf").tap()
    shelf = maker.page.get_by_role("list", name="Your vessels")
    names = shelf.locator(".row-name")
    assert names.all_inner_texts() == ["Kelp bowl", "Gull cup"]
    maker.page.get_by_label("Find by name").fill("gull")
    assert names.all_inner_texts() == ["Gull cup"]
    maker.page.get_by_role("button", name="Remove Gull cup").tap()
    maker.page.get_by_label("Find by name").fill("")
    assert names.all_inner_texts() == ["Kelp bowl"]
    maker.page.get_by_role("button", name="Undo").tap()
    assert sorted(names.all_inner_texts()) == ["Gull cup", "Kelp bowl"]


def test_a_forbidden_local_storage_is_told_and_the_page_works(another_phone):
    maker = another_phone()
    maker.phone.context.add_init_script(
        "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }})")
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    maker.page.get_by_text("does not let the page keep anything").first.wait_for()


def test_a_damaged_entry_is_shown_and_left_alone(maker):
    maker.opens("#/")
    maker.page.evaluate("localStorage.setItem('brimbook.vessel.x1', '{\"record\": half')")
    maker.page.reload()
    maker.page.get_by_role("heading", name="Damaged").wait_for()
    assert maker.page.evaluate("localStorage.getItem('brimbook.vessel.x1')") == '{"record": half'


def test_a_setting_in_words_is_kept(maker):
    maker.opens("#/settings")
    currency = maker.page.get_by_label("Prices in")
    currency.fill("CHF")
    currency.blur()
    maker.page.reload()
    currency.wait_for()
    assert currency.input_value() == "CHF"


def test_a_question_that_an_older_version_did_not_have_is_asked(maker):
    maker.opens("#/settings")
    maker.page.get_by_role("radio", name="Inches", exact=True).tap()
    maker.page.wait_for_function("() => localStorage.getItem('brimbook.settings-made')")
    maker.page.evaluate("""() => {
        const made = JSON.parse(localStorage.getItem('brimbook.settings-made'));
        made.settings_form = made.settings_form.filter(({ path }) => path !== 'currency');
        localStorage.setItem('brimbook.settings-made', JSON.stringify(made));
    }""")
    maker.page.reload()
    maker.page.get_by_label("Prices in").wait_for()
    assert maker.page.get_by_role("radio", name="Inches", exact=True).is_checked()
