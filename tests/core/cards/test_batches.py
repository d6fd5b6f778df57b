"""The card of the batches: a new one knows what goes in, an old one who got it."""

from vessels import fields, put, sheet, vessel

from brimbook.cards.batches import batches_card
from brimbook.cards.shelf import shelf_of
from brimbook.quantity.show import Display
from brimbook.record import blank
from brimbook.record.fields import leaf_at
from brimbook.record.leaves.batches import BATCH
from brimbook.work_out import work_out

USED = [{"role": "wax", "name": "Soy wax", "lot": "W-1"}, {"lot": "7"}]
BATCHES = [{"made_on": "2026-09-26", "vessels": "24", "failed": "2", "used": USED,
            "went_to": [{"who": "The harbor stall", "vessels": "9", "on": "2026-10-30"}]},
           {"made_on": "2026-11-02", "vessels": "12"}]


def card(*batches, materials=()):
    record = put(blank.demos()[3], "batches", list(batches))
    return batches_card(work_out(record), shelf_of(list(materials), [], Display()))


def test_the_newest_batch_is_on_top_and_answers():
    shown = card(*BATCHES)
    assert [(group["title"], group["summary"]) for group in shown["groups"]] == [
        ("KEE-261102", "Nov 2, 2026 · 12 vessels"), ("KEE-260926", "Sep 26, 2026 · 22 vessels · 13 here")]
    assert [answer["shown"] for answer in shown["answer"]] == ["12 vessels", "12 vessels", "25 vessels"]


def test_every_leaf_of_a_batch_is_asked():
    asked = {path.replace("batches.0.", "").replace(".0.", ".*.").replace(".1.", ".*.") for path in fields(sheet(put(vessel(), "batches", BATCHES)))
             if path.startswith("batches.0.")}
    assert asked == set(BATCH) - {"used.*.role"}


def test_a_new_batch_takes_what_the_vessel_takes_with_its_lots():
    action, = card()["actions"]
    assert action["append"] == "batches" and action["today"] == ["made_on"]
    lots = {each["name"]: each["lot"] for each in action["value"]["used"]}
    assert lots["Soy wax"] == "W-118" and lots["Rapid-setting cement"] == "K-2207" and lots["Box"] == ""


def test_a_newer_lot_of_the_shelf_goes_in():
    wax = {"name": "soy wax", "role": "wax", "lots": [{"lot": "W-118"}, {"lot": "W-131"}]}
    action, = card(materials=[wax])["actions"]
    assert {each["name"]: each["lot"] for each in action["value"]["used"]}["Soy wax"] == "W-131"


def test_what_is_added_can_be_removed_again():
    group = card(BATCHES[0])["groups"][0]
    assert [action["remove"] for action in group["actions"] if "remove" in action] == [
        "batches.0.used.0", "batches.0.used.1", "batches.0.went_to.0", "batches.0"]


def test_a_material_that_is_named_is_asked_for_its_lot_alone():
    labels = [field["label"] for field in card(BATCHES[0])["groups"][0]["fields"] if ".used." in field["path"]]
    assert labels == ["Lot of Soy wax", "Material", "Its lot"]


def test_a_lot_that_was_made_up_is_written_down_before_anything_can_change_it():
    """It stands on labels and with buyers: neither another name nor a removed batch may give it to other vessels."""
    day = {"made_on": "2026-11-02", "vessels": "2"}
    shown = card(BATCHES[0], day, day, {**day, "lot": "A 7"}, day)
    assert shown["actions"][0]["sets"] == {"batches.0.lot": "KEE-260926", "batches.1.lot": "KEE-261102", "batches.2.lot": "KEE-261102-2",
                                           "batches.4.lot": "KEE-261102-4"}
    second, = (group for group in shown["groups"] if group["id"] == "batches.2")
    sets = {action["label"]: action.get("sets") for action in second["actions"]}
    assert sets["Note who got some"] == {"batches.2.lot": "KEE-261102-2"}
    assert sets["Remove this batch"] == {"batches.3.lot": "KEE-261102-4"}
    assert all(leaf_at(path) for group in shown["groups"] for action in group["actions"] for path in action.get("sets", {}))


def test_the_lots_of_the_others_stay_when_a_batch_is_removed():
    day = {"made_on": "2026-11-02", "vessels": "2"}
    given, before = [day, day, BATCHES[0], day], card(day, day, BATCHES[0], day)
    lots = {group["id"]: group["title"] for group in before["groups"]}
    for row in range(4):
        remove = next(action for group in before["groups"] for action in group["actions"] if action.get("remove") == f"batches.{row}")
        after = {"batches": [dict(each) for place, each in enumerate(given) if place != row]}
        for path, text in remove["sets"].items():
            put(after, path, text)
        assert {group["title"] for group in card(*after["batches"])["groups"]} == {lot for place, lot in lots.items() if place != f"batches.{row}"}


def test_what_has_no_lot_is_told_for_the_newest_batch_alone():
    notes = card({**BATCHES[0], "used": [{"name": "Box"}]}, {**BATCHES[1], "used": [{"name": "Soy wax", "lot": ""}, *USED, {"name": "Tissue"}]})["notes"]
    assert "The newest batch has no lot yet for: Soy wax, Tissue." in notes
    assert not any("Box" in note for note in notes)


def test_many_without_a_lot_are_told_in_one_line():
    notes = card({"lot": "7", "used": [{"name": f"Powder {number}"} for number in range(9)]})["notes"]
    assert "The newest batch has no lot yet for: Powder 0, Powder 1, Powder 2, Powder 3, Powder 4, Powder 5, and 3 more." in notes


def test_two_batches_of_one_lot_are_told():
    told, = (note for note in card({"lot": "A 7"}, {"lot": "a-7"}, {"lot": "b"})["notes"] if "More than one batch" in note)
    assert told == "More than one batch has the lot a-7: nobody can tell them apart by it."
    assert not any("More than one" in note for note in card({"lot": "A 7"}, {"lot": "a-8"}, {}, {})["notes"])


def test_what_fails_leads_to_the_cost_as_long_as_that_counts_none():
    record = put(put(vessel(), "batches", [{"vessels": "24", "failed": "2"}]), "selling", [{"cast_failures": ""}])
    for failures, told in (("", True), ("8 %", False)):
        put(record, "selling.0.cast_failures", failures)
        note, = (note for note in batches_card(work_out(record), shelf_of([], [], Display()))["notes"] if "failed so far" in note)
        assert note.startswith("2 of 24 failed so far: 8.3 %") and ("card of the cost" in note) == told


def test_a_marked_batch_says_so():
    shown = card({"vessels": "2", "failed": "3"})
    assert shown["waiting"] == "Mend the entry that is marked." and shown["groups"][0]["summary"] == "Mend the entry that is marked."


def test_a_batch_without_a_lot_is_told():
    assert any("no lot" in note for note in card({"vessels": "3"})["notes"])
    assert not any("no lot" in note for note in card({"vessels": "3", "lot": "7"})["notes"])
