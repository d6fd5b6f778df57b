"""Forecasts of drying, held against walls whose truth is known and is not the model."""

import math
import random
import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from brimbook.cast.dryness import Curve, forecast, range_of, share_left, since_wetted, time_until
from brimbook.quantity.moments import DAY, HOUR

MARGIN, STEP = 0.005, 1.0
A_WEEK = 7.0
SHARES, TIMES = st.floats(0.1, 1.0), st.floats(1 * HOUR, 60 * DAY)


@given(SHARES, TIMES, st.floats(0, 400 * DAY), st.floats(0, 50 * DAY))
def test_water_only_leaves_and_never_goes_below_none(share, constant, moment, later):
    first, second = share_left(moment, share, constant), share_left(moment + later, share, constant)
    assert 1 >= first >= second >= 0


@given(SHARES, TIMES, st.floats(1, 200), st.floats(0.01, 0.99))
def test_the_time_until_is_when_so_much_is_left(share, constant, start, part):
    moment = time_until(part * start, start, share, constant)
    assert start * share_left(moment, share, constant) == pytest.approx(part * start, rel=1e-9)


@given(SHARES, TIMES)
def test_the_rate_does_not_jump_when_even_drying_ends(share, constant):
    even, moment = constant * (1 - share) / share, constant * 1e-5
    before = share_left(max(even - moment, 0), share, constant) - share_left(even, share, constant)
    after = share_left(even, share, constant) - share_left(even + moment, share, constant)
    if share < 0.99:
        assert before == pytest.approx(after, rel=1e-3)


def test_no_more_than_is_allowed_is_dry_at_once():
    assert time_until(4.5, 4.5, 1.0, DAY) == 0 and time_until(4.5, 0.0, 0.5, DAY) == 0


class Wall:
    """A wall that dries by dm/dt = −(m ÷ τ) ÷ (1 + m ÷ c): even while m is far above c, falling in step with m below it.

    Its rate follows the day and night by a part of it. τ is log-normal around 2.5 days.
    """

    def __init__(self, chance: random.Random):
        self.dry = chance.uniform(250, 2500)
        self.water = self.dry * chance.uniform(0.05, 0.12)
        self.days = 2.5 * math.exp(chance.gauss(0, 0.5))
        # In half of the walls nothing is even: c is far above the water.
        self.critical = self.water * chance.choice([1e9, chance.uniform(0.15, 2)])
        self.swing, self.phase = chance.uniform(0, 0.25), chance.random()

    def left(self, day: float) -> float:
        turn = 2 * math.pi
        day += self.swing / turn * (math.sin(turn * (day + self.phase)) - math.sin(turn * self.phase))
        sought = math.log(self.water) + self.water / self.critical - day / self.days
        low, high = math.log(self.water) - day / self.days - 1e-9, math.log(self.water)
        for _ in range(45):
            middle = (low + high) / 2
            low, high = (low, middle) if middle + math.exp(middle) / self.critical > sought else (middle, high)
        return math.exp(low)

    def dry_enough(self) -> float:
        low, high = 0.0, 400.0
        for _ in range(45):
            middle = (low + high) / 2
            low, high = (middle, high) if self.left(middle) > MARGIN * self.dry else (low, middle)
        return low


def trial(count: int, known: bool, walls: int = 300) -> dict[str, float]:
    """Errors [d] and the share of 90 % ranges that hold the truth, over walls still wet at their last weighing."""
    chance, errors, logs, week, held, widths = random.Random(count), [], [], [], 0, []
    while len(errors) < walls:
        wall, days = Wall(chance), [0.0]
        while len(days) < count:
            days.append(days[-1] + chance.uniform(0.6, 1.4))
        truth = wall.dry_enough()
        weights = [STEP * round((wall.dry + wall.left(day) + chance.gauss(0, 0.3)) / STEP) for day in days]
        if truth < days[-1]:
            continue
        told = forecast(tuple(day * DAY for day in days), tuple(weights), wall.dry if known else None, MARGIN, STEP)
        errors.append(abs(told.middle / DAY - truth))
        logs.append(abs(math.log(max(told.middle, HOUR) / DAY / truth)))
        week.append(abs(A_WEEK - truth))
        held += told.earliest <= truth * DAY <= told.latest
        widths.append((told.latest - told.earliest) / DAY)
    errors, logs, week, widths = map(sorted, (errors, logs, week, widths))
    half, most = walls // 2, walls * 9 // 10
    return {"half": errors[half], "most": errors[most], "log": logs[half], "week": week[half], "week_most": week[most],
            "held": held / walls, "width": widths[half]}


# Weighings, is the dry weight known, most days off: in half of the walls, and in nine of ten.
TRIALS = [(2, True, 1.2, 5.0), (3, True, 0.65, 3.4), (4, True, 0.6, 3.4), (6, True, 0.55, 3.0),
          (2, False, 2.3, 9.0), (3, False, 1.7, 8.0), (5, False, 1.8, 5.5)]


@pytest.mark.parametrize(("count", "known", "half", "most"), TRIALS)
def test_forecasts_beat_a_plain_week(count, known, half, most):
    """How far off, over 300 walls each, weighed about once a day on a scale with steps of 1 g.

    Days off in half of the walls / in nine of ten, and the usual width of the 90 % range, in days:

        weighings   dry weight known      not known              a plain week
        2           1.0 / 4.1, 6.0        1.9 / 7.4, 18          2.8 / 9.8
        3           0.5 / 2.7, 5.3        1.3 / 6.9, 18          2.5 / 10.8
        4           0.4 / 2.8, 3.2        1.3 / 6.6, 17          2.7 / 11.8
        5           0.4 / 2.3, 2.3        1.5 / 4.3, 12          2.2 / 9.0
        6           0.4 / 2.4, 2.2        1.4 / 4.8, 11          2.3 / 10.7

    The 90 % range held the truth in 96 to 100 % of the walls: it is rather too wide, since real rooms change more than
    these do. After two weighings without a dry weight a forecast is of little use, and its range says so.
    """
    found = trial(count, known)
    assert found["half"] < half and found["most"] < most
    assert found["half"] < found["week"] and found["most"] < found["week_most"]
    assert 0.88 <= found["held"]


def test_the_range_tells_how_early_it_is():
    widths = [trial(count, True, 100)["width"] for count in (2, 3, 5)]
    assert widths[0] > widths[1] > widths[2]
    assert trial(3, False, 100)["width"] > 2.5 * widths[1]


def test_two_weighings_within_hours_say_little():
    soon = forecast((0.0, 4 * HOUR), (946.0, 944.0), None, MARGIN, STEP)
    later = forecast(*exact((0, 1, 2, 3, 4, 5)), None, MARGIN, STEP)
    assert soon.latest - soon.earliest > 15 * DAY > 5 * (later.latest - later.earliest)


def exact(days, time_constant=2.0, dry=900.0, start=46.0):
    return tuple(day * DAY for day in days), tuple(dry + start * math.exp(-day / time_constant) for day in days)


def test_a_wall_that_keeps_to_the_curve_is_told_rightly():
    truth = 2.0 * math.log(46 / 4.5)
    told = forecast(*exact((0, 0.8, 1.7, 2.6, 3.4)), 900.0, MARGIN, 0.1)
    assert told.middle / DAY == pytest.approx(truth, rel=0.02)
    assert told.curve.time / DAY == pytest.approx(2.0, rel=0.05) and told.curve.dry == pytest.approx(900, abs=0.1)


def test_good_weighings_give_the_time_constant_of_a_plain_least_squares_fit():
    from scipy.optimize import curve_fit

    chance = random.Random(7)
    days = [0.7 * row for row in range(9)]
    weights = [900 + 100 * math.exp(-day / 1.8) + chance.gauss(0, 0.05) for day in days]
    (constant, _), _ = curve_fit(lambda day, time, start: 900 + start * 2.718281828459045 ** (-day / time), days, weights,
                                 (3.0, 80.0))
    told = forecast(tuple(day * DAY for day in days), tuple(weights), 900.0, MARGIN, 0.1)
    assert told.curve.time / DAY == pytest.approx(constant, rel=0.03)


def test_the_curve_passes_through_the_forecast():
    for dry in (900.0, None):
        told = forecast(*exact((0, 1, 2, 3.2)), dry, MARGIN, STEP)
        assert told.curve.left(told.middle) == pytest.approx(MARGIN * told.curve.dry, rel=1e-6)
        assert told.earliest <= told.middle <= told.latest


def test_a_smaller_margin_takes_longer():
    middles = [forecast(*exact((0, 1, 2)), 900.0, margin, STEP).middle for margin in (0.02, 0.01, 0.005, 0.002)]
    assert middles == sorted(middles) and len(set(middles)) == 4


def test_a_vessel_that_is_dry_already_is_told_so():
    times = tuple(day * DAY for day in (0.0, 1.0, 2.0))
    known = forecast(times, (901.0, 900.0, 901.0), 900.0, MARGIN, STEP)
    assert known.middle == 0 and known.curve.left(0) < 2
    unknown = forecast(tuple(day * DAY for day in (0.0, 3.0, 6.0, 9.0)), (900.0, 901.0, 900.0, 900.0), None, MARGIN, STEP)
    assert unknown.middle < 1 * DAY and unknown.curve.left(9 * DAY) < 4.5


WEIGHINGS = st.lists(st.tuples(st.floats(0, 400), st.floats(1, 90_000)), min_size=2, max_size=40)


@settings(max_examples=60)
@given(WEIGHINGS, st.one_of(st.none(), st.floats(1, 90_000)), st.floats(0.0005, 0.05), st.sampled_from([0.001, 0.1, 1, 50]))
def test_any_weighings_give_a_finite_answer(rows, dry, margin, step):
    rows = sorted(rows, key=lambda row: row[0])
    times = tuple((day - rows[0][0]) * DAY for day, _ in rows)
    told = forecast(times, tuple(weight for _, weight in rows), dry, margin, step)
    assert all(map(math.isfinite, (told.earliest, told.middle, told.latest, told.curve.dry, told.curve.start)))
    assert 0 <= told.earliest <= told.middle <= told.latest
    assert told.likely and all(curve.start >= 0 for curve in told.likely)


def test_centuries_between_two_weighings_do_no_harm():
    told = forecast((0.0, 70_000 * DAY), (946.0, 900.0), None, MARGIN, STEP)
    assert math.isfinite(told.latest)


def test_a_wetting_starts_anew_and_noise_does_not():
    assert since_wetted([946, 920, 905], 3.0) == 0
    assert since_wetted([946, 920, 921, 919, 921], 3.0) == 0
    assert since_wetted([946, 920, 960, 930, 934], 3.0) == 4
    # It creeps up, a little each time.
    assert since_wetted([900, 901, 902, 903], 3.0) == 3


def test_the_range_leaves_a_twentieth_on_either_side():
    assert range_of([float(each) for each in range(100, -1, -1)]) == (5, 95)
    assert range_of([7.0]) == (7, 7)


def test_a_fit_takes_a_few_milliseconds():
    times, weights = exact([0.7 * row for row in range(16)])
    best = math.inf
    for row in range(8):
        start = time.perf_counter()
        forecast(times, tuple(weight + row * 1e-3 for weight in weights), None, MARGIN, STEP)
        best = min(best, time.perf_counter() - start)
    # 3 ms where this was written; a slower or busier machine is no fault.
    assert best < 0.02


def test_a_curve_is_plain():
    assert Curve(900.0, 40.0, 1.0, DAY).left(0) == 40
