"""The page of what to make and what to buy, its list as a text, and on paper."""

import json
import re
import time
import xml.etree.ElementTree as ET

import pytest
from arithmetic import works_out
from hypothesis import given
from hypothesis import strategies as st
from vessels import ANYTHING, DISPLAYS, ask, bent_vessels, full_vessel, put, vessel

from brimbook import door
from brimbook.record import blank

WAX = {"name": "Soy wax", "role": "wax", "pack_weight": "5 kg", "pack_price": "41", "packs": [{"weight": "1 kg", "price": "10"}],
       "stock_weight": "1.2 kg"}
BOX = {"name": "Box", "role": "packaging", "pack_pieces": "25", "pack_price": "24", "stock_pieces": "30"}
WICK = {"name": "Cotton, medium", "pack_pieces": "100", "pack_price": "14.50", "stock_pieces": "4"}


def keel():
    return blank.demos()[3]


def tumbler():
    return blank.demos()[2]


def boxed(each="1", name="Box", **texts):
    """A vessel of which only packaging is known."""
    return {"name": "Crate", "packaging": [{"name": name, "each": each, **texts}]}


def asked(plan, vessels, materials=(), wicks=(), **how):
    return {"record": {"plan": [{"id": id, "count": count} for id, count in plan]}, "vessels": vessels, "materials": list(materials),
            "wicks": list(wicks), "settings": how}


def page(*given, **how):
    return ask("shopping", **asked(*given, **how))["sheet"]


def buy(*given, **how):
    return page(*given, **how)["cards"][-1]


def rows(card):
    return {row["cells"][0]: row["cells"][1:] for row in card["table"]["rows"]}


def fault(name, **request):
    return json.loads(door.ask(name, json.dumps(request)))["fault"]["sentence"]


def test_an_empty_plan_has_no_cards():
    assert page((), {})["cards"] == [] and page((), {})["title"] == "Make and buy"


def test_each_vessel_has_a_card_to_say_how_many_and_to_take_it_off():
    sheet = page([("a", "12"), ("b", "6")], {"a": tumbler(), "b": keel()})
    first, second, last = sheet["cards"]
    assert [card["id"] for card in sheet["cards"]] == ["make-1", "make-2", "buy"]
    assert (first["title"], second["title"], last["title"]) == (tumbler()["name"], keel()["name"], "What to buy")
    assert [(field["path"], field["label"], field["value"]) for field in second["fields"]] == [("plan.1.count", "How many to make", "6")]
    assert second["actions"] == [{"label": "Take it off the plan", "remove": "plan.1"}]
    assert first["answer"][0]["shown"] == "12" and last["answer"][0]["label"] == "To pay"
    assert last["prints"] == [{"label": "Print the list", "ask": "shopping_pages", "place": "plan"}]
    assert last["saves"] == [{"label": "Pass the list on", "ask": "shopping_list", "place": "plan"}]


def test_a_whole_list_by_hand():
    """12 crates of 2 boxes: 24 of 30 on hand, 6 left. Of 6 tins in packs of 5 for 3 each: 2 packs, 6.00, 4 left."""
    record = boxed("2")
    record["packaging"].append({"name": "Tin", "each": "0.5", "pack_pieces": "5", "pack_price": "3"})
    card = buy([("a", "12")], {"a": record}, [BOX])
    assert rows(card) == {"Box": ["enough", "", "24 pieces", "30 pieces", "6 pieces"],
                          "Tin": ["2 × 5 pieces", "$6.00", "6 pieces", "not counted", "4 pieces"], "To pay": ["", "$6.00", "", "", ""]}
    assert card["answer"] == [{"label": "To pay", "shown": "$6.00", "key": "plan.0.to_pay"}]


def test_several_vessels_are_added_up_with_those_that_fail():
    """Casts and fills of the Keel bowl fail; what it is packed in does not."""
    card = buy([("a", "12"), ("b", "6"), ("b", "1")], {"a": tumbler(), "b": keel()}, [WAX])
    numbers = {figure["label"]: figure["working"]["numbers"] for figure in card["figures"]}
    assert re.fullmatch(r"12 × 208\.5\d* \+ 6 × 167\.1\d* ÷ 0\.97 \+ 1 × 167\.1\d* ÷ 0\.97 = .*", numbers["Soy wax: needed"])
    assert numbers["Rapid-setting cement: needed"].startswith("6 × 588 ÷ 0.8924 + 1 × 588 ÷ 0.8924 = ")
    assert numbers["Box: needed"] == "6 × 1 + 1 × 1 = 7 pieces"


def test_the_shelf_s_stock_and_packs_come_before_a_vessel_s_copy():
    """Soy wax in the Keel bowl is 5 kg for 41; the shelf has 1 kg for 10 besides, which is enough for 6 of it."""
    without, with_shelf = (rows(buy([("b", "6")], {"b": keel()}, materials))["Soy wax"] for materials in ((), [{**WAX, "stock_weight": "500 g"}]))
    assert (*without[:2], without[3]) == ("1 × 5 kg", "$41.00", "not counted")
    assert (*with_shelf[:2], with_shelf[3]) == ("1 × 1 kg", "$10.00", "500 g")


def test_a_thing_of_the_shelf_is_found_by_role_and_name():
    found = rows(buy([("b", "6")], {"b": keel()}, [{**WAX, "name": " soy WAX "}, {**BOX, "role": "wax"}], [WICK]))
    assert "soy WAX" in found and found["Box"][3] == "not counted" and found["Cotton, medium"][3] == "4 pieces"


def test_an_own_powder_is_found_by_its_kind_whatever_its_role_in_the_mix():
    record = put(keel(), "casts.0.mix.powder.kind", "mine: Gray bag mix")
    bag = {"name": "Gray bag mix", "role": "sand", "pack_weight": "20 kg", "pack_price": "18.50", "stock_weight": "1 kg"}
    found = rows(buy([("b", "6")], {"b": record}, [bag]))["Gray bag mix"]
    assert (*found[:2], found[3]) == ("1 × 20 kg", "$18.50", "1 kg")


def test_what_has_no_name_is_listed_for_each_vessel_and_said():
    first, second = vessel(name="Cup", wells__0__wicks__count="1"), vessel(name="Bowl", wells__0__wicks__count="2")
    card = buy([("a", "3"), ("b", "2")], {"a": first, "b": second})
    assert rows(card)["Wick (Cup)"][2] == "3 pieces" and rows(card)["Wick (Bowl)"][2] == "4 pieces"
    assert any(note.startswith("Without a name in the vessels, and so listed for each of them: Fragrance; Wick.") for note in card["notes"])


def test_one_name_in_two_roles_is_told_apart():
    record = boxed(name="Gold")
    record["wells"] = [{"wicks": {"name": "Gold", "count": "1"}}]
    card = buy([("a", "2")], {"a": record})
    assert {"Gold (packaging)", "Gold (wick)"} <= set(rows(card))
    assert "Gold is listed 2 times, as wick and as packaging: these are not added up." in card["notes"]


def test_copies_at_several_prices_take_the_highest_and_say_so():
    cheap, dear = boxed(pack_pieces="10", pack_price="4"), boxed(pack_pieces="10", pack_price="5")
    card = buy([("a", "10"), ("b", "5")], {"a": cheap, "b": dear})
    assert rows(card)["Box"][:2] == ["2 × 10 pieces", "$10.00"]
    assert "The vessels have Box at several prices for the same pack. The highest, $5.00, is taken." in card["notes"]
    assert not any("several prices" in note for note in buy([("a", "10"), ("b", "5")], {"a": cheap, "b": dear}, [BOX])["notes"])


def test_what_has_no_pack_or_price_is_told_bare_and_said():
    card = buy([("a", "4")], {"a": vessel(name="Cup", wells__0__wicks__count="1", wells__0__wicks__name="Cotton")})
    assert rows(card)["Cotton"] == ["4 pieces", "no price yet", "4 pieces", "not counted", ""]
    assert any(note.startswith("Type what a pack holds of: ") and "Cotton" in note for note in card["notes"])
    assert card["answer"] == [{"label": "to buy", "shown": "4 things", "key": "needs.0.need"}] and card["prints"]


def test_what_is_not_known_of_a_vessel_is_said_by_name():
    card = buy([("a", "4")], {"a": vessel(name="Cup", wells__0__dye="0.2 %", wells__0__wicks__name="Cotton")})
    assert "Not on the list, as it is not known yet how much of it one Cup takes: Cotton." in card["notes"]


def test_how_many_the_stock_makes_by_what_runs_out_first():
    """30 boxes, 2 for each: 15. 4 wicks, and 97 of 100 fills turn out: 3."""
    crate = page([("a", "1")], {"a": boxed("2")}, [BOX])["cards"][0]
    assert crate["answer"][-1]["shown"] == "15 vessels" and "Box runs out first: enough for 15 vessels" in crate["notes"][0]
    bowl = page([("b", "1")], {"b": keel()}, [BOX, WAX], [WICK])["cards"][0]
    assert bowl["answer"][-1]["shown"] == "3 vessels" and any("Cotton, medium runs out first" in note for note in bowl["notes"])
    exact = page([("a", "1")], {"a": boxed("0.3")}, [{**BOX, "stock_pieces": "3"}])["cards"][0]
    assert exact["answer"][-1]["shown"] == "10 vessels"


def test_more_are_begun_than_are_wanted_where_some_fail():
    """6 ÷ (0.92 × 0.97) = 6.72."""
    figures = {each["key"]: each for each in page([("b", "6")], {"b": keel()})["cards"][0]["figures"]}
    assert figures["plan.0.begin"]["shown"] == "7 casts" and figures["plan.0.begin"]["value"] == pytest.approx(6 / (0.92 * 0.97))
    assert "plan.0.begin" not in {each["key"] for each in page([("a", "6")], {"a": tumbler()})["cards"][0]["figures"]}


def test_a_vessel_that_is_gone_is_said_and_can_be_taken_off():
    card = page([("gone", "3")], {})["cards"][0]
    assert card["title"] == "Not in the book any more" and card["actions"] and not card["answer"]
    assert card["notes"] == ["The book has no such vessel any more. Take it off the plan."]


def test_a_wrong_number_is_told_beside_its_field_kept_and_not_counted():
    answer = ask("shopping", **asked([("a", "2"), ("a", "many")], {"a": boxed()}))
    assert answer["record"]["plan"][1]["count"] == "many" and answer["sheet"]["faults"][0]["path"] == "plan.1.count"
    assert answer["sheet"]["cards"][1]["fields"][0]["fault"] and not answer["sheet"]["cards"][1]["answer"]
    assert rows(answer["sheet"]["cards"][-1])["Box"][0] == "2 pieces"


def test_an_entry_that_is_marked_in_a_vessel_is_said():
    card = page([("a", "2")], {"a": boxed(pack_price="x")})["cards"][0]
    assert card["notes"][0].startswith("In this vessel an entry is marked.")


def test_none_of_a_vessel_takes_nothing():
    card = buy([("a", "0")], {"a": boxed()})
    assert card["table"] is None and card["waiting"] == "Say how many to make." and not card["prints"]


def test_when_all_is_on_hand_there_is_nothing_to_pass_on():
    given = ([("a", "2")], {"a": boxed()}, [BOX])
    card = buy(*given)
    assert card["waiting"] == "All of it is on hand." and not card["answer"] and not card["saves"]
    assert "is on hand: there is nothing to buy" in fault("shopping_list", **asked(*given))
    assert "nothing to buy yet" in fault("shopping_pages", **asked([], {}))


@pytest.mark.parametrize("how", [*DISPLAYS, {"currency": "JPY"}, {"currency": "€", "decimal": "comma"}], ids=str)
def test_every_figure_works_out_and_stands_on_those_above_it(how):
    sheet = page([("a", "12"), ("b", "7"), ("c", "3")], {"a": tumbler(), "b": keel(), "c": full_vessel()}, [WAX, BOX], [WICK], **how)
    known: list[str] = []
    for figure in (each for card in sheet["cards"] for each in card["figures"]):
        works_out(figure, how.get("decimal") == "comma")
        assert set(figure["working"]["uses"]) <= set(known) and figure["key"] not in known
        known.append(figure["key"])
    assert all(answer["key"] in known or answer["key"].endswith("count") for card in sheet["cards"] for answer in card["answer"])


def reached_from_the_large(card):
    uses = {figure["key"]: figure["working"]["uses"] for figure in card["figures"]}
    reached, ahead = set(), list(card["large"])
    while ahead:
        key = ahead.pop()
        reached.add(key)
        ahead += uses[key]
    return reached


def test_what_is_to_be_paid_stands_large_alone_and_leads_to_all_that_costs():
    card = buy([("a", "12"), ("b", "7")], {"a": tumbler(), "b": keel()}, [WAX, BOX], [WICK])
    keys = {figure["key"] for figure in card["figures"]}
    paid = {key.removesuffix(".costs") for key in keys if key.endswith(".costs")}
    assert card["large"] == ["plan.0.to_pay"] and len(paid) > 3
    assert reached_from_the_large(card) == {"plan.0.to_pay", *(key for key in keys if key.rpartition(".")[0] in paid and not key.endswith(".left"))}


def test_while_nothing_has_a_price_every_figure_can_be_reached_from_those_that_stand_large():
    card = buy([("a", "40"), ("b", "2")], {"a": boxed(), "b": boxed("3", "Tissue", pack_pieces="480")}, [{**BOX, "pack_price": "", "stock_pieces": "9"}])
    assert len(card["large"]) == 2 and reached_from_the_large(card) == {figure["key"] for figure in card["figures"]}


@pytest.mark.parametrize("how", [{}, {"currency": "JPY"}, {"currency": "€", "decimal": "comma"}], ids=str)
def test_the_costs_add_up_as_they_are_read(how):
    mark = "," if how.get("decimal") == "comma" else "."
    parts = [boxed(name=f"Box {row}", pack_pieces="10", pack_price=price.replace(".", mark))["packaging"][0]
             for row, price in enumerate(("0.3334", "1.6654", "2.0049"))]
    told = rows(buy([("a", "5")], {"a": {"name": "Crate", "packaging": parts}}, **how))
    steps = {name: int("".join(sign for sign in cells[1] if sign.isdigit())) for name, cells in told.items()}
    assert sum(step for name, step in steps.items() if name != "To pay") == steps["To pay"] > 0


def test_the_list_as_a_text():
    made = ask("shopping_list", **asked([("a", "40"), ("b", "1")], {"a": boxed(pack_price="4"), "b": boxed("3", "Tissue", pack_pieces="480")}, [BOX]))
    assert made == {"name": "to-buy.txt", "kind": "text/plain", "text": (
        "To buy for 40 × Crate; 1 × Crate\n\n- Box: 1 × 25 pieces, $24.00\n- Tissue: 1 × 480 pieces, no price yet\n\n"
        "To pay: $24.00\nWithout a price, and not in what is to be paid: Tissue.\n")}


def texts(svg):
    return [each.text for each in ET.fromstring(svg).iter("{http://www.w3.org/2000/svg}text")]


@pytest.mark.parametrize(("how", "size"), [({}, ("210mm", "297mm")), ({"length": "in"}, ("215.9mm", "279.4mm"))])
def test_the_list_on_paper_has_a_box_for_each_thing(how, size):
    given = asked([("a", "12"), ("b", "6")], {"a": tumbler(), "b": keel()}, [WAX], **how)
    made = ask("shopping_pages", **given)
    assert (made["width"], made["height"], len(made["pages"])) == (*size, 1)
    count = sum(row["cells"][1] not in ("enough", "") for row in ask("shopping", **given)["sheet"]["cards"][-1]["table"]["rows"])
    assert made["pages"][0].count("<polygon") == count
    assert "To buy" in texts(made["pages"][0]) and any(line.startswith("To pay: ") for line in texts(made["pages"][0]))


def test_a_long_list_takes_several_pages_and_too_long_a_one_is_refused():
    crate = {"name": "Crate", "packaging": [{"name": f"Part {row}", "each": "1"} for row in range(40)]}
    many = {str(number): {"name": f"Crate {number}", "packaging": [{**each, "name": f"{each['name']} of {number}"} for each in crate["packaging"]]}
            for number in range(12)}
    made = ask("shopping_pages", **asked([(str(number), "1") for number in range(3)], many))
    assert len(made["pages"]) > 2 and sum(each.count("<polygon") for each in made["pages"]) == 120
    assert [texts(each)[-1] for each in made["pages"]] == [f"{number} of {len(made['pages'])}" for number in range(1, len(made["pages"]) + 1)]
    assert "more than 12 pages" in fault("shopping_pages", **asked([(id, "1") for id in many], many))


def test_beyond_sixty_vessels_the_rest_is_kept_and_said():
    answer = ask("shopping", **asked([("a", "1")] * 61, {"a": boxed()}))
    assert len(answer["record"]["plan"]) == 61 and len(answer["sheet"]["cards"]) == 61
    assert rows(answer["sheet"]["cards"][-1])["Box"][0] == "60 pieces"
    assert "60 vessels of the plan are worked out here. All are kept." in answer["sheet"]["cards"][-1]["notes"]


def test_sixty_vessels_are_told_while_one_types():
    """The first time each is worked out; the next digit only counts anew."""
    vessels = {str(number): {**keel(), "name": f"Bowl {number}"} for number in range(60)}
    given = asked([(id, "3") for id in vessels], vessels, [WAX, BOX], [WICK])
    ask("shopping", **given)
    start = time.perf_counter()
    ask("shopping", **given)
    assert time.perf_counter() - start < 0.5


def test_a_text_of_the_maker_can_be_no_drawing():
    made = ask("shopping_pages", **asked([("a", "3")], {"a": boxed(name="<script>&</script>\nBox")}))
    assert "<script" not in made["pages"][0] and ET.fromstring(made["pages"][0]) is not None


@given(ANYTHING, ANYTHING, ANYTHING, bent_vessels(), st.sampled_from([{}, {"decimal": "comma", "mass": "lb"}]))
def test_any_plan_any_vessels_and_any_shelf_are_answered(plan, vessels, shelf, bent, how):
    for record in (plan, {"plan": plan}, {"plan": [{"id": "a", "count": "3"}, {"id": "b", "count": plan}, plan]}):
        for book in (vessels, {"a": bent, "b": full_vessel()}):
            request = {"record": record, "vessels": book, "materials": shelf, "wicks": shelf, "settings": how}
            ask("shopping", **request)
            for name in ("shopping_list", "shopping_pages"):
                assert not json.loads(door.ask(name, json.dumps(request))).get("fault", {}).get("detail")
