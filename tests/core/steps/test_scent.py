"""Scents: shares on both bases, limits, the largest load that keeps them all, flash points."""

import pytest
from arithmetic import works_out
from hypothesis import given
from hypothesis import strategies as st
from vessels import DISPLAYS, fields, figures, full_vessel, put, sheet, vessel

from brimbook.work_out import work_out

SCENTS, AT = "wells.0.fragrance.scents", "wells.0.scent."
LEAVES = ("name", "parts", "supplier_most", "supplier_basis", "ifra_most", "flash", "flash_cup", "density")


def scented(*scents, **texts):
    return put(vessel(**texts), SCENTS, list(scents))


def told(record, name, **settings):
    return figures(record, **settings).get(AT + name)


JUNIPER = {"name": "Juniper", "parts": "3", "supplier_most": "6 %", "ifra_most": "5 %", "flash": "65 °C", "density": "0.96 g/mL"}
CEDAR = {"name": "Cedar", "supplier_most": "10 %", "supplier_basis": "blend", "flash": "75 °C", "flash_cup": "open",
         "density": "0.90 g/mL"}
BOTH = scented(JUNIPER, CEDAR)


def test_six_percent_of_the_wax_shared_three_to_one():
    assert told(BOTH, "of_wax_1")["value"] == pytest.approx(0.045) and told(BOTH, "of_wax_2")["value"] == pytest.approx(0.015)
    assert told(BOTH, "of_candle")["shown"] == "5.66 %"
    assert told(BOTH, "of_candle_1")["value"] == pytest.approx(0.06 / 1.06 * 0.75)


def test_dye_is_part_of_the_candle():
    record = put(scented(JUNIPER), "wells.0.dye", "1 %")
    assert told(record, "of_candle")["value"] == pytest.approx(0.06 / 1.07)


def test_limits_of_the_candle_are_never_compared_with_the_wax():
    """10 % of the wax is 9.09 % of the candle: within an IFRA limit of 9.5 %, over a supplier's limit of 9.5 % of the wax."""
    ten = {"wells__0__fragrance__load": "10 %"}
    assert told(scented({"ifra_most": "9.5 %"}, **ten), "nearest")["value"] == pytest.approx(0.1 / 1.1 / 0.095)
    assert told(scented({"ifra_most": "9.5 %"}, **ten), "nearest")["label"] == "of the nearest limit"
    over = told(scented({"supplier_most": "9.5 %"}, **ten), "nearest")
    assert over["value"] == pytest.approx(0.1 / 0.095) and (over["shown"], over["label"]) == ("Over", "a limit")
    assert "Over" not in told(scented({"supplier_most": "9.5 %", "supplier_basis": "blend"}, **ten), "nearest")["shown"]


def test_just_at_a_limit_is_within_it():
    for load, limit in (("7.5 %", "7.5 %"), ("6.6 %", "6.6 %"), ("1 oz/lb", "6.25 %")):
        at_it = told(scented({"supplier_most": limit}, wells__0__fragrance__load=load), "nearest")
        assert at_it["shown"] == "100 %", load
    assert told(scented({"supplier_most": "7.49 %"}, wells__0__fragrance__load="7.5 %"), "nearest")["shown"] == "Over"


def test_over_a_limit_is_told_in_words():
    notes = told(scented({"name": "Juniper", "supplier_most": "5 %"}), "supplier_1")["notes"]
    assert notes == ["Over a limit. Juniper, supplier's limit: 5 % of the wax; yours has 6 %."]
    assert told(scented({"supplier_most": "7 %"}), "supplier_1")["notes"] == []


@pytest.mark.parametrize(("scent", "basis", "most"), [
    ({"supplier_most": "8 %"}, "wax", 0.08),
    ({"supplier_most": "8 %"}, "blend", 0.08 / 1.08),
    ({"ifra_most": "8 %"}, "blend", 0.08),
    ({"ifra_most": "8 %"}, "wax", 0.08 / 0.92),
])
def test_the_largest_load_on_the_basis_that_was_chosen(scent, basis, most):
    figure = told(scented(scent, wells__0__fragrance__basis=basis), "most")
    assert figure["value"] == pytest.approx(most)
    assert ("of the wax" if basis == "wax" else "of the candle") in figure["says"]


@given(st.integers(20, 4000), st.integers(20, 4000), st.integers(20, 4000), st.integers(1, 9), st.sampled_from(["wax", "blend"]),
       st.integers(0, 200))
def test_with_the_largest_load_every_limit_is_kept_and_one_is_reached(supplier, ifra, whole, parts, basis, dye):
    texts = {"wells__0__fragrance__basis": basis, "wells__0__dye": f"{dye / 100:.2f} %",
             "wells__0__fragrance__wax_most": f"{whole / 100:.2f} %"}
    scents = ({"parts": str(parts), "supplier_most": f"{supplier / 100:.2f} %"}, {"ifra_most": f"{ifra / 100:.2f} %"})
    most = work_out(scented(*scents, **texts)).figures[AT + "most"]
    if most.value > 0.49:
        return
    texts["wells__0__fragrance__load"] = f"{most.value * 100:.10f} %"
    assert work_out(scented(*scents, **texts)).figures[AT + "nearest"].value == pytest.approx(1, abs=1e-8)
    texts["wells__0__fragrance__load"] = most.shown
    kept = work_out(scented(*scents, **texts)).figures[AT + "nearest"]
    assert kept.shown != "Over" and kept.value > 0.9, "rounded down, and not by much"


def test_what_is_rounded_down_is_told_so():
    figure = told(scented({"supplier_most": "10 %"}, {"parts": "2"}, {}), "most")
    assert figure["shown"] == "30 %"
    assert told(scented({"parts": "3", "supplier_most": "5 %"}, {"parts": "2.4", "name": "x"}), "most")["shown"] == "9 %"
    assert told(scented({"parts": "3", "supplier_most": "5 %"}, {"name": "x"}), "most")["shown"] == "6.66 %"


def test_no_load_reaches_a_limit_of_the_whole_candle():
    assert told(scented({"ifra_most": "100 %"}), "most") is None
    assert told(scented({"ifra_most": "100 %"}), "nearest")["value"] == pytest.approx(0.06 / 1.06)


def test_a_load_that_no_wax_holds_is_not_told_as_one_that_is_allowed():
    assert told(scented({"ifra_most": "90 %"}), "most") is None
    assert told(scented({"ifra_most": "49 %"}), "most")["value"] == pytest.approx(0.49 / 0.51)


def test_what_the_wax_takes_needs_no_scent():
    figure = told(vessel(wells__0__fragrance__wax_most="5 %"), "nearest")
    assert figure["shown"] == "Over" and told(vessel(), "nearest") is None


def test_no_fragrance_keeps_every_limit():
    record = scented(JUNIPER, CEDAR, wells__0__fragrance__load="0")
    assert told(record, "nearest")["value"] == 0 and told(record, "most")["value"] == pytest.approx(0.05 / 0.75 / (1 - 0.05 / 0.75))


def test_an_empty_row_is_no_scent():
    record = scented({}, JUNIPER, {"name": ""})
    assert told(record, "of_wax_2")["value"] == pytest.approx(0.06) and told(record, "of_wax_1") is None


def test_no_part_of_any_scent_is_told_of():
    page = sheet(scented({"name": "Juniper", "parts": "0"}))
    assert "Type 1" in fields(page)[f"{SCENTS}.0.parts"]["fault"]
    assert told(scented({"name": "Juniper", "parts": "0"}, CEDAR), "of_wax_1") is None
    assert told(scented({"name": "Juniper", "parts": "0"}, CEDAR), "of_wax_2")["value"] == pytest.approx(0.06)


def test_faulty_parts_leave_every_share_out_and_faulty_limits_only_themselves():
    broken = figures(scented({**JUNIPER, "parts": "three"}, CEDAR))
    assert AT + "of_candle" in broken and AT + "of_wax_2" not in broken
    assert AT + "nearest" not in broken and AT + "sensitizer_1" not in broken
    limit = figures(scented({**JUNIPER, "ifra_most": "0"}, CEDAR))
    assert AT + "ifra_1" not in limit and AT + "supplier_1" in limit


def test_each_scent_of_several_is_weighed_for_the_whole_pot():
    shown = figures(BOTH)
    one, two, whole = (shown[AT + name]["value"] for name in ("weight_1", "weight_2", "of_candle"))
    total = work_out(BOTH).potfuls["wells.0"].total
    assert one == pytest.approx(3 * two) and one + two == pytest.approx(total * whole)
    assert shown[AT + "weight_1"]["says"].startswith("Weigh 1") and "Juniper" in shown[AT + "weight_1"]["says"]
    assert AT + "weight_1" not in figures(scented(JUNIPER))


def test_an_open_cup_counts_as_ten_degrees_less():
    closed, opened = told(BOTH, "flash_1"), told(BOTH, "flash_2")
    assert closed["value"] == opened["value"] == 65 and "at least 65 °C" in opened["says"]
    assert told(BOTH, "flash_1", temperature="F")["shown"] == "149 °F"


@pytest.mark.parametrize(("flash", "words"), [("22 °C", "category 1 or 2"), ("23 °C", "category 3"), ("60 °C", "category 3"),
                                              ("61 °C", "too high"), ("140 °F", "category 3")])
def test_the_category_of_a_flammable_liquid(flash, words):
    assert words in told(scented({"flash": flash}), "flash_1")["says"]


@pytest.mark.parametrize(("goes_in", "above"), [("64 °C", False), ("65 °C", True), ("80 °C", True), ("x", False)])
def test_a_flash_point_is_told_beside_the_temperature_it_goes_in_at(goes_in, above):
    (figure,) = [told(scented(JUNIPER, wells__0__melting__scent_at=goes_in), "flash_1")]
    assert bool(figure["notes"]) == above
    if above:
        assert "no flame and no spark" in figure["notes"][0]


def test_the_densities_come_together_where_all_are_known():
    assert told(BOTH, "density")["value"] == pytest.approx(4 / (3 / 0.96 + 1 / 0.9))
    assert told(scented(JUNIPER, {"name": "Cedar"}), "density") is None


def test_the_load_that_is_used_stays_the_maker_s_own():
    plain, known = figures(vessel()), figures(BOTH)
    assert all(plain[key]["value"] == known[key]["value"] for key in ("wells.0.wax", "wells.0.fragrance", "wells.0.load_of_wax"))


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_numbers_work_out_as_each_maker_reads_them(how):
    for name, figure in figures(BOTH, **how).items():
        if name.startswith(AT):
            works_out(figure, how.get("decimal") == "comma")


@given(st.lists(st.dictionaries(st.sampled_from(LEAVES), st.sampled_from(
    ["", "0", "x", "7.5 %", "100 %", "1e-7", "0.0001 %", "closed", "open", "wax", "blend", "65 °C", "-10 °C", "1.2 g/mL", "3", "9999"])),
    max_size=4))
def test_nothing_raises_and_every_number_works_out(scents):
    for name, figure in figures(scented(*scents), decimal="point").items():
        if name.startswith(AT):
            works_out(figure)


@pytest.mark.parametrize("bent", ["text", {"0": "x"}, [[]], [None, 3], [{"sensitizers": "x"}], [{"name": {"a": 1}, "parts": [1]}]])
def test_a_bent_list_of_scents_does_no_harm(bent):
    assert any(card["id"] == "scent" for card in sheet(put(vessel(), SCENTS, bent))["cards"])


def test_a_hostile_list_is_worked_out_only_so_far():
    shown = figures(scented(*({"name": "x"} for _ in range(700))))
    assert AT + "of_wax_30" in shown and AT + "of_wax_31" not in shown


def test_every_leaf_of_a_scent_is_filled_in_a_full_vessel():
    record = full_vessel()
    scent = record["wells"][0]["fragrance"]["scents"][0]
    assert set(LEAVES) < set(scent) and scent["sensitizers"][0]["class"] == "1"


def test_without_fragrance_none_goes_in_and_none_is_weighed():
    found = figures(scented(JUNIPER, CEDAR, wells__0__fragrance__load="0"))
    assert not any("goes in" in note for card in sheet(scented(JUNIPER, CEDAR, wells__0__fragrance__load="0"))["cards"] for note in card["notes"])
    assert f"{AT}flash_1" in found and f"{AT}weight_1" not in found
