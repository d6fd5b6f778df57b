"""The log of a burn test: what counts, what stands in, and what is told of entries that can't be."""

import pytest
from vessels import vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.burn_log import MOST_CYCLES, cycles_of, step_of

AT = "wells.0.burning"
FIRST = {"lit_at": "2026-11-01T10:00", "out_at": "2026-11-01T14:00", "before": "570 g", "after": "556 g"}


def read(*cycles, **texts):
    said = understand(vessel(wells__0__burning={"cycles": list(cycles), **texts}), Display())
    return said, cycles_of(said, AT)


def faults(said):
    return {fault.path.removeprefix(f"{AT}.cycles."): fault.sentence for fault in said.faults}


def test_weights_and_moments_make_a_cycle():
    said, (burned,) = read(FIRST)
    assert (burned.cycle.burned, burned.cycle.hours, burned.cycle.rate, burned.burns) == (14, 4, 3.5, False)
    assert said.faults == []


def test_the_weight_before_stands_in_from_the_last_one_after():
    _, (_, second) = read(FIRST, {"lit_at": "2026-11-01T18:00", "out_at": "2026-11-01T20:00", "after": "549 g"})
    assert second.before == 556 and second.cycle.burned == 7 and second.cycle.shared and second.after_last == 4


def test_a_typed_weight_before_is_a_weighing_of_its_own():
    _, (_, second) = read(FIRST, {"minutes": "2 h", "before": "556 g", "after": "549 g"})
    assert not second.cycle.shared and second.cycle.hours == 2 and second.after_last is None


def test_a_weighing_is_not_shared_with_a_cycle_that_does_not_count():
    _, (first, second) = read({"before": "570 g", "after": "556 g"}, {"minutes": "2 h", "after": "549 g"})
    assert first.cycle is None and second.cycle is not None and not second.cycle.shared


def test_hours_typed_come_before_the_clock_and_tell_when_it_was_out():
    _, (burned,) = read({"lit_at": "2026-11-01T10:00", "minutes": "150 min", "before": "570 g", "after": "560 g"})
    assert burned.hours == 2.5 and burned.out - burned.lit == 9000


def test_a_cycle_that_is_lit_and_no_more_burns():
    _, (burned,) = read({"lit_at": "2026-11-01T10:00"})
    assert burned.burns and burned.cycle is None
    _, (over,) = read({"lit_at": "2026-11-01T10:00", "before": "570 g", "after": "556 g"})
    assert not over.burns


def test_empty_entries_are_skipped_and_numbers_stay():
    _, cycles = read({}, FIRST, {"lit_at": ""}, {"remarks": "drafty"})
    assert [burned.number for burned in cycles] == [2]


@pytest.mark.parametrize(("entry", "place", "words"), [
    ({**FIRST, "out_at": "2026-11-01T09:00"}, "0.out_at", "after it was lit"),
    ({**FIRST, "out_at": "2026-11-01T10:00"}, "0.out_at", "after it was lit"),
    ({**FIRST, "out_at": "2026-11-09T10:00"}, "0.out_at", "72 hours"),
    ({**FIRST, "after": "570 g"}, "0.after", "must weigh less"),
    ({**FIRST, "after": "600 g"}, "0.after", "must weigh less"),
    ({**FIRST, "before": "5.7 kg"}, "0.after", "in an hour"),
])
def test_what_can_t_be_is_told_beside_it_and_not_counted(entry, place, words):
    said, (burned,) = read(entry)
    assert words in faults(said)[place] and burned.cycle is None


def test_a_cycle_can_t_begin_before_the_last_one_ended():
    said, (_, second) = read(FIRST, {**FIRST, "lit_at": "2026-11-01T13:00", "before": "", "after": "550 g"})
    assert "Cycle 1 was still burning" in faults(said)["1.lit_at"] and second.cycle is None


def test_wax_that_came_back_is_told_but_a_step_of_the_scale_is_not():
    said, (_, second) = read(FIRST, {"minutes": "2 h", "before": "570 g", "after": "550 g"})
    assert "can't weigh more now" in faults(said)["1.before"] and second.cycle is None
    said, (_, second) = read(FIRST, {"minutes": "2 h", "before": "557 g", "after": "550 g"})
    assert faults(said) == {} and second.cycle is not None


def test_a_faulty_time_is_not_replaced_by_the_clock():
    said, (burned,) = read({**FIRST, "minutes": "long"})
    assert burned.hours is None and burned.cycle is None and "0.minutes" in faults(said)


def test_the_step_is_the_scale_s_until_another_is_typed():
    assert step_of(read(FIRST)[0], AT) == 1 and step_of(read(FIRST, readability="0.1 g")[0], AT) == 0.1
    assert step_of(read(FIRST, readability="fine")[0], AT) is None


def test_of_a_log_without_end_the_newest_are_read():
    _, cycles = read(*[{"minutes": "1 h"}] * (MOST_CYCLES + 50))
    assert len(cycles) == MOST_CYCLES and cycles[-1].number == MOST_CYCLES + 50
