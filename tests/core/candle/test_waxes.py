"""Generic waxes, each with figures that the record can read."""

import pytest

from brimbook.candle.wax import sink
from brimbook.candle.waxes import WAXES, source_of_density
from brimbook.record.leaves.well import OIL

KNOWN = [wax for wax in WAXES if wax.kind != "own"]


@pytest.mark.parametrize("wax", KNOWN, ids=lambda wax: wax.kind)
def test_a_wax_s_figures_are_in_bounds(wax):
    assert OIL.least < wax.density_poured < wax.density_set < OIL.most
    assert 0.03 < sink(1.0, wax.density_poured, wax.density_set) < 0.16


def test_densities_are_those_of_the_sources():
    """Tristearin at 80 °C 0.8617; paraffin set near 0.90; beeswax 0.958 to 0.975 (second hand)."""
    densities = {wax.kind: (wax.density_poured, wax.density_set) for wax in KNOWN}
    assert densities["soy"][0] == 0.86
    assert densities["paraffin"][1] == 0.90
    assert 0.958 <= densities["beeswax"][1] <= 0.975


def test_what_nobody_read_is_marked_from_memory():
    assert source_of_density("soy", "set", 0.92).standing == "from memory"
    assert source_of_density("paraffin", "poured", 0.77).standing == "from memory"
    assert source_of_density("soy", "poured", 0.86).standing == "second hand"


def test_what_the_maker_typed_is_the_maker_s():
    assert source_of_density("soy", "poured", 0.87).standing == "your entry"
    assert source_of_density("unheard of", "set", 0.90).standing == "your entry"
    assert source_of_density("own", "set", 0.92).standing == "your entry"
