"""Generic powders, each with figures that the record can read."""

import pytest

from brimbook.cast.powders import POWDERS, source_of_density
from brimbook.quantity.read import read
from brimbook.record.fields import LEAVES

STANDINGS = {"published", "second hand", "from memory", "your entry"}


@pytest.mark.parametrize("powder", [powder for powder in POWDERS if powder.kind != "own"],
                         ids=lambda powder: powder.kind)
def test_a_powder_s_figures_are_in_bounds(powder):
    density = LEAVES["casts.*.mix.powder.particle_density"]
    ratio = LEAVES["casts.*.mix.water_to_powder"]
    assert density.bounds.least <= powder.particle_density <= density.bounds.most
    assert read(powder.water_to_powder, "ratio", ratio.bounds).canonical == powder.water_to_powder
    assert powder.source.standing in STANDINGS - {"your entry"}


def test_particle_densities_are_those_of_the_sources():
    """Rapid-setting 2.98 and Portland 3.15 published; plaster 2.70 fitted to published dry densities."""
    assert {powder.kind: powder.particle_density for powder in POWDERS} == {
        "rapid": 2.98, "portland": 3.15, "gypsum": 2.70, "own": None}


def test_what_the_maker_typed_is_the_maker_s():
    assert source_of_density("rapid", 2.98).standing == "published"
    assert source_of_density("rapid", 3.15).standing == "your entry"
    assert source_of_density("portland", 2.98).standing == "your entry"
    assert source_of_density("own", 2.98).standing == source_of_density("unheard of", 2.98).standing == "your entry"


def test_another_powder_can_always_be_chosen():
    assert [powder.kind for powder in POWDERS][-1] == "own" and len({powder.kind for powder in POWDERS}) == len(POWDERS)
