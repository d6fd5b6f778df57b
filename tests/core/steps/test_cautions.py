"""Cautions stand where a thing can hurt, say what to do, and who has the last word."""

import re

import pytest
from vessels import sheet, vessel

from brimbook.steps import cautions
from brimbook.steps.cautions import Caution

EVERY = [value for value in vars(cautions).values() if isinstance(value, Caution)]


@pytest.mark.parametrize("caution", EVERY, ids=lambda caution: caution.title)
def test_a_caution_has_a_title_what_to_do_and_its_source(caution):
    assert caution.title[0].isupper() and caution.title[-1] != "."
    assert caution.sentence.endswith(".") and len(caution.sentence) > 60
    assert re.search(r"common practice, no source|second hand|published|named, not quoted", caution.source)


def on(card, **texts):
    return {each["title"] for each in next(page for page in sheet(vessel(**texts))["cards"]
                                           if page["id"] == card)["cautions"]}


def test_every_caution_stands_on_some_card():
    shown = set().union(*(on(card) for card in ("mold", "mix", "cure", "dry", "finish", "well", "wax", "melting", "burning", "holder", "scent", "wicks", "pot")))
    assert {caution.title for caution in EVERY} <= shown


def test_dust_and_lye_stand_where_powder_is_weighed():
    assert {"Powder dust harms the lungs", "Wet mix burns skin and eyes", "It heats as it sets"} <= on("mix")


def test_an_unsealed_vessel_is_warned_of_and_a_sealed_one_is_not():
    assert cautions.POROUS_VESSEL.title in on("well")
    assert cautions.POROUS_VESSEL.title not in on("well", wells__0__sealed="yes")
    assert cautions.DAMP_VESSEL.title in on("well", wells__0__sealed="yes")


def test_an_answer_that_can_t_be_read_is_taken_for_the_more_careful_one():
    assert cautions.POROUS_VESSEL.title in on("well", wells__0__sealed="perhaps")


def test_burning_wax_is_never_put_out_with_water():
    assert "never water" in cautions.HOT_WAX.sentence and "never leave it" in cautions.HOT_WAX.sentence
