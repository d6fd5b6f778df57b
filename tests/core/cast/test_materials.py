"""Generic materials: every fact can be read, makes sense, and carries its source."""

import pytest

from brimbook.cast.materials import GENERIC, OWN, generic
from brimbook.quantity.show import Display
from brimbook.record.leaves.materials import FOLLOWS, MATERIAL, ROLES
from brimbook.record.said import understand_text

ANY = pytest.mark.parametrize("material", GENERIC, ids=lambda material: material.kind)
FACTS = [pytest.param(material, name, id=f"{material.kind}-{name}") for material in GENERIC for name in material.facts]
STANDINGS = {"published", "second hand", "reference library", "common practice", "from memory"}
# Particle densities as references tell them, least and most; sand and cement by the course that is named.
RANGES = {"rapid": (2.8, 3.0), "portland": (3.1, 3.2), "gypsum": (2.63, 2.76), "sand": (2.6, 2.7), "limestone": (2.65, 2.75),
          "metakaolin": (2.4, 2.6), "silica_fume": (2.2, 2.25), "fly_ash": (1.9, 2.8), "slag": (2.85, 2.95),
          "red_oxide": (4.9, 5.3), "black_oxide": (4.9, 5.2), "yellow_oxide": (4.0, 4.3), "titanium_white": (4.2, 4.3),
          "glass_fiber": (2.68, 2.7), "plastic_fiber": (0.9, 0.91), "plasticizer": (1.0, 1.5), "polymer": (1.05, 1.1)}


def value(material, name, display=Display()):
    return understand_text(MATERIAL[name], material.facts[name][0], display)[0]


@pytest.mark.parametrize(("material", "name"), FACTS)
@pytest.mark.parametrize("mark", ["either", "point", "comma"])
def test_a_fact_reads_the_same_under_any_settings(material, name, mark):
    text, source = material.facts[name]
    leaf = MATERIAL[name]
    read, canonical = understand_text(leaf, text, Display(decimal=mark, mass="lb", length="in", temperature="F"))
    assert (read, canonical) == (value(material, name), text)
    assert source.standing in STANDINGS and source.text


@ANY
def test_a_material_is_told_in_full(material):
    assert material.label and material.hint.endswith(".") and material.role in {role.value for role in ROLES}
    assert "particle_density" in material.facts and set(material.texts()) == set(material.facts)
    assert generic(material.kind) is material


@ANY
def test_particles_are_as_dense_as_references_say(material):
    least, most = RANGES[material.kind]
    assert least <= value(material, "particle_density") <= most


@ANY
def test_a_usual_dose_keeps_to_the_largest(material):
    if material.dose and "most" in material.facts:
        dose = understand_text(MATERIAL["most"], material.dose, Display())[0]
        assert 0 < dose <= value(material, "most")
    assert bool(material.dose) != (material.role == "binder") and bool(material.ratio) == (material.role == "binder")


@pytest.mark.parametrize("material", [material for material in GENERIC if material.role == "binder"],
                         ids=lambda material: material.kind)
def test_a_binder_takes_its_usual_water_and_sets_after_its_working_time(material):
    water = understand_text(MATERIAL["water_least"], material.ratio, Display())[0]
    assert value(material, "water_least") <= water <= value(material, "water_most")
    assert value(material, "working_time") < value(material, "demold_time")
    assert value(material, "follows") in {choice.value for choice in FOLLOWS}


def test_only_portland_cement_follows_portland_s_law():
    assert [material.kind for material in GENERIC
            if material.facts.get("follows", ("",))[0] == "portland"] == ["portland"]


def test_kinds_differ_and_none_is_the_maker_s_own():
    kinds = [material.kind for material in GENERIC]
    assert len(set(kinds)) == len(kinds) and OWN not in kinds
    assert generic(OWN) is None and generic("") is None and generic("mine: Red oxide") is None


def test_labels_differ_within_a_role():
    assert len({material.label for material in GENERIC}) == len(GENERIC)
