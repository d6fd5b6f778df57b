"""Every leaf of the record: named once, with sensible bounds and a usual value that can be read."""

import pytest

from brimbook.quantity.read import read
from brimbook.quantity.units import KINDS
from brimbook.record.fields import LEAVES, leaf_at
from brimbook.record.said import QUANTITIES

MEASURED = {path: leaf for path, leaf in LEAVES.items() if leaf.kind in QUANTITIES}


@pytest.mark.parametrize("path", sorted(LEAVES))
def test_a_leaf_is_told_in_full(path):
    leaf = LEAVES[path]
    assert leaf.label and leaf.label[0].isupper() and leaf.label[-1] != "."
    assert leaf.kind in {*KINDS, "text", "date", "moment", "choice"}
    assert (leaf.kind == "choice") == bool(leaf.choices)
    assert leaf.hint == "" or leaf.hint[-1] in ".?"


@pytest.mark.parametrize("path", sorted(MEASURED))
@pytest.mark.parametrize("mark", ["either", "point", "comma"])
def test_the_usual_value_can_be_read_under_any_mark(path, mark):
    leaf = MEASURED[path]
    if leaf.usual:
        quantity = read(leaf.usual, leaf.kind, leaf.bounds, "", mark)
        assert quantity.canonical == leaf.usual


@pytest.mark.parametrize("path", sorted(MEASURED))
def test_bounds_are_in_order_and_told(path):
    bounds = MEASURED[path].bounds
    assert bounds.least < bounds.most and bounds.says.endswith((".", "?"))


@pytest.mark.parametrize("path", sorted(path for path, leaf in LEAVES.items() if leaf.choices))
def test_choices_differ_and_the_usual_one_is_among_them(path):
    leaf = LEAVES[path]
    values = [choice.value for choice in leaf.choices]
    assert len(values) == len(set(values)) and len({choice.label for choice in leaf.choices}) == len(values)
    assert leaf.usual in values


def test_a_path_finds_its_leaf():
    assert leaf_at("casts.7.cavity.readings.12.water").label == "Water"
    assert leaf_at("casts.x.pieces") is None and leaf_at("") is None and leaf_at("casts.0") is None
