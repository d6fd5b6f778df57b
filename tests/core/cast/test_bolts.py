"""Bolts by their standards."""

import pytest

from brimbook.cast import bolts
from brimbook.record.fields import leaf_at

AT = "casts.0.clamping"


def test_every_thread_and_strength_that_is_asked_for_is_known():
    assert [choice.value for choice in leaf_at(f"{AT}.thread").choices] == list(bolts.THREADS)
    for leaf, standard in (("property_class", bolts.METRIC), ("grade", bolts.INCH)):
        assert [choice.value for choice in leaf_at(f"{AT}.{leaf}").choices] == list(standard.proof)
    assert [choice.label for choice in leaf_at(f"{AT}.thread").choices] == [
        thread.label for thread in bolts.THREADS.values()]


@pytest.mark.parametrize("name", bolts.THREADS)
def test_a_thread_s_sizes_are_in_order(name):
    thread = bolts.THREADS[name]
    assert thread.pitch < thread.diameter < thread.hole < thread.washer
    assert bolts.stress_area(name) < 3.1416 / 4 * thread.diameter**2


@pytest.mark.parametrize("name", bolts.THREADS)
def test_a_stronger_class_holds_more(name):
    loads = [bolts.proof_load(name, strength) for strength in bolts.THREADS[name].standard.proof]
    assert loads == sorted(loads) and len(set(loads)) == len(loads)


def test_a_finer_thread_holds_more():
    assert bolts.proof_load("1/4-28", "5") > bolts.proof_load("1/4-20", "5")


def test_a_class_of_the_other_standard_is_refused():
    with pytest.raises(KeyError):
        bolts.proof_load("m6", "5")
    with pytest.raises(KeyError):
        bolts.proof_load("1/4-20", "8.8")


def test_torque_grows_with_bolt_and_force():
    assert bolts.torque(10.0, 450.0) == pytest.approx(2 * bolts.torque(5.0, 450.0)) == pytest.approx(0.9)
