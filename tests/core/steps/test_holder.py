"""The holder's figures: every bar with its length and slots, their numbers worked out again, and what is wrong in words."""

import pytest
from arithmetic import works_out
from hypothesis import given as by_chance
from hypothesis import settings
from hypothesis import strategies as st
from vessels import DISPLAYS, vessel
from wick_plans import circle, plan, rectangle, scattered

from brimbook.record.said import understand
from brimbook.settings import display_of, whole
from brimbook.steps.holder import holder, laid_of

AT = "wells.0.holder"
TWO = plan(circle(90), (-20.0, 0.0), (20.0, 0.0))


def worked(made, how=None, **sizes):
    """The holder's figures by name, and what is wrong, for a plan and what the maker typed."""
    record = vessel(**{f"wells__0__holder__{name}": text for name, text in sizes.items()})
    said = understand(record, display_of(whole(how or {})))
    figures = {figure.key.removeprefix(f"{AT}."): figure for figure in holder(said, "wells.0", made)}
    for figure in figures.values():
        works_out(figure.to_plain(), (how or {}).get("decimal") == "comma")
    return figures, {fault.path.removeprefix(f"{AT}."): fault.sentence for fault in said.faults}


def test_one_wick_in_a_round_well():
    figures, faults = worked(plan(circle(68), (0.0, 0.0)))
    assert faults == {} and [name for name in figures] == [
        "bar_1.opening", "bar_1.length", "bar_1.slot_1.along", "bar_1.slot_1.depth", "bars"]
    assert figures["bar_1.length"].says == "Bar: 98 mm long, slot at 49 mm from the left end"
    assert figures["bar_1.length"].numbers == "68 + 0 + 2 × 15" and figures["bars"].value == 1


def test_two_wicks_on_one_bar():
    figures, _ = worked(TWO)
    assert figures["bar_1.length"].says == "Bar: 120 mm long, slots at 40 mm and 80 mm from the left end"
    assert figures["bar_1.slot_2.along"].numbers == "15 + 0 ÷ 2 + 20 + 45"
    assert figures["bar_1.slot_2.depth"].shown == "10 mm"


def test_several_bars_and_the_stick_for_all():
    figures, _ = worked(plan(rectangle(100, 100), (-25.0, -25.0), (25.0, -25.0), (-25.0, 25.0), (25.0, 25.0)))
    assert figures["bars"].shown == "2" and figures["stick"].shown == "260 mm" and "turn" not in figures
    assert figures["stick"].value == sum(figures[f"bar_{number}.length"].value for number in (1, 2))


def test_turned_bars_tell_by_how_much():
    figures, _ = worked(plan(circle(100), (-20.0, -20.0), (20.0, 20.0)))
    assert figures["turn"].shown == "45°" and "counterclockwise" in figures["turn"].label
    figures, _ = worked(plan(circle(100), (-20.0, 20.0), (20.0, -20.0)))
    assert figures["turn"].shown == "45°" and figures["turn"].label == "Bars turned clockwise"


def test_the_maker_may_want_the_bars_another_way():
    assert worked(TWO, direction="deep")[0]["bars"].shown == "2"
    assert worked(TWO, direction="across")[0]["bars"].shown == "1"


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("seed", [1, 2])
def test_the_numbers_work_out_under_every_display(how, seed):
    outline, wicks = scattered(seed, 4)
    figures, faults = worked(plan(outline, *wicks), how, bar_width="16.25 mm", slot_width="1.85 mm", wider="4.4 mm")
    assert faults == {} and len(figures) >= 2 * 4 + 2


@by_chance(seed=st.integers(0, 3000), count=st.integers(1, 8), width=st.integers(9, 40), slot=st.integers(3, 40))
@settings(max_examples=40)
def test_any_bars_show_their_working_or_say_what_to_change(seed, count, width, slot):
    outline, wicks = scattered(seed, count)
    figures, faults = worked(plan(outline, *wicks), bar_width=f"{width} mm", slot_width=f"{slot / 10} mm")
    assert bool(figures) != bool(faults)
    assert all(sentence.endswith(".") for sentence in faults.values())
    for figure in figures.values():
        assert set(figure.uses) <= {f"{AT}.{name}" for name in figures}


@pytest.mark.parametrize(("sizes", "name", "words"), [
    ({"bar_width": "8 mm", "slot_width": "4 mm"}, "bar_width", "needs a bar at least 12 mm wide"),
    ({"slot_width": "9 mm", "bar_width": "40 mm", "overhang": "5 mm"}, "overhang", "at least 8.5 mm over the rim"),
    ({"bar_width": "wide"}, "bar_width", "can't be read"), ({"overhang": "1 mm"}, "overhang", "between 5 and 200 mm"),
    ({"direction": "slanted"}, "direction", "Choose one of"),
])
def test_what_is_wrong_is_told_where_it_is(sizes, name, words):
    figures, faults = worked(TWO, **sizes)
    assert figures == {} and words in faults[name]


def test_a_wider_rim_gives_the_slot_its_stick():
    assert worked(TWO, slot_width="9 mm", bar_width="40 mm", overhang="5 mm", wider="7 mm")[1] == {}


def test_bars_that_would_overlap_are_told_with_what_would_do():
    close = plan(circle(120), *((0.0, 11.0 * row) for row in range(-1, 2)))
    figures, faults = worked(close, direction="across")
    assert figures == {} and "too close for bars 18 mm wide" in faults["bar_width"]
    width = faults["bar_width"].partition("Make the bars ")[2].partition(" wide")[0]
    figures, faults = worked(close, direction="across", bar_width=width)
    assert faults == {} and figures["bars"].shown == "3"


def test_wicks_that_touch_can_only_be_moved():
    figures, faults = worked(plan(circle(120), (0.0, 0.0), (0.5, 0.5)))
    assert figures == {} and faults["bar_width"].endswith("Move the wicks apart.")


@pytest.mark.parametrize("made", [None, plan(circle(90))], ids=["no outline", "no room"])
def test_without_wicks_there_is_no_holder_and_nothing_wrong(made):
    assert worked(made) == ({}, {}) and laid_of(understand(vessel(), display_of(whole({}))), "wells.0", made) is None


def test_constants_are_common_practice_until_typed():
    standing = {constant.name: constant.source.standing for constant in worked(TWO)[0]["bar_1.slot_1.depth"].constants}
    assert set(standing.values()) == {"common practice"}
    typed = worked(TWO, slot_width="2.2 mm")[0]["bar_1.slot_1.depth"].constants
    assert {constant.name: constant.source.standing for constant in typed}["Width of a slot"] == "your entry"


@pytest.mark.parametrize("how, slot", [({}, "1.12 mm"), ({"length": "in"}, "1.12 mm"), ({}, "9.99 mm")])
def test_the_least_width_that_is_told_is_enough(how, slot):
    _, faults = worked(TWO, how, bar_width="6 mm", slot_width=slot)
    least = faults["bar_width"].split("at least ")[1].split(" wide")[0]
    assert "bar_width" not in worked(TWO, how, bar_width=least, slot_width=slot)[1]


def test_a_wider_rim_lessens_the_least_overhang():
    _, faults = worked(TWO, overhang="5 mm", slot_width="10 mm", bar_width="40 mm", wider="2 mm")
    assert faults["overhang"] == "With a slot 10 mm wide a bar reaches at least 8 mm over the rim."
    assert worked(TWO, overhang="8 mm", slot_width="10 mm", bar_width="40 mm", wider="2 mm")[1] == {}


def test_bars_that_only_fit_another_way_are_told_to_be_turned():
    close = plan(circle(90), (-8.0, 0.0), (8.0, 0.0))
    assert "Turn the bars" in worked(close, direction="deep", bar_width="18 mm", slot_width="7 mm")[1]["bar_width"]
    assert worked(close, direction="across", bar_width="18 mm", slot_width="7 mm")[1] == {}


def test_three_slots_are_listed_with_one_and():
    figures, _ = worked(plan(rectangle(120, 60), (-30.0, 0.0), (0.0, 0.0), (30.0, 0.0)))
    assert figures["bar_1.length"].says == "Bar: 150 mm long, slots at 45 mm, 75 mm and 105 mm from the left end"


def test_a_wick_outside_the_wax_has_no_bar():
    made = plan(circle(90), (60.0, 0.0))
    assert worked(made) == ({}, {}) and laid_of(understand(vessel(), display_of(whole({}))), "wells.0", made) is None
