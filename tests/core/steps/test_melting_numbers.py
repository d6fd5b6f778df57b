"""The numbers of a cooling pot work out, however it is logged and read."""

import random

import pytest
from arithmetic import works_out
from vessels import DISPLAYS, figures, put, vessel

from brimbook.candle.cooling import cooled


def logged(seed: int) -> dict:
    rng = random.Random(seed)
    record = vessel(wells__0__fragrance__load=f"{rng.choice([0, 3, 6, 9.5, 20])} %",
                    wells__0__melting__room=f"{rng.choice([-5, 8, 18.5, 20, 27])} °C",
                    wells__0__melting__pour_at=f"{rng.uniform(45, 80):.1f} °C",
                    wells__0__melting__stir=f"{rng.choice([0, 90, 200])} s")
    start, half, minutes = rng.uniform(70, 95), rng.uniform(25, 80), 0
    for row in range(rng.randint(1, 7)):
        minutes += rng.randint(0, 12)
        celsius = cooled(start, 19.0, half, minutes) + rng.gauss(0, 0.5)
        put(record, f"wells.0.melting.readings.{row}", {"at": f"2026-11-24T1{minutes // 60}:{minutes % 60:02d}",
                                                        "temperature": f"{celsius:.{rng.randint(0, 2)}f} °C"})
    if rng.random() < 0.2:
        put(record, "wells.0.melting.poured", rng.choice(["2026-11-24T09:30", "2026-11-24T18:00"]))
    return record


@pytest.mark.parametrize("seed", range(40))
def test_the_numbers_of_a_logged_pot_work_out(seed):
    how = DISPLAYS[seed % len(DISPLAYS)]
    told = {key: figure for key, figure in figures(logged(seed), **how).items() if ".melting." in key}
    assert told
    for figure in told.values():
        value, off, _ = works_out(figure, how.get("decimal") == "comma")
        assert abs(figure["value"] - value) <= off


def test_most_of_these_logs_tell_when_to_pour():
    told = [seed for seed in range(40) if any(key.endswith(".melting.pour") for key in figures(logged(seed)))]
    assert len(told) >= 15
