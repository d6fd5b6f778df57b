"""What one vessel takes of everything that is bought, as really used."""

import pytest
from hypothesis import given
from vessels import ANYTHING, bent_vessels, full_vessel, good_vessels, put, vessel

from brimbook.record import blank
from brimbook.steps.supplies import unmeasured
from brimbook.work_out import work_out


def supplies(record):
    """The supplies of a record by place."""
    return {supply.place: supply for supply in work_out(record).supplies}


def each(record, place):
    return supplies(record)[place].each


POWDER = "casts.0.mix.powder"


def test_powder_as_planned_is_what_is_weighed_out_for_each_piece():
    record = vessel(casts__0__pieces="4")
    planned = work_out(record).figures["casts.0.powder"].value
    assert each(record, POWDER) == pytest.approx(planned / 4)
    assert supplies(record)[POWDER].key == "casts.0.powder"


def test_what_was_scooped_counts_instead_of_the_plan():
    assert each(vessel(casts__0__scooped="1400 g"), POWDER) == pytest.approx(1400)
    assert each(vessel(casts__0__scooped="2500 g", casts__0__pieces="2"), POWDER) == pytest.approx(1250)


def test_a_scoop_that_does_not_fill_the_mold_is_filled_up():
    """1204.8 g with an allowance of 10 %: the mold itself takes 1204.8 ÷ 1.1 = 1095.2 g."""
    assert each(vessel(casts__0__scooped="700 g"), POWDER) == pytest.approx(1204.8 / 1.1, rel=1e-4)


def test_the_newest_pour_counts_with_all_that_was_left_over():
    record = vessel(casts__0__pours=[{"powder": "1500 g", "left_over": "90 g"}, {"powder": "1260 g", "left_over": "80 g"}],
                    casts__0__scooped="1400 g")
    assert each(record, POWDER) == 1260 and supplies(record)[POWDER].key == ""
    put(record, "casts.0.pours.1.pieces", "3")
    assert each(record, POWDER) == pytest.approx(420)


def test_a_pour_of_another_mix_or_without_its_powder_is_passed_over():
    record = vessel(casts__0__pours=[{"powder": "1300 g"}, {"powder": "999 g", "of": "plaster"}, {"water": "200 g"}])
    assert each(record, POWDER) == 1300
    put(record, "casts.0.pours.2.powder", "heavy")
    assert each(record, POWDER) == 1300


def test_mix_that_was_lacking_was_weighed_in_besides():
    """1000 g and 250 g of water: 125 g lacking is a tenth more."""
    record = vessel(casts__0__pours=[{"powder": "1000 g", "water": "250 g", "short": "125 g"}])
    assert each(record, POWDER) == pytest.approx(1100)
    del record["casts"][0]["pours"][0]["water"]
    assert each(record, POWDER) == pytest.approx(1100)


def test_other_ingredients_of_a_pour_are_those_weighed_else_by_the_recipe():
    record = vessel(casts__0__mix__others=[{"kind": "red_oxide", "share": "3 %"}, {"kind": "red_oxide", "share": "2 %"}],
                    casts__0__pours=[{"powder": "1000 g", "others": [{"weighed": "36 g"}, {}]}])
    found = supplies(record)
    assert found["casts.0.mix.others.0"].each == 36 and found["casts.0.mix.others.1"].each == pytest.approx(20)
    assert {found[f"casts.0.mix.others.{row}"].role for row in (0, 1)} == {"pigment"}


def test_what_was_left_out_of_a_pour_is_known_to_be_none():
    record = vessel(casts__0__mix__others=[{"kind": "red_oxide", "share": "3 %"}], wells__0__wicks__count="1",
                    casts__0__pours=[{"powder": "1000 g", "others": [{"weighed": "0 g"}]}])
    assert each(record, "casts.0.mix.others.0") == 0 and names_unknown(record) == []


def test_one_bowl_for_several_molds_is_shared_by_their_room():
    """Four cups of 100 mL and two lids of 50 mL, of one bowl: a cup and a lid are 150 mL of 500 mL."""
    record = vessel(casts__0__cavity__readings__0__water="100 g", casts__0__pieces="4")
    lid = {**blank.blank()["casts"][0], "bowl": "first", "pieces": "2"}
    record["casts"].append(put(lid, "cavity.readings.0.water", "50 g"))
    powder = work_out(record).figures["casts.0.powder"].value
    assert each(record, POWDER) == pytest.approx(powder * 150 / 500)
    assert "casts.1.mix.powder" not in supplies(record)
    record["casts"][0]["pours"] = [{"powder": "900 g", "pieces": "3"}]
    assert each(record, POWDER) == pytest.approx(900 * 150 / (3 * 100 + 2 * 50))


def test_two_bowls_count_apart():
    record = vessel()
    record["casts"].append({**record["casts"][0], "pieces": "2"})
    assert each(record, "casts.1.mix.powder") == pytest.approx(each(record, POWDER))


def test_coats_count_where_their_area_is_known():
    record = vessel(casts__0__pieces="3", casts__0__finishing__inside_area="200", casts__0__finishing__sealer__name="Water glass")
    sealer = supplies(record)["casts.0.finishing.sealer"]
    # 2 coats × 200 cm² ÷ 8 m²/L = 5 mL.
    assert (sealer.name, sealer.role, sealer.measure, sealer.each) == ("Water glass", "coating", "volume", pytest.approx(5))
    assert "casts.0.finishing.paint" not in supplies(record)


def test_wax_fragrance_and_dye_are_those_of_the_pot_with_what_stays_in_it():
    record = vessel(wells__0__dye="0.5 %", casts__0__pieces="4", wells__0__batch__left="40 g")
    figures, found = work_out(record).figures, supplies(record)
    for place, name in (("wax", "wax"), ("fragrance", "fragrance"), ("coloring", "dye")):
        assert found[f"wells.0.{place}"].each == pytest.approx(figures[f"wells.0.batch.{name}"].value / 4)
    whole = sum(found[f"wells.0.{place}"].each for place in ("wax", "fragrance", "coloring"))
    assert whole == pytest.approx(figures["wells.0.wax"].value * 1.065 + 10)


def test_wax_that_was_melted_instead_is_shared_by_the_vessels_it_fills():
    record = vessel(casts__0__pieces="4", wells__0__batch__melted="700 g")
    # 700 g fills only 2 of the vessels of 246 g.
    assert each(record, "wells.0.wax") == pytest.approx(350)
    assert "wells.0.wax" not in supplies(vessel(wells__0__batch__melted="100 g"))


def test_waxes_and_scents_count_apart():
    record = vessel(wells__0__wax__blended=[{"kind": "beeswax", "share": "25 %", "density_poured": "0.85 g/mL", "density_set": "0.96 g/mL"}],
                    wells__0__fragrance__scents=[{"name": "Juniper", "parts": "3"}, {"name": "Cedar", "parts": "1"}, {"name": "None", "parts": "0"}])
    found = supplies(record)
    assert found["wells.0.wax"].each == pytest.approx(3 * found["wells.0.wax.blended.0"].each)
    assert found["wells.0.fragrance.scents.0"].each == pytest.approx(3 * found["wells.0.fragrance.scents.1"].each)
    assert [supply.name for supply in found.values() if supply.role in ("wax", "fragrance")] == ["Soy wax", "Beeswax", "Juniper", "Cedar"]
    assert "wells.0.fragrance" not in found and names_unknown(record) == ["Wick"]


def test_a_pot_for_several_wells_is_counted_once_and_their_wicks_each():
    record = vessel(wells__0__wicks__count="2")
    record["wells"].append({**record["wells"][0], "pot": "first", "wicks": {"count": "3"}})
    found = supplies(record)
    assert {"wells.0.wax", "wells.0.wicks", "wells.1.wicks"} <= set(found) and "wells.1.wax" not in found
    assert (found["wells.0.wicks"].each, found["wells.1.wicks"].each) == (2, 3)
    assert found["wells.0.wax"].each == pytest.approx(work_out(record).figures["wells.0.batch.wax"].value)


def test_wicks_that_are_shown_stand_in_for_those_typed():
    assert each(vessel(wells__0__fill__opening_across="68 mm"), "wells.0.wicks") == 1
    assert "wells.0.wicks" not in supplies(vessel()) and "wells.0.wicks" not in supplies(vessel(wells__0__wicks__count="x"))


def test_packaging_is_counted_as_many_as_one_vessel_takes():
    record = vessel(packaging=[{"name": "Box"}, {"name": "Crate", "each": "0.25"}, {"name": "Ribbon", "each": "0"}, {"each": "two"}])
    found = supplies(record)
    assert (found["packaging.0"].each, found["packaging.1"].each, found["packaging.0"].step) == (1, 0.25, "packing")
    assert not {"packaging.2", "packaging.3"} & set(found)


def test_pack_price_and_lot_come_with_it():
    record = vessel(casts__0__mix__powder__pack_weight="25 kg", casts__0__mix__powder__pack_price="34.50",
                    casts__0__mix__powder__lot=" K-7 ")
    powder = supplies(record)[POWDER]
    assert (powder.pack, powder.price, powder.lot) == (25_000, 34.5, "K-7")
    assert supplies(vessel())[POWDER].price is None


def test_the_same_thing_in_a_second_mold_is_bought_alike_unless_told_otherwise():
    record = vessel(casts__0__mix__powder__pack_weight="25 kg", casts__0__mix__powder__pack_price="34.50")
    record["casts"].append(blank.blank()["casts"][0])
    put(record, "casts.1.cavity.readings.0.water", "100 g")
    assert supplies(record)["casts.1.mix.powder"].price == 34.5
    put(record, "casts.1.mix.powder.pack_price", "20")
    assert (supplies(record)["casts.1.mix.powder"].price, supplies(record)["casts.1.mix.powder"].pack) == (20, None)


def test_the_kind_names_what_has_no_name_of_its_own():
    record = vessel(casts__0__mix__powder__kind="mine: Gray bag mix", wells__0__wax__kind="mine: Pillar blend")
    assert [supplies(record)[place].name for place in (POWDER, "wells.0.wax")] == ["Gray bag mix", "Pillar blend"]


def names_unknown(record):
    answer = work_out(record)
    return [thing.name for thing in unmeasured(answer.said, answer.supplies)]


def test_what_is_not_known_is_named_and_not_taken_for_nothing():
    assert names_unknown(blank.blank()) == ["Rapid-setting cement", "Soy wax", "Fragrance", "Wick"]
    assert names_unknown(vessel(wells__0__wicks__count="1")) == []
    assert names_unknown(vessel(wells__0__wicks__count="1", casts__0__finishing__paint__pack_price="9")) == ["Paint"]
    assert names_unknown(vessel(wells__0__wicks__count="1", casts__0__finishing__paint_coats="3")) == ["Paint"]
    assert names_unknown(vessel(wells__0__wicks__count="1", casts__0__finishing__paint__pack_price="9",
                                casts__0__finishing__paint_coats="0")) == []


@given(bent_vessels() | ANYTHING | good_vessels())
def test_whatever_the_record_each_supply_is_told_once(record):
    found = work_out(record).supplies
    assert all(0 <= supply.each < float("inf") and supply.name and supply.numbers and supply.formula for supply in found)
    assert len({supply.place for supply in found}) == len(found)


def test_a_full_vessel_takes_of_everything():
    roles = {supply.role for supply in work_out(put(full_vessel(), "wells.0.batch.melted", "40 kg")).supplies}
    assert roles >= {"binder", "coating", "wax", "fragrance", "dye", "wick", "packaging"}
