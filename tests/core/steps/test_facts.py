"""What is known of a material: the maker's entry first, then the generic one of its kind."""

import pytest
from vessels import put, vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.facts import fact, name_of, stands_in

POWDER = "casts.0.mix.powder"


def said(**texts):
    return understand(vessel(**texts), Display())


def test_a_generic_figure_stands_in_with_its_source():
    found = fact(said(), POWDER, "working_time")
    assert (found.value, found.text, found.source.standing) == (900.0, "15 min", "from memory")
    assert stands_in(said(), POWDER, "working_time") == "15 min"


def test_the_maker_s_own_entry_beats_it():
    found = fact(said(casts__0__mix__powder__working_time="20"), POWDER, "working_time")
    assert (found.value, found.text, found.source.standing) == (1200.0, "20 min", "your entry")


def test_a_generic_figure_that_was_copied_keeps_its_source():
    assert fact(said(), POWDER, "particle_density").source.standing == "published"
    assert fact(said(casts__0__mix__powder__particle_density="3.15"), POWDER, "particle_density").source.standing == "your entry"


@pytest.mark.parametrize("text", ["soon", "-3 min", "99 wk 1 d"])
def test_a_faulty_entry_is_no_figure(text):
    assert fact(said(casts__0__mix__powder__working_time=text), POWDER, "working_time") is None


def test_nothing_is_known_of_another_powder_but_what_is_usual_for_all():
    record = put(vessel(casts__0__mix__powder__kind="own"), f"{POWDER}.particle_density", "")
    own = understand(record, Display())
    assert fact(own, POWDER, "working_time") is None and fact(own, POWDER, "particle_density") is None
    assert fact(own, POWDER, "binder_share").value == 1.0 and fact(own, POWDER, "reference_temperature").value == 20


def test_names():
    assert name_of(said(), POWDER) == "Rapid-setting cement"
    assert name_of(said(casts__0__mix__powder__name=" Gray bag mix "), POWDER) == "Gray bag mix"
    assert name_of(said(casts__0__mix__powder__kind="own"), POWDER) == ""


def test_a_comma_maker_s_generic_figures_are_the_same():
    comma = understand(vessel(), Display(decimal="comma"))
    assert fact(comma, POWDER, "water_least").value == fact(said(), POWDER, "water_least").value == 0.2
