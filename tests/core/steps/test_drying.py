"""The drying vessel: its figures, what is said of odd weighings, and that everything shown works out."""

import math
import random

import pytest
from arithmetic import split, work_out
from hypothesis import given, settings
from hypothesis import strategies as st
from vessels import ANYTHING, DISPLAYS, full_vessel, vessel

from brimbook.quantity.moments import HOUR, moment_text, read_moment
from brimbook.settings import display_of, whole
from brimbook.work_out import work_out as answer_of

AT = "casts.0.drying"
START = read_moment("2026-11-20T09:00")
FALLING = [(0, "946 g"), (24, "928 g"), (48, "917 g"), (72, "911 g")]
STEADY = [(0, "946 g"), (120, "903 g"), (168, "902 g"), (216, "902 g"), (264, "902 g")]


def record(rows, **texts):
    weights = [{"at": "" if hours is None else moment_text(START + hours * HOUR), "weight": weight} for hours, weight in rows]
    return vessel(**{f"casts__0__drying__{name}": text for name, text in texts.items()}, casts__0__drying__weights=weights)


def found(rows, how=None, **texts):
    answer = answer_of(record(rows, **texts), display_of(whole(how or {})))
    figures = {key.removeprefix(f"{AT}."): figure for key, figure in answer.figures.items() if key.startswith(AT)}
    for figure in figures.values():
        numbers = figure.to_plain()["working"]["numbers"]
        numbers = numbers.replace(",", ".") if (how or {}).get("decimal") == "comma" else numbers
        expression, told, half, unit = split(numbers)
        assert abs(work_out(expression) - told) <= half * 1.15, f"{figure.key}: {numbers}"
        assert abs(figure.value * (100 if figure.unit == "–" else 1) - told) <= half * 1.15, figure.key
    return answer, answer.dryness.get("casts.0"), figures


def faults(answer):
    return {fault.path.removeprefix(f"{AT}."): fault.sentence for fault in answer.said.faults}


def test_nothing_weighed_is_no_answer():
    assert found([])[1] is None
    assert found([], dry_weight="900 g")[1] is None
    assert found([(None, ""), (24, "")])[1] is None


def test_a_single_weighing_tells_the_water_but_no_day():
    _, dryness, figures = found([(0, "946 g")], dry_weight="900 g")
    assert figures["left"].value == 46 and figures["left"].says == "Not yet: 46 g of water still in it"
    assert figures["share"].value == pytest.approx(46 / 900)
    assert dryness.dry_at is None and not dryness.dry and "dry_at" not in figures


def test_a_single_weighing_without_a_dry_weight_tells_nothing():
    _, dryness, figures = found([(0, "946 g")])
    assert figures == {} and dryness.dry_at is None


def test_a_drying_vessel_is_told_when():
    _, dryness, figures = found(FALLING, dry_weight="900 g")
    assert figures["left"].says == "Not yet: 11 g of water still in it"
    assert START + 72 * HOUR < dryness.dry_at < START + 240 * HOUR
    assert dryness.dry_at == pytest.approx(START + figures["dry_at"].value * HOUR)
    assert "ln(" in figures["dry_at"].numbers and "90 % sure" in figures["dry_at"].says
    assert figures["dry_at"].label == "Dry" and "4 weighings" in figures["dry_at"].spread
    assert figures["halving"].unit == "h" and 20 < figures["halving"].value < 60
    assert figures["lost_in_a_day"].value == pytest.approx(6) and "Not steady yet" in figures["lost_in_a_day"].says


def test_early_on_it_is_said_that_it_is_early():
    _, _, figures = found(FALLING[:2])
    assert figures["dry_at"].says.startswith("Too early to say well")
    assert "Too early" not in found(FALLING, dry_weight="900 g")[2]["dry_at"].says


def test_a_vessel_within_the_margin_is_dry_since_the_first_such_weighing():
    _, dryness, figures = found([(0, "946 g"), (96, "906 g"), (120, "904 g"), (144, "902 g")], dry_weight="900 g")
    assert dryness.dry and figures["left"].says == "Dry enough: within 2 g of dry"
    assert figures["dry_at"].value == 120 and dryness.dry_at == START + 120 * HOUR
    assert "halving" not in figures


@pytest.mark.parametrize(("now", "says"), [("904.5 g", "Dry enough: within 4.5 g of dry"),
                                           ("900 g", "Dry enough: at its dry weight"),
                                           ("899 g", "Dry enough: 1 g under dry"),
                                           ("905 g", "Not yet: 5 g of water still in it")])
def test_the_margin_divides_dry_from_wet(now, says):
    assert found([(0, now)], dry_weight="900 g")[2]["left"].says == says


def test_the_margin_is_never_finer_than_the_scale():
    assert found([(0, "91 g")], dry_weight="90 g")[1].dry
    assert not found([(0, "91 g")], {"readability": "0.1 g"}, dry_weight="90 g")[1].dry
    assert not found([(0, "91 g")], dry_weight="90 g", readability="0.1 g")[1].dry


def test_without_a_dry_weight_it_takes_a_steady_weight_and_a_flat_curve():
    _, dryness, figures = found(STEADY)
    assert dryness.dry and figures["left"].says.startswith("Dry enough by its steady weight")
    assert "Steady: in a day it lost 0 g" == figures["lost_in_a_day"].says
    assert dryness.dry_at <= START + 264 * HOUR and figures["dry_at"].label == "Dry since"


def test_a_steady_weight_alone_is_not_enough_while_the_curve_doubts():
    _, dryness, figures = found([(0, "900 g"), (24, "900 g")])
    assert not dryness.dry and "Steady, yet" in figures["left"].says and "43 g" in figures["left"].says


def test_what_is_left_without_a_dry_weight_has_a_range():
    _, _, figures = found(FALLING)
    assert figures["left"].label == "Water left, about" and " to " in figures["left"].says
    assert "exp(" in figures["left"].numbers or "× (1 −" in figures["left"].numbers


def test_a_gain_starts_anew_and_is_told():
    rows = [(0, "946 g"), (24, "920 g"), (48, "960 g"), (72, "940 g"), (96, "928 g")]
    _, dryness, figures = found(rows, dry_weight="900 g")
    assert "It gained 40 g by Sun, Nov 22: was it wetted?" in dryness.notes[0]
    assert dryness.weighed.weights == (960.0, 940.0, 928.0)
    assert figures["dry_at"].value == found(rows[2:], dry_weight="900 g")[2]["dry_at"].value


def test_noise_of_the_scale_is_no_wetting():
    _, dryness, _ = found([(0, "946 g"), (24, "920 g"), (30, "922 g"), (48, "912 g")], dry_weight="900 g")
    assert dryness.notes == () and len(dryness.weighed.weights) == 4


def test_rows_may_stand_in_any_order_and_at_equal_times():
    straight = found([*FALLING, (72, "912 g")], dry_weight="900 g")[2]
    mixed = found([FALLING[2], FALLING[0], FALLING[3], (72, "912 g"), FALLING[1]], dry_weight="900 g")[2]
    assert {name: figure.shown for name, figure in straight.items()} == {name: figure.shown for name, figure in mixed.items()}
    assert "dry_at" not in found([(5, "946 g"), (5, "945 g")], dry_weight="900 g")[2]


def test_a_dry_weight_that_can_t_be_is_told_beside_it_and_left_out():
    answer, dryness, figures = found([(0, "946 g"), (24, "920 g")], dry_weight="935 g")
    assert "It weighed 920 g since, 15 g less than this" in faults(answer)["dry_weight"]
    assert dryness.weighed.dry_weight is None and figures["left"].label == "Water left, about"


def test_a_slip_of_the_digits_is_told_beside_its_weight_and_left_out():
    answer, dryness, _ = found([*FALLING, (96, "90.8 g"), (97, "9080 g")], dry_weight="900 g")
    assert set(faults(answer)) == {"weights.4.weight", "weights.5.weight"}
    assert "less than half" in faults(answer)["weights.4.weight"] and len(dryness.weighed.weights) == 4


def test_a_weighing_without_its_time_waits():
    _, dryness, figures = found([(None, "930 g")], dry_weight="900 g")
    assert figures == {} and dryness.notes == ("A weighing counts once its time is typed too.",)
    assert len(found([*FALLING, (None, "905 g")], dry_weight="900 g")[1].weighed.weights) == 4


@pytest.mark.parametrize("name", ["dry_weight", "margin", "steady", "readability"])
def test_figures_wait_for_an_entry_that_can_t_be_read(name):
    answer, _, figures = found(FALLING, **{"dry_weight": "900 g", name: "x"})
    assert figures == {} and set(faults(answer)) == {name}


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("dry", ["", "900 g"])
def test_every_display_works_out(how, dry):
    for rows in (FALLING[:2], FALLING, STEADY):
        assert found(rows, how, dry_weight=dry)[2]


@given(st.lists(st.tuples(st.integers(0, 1000), st.integers(9000, 11_000)), min_size=1, max_size=8),
       st.sampled_from(["", "890 g", "950.5 g"]), st.sampled_from(["0.1 g", "1 g", "5 g"]))
@settings(max_examples=80)
def test_any_weighings_work_out(rows, dry, step):
    found([(hours, f"{tenths / 10} g") for hours, tenths in rows], {"decimal": "point"}, dry_weight=dry, readability=step)


@given(ANYTHING)
@settings(max_examples=60)
def test_a_bent_list_is_no_fault_of_the_core(part):
    answer_of(vessel(casts__0__drying__weights=part))
    answer_of(vessel(casts__0__drying=part))


def test_the_full_vessel_tells_its_water():
    assert answer_of(full_vessel()).figures[f"{AT}.left"].says == "Dry enough: at its dry weight"


def test_more_weighings_narrow_the_day():
    chance, rows = random.Random(5), []
    for day in range(7):
        rows.append((24 * day, f"{900 + 60 * math.exp(-day / 3) + chance.gauss(0, 0.3):.0f} g"))
    widths = []
    for count in (2, 4, 7):
        forecast = found(rows[:count], dry_weight="900 g")[1].forecast
        widths.append(forecast.latest - forecast.earliest)
    assert widths[0] > 1.5 * widths[1] > 1.5 * widths[2]


def test_a_long_list_is_no_burden():
    rows = [(hour, f"{900 + 46 * math.exp(-hour / 300):.1f} g") for hour in range(0, 900, 3)]
    _, dryness, figures = found(rows, dry_weight="900 g")
    assert len(dryness.weighed.weights) == 300 and "dry_at" in figures
