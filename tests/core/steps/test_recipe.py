"""From what the maker said of the mix to its recipe."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import ANYTHING, put, vessel

from brimbook.quantity.show import Display
from brimbook.record.said import understand
from brimbook.steps.recipe import bulk, recipe_of, role_of
from brimbook.work_out import work_out

MIX = "casts.0.mix"


def mix(*others, recipe="ratio", **texts):
    """A Portland mix; each other ingredient as its texts."""
    record = vessel(casts__0__mix__powder__kind="portland", casts__0__mix__powder__particle_density="3.15",
                    casts__0__mix__recipe=recipe)
    for name, text in texts.items():
        put(record, f"{MIX}.{name.replace('__', '.')}", text)
    for row, other in enumerate(others):
        for name, text in other.items():
            put(record, f"{MIX}.others.{row}.{name}", text)
    return record


SAND = {"kind": "sand", "role": "sand", "particle_density": "2.65"}
RED = {"kind": "red_oxide", "role": "pigment", "share": "3 %"}
META = {"kind": "metakaolin", "role": "pozzolan", "share": "10 %"}
GLASS = {"kind": "glass_fiber", "role": "fiber", "share": "2 %", "base": "mix"}
POLYMER = {"kind": "polymer", "role": "polymer", "share": "10 %"}


def found(record):
    said = understand(record, Display())
    return recipe_of(said, "casts.0"), {fault.path.removeprefix(f"{MIX}."): fault.sentence for fault in said.faults}


def weights(record):
    recipe, faults = found(record)
    assert not faults
    return {part.name: pytest.approx(part.weighed, rel=1e-9) for part in recipe.parts} | {
        "water": pytest.approx(recipe.water, rel=1e-9)}


def test_three_ways_to_tell_one_mortar():
    told = {"powder": 1.0, "others.0": 2.0, "others.1": 0.03, "water": 0.5}
    parts = weights(mix(SAND, RED, parts="1:2:0.5"))
    percents = weights(mix({**SAND, "share": "200 %"}, RED, recipe="percent", water_share="50 %"))
    batch = weights(mix({**SAND, "trial": "2 kg"}, {**RED, "trial": "30 g"}, recipe="weights", trial_powder="1 kg",
                        trial_water="500 g"))
    assert told == parts and told == percents and told == batch


def test_damp_sand_weighs_more_and_takes_less_water():
    damp = {**SAND, "moisture": "6 %"}
    assert {"others.0": 2.12, "water": 0.38}.items() <= weights(mix(damp, parts="1:2:0.5")).items()
    dry, wet = (found(mix(sand, parts="1:2:0.5"))[0] for sand in (SAND, damp))
    assert wet.volume == pytest.approx(dry.volume) and wet.density == pytest.approx(dry.density)


def test_sand_so_wet_that_it_holds_all_the_water_is_a_fault():
    recipe, faults = found(mix({**SAND, "moisture": "30 %"}, parts="1:2:0.5"))
    assert recipe is None and "dry the sand" in faults["parts"]
    recipe, faults = found(mix({**SAND, "moisture": "30 %", "share": "300 %"}, recipe="percent", water_share="50 %"))
    assert recipe is None and "dry the sand" in faults["water_share"]


def test_pozzolans_are_shares_of_all_the_binder():
    recipe, _ = found(mix(META, recipe="percent", water_share="45 %"))
    binder = 1 / 0.9
    assert recipe.parts[1].weighed == pytest.approx(0.1 * binder) and recipe.water == pytest.approx(0.45 * binder)
    assert recipe.water_to_binder == pytest.approx(0.45)


def test_a_pozzolan_takes_part_in_a_ratio():
    assert bulk(understand(mix(RED, META, GLASS, SAND), Display()), MIX) == [f"{MIX}.others.1", f"{MIX}.others.3"]
    recipe, _ = found(mix(RED, META, SAND, parts="0.9:0.1:2:0.45"))
    assert recipe.parts[2].weighed == pytest.approx(1 / 9) and recipe.parts[3].weighed == pytest.approx(2 / 0.9)
    assert recipe.parts[1].weighed == pytest.approx(0.03 * (1 + 1 / 9)) and recipe.water_to_binder == pytest.approx(0.45)


def test_a_liquid_is_dosed_with_its_water_and_its_water_counts():
    recipe, _ = found(mix(POLYMER, water_to_powder="0.4"))
    polymer = recipe.parts[1]
    assert polymer.weighed == pytest.approx(0.1) and polymer.water == pytest.approx(0.053)
    assert recipe.water == pytest.approx(0.4 - 0.053) and recipe.total_water == pytest.approx(0.4)


def test_fiber_of_the_whole_mix_is_that_share_of_all():
    recipe, _ = found(mix(SAND, GLASS, parts="1:1:0.4"))
    assert recipe.parts[2].weighed / recipe.mass == pytest.approx(0.02)
    recipe, _ = found(mix(SAND, {**GLASS, "base": "binder"}, parts="1:1:0.4"))
    assert recipe.parts[2].weighed == pytest.approx(0.02)


def test_doses_are_counted_against_the_cement_in_a_bagged_mix():
    recipe, _ = found(mix(RED, powder__binder_share="25 %", water_to_powder="0.15"))
    assert recipe.parts[1].weighed == pytest.approx(0.03 * 0.25) and recipe.water_to_binder == pytest.approx(0.6)


@pytest.mark.parametrize(("parts", "wants"), [("1:2", "3 numbers, such as 1:2:0.4"), ("1:2:3:0.4", "3 numbers")])
def test_a_ratio_of_the_wrong_length_says_how_many(parts, wants):
    recipe, faults = found(mix(SAND, parts=parts))
    assert recipe is None and wants in faults["parts"]


@pytest.mark.parametrize(("record", "path", "words"), [
    (mix(SAND, parts="1:0.4:2"), "parts", "the water last"), (mix(SAND, parts="0.4:1:2"), "parts", "500 %"),
    (mix(SAND, parts="1:2:0.04"), "parts", "4 % of the powder that sets"),
    (mix(META, parts="1:0.1:2"), "parts", "182 %"),
    (mix(recipe="weights", trial_powder="1 kg", trial_water="2500 g"), "trial_water", "Check both weights"),
    (mix(recipe="weights", trial_powder="1 kg", trial_water="0.4 g"), "trial_water", "Check both weights"),
])
def test_water_that_can_t_be_right_beside_the_powder_is_a_fault(record, path, words):
    recipe, faults = found(record)
    assert recipe is None and words in faults[path]


def test_more_ingredients_than_a_bench_keeps_apart_are_told_at_the_first_of_them():
    recipe, faults = found(mix(*[{**RED, "share": "0.1 %"}] * 101))
    assert recipe is None and "room for 100 ingredients" in faults["others.100.kind"]


def test_a_ratio_that_is_not_typed_yet_is_no_fault():
    assert found(mix(SAND)) == (None, {})


@pytest.mark.parametrize(("record", "path"), [
    (mix({**META, "share": "100 %"}, recipe="percent"), "others.0.share"),
    (mix(RED, {**META, "share": "100 %"}, recipe="percent"), "others.1.share"),
    (mix({**META, "share": "60 %"}, {**META, "share": "40 %"}, recipe="percent"), "others.0.share"),
    (mix(RED, recipe="percent", powder__binder_share="0 %"), "powder.binder_share"),
    (mix(META, recipe="percent", powder__binder_share="0 %"), "powder.binder_share"),
    (mix({**META, "binder_share": "0 %"}, recipe="percent"), "others.0.share"),
    (mix({**GLASS, "share": "10 %"}), "others.0.share"),
    (mix(*[{**GLASS, "share": "9 %"}] * 12), "others.11.share"),
    (mix({**RED, "share": "1001 %"}), "others.0.share"),
])
def test_what_leaves_no_room_is_a_fault_at_an_entry_that_is_asked(record, path):
    recipe, faults = found(record)
    assert recipe is None and list(faults) == [path]
    assert all(sentence.endswith((".", "?")) for sentence in faults.values())
    assert "casts.0.powder" not in work_out(record).figures


@given(st.lists(st.tuples(st.sampled_from([SAND, RED, META, GLASS, POLYMER]), st.integers(0, 999)), max_size=6),
       st.sampled_from(["ratio", "percent"]), st.integers(10, 90), st.integers(1, 100))
def test_a_recipe_never_asks_for_less_than_nothing(others, way, water, binder):
    record = mix(*({**other, "share": f"{tenths / 10} %"} for other, tenths in others), recipe=way,
                 water_share=f"{water} %", powder__binder_share=f"{binder} %", water_to_powder=f"{water / 100}")
    grains = sum(1 for other, _ in others if other["role"] in ("sand", "pozzolan"))
    put(record, f"{MIX}.parts", ":".join(["1", *["2"] * grains, f"{water / 100}"]))
    recipe, faults = found(record)
    assert (recipe is None) == bool(faults)
    if recipe is not None:
        assert recipe.water > 0 and all(part.weighed >= 0 for part in recipe.parts) and recipe.volume > 0
        assert 0.3 < recipe.density < 8


@given(ANYTHING, st.sampled_from(["others", "others.0", "parts", "powder", "recipe", "others.0.share", "others.0.role",
                                  "air", "trial_powder"]))
def test_a_bent_mix_is_no_recipe_or_a_whole_one(anything, path):
    recipe, _ = found(put(mix(RED, SAND, parts="1:2:0.5"), f"{MIX}.{path}", anything))
    assert recipe is None or recipe.volume > 0


def test_an_ingredient_of_no_known_role_is_sand():
    said = understand(mix({**SAND, "role": "glue"}), Display())
    assert role_of(said, f"{MIX}.others.0") == "sand"


def test_a_hundred_ingredients_are_still_a_recipe():
    recipe, faults = found(mix(*[{**RED, "share": "0.1 %"}] * 100))
    assert not faults and len(recipe.parts) == 101
