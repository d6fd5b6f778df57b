"""The clock: from the pour to the wax, by its log."""

import re

import pytest
from arithmetic import split
from arithmetic import work_out as by_hand
from hypothesis import given
from vessels import DISPLAYS, bent_vessels, figures, put, sheet, vessel

from brimbook.quantity.moments import DAY, HOUR, read_moment
from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.curing import curing
from brimbook.steps.drying import Dryness
from brimbook.work_out import work_out

POURED = "2026-11-24T10:00"
START = read_moment(POURED)
PORTLAND = {"kind": "portland", "particle_density": "3.15 g/mL"}
STEPS = ["demold", "damp_until", "dry", "sealed", "painted", "fill"]


def clocked(*log, powder=PORTLAND, **texts):
    """A vessel whose clock runs; log is pairs of a moment and a temperature."""
    record = vessel(casts__0__curing__poured_at=POURED, casts__0__mix__powder=powder)
    put(record, "casts.0.curing.temperatures", [{"at": at, "temperature": celsius} for at, celsius in log])
    for path, text in texts.items():
        put(record, f"casts.0.curing.{path}", text)
    return record


def schedule(record, dry_at=None, **coats):
    said = understand(record, Display())
    for name in ("sealer", "primer", "paint"):
        said.values[f"casts.0.finishing.{name}_coats"] = coats.get(name, 0.0)
        said.values[f"casts.0.finishing.{name}_hours"] = 2 * HOUR
    return curing(said, "casts.0", None if dry_at is None else Dryness(dry_at))


def hours(record, name="demold"):
    return work_out(record).figures[f"casts.0.curing.{name}"].value


def told(record, **how):
    return {key.removeprefix("casts.0.curing."): figure for key, figure in figures(record, **how).items()
            if key.startswith("casts.0.curing.")}


def test_at_the_temperature_of_its_time_the_powder_keeps_it():
    assert hours(clocked()) == 24 and hours(vessel(casts__0__curing__poured_at=POURED)) == 0.75
    shown = told(clocked())["demold"]
    assert shown["shown"] == "Wed, Nov 25, 10:00" and shown["says"] == "Demold Wed, Nov 25, 10:00"
    assert shown["working"]["numbers"] == "24 = 24 h ≈ Wed, Nov 25, 10:00"


def test_before_the_pour_it_is_told_from_the_pour_on():
    record = vessel()
    assert told(record)["demold"]["says"] == "Demold 45 min after the pour"
    assert work_out(record).schedules["casts.0"].events == ()


@pytest.mark.parametrize(("texts", "expected"), [
    # 24 ÷ exp(−33500 ÷ 8.314 × (1 ÷ 283.15 − 1 ÷ 293.15))
    ({"temperature": "10 °C"}, 39.0), ({"temperature": "10 °C", "energy": "41.5"}, 43.79),
    ({"temperature": "10 °C", "law": "nurse_saul"}, 48.0),
    ({"temperature": "10 °C", "law": "nurse_saul", "datum": "-10 °C"}, 36.0), ({"temperature": "30 °C"}, 15.25),
])
def test_portland_cement_follows_its_law(texts, expected):
    assert hours(clocked(**texts)) == pytest.approx(expected, abs=0.01)


def test_another_powder_follows_the_rule_of_setting_times():
    slow = vessel(casts__0__curing__poured_at=POURED, casts__0__curing__temperature="48 °F")
    assert hours(slow) == pytest.approx(1.5)
    shown = told(slow)
    assert shown["demold"]["plus_minus"] == "± 1 h 10 min"  # a quarter of 90 min, and the 45 min once more
    assert any("Portland cement only" in note for note in work_out(slow).schedules["casts.0"].notes)


def test_the_plus_minus_of_portland_grows_with_the_correction():
    offs = [work_out(clocked(temperature=f"{celsius} °C")).figures["casts.0.curing.demold"].plus_minus
            for celsius in (20, 15, 8)]
    assert offs[0] == pytest.approx(2.4) and offs == sorted(offs)


def test_a_log_by_hand():
    """12 h at (20 + 8) ÷ 2 = 14 °C count as 8.4 h by degrees above 0 °C; then 15.6 h are left at 8 ÷ 20: 39 h."""
    record = clocked(("2026-11-24T22:00", "8 °C"), temperature="20 °C", law="nurse_saul")
    shown = told(record)
    assert hours(record) == pytest.approx(51)
    assert shown["demold"]["working"]["numbers"].startswith("12 + (24 − 8.4) ÷ 0.4 = 51 h")
    assert shown["age"]["shown"] == "8 h 24 min" and shown["pace"]["says"] == "At 8 °C it sets at 40 % of its pace at 20 °C"
    assert shown["ripe"]["value"] == 480


def test_a_log_after_demolding_changes_nothing_before_it():
    late = [("2026-11-24T12:00", "20 °C"), ("2026-11-27T12:00", "20 °C"), ("2026-11-28T12:00", "3 °C")]
    assert hours(clocked(*late, temperature="20 °C")) == pytest.approx(24)


def test_a_constant_log_is_as_a_constant_bench():
    log = [(f"2026-11-24T{hour}:17", "11 °C") for hour in range(11, 23)]
    for texts in ({}, {"law": "nurse_saul"}):
        for name in ("demold", "adjusted", "gained"):
            assert hours(clocked(*log, temperature="11 °C", **texts), name) == pytest.approx(
                hours(clocked(temperature="11 °C", **texts), name))


def test_readings_after_the_damp_days_don_t_count_for_their_strength():
    late = ("2026-12-20T10:00", "20 °C"), ("2026-12-24T10:00", "35 °C")
    assert hours(clocked(*late), "adjusted") == pytest.approx(hours(clocked(), "adjusted"))


def test_the_order_of_the_log_does_not_matter_and_of_two_at_once_the_later_entry_counts():
    log = [("2026-11-24T14:00", "12 °C"), ("2026-11-24T22:00", "7 °C"), ("2026-11-25T08:00", "15 °C")]
    assert hours(clocked(*reversed(log))) == hours(clocked(*log)) == hours(clocked(log[0], *log)) == hours(
        clocked(("2026-11-24T22:00", "30 °C"), *log))


def test_a_reading_before_the_pour_is_a_fault_beside_it():
    record = clocked(("2026-11-24T09:59", "12 °C"), ("2026-11-24T12:00", "20 °C"))
    (fault,) = sheet(record)["faults"]
    assert fault["path"] == "casts.0.curing.temperatures.0.at" and "before the pour" in fault["sentence"]
    assert hours(record) == 24


def test_half_a_reading_is_skipped():
    assert hours(clocked(("", "5 °C"), ("2026-11-24T12:00", ""), ("2026-11-24T12:00", "20 °C"))) == 24


def test_a_log_of_three_hundred_readings_is_told_in_short():
    log = [(f"2026-11-{24 + row // 144:02d}T{row // 6 % 24:02d}:{row % 6}0", f"{5 + row % 9} °C") for row in range(61, 361)]
    shown = told(clocked(*log, temperature="5 °C"))
    assert all(len(figure["working"]["numbers"]) < 200 for figure in shown.values())
    expression, result, off, _ = split(shown["age"]["working"]["numbers"])
    assert by_hand(expression) == pytest.approx(result, abs=off * 1.15)


def test_time_is_the_same_on_the_night_that_clocks_are_changed():
    """The bench's clock has no zone: nothing is skipped or told twice."""
    for night in ("2026-03-29", "2026-10-25", "2026-11-01"):
        record = put(clocked(), "casts.0.curing.poured_at", f"{night}T00:30")
        assert told(record)["demold"]["shown"].endswith("00:30")


@pytest.mark.parametrize("powder", [PORTLAND, {"kind": "rapid", "particle_density": "2.98 g/mL"}], ids=lambda each: each["kind"])
def test_frozen_it_does_not_go_on_setting(powder):
    record = clocked(powder=powder, temperature="-4 °C")
    assert told(record) == {}
    card = next(card for card in sheet(record)["cards"] if card["id"] == "cure")
    assert card["answer"] == [] and card["waiting"] == "Too cold to set: warm it up."
    assert any("frost" in note for note in card["notes"])


def test_below_the_datum_nothing_happens_and_a_hair_above_it_is_no_plan():
    assert told(clocked(temperature="-10 °C", law="nurse_saul", datum="-10 °C")).keys() <= {"ripe"}
    assert "demold" not in told(clocked(temperature="0.00001 °C", law="nurse_saul"))
    assert "demold" in told(clocked(temperature="-4 °C", law="nurse_saul", datum="-10 °C"))


def test_a_datum_above_the_bench_of_its_time_is_a_fault():
    record = clocked(law="nurse_saul", datum="9 °C", powder={**PORTLAND, "reference_temperature": "8 °C"})
    (fault,) = sheet(record)["faults"]
    assert fault["path"] == "casts.0.curing.datum" and "8 °C" in fault["sentence"]
    assert "demold" not in told(record)


def test_the_steps_follow_on_each_other():
    found = schedule(clocked(), sealer=2.0, paint=3.0)
    values = {event.name: (event.at - START) / HOUR for event in found.events}
    assert values == {"demold": 24, "damp_until": 96, "dry": 264, "sealed": 268, "painted": 274, "fill": 298}
    assert list(values) == STEPS and all(event.note.endswith(".") for event in found.events)
    assert found.events[0].plus_minus == pytest.approx(2.4 * HOUR) and found.events[1].plus_minus is None


def test_primer_comes_between_sealer_and_paint():
    assert [event.name for event in schedule(clocked(), sealer=1.0, primer=1.0, paint=1.0).events][3:6] == [
        "sealed", "primed", "painted"]


def test_without_coats_it_can_be_filled_when_it_is_dry():
    found = schedule(clocked())
    assert [event.name for event in found.events] == ["demold", "damp_until", "dry", "fill"]
    assert found.events[-1].at == found.events[-2].at


@pytest.mark.parametrize(("kind", "text", "damp"), [("portland", "", 3.0), ("rapid", "", 1.0), ("gypsum", "", None),
                                                    ("own", "", 1.0), ("gypsum", "2 d", 2.0), ("portland", "0", None)])
def test_how_long_it_is_kept_damp_hangs_on_the_powder(kind, text, damp):
    record = clocked(powder={"kind": kind, "particle_density": "2.7 g/mL", "demold_time": "1 h"}, damp=text)
    shown = told(record)
    found = shown["damp_until"]["value"] - shown["demold"]["value"] if "damp_until" in shown else None
    assert found == (None if damp is None else pytest.approx(damp * 24))


def test_its_weights_tell_when_it_is_dry():
    for dry_at, expected in ((START + 9 * DAY, 9 * 24), (START + 3600, 96)):
        found = {figure.key.rpartition(".")[2]: figure for figure in schedule(clocked(), dry_at).figures}
        assert found["dry"].value == pytest.approx(expected) and found["dry"].notes == ()
    assert "common practice" in told(clocked())["dry"]["notes"][0]
    assert told(clocked(dry="10 d"))["dry"]["notes"][0].startswith("10 d of drying is a plan, not a measurement")


def test_weights_without_a_pour_tell_nothing():
    record = put(clocked(), "casts.0.curing.poured_at", "")
    found = {figure.key.rpartition(".")[2]: figure for figure in schedule(record, START).figures}
    assert found["dry"].value == 24 + 72 + 168


def test_days_kept_damp_are_told_as_strength_for_portland_cement_alone():
    shown = told(clocked())
    assert shown["kept_damp"]["shown"] == "80 %" and "strength it is designed for" in shown["kept_damp"]["says"]
    assert told(clocked(damp="7 d"))["kept_damp"]["shown"] == "100 %"
    assert told(clocked(damp="0 d"))["kept_damp"]["says"].startswith("Dried at once")
    assert told(clocked(damp="60 d"))["kept_damp"]["shown"] == "125 %"
    # 4 days by 0.9981 at 20 °C: exp(0.25 × (1 − √(28 ÷ 3.992)))
    assert shown["gained"]["value"] == pytest.approx(0.6620, abs=5e-4)
    assert not {"kept_damp", "gained"} & told(vessel(casts__0__curing__poured_at=POURED)).keys()


def test_cold_makes_less_of_the_same_damp_days():
    values = [told(clocked(temperature=f"{celsius} °C"))["adjusted"]["value"] / told(
        clocked(temperature=f"{celsius} °C"))["damp_until"]["value"] for celsius in (6, 12, 20, 28)]
    assert values == sorted(values)


def test_strength_in_the_first_day_is_not_told_and_soon_after_called_rough():
    assert "gained" not in told(clocked(damp="0 d", powder={**PORTLAND, "demold_time": "12 h"}))
    assert any("rough" in note for note in told(clocked(damp="1 d"))["gained"]["notes"])


@pytest.mark.parametrize(("path", "text"), [("poured_at", "noon"), ("temperature", "warm"), ("energy", "-3"), ("law", "x")])
def test_a_faulty_entry_stops_the_clock(path, text):
    record = clocked(**{path: text})
    assert "demold" not in told(record)
    assert work_out(record).schedules["casts.0"].waiting == "Mend the entry that is marked."


def test_a_faulty_wait_stops_what_comes_after_it():
    assert set(STEPS) & told(clocked(damp="x")).keys() == {"demold"}
    assert set(STEPS) & told(clocked(dry="x")).keys() == {"demold", "damp_until"}
    assert "fill" not in told(clocked(before_filling="x"))


def test_a_powder_without_a_time_asks_for_it():
    record = clocked(powder={"kind": "own", "particle_density": "2.7 g/mL"})
    assert told(record) == {} and "time to demold" in work_out(record).schedules["casts.0"].waiting


def test_a_mold_from_the_first_bowl_follows_its_powder():
    record = clocked()
    record["casts"].append({"bowl": "first", "cavity": {}, "curing": {"poured_at": POURED, "temperature": "10 °C"},
                            "mix": {"powder": {"kind": "rapid"}}})
    assert work_out(record).figures["casts.1.curing.demold"].value == pytest.approx(39.0, abs=0.01)


def test_plans_far_out_of_reach_are_left_out():
    record = clocked(temperature="0.0001 °C", law="nurse_saul", powder={**PORTLAND, "demold_time": "360 d"})
    assert "demold" not in told(record)
    far = put(clocked(damp="366 d", dry="366 d"), "casts.0.curing.poured_at", "2199-12-30T10:00")
    assert told(far)["fill"]["shown"]


@pytest.mark.parametrize("how", DISPLAYS, ids=str)
@pytest.mark.parametrize("texts", [{}, {"law": "nurse_saul", "datum": "-10 °C"}], ids=str)
def test_the_numbers_work_out_under_any_settings(how, texts):
    record = clocked(("2026-11-24T14:00", "-2.5 °C"), ("2026-11-24T22:00", "7.25 °C"), ("2026-11-25T09:07", "16 °C"),
                     temperature="9.3 °C", **texts)
    for powder in (PORTLAND, {"kind": "rapid", "particle_density": "2.98 g/mL", "demold_time": "31 h"}):
        for key, figure in told(put(record, "casts.0.mix.powder", powder), **how).items():
            expression, result, off, _ = split(figure["working"]["numbers"].replace(",", ".") if how.get("decimal") == "comma"
                                               else figure["working"]["numbers"])
            assert abs(by_hand(expression) - result) <= off * 1.15, key
            said = " ".join([figure["says"], figure["shown"], figure["working"]["formula"], figure["working"]["spread"]])
            assert how.get("decimal") != "comma" or not re.search(r"\d\.\d", said)


@given(bent_vessels())
def test_a_bent_vessel_has_steps_in_order(record):
    for made in work_out(record).schedules.values():
        moments = [event.at for event in made.events]
        assert moments == sorted(moments)


def weighed(*rows, dry_weight="", **texts):
    record = clocked(powder={"kind": "rapid", "particle_density": "2.98 g/mL"}, **texts)
    return put(record, "casts.0.drying", {"dry_weight": dry_weight,
                                          "weights": [{"at": at, "weight": weight} for at, weight in rows]})


def test_a_vessel_that_is_wet_after_its_plan_has_no_day_to_fill():
    answer = work_out(weighed(("2026-12-10T09:00", "684 g"), dry_weight="641 g")).schedules["casts.0"]
    assert [event.name for event in answer.events] == ["demold", "damp_until"]
    assert answer.waiting == "Not dry yet: weigh it again." and any("not sure to be dry" in note for note in answer.notes)
    early = work_out(weighed(("2026-11-26T09:00", "684 g"), dry_weight="641 g")).schedules["casts.0"]
    assert early.events[-1].name == "fill" and early.waiting == ""


def test_filling_is_promised_only_where_its_weight_has_told():
    plan, ahead, dry = (told(record)["fill"]["says"] for record in (
        clocked(), weighed(("2026-11-26T09:00", "684 g"), ("2026-11-27T09:00", "670 g"), dry_weight="641 g"),
        weighed(("2026-11-26T09:00", "642 g"), dry_weight="641 g")))
    assert plan.startswith("Fill ") and "if its weight tells that it is dry" in plan and "if its weight" in ahead
    assert dry.startswith("Ready to fill ")


def test_a_forecast_is_called_likely_and_says_between_which_days():
    shown = told(weighed(("2026-11-26T09:00", "684 g"), ("2026-11-27T09:00", "670 g"), dry_weight="641 g"))["dry"]
    assert shown["label"] == "Likely dry, by its weights" and "It is likely dry between " in shown["notes"][0]


@pytest.mark.parametrize("name", ["sealer_hours", "sealer_coats", "paint_hours", "primer_coats"])
def test_a_faulty_coat_leaves_no_day_to_fill(name):
    record = put(clocked(), f"casts.0.finishing.{name}", "x")
    assert "fill" not in told(record)
    assert work_out(record).schedules["casts.0"].waiting == "Mend the entry that is marked."


def test_a_reading_months_after_the_pour_is_a_fault_beside_it():
    record = clocked(("2027-11-24T10:00", "5 °C"), temperature="20 °C")
    (fault,) = sheet(record)["faults"]
    assert fault["path"] == "casts.0.curing.temperatures.0.at" and "90 days" in fault["sentence"]
    assert hours(record) == 24


def test_what_the_closed_card_waits_for_is_one_line_of_a_phone():
    for record in (clocked(temperature="-3 °C"), clocked(powder={"kind": "own"}), clocked(dry="x"),
                   weighed(("2026-12-10T09:00", "684 g"), dry_weight="641 g")):
        assert 0 < len(work_out(record).schedules["casts.0"].waiting) <= 34
