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
    assert figures["dry_at"].label == "Likely dry" and "4 weighings" in figures["dry_at"].spread
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
    assert "It gained 40 g by Sun, Nov 22: was it wetted, or coated?" in dryness.notes[0]
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


@pytest.mark.parametrize(("poured", "at", "says"), [
    ("2026-11-20T10:00", "2026-11-20T09:00", "before the pour"), ("2026-11-20T10:00", "2028-11-21T09:00", "a year away from the pour"),
    ("", "2028-11-21T09:00", "a year away from the first weighing"), ("", "2018-11-21T09:00", "a year away")])
def test_a_weighing_at_an_odd_date_is_told_beside_it_and_left_out(poured, at, says):
    weights = [{"at": "2026-11-21T09:00", "weight": "920 g"}, {"at": at, "weight": "905 g"}]
    answer = answer_of(vessel(casts__0__curing__poured_at=poured, casts__0__drying__weights=weights))
    assert set(faults(answer)) == {"weights.1.at"} and says in faults(answer)["weights.1.at"]
    assert answer.dryness["casts.0"].weighed.weights == (920.0,)


def test_two_weights_at_one_moment_can_t_both_be():
    answer, dryness, _ = found([(0, "946 g"), (0, "928 g"), (24, "927 g")])
    assert "weighed 946 g too" in faults(answer)["weights.1.at"] and dryness.weighed.weights == (946.0, 927.0)


def test_a_small_loss_a_day_over_many_days_is_not_steady():
    """Twenty days apart and 16 g lighter: nobody saw its weight rest."""
    _, dryness, figures = found([(0, "684 g"), (480, "668 g")])
    assert not dryness.dry and figures["lost_in_a_day"].says == "Not steady yet: in a day it lost 0.8 g"
    assert found([(0, "684 g"), (480, "668 g"), (504, "668 g"), (528, "668 g")])[1].dry


def test_a_curve_that_should_be_dry_and_is_not_tells_no_day():
    rows = [(0, "684 g"), (24, "668 g"), (48, "660 g"), (72, "656 g"), (96, "655 g"), (240, "655 g")]
    _, dryness, figures = found(rows, dry_weight="650 g")
    assert not dryness.dry and dryness.dry_at is None and dryness.between == ""
    assert (figures["dry_at"].label, figures["dry_at"].shown) == ("Not dry yet", "Weigh it again")
    assert figures["left"].says == "Steady, yet 5 g above its dry weight: dry it longer, or weigh that again"


def test_a_forecast_says_between_which_days():
    assert found(FALLING, dry_weight="900 g")[1].between.startswith("between ")
    assert found([(0, "901 g")], dry_weight="900 g")[1].between == ""


def test_a_coarse_scale_is_told_of_and_a_very_coarse_one_never_calls_it_dry():
    _, dryness, _ = found([(0, "91 g")], dry_weight="90 g")
    assert dryness.dry and "1.1 % of the vessel's weight, more than the 0.5 %" in dryness.notes[0]
    _, dryness, figures = found([(0, "120 g"), (24, "105 g")], dry_weight="100 g", readability="5 g")
    assert not dryness.dry and "finer scale" in dryness.notes[0] and "dry_at" not in figures
    assert figures["left"].says == "Within 5 g of dry, too little for this scale to tell"
    assert found(FALLING)[1].notes == ()


def test_a_coat_outdates_the_dry_weight():
    rows = [(0, "910 g"), (24, "902 g"), (48, "909 g")]
    assert "leave that empty" in found(rows, dry_weight="900 g")[1].notes[0]
    assert "dry weight" not in found(rows)[1].notes[0]


def wrapped(rows, **curing):
    record_ = record([(hours, weight) for hours, weight in rows])
    record_["casts"][0]["curing"] = {"poured_at": moment_text(START - 2 * HOUR), **curing}
    return answer_of(record_)


def test_a_weight_that_rests_while_it_is_kept_damp_is_not_dry():
    """A wrapped cast loses nothing, and is as wet as ever."""
    rows = [(0, "700 g"), (24, "700 g"), (48, "700 g")]
    answer = wrapped(rows, damp="3 d")
    assert not answer.dryness["casts.0"].dry and answer.dryness["casts.0"].weighed.weights == (700.0,)
    assert "its weight rests without being dry" in answer.dryness["casts.0"].notes[0]
    assert "if its weight tells" in answer.figures["casts.0.curing.fill"].says
    assert len(wrapped(rows, damp="0").dryness["casts.0"].weighed.weights) == 3


def test_the_last_weighing_of_the_damp_days_is_where_drying_begins():
    answer = wrapped([(0, "700 g"), (20, "699 g"), (44, "680 g")], damp="1 d")
    assert answer.dryness["casts.0"].weighed.weights == (699.0, 680.0)
    assert wrapped([(20, "699 g"), (44, "680 g")], damp="1 d").dryness["casts.0"].notes == ()


def test_a_steady_weight_that_never_fell_needs_more_days():
    short, long = ([(24 * day, "700 g") for day in range(count)] for count in (3, 12))
    assert not found(short)[1].dry and "Steady, yet" in found(short)[2]["left"].says
    assert found(long)[1].dry
