"""The card of the burn test: one tap lights it, the newest cycle stands open, the rates and pools are drawn."""

import xml.etree.ElementTree as ET

import pytest
from burns import AT, LOG, plan
from vessels import DISPLAYS, notes, sheet, vessel

from brimbook.cards.burn_chart import drawn, in_words
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps import cautions
from brimbook.steps.burn_log import MOST_CYCLES
from brimbook.steps.burning import burning

BURNING = {"lit_at": "2026-11-03T09:00"}


def page(cycles=LOG, how=None, **texts):
    usual = {"rest": "weight", "rest_weight": "40 g"}
    return sheet(vessel(wells__0__burning={"cycles": list(cycles), **usual, **texts}), **(how or {}))


def card(*cycles, **texts):
    return next(each for each in page(*cycles, **texts)["cards"] if each["id"] == "burning")


def asked(part):
    return [field["path"].removeprefix(f"{AT}.") for field in part]


def test_before_the_first_burn_it_says_what_to_do():
    shown = card([])
    assert shown["answer"] == shown["groups"] == shown["timers"] == shown["notes"] == shown["fields"] == []
    assert shown["waiting"] == "Weigh it, then light it." and shown["drawing"] == ""


def test_one_tap_lights_it_and_the_page_adds_the_moment():
    light, older = card([])["actions"]
    assert light == {"label": "Light it", "append": f"{AT}.cycles", "value": {"lit_at": ""}, "now": ["lit_at"]}
    assert older["append"] == f"{AT}.cycles" and "now" not in older


def test_while_it_burns_its_timers_run_and_it_can_t_be_lit_again():
    shown = card([*LOG, BURNING])
    assert [(each["label"], each["due"][11:]) for each in shown["timers"]] == [
        ("Look: flame, pool, soot", "10:00"), ("Look: flame, pool, soot", "11:00"), ("Look: flame, pool, soot", "12:00"),
        ("Put it out", "13:00")]
    assert [each["label"] for each in shown["actions"]] == ["Log an older burn"]
    assert [group["open"] for group in shown["groups"]] == [True, False, False, False]
    assert shown["groups"][0]["summary"] == "Lit Tue, Nov 3, 09:00"
    assert card([BURNING])["waiting"] == "It burns: weigh it when it is out."


def test_the_newest_cycle_comes_first_and_closes_once_it_is_weighed():
    shown = card()
    assert [(group["title"], group["open"]) for group in shown["groups"]] == [("Cycle 3", False), ("Cycle 2", False), ("Cycle 1", False)]
    assert shown["groups"][-1]["summary"] == "14 g in 4 h · 3.5 g/h"
    assert asked(shown["groups"][0]["fields"]) == [f"cycles.2.{name}" for name in ("before", "lit_at", "out_at", "after")]
    assert shown["groups"][0]["actions"] == [{"label": "Remove this cycle", "remove": f"{AT}.cycles.2"}]


def test_the_last_weight_after_is_told_as_the_next_before():
    fields = {field["path"]: field for group in card([LOG[0], {}, LOG[1]])["groups"] for field in group["fields"]}
    assert fields[f"{AT}.cycles.2.before"]["note"] == "Empty, so 556 g is taken."
    assert fields[f"{AT}.cycles.1.before"]["note"] == "Empty, so 556 g is taken." and fields[f"{AT}.cycles.0.before"]["note"] == ""


def test_the_closed_card_tells_rate_and_hours_in_one_line():
    answers = card()["answer"]
    assert [(each["label"], each["shown"]) for each in answers] == [("Rate", "3.7 g/h"), ("Burn time", "60 h")]
    assert sum(len(each["label"]) + len(each["shown"]) for each in answers) <= 34
    assert len(card(how={"mass": "oz"})["answer"]) == 2


def test_what_stays_is_asked_as_it_is_chosen():
    assert "rest_weight" in asked(card()["more"]) and "rest_height" not in asked(card()["more"])
    assert "rest_height" in asked(card(rest="height")["more"])


def test_it_says_what_is_missing_for_the_hours():
    assert any("Wicks card" in note for note in card(rest_weight="")["notes"])
    assert not any("Wicks card" in note for note in card()["notes"])
    assert not any("Wicks card" in note for note in card(rest_weight="heavy")["notes"])


def test_a_marked_entry_is_to_be_mended():
    shown = card([{**LOG[0], "after": "900 g"}])
    assert shown["waiting"] == "Mend the entry that is marked." and shown["answer"] == []
    assert "must weigh less" in shown["groups"][0]["fields"][-1]["fault"] and shown["groups"][0]["open"]


def test_a_cycle_without_hours_or_weights_says_so():
    assert card([{"before": "570 g", "after": "560 g"}])["groups"][0]["summary"] == "For how long?"
    assert card([{"minutes": "4 h"}])["groups"][0]["summary"] == "Not weighed yet."
    assert card([{}])["groups"][0]["summary"] == "Nothing typed yet."


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_rates_and_pools_are_drawn_and_told_in_words(how):
    shown = card(how=how)
    drawing = ET.fromstring(shown["drawing"])
    assert drawing.get("viewBox") == "0 0 350 400" and len(drawing) == 2
    assert [len(part.findall("{*}circle")) for part in drawing] == [3, 2]
    assert shown["drawing_text"].startswith("Burn rate: cycle 1 ") and " Pool: cycle 1 " in shown["drawing_text"]


def test_one_cycle_is_no_chart_and_without_pools_there_is_one():
    assert card(LOG[:1])["drawing"] == "" and card(LOG[:1])["drawing_text"] == ""
    bare = [{name: text for name, text in cycle.items() if name != "pool"} for cycle in LOG]
    assert ET.fromstring(card(bare)["drawing"]).get("viewBox") == "0 0 350 200" and "Pool" not in card(bare)["drawing_text"]


def test_the_width_that_the_pool_needs_is_a_line_where_it_is_known():
    said = understand(vessel(wells__0__burning={"cycles": LOG, "rest": "weight"}), Display())
    burn = burning(said, "wells.0", plan(), None)
    assert "needed" in drawn(burn, Display()) and in_words(burn, Display()).endswith("; it needs 70 mm.")


def test_the_cautions_stand_here():
    assert card([])["cautions"] == [{"title": each.title, "sentence": each.sentence, "source": each.source} for each in cautions.BURN]
    assert "never water" in cautions.BURN_OUT.sentence and cautions.POROUS_VESSEL in cautions.BURN


def test_a_log_without_end_is_shown_by_its_newest():
    shown = card([{"minutes": "4 h", "before": f"{5000 - 14 * row} g", "after": f"{4986 - 14 * row} g"} for row in range(MOST_CYCLES + 20)])
    assert len(shown["groups"]) == MOST_CYCLES and shown["groups"][0]["title"] == f"Cycle {MOST_CYCLES + 20}"
    assert shown["drawing"].count("<circle") == 12


def test_a_second_well_has_its_own_test():
    record = vessel(wells__0__burning={"cycles": LOG})
    record["wells"].append({"burning": {"cycles": LOG[:1]}, "pot": "first"})
    ids = {each["id"]: each for each in sheet(record)["cards"]}
    assert len(ids["burning"]["groups"]) == 3 and len(ids["burning-2"]["groups"]) == 1


def test_every_note_is_a_sentence():
    assert all(note[-1] in ".?" for note in notes(page()))


def test_with_the_size_of_the_wax_known_it_asks_for_its_density():
    record = vessel(wells__0__burning={"cycles": LOG}, wells__0__outline={"across": "60 mm"}, wells__0__wax={"kind": "own"})
    (shown,) = (each for each in sheet(record)["cards"] if each["id"] == "burning")
    assert any("type the density of the wax on the Wax card" in note for note in shown["notes"])
