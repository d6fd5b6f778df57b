"""Powder and water: by absolute volume, and by the maker's rule."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import figures, good_vessels, put, vessel

from brimbook.work_out import work_out

WATER = 0.9982067
PER_GRAM = 1 / 2.98 + 0.25 / WATER
CAVITY = 641.8251


def told(name, **texts):
    return figures(vessel(**texts))[f"casts.0.{name}"]


def test_the_usual_mold_by_hand():
    """642 mL and 10 %: 706 mL of mix; 0.586 mL of mix from a gram of powder."""
    shown = figures(vessel())
    assert shown["casts.0.mix_needed"]["value"] == pytest.approx(CAVITY * 1.1, abs=0.001)
    assert shown["casts.0.mix_per_gram"]["value"] == pytest.approx(PER_GRAM, rel=1e-6)
    assert (shown["casts.0.powder"]["says"], shown["casts.0.water"]["says"]) == ("Weigh 1205 g powder",
                                                                                 "Weigh 301 g water")
    assert shown["casts.0.bowl"]["shown"] == "1506 g"


@given(good_vessels())
def test_powder_water_and_air_fill_the_mix_needed(record):
    answer = work_out(record)
    value = answer.said.value
    powder, water = (answer.figures[f"casts.0.{name}"].value for name in ("powder", "water"))
    volume = (powder / value("casts.0.mix.powder.particle_density") + water / WATER) / (1 - value("casts.0.mix.air"))
    assert volume == pytest.approx(answer.figures["casts.0.mix_needed"].value, rel=1e-6)
    room = answer.rooms["casts.0.cavity"].volume
    assert volume == pytest.approx(room * value("casts.0.pieces") * (1 + value("casts.0.allowance")), rel=1e-6)


@given(st.integers(1, 5000), st.integers(0, 500))
def test_more_water_in_the_mold_never_asks_for_less_powder(grams, more):
    less, much = (told("powder", casts__0__cavity__readings__0__water=f"{water} g")["value"]
                  for water in (grams, grams + more))
    assert much >= less


def test_two_pieces_take_twice_as_much_and_twice_the_plus_minus():
    one, two = told("mix_needed"), told("mix_needed", casts__0__pieces="2")
    assert two["value"] == pytest.approx(2 * one["value"])
    assert (one["plus_minus"], two["plus_minus"]) == ("± 0.91 mL", "± 1.9 mL")
    assert told("rule_powder", casts__0__pieces="2")["value"] == pytest.approx(2 * told("rule_powder")["value"])


def test_the_rule_of_thumb_stands_beside_the_sum_with_its_allowance():
    figure = told("rule_allowance")
    assert "Your rule: 1203 g powder" in figure["says"] and "an allowance of 9.9 %" in figure["says"]
    assert figure["value"] == pytest.approx(1.88 * PER_GRAM / 1.002852 - 1, abs=1e-6)
    assert told("rule_powder")["value"] == pytest.approx(640 * 1.88)


def test_a_rule_that_falls_short_says_so():
    figure = told("rule_allowance", casts__0__mix__rule="1.5")
    assert figure["value"] < 0 and re.search(r"\d % less mix than fills the mold", figure["says"])


def test_the_allowance_in_a_rule_does_not_hang_on_pieces_or_allowance():
    shares = {told("rule_allowance", casts__0__pieces=pieces, casts__0__allowance=allowance)["shown"]
              for pieces in ("1", "7") for allowance in ("0 %", "25 %")}
    assert len(shares) == 1


def test_the_rule_of_thumb_is_marked_as_practice_until_another_is_typed():
    def standing(**texts):
        (constant,) = told("rule_powder", **texts)["working"]["constants"]
        return constant["standing"]

    assert (standing(), standing(casts__0__mix__rule="1.9")) == ("common practice", "your entry")
    assert standing(casts__0__mix__rule="") == "common practice"


@pytest.mark.parametrize("typed", ["2.98 g/mL", "2.98", "2.98 g/ml", " 2.98  g/mL "])
def test_a_density_keeps_its_source_however_it_is_spelled(typed):
    """The page sends the text as typed first and as kept afterwards: the source must not change between the two."""
    constants = told("mix_per_gram", casts__0__mix__powder__particle_density=typed)["working"]["constants"]
    assert constants[0]["standing"] == "published"


@pytest.mark.parametrize("typed", ["10 %", "10", "10%"])
def test_the_usual_allowance_is_practice_however_it_is_spelled(typed):
    assert told("mix_needed", casts__0__allowance=typed)["working"]["constants"][0]["standing"] == "common practice"


@pytest.mark.parametrize("name", ["pieces", "allowance", "mix.powder.particle_density", "mix.water_to_powder",
                                  "mix.air"])
def test_a_faulty_entry_leaves_the_mix_out_but_not_the_volume(name):
    shown = figures(put(vessel(), f"casts.0.{name}", "x"))
    assert "casts.0.cavity.volume" in shown
    of_the_mix = tuple(f"casts.0.{part}" for part in ("powder", "water", "mix", "bowl", "batch", "rule", "fresh"))
    assert not [key for key in shown if key.startswith(of_the_mix)]


def test_a_faulty_rule_leaves_only_the_rule_out():
    shown = figures(vessel(casts__0__mix__rule="x"))
    assert "casts.0.powder" in shown and "casts.0.rule_powder" not in shown


def test_four_to_one_and_a_quarter_are_the_same_mix():
    weights = {told("powder", casts__0__mix__water_to_powder=text)["shown"]
               for text in ("4:1", "0.25", "25 %", "1:4", "4 to 1")}
    assert weights == {"1205 g"}


@pytest.mark.parametrize(("parts", "words"), [("1:1:0.7", "0.7 makes it weak"), ("1:1:0.15", "0.15 may be too stiff"), ("1:1:0.3", "")])
def test_a_powder_with_sand_is_held_to_its_own_water_too(parts, words):
    record = put(vessel(casts__0__mix__parts=parts), "casts.0.mix.others.0.kind", "sand")
    told_of = " ".join(figures(record)["casts.0.powder"]["notes"])
    assert words in told_of and bool(told_of) == bool(words)


def test_a_plasticizer_lets_a_mix_be_drier_than_the_powder_alone():
    record = put(vessel(casts__0__mix__water_to_powder="0.18"), "casts.0.mix.others.0", {"kind": "plasticizer", "share": "1 %"})
    assert figures(record)["casts.0.powder"]["notes"] == []
    assert "too stiff" in told("powder", casts__0__mix__water_to_powder="0.18")["notes"][0]


def test_the_usual_rule_is_not_told_of_a_powder_that_it_is_not_for():
    plaster = {"casts__0__mix__powder": {"kind": "gypsum", "particle_density": "2.70"}, "casts__0__mix__water_to_powder": "0.70"}
    assert "casts.0.rule_powder" not in figures(vessel(**plaster))
    assert "casts.0.rule_powder" in figures(vessel(**plaster, casts__0__mix__rule="1.05"))
