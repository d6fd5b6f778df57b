"""What molds are printed in."""

import pytest

from brimbook.cast import plastic
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.said import understand_text

AT = "casts.0.clamping"


def test_every_plastic_that_is_asked_for_is_known_but_the_maker_s_own():
    choices = {choice.value: choice.label for choice in leaf_at(f"{AT}.plastic").choices}
    assert {name: known.label for name, known in plastic.PLASTICS.items()} == {
        name: label for name, label in choices.items() if name != plastic.OWN}


@pytest.mark.parametrize("name", plastic.PLASTICS)
def test_a_plastic_s_figures_can_be_read_and_have_a_source(name):
    for leaf, (text, source) in plastic.PLASTICS[name].facts.items():
        value, canonical = understand_text(leaf_at(f"{AT}.{leaf}"), text, Display())
        assert value > 0 and canonical == text and source.standing != "your entry"


@pytest.mark.parametrize("name", plastic.PLASTICS)
def test_what_a_print_may_bear_is_told_as_rough(name):
    for leaf in ("bearing", "modulus"):
        source = plastic.PLASTICS[name].facts[leaf][1]
        assert "Rough" in source.text and source.standing == "from memory"


def test_a_whole_spool_costs_its_price():
    assert plastic.cost(1000.0, 24.0, 1000.0) == 24.0
    assert plastic.cost(0.0, 24.0, 1000.0) == 0.0


def test_a_length_of_filament_weighs_what_the_print_does():
    meters = plastic.filament_length(250.0, 1.24, 1.75)
    assert plastic.weight(3.141592653589793 / 4 * 1.75**2 * meters, 1.24) == pytest.approx(250.0)
