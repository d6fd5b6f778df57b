"""How a pot cools: Newton's law, learned from a thermometer, with a ± that holds."""

import math
import random

import pytest

from brimbook.candle.cooling import LEAST_ABOVE, cooled, half_time, learn, reached, wait, with_fragrance

# Every fifth minute of a mug of water that cools in a room of 24 °C, from minute 15 on: data set CoolingWater of the
# R package mosaicData. A mug cools by its open surface too, more than wax does.
MUG = {15: 70.3, 20: 65.3, 25: 61.5, 30: 58.1, 35: 55.0, 40: 52.5, 45: 50.5, 50: 48.5}


def test_the_closed_forms_undo_each_other():
    for now, target, room, half in ((85, 60, 20, 45), (70, 69.9, -10, 5), (110, 31, 30, 300)):
        minutes = wait(now, target, room, half)
        assert cooled(now, room, half, minutes) == pytest.approx(target)
        assert half_time(now, target, minutes, room) == pytest.approx(half)
    assert wait(60, 80, 20, 30) == pytest.approx(-wait(80, 60, 20, 30))
    assert cooled(80, 20, 30, 30) == 50 and cooled(80, 20, 30, 0) == 80


def test_waits_grow_as_they_should():
    assert wait(80, 50, 20, 30) < wait(80, 50, 20, 31)
    assert wait(80, 50, 20, 30) < wait(81, 50, 20, 30)
    assert wait(80, 50, 20, 30) < wait(80, 49, 20, 30)
    assert wait(80, 50, 20, 30) < wait(80, 50, 21, 30)


@pytest.mark.parametrize(("first", "last", "minutes", "room"), [
    (80, 80, 10, 20), (70, 80, 10, 20), (80, 20, 10, 20), (80, 15, 10, 20), (80, 70, 0, 20), (80, 70, -5, 20)])
def test_what_does_not_cool_toward_the_room_has_no_pace(first, last, minutes, room):
    with pytest.raises(ValueError):
        half_time(first, last, minutes, room)


@pytest.mark.parametrize(("now", "target"), [(80, 20), (80, 10), (20, 80), (5, 80)])
def test_what_is_not_above_the_room_is_never_reached(now, target):
    with pytest.raises(ValueError):
        wait(now, target, 20, 30)


def test_fragrance_takes_its_share_of_the_warmth():
    assert with_fragrance(75, 20, 0) == 75
    assert with_fragrance(75, 20, 1) == pytest.approx(47.5)
    assert with_fragrance(75, 75, 0.1) == 75
    assert 20 < with_fragrance(75, 20, 0.5) < with_fragrance(75, 20, 0.1) < 75


def test_two_readings_give_the_closed_form():
    pot = learn([((3, 82.0), (13, 71.0))], 22.0)
    assert pot.half == pytest.approx(half_time(82, 71, 10, 22)) and pot.now == pytest.approx(71)
    assert reached(pot, 60.0)[0] == pytest.approx(wait(71, 60, 22, pot.half))


def test_readings_without_error_give_back_their_pot():
    for room, half, times in ((20, 40, (0, 5, 11, 30)), (-5, 90, (2, 50, 51)), (28, 15, range(12))):
        pot = learn([tuple((minutes, cooled(84, room, half, minutes)) for minutes in times)], room)
        assert pot.half == pytest.approx(half) and pot.now == pytest.approx(cooled(84, room, half, times[-1]))
        assert pot.line.scale == 1


def test_many_readings_are_weighted_as_scipy_does_it():
    from scipy.optimize import curve_fit

    rng, room = random.Random(7), 21.0
    readings = [(float(minutes), cooled(83, room, 48, minutes) + rng.gauss(0, 0.4)) for minutes in range(0, 30, 3)]
    pot = learn([readings], room)
    # The errors of the logarithms at the pace found: of the thermometer and of a moment told to the minute.
    sigma = [math.hypot(0.5 / (celsius - room), pot.line.pace / math.sqrt(12)) for _, celsius in readings]
    fitted, spread = curve_fit(lambda time, level, pace: level - pace * time, *zip(*(
        (minutes, math.log(celsius - room)) for minutes, celsius in readings)), sigma=sigma, absolute_sigma=True)
    assert pot.line.pace == pytest.approx(fitted[1], rel=1e-3)
    off = 1.96 * pot.line.scale * math.sqrt(spread[1][1]) / fitted[1]
    assert pot.half_off / pot.half == pytest.approx(1 / (1 - off) - 1, rel=5e-3)


def test_a_drop_by_fragrance_does_not_change_the_pace():
    before = [(minutes, cooled(85, 20, 50, minutes)) for minutes in (0, 5, 10)]
    dropped = with_fragrance(cooled(85, 20, 50, 10), 20, 0.08)
    after = [(minutes, cooled(dropped, 20, 50, minutes - 10)) for minutes in (12, 16, 20)]
    assert learn([before, after], 20.0).half == pytest.approx(50)
    assert learn([before + after], 20.0).half < 45
    single = learn([before, after[:1]], 20.0)
    assert single.half == pytest.approx(50) and single.now == pytest.approx(after[0][1])


@pytest.mark.parametrize("runs", [
    [((0, 80.0),)], [((0, 80.0), (10, 80.0))], [((0, 80.0), (10, 81.0))], [((0, 80.0),), ((10, 70.0),)],
    [((0, 80.0), (1, 79.5))], [((0, 80.0), (0, 70.0))]])
def test_readings_that_tell_no_pace_are_not_made_to(runs):
    assert learn(runs, 20.0) is None


def test_close_to_the_room_nothing_is_told():
    pot = learn([((0, 82.0), (10, 71.0))], 22.0)
    assert reached(pot, 22.0 + LEAST_ABOVE) is not None
    for celsius in (23.9, 22.0, 10.0, -300.0):
        assert reached(pot, celsius) is None


def test_the_plus_minus_grows_with_the_time_ahead_and_shrinks_with_readings():
    def pot(times):
        return learn([tuple((minutes, cooled(84, 20, 50, minutes)) for minutes in times)], 20.0)

    offs = [reached(pot((0, 10)), celsius)[1] for celsius in (70, 65, 60, 55, 50)]
    assert offs == sorted(offs)
    assert reached(pot((0, 10)), 60)[1] > reached(pot((0, 5, 10)), 60)[1] > reached(pot(range(11)), 60)[1]
    assert reached(pot((0, 6)), 60)[1] > reached(pot((0, 12)), 60)[1]


def test_scattered_readings_widen_the_plus_minus():
    smooth = tuple((minutes, cooled(84, 20, 50, minutes)) for minutes in range(0, 30, 5))
    rough = tuple((minutes, celsius + 3 * (-1) ** row) for row, (minutes, celsius) in enumerate(smooth))
    assert learn([rough], 20.0).line.scale > 3
    assert reached(learn([rough], 20.0), 55)[1] > 2 * reached(learn([smooth], 20.0), 55)[1]


def _simulated(rng: random.Random, count: int, exponent: float) -> tuple[list, float, float, float]:
    """A pot whose pace falls with its warmth as still air has it, read with errors: its log, room and target, the truth."""
    room, start, half = rng.uniform(15, 28), rng.uniform(74, 92), rng.uniform(20, 90)
    above, less = start - room, 1 - exponent - 1e-9
    rate = math.log(2) / half * above**less

    def warmth(minutes):
        return (above**less - less * rate * minutes) ** (1 / less)

    def time(warm):
        return (above**less - warm**less) / (less * rate)

    fall, late = rng.uniform(4, 16), rng.random()
    last = time(above - fall)
    moments = [last * row / (count - 1) for row in range(count)]
    log = [(math.floor(moment + late) - late, round(room + warmth(moment) + rng.gauss(0, 0.5), 1)) for moment in moments]
    target = rng.uniform(52, start - fall - 1)
    return log, round(room + rng.gauss(0, 0.5)), target, time(target - room)


@pytest.mark.parametrize(("count", "least", "most"), [(2, 0.93, 0.985), (3, 0.93, 0.985), (5, 0.93, 0.985)])
def test_the_plus_minus_holds_for_a_thousand_pots(count, least, most):
    rng, held, told = random.Random(40 + count), 0, 0
    for _ in range(1000):
        log, room, target, true = _simulated(rng, count, rng.uniform(1.0, 1.25))
        # Two readings within one minute are kept as one.
        pot = learn([list(dict(log).items())], room)
        found = reached(pot, target) if pot is not None else None
        if found is not None:
            told += 1
            held += abs(found[0] + pot.newest - true) <= found[1]
    assert told > 950 and least <= held / told <= most


def test_even_at_the_steepest_law_of_still_air_most_pots_are_held():
    rng, held = random.Random(9), 0
    for _ in range(1000):
        log, room, target, true = _simulated(rng, 3, 1.25)
        pot = learn([list(dict(log).items())], room)
        found = reached(pot, target) if pot is not None else (math.inf, 0)
        held += found[0] == math.inf or abs(found[0] + log[-1][0] - true) <= found[1]
    assert held >= 900


@pytest.mark.parametrize("last", [25, 30])
@pytest.mark.parametrize("minute", [35, 40, 45])
def test_a_real_mug_comes_to_its_temperatures_within_the_plus_minus(last, minute):
    pot = learn([[(time, celsius) for time, celsius in MUG.items() if time <= last]], 24.0)
    after, off = reached(pot, MUG[minute])
    assert abs(pot.newest + after - minute) <= off
