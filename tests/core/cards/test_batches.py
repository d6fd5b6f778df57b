"""The card of the batches: a new one knows what goes in, an old one who got it."""

from vessels import fields, put, sheet, vessel

from brimbook.cards.batches import batches_card
from brimbook.cards.shelf import shelf_of
from brimbook.quantity.show import Display
from brimbook.record import blank
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
    assert [answer["shown"] for answer in shown["answer"]] == ["12 vessels", "12 vessels"]


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


def test_a_marked_batch_says_so():
    shown = card({"vessels": "2", "failed": "3"})
    assert shown["waiting"] == "Mend the entry that is marked." and shown["groups"][0]["summary"] == "Mend the entry that is marked."


def test_a_batch_without_a_lot_is_told():
    assert any("no lot" in note for note in card({"vessels": "3"})["notes"])
    assert not any("no lot" in note for note in card({"vessels": "3", "lot": "7"})["notes"])
