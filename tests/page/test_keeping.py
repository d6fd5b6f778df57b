"""The book on the device: nothing typed is lost, found by name, removed with undo."""

import page_book

DESK = {"desk-2": "2026-11-21T10:00:00.000Z"}


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
    maker.page.get_by_label("Find by name, notes or lot").fill("gull")
    assert names.all_inner_texts() == ["Gull cup"]
    maker.page.get_by_role("button", name="Remove Gull cup").tap()
    maker.page.get_by_label("Find by name, notes or lot").fill("")
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


def stamps(maker, id: str = "a") -> dict[str, str]:
    return page_book.entries(maker)[id].get("stamps", {})


def test_a_change_bears_this_device_s_stamp_beside_those_of_others(maker):
    page_book.fill(maker, [page_book.vessel("a", "Gull cup", stamps=DESK)], "#/vessel/a")
    maker.page.get_by_label("Name of the vessel").fill("Gull bowl")
    device = maker.page.evaluate("localStorage.getItem('brimbook.device')")
    entry = page_book.entries(maker)["a"]
    assert entry["stamps"] == {**DESK, device: entry["saved"]}
    maker.page.reload()
    maker.page.get_by_label("Name of the vessel").fill("Gull jar")
    later = stamps(maker)
    assert set(later) == {"desk-2", device} and later[device] > entry["saved"]


def test_looking_at_a_vessel_is_no_change(maker):
    page_book.fill(maker, [page_book.vessel("a", "Gull cup", stamps=DESK, casts=[{"cavity": {"readings": [{"water": "640"}]}}])], "#/vessel/a")
    maker.page.wait_for_function("() => localStorage.getItem('brimbook.vessel.a').includes('640 g')")
    assert stamps(maker) == DESK


def test_an_entry_of_before_stamps_counts_as_it_was_saved(maker):
    page_book.fill(maker, [page_book.vessel("a", "Gull cup")], "#/vessel/a")
    maker.page.get_by_label("Name of the vessel").fill("Gull bowl")
    assert stamps(maker)[""] == "2026-11-20T10:00:00.000Z" and len(stamps(maker)) == 2


def test_what_is_removed_and_put_back_is_the_same(maker):
    page_book.fill(maker, [page_book.vessel("a", "Gull cup", stamps=DESK)])
    before = page_book.entries(maker)
    maker.page.get_by_role("button", name="Remove Gull cup").tap()
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.get_by_text("Gull cup", exact=True).wait_for()
    assert page_book.entries(maker) == before
