"""The card of the holder: what it shows of the bars, and what can be taken away from it."""

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given as by_chance
from vessels import DISPLAYS, bent_vessels, sheet, vessel
from wick_plans import circle, given, plan, scattered


def card(**texts):
    how = texts.pop("how", {})
    page = sheet(vessel(**{f"wells__0__holder__{name}": text for name, text in texts.items()}), **how)
    return next(each for each in page["cards"] if each["id"] == "holder")


def asks(shown):
    return [each["ask"] for each in (*shown["saves"], *shown["prints"])]


def test_it_waits_for_the_wicks(monkeypatch):
    given(monkeypatch, None)
    shown = card()
    assert shown["waiting"] == "Once the wicks have their places." and shown["answer"] == []
    assert asks(shown) == [] and shown["table"] is None and shown["drawing"] == ""
    assert [field["path"].rpartition(".")[2] for field in shown["fields"]] == ["bar_width", "slot_width"]


def test_one_bar_is_told_by_its_length(monkeypatch):
    given(monkeypatch, plan(circle(68), (0.0, 0.0)))
    shown = card()
    assert [(each["label"], each["shown"]) for each in shown["answer"]] == [("Bar", "98 mm")]
    assert [row["cells"] for row in shown["table"]["rows"]] == [["98 mm", "49 mm", "10 mm"]]
    assert asks(shown) == ["template", "holder_sheet", "holder_model", "template_pages", "holder_pages"]
    assert shown["drawing_text"].endswith("Bar: 98 mm long, slot at 49 mm from the left end.")


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("count", [1, 2, 3, 5, 8])
def test_a_row_for_each_slot_and_a_closed_card_of_one_line(monkeypatch, count, how):
    outline, wicks = scattered(7, count)
    given(monkeypatch, plan(outline, *wicks))
    shown = card(how=how)
    assert len(shown["table"]["rows"]) == count
    assert all(len(row["cells"]) == len(shown["table"]["columns"]) and row["sets"] == {} for row in shown["table"]["rows"])
    assert len("".join(f"{each['shown']} {each['label']} " for each in shown["answer"])) <= 34
    ET.fromstring(shown["drawing"])


def test_several_bars_are_numbered(monkeypatch):
    given(monkeypatch, plan(circle(100), (0.0, -25.0), (0.0, 25.0)))
    # The opening is widest at a bar's inner edge, 16 mm from the middle: 2 × √(50² − 16²) + 30.
    assert [row["cells"][0] for row in card(direction="across")["table"]["rows"]] == ["1: 124.7 mm", "2: 124.7 mm"]


def test_turned_bars_say_so_beside_the_table(monkeypatch):
    given(monkeypatch, plan(circle(100), (-20.0, -20.0), (20.0, 20.0)))
    assert card()["table"]["says"].endswith("The bars lie turned by 45° counterclockwise, seen from above.")


def test_a_faulty_bar_leaves_the_template(monkeypatch):
    given(monkeypatch, plan(circle(68), (0.0, 0.0)))
    shown = card(bar_width="wide")
    assert shown["waiting"] == "Mend the entry that is marked." and asks(shown) == ["template", "template_pages"]


def test_taped_wicks_and_bars_in_the_heat_are_spoken_of(monkeypatch):
    given(monkeypatch, plan(circle(68), (0.0, 0.0)))
    shown = card()
    assert any("drifts" in note and "common practice, no source" in note for note in shown["notes"])
    assert [caution["title"] for caution in shown["cautions"]] == ["Take the bars off before it is lit"]


@by_chance(bent_vessels())
def test_any_record_has_a_whole_card(record):
    for shown in sheet(record)["cards"]:
        if shown["id"].startswith("holder"):
            assert shown["answer"] or shown["waiting"].endswith(".")
