"""The card of the wicks: its table, its plan, the maker's own wicks, and a wick moved by hand."""

import json

import pytest
from vessels import ask, put, sheet, vessel

from brimbook import door

OWN = [{"name": "Cotton, medium", "pool": "60 mm", "rate": "4.5"}, {"name": "Cotton, thin", "pool": "45 mm"},
       {"name": "", "pool": "70 mm"}, {"name": "Bent", "pool": "x"}]


def record(**texts):
    return vessel(wells__0__outline__across="80 mm", **texts)


def card(record, wicks=(), **settings):
    shown = ask("work_out", record=record, settings=settings, wicks=list(wicks))["sheet"]
    return next(each for each in shown["cards"] if each["id"] == "wicks")


def moved(record, **request):
    return ask("move_wick", record=record, place="wells.0", row=0, **request)["sets"]


def written(record, sets):
    for path, text in sets.items():
        put(record, path, text)
    return record


def test_without_wicks_of_their_own_the_table_tells_the_pool_for_each_count():
    rows = card(record())["table"]["rows"]
    assert [row["cells"][0] for row in rows] == ["1 wick", "2 wicks", "3 wicks", "4 wicks"]
    assert rows[0]["cells"][1] == "80 mm" and [row["chosen"] for row in rows] == [True, False, False, False]


def test_more_wicks_are_tried_once_they_are_asked_for():
    """A search takes its time, so a vessel whose wicks nobody has looked at has one wick."""
    measured = vessel(wells__0__fill__opening_across="80 mm")
    one, further = card(measured)["table"]["rows"]
    assert one["cells"] == ["1 wick", "80 mm"] and further["cells"][0] == "Try 2 to 4 wicks"
    assert len(card(written(measured, further["sets"]))["table"]["rows"]) == 4


def test_the_maker_s_own_wicks_are_told_best_first():
    rows = card(record(), OWN)["table"]["rows"]
    assert rows[0]["cells"][0] == "4 × Cotton, medium" and "to spare" in rows[0]["says"]
    assert all("short" in row["says"] for row in rows[1:]) and len(rows) == 6
    assert {row["cells"][0].split(" × ")[1] for row in rows} == {"Cotton, medium", "Cotton, thin"}


def test_the_fewest_wicks_that_reach_come_first_and_pointless_counts_are_left_out():
    """Two wicks kept apart in a round vessel need no smaller pools than one in the middle."""
    rows = card(record(), [{"name": "Wide", "pool": "82 mm"}, {"name": "Narrow", "pool": "70.5 mm"}])["table"]["rows"]
    assert [row["cells"][0] for row in rows[:2]] == ["1 × Wide", "3 × Narrow"]
    assert not any(row["cells"][0].startswith("2 ×") for row in rows)


def test_choosing_a_row_copies_the_wick_into_the_vessel():
    first = card(record(), OWN)["table"]["rows"][0]
    chosen = written(record(), first["sets"])
    rows = card(chosen, OWN)["table"]["rows"]
    assert rows[0]["chosen"] and sum(row["chosen"] for row in rows) == 1
    assert chosen["wells"][0]["wicks"] == {"count": "4", "name": "Cotton, medium", "pool": "60 mm", "rate": "4.5"}
    without_shelf = card(chosen)["table"]["rows"]
    assert without_shelf[0]["cells"][0] == "4 × Cotton, medium" and without_shelf[0]["chosen"]


def test_each_wick_is_a_mark_that_says_where_it_stands():
    shown = card(record(wells__0__wicks__count="2"))
    assert shown["drag"] == {"ask": "move_wick", "place": "wells.0"}
    assert shown["drawing"].count('class="handle"') == 2 and "mm from the left" in shown["drawing"]
    assert "in from the left" in card(record(), length="in")["drawing"]


def test_where_wicks_keep_clear_of_the_wall_is_drawn():
    assert 'class="clearance"' in card(record())["drawing"]
    assert 'class="clearance"' not in card(record(wells__0__wicks__from_wall="50 mm"))["drawing"]


def test_a_wick_moved_to_the_middle_of_the_drawing_stands_in_the_middle():
    sets = moved(record(), x=175, y=135)
    assert sets == {"wells.0.wicks.count": "1", "wells.0.wicks.at.0.x": "40.0 mm", "wells.0.wicks.at.0.y": "40.0 mm"}


@pytest.mark.parametrize("step, far, x, y", [("left", False, 39, 40), ("right", True, 45, 40), ("up", False, 40, 41), ("down", True, 40, 35)])
def test_arrow_keys_move_it_by_steps(step, far, x, y):
    sets = moved(record(), step=step, far=far)
    assert (sets["wells.0.wicks.at.0.x"], sets["wells.0.wicks.at.0.y"]) == (f"{x}.0 mm", f"{y}.0 mm")


def test_a_wick_moved_out_of_the_wax_stops_clear_of_the_wall():
    sets = moved(record(), x=1e5, y=135)
    assert float(sets["wells.0.wicks.at.0.x"].split()[0]) == pytest.approx(68, abs=0.1)


def test_moved_wicks_can_be_put_back():
    shown = card(written(record(), moved(record(), step="left")))
    back = next(action for action in shown["actions"] if "clear" in action)
    assert back["clear"] == ["wells.0.wicks.at.0.x", "wells.0.wicks.at.0.y"]
    assert not any("clear" in action for action in card(record())["actions"])


@pytest.mark.parametrize("request_", [{}, {"place": "wells.7"}, {"place": []}, {"place": "wells.0", "row": 9, "x": 1, "y": 1},
                                      {"place": "wells.0", "row": True, "x": 1, "y": 1}, {"place": "wells.0", "row": 0},
                                      {"place": "wells.0", "row": 0, "x": "1", "y": None}, {"place": "wells.0", "row": 0, "x": 1e300, "y": 0},
                                      {"place": "wells.0", "row": 0, "step": "out"}])
def test_a_request_that_makes_no_sense_is_answered_with_a_sentence(request_):
    reply = json.loads(door.ask("move_wick", json.dumps({"record": record(), **request_})))
    assert reply["fault"]["sentence"].endswith(".") and not reply["fault"]["detail"]


def test_own_wicks_are_cards_of_the_shelf():
    shown = ask("shelf", record={"materials": [], "wicks": [{"name": "Cotton, thin", "pool": "45", "core": "unknown"}, {}]})["sheet"]
    first, second = shown["cards"][:2]
    assert (first["chapter"], first["title"], first["waiting"]) == ("My wicks", "Cotton, thin", "Melts 45 mm across")
    assert second["title"] == "New wick" and any("lead is banned" in note for note in first["notes"])
    assert {"label": "Add a wick", "append": "wicks", "value": {}} in shown["actions"]


def test_the_waiting_line_says_what_to_mend():
    shown = sheet(vessel(wells__0__outline__across="x"))
    assert next(each for each in shown["cards"] if each["id"] == "wicks")["waiting"] == "Mend the entry that is marked."


def test_a_wick_can_be_moved_again_where_more_were_moved_before():
    four = written(record(wells__0__wicks__count="4"), moved(record(wells__0__wicks__count="4"), step="left"))
    three = put(four, "wells.0.wicks.count", "3")
    sets = moved(three, step="right")
    assert sets["wells.0.wicks.at.3.x"] == sets["wells.0.wicks.at.3.y"] == ""
    assert any("clear" in action for action in card(written(three, sets))["actions"])


@pytest.mark.parametrize("wicks", [[], OWN])
def test_a_row_tells_of_wicks_where_they_serve_best_and_puts_moved_ones_there(wicks):
    away = written(record(wells__0__wicks__count="1"), moved(record(wells__0__wicks__count="1"), step="left", far=True))
    table = card(away, wicks)["table"]
    assert "You moved the wicks" in table["says"] and not any(row["chosen"] for row in table["rows"])
    one = next(row for row in table["rows"] if row["cells"][0].startswith("1 "))
    back = card(written(away, one["sets"]), wicks)
    assert next(answer for answer in back["answer"] if "wick" in answer["label"])["shown"] == "80 mm"
    assert "You moved" not in back["table"]["says"] and sum(row["chosen"] for row in back["table"]["rows"]) == 1


def test_without_room_for_a_single_wick_the_card_says_so():
    assert card(vessel(wells__0__outline__across="8 mm"))["waiting"] == "No room for a wick."
