"""What a vessel costs: a whole example by hand, and what must hold for any."""

import math

import pytest
from arithmetic import works_out
from hypothesis import given, settings
from hypothesis import strategies as st
from vessels import ANYTHING, DISPLAYS, bent_vessels, figures, full_vessel, put, vessel

from brimbook.quantity.show import Display
from brimbook.record import blank
from brimbook.settings import display_of, whole
from brimbook.work_out import work_out

HAND = {
    "casts.0.pieces": "2", "casts.0.pours.0.powder": "600 g", "casts.0.mix.powder.pack_weight": "20 kg", "casts.0.mix.powder.pack_price": "30",
    "casts.0.clamping.print_weight": "200 g", "casts.0.clamping.spool_weight": "1 kg", "casts.0.clamping.spool_price": "25",
    "casts.0.clamping.lasts": "50", "casts.0.clamping.print_time": "10 h",
    "wells.0.batch.pieces": "4", "wells.0.batch.melted": "1200 g", "wells.0.fragrance.load": "10 %",
    "wells.0.wax.pack_weight": "5 kg", "wells.0.wax.pack_price": "40", "wells.0.fragrance.pack_weight": "500 g",
    "wells.0.fragrance.pack_price": "30", "wells.0.wicks.count": "1", "wells.0.wicks.pack_pieces": "50", "wells.0.wicks.pack_price": "10",
    "packaging.0.name": "Box for two", "packaging.0.each": "0.5", "packaging.0.pack_pieces": "20", "packaging.0.pack_price": "16",
    "selling.0.vessels": "4", "selling.0.hour_rate": "24", "selling.0.labor.casting": "60 min", "selling.0.labor.demolding": "30 min",
    "selling.0.labor.finishing": "20 min", "selling.0.labor.filling": "40 min", "selling.0.labor.packing": "10 min",
    "selling.0.kilowatt_hour": "0.30", "selling.0.printer_power": "100", "selling.0.melter_power": "800", "selling.0.melter_time": "90 min",
    "selling.0.printer_hour": "0.20", "selling.0.other_costs": "4", "selling.0.cast_failures": "20 %", "selling.0.candle_failures": "10 %",
}


def by_hand(**texts):
    """The example, with some of its entries changed; two underscores stand for a dot."""
    record = vessel(wells__0__fill__readings__0__water="200 g")
    for path, text in {**HAND, **{path.replace("__", "."): text for path, text in texts.items()}}.items():
        put(record, path, text)
    return record


def costing(record, display=Display()):
    return work_out(record, display).costing


def test_a_whole_vessel_by_hand():
    """Two of 600 g powder; 1200 g of wax melted for four; a batch of four.

    Cast: 300 g of 20 kg at 30 = 0.45. Wax: 300 g of 5 kg at 40 = 2.40. Fragrance: 30 g of 500 g at 30 = 1.80.
    Wick: 1 of 50 at 10 = 0.20. Packaging: 0.5 of 20 at 16 = 0.40.
    Mold: 200 g of 1 kg at 25, over 50 casts = 0.10; wear 10 h × 0.20 ÷ 50 = 0.04.
    Power: 100 W × 10 h = 1 kWh at 0.30, over 50 = 0.006; 800 W × 1.5 h = 1.2 kWh, over 4 = 0.09.
    Work at 24: 1 h ÷ 4 = 6, 0.5 h = 3, 1/3 h = 2, 2/3 h = 4, 1/6 h = 1: 16 in all. Others: 4 ÷ 4 = 1.
    Before filling: 0.45 + 0.14 + 0.006 + 11 + 1 = 12.596. Filling: 2.40 + 1.80 + 0.20 + 0.09 + 4 = 8.49. Packing: 0.40 + 1 = 1.40.
    Of 20 % and 10 % failures: 12.596 ÷ (0.8 × 0.9) + 8.49 ÷ 0.9 + 1.40 = 17.49444 + 9.43333 + 1.40 = 28.32778.
    All spent on one that is begun: 12.596 + 8.49 + 1.40 = 22.486; borne for failures: 5.84178.
    """
    told = costing(by_hand())
    amounts = {part.name: part.amount for part in told.parts}
    assert amounts == {name: pytest.approx(amount, abs=1e-9) for name, amount in {
        "Cast": 0.45, "Wax": 2.40, "Fragrance": 1.80, "Wicks": 0.20, "Packaging": 0.40, "Mold": 0.14, "Power": 0.096,
        "Your work": 16.0, "Other costs": 1.0, "Failures": 12.596 / 0.72 + 8.49 / 0.9 + 1.4 - 22.486}.items()}
    assert told.each == pytest.approx(28.3277777778) and told.complete
    assert told.vessels == pytest.approx(4 * 0.72) and told.batch == pytest.approx(4 * 0.72 * 28.3277777778)


def test_a_batch_costs_what_is_spent_on_it():
    """Four casts, 3.2 of them filled, 2.88 of them packed."""
    assert costing(by_hand()).batch == pytest.approx(4 * 12.596 + 3.2 * 8.49 + 2.88 * 1.40)


def test_the_parts_shown_add_up_to_the_total_shown():
    """0.45 + 2.40 + 1.80 + 0.20 + 0.40 + 0.14 + 0.10 + 16.00 + 1.00 + 5.84 = 28.33."""
    told = costing(by_hand())
    assert [part.shown for part in told.parts] == ["$0.45", "$2.40", "$1.80", "$0.20", "$0.40", "$0.14", "$0.10", "$16.00", "$1.00", "$5.84"]
    assert work_out(by_hand()).figures["selling.0.cost"].shown == "$28.33"
    assert sum(part.share for part in told.parts) == 100


def test_what_is_paid_out_is_told_without_the_maker_s_hours():
    """Before filling without 11 of work: 1.596; filling without 4: 4.49; packing without 1: 0.40."""
    shown = figures(by_hand())
    assert shown["selling.0.without_work"]["value"] == pytest.approx(1.596 / 0.72 + 4.49 / 0.9 + 0.40)
    assert shown["selling.0.materials"]["value"] == pytest.approx(0.45 + 2.40 + 1.80 + 0.20 + 0.40)
    assert "selling.0.without_work" not in figures(by_hand(selling__0__hour_rate="", selling__0__labor__casting=""))


def test_the_figures_show_their_working():
    shown = figures(by_hand(), decimal="comma", currency="€")
    for key, figure in shown.items():
        if key.startswith("selling.0.") or "per_cast" in key:
            works_out(figure, comma=True)
    numbers = shown["selling.0.failures"]["working"]["numbers"]
    assert numbers == "12,596 × (1 ÷ ((1 − 0,2) × (1 − 0,1)) − 1) + 8,49 × (1 ÷ (1 − 0,1) − 1) = 5,84178 € ≈ 5,84 €"
    assert shown["selling.0.supply_2"]["working"]["numbers"] == "1200 ÷ 4 ÷ 5000 × 40 = 2,4 € ≈ 2,40 €"
    assert shown["selling.0.batch_cost"]["says"] == "A batch of 4 vessels, of which 2,88 turn out on average, costs 81,58 €"


@pytest.mark.parametrize("how", [*DISPLAYS, {"currency": "JPY"}], ids=str)
@pytest.mark.parametrize("record", [by_hand(), *blank.demos(), full_vessel()], ids=["hand", *(demo["name"] for demo in blank.demos()), "full"])
def test_the_numbers_work_out_under_any_settings(record, how):
    shown = {key: figure for key, figure in figures(record, **how).items() if key.startswith("selling.0.") or "per_cast" in key}
    for figure in shown.values():
        works_out(figure, how.get("decimal") == "comma")
    parts = costing(record, display_of(whole(how)))
    if parts is not None:
        assert {part.key for part in parts.parts} <= set(shown)


def in_steps(text, display):
    """An amount as shown, in the smallest steps of its currency."""
    return int("".join(character for character in text if character.isdigit()))


PRICES = [path for path in HAND if path.endswith(("price", "hour_rate", "kilowatt_hour", "printer_hour", "other_costs"))]


@st.composite
def priced(draw):
    """The example with any prices, hours and failures, some of them left out."""
    record = by_hand()
    for path in draw(st.sets(st.sampled_from(sorted(PRICES)))):
        put(record, path, draw(st.one_of(st.just(""), st.integers(0, 5_000_000).map(lambda cents: f"{cents / 100:.2f}"))))
    for name in ("cast_failures", "candle_failures"):
        put(record, f"selling.0.{name}", f"{draw(st.integers(0, 95))} %")
    for step in draw(st.sets(st.sampled_from(["casting", "filling", "packing"]))):
        put(record, f"selling.0.labor.{step}", draw(st.one_of(st.just(""), st.integers(0, 9000).map("{} min".format))))
    return record


@given(priced(), st.sampled_from([Display(), Display(currency="JPY"), Display(currency="€", decimal="comma")]))
def test_parts_add_up_as_they_are_and_as_they_are_shown(record, display):
    answer = work_out(record, display)
    if answer.costing is None:
        return
    parts, told = answer.costing.parts, answer.figures["selling.0.cost"]
    assert math.fsum(part.amount for part in parts) == answer.costing.each == told.value
    assert all(part.amount >= 0 and part.share >= 0 for part in parts)
    assert sum(in_steps(part.shown, display) for part in parts) == in_steps(told.shown, display)
    assert sum(part.share for part in parts) == 100
    assert all(answer.figures[part.key].shown == part.shown for part in parts)


@given(priced(), st.sampled_from(sorted(PRICES)))
def test_a_higher_price_never_costs_less(record, path):
    answer = work_out(record)
    price = answer.said.value(path)
    if answer.costing is None or price is None:
        return
    dearer = costing(put(record, path, f"{price + 5:.2f}"))
    assert dearer.each >= answer.costing.each


@given(priced(), st.sampled_from([2, 10]))
def test_a_weaker_currency_scales_the_cost(record, times):
    before = work_out(record)
    if before.costing is None:
        return
    for path in PRICES:
        if before.said.value(path) is not None:
            put(record, path, f"{before.said.value(path) * times:.2f}")
    after = work_out(record)
    if not after.said.faults:
        assert after.costing.each == pytest.approx(times * before.costing.each)


def test_of_a_batch_twice_as_large_each_bears_half_of_what_is_for_the_batch():
    one = {part.name: part.amount for part in costing(by_hand()).parts}
    two = {part.name: part.amount for part in costing(by_hand(selling__0__vessels="8")).parts}
    assert two["Your work"] == pytest.approx(one["Your work"] / 2) and two["Other costs"] == pytest.approx(0.5)
    assert two["Wax"] == one["Wax"] and two["Mold"] == one["Mold"]


def notes(record):
    answer = work_out(record)
    return answer.figures["selling.0.cost"].notes


def test_what_lacks_a_price_is_named_and_never_counted_as_nothing():
    record = by_hand(wells__0__wax__pack_price="", wells__0__wicks__pack_price="", wells__0__wicks__name="Cotton, thin")
    assert notes(record) == ("No price yet for: Soy wax; Cotton, thin.",)
    assert not costing(record).complete and "Wax" not in [part.name for part in costing(record).parts]
    assert work_out(record).figures["selling.0.cost"].label == "One vessel, so far"


@pytest.mark.parametrize(("texts", "note"), [
    ({"wells__0__wax__pack_weight": ""}, "Type what a pack holds of: Soy wax."),
    ({"wells__0__wicks__count": "x"}, "Not counted, as how much of it is not known yet: Wick."),
    ({"selling__0__hour_rate": ""}, "No price yet for: Your work."),
    ({"selling__0__labor__filling": "x"}, "Not counted, as how much of it is not known yet: Wicks, wax and scent."),
    ({f"selling__0__labor__{step}": "" for step in ("casting", "demolding", "finishing", "filling", "packing")},
     "Not counted, as how much of it is not known yet: Your work."),
    ({"selling__0__kilowatt_hour": ""}, "No price yet for: Power."),
    ({"selling__0__kilowatt_hour": "", "selling__0__melter_power": "", "selling__0__melter_time": ""}, "No price yet for: Power."),
    ({"selling__0__melter_time": ""}, "Not counted, as how much of it is not known yet: Power of the melter."),
    ({"casts__0__clamping__print_time": ""}, "Not counted, as how much of it is not known yet: Wear of the printer; Power of the print."),
    ({"casts__0__clamping__spool_price": ""}, "No price yet for: Plastic of the mold."),
    ({"casts__0__clamping__print_weight": ""}, "Not counted, as how much of it is not known yet: Plastic of the mold."),
    ({"casts__0__finishing__paint__pack_price": "9"}, "Not counted, as how much of it is not known yet: Paint."),
    ({"packaging__0__each": "x"}, "Not counted, as how much of it is not known yet: Box for two."),
], ids=lambda value: next(iter(value)) if isinstance(value, dict) else "")
def test_each_gap_is_told(texts, note):
    record = by_hand(**texts)
    assert notes(record) == (note,) and not costing(record).complete


def test_a_long_list_of_gaps_is_cut():
    record = by_hand()
    record["packaging"] = [{"name": f"Part {row}"} for row in range(9)]
    assert notes(record) == ("No price yet for: Part 0; Part 1; Part 2; Part 3; Part 4; Part 5; and 3 more.",)


def test_what_is_free_costs_nothing_and_is_no_gap():
    record = by_hand(wells__0__wax__pack_price="0", wells__0__wax__pack_weight="")
    assert {part.name: part.amount for part in costing(record).parts}["Wax"] == 0 and costing(record).complete
    works_out(figures(record)["selling.0.supply_2"])


def test_what_was_left_out_of_a_pour_needs_no_price():
    record = by_hand()
    record["casts"][0]["mix"]["others"] = [{"kind": "red_oxide", "share": "3 %"}]
    assert notes(record) == ("No price yet for: Red iron oxide.",)
    put(record, "casts.0.pours.0.others.0.weighed", "0 g")
    assert notes(record) == () and costing(record).complete


def test_no_price_no_cost():
    assert costing(vessel()) is None and costing(blank.blank()) is None
    assert costing(vessel(selling__0__other_costs="0")) is None
    assert costing(vessel(selling__0__other_costs="3")).each == 3


def test_unpaid_work_is_no_part_and_no_gap():
    record = by_hand(selling__0__hour_rate="0")
    assert {part.name: part.amount for part in costing(record).parts}["Your work"] == 0 and costing(record).complete


@pytest.mark.parametrize("name", ["vessels", "cast_failures", "candle_failures"])
def test_a_faulty_share_or_count_leaves_the_cost_open(name):
    assert costing(by_hand(**{f"selling__0__{name}": "x"})) is None


def test_the_vessels_of_a_batch_are_those_cast_until_told_otherwise():
    assert costing(by_hand(selling__0__vessels="")).vessels == pytest.approx(2 * 0.72)


def test_without_failures_there_is_no_such_part():
    record = by_hand(selling__0__cast_failures="", selling__0__candle_failures="0 %")
    assert "Failures" not in [part.name for part in costing(record).parts]
    assert not {"selling.0.failures", "selling.0.to_cast"} & set(figures(record))
    assert work_out(record).figures["selling.0.batch_cost"].says == "A batch of 4 vessels costs $89.94"


def test_a_mold_for_each_cast_wears():
    record = by_hand()
    record["casts"].append({"bowl": "first", "pieces": "2", "clamping": dict(record["casts"][0]["clamping"])})
    assert {part.name: part.amount for part in costing(record).parts}["Mold"] == pytest.approx(0.28)


@pytest.mark.parametrize("demo", [2, 3], ids=["Ballast tumblers", "Keel bowl"])
def test_the_demos_tell_a_whole_cost(demo):
    told = costing(blank.demos()[demo])
    assert told.complete and 10 < told.each < 30 and len(told.parts) >= 8


@given(bent_vessels() | ANYTHING)
@settings(max_examples=60)
def test_whatever_the_record_the_cost_is_a_number_or_none(record):
    told = costing(record)
    if told is not None:
        assert 0 < told.each < 1e15 and told.vessels > 0 and told.batch > 0
