"""What is wrong in the log is said beside the field, and that entry alone is left out."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import ANYTHING, vessel

from brimbook.work_out import work_out

POUR = {"powder": "1200 g", "water": "300 g", "left_over": "90 g"}
CUP = {"cup_volume": "100 mL", "cup_empty": "12 g", "cup_full": "218 g"}


def log(*pours, **texts):
    return work_out(vessel(casts__0__pours=list(pours), **texts))


@pytest.mark.parametrize(("pour", "field", "words"), [
    ({**POUR, "short": "20 g"}, "short", "left over and lacking too"),
    ({**POUR, "left_over": "1600 g"}, "left_over", "More is left over than was weighed, 1500 g"),
    ({**POUR, "left_over": "1500 g"}, "left_over", "More is left over"),
    ({**POUR, "pieces": "3"}, "left_over", "took 34 % of the mix"),
    ({**POUR, "left_over": "800 g"}, "left_over", "took 51 %"),
    ({**POUR, "powder": "3 kg", "water": "750 g"}, "left_over", "took 267 %"),
    ({"powder": "300 g", "water": "75 g", "short": "1 g"}, "short", "took 27 %"),
    ({**CUP, "cup_full": "12 g"}, "cup_full", "no more full than empty"),
    ({**CUP, "cup_full": "10 g"}, "cup_full", "swapped"),
    ({**CUP, "cup_full": "30 g"}, "cup_full", "would weigh 0.18 g/mL, and the table says 2.133 g/mL"),
    ({**CUP, "cup_volume": "20 mL"}, "cup_full", "would weigh 10.3 g/mL"),
    ({**CUP, "cup_volume": "180 mL"}, "cup_full", "would weigh 1.144 g/mL"),
    ({"spread_1": "150 mm", "spread_2": "15 mm"}, "spread_2", "far apart"),
    ({"spread_1": "20 mm"}, "spread_1", "narrower than the cone stood: 38 mm"),
])
def test_what_contradicts_itself_is_told_beside_the_field(pour, field, words):
    answer = log(POUR, pour)
    (fault,) = [fault for fault in answer.said.faults]
    assert fault.path == f"casts.0.pours.1.{field}" and words in fault.sentence
    assert answer.learned["casts.0"] == log(POUR).learned["casts.0"]


@pytest.mark.parametrize("name", ["powder", "water", "left_over", "pieces", "short"])
def test_a_pour_with_an_entry_that_can_t_be_read_is_left_out(name):
    answer = log(POUR, {**POUR, "left_over": "90 g", name: "x"})
    assert [fault.path for fault in answer.said.faults] == [f"casts.0.pours.1.{name}"]
    assert len(answer.learned["casts.0"].pours.values) == 1


@pytest.mark.parametrize("name", ["cup_full", "cup_empty", "cup_volume"])
def test_a_cup_with_an_entry_that_can_t_be_read_is_left_out(name):
    answer = log(CUP, {**CUP, name: "x"})
    assert len(answer.learned["casts.0"].cups.values) == 1


def test_the_cup_need_only_be_told_once():
    assert log(CUP, {"cup_full": "218 g"}).learned == log(CUP, CUP).learned
    other = log(CUP, {"cup_full": "230 g", "cup_empty": "24 g"}).learned["casts.0"].cups.values
    assert other[0] == pytest.approx(other[1])
    assert "casts.0" not in log({"cup_full": "218 g"}, {"cup_empty": "12 g"}).learned


def test_none_left_over_is_an_answer_and_nothing_typed_is_none():
    assert log({**POUR, "left_over": "0"}).learned["casts.0"].pours is not None
    assert log({**POUR, "left_over": "0 g", "short": "0 g"}).said.faults == []
    assert log({**POUR, "left_over": ""}).learned == {}


def test_a_ring_of_one_s_own_needs_its_base():
    answer = log({"spread_1": "120 mm"}, casts__0__flow__cone="own")
    assert not [key for key in answer.figures if "spread" in key]
    answer = log({"spread_1": "120 mm"}, casts__0__flow__cone="own", casts__0__flow__base="60 mm")
    assert answer.figures["casts.0.pouring.flow"].value == pytest.approx(1)


@given(st.lists(st.dictionaries(st.sampled_from([*POUR, *CUP, "short", "pieces", "spread_1", "others", "when"]),
                                st.one_of(ANYTHING, st.sampled_from(["1 g", "1200 g", "100 mL", "0", "148 mm"])),
                                max_size=8), max_size=4))
def test_nothing_is_raised_however_the_log_is_bent(pours):
    log(*pours)
    log(*pours, casts__0__mix__others=[{"kind": "sand"}], casts__0__mix__parts="1:1:0.4")


def test_a_log_that_is_no_log_is_kept_and_told():
    for bent in ("x", 7, None, {"0": POUR}, [POUR, "x", None, [POUR]]):
        assert work_out(vessel(casts__0__pours=bent)).said.faults or bent is None


def test_a_pour_of_another_mix_teaches_nothing_and_costs_nothing():
    other = {**POUR, **CUP, "of": "portland + sand"}
    assert log(other, POUR).learned["casts.0"].pours.values == log(POUR).learned["casts.0"].pours.values
    assert "casts.0" not in log(other).learned
    # The cup is the same one still, and the pour counts again in a mix of its own kind.
    assert log(other, {"cup_full": "218 g"}).learned["casts.0"].cups is not None
    assert log({**other, "of": " rapid "}).learned["casts.0"] == log({**POUR, **CUP}).learned["casts.0"]
