"""The temperatures of a piece, from its bench and its log; sums and ± as they are written."""

import pytest
from vessels import put, vessel

from brimbook.quantity.moments import DAY, HOUR, MINUTE, read_moment
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.aging import History, history, roughly, sum_written

START = read_moment("2026-11-24T10:00")


def past(*log, poured=START, bench=""):
    """What is known of a piece; log is pairs of a moment and a temperature."""
    record = vessel(casts__0__curing__temperature=bench)
    put(record, "casts.0.curing.temperatures", [{"at": at, "temperature": celsius} for at, celsius in log])
    return history(understand(record, Display()), "casts.0", poured)


def test_the_average_of_two_readings_counts_between_them():
    known = past(("2026-11-24T14:00", "12 °C"), ("2026-11-24T22:00", "7 °C"), bench="20 °C")
    assert known == History([(16.0, 4.0), (9.5, 8.0)], 7.0, (20.0, 12.0, 7.0))


def test_a_bench_that_nobody_told_of_is_as_the_first_reading():
    assert past(("2026-11-24T14:00", "12 °C")) == History([(12.0, 4.0)], 12.0, (12.0, 12.0))


def test_a_reading_at_the_pour_itself_is_the_bench():
    assert past(("2026-11-24T10:00", "9 °C"), bench="20 °C") == History([], 9.0, (9.0,))


def test_without_a_log_or_a_pour_the_bench_lasts():
    assert past() == History([], 20.0, (20.0,))
    assert past(("2026-11-24T14:00", "12 °C"), poured=None, bench="15 °C") == History([], 15.0, (15.0,))
    assert past(("2026-11-24T14:00", "12 °C"), bench="warm") is None


def test_a_long_sum_is_lumped_and_a_short_one_is_whole():
    assert sum_written([(2.0, 0.5)], Display(decimal="comma")) == "2 × 0,5"
    assert sum_written([(1.0, float(row)) for row in range(6)], Display()) == "1 + 1 × 2 + 1 × 3 + 1 × 4 + 1 × 5"


@pytest.mark.parametrize(("seconds", "told"), [
    (1.0, "1 min"), (61.0, "2 min"), (59.5 * MINUTE, "1 h"), (61 * MINUTE, "1 h 10 min"), (10.2 * HOUR, "11 h"),
    (2 * DAY, "2 d"), (0.0, "1 min")])
def test_a_plus_minus_of_time_is_rounded_up(seconds, told):
    assert roughly(seconds, Display()) == told


def test_a_reading_of_the_next_day_says_little_of_the_first_hour():
    known = past(("2026-11-25T10:00", "8 °C"), bench="20 °C")
    assert known.spans[0] == (19.5, 2.0) and known.spans[-1] == (8.5, 2.0)
    assert sum(hours for _, hours in known.spans) == 24
    assert sum(celsius * hours for celsius, hours in known.spans) == pytest.approx(14 * 24)


def test_a_steady_bench_is_one_stretch_however_long():
    assert past(("2026-11-27T10:00", "20 °C"), bench="20 °C").spans == [(20.0, 72.0)]
