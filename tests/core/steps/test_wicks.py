"""The wick plan: the outline from what is typed or measured, how many wicks, where, and what is too close."""

import math

import pytest
from vessels import figures, notes, put, sheet, vessel

from brimbook.shape.outline import wall_distance
from brimbook.work_out import work_out

ROUND = {"wells__0__outline__across": "80 mm"}
FREE = {"wells__0__wicks__from_wall": "0 mm", "wells__0__wicks__between": "0 mm"}


def plan(**texts):
    return work_out(vessel(**texts)).wick_plans.get("wells.0")


def faults(**texts):
    return {fault.path: fault.sentence for fault in work_out(vessel(**texts)).said.faults}


def test_without_an_outline_there_is_no_plan():
    assert plan() is None
    wicks = next(card for card in sheet(vessel())["cards"] if card["id"] == "wicks")
    assert wicks["waiting"] == "Type the size of the wax surface." and not wicks["drawing"] and wicks["table"] is None


@pytest.mark.parametrize("texts, wide, high", [
    ({"wells__0__fill__opening_across": "68 mm"}, 68, 68),
    ({"wells__0__fill__opening_across": "68 mm", "wells__0__fill__opening_other": "50 mm"}, 68, 50),
    ({"wells__0__fill__way": "dimensions", "wells__0__fill__solid": "tapered", "wells__0__fill__top_diameter": "72 mm"}, 72, 72),
    ({"wells__0__fill__way": "dimensions", "wells__0__fill__solid": "box", "wells__0__fill__length": "90 mm",
      "wells__0__fill__width": "60 mm"}, 90, 60)])
def test_the_outline_is_that_of_the_well_where_nothing_else_is_typed(texts, wide, high):
    xs, ys = zip(*plan(**texts).outline.points)
    assert max(xs) - min(xs) == pytest.approx(wide, rel=1e-3) and max(ys) - min(ys) == pytest.approx(high, rel=1e-3)
    assert "The size is that of the well, as you measured it." in notes(sheet(vessel(**texts)))


def test_what_is_typed_comes_before_the_well():
    xs, _ = zip(*plan(wells__0__fill__opening_across="68 mm", **ROUND).outline.points)
    assert max(xs) - min(xs) == pytest.approx(80, rel=1e-3)


def test_another_shape_does_not_borrow_the_well_s_sizes():
    assert plan(wells__0__fill__opening_across="68 mm", wells__0__outline__shape="rectangle") is None


@pytest.mark.parametrize("texts, path", [
    ({"shape": "rectangle", "across": "80 mm", "other": "40 mm", "corner": "21 mm"}, "corner"),
    ({"shape": "path", "path": "0 0, 80 0, 0 40, 80 40"}, "path"), ({"shape": "path", "path": "M 0 0 Q"}, "path")])
def test_an_outline_that_can_t_be_is_told_beside_its_field(texts, path):
    told = faults(**{f"wells__0__outline__{name}": text for name, text in texts.items()})
    assert told[f"wells.0.outline.{path}"].endswith(".")


def test_a_path_is_an_outline():
    found = plan(wells__0__outline__shape="path", wells__0__outline__path="0 0, 80 0, 80 40, 0 40")
    assert len(found.outline.points) == 4 and found.covering is not None


def test_one_wick_in_a_round_vessel_stands_in_the_middle_and_melts_it_all():
    shown = figures(vessel(**ROUND))
    assert shown["wells.0.wicks.needed"]["says"] == "1 wick, a pool 80 mm across"
    assert shown["wells.0.wicks.left_1"]["shown"] == shown["wells.0.wicks.front_1"]["shown"] == "40 mm"


@pytest.mark.parametrize("count, share", [(2, 1.0), (3, math.sqrt(3) / 2), (4, math.sqrt(0.5))])
def test_free_wicks_need_no_more_than_the_least_covering_of_a_disc(count, share):
    needed = figures(vessel(wells__0__wicks__count=str(count), **ROUND, **FREE))["wells.0.wicks.needed"]["value"]
    assert 80 * share * (1 - 1e-9) <= needed <= 80 * share * 1.003


@pytest.mark.parametrize("count", [2, 3, 4])
def test_wicks_keep_their_distances(count):
    found = plan(wells__0__wicks__count=str(count), wells__0__outline__shape="oval", wells__0__outline__across="120 mm",
                 wells__0__outline__other="70 mm")
    points = found.covering.points
    assert len(points) == count and all(wall_distance(found.outline, point) >= 12 - 1e-5 for point in points)
    assert all(math.dist(one, other) >= 25 - 1e-5 for row, one in enumerate(points) for other in points[:row])


def test_the_fewest_wicks_whose_pools_reach_are_shown():
    assert len(plan(wells__0__wicks__pool="82 mm", **ROUND).covering.points) == 1
    assert len(plan(wells__0__wicks__pool="72 mm", **ROUND).covering.points) == 3


def test_where_no_count_reaches_the_most_tried_are_shown_and_the_gap_is_told():
    shown = figures(vessel(wells__0__wicks__pool="40 mm", **ROUND))
    assert shown["wells.0.wicks.needed"]["label"] == "each pool, 4 wicks"
    assert "short" in shown["wells.0.wicks.reach"]["says"]


def test_moved_wicks_stay_where_they_were_put_and_what_is_too_close_is_told():
    record = vessel(wells__0__wicks__count="2", **ROUND)
    for row, (x, y) in enumerate(((4, 40), (20, 40))):
        put(put(record, f"wells.0.wicks.at.{row}.x", f"{x} mm"), f"wells.0.wicks.at.{row}.y", f"{y} mm")
    found = work_out(record).wick_plans["wells.0"]
    assert found.is_moved and [round(x) for x, _ in found.covering.points] == [-36, -20]
    assert found.covering.radius == pytest.approx(60, rel=2e-3)
    told = notes(sheet(record))
    assert "Wick 1 stands 4 mm from the wall, less than the 12 mm you keep." in told
    assert "Two wicks stand 16 mm apart, less than the 25 mm you keep." in told


def test_a_wick_at_the_very_wall_is_not_outside():
    record = vessel(wells__0__outline__shape="path", wells__0__outline__path="0 0,120 0,120 90,90 90,90 30,30 30,30 90,0 90", **FREE)
    assert not [note for note in notes(sheet(record)) if "outside" in note]


def test_places_for_another_number_of_wicks_do_not_count():
    record = put(put(vessel(wells__0__wicks__count="3", **ROUND), "wells.0.wicks.at.0.x", "40 mm"), "wells.0.wicks.at.0.y", "40 mm")
    assert not work_out(record).wick_plans["wells.0"].is_moved


@pytest.mark.parametrize("count, across, sentence", [
    ("1", "20 mm", "There is no room for a wick 12 mm from every wall."), ("3", "30 mm", "There is no room for 3 wicks 12 mm from the wall")])
def test_no_room_is_said_in_words(count, across, sentence):
    told = notes(sheet(vessel(wells__0__wicks__count=count, wells__0__outline__across=across)))
    assert any(note.startswith(sentence) for note in told)


def test_a_pool_goes_around_a_corner_not_through_the_wall():
    record = vessel(wells__0__outline__shape="path", wells__0__outline__path="0 0, 100 0, 100 30, 30 30, 30 100, 0 100",
                    wells__0__wicks__count="1", wells__0__wicks__from_wall="0 mm")
    put(put(record, "wells.0.wicks.at.0.x", "90 mm"), "wells.0.wicks.at.0.y", "15 mm")
    needed = figures(record)["wells.0.wicks.needed"]
    around = math.dist((90, 15), (30, 30)) + math.dist((30, 30), (0, 100))
    assert needed["value"] == pytest.approx(2 * around, rel=1e-6) and "around a corner" in needed["working"]["spread"]


def placed(record, *places):
    for row, (x, y) in enumerate(places):
        put(put(record, f"wells.0.wicks.at.{row}.x", f"{x} mm"), f"wells.0.wicks.at.{row}.y", f"{y} mm")
    return record


def test_a_second_wick_that_serves_no_better_is_not_shown_where_none_reaches():
    """Two wicks kept apart in a round vessel need the same pools as one in the middle."""
    assert len(plan(wells__0__wicks__pool="50 mm", wells__0__wicks__up_to="2", **ROUND).covering.points) == 1


def test_a_pool_that_looks_just_large_enough_is():
    shown = figures(vessel(wells__0__wicks__pool="80 mm", wells__0__wicks__up_to="1", **ROUND))["wells.0.wicks.reach"]
    assert shown["says"] == "Your wick's pool reaches, with 0 mm to spare"
    short = figures(vessel(wells__0__wicks__pool="79.9 mm", wells__0__wicks__count="1", **ROUND))["wells.0.wicks.reach"]
    assert "0.1 mm short" in short["says"] and short["shown"] != "100 %"


def test_a_wick_outside_the_wax_has_no_distance_from_the_wall_and_no_corner_on_its_way():
    shown = figures(placed(vessel(wells__0__wicks__count="1", wells__0__outline__shape="rectangle", wells__0__outline__other="80 mm", **ROUND),
                           (100, 70)))
    assert "wells.0.wicks.to_wall" not in shown
    spread = shown["wells.0.wicks.needed"]["working"]["spread"]
    assert "corner" not in spread and "outside the wax" in spread
    assert not any(key.startswith("wells.0.holder.") for key in shown)


def test_a_wick_beyond_a_wall_is_not_taken_for_the_nearest():
    """The spot that melts last lies nearer to the other arm's wick, through the wall; its way is straight all the same."""
    record = vessel(wells__0__outline__shape="path", wells__0__outline__path="0 0, 90 0, 90 100, 47 100, 47 20, 43 20, 43 100, 0 100",
                    wells__0__wicks__count="2", **FREE)
    needed = figures(placed(record, (5, 15), (50, 90)))["wells.0.wicks.needed"]
    assert needed["value"] == pytest.approx(2 * math.dist((5, 15), (43, 100)), rel=1e-6)
    assert "corner" not in needed["working"]["spread"]


def test_places_of_wicks_that_are_no_more_do_not_hinder_a_move():
    record = placed(vessel(wells__0__wicks__count="2", **ROUND), (30, 40), (60, 40))
    put(put(record, "wells.0.wicks.at.2.x", ""), "wells.0.wicks.at.2.y", "")
    assert work_out(record).wick_plans["wells.0"].is_moved


def test_fewer_wicks_are_not_advised_where_not_even_one_has_room():
    told = notes(sheet(vessel(wells__0__wicks__count="2", wells__0__outline__across="8 mm")))
    assert "There is no room for a wick 12 mm from every wall. Take one that may stand closer, or a wider vessel." in told


def test_a_vessel_of_many_wells_is_worked_out_in_bounded_time(monkeypatch):
    searched = []
    monkeypatch.setattr("brimbook.steps.wicks.cover", lambda outline, count, *clearances: searched.append((outline, count)))
    record = vessel()
    for number in range(400):
        put(put(record, f"wells.{number}.outline.across", f"{80 + number} mm"), f"wells.{number}.wicks.up_to", "8")
    answer = work_out(record)
    assert len(set(searched)) <= 64
    assert "up to 4 wicks are tried" in {fault.path: fault.sentence for fault in answer.said.faults}["wells.0.wicks.up_to"]
    waiting = [card["waiting"] for card in sheet(record)["cards"] if card["title"].startswith("Wicks")]
    assert waiting[-1] == "Wicks are placed in the first 12 wells of a vessel."
