"""Every figure shows its working: the numbers, worked out again by hand, come to what is told."""

import pytest
from arithmetic import split, work_out, works_out
from hypothesis import given, settings
from vessels import DISPLAYS, bent_vessels, figures, full_vessel, good_vessels, put, vessel

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.record import blank

STANDINGS = {"published", "second hand", "reference library", "common practice", "from memory", "your entry"}
UNITS = {"–": "%", "mL/g": "mL", "pieces": ""}


def check(record, **how):
    """Each figure's numbers come to what stands behind them, in the figure's own unit, and to its value."""
    for key, figure in figures(record, **how).items():
        told, off, unit = works_out(figure, how.get("decimal") == "comma")
        assert unit.startswith(UNITS.get(figure["unit"], figure["unit"])), f"{key}: {unit}"
        value = figure["value"] * (100 if figure["unit"] == "–" else 1)
        assert abs(value - told) <= off, f"{key}: {told}, value {value}"


@pytest.mark.parametrize("record", [*blank.demos(), vessel(), full_vessel()],
                         ids=lambda record: record["name"] or "usual")
@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_numbers_of_the_demos_work_out(record, how):
    check(record, **how)


@given(good_vessels())
@settings(max_examples=100)
def test_the_numbers_of_any_vessel_work_out(record):
    check(record, decimal="point")


@given(good_vessels())
def test_the_numbers_work_out_for_those_who_weigh_in_ounces(record):
    check(record, mass="lb", decimal="comma")


@pytest.mark.parametrize(("path", "text"), [
    ("casts.0.scooped", "1120 g"), ("casts.0.scooped", "900 g"), ("casts.0.left", "3 kg"), ("wells.0.basis", "set"),
    ("wells.0.fragrance.basis", "blend"), ("wells.0.dye", "0.123 %"), ("casts.0.pieces", "1234"),
    ("casts.0.allowance", "12.345 %"),
    ("casts.0.mix.air", "1.2345 %"), ("wells.0.fragrance.load", "0 %"), ("wells.0.fragrance.load", "1 1/3 oz/lb"),
    ("casts.0.mix.water_to_powder", "3:1"), ("casts.0.mix.powder.particle_density", "2.98765 g/mL"),
    ("casts.0.cavity.readings.0.water", "99.9876 kg"), ("casts.0.cavity.readings.0.water", "0.0123 g"),
    ("casts.0.cavity.readings.0.water", "12345.678 g"), ("casts.0.cavity.readings.0.water", "1 lb 3 7/16 oz"),
])
def test_the_numbers_work_out_for_uncommon_entries(path, text):
    check(put(vessel(), path, text), decimal="point")


def test_the_numbers_of_close_readings_on_a_fine_scale_work_out():
    record = vessel(casts__0__cavity__readability="0.01 g")
    for row, text in enumerate(["12345.67 g", "12345.68 g", "12345.71 g"]):
        put(record, f"casts.0.cavity.readings.{row}.water", text)
    check(record, readability="0.01 g")


@given(bent_vessels())
def test_every_figure_is_told_in_full(record):
    for key, figure in figures(record).items():
        assert figure["key"] == key and figure["label"] and figure["shown"] and figure["says"]
        assert figure["plus_minus"] == "" or figure["plus_minus"].startswith("± ")
        assert figure["working"]["formula"]
        for constant in figure["working"]["constants"]:
            assert constant["name"] and constant["shown"] and constant["source"] and constant["standing"] in STANDINGS


def test_the_checker_itself_notices_a_wrong_sum():
    assert split("640 × 1.00285 = 642 mL")[1:] == (642, 0.5, "mL")
    assert split("1204.751 × 0.25 = 301.19 g ≈ 10.60 oz")[1:] == (301.19, pytest.approx(0.005), "g")
    assert work_out("√((3 − 1)² + (2 + 0)²) ÷ π × 2") == pytest.approx(8**0.5 / 3.14159265 * 2)
    for wrong in ("2 × 3 = 7 g", "__import__('os') = 7 g"):
        with pytest.raises(AssertionError):
            works_out({"key": "k", "working": {"numbers": wrong}})


def test_a_figure_as_plain_data():
    figure = Figure("k", "Powder", 1203.2, "g", "1203 g", "a × b", "640 × 1.88", worked="1203.2 g", plus_minus=6.0,
                    plus_minus_shown="± 6 g", constants=(Constant("Rule", "1.88 g", sources.PRACTICE),), uses=("w",))
    plain = figure.to_plain()
    assert plain["says"] == "Powder: 1203 g"
    assert plain["working"]["numbers"] == "640 × 1.88 = 1203.2 g ≈ 1203 g"
    assert plain["working"]["constants"] == [
        {"name": "Rule", "shown": "1.88 g", "source": "common practice, no source", "standing": "common practice"}]
    assert Figure("k", "x", 1.0, "g", "1 g", "a", "1", worked="1 g").to_plain()["working"]["numbers"] == "1 = 1 g"
