"""The pours that bring set wax to the line."""

import pytest
from hypothesis import given, settings
from vessels import figures, good_vessels, put, sheet, vessel

from brimbook.work_out import work_out

PARAFFIN = {"wells__0__basis": "set", "wells__0__wax__density_poured": "0.77", "wells__0__wax__density_set": "0.90",
            "wells__0__fragrance__load": "0"}
ROOM = 300.8555  # 300 g of water at 20 °C


def found(**texts):
    return {key.removeprefix("wells.0."): figure for key, figure in figures(vessel(**texts)).items() if key.startswith("wells.0.")}


def test_the_pours_by_hand():
    """Soy with 6 %: 300.86 mL × 0.86687 = 260.8 g hot; 6.2 % of that again; 300.86 × 0.062² = 1.2 mL are missing."""
    told = found(wells__0__basis="set")
    assert (told["first_pour"]["shown"], told["second_pour"]["shown"], told["missing"]["shown"]) == ("261 g", "16 g", "1.2 mL")
    assert "third_pour" not in told and "top it up with what is left" in told["missing"]["says"]


def test_wax_that_shrinks_much_asks_for_a_third_pour():
    told = found(**PARAFFIN)
    share = 1 - 0.77 / 0.90
    assert told["third_pour"]["value"] == pytest.approx(ROOM * 0.77 * share**2, rel=1e-6)
    assert told["missing"]["value"] == pytest.approx(ROOM * share**3, rel=1e-6)


@given(good_vessels())
@settings(max_examples=60)
def test_pours_and_what_is_missing_are_all_that_goes_in(record):
    """What is left of all the wax after the pours is as much as fills what is missing, set."""
    put(record, "wells.0.basis", "set")
    answer = work_out(record)
    told = {key.removeprefix("wells.0."): figure for key, figure in answer.figures.items()}
    if "missing" not in told:
        return
    filled = answer.fills["wells.0"]
    pours = sum(told[name].value for name in ("first_pour", "second_pour", "third_pour") if name in told)
    assert filled.total - pours == pytest.approx(told["missing"].value * told["blend_set"].value, rel=1e-6, abs=1e-6)
    assert filled.top_up == pytest.approx(filled.total - told["first_pour"].value, rel=1e-9)


@given(good_vessels())
@settings(max_examples=60)
def test_a_set_line_holds_what_its_weight_says(record):
    put(record, "wells.0.basis", "set")
    answer = work_out(record)
    if "wells.0.blend_set" in answer.figures:
        volume = answer.fills["wells.0"].total / answer.figures["wells.0.blend_set"].value
        assert volume == pytest.approx(answer.rooms["wells.0.fill"].volume, rel=1e-9)


def test_a_hot_line_tells_what_a_top_up_takes_and_keeps_it_out_of_the_pot():
    told = found()
    assert told["top_up"]["value"] == pytest.approx(told["sink"]["value"] * told["blend_poured"]["value"])
    assert work_out(vessel()).fills["wells.0"].top_up == 0.0 and told["pot"]["shown"] == "261 g"
    assert "first_pour" not in told


def test_what_does_not_shrink_is_poured_once():
    told = found(wells__0__wax__density_set="0.86", wells__0__basis="set")
    assert told["sink"]["value"] == pytest.approx(0, abs=1e-9) and "first_pour" not in told and "missing" not in told
    assert "top_up" not in found(wells__0__wax__density_set="0.86")


def test_hot_wax_of_unknown_density_has_no_pours():
    told = found(wells__0__wax__density_poured="", wells__0__basis="set")
    assert told["wax"]["shown"] and "first_pour" not in told and "sink" not in told


def test_the_top_up_of_a_hot_line_is_never_told_as_kept_back():
    """All of the pot comes to the line hot: keeping some back would leave it short."""
    says = found()["sink"]["says"]
    assert "not in the pot" in says and "keep" not in says


def test_a_coarse_scale_is_told_in_words_that_can_be_read():
    record = put(vessel(wells__0__basis="set"), "wells.0.fill.readings.0.water", "9 g")
    notes = [note for figure in figures(record).values() for note in figure["working"].get("notes", ())]
    notes += [note for card in sheet(record)["cards"] for note in card["notes"]]
    coarse = [note for note in notes if "ne step of your scale" in note]
    assert coarse and not any(words in note for note in coarse for words in ("this first", "this more", "this for", "this needed"))
