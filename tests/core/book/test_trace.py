"""A lot is found wherever it stands, however it is spelled, and leads to everybody who got some."""

import time

import pytest
from books import book
from hypothesis import given
from vessels import ANYTHING, bent_vessels, put, vessel

from brimbook.book.trace import trace
from brimbook.quantity.show import Display
from brimbook.record.fields import LEAVES

STALL = {"who": "The harbor stall", "vessels": "9", "on": "2026-10-30"}


def cup(**batch):
    made = {"made_on": "2026-09-26", "vessels": "24", "failed": "2", "used": [{"role": "wax", "name": "Soy wax", "lot": "47-11"}], **batch}
    return {"id": "cup", "name": "Keel cup", "batches": [made]}


def found(sought, *records):
    return trace([{"record": record} for record in records], sought, Display())


def test_a_lot_of_wax_leads_to_its_batch_and_its_buyers():
    answer = found("4711", cup(went_to=[STALL, {"who": "A neighbor"}, {"vessels": "1"}, {}]))
    assert answer["rows"] == [{"id": "cup", "name": "Keel cup", "lines": [
        "Batch KEE-260926, made Sep 26, 2026, 24 vessels, 2 of them failed: Soy wax, lot 47-11",
        "Went to: 9 to The harbor stall, Oct 30, 2026", "Went to: A neighbor", "Went to: 1 to somebody not noted", "Still here: 12"]}]
    assert answer["says"] == "“4711” went into 1 batch: 22 vessels came out, 10 of them passed on, 12 still here."


@pytest.mark.parametrize("sought", ["KEE-260926", "kee 260926", "260926", " KEE–260926 "])
def test_a_batch_s_own_lot_is_found_however_it_is_spelled(sought):
    assert [row["id"] for row in found(sought, cup())["rows"]] == ["cup"]


def test_other_lots_are_not_found():
    answer = found("4712", cup())
    assert answer == {"rows": [], "says": "No batch and no material in the book has the lot “4712”."}


def test_nothing_sought_finds_nothing():
    assert found(" - ", cup()) == {"rows": [], "says": "Type a lot, or a part of it."}


def test_the_same_lot_comes_before_one_that_only_holds_it():
    longer = {**cup(used=[{"name": "Soy wax", "lot": "47-11-B"}]), "id": "longer"}
    assert [row["id"] for row in found("4711", longer, cup())["rows"]] == ["cup", "longer"]


def test_what_only_holds_the_letters_is_not_counted_with_the_lot_itself():
    """A recall must not name buyers of another lot."""
    both = {**cup(), "batches": [*cup(used=[{"name": "Soy wax", "lot": "4711-B"}], vessels="9")["batches"], *cup(vessels="5")["batches"]]}
    longer = {**cup(used=[{"name": "Soy wax", "lot": "47-11-C"}]), "id": "longer"}
    answer = found("4711", longer, both)
    assert answer["says"] == "“4711” went into 1 batch: 3 vessels came out. 1 other vessel below has lots that only hold these letters."
    assert [line for row in answer["rows"] for line in row["lines"] if line.startswith("Batch")] == [
        "Batch KEE-260926-2, made Sep 26, 2026, 5 vessels, 2 of them failed: Soy wax, lot 47-11",
        "Batch KEE-260926, made Sep 26, 2026, 9 vessels, 2 of them failed: Soy wax, lot 4711-B",
        "Batch KEE-260926, made Sep 26, 2026, 24 vessels, 2 of them failed: Soy wax, lot 47-11-C"]


def test_where_there_is_no_such_lot_those_that_hold_the_letters_are_told_as_such():
    assert found("471", cup())["says"] == (
        "There is no lot “471” itself. Lots that hold these letters went into 1 batch: 22 vessels came out.")


def test_what_is_not_noted_is_told():
    recipe = {"id": "now", "wells": [{"wax": {"lot": "4711"}}]}
    assert found("4711", cup(), {**cup(vessels=""), "id": "other"}, recipe)["says"] == (
        "“4711” went into 2 batches, of 2 vessels in the book: 22 vessels came out. Of 1 batch it is not noted how many came out."
        " 1 more vessel has it now, and no batch of it.")
    assert found("4711", cup(vessels=""))["says"] == "“4711” went into 1 batch: how many came out is not noted."


def test_a_lot_that_only_a_label_bears_is_found():
    answer = found("z99", {"id": "1", "labels": [{"lot": "Z-99"}, "bent", {"lot": 5}]})
    assert answer["rows"][0]["lines"] == ["On its label, lot Z-99"]


def test_a_large_book_is_gone_through_at_once():
    """In the page all takes several times as long; nobody should have to wait for two thousand vessels."""
    entries, took = book(2000), []
    for sought in ("47", "C11", "nowhere"):
        began = time.process_time()
        trace(entries, sought, Display())
        took.append(time.process_time() - began)
    assert min(took) < 0.2


def test_several_vessels_are_counted_together():
    assert found("4711", cup(went_to=[STALL]), {**cup(failed="x", vessels="4"), "id": "other"})["says"] == (
        "“4711” went into 2 batches, of 2 vessels in the book: 26 vessels came out, 9 of them passed on, 17 still here.")


LOTS = sorted(path for path, leaf in LEAVES.items() if leaf.label == "Lot" and path.startswith(("casts", "wells", "packaging")))


@pytest.mark.parametrize("path", LOTS)
def test_every_material_of_a_vessel_is_looked_at(path):
    record = put(vessel(), path.replace("*", "0"), "Z 99")
    answer = found("z99", record)
    assert answer["rows"][0]["lines"][0].startswith("In the recipe now: ") and answer["rows"][0]["lines"][0].endswith(", lot Z 99")
    assert answer["says"] == "“z99” stands in 1 vessel as the lot of a material or a label, and in no batch."


def test_there_are_such_places():
    assert len(LOTS) >= 12


@given(ANYTHING)
def test_whatever_lies_in_the_book_is_passed_over(entries):
    assert trace(entries, "7", Display())["says"]


@given(bent_vessels())
def test_a_bent_vessel_does_no_harm(record):
    assert isinstance(found("a", record)["rows"], list)
