"""What to weigh out, as the maker's scale can show it."""

import re

import pytest
from hypothesis import given
from vessels import DISPLAYS, figures, good_vessels, notes, put, sheet, vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.weighing import sum_as_weighed, weigh_out

SAID = understand({}, Display())


def powder(grams, said=SAID, relative=None):
    return weigh_out(said, "p", "Powder", "powder", grams, relative, formula="a", numbers="1")


def test_a_weight_is_told_as_an_order():
    assert powder(1203.4).says == "Weigh 1203 g powder" and powder(1203.4).shown == "1203 g"


@pytest.mark.parametrize(("grams", "word"), [(0.4, "can't weigh this powder"), (10, "10 % of this powder"), (21, None),
                                             (1203, None), (0, None)])
def test_an_amount_too_fine_for_the_scale_is_noted(grams, word):
    (note,) = powder(grams).notes or ("",)
    assert (word in note) if word else note == ""


def test_a_finer_scale_takes_the_note_away():
    assert powder(10, understand({}, Display(readability=0.1))).notes == ()


def test_too_little_fragrance_is_noted_on_the_wax_card():
    record = vessel(wells__0__fragrance__load="0.1 %")
    (wax,) = (card for card in sheet(record)["cards"] if card["id"] == "wax")
    assert any("can't weigh this fragrance" in note for note in wax["notes"])
    assert not any("this wax" in note for note in wax["notes"])


def test_a_plus_minus_finer_than_the_scale_is_left_out():
    assert powder(1203.4, relative=0.0001).plus_minus_shown == ""
    assert powder(1203.4, relative=0.01).plus_minus_shown == "± 13 g"


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_a_plus_minus_is_in_the_unit_of_its_weight(settings):
    record = vessel(casts__0__cavity__opening_across="90 mm")
    for key in ("casts.0.powder", "casts.0.mix_needed", "casts.0.cavity.volume"):
        figure = figures(record, **settings)[key]
        unit = re.sub(r" \(.*\)", "", figure["shown"]).rsplit(" ", 1)[1]
        assert figure["plus_minus"].endswith(f" {unit}")


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_the_bowl_is_the_sum_of_what_is_shown(settings):
    shown = figures(vessel(), **settings)

    def base(key):
        text = shown[key]["shown"].replace(",", ".")
        pounds, _, rest = text.rpartition(" lb ")
        return float(pounds or 0) * 16 + float(rest.split()[0])

    assert base("casts.0.bowl") == pytest.approx(base("casts.0.powder") + base("casts.0.water"), abs=1e-6)
    assert base("wells.0.pot") == pytest.approx(base("wells.0.wax") + base("wells.0.fragrance"), abs=1e-6)


def test_a_sum_of_nothing_much():
    total = sum_as_weighed(SAID, "s", "In the bowl", [powder(0.0), powder(12.0)])
    assert (total.value, total.shown, total.uses) == (12.0, "12 g", ("p", "p"))


@given(good_vessels())
def test_every_weight_to_weigh_is_told_in_its_own_sentence(record):
    for key, figure in figures(record).items():
        if key.split(".")[-1] in ("powder", "water", "wax", "fragrance", "dye") and key.count(".") == 2:
            assert figure["says"] == f"Weigh {figure['shown']} {key.split('.')[-1]}"


def test_a_weight_of_dye_is_weighed_too():
    record = put(vessel(), "wells.0.dye", "0.5 %")
    assert figures(record)["wells.0.dye"]["value"] == pytest.approx(figures(record)["wells.0.wax"]["value"] * 0.005)
    assert any("this dye" in note for note in notes(sheet(record)))
