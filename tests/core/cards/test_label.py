"""The card of a label: what it asks, what it shows, and that it can be printed."""

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given, settings
from vessels import DISPLAYS, bent_vessels, full_vessel, put, vessel

from brimbook.cards.label import face_of, label_card
from brimbook.record import blank
from brimbook.record.fields import leaf_at
from brimbook.settings import display_of, whole
from brimbook.work_out import work_out


def cards(record, **how):
    answer = work_out(record, display_of(whole(how)))
    return [label_card(answer, place) for place in answer.labels]


def one(record=None, how=None, **texts):
    record = vessel() if record is None else record
    for name, text in texts.items():
        put(record, f"labels.0.{name.replace('__', '.')}", text)
    return cards(record, **(how or {}))[0]


def asked(card):
    return [field["path"].removeprefix("labels.0.") for part in (card, *card["groups"]) for field in (*part["fields"], *part["more"])]


def test_a_candle_s_label():
    card = one(maker="Quay Works, Saltmere")
    assert card["answer"] == [{"label": "Net weight", "shown": "9.17 oz (260 g)", "key": "labels.0.net"}]
    assert card["large"] == ["labels.0.net", "labels.0.letters"] and card["question"].endswith("?")
    assert card["prints"] == [{"label": "Print the labels", "ask": "label_pages", "place": "labels.0"}]
    ET.fromstring(card["drawing"])
    assert "Quay Works" in card["drawing"] and "Net Wt 9.17 oz (260 g)" in card["drawing_text"]
    assert card["cautions"]


def test_a_european_one_tells_the_height_of_figures():
    assert one(market="eu")["large"] == ["labels.0.net", "labels.0.height"]


def test_a_plain_vessel_s_label_asks_nothing_of_candles():
    card = one(blank.blank())
    assert card["answer"] == [] and "no wax" in card["waiting"] and card["cautions"] == [] and card["prints"]
    assert {"net_weight", "cautions", "burn_time", "panel", "scents"}.isdisjoint(asked(card))
    assert "Cast vessel" in card["drawing"]


@pytest.mark.parametrize(("shape", "sizes"), [("round", {"across"}), ("rectangle", {"width", "height", "corner"}),
                                              ("strip", {"width", "height", "corner"})])
def test_each_shape_asks_its_own_sizes(shape, sizes):
    assert {"across", "width", "height", "corner"} & set(asked(one(shape=shape))) == sizes


@pytest.mark.parametrize(("panel", "sizes"), [
    ("flat", {"panel_width", "panel_height"}), ("cylinder", {"panel_around", "panel_height"}), ("other", {"panel_area"}),
    ("top", {"panel_width", "panel_height", "panel_area"})])
def test_each_panel_asks_its_own_sizes(panel, sizes):
    assert {name for name in asked(one(panel=panel)) if name.startswith("panel_")} == sizes


def test_the_sign_is_asked_for_where_it_means_something():
    assert "average" not in asked(one(market="us")) and "average" in asked(one(market="eu")) and "average" in asked(one())


def test_every_leaf_of_a_label_is_asked_somewhere():
    from brimbook.record.leaves.label import LABEL

    seen = set()
    for shape in ("round", "rectangle"):
        for panel in ("flat", "cylinder", "other"):
            seen |= set(asked(one(shape=shape, panel=panel, lines=[{"text": "x"}], weighed=[{"weight": "250 g"}])))
    assert seen == {name.replace("*", "0") for name in LABEL}


def test_lines_and_weighings_come_and_go():
    card = one(lines=[{"text": "a"}, {"text": "b"}], weighed=[{"weight": "250 g"}])
    actions = [action for part in card["groups"] for action in part["actions"]]
    assert [action["label"] for action in actions] == ["Add a line", "Remove line 1", "Remove line 2", "Weigh a candle", "Remove candle 1"]
    for action in actions:
        if "append" in action:
            (name,) = action["value"]
            assert leaf_at(f"{action['append']}.0.{name}") is not None


def test_another_label_takes_over_who_made_it():
    assert one()["actions"] == []
    card = one(maker="Quay Works", market="us", lot="7")
    assert card["actions"] == [{"label": "Add another label", "append": "labels",
                                "value": {"shape": "rectangle", "maker": "Quay Works", "market": "us"}}]
    first, second = cards({**vessel(), "labels": [{"lot": "1"}, {"lot": "2"}]})
    assert [action["label"] for action in first["actions"]] == ["Remove this label"]
    assert [action["label"] for action in second["actions"]] == ["Add another label", "Remove this label"]
    assert (second["id"], second["title"]) == ("label-2", "Label 2")


def test_a_label_that_is_too_small_says_how_large_it_must_be_and_is_not_printed():
    card = one(width="20 mm", height="20 mm", panel_width="200 mm", panel_height="200 mm")
    assert card["prints"] == [] and "too small" in card["notes"][0] and "mm" in card["notes"][1]
    assert "as large as it would have to be" in card["drawing_text"]
    inches = one(how={"length": "in"}, width="20 mm", height="20 mm", panel_width="200 mm", panel_height="200 mm")
    assert " in" in inches["notes"][1]


def test_a_label_is_set_once_and_remembered():
    display = display_of(whole({}))
    (first, again) = (work_out(vessel(), display).labels["labels.0"].label for _ in range(2))
    assert face_of(first, display) is face_of(again, display)


def test_what_stands_in_is_told():
    card = one(put(vessel(), "wells.0.fragrance.name", "Cedar"), lot="")
    notes = {field["path"]: field["note"] for part in (card, *card["groups"]) for field in part["fields"]}
    assert "Scented candle" in notes["labels.0.product"] and "Cedar" in notes["labels.0.scents"]


def test_a_fault_stands_beside_its_field():
    card = one(net_weight="900 g")
    faults = {field["path"]: field["fault"] for part in card["groups"] for field in part["fields"] if field["fault"]}
    assert list(faults) == ["labels.0.net_weight"] and card["drawing"] == "" and card["waiting"].startswith("Mend")


def test_labels_beyond_the_limit_are_kept_and_can_be_removed():
    last = cards({**vessel(), "labels": [{} for _ in range(15)]})[-1]
    assert last["waiting"].endswith("All are kept.") and last["actions"] == [{"label": "Remove this label", "remove": "labels.14"}]


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_card_is_whole_however_the_maker_reads_it(how):
    for record in (vessel(), full_vessel(), *blank.demos()):
        for card in cards(record, **how):
            assert (card["answer"] or card["waiting"].endswith(".")) and all(note[-1] in ".?" for note in card["notes"])


@given(bent_vessels())
@settings(max_examples=60)
def test_a_bent_record_is_no_crash(record):
    for card in cards(record):
        assert card["answer"] or card["waiting"].endswith(".")
        assert bool(card["drawing"]) == bool(card["drawing_text"])
