"""A recipe for one gram of powder, by absolute volume."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.cast import mix
from brimbook.cast.recipe import (STRENGTHS, Part, Recipe, binder_for_shares, most_pigment, share_of_wet, strength,
                                  weighed_for_share_of_mix, wet)

WATER = 0.9982


def part(name="others.0", role="sand", weighed=1.0, density=2.65, water_share=0.0, binder_share=0.0):
    return Part(name, name, role, weighed, density, water_share, binder_share)


PARTS = st.lists(st.builds(part, weighed=st.floats(0, 5), density=st.floats(0.9, 8), water_share=st.floats(0, 0.9),
                           binder_share=st.floats(0, 1)), min_size=1, max_size=6).map(tuple)
RECIPES = st.builds(Recipe, PARTS, st.floats(0.05, 2), st.just(WATER), st.floats(0, 0.5))


@given(RECIPES)
def test_what_goes_in_comes_out(recipe):
    solid = math.fsum(each.dry for each in recipe.parts)
    assert recipe.mass == pytest.approx(solid + recipe.total_water)
    assert recipe.density * recipe.volume == pytest.approx(recipe.mass)
    assert all(each.dry + each.water == pytest.approx(each.weighed) and each.binder <= each.dry for each in recipe.parts)


@given(RECIPES)
def test_it_is_the_absolute_volume_of_its_ingredients(recipe):
    masses = [*(each.dry for each in recipe.parts), recipe.total_water]
    densities = [*(each.density for each in recipe.parts), recipe.water_density]
    assert recipe.volume == pytest.approx(mix.absolute_volume(masses, densities, recipe.air))


@given(RECIPES, st.floats(0.01, 1))
def test_more_water_makes_more_mix_and_a_higher_ratio(recipe, more):
    wetter = Recipe(recipe.parts, recipe.water + more, recipe.water_density, recipe.air)
    assert wetter.volume > recipe.volume
    if recipe.binder > 1e-9:
        assert wetter.water_to_binder > recipe.water_to_binder


def test_powder_and_water_alone_are_what_they_always_were():
    recipe = Recipe((part("powder", "binder", 1.0, 2.98, 0.0, 1.0),), 0.25, WATER, 0.02)
    assert recipe.volume == pytest.approx(mix.volume_per_gram_of_powder(2.98, 0.25, WATER, 0.02))
    assert recipe.water_to_binder == 0.25


def test_wet_sand_makes_the_same_mix_as_dry_sand_and_more_water():
    cement = part("powder", "binder", 1.0, 3.15, 0.0, 1.0)
    dry = Recipe((cement, part(weighed=2.0)), 0.5, WATER)
    damp = Recipe((cement, part(weighed=wet(2.0, 0.06), water_share=share_of_wet(0.06))), 0.5 - 2.0 * 0.06, WATER)
    assert damp.volume == pytest.approx(dry.volume) and damp.mass == pytest.approx(dry.mass)
    assert damp.water_to_binder == pytest.approx(dry.water_to_binder)


def test_where_nothing_binds_there_is_no_ratio():
    assert Recipe((part(),), 0.5, WATER).water_to_binder is None


@given(st.floats(0.01, 1), st.lists(st.floats(0, 0.3), max_size=3))
def test_shares_of_all_the_binder_come_back(powder, shares):
    total = binder_for_shares(powder, shares)
    assert powder + sum(share * total for share in shares) == pytest.approx(total)


@pytest.mark.parametrize("shares", [[1.0], [0.5, 0.5], [0.4, 0.7], [1.0 - 1e-12]])
def test_no_room_for_the_powder_is_no_binder(shares):
    assert binder_for_shares(1.0, shares) is None


@given(st.floats(0, 10), st.floats(0, 0.3))
def test_moisture_there_and_back(dry, moisture):
    assert wet(dry, moisture) * (1 - share_of_wet(moisture)) == pytest.approx(dry)


@given(st.floats(1, 1e4), st.lists(st.floats(0, 0.1), max_size=4))
def test_shares_of_the_whole_mix_come_back(rest, shares):
    weights = weighed_for_share_of_mix(rest, shares)
    total = rest + sum(weights)
    assert [weight / total for weight in weights] == pytest.approx(shares)


@pytest.mark.parametrize(("ratio", "megapascals"), STRENGTHS)
def test_the_table_s_own_entries(ratio, megapascals):
    assert strength(ratio) == pytest.approx(megapascals)


@given(st.floats(0.41, 0.82), st.floats(0.41, 0.82))
def test_more_water_is_never_stronger(one, other):
    assert (strength(one) >= strength(other)) == (one <= other) or strength(one) == strength(other)


@pytest.mark.parametrize("ratio", [0.0, 0.4099, 0.8201, 5.0, math.inf, math.nan])
def test_beyond_the_table_nothing_is_told(ratio):
    assert strength(ratio) is None


@given(st.floats(0, 1e5), st.lists(st.floats(0, 1), max_size=4))
def test_pigment_never_passes_any_limit(cement, limits):
    most = most_pigment(cement, limits)
    assert most <= cement * 0.1 and all(most <= cement * limit for limit in limits)
