"""Weighed candles beside the label: the average, the two limits, the sign."""

import pytest
from label_answers import answer, fault, told, weighed


def notes(found):
    return " ".join(found.labels["labels.0"].notes)


def test_the_limits_of_the_average_system():
    found = answer(market="eu", net_weight="173 g")
    assert told(found, "error").value == 7.8 and told(found, "error").shown == "7.8 g"
    assert told(found, "limit_1").value == 165.2 and told(found, "limit_2").value == 157.4
    assert told(answer(market="eu", net_weight="250 g"), "error").value == 9.0


def test_they_are_for_europe_and_for_5_g_to_10_kg():
    assert "labels.0.error" not in answer(market="us").figures
    assert "labels.0.error" not in answer(market="eu", net_weight="4 g").figures
    assert "labels.0.error" in answer(market="eu", net_weight="5 g").figures


@pytest.mark.parametrize(("rows", "says"), [
    (("172 g", "174 g", "173 g", "173.5 g", "176 g"), "None is below 165.2 g."),
    (("164 g", "180 g", "176 g", "175 g", "175 g"), "1 of 5 is below 165.2 g: of a batch about 2.5 % may be."),
    (("157 g", "190 g", "180 g", "175 g", "175 g"), "1 of 5 is below 157.4 g: not one such may be sold under the mark ℮."),
    (("157 g", "156 g", "190 g", "190 g", "190 g"), "2 of 5 are below 157.4 g"),
    (("164 g", *["175 g"] * 39), "1 of 40 is below 165.2 g, none below 157.4 g."),
])
def test_each_is_held_beside_both_limits(rows, says):
    assert says in notes(answer(market="eu", net_weight="173 g", weighed=weighed(*rows)))


def test_the_average_is_told():
    assert "On average they hold 174 g, not less than the label says." in notes(
        answer(market="eu", net_weight="173 g", weighed=weighed("174 g", "174 g")))


def test_in_the_united_states_those_that_are_lighter_are_counted():
    found = notes(answer(market="us", net_weight="173 g", weighed=weighed("172 g", "175 g")))
    assert "1 of 2 is lighter than the label says." in found and "NIST Handbook 133" in found and "℮" not in found
    assert "lighter" not in notes(answer(market="us", net_weight="170 g", weighed=weighed("172 g", "175 g")))


@pytest.mark.parametrize(("count", "says"), [(1, "1 weighed says little"), (4, "4 weighed say little"), (5, "")])
def test_a_few_say_little_of_a_batch(count, says):
    found = notes(answer(weighed=weighed(*["260 g"] * count)))
    assert says in found and ("little of a batch" in found) == bool(says)


def test_nothing_weighed_says_nothing():
    assert "On average" not in notes(answer())


@pytest.mark.parametrize(("market", "net", "height"), [("eu", "173 g", 3.0), ("both", "173 g", 3.0), ("us", "173 g", 0.0)])
def test_the_sign_is_three_millimeters_high_where_it_means_something(market, net, height):
    found = answer(market=market, net_weight=net, average="yes")
    assert found.labels["labels.0"].label.average == height and ("whether you keep them" in notes(found).lower()) == bool(height)
    assert answer(market=market, net_weight=net).labels["labels.0"].label.average == 0


def test_the_sign_beyond_its_range_is_a_fault():
    found = answer(market="eu", net_weight="4.9 g", average="yes")
    assert "5 g to 10 kg" in fault(found, "average") and found.labels["labels.0"].label.average == 0


def test_they_are_told_in_the_maker_s_own_unit():
    assert "On average they hold 9.171 oz" in notes(answer(how={"mass": "oz"}, weighed=weighed("260 g")))
    assert "On average they hold 260,5 g" in notes(answer(how={"decimal": "comma"}, weighed=weighed("260 g", "261 g")))
