"""Sensitizers: what a substance comes to in the candle, and at which share its label must tell of it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import figures, put, vessel

SCENTS, AT = "wells.0.fragrance.scents", "wells.0.scent.sensitizer_"
VERDICTS = {"H317": "classifies the candle (H317)", "EUH208": "named on the label (EUH208)", "": "below both thresholds"}


def candle(*scents, load="8 %"):
    return put(vessel(wells__0__fragrance__load=load, wells__0__fragrance__basis="blend"), SCENTS,
               [{"name": f"Scent {row}", "sensitizers": list(each)} for row, each in enumerate(scents)])


def one(share, category="1B", load="8 %", **more):
    return figures(candle([{"name": "Limonene", "share": share, "class": category, **more}], load=load))[AT + "1"]


@pytest.mark.parametrize(("share", "load", "comes_to", "verdict"), [
    ("5 %", "8 %", 0.0040, "EUH208"), ("5 %", "1.9 %", 0.00095, ""), ("25 %", "4 %", 0.0100, "H317")])
def test_the_worked_examples(share, load, comes_to, verdict):
    figure = one(share, load=load)
    assert figure["value"] == pytest.approx(comes_to, rel=1e-9) and figure["says"].endswith(VERDICTS[verdict])


@pytest.mark.parametrize(("category", "share", "verdict"), [
    ("1A", "1 %", "H317"), ("1A", "0.99 %", "EUH208"), ("1A", "0.1 %", "EUH208"), ("1A", "0.0999 %", ""),
    ("1", "10 %", "H317"), ("1", "9.99 %", "EUH208"), ("1", "1 %", "EUH208"), ("1", "0.999 %", ""),
    ("1B", "10 %", "H317"), ("1B", "9.99 %", "EUH208"), ("1B", "1 %", "EUH208"), ("1B", "0.999 %", "")])
def test_every_threshold_counts_from_itself_on(category, share, verdict):
    """The candle holds 10 % of the scent."""
    assert one(share, category, load="10 %")["says"].endswith(VERDICTS[verdict])


@pytest.mark.parametrize(("share", "verdict"), [("2 %", "H317"), ("1.99 %", "EUH208"), ("0.2 %", "EUH208"), ("0.199 %", "")])
def test_a_limit_of_its_own_and_a_tenth_of_it(share, verdict):
    assert one(share, "1B", load="10 %", specific="0.2 %")["says"].endswith(VERDICTS[verdict])


def test_where_the_threshold_comes_from_is_told():
    generic, own = one("5 %")["working"]["constants"], one("5 %", specific="0.2 %")["working"]["constants"]
    assert (generic[0]["shown"], generic[0]["standing"]) == ("1 %", "second hand")
    assert (own[0]["shown"], own[0]["standing"], own[1]["shown"]) == ("0.2 %", "your entry", "0.02 %")


def test_the_same_substance_in_two_scents_adds_up():
    half = {"name": "Limonene", "share": "15 %", "class": "1B"}
    shown = figures(candle([half], [{**half, "name": " LIMONENE ", "share": "10 %"}]))
    assert AT + "2" not in shown
    assert shown[AT + "1"]["value"] == pytest.approx(0.04 * 0.15 + 0.04 * 0.10) and shown[AT + "1"]["says"].endswith("(H317)")


def test_two_substances_do_not_add_up():
    shown = figures(candle([{"name": name, "share": "9 %", "class": "1B"} for name in ("Limonene", "Linalool")]))
    assert [shown[AT + number]["says"].endswith(VERDICTS["EUH208"]) for number in "12"] == [True, True]
    assert AT + "3" not in shown


def test_two_without_a_name_stay_apart():
    shown = figures(candle([{"share": "9 %"}, {"share": "9 %"}]))
    assert AT + "2" in shown and shown[AT + "1"]["value"] == pytest.approx(0.08 * 0.09)


def test_where_sheets_differ_the_careful_one_counts():
    strict, mild = {"name": "x", "share": "1 %", "class": "1A"}, {"name": "x", "share": "1 %", "class": "1B", "specific": "3 %"}
    for pair in ((strict, mild), (mild, strict)):
        figure = figures(candle([pair[0]], [pair[1]]))[AT + "1"]
        assert figure["working"]["constants"][0]["shown"] == "0.1 %" and "lowest limit" in figure["notes"][0]
    assert figures(candle([strict], [strict]))[AT + "1"]["notes"] == []


@pytest.mark.parametrize("entry", [{}, {"name": "x"}, {"name": "x", "share": "lots"}, {"share": "5 %", "class": "2"},
                                   {"share": "5 %", "specific": "0"}, {"share": "5 %", "specific": "x"}])
def test_what_is_missing_or_faulty_is_left_out(entry):
    assert AT + "1" not in figures(candle([entry]))


@given(st.integers(1, 9999), st.sampled_from(["1", "1A", "1B"]))
def test_more_fragrance_never_names_less(share, category):
    order = list(VERDICTS.values())[::-1]
    ranks = [next(rank for rank, words in enumerate(order) if one(f"{share / 100:.2f} %", category, load=load)["says"].endswith(words))
             for load in ("1 %", "6 %", "12 %")]
    assert ranks == sorted(ranks)


def test_a_hostile_list_is_worked_out_only_so_far():
    shown = figures(candle([{"share": "1 %"} for _ in range(500)]))
    assert AT + "100" in shown and AT + "101" not in shown
