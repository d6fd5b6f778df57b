"""What a burn test says in words."""

import pytest
from burns import LOG, burn, plan

from brimbook.steps.verdicts import LAST_WORD


def said(*cycles, wicks=None, how=None, **texts):
    return burn(list(cycles), how=how, wicks=wicks, **texts)[1].verdicts


def cycle(**texts):
    return {"minutes": "4 h", "before": "570 g", "after": "550 g", **texts}


def first(*cycles, **how):
    return said(*cycles, **how)[0]


def test_the_last_word_is_that_this_is_no_certificate():
    assert said(*LOG)[-1] == LAST_WORD and "nothing here is a certificate" in LAST_WORD
    assert said({"lit_at": "2026-11-01T10:00"}) == ()


@pytest.mark.parametrize("sign", [{"soot": "little"}, {"soot": "much"}, {"wick_looks": "mushroom"}, {"wall": "61 °C"}, {"flame": "80 mm"},
                                  {"reached": "wall", "minutes": "50 min", "after": "566 g"}])
def test_signs_of_too_much_heat_ask_for_a_smaller_wick(sign):
    told = first(cycle(**sign))
    assert "one size down" in told and "in cycle 1" in told and "size up" not in told
    assert "one wick less" not in told and "one wick less" in first(cycle(**sign), wicks=plan(2))


@pytest.mark.parametrize("sign", [{"reached": "no"}, {"wick_looks": "drowned"}])
def test_signs_of_too_little_ask_for_a_larger_wick(sign):
    told = first(cycle(**sign))
    assert "one size up" in told and "size down" not in told
    assert ("less fragrance" in told) == ("wick_looks" in sign)


def test_a_pool_is_short_by_the_width_it_needs():
    assert "one size up" in first(cycle(pool="55 mm"), wicks=plan(radius=35))
    assert "nothing calls for another wick" in first(cycle(pool="69 mm"), wicks=plan(radius=35))
    assert "Look at the pool" in first(cycle(pool="55 mm"))


def test_what_is_seen_of_the_pool_counts_more_than_its_width():
    assert "nothing calls" in first(cycle(pool="55 mm", reached="wall"), wicks=plan(radius=35))


def test_a_short_burn_does_not_condemn_a_wick():
    told = first(cycle(reached="no", minutes="2 h", after="560 g"), wicks=plan(radius=35))
    assert "short too" in told and "size up" not in told and "3 h 27 min" in told


def test_only_the_newest_pool_counts():
    assert "nothing calls" in first(cycle(reached="no"), cycle(before="", after="530 g", reached="wall"))


def test_signs_that_point_both_ways_change_nothing():
    told = first(cycle(reached="no", soot="much"))
    assert "both ways" in told and "size" not in told


def flame(text, **how):
    return next(told for told in said(cycle(flame=text), **how) if "ASTM F2417 and" in told)


def test_both_wordings_of_the_flame_limit():
    assert "is under the 3 in (76.2 mm) of ASTM F2417 and within the 75 mm of EN 15493" in flame("75 mm")
    assert "is under" in flame("75.5 mm") and "above the 75 mm" in flame("75.5 mm")
    assert "is not under" in flame("3 in") and "above the 75 mm" in flame("3 in")
    assert "too close to call" in flame("75.5 mm") and "too close" not in flame("40 mm") and "second hand" in flame("40 mm")
    assert "the 3 in of ASTM" in flame("40 mm", how={"length": "in"})


def test_after_smoke_beside_both_editions():
    told = next(each for each in said(cycle(after_smoke="26"), cycle(before="", after="530 g", after_smoke="10")) if "smoked on" in each)
    assert "26 s: longer than the 20 s" in told and "18 s, is within the 30 s" in told


@pytest.mark.parametrize(("cycles", "texts", "words"), [
    ([cycle(minutes="5 h")], {}, "Cycle 1 burned for more than 4 h"),
    ([LOG[0], {**LOG[1], "lit_at": "2026-11-01T15:00", "out_at": "2026-11-01T19:00"}], {}, "Cycle 2 began less than 3 h"),
    ([cycle(trimmed="10 mm")], {}, "longer than 6 mm"),
    ([cycle()], {"room": "15 °C"}, "The room is not between 20 °C and 30 °C"),
])
def test_where_the_log_leaves_the_method(cycles, texts, words):
    told = " ".join(said(*cycles, **texts))
    assert words in told and "does it otherwise (second hand)" in told


def test_a_log_that_keeps_to_the_method_is_not_told_off():
    kept = " ".join(said(*LOG[:2], cycle(trimmed="1/4 in", before="", after="530 g"), room="22 °C"))
    assert "otherwise" not in kept


def test_soot_by_eye_is_a_hint():
    assert any("EN 15426" in told for told in said(cycle(soot="little")))
    assert not any("EN 15426" in told for told in said(cycle(soot="none")))


def test_more_than_there_was_can_t_have_burned():
    assert any("More has burned" in told for told in said(cycle(after="300 g", minutes="40 h")))


def test_every_verdict_is_a_sentence():
    for told in said(*LOG, cycle(before="", after="500 g", soot="much", wall="70 °C", after_smoke="40", flame="90 mm"), room="35 °C"):
        assert told[0].isupper() and told[-1] in ".?"


def test_a_drowned_wick_alone_is_worth_a_word():
    assert "one size up" in first({"minutes": "1 h", "wick_looks": "drowned"})


def test_cycles_are_listed_as_one_would_say_them():
    told = said(*(cycle(minutes="6 h", before=f"{600 - 20 * row} g", after=f"{580 - 20 * row} g") for row in range(3)))
    assert any(each.startswith("Cycles 1, 2 and 3 burned for more than 4 h") for each in told)


def test_one_wick_alone_is_never_told_to_move_along_the_wall():
    """In the middle it is as far from the wall as it can be, and nearer would heat the wall."""
    for sign in ({"soot": "much"}, {"reached": "no"}):
        assert "the wall (common" not in first(cycle(**sign)) and "closer to the wall" not in first(cycle(**sign), wicks=plan(2))
    assert "farther from the wall" in first(cycle(soot="much"), wicks=plan(2))


def test_a_vessel_that_held_more_than_it_can_is_questioned():
    assert any("held 270 g of wax, by its fill 200 g" in each for each in said(cycle(), vessel_weight="300 g"))
    assert not any("by its fill" in each for each in said(cycle(), vessel_weight="330 g"))


def test_a_pool_too_wide_to_be_short_of_the_wall_is_questioned():
    assert any(each.startswith("Cycle 1: a pool that wide") for each in said(cycle(reached="no", pool="90 mm"), wicks=plan()))
    assert not any("that wide" in each for each in said(cycle(reached="no", pool="60 mm"), wicks=plan()))
    assert not any("that wide" in each for each in said(cycle(reached="wall", pool="90 mm"), wicks=plan()))
