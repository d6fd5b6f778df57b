"""The net weight of a label: from the fill, from weighed candles, or as typed; never more than is in it."""

import pytest
from arithmetic import works_out
from hypothesis import given, settings
from hypothesis import strategies as st
from label_answers import answer, fault, told, weighed
from vessels import DISPLAYS, good_vessels, vessel

from brimbook.record import blank


def test_the_fill_at_its_low_end_rounded_down():
    """246.04 g wax and 14.76 g fragrance are 260.80 g, less 0.27 %: 260.09 g."""
    found = answer()
    assert told(found, "sure").value == pytest.approx(260.09, abs=0.01)
    assert told(found, "net").value == 260 and told(found, "net").shown == "9.17 oz (260 g)"
    assert told(found, "ounces").value == 9.17 and told(found, "sure").uses == ("wells.0.wax", "wells.0.fragrance")


@pytest.mark.parametrize(("market", "shown"), [("us", "9.17 oz (260 g)"), ("both", "9.17 oz (260 g)"), ("eu", "260 g")])
def test_each_market_has_its_systems(market, shown):
    found = answer(market=market)
    assert told(found, "net").shown == shown and ("labels.0.ounces" in found.figures) == (market != "eu")


@pytest.mark.parametrize(("typed", "us", "eu"), [
    ("8 oz", "8 oz (226 g)", "226 g"), ("1 lb", "1 lb (453 g)", "453 g"), ("1 lb 5 oz", "1 lb 5 oz (595 g)", "595 g"),
    ("2.5 kg", "5 lb 8.1 oz (2.5 kg)", "2.5 kg"), ("87.9 g", "3.1 oz (87 g)", "87 g"), ("9.78 g", "0.34 oz (9.7 g)", "9.7 g"),
    ("1239 g", "2 lb 11.7 oz (1.23 kg)", "1.23 kg"), ("0.4 g", "0.01 oz (0.4 g)", "0.4 g"), ("0.001 g", None, "0.001 g")])
def test_how_a_weight_is_written(typed, us, eu):
    """Nothing is known of the fill, so that what is typed is taken."""
    for market, shown in (("us", us), ("eu", eu)):
        found = answer(blank.blank(), net_weight=typed, market=market)
        assert shown is None or told(found, "net").shown == shown


@pytest.mark.parametrize(("market", "shown", "printed"), [
    ("us", "0,34 oz (9,7 g)", "Net Wt 0.34 oz (9.7 g)"), ("both", "0,34 oz (9,7 g)", "Net Wt 0.34 oz (9.7 g)"), ("eu", "9,7 g", "9,7 g")])
def test_beside_ounces_a_point_is_printed_and_the_maker_s_own_mark_shown(market, shown, printed):
    found = answer(blank.blank(), {"decimal": "comma"}, net_weight="9,78 g", market=market)
    assert found.figures["labels.0.net"].shown == shown
    assert [words.text for words in found.labels["labels.0"].label.words if words.name == "net"] == [printed]


def test_more_than_is_surely_in_it_is_a_fault_that_says_what_would_do():
    found = answer(net_weight="262 g")
    assert "9.17 oz (260 g)" in fault(found, "net_weight") and found.labels["labels.0"].label is None
    assert not fault(answer(net_weight="260 g"), "net_weight")
    assert told(answer(net_weight="8 oz"), "net").shown == "8 oz (226 g)"


def test_what_nothing_checks_is_said():
    typed = answer(blank.blank(), net_weight="200 g").labels["labels.0"]
    assert any("Nothing here checks" in note for note in typed.notes)
    assert not any("Nothing here checks" in note for note in answer(net_weight="200 g").labels["labels.0"].notes)


def test_of_weighed_candles_the_lightest_is_printed_and_the_average_may_be():
    rows = weighed("172.4 g", "174.0 g", "173.1 g")
    found = answer(weighed=rows, market="eu")
    assert told(found, "mean").value == pytest.approx(173.1667, abs=1e-4) and told(found, "net").value == 172
    assert told(answer(weighed=rows, net_weight="173 g", market="eu"), "net").value == 173
    assert "173 g" in fault(answer(weighed=rows, net_weight="174 g", market="eu"), "net_weight")


def test_a_faulty_weighing_is_waited_for():
    found = answer(weighed=weighed("172 g", "heavy")).labels["labels.0"]
    assert found.label is None and found.waiting == "Mend the entry that is marked."


def test_an_empty_row_is_no_weighing():
    assert told(answer(weighed=weighed("172 g", "")), "net").value == 172


def test_several_wells_add_up_and_every_one_of_them_counts():
    record = vessel()
    record["wells"].append({**record["wells"][0]})
    assert told(answer(record), "net").value == 520
    record["wells"].append({"pot": "first"})
    found = answer(record).labels["labels.0"]
    assert found.label is None and "every well" in found.waiting
    assert told(answer(record, net_weight="500 g"), "net").value == 500


def test_a_faulty_fill_is_waited_for():
    found = answer(vessel(wells__0__fill__readings__0__water="x")).labels["labels.0"]
    assert found.label is None and found.waiting == "Mend the entry that is marked."


def test_a_vessel_without_wax_has_no_net_weight():
    found = answer(blank.blank()).labels["labels.0"]
    assert found.figures == () and found.label is not None and not found.candle
    assert {words.name for words in found.label.words} == {"product"} and found.label.alert == 0
    assert found.label.words[0].text == "Cast vessel" and "food" in found.notes[0]


@given(good_vessels(), st.sampled_from(["us", "eu", "both"]))
@settings(max_examples=60)
def test_a_label_never_promises_more_than_the_low_end_of_the_fill(record, market):
    found = answer(record, market=market)
    if "labels.0.net" in found.figures:
        low = sum(filled.total * (1 - filled.relative) for filled in found.fills.values())
        assert 0 < found.figures["labels.0.net"].value <= low * (1 + 1e-5)
        if market != "eu":
            assert found.figures["labels.0.ounces"].value * 28.349523125 <= low * (1 + 2e-5)


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("market", ["us", "eu", "both"])
def test_the_numbers_work_out_however_the_maker_reads_them(how, market):
    found = answer(vessel(), how, market=market, weighed=weighed("253.4 g", "261.25 g"), panel="cylinder", panel_around="251.5 mm")
    figures = [figure for key, figure in found.figures.items() if key.startswith("labels.0.")]
    assert len(figures) >= 5
    for figure in figures:
        works_out(figure.to_plain(), how.get("decimal") == "comma")
