"""The door: JSON in, JSON out, whatever comes in."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import ANYTHING, DISPLAYS, ask, bent_vessels, fields, full_vessel, not_sold, put, vessel

from brimbook import door
from brimbook.record import blank, tree
from brimbook.record.fields import is_large, is_private

NAMES = sorted(door.ASKS)
LOOSE_JSON = st.recursive(st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=20),
                          lambda inner: st.lists(inner, max_size=4) | st.dictionaries(
                              st.sampled_from(["record", "settings", "fragment", "address",
                                               "casts"]) | st.text(max_size=6), inner, max_size=4),
                          max_leaves=12)


def reply(name, request):
    """A whole reply, which is always JSON and holds either an answer or a fault with a sentence."""
    text = door.ask(name, request)
    text.encode("utf-8")
    got = json.loads(text, parse_constant=lambda constant: pytest.fail(f"{constant} is not JSON"))
    assert set(got) in ({"answer"}, {"fault"})
    if "fault" in got:
        assert set(got["fault"]) == {"sentence", "detail"} and got["fault"]["sentence"].endswith(".")
    return got


@given(st.sampled_from([*NAMES, "nothing", ""]), LOOSE_JSON)
def test_any_json_is_answered(name, request_data):
    reply(name, json.dumps(request_data))


@given(st.sampled_from(NAMES), st.text(max_size=40))
def test_any_text_is_answered(name, text):
    reply(name, text)


@given(ANYTHING, ANYTHING)
def test_any_record_and_settings_are_worked_out_without_a_failure_of_ours(record, settings):
    assert "answer" in reply("work_out", json.dumps({"record": record, "settings": settings}))


@given(bent_vessels())
def test_any_bent_vessel_can_be_shared_and_opened_or_is_told(record):
    got = reply("share", json.dumps({"record": record, "address": "https://example.org/"}))
    if "fault" in got:
        assert got["fault"]["detail"] == ""
        return
    opened = reply("open_link", json.dumps({"fragment": got["answer"]["link"].partition("#")[2]}))
    assert "answer" in opened, opened


@pytest.mark.parametrize("request_text", ["", "{", "null", "5", '"x"', "[]", "[" * 5000, '{"record": ' + "[" * 5000,
                                          "NaN", '{"record": NaN}',
                                          '{"record": {"x": 1e999}}', '{"record": {"name": "\\ud83d"}}', "9" * 5000,
                                          "\x00", "{}"])
@pytest.mark.parametrize("name", NAMES)
def test_odd_requests_are_answered(name, request_text):
    reply(name, request_text)


@pytest.mark.parametrize("name", [None, 5, [], {}, "work_out "], ids=repr)
def test_an_unknown_name_is_answered(name):
    assert "fault" in reply(name, "{}")


def test_a_failure_of_ours_keeps_its_detail_for_a_report():
    fault = reply("work_out", "{")["fault"]
    assert "Something went wrong" in fault["sentence"] and "JSONDecodeError" in fault["detail"]


@pytest.mark.parametrize("settings", [{}, *DISPLAYS], ids=str)
def test_first_holds_all_that_the_first_page_needs(settings):
    answer = ask("first", settings=settings)
    assert set(answer) == {"blank", "sheet", "demos", "settings", "settings_form", "shelf"}
    assert answer["blank"]["id"] == "" and answer["sheet"]["faults"] == []
    assert len(answer["demos"]) == 4 and all(demo["line"] and demo["record"]["id"] for demo in answer["demos"])
    assert answer["sheet"]["cards"][0]["fields"][0]["path"] == "casts.0.cavity.readings.0.water"
    assert set(answer["settings"]) == {"mass", "length", "temperature", "decimal", "paper", "readability", "currency"}


def test_first_needs_nothing():
    assert ask("first") == ask("first", settings={}) == ask("first", settings=None)


def test_texts_that_were_understood_come_back_in_their_kept_form():
    record = put(vessel(), "casts.0.cavity.readings.0.water", " 640 ")
    put(record, "casts.0.pieces", "two")
    answer = ask("work_out", record=record, settings={})
    assert answer["record"]["casts"][0]["cavity"]["readings"][0]["water"] == "640 g"
    assert answer["record"]["casts"][0]["pieces"] == "two"
    assert fields(answer["sheet"])["casts.0.pieces"]["fault"]


def test_a_second_time_changes_nothing():
    for settings in DISPLAYS:
        once = ask("work_out", record=put(vessel(), "casts.0.scooped", "1lb 4½oz"), settings=settings)
        assert ask("work_out", record=once["record"], settings=settings) == once


def test_a_link_means_the_same_to_a_maker_with_other_settings():
    """Typed with a comma and in ounces; opened by one who weighs in grams and writes points."""
    record = put(put(vessel(), "casts.0.cavity.readings.0.water", "22,5"), "casts.0.cavity.temperature", "68")
    ours, theirs = {"mass": "oz", "temperature": "F", "decimal": "comma"}, {"decimal": "point"}
    link = ask("share", record=record, settings=ours, address="https://example.org/#/vessel/7")["link"]
    opened = ask("open_link", fragment=link.partition("#")[2], settings=theirs)
    assert opened["record"]["casts"][0]["cavity"]["readings"][0]["water"] == "22.5 oz"
    assert opened["record"]["casts"][0]["cavity"]["temperature"] == "68 °F"
    sent = ask("work_out", record=record, settings=ours)["sheet"]
    values = [{figure["key"]: figure["value"] for card in page["cards"] for figure in card["figures"]
               if figure["key"].split(".")[-1] not in ("bowl", "pot")} for page in (sent, opened["sheet"])]
    assert values[0] == values[1]


def test_a_shared_link_has_its_address_and_its_code():
    answer = ask("share", record=vessel(name="Tide cup"), settings={}, address="https://example.org/a/#/vessel/7")
    assert answer["link"].startswith("https://example.org/a/#1.") and answer["link"].count("#") == 1
    assert answer["qr"].startswith("<svg") and "Tide cup" in answer["qr_label"]


def test_a_full_vessel_fits_a_code():
    answer = ask("share", record=not_sold(), settings={}, address="https://example.org/bench/brimbook/")
    assert len(answer["link"]) < 2200 and answer["qr"]
    assert ask("share", record=full_vessel(), settings={}, address="https://example.org/bench/brimbook/")["qr"]


def test_batches_that_a_link_has_no_room_for_are_told():
    batch = {"made_on": "2026-09-26", "vessels": "24"}
    many = [{**batch, "used": [{"name": f"{row * 7919 % 10_007} wax", "lot": str(row * row * 31)}]} for row in range(900)]
    answers = [ask("share", record=vessel(batches=batches), settings={}, address="https://example.org/") for batches in ([batch], many)]
    assert answers[0]["note"] == ""
    sent = len(ask("open_link", fragment=answers[1]["link"].partition("#")[2])["record"]["batches"])
    assert answers[1]["note"].startswith(f"A link has no room for all 900 batches: the newest {sent} go along.") and 0 < sent < 900


def test_a_link_carries_what_is_private_only_when_asked():
    record, address = full_vessel(), "https://example.org/"
    kept = {path for path, part in tree.parts(record) if is_private(path) and not is_large(path) and isinstance(part, str)}
    assert {"own_notes", "selling.0.hour_rate", "wells.0.wax.pack_price", "batches.0.went_to.0.who"} <= kept
    for asked, there in ((None, set()), (False, set()), ("yes", set()), (True, kept)):
        link = ask("share", record=record, settings={}, address=address, private=asked)["link"]
        opened = ask("open_link", fragment=link.partition("#")[2])["record"]
        assert {path for path, part in tree.parts(opened) if is_private(path) and isinstance(part, str)} == there


def test_what_nobody_named_among_what_is_private_stays_here_too():
    """Leaves of a newer version that lie among the buyers, or in the place of a price."""
    record = vessel(batches=[{"lot": "7", "remarks": {"of": "secret"}, "went_to": [{"who": "secret", "telephone": "secret"}, "secret"]}])
    put(record, "wells.0.wax.pack_price", ["secret", {"paid": "secret"}])
    put(record, "own_notes", {"more": "secret"})
    links = [ask("share", record=record, address="", private=private)["link"] for private in (False, True)]
    opened = [json.dumps(ask("open_link", fragment=link[1:])["record"]) for link in links]
    assert "secret" not in opened[0] and '"lot": "7"' in opened[0] and opened[1].count("secret") == 7
    assert "went_to" not in opened[0]


def test_a_link_with_what_is_private_leaves_out_what_no_link_has_room_for():
    record = put(put(vessel(), "casts.0.cavity.file", {"name": "cup.stl", "sections": "x7" * 3000}), "own_notes", "Mine")
    opened = ask("open_link", fragment=ask("share", record=record, address="", private=True)["link"][1:])["record"]
    assert opened["casts"][0]["cavity"]["file"] == {"name": "cup.stl"} and opened["own_notes"] == "Mine"


def test_a_vessel_too_large_for_a_code_still_has_its_link():
    notes = "".join(chr(0x4e00 + n * 37 % 20_000) for n in range(1500))
    answer = ask("share", record=vessel(notes=notes), settings={}, address="https://example.org/")
    assert answer["qr"] == "" and answer["qr_label"].endswith(".") and len(answer["link"]) > 3000


def test_what_can_t_be_understood_is_shared_as_it_was_typed():
    link = ask("share", record=vessel(casts__0__pieces="two"), settings={}, address="")["link"]
    assert ask("open_link", fragment=link[1:])["record"]["casts"][0]["pieces"] == "two"


@pytest.mark.parametrize("record", [None, 5, "x", [], [[]]], ids=repr)
def test_what_is_no_vessel_is_not_shared_as_an_empty_one(record):
    fault = reply("share", json.dumps({"record": record, "address": "https://example.org/"}))
    assert "fault" in fault and fault["fault"]["detail"] == ""


@pytest.mark.parametrize("fragment", ["", "/vessel/7", "1.", "1.damaged", "2.abc", None, 5])
def test_a_damaged_link_is_one_sentence(fragment):
    fault = reply("open_link", json.dumps({"fragment": fragment}))["fault"]
    assert fault["detail"] == "" and fault["sentence"].endswith(".")


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_the_same_is_said_to_every_maker(settings):
    """No figure, fault or note goes missing under other settings."""
    page, usual = (ask("work_out", record=full_vessel(), settings=each)["sheet"] for each in (settings, {}))
    for card, other in zip(page["cards"], usual["cards"], strict=True):
        assert [figure["key"] for figure in card["figures"]] == [figure["key"] for figure in other["figures"]]


@pytest.mark.parametrize("settings", [{"decimal": "comma"},
                                      {"decimal": "comma", "mass": "lb", "length": "in", "temperature": "F"}], ids=str)
def test_with_a_comma_no_figure_keeps_a_decimal_point(settings):
    import re

    for demo in blank.demos():
        for card in ask("work_out", record=demo, settings=settings)["sheet"]["cards"]:
            for figure in card["figures"]:
                told = [figure["shown"], figure["says"], figure["plus_minus"], figure["working"]["numbers"],
                        figure["working"]["spread"],
                        *(constant["shown"] for constant in figure["working"]["constants"])]
                assert not [text for text in told if re.search(r"\d\.\d", text)]


@pytest.mark.parametrize("price", ["18.50", 18.5, ["18.50"], {"a": "18.50"}, [{"a": ["18.50"]}]], ids=repr)
def test_no_price_is_shared_however_a_record_is_bent(price):
    record = vessel()
    record["casts"][0]["mix"]["powder"]["pack_price"] = price
    link = ask("share", record=record, settings={}, address="https://example.org/")["link"]
    assert "18.5" not in json.dumps(ask("open_link", fragment=link.partition("#")[2], settings={})["record"])
