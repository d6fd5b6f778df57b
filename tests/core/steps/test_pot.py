"""The pot: everything for its wells and vessels, and what a different weight of wax comes to."""

import pytest
from arithmetic import works_out
from hypothesis import given, settings
from hypothesis import strategies as st
from vessels import DISPLAYS, figures, good_vessels, put, vessel

from brimbook.work_out import work_out


def batch(record=None, **texts):
    told = figures(record or vessel(**texts))
    return {key.removeprefix("wells.0.batch."): figure for key, figure in told.items() if key.startswith("wells.0.batch.")}


def two_wells(**texts):
    """A second well of 150 g, filled from the first well's pot."""
    record = vessel(**texts)
    record["wells"].append({"fill": {"readings": [{"water": "150 g"}]}, "pot": "first"})
    return record


def test_one_vessel_and_what_stays_behind():
    """261 g in the vessel and 5 g on the tools; 266 ÷ 1.06 = 251 g wax, 15 g fragrance."""
    told = batch()
    assert (told["needed"]["shown"], told["wax"]["shown"], told["fragrance"]["shown"], told["pot"]["shown"]) == (
        "266 g", "251 g", "15 g", "266 g")


@given(good_vessels(), st.integers(1, 50))
@settings(max_examples=50)
def test_the_pot_holds_its_wells_and_what_stays(record, pieces):
    put(record, "wells.0.batch", {"pieces": str(pieces), "left": "12 g"})
    answer = work_out(record)
    potful, filled, value = answer.potfuls["wells.0"], answer.fills["wells.0"], answer.figures
    assert potful.total == pytest.approx(pieces * filled.total + 12)
    parts = sum(value[f"wells.0.batch.{name}"].value for name in ("wax", "fragrance", "dye") if f"wells.0.batch.{name}" in value)
    assert parts == pytest.approx(potful.total)
    assert value["wells.0.batch.wax"].value / potful.total == pytest.approx(filled.wax / filled.total)


def test_as_many_vessels_as_are_cast_unless_the_maker_says():
    three = batch(casts__0__pieces="3")["needed"]["value"]
    assert three == pytest.approx(batch(wells__0__batch__pieces="3")["needed"]["value"])
    assert batch(casts__0__pieces="3", wells__0__batch__pieces="1")["needed"]["shown"] == "266 g"


def test_wells_that_share_a_pot_are_added():
    record = two_wells(wells__0__batch__pieces="2", wells__0__batch__left="0")
    found = work_out(record)
    assert found.potfuls.keys() == {"wells.0"}
    assert found.potfuls["wells.0"].total == pytest.approx(2 * (found.fills["wells.0"].total + found.fills["wells.1"].total))
    assert found.fills["wells.1"].total == pytest.approx(found.fills["wells.0"].total / 2)


def test_a_shared_well_takes_the_line_and_the_rule_of_the_pot():
    found = work_out(put(two_wells(wells__0__basis="set", wells__0__rule="0.9"), "wells.1.basis", "poured"))
    assert "wells.1.first_pour" in found.figures
    assert found.figures["wells.1.rule_wax"].value == pytest.approx(135)


def test_a_pot_without_a_blend_leaves_its_wells_out():
    found = work_out(two_wells(wells__0__wax__density_poured=""))
    assert "wells.1.fill.volume" in found.figures and "wells.1.wax" not in found.figures and found.potfuls == {}


def test_a_first_well_that_is_not_measured_holds_up_no_other():
    record = put(two_wells(), "wells.0.fill.readings.0.water", "")
    found = work_out(record)
    assert found.potfuls["wells.0"].total == pytest.approx(found.fills["wells.1"].total + 5)


def test_more_wax_than_needed_is_left_over():
    told = batch(wells__0__batch__melted="300 g")
    assert told["wax"]["value"] == 300 and told["fragrance"]["shown"] == "18 g"
    assert told["over"]["label"] == "Left over" and told["over"]["value"] == pytest.approx(318 - told["needed"]["value"])
    assert told["fills"]["shown"] == "1 vessel" and "more_wax" not in told


def test_less_wax_than_needed_tells_how_much_more():
    told = batch(wells__0__batch__melted="500 g", wells__0__batch__pieces="3")
    assert told["over"]["label"] == "Short by" and told["fills"]["shown"] == "2 vessels"
    assert (500 + told["more_wax"]["value"]) * 1.06 == pytest.approx(told["needed"]["value"])


def test_too_little_for_one():
    assert batch(wells__0__batch__melted="100 g")["fills"]["shown"] == "none"
    assert "fills" not in batch(wells__0__batch__melted="100 g", wells__0__batch__left="200 g")


@given(st.integers(1, 40))
def test_just_enough_fills_them_all(pieces):
    """What is needed for some vessels fills just those, whatever the last digits are."""
    record = vessel(wells__0__batch__pieces=str(pieces))
    grams = batch(record)["wax"]["value"]
    put(record, "wells.0.batch.melted", f"{grams:.6f} g")
    assert batch(record)["fills"]["shown"].split()[0] == str(pieces)


def test_the_pours_after_the_first_are_kept_back_for_every_vessel():
    record = two_wells(wells__0__basis="set", wells__0__batch__pieces="3")
    found = work_out(record)
    last = sum(found.fills[well].top_up for well in ("wells.0", "wells.1"))
    assert found.figures["wells.0.batch.kept_back"].value == pytest.approx(3 * last)
    assert "kept_back" not in batch()


def test_the_pot_is_large_enough_for_it_hot():
    told = batch()
    assert told["volume"]["value"] == pytest.approx(told["wax"]["value"] * (1 / 0.86 + 0.06))
    assert told["size"]["value"] == pytest.approx(told["volume"]["value"] / 0.75)
    assert batch(wells__0__batch__fill_to="50 %")["size"]["value"] == pytest.approx(told["volume"]["value"] / 0.5)
    assert "lots" not in told


@pytest.mark.parametrize(("capacity", "lots"), [("1 L", None), ("300 mL", "2 lots"), ("100 mL", "5 lots")])
def test_a_small_pot_takes_several_lots(capacity, lots):
    told = batch(wells__0__batch__capacity=capacity)
    assert told.get("lots", {}).get("shown") == lots


def test_without_a_hot_density_the_pot_has_no_size():
    told = batch(wells__0__basis="set", wells__0__wax__density_poured="")
    assert "needed" in told and "volume" not in told and "size" not in told


@pytest.mark.parametrize("name", ["pieces", "left", "melted"])
def test_a_faulty_entry_leaves_the_pot_out_but_not_the_wax(name):
    record = put(vessel(), f"wells.0.batch.{name}", "x")
    assert batch(record) == {} and "wells.0.wax" in figures(record)


@pytest.mark.parametrize("name", ["capacity", "fill_to"])
def test_a_faulty_size_leaves_only_the_size_out(name):
    assert "needed" in batch(put(vessel(), f"wells.0.batch.{name}", "x"))


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("melted", ["", "333.3 g", "2 kg"])
def test_the_numbers_work_out_for_every_way_of_reading(how, melted):
    record = two_wells(wells__0__basis="set", wells__0__batch__pieces="3", wells__0__batch__melted=melted, wells__0__dye="0.25 %",
                       wells__0__batch__capacity="310 mL", wells__0__batch__left="7.5 g")
    for figure in figures(record, **how).values():
        works_out(figure, how.get("decimal") == "comma")


def test_a_pot_that_is_short_keeps_back_no_more_than_it_fills():
    """500 g and 30 g are 530 g: one vessel of 278 g; 50 g fill none, and nothing is kept back of them."""
    short = vessel(wells__0__basis="set", wells__0__batch__pieces="3", wells__0__batch__melted="500 g")
    top_up = work_out(short).fills["wells.0"].top_up
    assert batch(short)["fills"]["shown"] == "1 vessel" and batch(short)["kept_back"]["value"] == pytest.approx(top_up)
    none = put(short, "wells.0.batch.melted", "50 g")
    assert "kept_back" not in batch(none) and batch(none)["fills"]["says"] == "It fills no vessel"
    plenty = put(short, "wells.0.batch.melted", "5 kg")
    assert batch(plenty)["kept_back"]["value"] == pytest.approx(3 * top_up)


def test_a_cup_that_is_off_makes_every_well_off_alike():
    """Two wells of one cup are together as far off as one well as large, the rest is each well's own."""
    cup = {"cup_volume": "200 mL", "cup_empty": "12 g", "cup_poured": "186 g", "cup_set": "196 g", "cup_error": "5 mL"}
    record = put(two_wells(wells__0__batch__left="0"), "wells.0.wax", {"kind": "soy", **cup})
    found = work_out(record)
    needed = found.figures["wells.0.batch.needed"]
    assert needed.plus_minus / needed.value == pytest.approx(min(each.relative for each in found.fills.values()), rel=0.02)
    assert needed.plus_minus / needed.value >= found.blends["wells.0"].relative and "cup of wax" in needed.spread
    assert "cup" not in batch(two_wells(casts__0__pieces="9"))["needed"]["working"]["spread"]
