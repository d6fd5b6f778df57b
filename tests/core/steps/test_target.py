"""A wanted weight: taking what is offered gives it."""

import math
import re

import pytest
from designs import SHAPES, designed_vessel
from vessel_models import cup, cup_vessel, plug, read_into
from vessels import put, sheet, vessel

from brimbook.steps.target_way import factor_for
from brimbook.work_out import work_out


def filled(record):
    """Wax, fragrance and dye that go into the first well."""
    return work_out(record).fills["wells.0"].total


def ways(record):
    return {way.what: way.sets for way in work_out(record).targets["wells.0"].ways}


def taken(record, sets):
    for path, text in sets.items():
        put(record, path, text)
    return record


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("inside", ["outside", "inside"])
@pytest.mark.parametrize("what", ["The line", "The height", "All sizes, but wall and floor"])
def test_taking_a_row_of_a_design_gives_the_weight(shape, inside, what):
    usual = filled(designed_vessel(shape, lean="2", sizes=inside))
    record = put(designed_vessel(shape, lean="2", sizes=inside), "wells.0.want", f"{usual * 1.03:.1f} g")
    sets = ways(record).get(what)
    if sets is None:
        # So much higher a bowl would bulge.
        assert shape == "bowl" and what == "The height"
        return
    assert filled(taken(record, sets)) == pytest.approx(usual * 1.03, rel=1e-3)


def test_wall_and_floor_stay():
    sets = ways(put(designed_vessel("tapered"), "wells.0.want", "300 g"))
    assert set(sets["All sizes, but wall and floor"]) == {"design.0.across", "design.0.bottom", "design.0.height"}


def test_the_wax_alone_or_all_that_is_filled_in():
    record = put(designed_vessel(), "wells.0.want", "150 g")
    all_of_it = work_out(record).figures["wells.0.target.volume"].value
    alone = work_out(put(record, "wells.0.want_of", "wax")).figures["wells.0.target.volume"].value
    assert alone == pytest.approx(all_of_it * 1.06)
    assert work_out(taken(record, ways(record)["The line"])).figures["wells.0.wax"].value == pytest.approx(150, rel=1e-3)


def test_more_than_comes_to_the_brim_is_told():
    record = put(designed_vessel(), "wells.0.want", "900 g")
    found = work_out(record).targets["wells.0"]
    assert "more than comes to the brim" in found.against and "wells.0.target.line" not in work_out(record).figures
    card = next(card for card in sheet(record)["cards"] if card["id"] == "target")
    assert card["answer"] == [] and card["waiting"] == found.against and len(card["table"]["rows"]) == 2


@pytest.mark.parametrize(("solid", "sizes"), [
    ("cylinder", {"diameter": "70 mm"}), ("tapered", {"top_diameter": "80 mm", "bottom_diameter": "60 mm"}),
    ("box", {"length": "80 mm", "width": "60 mm"})])
def test_the_line_of_a_well_by_its_dimensions(solid, sizes):
    record = vessel(wells__0__fill__way="dimensions", wells__0__fill__solid=solid, wells__0__fill__height="60 mm", wells__0__want="220 g")
    for name, text in sizes.items():
        put(record, f"wells.0.fill.{name}", text)
    assert filled(taken(record, ways(record)["The line"])) == pytest.approx(220, rel=1e-3)


def test_the_line_of_a_weighed_well_is_an_estimate_by_its_opening():
    record = vessel(wells__0__fill__opening_across="80 mm", wells__0__want="300 g")
    answer = work_out(record)
    change = answer.figures["wells.0.target.change"]
    more = answer.figures["wells.0.target.volume"].value - answer.figures["wells.0.fill.volume"].value
    assert change.label == "Line higher" and change.value == pytest.approx(more * 1000 / (math.pi * 40**2)) and "estimate" in change.spread
    assert work_out(put(record, "wells.0.want", "200 g")).figures["wells.0.target.change"].label == "Line lower"


@pytest.mark.parametrize("line", ["0 mm", "12 mm"])
@pytest.mark.parametrize("what", ["The line", "All of it, printed at"])
def test_taking_a_row_of_a_file_gives_the_weight(line, what):
    record = put(put(cup_vessel(), "wells.0.fill.file.line", line), "wells.0.want", "250 g")
    assert filled(taken(record, ways(record)[what])) == pytest.approx(250, rel=1e-3)


def test_without_a_line_a_model_is_scaled_by_the_cube_root_and_the_cast_with_it():
    record = put(cup_vessel(), "wells.0.want", f"{filled(cup_vessel()) * 1.331:.2f} g")
    answer = work_out(record)
    assert answer.figures["wells.0.target.factor"].value == pytest.approx(1.1, rel=1e-4)
    (way,) = answer.targets["wells.0"].ways
    assert way.sets == {"casts.0.cavity.file.scale": "110 %"} and "thinnest wall 5.5 mm" in way.to
    before = work_out(cup_vessel()).rooms["casts.0.cavity"].volume
    assert work_out(taken(record, way.sets)).rooms["casts.0.cavity"].volume == pytest.approx(before * 1.331, rel=1e-3)


def test_what_another_size_changes_besides_is_told():
    two = cup(rooms=(*cup().rooms, *cup(radius=30.0, height=60.0).rooms))
    record = put(put(cup_vessel(two), "wells.1.fill.way", "cast_file"), "wells.0.want", "200 g")
    assert "other wells" in " ".join(work_out(record).figures["wells.0.target.factor"].notes)
    weighed = read_into(vessel(wells__0__want="200 g"), "wells.0.fill", plug())
    assert "measure it again" in " ".join(work_out(weighed).figures["wells.0.target.factor"].notes)
    assert work_out(put(cup_vessel(), "wells.0.want", "200 g")).figures["wells.0.target.factor"].notes == ()


def test_where_no_cast_is_known_there_is_no_column_for_it():
    record = read_into(vessel(wells__0__want="200 g"), "wells.0.fill", plug())
    table = next(card for card in sheet(record)["cards"] if card["id"] == "target")["table"]
    assert table["columns"] == ["Change", "To"] and "cast" not in table["says"]


@pytest.mark.parametrize("record", [designed_vessel(), cup_vessel()], ids=["design", "file"])
def test_a_film_of_wax_is_told_to_be_too_little(record):
    assert "deep" in work_out(put(record, "wells.0.want", "5 g")).targets["wells.0"].against
    assert work_out(put(record, "wells.0.want", "120 g")).targets["wells.0"].against == ""


def test_sizes_are_told_by_what_they_are():
    told = {way.what: way.to.replace(chr(160), " ") for way in work_out(put(designed_vessel("rectangle"), "wells.0.want", "200 g")).targets["wells.0"].ways}
    assert re.fullmatch(r"[\d.]+ × [\d.]+ mm across, [\d.]+ mm at the corners, [\d.]+ mm high", told["All sizes, but wall and floor"])


def test_two_files_of_one_vessel_are_scaled_together():
    record = read_into(read_into(vessel(wells__0__want="400 g"), "casts.0.cavity", cup(), file__scale="50 %"), "wells.0.fill", plug())
    sets = ways(record)["All of it, printed at"]
    assert set(sets) == {"wells.0.fill.file.scale", "casts.0.cavity.file.scale"}
    scale, half = (float(sets[path].removesuffix(" %")) for path in sets)
    assert half == pytest.approx(scale / 2, abs=0.01)


def test_without_an_opening_it_asks_for_it():
    card = next(card for card in sheet(vessel(wells__0__want="300 g"))["cards"] if card["id"] == "target")
    assert "opening" in card["waiting"]


def test_nothing_is_told_while_nothing_is_wanted():
    page = sheet(vessel())
    card = next(card for card in page["cards"] if card["id"] == "target")
    assert card["answer"] == [] and card["table"] is None and len(card["fields"]) == 1
    assert work_out(vessel()).targets == {}


def test_the_search_gives_up_where_there_is_no_such_size():
    assert factor_for(lambda factor: None, 5.0) is None
    assert factor_for(lambda factor: factor if factor < 1.2 else None, 5.0) is None
    assert factor_for(lambda factor: min(factor, 2.0), 5.0) is None
    assert factor_for(lambda factor: 3.0 * factor**2, 0.75) == pytest.approx(0.5, rel=1e-5)
