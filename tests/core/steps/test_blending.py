"""The wax of a pot: by temperature, by the cup, blended; and what it loses as it sets."""

import pytest
from arithmetic import works_out
from hypothesis import given
from hypothesis import strategies as st
from vessels import DISPLAYS, fields, figures, put, sheet, vessel

from brimbook.record.said import understand
from brimbook.settings import display_of, whole
from brimbook.work_out import work_out

CUP = {"wells__0__wax__cup_volume": "200 mL", "wells__0__wax__cup_empty": "12 g", "wells__0__wax__cup_poured": "186 g",
       "wells__0__wax__cup_set": "196 g"}
BEESWAX = {"kind": "beeswax", "share": "10 %", "density_poured": "0.82 g/mL", "density_set": "0.96 g/mL"}


def told(name, record=None, **texts):
    found = figures(record or vessel(**texts))
    return found[f"wells.0.{name}"]


def blended(*waxes, **texts):
    return put(vessel(**texts), "wells.0.wax.blended", [dict(wax) for wax in waxes])


def fault(record, path):
    return work_out(record).said.fault_at(path)


def test_as_told_where_no_temperature_is_typed():
    """A density was always for hot wax as poured: an old record keeps its figures."""
    figure = told("density_poured")
    assert figure["value"] == 0.86 and figure["working"]["formula"] == "as told"
    assert "80 °C" in figure["working"]["spread"]


@pytest.mark.parametrize(("kind", "density", "at"), [("soy", 0.86, 80), ("paraffin", 0.77, 80), ("beeswax", 0.82, 98)])
def test_a_generic_density_follows_where_it_is_poured(kind, density, at):
    texts = {"wells__0__wax__kind": kind, "wells__0__wax__density_poured": f"{density} g/mL", "wells__0__wax__density_set": "1 g/mL"}
    figure = told("density_poured", **texts, wells__0__melting__pour_at="70 °C")
    assert figure["value"] == pytest.approx(density - 0.00064 * (70 - at))
    expansion = {each["name"]: each["standing"] for each in figure["working"]["constants"]}["Loses for each °C"]
    assert expansion == {"soy": "published", "paraffin": "reference library", "beeswax": "from memory"}[kind]


def test_a_density_of_the_maker_s_stands_until_they_say_what_it_is_for():
    own = {"wells__0__wax__density_poured": "0.87 g/mL", "wells__0__melting__pour_at": "70 °C"}
    assert told("density_poured", **own)["value"] == 0.87
    assert told("density_poured", **own, wells__0__wax__density_at="80 °C")["value"] == pytest.approx(0.8764)


def test_what_it_is_told_for_is_enough_with_the_usual_pour():
    """Soy is poured at 60 °C where nothing else is typed."""
    assert told("density_poured", wells__0__wax__density_at="80 °C")["value"] == pytest.approx(0.86 + 0.00064 * 20)


def test_a_typed_expansion_is_the_maker_s():
    figure = told("density_poured", wells__0__wax__density_at="80 °C", wells__0__wax__expansion="0.0008")
    assert figure["value"] == pytest.approx(0.876)
    assert {each["name"]: each["standing"] for each in figure["working"]["constants"]}["Loses for each °C"] == "your entry"


@pytest.mark.parametrize("path", ["wax.density_at", "wax.expansion", "melting.pour_at"])
def test_what_needs_a_faulty_temperature_is_left_out(path):
    record = put(vessel(wells__0__wax__density_at="80 °C"), f"wells.0.{path}", "warm")
    assert "wells.0.wax" not in figures(record)


def test_a_hotter_pour_takes_less_wax():
    cool, hot = (told("wax", wells__0__melting__pour_at=f"{celsius} °C")["value"] for celsius in (60, 85))
    assert hot < cool


@given(st.integers(55, 90))
def test_the_set_line_does_not_ask_how_hot_it_is_poured(celsius):
    assert told("wax", wells__0__basis="set", wells__0__melting__pour_at=f"{celsius} °C")["value"] == pytest.approx(
        told("wax", wells__0__basis="set")["value"])


def test_the_cup_beats_what_is_typed():
    figure = told("cup_poured", **CUP)
    assert figure["value"] == pytest.approx(174 / 200) and figure["plus_minus"].startswith("± 0.006")
    assert told("cup_set", **CUP)["value"] == pytest.approx(184 / 200)
    assert told("blend_per_gram", **CUP)["working"]["constants"][0]["source"] == "Worked out from the cup of wax that you weighed"
    assert told("wax", **CUP)["value"] == pytest.approx(300.8555 / (200 / 174 + 0.06), rel=1e-6)


def test_the_cup_s_plus_minus_goes_into_the_wax():
    without, with_cup = told("wax"), told("wax", **CUP)
    plus_minus = [float(figure["plus_minus"].split()[1]) for figure in (without, with_cup)]
    assert plus_minus[1] > 2 * plus_minus[0] and "cup" in with_cup["working"]["spread"]


def test_a_cup_follows_the_temperature_too():
    assert told("density_poured", **CUP, wells__0__wax__cup_temperature="70 °C")["value"] == pytest.approx(0.87 + 0.0064)


def test_half_a_cup_is_no_cup():
    record = vessel(**{**CUP, "wells__0__wax__cup_poured": "", "wells__0__wax__cup_set": "196 g"})
    assert told("density_poured", record)["value"] == 0.86 and told("cup_set", record)["value"] == pytest.approx(0.92)


@pytest.mark.parametrize(("changed", "path", "words"), [
    ({"cup_poured": "12 g"}, "cup_poured", "no more than the empty one"),
    ({"cup_volume": "20 mL"}, "cup_poured", "8.7 g"),
    ({"cup_set": "180 g"}, "cup_set", "swapped"),
])
def test_an_impossible_cup_is_questioned_beside_its_entry(changed, path, words):
    record = vessel(**CUP)
    for name, text in changed.items():
        put(record, f"wells.0.wax.{name}", text)
    assert words in fault(record, f"wells.0.wax.{path}")


def test_the_cup_is_told_beside_the_densities_that_it_beats():
    asked = fields(sheet(vessel(**CUP)))
    assert "cup" in asked["wells.0.wax.density_poured"]["note"] and "cup" in asked["wells.0.wax.density_set"]["note"]
    assert fields(sheet(vessel()))["wells.0.wax.density_poured"]["note"] == ""


def test_waxes_blend_by_volume():
    """90 g of soy and 10 g of beeswax take 90 ÷ 0.86 + 10 ÷ 0.82 mL."""
    assert told("density_poured", blended(BEESWAX))["value"] == pytest.approx(100 / (90 / 0.86 + 10 / 0.82))
    assert told("density_set", blended(BEESWAX))["value"] == pytest.approx(100 / (90 / 0.92 + 10 / 0.96))


def test_each_wax_is_weighed_and_they_come_to_all_of_it():
    found = figures(blended(BEESWAX, {**BEESWAX, "kind": "paraffin", "share": "25 %"}))
    parts = [found[f"wells.0.wax_{number}"] for number in (1, 2, 3)]
    assert sum(part["value"] for part in parts) == pytest.approx(found["wells.0.wax"]["value"])
    assert [part["label"] for part in parts] == ["Soy wax", "Beeswax", "Paraffin wax"]
    assert parts[1]["says"].endswith("g beeswax")


def test_a_blend_of_one_wax_with_itself_is_that_wax():
    itself = {"kind": "soy", "share": "30 %", "density_poured": "0.86 g/mL", "density_set": "0.92 g/mL"}
    assert told("wax", blended(itself))["value"] == pytest.approx(told("wax")["value"])


@given(st.integers(0, 100))
def test_a_blend_lies_between_its_waxes(percent):
    value = told("density_poured", blended({**BEESWAX, "share": f"{percent} %"}))["value"]
    assert 0.82 - 1e-9 <= value <= 0.86 + 1e-9


def test_all_of_it_may_be_blended_in():
    record = blended({**BEESWAX, "share": "100 %"}, wells__0__wax__density_poured="", wells__0__wax__density_set="")
    assert told("density_poured", record)["value"] == 0.82


def test_more_than_all_of_it_is_a_fault_beside_the_last():
    record = blended({**BEESWAX, "share": "70 %"}, {**BEESWAX, "share": "40 %"})
    assert "110 %" in fault(record, "wells.0.wax.blended.1.share") and "wells.0.wax" not in figures(record)


def test_thirds_are_not_more_than_all():
    thirds = [{**BEESWAX, "share": "33.333 %"}] * 2 + [{**BEESWAX, "share": "33.334 %"}]
    assert "wells.0.wax" in figures(blended(*thirds))


def test_an_empty_row_is_skipped():
    assert told("wax", blended({}, {"kind": "beeswax"}))["value"] == told("wax")["value"]


def test_a_wax_without_a_density_is_asked_for():
    record = blended({"kind": "own", "share": "10 %"})
    card = next(card for card in sheet(record)["cards"] if card["id"] == "wax")
    assert card["answer"] == [] and card["waiting"] == "Type the density of each wax that is blended in."


def test_an_eleventh_wax_is_told_of_and_a_long_list_is_not_worked_out():
    record = blended(*[{**BEESWAX, "share": "1 %"}] * 11)
    assert "At most 10" in fault(record, "wells.0.wax.blended.10.share")
    assert "wells.0.wax" in figures(blended(*[{**BEESWAX, "share": "1 %"}] * 10))


def test_what_it_loses_is_told_on_both_volumes():
    texts = {"wells__0__wax__density_poured": "0.77", "wells__0__wax__density_set": "0.90", "wells__0__fragrance__load": "0"}
    assert told("shrinks_hot", **texts)["shown"] == "14.4 %" and told("shrinks_set", **texts)["shown"] == "16.9 %"
    assert told("shrinks_hot", **texts)["label"].endswith("of the hot volume")
    assert told("shrinks_set", **texts)["label"].endswith("of the set volume")


def test_fragrance_does_not_shrink():
    shares = [told("shrinks_hot", wells__0__fragrance__load=f"{load} %")["value"] for load in (0, 6, 12)]
    assert shares[0] > shares[1] > shares[2]


def test_so_cold_that_hot_wax_would_be_denser_is_questioned_at_the_temperature():
    record = vessel(wells__0__wax__density_set="0.865", wells__0__melting__pour_at="60 °C")
    assert "So cold" in fault(record, "wells.0.melting.pour_at") and "wells.0.sink" not in figures(record)
    assert "wells.0.wax" in figures(record)


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("texts", [{"wells__0__wax__cup_temperature": "71 °C"}, {"wells__0__basis": "set", "wells__0__dye": "0.3 %"}])
def test_the_numbers_work_out_for_every_way_of_reading(how, texts):
    record = put(vessel(**CUP, **texts, wells__0__melting__pour_at="64.5 °C"), "wells.0.wax.blended", [BEESWAX])
    record["wells"].append({"fill": {"readings": [{"water": "150 g"}]}, "pot": "first"})
    without = put(vessel(**texts, wells__0__melting__pour_at="64.5 °C"), "wells.0.wax.blended", [BEESWAX])
    for each in (record, without):
        assert not understand(each, display_of(whole(how))).faults
        for figure in figures(each, **how).values():
            works_out(figure, how.get("decimal") == "comma")


def test_waxes_that_come_to_too_much_are_told_once():
    record = blended({**BEESWAX, "share": "70 %"}, {**BEESWAX, "share": "50 %"}, wells__0__burning={"cycles": [{"minutes": "4 h"}]})
    assert len(sheet(record)["faults"]) == 1


def test_a_blend_says_what_its_hot_densities_are_told_for():
    spread = told("density_poured", blended(BEESWAX))["working"]["spread"]
    assert "Soy wax for 80 °C, Beeswax for 98 °C" in spread
    assert told("density_poured", blended(BEESWAX, wells__0__melting__pour_at="70 °C"))["working"]["spread"] == ""
    assert told("density_set", blended(BEESWAX))["working"]["spread"] == ""
