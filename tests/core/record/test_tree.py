"""Walking a record by path."""

from hypothesis import given
from vessels import ANYTHING, full_vessel

from brimbook.record import tree


@given(ANYTHING)
def test_a_copy_with_nothing_new_is_the_same(record):
    assert tree.copy_with(record, {}) == record


def test_a_copy_shares_nothing_with_the_record():
    record = full_vessel()
    copy = tree.copy_with(record, {"casts.0.pieces": "3"})
    copy["casts"][0]["mix"]["air"] = "9 %"
    assert record == full_vessel() and copy["casts"][0]["pieces"] == "3"


def test_every_leaf_of_a_full_vessel_is_named_once():
    paths = [path for path, part in tree.parts(full_vessel()) if not isinstance(part, (dict, list))]
    assert len(paths) == len(set(paths)) > 80
    assert "casts.0.cavity.readings.2.water" in paths and "wells.0.fragrance.basis" in paths


def nested(depth):
    part = "deep"
    for _ in range(depth):
        part = [part]
    return part


def test_how_deep_a_record_may_be():
    assert tree.within_limits(nested(tree.DEEPEST - 1)) and not tree.within_limits(nested(tree.DEEPEST + 1))
    assert not tree.within_limits(nested(900))


def test_how_many_leaves_a_record_may_have():
    assert tree.within_limits(["x"] * (tree.MOST_LEAVES - 1)) and not tree.within_limits(["x"] * (tree.MOST_LEAVES + 1))


def test_batches_are_counted_apart():
    """Hundreds of them over the years must not keep a vessel from being opened."""
    batch = {"made_on": "2026-09-26", "vessels": "12", "used": [{"name": "Wax", "lot": "7"}] * 8, "went_to": [{"who": "A neighbor", "vessels": "2"}] * 4}
    many = {**full_vessel(), "batches": [batch] * 400}
    assert tree.within_limits(many) and not tree.within_limits({**many, "batches": [batch] * 600})
    assert not tree.within_limits({**many, "casts": [{}] * tree.MOST_LEAVES}) and not tree.within_limits({"batches": nested(tree.DEEPEST)})
    assert tree.within_limits({"batches": nested(tree.DEEPEST - 2)}) and not tree.within_limits({"batches": {"0": [batch] * 400}})


def test_a_full_vessel_is_well_within():
    assert tree.within_limits(full_vessel())
