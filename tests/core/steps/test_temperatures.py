"""The temperatures of a pot: the maker's own, else those common for its wax."""

import pytest
from vessels import vessel

from brimbook.quantity.moments import DAY, read_moment
from brimbook.quantity.show import Display
from brimbook.record.leaves.melting import HOT, READ
from brimbook.record.said import understand, understand_text
from brimbook.record.fields import leaf_at
from brimbook.steps.temperatures import (
    melt_at, melts, pour_at, rest, rest_stands_in, rested_at, scent_at, second_at, temperature_constant, window)

NAMES = ("melt_at", "scent_at", "pour_at", "second_at")
KINDS = ("soy", "paraffin", "beeswax", "own", "", "no such wax")
# Flash points of palmitic and stearic acid in a reference library, and the lowest told for paraffin and beeswax [°C].
FLASH = (192.0, 195.9, 199.0, 204.4)


def said(**texts):
    return understand(vessel(**{f"wells__0__{path}": text for path, text in texts.items()}), Display())


@pytest.mark.parametrize("kind", KINDS)
def test_what_stands_in_makes_sense(kind):
    known = said(wax__kind=kind)
    hot, scented, pours, second = (each(known, "wells.0") for each in (melt_at, scent_at, pour_at, second_at))
    assert hot >= scented >= pours and pours < second <= hot <= 100
    for name in NAMES:
        common = window(known, "wells.0", name)
        assert common.low <= common.usual <= common.high <= HOT.most
    span = melts(known, "wells.0")
    assert span is None or span[0] <= span[1] < pours


def test_the_maker_s_own_comes_first():
    own = said(melting__pour_at="58 °C", melting__melt_at="172 °F")
    assert pour_at(own, "wells.0") == 58 and melt_at(own, "wells.0") == pytest.approx(77.7778, abs=1e-3)
    assert scent_at(own, "wells.0") == 75 and second_at(own, "wells.0") == 65


@pytest.mark.parametrize("text", ["hot", "121 °C", "29 °C", "250 °F", "1e9"])
def test_a_faulty_one_is_no_temperature(text):
    faulty = said(melting__pour_at=text)
    assert pour_at(faulty, "wells.0") is None and temperature_constant(faulty, "wells.0", "pour_at", "Pour") is None
    assert faulty.fault_at("wells.0.melting.pour_at").endswith(".")


def test_no_wax_is_taken_near_its_flash_point():
    assert HOT.most == READ.most == 120 and all(flash - HOT.most >= 70 for flash in FLASH)


def test_where_a_temperature_comes_from():
    constant = temperature_constant(said(), "wells.0", "pour_at", "Pour")
    assert (constant.shown, constant.source.standing) == ("60 °C", "common practice")
    assert temperature_constant(said(melting__pour_at="60"), "wells.0", "pour_at", "Pour").source.standing == "common practice"
    assert temperature_constant(said(melting__pour_at="61"), "wells.0", "pour_at", "Pour").source.standing == "your entry"


def test_a_window_is_told_in_the_maker_s_unit():
    common = window(said(), "wells.0", "pour_at")
    assert common.shown(Display()) == "55 °C to 65 °C" and common.shown(Display(temperature="F")) == "131 °F to 149 °F"


def test_where_it_melts():
    assert melts(said(), "wells.0")[:2] == (49, 57) and melts(said(), "wells.0")[2].standing == "published"
    assert melts(said(melting__melts_at="52 °C"), "wells.0")[:2] == (52, 52)
    assert melts(said(wax__kind="own"), "wells.0") is None


@pytest.mark.parametrize(("kind", "days"), [("soy", 14), ("paraffin", 2), ("beeswax", 14), ("own", 14)])
def test_it_rests_as_long_as_its_wax_does(kind, days):
    known = said(wax__kind=kind)
    assert rest(known, "wells.0") == days * DAY
    assert understand_text(leaf_at("wells.0.melting.rest"), rest_stands_in(known, "wells.0"), Display())[0] == days * DAY
    assert rested_at(known, "wells.0") is None


@pytest.mark.parametrize(("poured", "ready"), [
    ("2028-02-16T09:30", "2028-03-01T09:30"), ("2027-02-16T09:30", "2027-03-02T09:30"), ("2026-12-20T23:59", "2027-01-03T23:59")])
def test_fourteen_days_later(poured, ready):
    assert rested_at(said(melting__poured=poured), "wells.0") == read_moment(ready)


def test_a_rest_of_one_s_own():
    poured = "2026-09-12T10:00"
    assert rested_at(said(melting__poured=poured, melting__rest="7"), "wells.0") == read_moment("2026-09-19T10:00")
    assert rested_at(said(melting__poured=poured, melting__rest="long"), "wells.0") is None
    assert rested_at(said(melting__poured="yesterday"), "wells.0") is None
