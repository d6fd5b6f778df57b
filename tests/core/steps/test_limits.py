"""Cold and heat are told of, each limit with its source."""

import pytest
from vessels import vessel

from brimbook.work_out import work_out


def notes(celsius, kind="portland"):
    record = vessel(casts__0__curing__temperature=celsius, casts__0__mix__powder={"kind": kind})
    return work_out(record).schedules["casts.0"].notes


@pytest.mark.parametrize(("celsius", "word"), [("5 °C", "frost"), ("41 °F", "frost"), ("10 °C", "too slowly"),
                                               ("12.9 °C", "thin wall"), ("36 °C", "hotter")])
def test_cold_and_heat_are_told_with_their_source(celsius, word):
    (note,) = [note for note in notes(celsius) if word in note]
    assert note.endswith(").") and any(standing in note for standing in ("published", "second hand", "from memory"))


@pytest.mark.parametrize("celsius", ["13 °C", "20 °C", "35 °C"])
def test_a_fair_bench_is_not_spoken_of(celsius):
    assert notes(celsius) == ()


def test_plaster_is_not_warned_of_cold_concrete():
    assert not any("thin wall" in note for note in notes("12 °C", "gypsum"))
