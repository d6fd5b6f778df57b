"""A book of 2,000 vessels: a part of it is shown at a time, and anything in it is found."""

import page_book

COUNT = 2000


def opens_many(another_phone, count: int = COUNT):
    maker = another_phone(service_workers="block")
    book = [page_book.vessel(f"v{number}", f"Cup {number}", f"2026-11-20T10:00:00.{number:06d}Z") for number in range(count)]
    page_book.fill(maker, book)
    return maker


def shelf_names(maker) -> list[str]:
    return maker.page.get_by_role("list", name="Your vessels").locator(".row-name").all_text_contents()


def test_a_part_is_shown_and_all_are_counted(another_phone):
    maker = opens_many(another_phone)
    maker.page.get_by_text("2000 vessels", exact=True).wait_for()
    shown = shelf_names(maker)
    assert shown[:2] == ["Cup 1999", "Cup 1998"] and len(shown) < 200


def test_more_comes_as_one_scrolls_until_the_last(another_phone):
    maker = opens_many(another_phone, 150)
    for last in (30, 0):
        maker.page.evaluate("document.querySelector('.page').scrollTop = 1e6")
        maker.page.get_by_role("list", name="Your vessels").get_by_text(f"Cup {last}", exact=True).wait_for(state="attached")
    assert shelf_names(maker) == [f"Cup {number}" for number in reversed(range(150))]
    assert not maker.page.get_by_role("button", name="Show more").count()


def test_more_comes_by_the_keyboard_alone(another_phone):
    maker = another_phone(service_workers="block")
    maker.phone.context.add_init_script("window.IntersectionObserver = class { observe() {} disconnect() {} };")
    page_book.fill(maker, [page_book.vessel(f"v{number:03d}", f"Cup {number}") for number in range(70)])
    assert len(shelf_names(maker)) == 60
    maker.page.get_by_role("button", name="Show more").focus()
    maker.page.keyboard.press("Enter")
    maker.page.get_by_role("button", name="Show more").wait_for(state="detached")
    assert len(shelf_names(maker)) == 70


def test_a_vessel_far_down_is_found_by_its_name(another_phone):
    maker = opens_many(another_phone)
    maker.page.get_by_label("Find by name, notes or lot").fill("cup 17")
    some = sum("17" in str(number) for number in range(COUNT))
    maker.page.get_by_text(f"{some} of 2000 vessels", exact=True).wait_for()
    maker.page.get_by_label("Find by name, notes or lot").fill("CUP 1734")
    maker.page.get_by_text("1 of 2000 vessels", exact=True).wait_for()
    assert shelf_names(maker) == ["Cup 1734"]


def test_vessels_are_found_by_notes_and_by_the_lots_of_their_batches(another_phone):
    maker = another_phone(service_workers="block")
    batches = [{"lot": "KEE-260926", "used": [{"name": "Soy wax", "lot": "W 4711"}]}]
    page_book.fill(maker, [page_book.vessel("a", "Keel bowl", batches=batches), page_book.vessel("b", "Tide cup", notes="Pour slowly"),
                           page_book.vessel("c", "Gull cup", own_notes="Rim chips", batches="none")])
    found = maker.page.get_by_label("Find by name, notes or lot")
    for sought, name in (("4711", "Keel bowl"), ("kee-26", "Keel bowl"), ("slowly", "Tide cup"), ("rim gull", "Gull cup")):
        found.fill(sought)
        assert shelf_names(maker) == [name]
    found.fill("nowhere")
    maker.page.get_by_text("Nothing is found for “nowhere”.").wait_for()
    maker.page.get_by_role("button", name="Show all").tap()
    assert len(shelf_names(maker)) == 3


def test_the_shelf_is_where_it_was_left(another_phone):
    maker = opens_many(another_phone, 300)
    for last in (180, 120):
        maker.page.evaluate("document.querySelector('.page').scrollTop = 9000")
        maker.page.get_by_text(f"Cup {last}", exact=True).wait_for(state="attached")
    maker.page.evaluate("document.querySelector('.page').scrollTop = 9000")
    maker.page.goto(f"{maker.phone.address}#/settings")
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_role("list", name="Your vessels").wait_for()
    assert maker.page.evaluate("document.querySelector('.page').scrollTop") > 8000


def test_a_change_shows_although_entries_are_known_by_their_text(another_phone):
    maker = opens_many(another_phone, 30)
    maker.page.goto(f"{maker.phone.address}#/vessel/v29")
    maker.page.get_by_label("Name of the vessel").fill("Gull bowl")
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_text("Gull bowl", exact=True).wait_for()
    assert len(shelf_names(maker)) == 30 and "Cup 29" not in shelf_names(maker)
