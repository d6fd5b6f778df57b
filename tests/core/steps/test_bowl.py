"""The bowl: mixes, shortages, and what to do when something weighed came out different."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import bent_vessels, figures, good_vessels, notes, put, sheet, vessel

from brimbook.quantity.read import Bounds, read
from brimbook.work_out import work_out

WATER = 0.9982067
PER_GRAM = 1 / 2.98 + 0.25 / WATER
CAVITY = 641.8251
POWDER = CAVITY * 1.1 / PER_GRAM


def told(name, **texts):
    return figures(vessel(**texts))[f"casts.0.batch.{name}"]


def mortar(**texts):
    """Cement, sand and water 1:2:0.5, and 3 % of pigment."""
    record = vessel(casts__0__mix__parts="1:2:0.5", **texts)
    put(record, "casts.0.mix.others.0.kind", "sand")
    put(record, "casts.0.mix.others.1.kind", "red_oxide")
    put(put(record, "casts.0.mix.others.1.role", "pigment"), "casts.0.mix.others.1.share", "3 %")
    return record


def faults(record):
    return {fault.path for fault in work_out(record).said.faults}


def test_the_usual_mold_is_one_mix_with_a_quarter_of_the_water_held_back():
    assert told("mixes")["shown"] == "1 mix" and told("mixes")["says"] == "One mix, for 1 piece"
    assert (told("first_water")["shown"], told("held_back")["shown"]) == ("226 g", "75 g")
    assert told("first_water")["says"] == "Start with 226 g water"
    constant, = told("held_back")["working"]["constants"]
    assert constant["standing"] == "common practice"
    assert told("time_taken")["says"].startswith("A mix is poured 4 min after")


def test_nothing_held_back_tells_nothing():
    shown = figures(vessel(casts__0__held_back="0"))
    assert not [key for key in shown if key.endswith(("first_water", "held_back"))]


def test_the_bowl_governs_and_each_mix_is_weighed_out():
    record = vessel(casts__0__pieces="5", casts__0__batch__bowl="1500 mL")
    shown = figures(record)
    assert shown["casts.0.batch.mixes"]["says"] == "Mix 3 times: 2 times for 2 pieces, once for 1 piece"
    assert shown["casts.0.batch.mix_1.powder"]["says"] == "Weigh 2410 g powder for each of mixes 1 and 2"
    assert shown["casts.0.batch.mix_2.powder"]["says"] == "Weigh 1205 g powder for mix 3"
    assert "The bowl governs: it takes 1500 mL of mix." in notes(sheet(record))


def test_the_working_time_governs():
    record = vessel(casts__0__pieces="20")
    assert figures(record)["casts.0.batch.mixes"]["says"] == "Mix 2 times, each time for 10 pieces"
    assert any(note.startswith("The working time governs: in 15 min there is time for 12 pieces.") for note in notes(sheet(record)))


def test_the_molds_at_hand_govern():
    record = vessel(casts__0__pieces="4", casts__0__batch__molds="2")
    assert figures(record)["casts.0.batch.mixes"]["shown"] == "2 mixes"
    assert any("molds at hand govern" in note for note in notes(sheet(record)))


def test_a_piece_larger_than_the_bowl_is_mixed_in_equal_parts_and_warned_of():
    record = vessel(casts__0__pieces="2", casts__0__batch__bowl="400 mL")
    shown = figures(record)
    assert shown["casts.0.batch.mixes"]["says"] == "Mix 4 times, each time for 1 of the 2 parts of a piece"
    assert shown["casts.0.batch.mix_1.powder"]["value"] == pytest.approx(POWDER / 2, rel=1e-6)
    assert any("cold joint" in note for note in notes(sheet(record)))
    assert not any("cold joint" in note for note in notes(sheet(vessel())))


def test_a_mix_that_sets_before_it_is_poured_is_warned_of():
    record = vessel(casts__0__batch__mixing_time="15 min")
    assert any("longer than the mix stays workable" in note for note in notes(sheet(record)))
    assert figures(record)["casts.0.batch.by_time"]["says"] == "There is not time to pour one piece"


def test_a_powder_of_unknown_working_time_has_no_clock():
    record = vessel(casts__0__pieces="300", casts__0__mix__powder__kind="own")
    shown = figures(record)
    assert shown["casts.0.batch.mixes"]["shown"] == "1 mix"
    assert not [key for key in shown if key.endswith(("working_time", "by_time", "time_taken"))]


def test_a_warm_bench_halves_the_working_time():
    shown = figures(vessel(casts__0__curing__temperature="88 °F", casts__0__mix__powder__working_time="20 min"))
    assert shown["casts.0.batch.working_time"]["value"] == pytest.approx(10, rel=1e-6)
    cold = figures(vessel(casts__0__curing__temperature="-5 °C"))["casts.0.batch.working_time"]
    assert cold["value"] == pytest.approx(15 * 2 ** (25 * 1.8 / 20), rel=1e-6)
    assert {constant["standing"] for constant in cold["working"]["constants"]} == {"from memory", "published"}


@pytest.mark.parametrize("name", ["batch.bowl", "batch.molds", "batch.mixing_time", "batch.pouring_time"])
def test_a_faulty_entry_leaves_the_mixes_out_but_not_the_shortage(name):
    shown = figures(put(vessel(casts__0__left="900 g"), f"casts.0.{name}", "x"))
    assert "casts.0.batch.mixes" not in shown and "casts.0.batch.left_pieces" in shown and "casts.0.powder" in shown


def test_two_molds_from_one_bowl_are_mixed_in_whole_pieces():
    record = vessel(casts__0__pieces="2", casts__0__batch__bowl="900 mL")
    record["casts"].append({"bowl": "first", "pieces": "2", "cavity": {"readings": [{"water": "100 g"}]}})
    shown = figures(record)
    assert shown["casts.0.batch.mixes"]["says"] == "Mix 2 times, each time for 1 of mold 1 and 1 of mold 2"
    whole = shown["casts.0.powder"]["value"]
    assert shown["casts.0.batch.mix_1.powder"]["value"] == pytest.approx(whole / 2)


def test_many_different_mixes_are_counted_not_listed():
    record = vessel(casts__0__batch__bowl="300 mL")
    record["casts"] += [{"bowl": "first", "cavity": {"readings": [{"water": f"{400 + 300 * row} g"}]}} for row in range(9)]
    shown = figures(record)
    assert shown["casts.0.batch.mixes"]["says"].endswith("times: there are 10 different mixes")
    assert "casts.0.batch.mix_6.powder" in shown and "casts.0.batch.mix_7.powder" not in shown
    assert any("the first 6 are weighed out here" in note for note in notes(sheet(record)))


@given(good_vessels(), st.integers(100, 5000), st.integers(1, 30))
def test_the_mixes_together_are_the_whole_plan(record, bowl, molds):
    put(put(record, "casts.0.batch.bowl", f"{bowl} mL"), "casts.0.batch.molds", str(molds))
    answer = work_out(record)
    shown, counts = answer.figures, []
    if shown["casts.0.batch.mixes"].value == 1:
        return
    for row in (1, 2):
        found = re.search(r"each of mixes (\d+) (?:and|to) (\d+)", shown[f"casts.0.batch.mix_{row}.volume"].label
                          ) if f"casts.0.batch.mix_{row}.volume" in shown else None
        counts.append(int(found[2]) - int(found[1]) + 1 if found else 1)
    if "casts.0.batch.mix_2.volume" not in shown:
        counts = [shown["casts.0.batch.mixes"].value]
    total = sum(count * shown[f"casts.0.batch.mix_{row}.powder"].value for row, count in enumerate(counts, start=1))
    assert total == pytest.approx(shown["casts.0.powder"].value, rel=1e-6)


@pytest.mark.parametrize(("scooped", "words"), [
    ("1205 g", ["It fills the mold", "64.3 mL over", "10 %"]),
    ("1300 g", ["It fills the mold", "120 mL over"]),
    ("1095.2 g", ["just fills the mold"]),
    ("1094.2 g", ["just fills the mold"]),
    ("1000 g", ["does not fill the mold", "short by 55.8 mL", "more powder"]),
    ("1 g", ["does not fill the mold", "short by 641 mL"]),
])
def test_a_scoop_that_came_out_different(scooped, words):
    """1095.2 g is the cavity exactly; a gram less is within the ± of the scale."""
    for word in words:
        assert word in told("scooped.spare", casts__0__scooped=scooped)["says"]


def test_one_gram_short_on_a_fine_scale_is_short():
    figure = told("scooped.spare", casts__0__scooped="1094.2 g", casts__0__cavity__readability="0.1 g")
    assert "does not fill the mold" in figure["says"] and figure["value"] == pytest.approx(-PER_GRAM, abs=0.05)


@pytest.mark.parametrize("settings", [{}, {"readability": "5 g"}, {"mass": "oz"}, {"mass": "lb"},
                                      {"readability": "0.1 g"}], ids=str)
def test_scooping_at_least_what_is_said_fills_the_mold(settings):
    """“At least” is a promise: rounded up, never down."""
    for grams in (1000, 1001.3, 987.6, 1083, 1079.9, 505.2):
        figure = figures(vessel(casts__0__scooped=f"{grams} g"), **settings)["casts.0.batch.scooped.spare"]
        more = read(re.search(r"Scoop at least (.*) more", figure["says"])[1], "mass", Bounds(0, 1e6)).value
        assert grams + more >= CAVITY / PER_GRAM - 0.005, grams


def test_water_for_what_was_scooped():
    figure = told("scooped.water", casts__0__scooped="1120 g")
    assert figure["says"] == "Weigh 280 g water"
    assert told("scooped.mix", casts__0__scooped="1120 g")["value"] == pytest.approx(1120 * PER_GRAM, rel=1e-6)
    assert told("first_water", casts__0__scooped="1120 g")["shown"] == "210 g"


def test_nothing_scooped_tells_nothing():
    assert not [key for key in figures(vessel()) if "scooped" in key or "left" in key]


def test_too_much_water_takes_the_powder_with_it():
    shown = figures(vessel(casts__0__scooped_water="331.3 g"))
    assert shown["casts.0.batch.scooped.powder"]["value"] == pytest.approx(331.3 * 4)
    assert "casts.0.batch.scooped.water" not in shown and "casts.0.batch.first_water" not in shown


def test_too_little_water_is_filled_up():
    shown = figures(vessel(casts__0__scooped_water="281.19 g"))
    assert shown["casts.0.batch.scooped.water"]["says"] == "Add 20 g water to what is there"
    assert shown["casts.0.batch.scooped.powder"]["value"] == pytest.approx(POWDER, rel=1e-6)
    assert shown["casts.0.batch.scooped.factor"]["says"] == "The batch stays as planned"


def test_any_ingredient_takes_the_others_with_it():
    record = mortar()
    plan = figures(record)
    sand = plan["casts.0.mix.others.0.weigh"]["value"]
    shown = figures(put(record, "casts.0.mix.others.0.scooped", f"{sand * 1.05:.3f} g"))
    for name, key in (("powder", "powder"), ("others.1", "mix.others.1.weigh"), ("water", "water")):
        assert shown[f"casts.0.batch.scooped.{name}"]["value"] == pytest.approx(plan[f"casts.0.{key}"]["value"] * 1.05, rel=1e-4)
    assert "others.0" not in [key.removeprefix("casts.0.batch.scooped.") for key in shown]


def test_of_several_the_largest_rules_and_the_others_are_filled_up():
    record = mortar()
    plan = figures(record)
    sand, powder = plan["casts.0.mix.others.0.weigh"]["value"], plan["casts.0.powder"]["value"]
    put(record, "casts.0.mix.others.0.scooped", f"{sand * 1.04:.3f} g")
    shown = figures(put(record, "casts.0.scooped", f"{powder * 1.01:.3f} g"))
    assert shown["casts.0.batch.scooped.powder"]["says"].startswith("Add ")
    assert shown["casts.0.batch.scooped.powder"]["value"] == pytest.approx(powder * 0.03, rel=1e-3)
    assert "nothing can be taken out of a bowl" in shown["casts.0.batch.scooped.factor"]["says"]


def test_what_is_scooped_of_several_mixes_is_that_of_the_first():
    record = vessel(casts__0__pieces="4", casts__0__batch__bowl="1500 mL", casts__0__scooped="2000 g")
    shown = figures(record)
    assert shown["casts.0.batch.scooped.factor"]["value"] == pytest.approx(2000 / (2 * POWDER), rel=1e-6)
    assert "short by 112 mL" in shown["casts.0.batch.scooped.spare"]["says"]
    assert "makes 1 piece" in shown["casts.0.batch.scooped.spare"]["says"]
    assert any("compared with the first" in note for note in notes(sheet(record)))


def test_what_none_is_planned_of_is_a_fault():
    record = put(mortar(), "casts.0.mix.others.1.share", "0 %")
    put(record, "casts.0.mix.others.1.scooped", "12 g")
    assert faults(record) == {"casts.0.mix.others.1.scooped"}
    assert not [key for key in figures(record) if "scooped" in key]


@pytest.mark.parametrize(("left", "pieces", "words"), [
    ("12 kg", 9, ["12000 g of powder makes 9 pieces; 1 is planned"]), ("1205 g", 1, ["makes 1 piece;"]),
    ("2409.6 g", 2, ["makes 2 pieces"]), ("1204 g", 0, ["Short of powder: 1204 g of the 1205 g", "0 of 1 piece"]),
    ("602 g", 0, ["49 % of one"]),
])
def test_what_is_left_in_the_bag(left, pieces, words):
    figure = told("left_pieces", casts__0__left=left)
    assert int(figure["value"] + 1e-9) == pieces
    for word in words:
        assert word in figure["says"]


def test_a_shortage_tells_what_to_weigh_for_what_there_is():
    shown = figures(vessel(casts__0__pieces="4", casts__0__left="2500 g"))
    assert shown["casts.0.batch.left_pieces"]["says"] == (
        "Short of powder: 2500 g of the 4819 g. What there is makes 2 of 4 pieces")
    assert shown["casts.0.batch.left_pieces"]["shown"] == "2 of 4 pieces"
    assert shown["casts.0.batch.left.powder"]["says"] == "Weigh 2410 g powder for 2 pieces"
    assert shown["casts.0.batch.left.water"]["value"] == pytest.approx(2 * POWDER / 4, rel=1e-6)


def test_the_scarcest_ingredient_governs_and_the_others_are_told():
    record = mortar(casts__0__pieces="4", casts__0__left="1000 g")
    put(record, "casts.0.mix.others.0.left", "300 g")
    says = figures(record)["casts.0.batch.left_pieces"]["says"]
    assert says.startswith("Short of silica sand: 300 g of the ")
    assert any(note.startswith("Short of powder too: 1000 g of the ") for note in notes(sheet(record)))


def test_sets_of_two_molds_are_made_whole():
    record = vessel(casts__0__pieces="2", casts__0__left="1900 g")
    record["casts"].append({"bowl": "first", "pieces": "2", "cavity": {"readings": [{"water": "100 g"}]}})
    assert "makes 3 of 4 pieces, 1 of mold 1 and 2 of mold 2" in figures(record)["casts.0.batch.left_pieces"]["says"]


def test_almost_a_piece_is_not_called_all_of_one():
    assert "100 %" not in told("left_pieces", casts__0__left="1204 g")["says"]


def test_just_enough_for_the_pieces_wanted_makes_those_pieces():
    """The powder weighed out for so many pieces is what is left: it makes so many."""
    for pieces in (1, 2, 3, 7, 12):
        grams = figures(vessel(casts__0__pieces=str(pieces)))["casts.0.powder"]["value"]
        figure = told("left_pieces", casts__0__left=f"{grams + 0.001:.3f} g", casts__0__pieces=str(pieces))
        assert f"makes {pieces} piece" in figure["says"]


@given(bent_vessels())
def test_a_bent_record_bends_nothing(record):
    for key, figure in figures(record).items():
        assert ".batch." not in key or figure["shown"]


def test_plaster_is_sifted_into_all_of_its_water_unless_the_maker_holds_some_back():
    plaster = {"casts__0__mix__powder": {"kind": "gypsum", "particle_density": "2.70"}, "casts__0__mix__water_to_powder": "0.70"}
    assert not any("held_back" in key or "first_water" in key for key in figures(vessel(**plaster)))
    assert "casts.0.batch.held_back" in figures(vessel(**plaster, casts__0__held_back="10 %"))


@pytest.mark.parametrize(("grams", "far"), [("12 kg", True), ("130 g", True), ("1300 g", False), ("900 g", False)])
def test_a_scoop_far_off_its_plan_asks_for_its_digits(grams, far):
    assert ("Check its digits" in " ".join(told("scooped.factor", casts__0__scooped=grams)["notes"])) == far


def test_a_scoop_that_no_longer_fits_the_bowl_is_told():
    fits = told("scooped.mix", casts__0__scooped="1300 g", casts__0__batch__bowl="800 mL")
    assert fits["notes"] == []
    over = told("scooped.mix", casts__0__scooped="1500 g", casts__0__batch__bowl="800 mL")
    assert over["notes"] == ["What you weighed makes 879 mL of mix, and your bowl takes 800 mL: take a larger one."]


def test_a_part_of_a_piece_fills_its_part_of_the_mold():
    says = told("scooped.spare", casts__0__batch__bowl="300 mL", casts__0__scooped="420 g")["says"]
    assert says.startswith("It fills its part of the mold")


def test_the_step_of_the_scale_counts_against_all_that_is_weighed():
    """A few grams that are added, or held back, are no more coarse than the whole they belong to."""
    added = told("scooped.water", casts__0__scooped="1300 g", casts__0__scooped_water="310 g")
    assert added["says"] == "Add 15 g water to what is there" and added["notes"] == []
    assert told("held_back", casts__0__scooped="130 g")["notes"] == []


def test_a_shortage_says_what_would_do_with_less_over():
    """1200 g is five short of what fills the mold and leaves a tenth over; scooped, it fills the mold."""
    note, = told("left_pieces", casts__0__left="1200 g")["notes"]
    assert note == "It would fill 1 piece with 9.6 % for the bowl and the tools, instead of 10 %."
    assert told("left_pieces", casts__0__left="1000 g")["notes"] == []
    assert told("left_pieces", casts__0__left="12 kg")["notes"] == []


def test_a_bowl_that_nobody_typed_does_not_govern():
    """One piece and very many in one bowl: alone, neither the bowl nor the time makes more mixes than the other."""
    record = put(vessel(casts__0__batch__pouring_time="1 s"), "casts.1", {**vessel()["casts"][0], "bowl": "first", "pieces": "200"})
    told = notes(sheet(record))
    assert any("The working time governs" in note for note in told) and not any("The bowl governs" in note for note in told)
