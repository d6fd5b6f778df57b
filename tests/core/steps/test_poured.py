"""When a cast was poured, by the clock's own entry or the newest pour of the log."""

from vessels import put, sheet, vessel

from brimbook.quantity.moments import HOUR, read_moment
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.poured import logged_at, poured_at
from brimbook.work_out import work_out

FIRST, SECOND = "2026-11-10T10:00", "2026-11-24T10:00"
LOG = [{"when": SECOND, "powder": "500 g"}, {"when": FIRST}, {"when": "soon"}, {}]


def at(record, place="casts.0"):
    return poured_at(understand(record, Display()), place)


def test_the_newest_pour_of_the_log_stands_in():
    assert at(put(vessel(), "casts.0.pours", LOG)) == read_moment(SECOND)
    assert at(vessel()) is None and at(put(vessel(), "casts.0.pours", [{}])) is None


def test_the_entry_of_the_clock_comes_first_even_where_it_can_t_be_read():
    assert at(put(vessel(casts__0__curing__poured_at=FIRST), "casts.0.pours", LOG)) == read_moment(FIRST)
    assert at(put(vessel(casts__0__curing__poured_at="noon"), "casts.0.pours", LOG)) is None


def test_a_mold_of_the_first_bowl_has_its_pours():
    record = put(vessel(), "casts.0.pours", LOG)
    record["casts"] += [{"bowl": "first"}, {"bowl": "own"}]
    said = understand(record, Display())
    assert logged_at(said, "casts.1") == read_moment(SECOND) and logged_at(said, "casts.2") is None


def test_the_clock_runs_from_the_logged_pour_and_says_so():
    record = put(vessel(), "casts.0.pours", LOG)
    assert work_out(record).schedules["casts.0"].events[0].at == read_moment(SECOND) + 0.75 * HOUR
    card = next(each for each in sheet(record)["cards"] if each["id"] == "cure")
    assert card["fields"][0]["note"] == "Empty, so the newest pour's is taken: Tue, Nov 24, 10:00."


def test_weights_of_an_older_piece_don_t_make_a_new_one_dry():
    record = put(vessel(), "casts.0.pours", LOG)
    put(record, "casts.0.drying", {"dry_weight": "900 g", "weights": [{"at": "2026-11-20T10:00", "weight": "901 g"}]})
    answer = work_out(record)
    assert answer.dryness["casts.0"].dry and answer.figures["casts.0.curing.dry"].label == "Dry, as planned"
    assert "if its weight tells" in answer.figures["casts.0.curing.fill"].says
