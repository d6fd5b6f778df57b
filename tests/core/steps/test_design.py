"""The design: what a mold and a well take of it, its weights, the wax from above, what is wrong with it."""

import math

import pytest
from arithmetic import works_out
from designs import SHAPES, designed_vessel
from vessels import DISPLAYS, fields, figures, full_vessel, put, sheet, vessel

from brimbook.mesh.curve import area_at, volume_at
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.design import design_of, levels
from brimbook.work_out import work_out


def test_a_straight_round_vessel_by_hand():
    found = work_out(designed_vessel()).figures
    assert found["design.0.room"].value == pytest.approx(math.pi * 34**2 * 57 / 1000)
    assert found["design.0.cast"].value == pytest.approx(math.pi * (40**2 * 75 - 34**2 * 67) / 1000)
    assert found["casts.0.cavity.volume"].value == found["design.0.cast"].value
    assert found["wells.0.fill.volume"].value == found["design.0.room"].value
    assert found["design.0.wet"].value == pytest.approx((math.pi * 68 * 57 + math.pi * 34**2) / 100)
    faces, shrunk, line = found["design.0.wet"].value * 0.1 / 10, 0.009 * found["design.0.room"].value, math.pi * 34**2 * 0.5 / 1000
    assert found["wells.0.fill.volume"].plus_minus == pytest.approx(math.hypot(faces, shrunk, line))
    assert found["casts.0.cavity.volume"].plus_minus == pytest.approx(
        math.hypot(found["design.0.skin"].value * 0.1 / 10, 0.009 * found["design.0.cast"].value))


def test_weights_are_those_of_mix_and_blend():
    found = work_out(designed_vessel()).figures
    assert found["design.0.weight"].value == pytest.approx(found["design.0.cast"].value * found["casts.0.fresh_density"].value)
    assert found["design.0.filling"].value == pytest.approx(found["wells.0.wax"].value * 1.06)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_numbers_of_a_design_work_out(shape, how):
    record = designed_vessel(shape, lean="3", sizes="inside" if shape in ("oval", "polygon") else "outside")
    put(record, "wells.0.want", "110 g")
    shown = figures(record, **how)
    assert {"design.0.cast", "design.0.room", "wells.0.fill.volume", "wells.0.target.volume"} <= set(shown)
    for key, figure in shown.items():
        if key.startswith(("design.", "casts.0.cavity", "wells.0.fill", "wells.0.target")):
            works_out(figure, how.get("decimal") == "comma")


@pytest.mark.parametrize("shape", SHAPES)
def test_the_fill_curve_ends_at_the_room_and_has_its_areas(shape):
    found = design_of(understand(designed_vessel(shape, lean="4"), Display()))
    curve = levels(found.body.room, found.body.height)
    assert volume_at(curve, found.line) / 1000 == pytest.approx(found.room, rel=1e-9)
    for share in (0.1, 0.5, 0.9):
        height = found.body.room.low + share * (found.body.height - found.body.room.low)
        assert area_at(curve, height) == pytest.approx(found.body.room.area(height), rel=1e-9)


@pytest.mark.parametrize("shape", SHAPES)
def test_the_wax_from_above_is_that_of_the_design_at_its_line(shape):
    answer = work_out(designed_vessel(shape, lean="3"))
    found = design_of(answer.said)
    assert answer.figures["wells.0.wicks.area"].value * 100 == pytest.approx(found.body.room.area(found.line), rel=1e-3)


def test_the_wicks_card_tells_the_size_that_stands_in():
    shown = fields(sheet(designed_vessel("rectangle")))
    assert "68 mm" in shown["wells.0.outline.across"]["note"] and "48 mm" in shown["wells.0.outline.other"]["note"]
    assert shown["wells.0.outline.shape"]["value"] == "rectangle"


@pytest.mark.parametrize(("shape", "name", "text", "word"), [
    ("round", "wall_thickness", "50 mm", "no room for wax"), ("round", "floor_thickness", "80 mm", "no room for wax"),
    ("round", "line", "70 mm", "67 mm deep"), ("round", "lean", "45", "meets itself"), ("rectangle", "corner", "40 mm", "rounder"),
    ("bowl", "height", "60 mm", "bulge"), ("path", "path", "0 0, 80 0", "three corners"),
])
def test_what_is_wrong_is_told_once_beside_its_field(shape, name, text, word):
    page = sheet(designed_vessel(shape, **{name: text}))
    assert word in fields(page)[f"design.0.{name}"]["fault"]
    assert len(page["faults"]) == 1
    assert not [card for card in page["cards"] if card["id"] == "design"][0]["large"]


@pytest.mark.parametrize("missing", ["across", "height"])
def test_without_a_size_there_is_no_figure_and_no_fault(missing):
    page = sheet(designed_vessel(**{missing: ""}))
    assert page["faults"] == [] and not any(figure["key"].startswith("design.") for card in page["cards"] for figure in card["figures"])


def test_notes_tell_of_thin_walls_upright_ones_and_what_does_not_come_out():
    def notes(record):
        return " ".join(work_out(record).figures["design.0.cast"].notes)

    assert "grips" in notes(designed_vessel()) and "grips" not in notes(designed_vessel(lean="2"))
    assert "hard to fill" in notes(designed_vessel(wall_thickness="4 mm"))
    assert "won't come out" in notes(designed_vessel("tapered", bottom="90 mm"))


@pytest.mark.parametrize(("line", "told"), [("0 mm", "at the brim"), ("2 mm", "only 2 mm below"), ("10 mm", "")])
def test_wax_near_the_brim_is_told(line, told):
    found = work_out(designed_vessel(line=line)).figures
    notes = " ".join(found["design.0.cast"].notes)
    assert told in notes and ("runs over" in notes) == bool(told)
    assert ("below the brim" in found["design.0.room"].says) == (line != "0 mm")


def test_the_outline_of_the_wax_is_told_to_be_that_of_the_design():
    assert work_out(designed_vessel()).figures["wells.0.wicks.area"].notes == ("The size is that of the design at its line.",)


def test_a_faulty_line_leaves_no_volume_with_too_small_a_plus_minus():
    assert "wells.0.fill" not in work_out(put(designed_vessel(), "wells.0.fill.line_error", "wide")).rooms


def test_a_vessel_without_a_design_has_no_figure_of_one():
    assert not any(key.startswith("design") for key in work_out(vessel()).figures)
    assert "design.0.cast" in work_out(full_vessel()).figures
