"""Batches: their lots, what came out, what is left, and what fails."""

import time

import pytest
from arithmetic import works_out
from hypothesis import given
from vessels import DISPLAYS, bent_vessels, figures, put, sheet, vessel

from brimbook.record import tree
from brimbook.steps.batches import MOST_BATCHES, batches_of
from brimbook.work_out import work_out


def noted(*batches, name="Keel bowl"):
    return put(vessel(name=name), "batches", list(batches))


def batches(*given_ones, **how):
    return work_out(noted(*given_ones, **how)).batches


def faults(record):
    return {fault.path: fault.sentence for fault in work_out(record).said.faults}


def test_a_lot_is_made_of_name_and_day():
    made = batches({"made_on": "2026-09-26"}, {"made_on": "2026-09-26"}, {"lot": "A 7"}, {})
    assert [batch.lot for batch in made] == ["KEE-260926", "KEE-260926-2", "A 7", ""]


def test_what_came_out_and_what_is_left():
    batch, = batches({"vessels": "24", "failed": "2", "went_to": [{"vessels": "9"}, {"who": "A neighbor"}, {"vessels": "3"}]})
    assert (batch.made, batch.left) == (22, 10)
    assert [figure.numbers for figure in batch.figures[:2]] == ["24 − 2", "22 − 9 − 0 − 3"]


@pytest.mark.parametrize("got", ["some", "1.5", "-1"])
def test_what_is_left_is_not_told_where_a_number_can_t_be_read(got):
    batch, = batches({"vessels": "24", "went_to": [{"vessels": "9"}, {"vessels": got}]})
    assert (batch.made, batch.left) == (24, None) and [figure.key for figure in batch.figures if "failing" not in figure.key] == ["batches.0.made"]


def test_the_newest_by_its_day_is_the_last_however_late_an_older_one_is_noted():
    made = batches({"made_on": "2026-09-26"}, {"made_on": "2026-11-02"}, {"lot": "A 7"}, {"made_on": "2025-12-01"})
    assert [batch.lot for batch in made] == ["KEE-251201", "KEE-260926", "KEE-261102", "A 7"]


def test_all_that_is_left_is_added_up():
    shown = figures(noted({"vessels": "24", "failed": "2", "went_to": [{"vessels": "9"}]}, {"vessels": "some"}, {"vessels": "5"}))
    assert shown["batches.2.all_left"]["shown"] == "18 vessels" and shown["batches.2.all_left"]["working"]["numbers"].startswith("13 + 5 = 18")
    assert not [key for key in figures(noted({"vessels": "24"})) if "all_left" in key]


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
def test_the_numbers_of_several_batches_work_out(how):
    record = noted({"vessels": "24", "failed": "2", "went_to": [{"vessels": "9"}, {"vessels": "13"}]}, {"vessels": "1000", "failed": "37"}, {"vessels": "7"})
    shown = {key: figure for key, figure in figures(record, **how).items() if key.startswith("batches.")}
    assert len(shown) == 2 * 3 + 1 + 3
    for figure in shown.values():
        works_out(figure, how.get("decimal") == "comma")


def test_a_lot_of_a_day_keeps_its_number_when_older_ones_are_no_longer_worked_out():
    made = batches(*({"made_on": "2026-09-26"} for _ in range(MOST_BATCHES + 3)))
    assert made[0].lot == "KEE-260926-4" and made[-1].lot == f"KEE-260926-{MOST_BATCHES + 3}"


def test_nothing_is_told_before_it_is_known():
    batch, = batches({"made_on": "2026-09-26"})
    assert (batch.made, batch.left, batch.figures) == (None, None, ())


@pytest.mark.parametrize(("batch", "path", "words"), [
    ({"vessels": "3", "failed": "4"}, "batches.0.failed", "More failed than were made: at most 3."),
    ({"vessels": "3", "went_to": [{"vessels": "2"}, {"vessels": "2"}]}, "batches.0.went_to.1.vessels", "More went out than came out of this batch: 4 of 3."),
    ({"vessels": "some"}, "batches.0.vessels", "number of pieces"),
    ({"vessels": "3", "went_to": [{"vessels": "2"}, {"vessels": "2"}, {"who": "A neighbor"}]}, "batches.0.went_to.1.vessels", "4 of 3"),
    ({"made_on": "2026-09-26", "vessels": "3", "went_to": [{"on": "2026-09-25"}]}, "batches.0.went_to.0.on",
     "This is before the batch was made, on Sep 26, 2026."),
])
def test_what_cannot_be_is_told_beside_the_field(batch, path, words):
    assert words in faults(noted(batch))[path]


def test_a_share_that_failed_is_told_with_its_range():
    shown = figures(noted({"vessels": "20", "failed": "1"}, {"vessels": "4", "failed": "1"}))
    assert shown["batches.1.failing"]["says"] == "2 of 24 failed so far: 8.3 %; in the long run between 2.3 % and 25.8 %"
    assert shown["batches.1.failing_least"]["value"] == pytest.approx(0.023158815, abs=1e-8)
    assert shown["batches.1.failing_most"]["value"] == pytest.approx(0.258488022, abs=1e-8)


@pytest.mark.parametrize(("failed", "ends"), [("0", {"failing_most"}), ("20", {"failing_least"}), ("3", {"failing_least", "failing_most"})])
def test_an_end_that_is_certain_is_not_told(failed, ends):
    shown = figures(noted({"vessels": "20", "failed": failed}))
    assert {key.split(".")[-1] for key in shown if ".failing_" in key} == ends


def test_a_few_vessels_tell_no_share():
    assert not [key for key in figures(noted({"vessels": "4", "failed": "2"})) if "failing" in key]


def test_very_many_batches_are_kept_and_the_newest_worked_out():
    made = batches(*({"lot": str(row), "vessels": "1"} for row in range(MOST_BATCHES + 30)))
    assert len(made) == MOST_BATCHES and made[-1].lot == str(MOST_BATCHES + 29) and made[0].lot == "30"


USED, GIVEN = {"role": "wax", "name": "Soy wax", "lot": "4711"}, {"who": "A neighbor", "vessels": "2", "on": "2026-11-01"}
LONG = {"years": [{"made_on": "2026-09-26", "vessels": "24", "failed": "1", "used": [USED] * 8, "went_to": [GIVEN] * 4}] * 330,
        "buyers": [{"vessels": "9000", "went_to": [{"vessels": "1"}] * 9000}], "faults": [{"vessels": "24", "went_to": [{"vessels": "x"}] * 60}] * 160,
        "a day": [{"made_on": "2026-09-26"}] * 9000}


@pytest.mark.parametrize("name", LONG)
def test_no_log_within_limits_keeps_the_maker_waiting(name):
    record = put(vessel(), "batches", LONG[name])
    assert tree.within_limits(record)
    began = time.process_time()
    assert sheet(record)["cards"]
    assert time.process_time() - began < 4


@given(bent_vessels())
def test_bent_batches_do_no_harm(record):
    said = work_out({**record, "batches": [record, {"vessels": record, "went_to": record}, 5]}).said
    assert isinstance(batches_of(said), tuple)
