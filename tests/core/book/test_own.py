"""Materials, wicks, plan and settings of a file beside the maker's own."""

from brimbook.book.own import compare_own, lean
from hypothesis import given
from vessels import ANYTHING

WAX = {"name": "Soy flakes", "role": "wax", "pack_price": "118"}
SAND = {"name": "Sand", "role": "sand"}


def rows(theirs, ours):
    told, refused = compare_own(theirs, ours)
    assert refused == []
    return {(row["key"], row["state"]): row for row in told}


def test_what_is_the_same_is_told_as_that():
    told = rows({"materials": [WAX, {"notes": ""}], "settings": {"mass": "oz"}}, {"materials": [{**WAX, "lot": ""}], "settings": {"mass": "oz"}})
    assert set(told) == {("materials", "same"), ("settings", "same")}


def test_new_ones_are_added_and_nothing_kept_is_touched():
    told = rows({"materials": [SAND, {**WAX, "pack_price": "99"}]}, {"materials": [WAX]})
    assert told["materials", "new"]["value"] == [WAX, SAND]
    assert told["materials", "new"]["says"] == "1 material that is not among yours: Sand."


def test_one_of_the_same_name_is_replaced_only_by_the_row_that_says_so():
    told = rows({"materials": [SAND, {**WAX, "name": " soy FLAKES ", "pack_price": "99"}]}, {"materials": [WAX]})
    row = told["materials", "changed"]
    assert row["value"] == [{**WAX, "name": " soy FLAKES ", "pack_price": "99"}, SAND]
    assert "A pack costs: 118 here, 99 in the file." in row["says"] and row["says"].startswith("1 differs: soy FLAKES.")


def test_ones_without_a_name_are_added_once():
    told = rows({"wicks": [{"pool": "40 mm"}, {}]}, {"wicks": [{"rate": "5"}]})
    assert told["wicks", "new"]["value"] == [{"rate": "5"}, {"pool": "40 mm"}]
    assert set(rows({"wicks": [{"pool": "40 mm"}]}, {"wicks": told["wicks", "new"]["value"]})) == {("wicks", "same")}


def test_a_plan_is_joined_by_vessel():
    told = rows({"plan": [{"id": "7", "count": "3"}, {"id": "8", "count": "1"}]}, {"plan": [{"id": "7", "count": "2"}]})
    assert told["plan", "new"]["value"] == [{"id": "7", "count": "2"}, {"id": "8", "count": "1"}]
    assert told["plan", "changed"]["value"] == [{"id": "7", "count": "3"}, {"id": "8", "count": "1"}]
    assert "How many to make: 2 here, 3 in the file." in told["plan", "changed"]["says"]


def test_settings_differ_in_words_and_only_known_ones_are_taken():
    told = rows({"settings": {"mass": "oz", "decimal": "comma", "strange": "x", "__proto__": "y"}}, {"settings": {"mass": "g", "currency": "€"}})
    row = told["settings", "changed"]
    assert row["value"] == {"mass": "oz", "decimal": "comma", "currency": "€"}
    assert row["says"] == "Weights: g here, oz in the file; decimal mark: as usual here, comma in the file."


def test_what_is_not_in_the_file_is_left_alone():
    assert rows({}, {"materials": [WAX]}) == {}


def test_what_can_t_be_read_is_told_and_the_rest_is_taken():
    deep = {"name": "Deep", "x": [[[[[[[[[[[[[["x"]]]]]]]]]]]]]]}
    told, refused = compare_own({"materials": [SAND, 5, deep], "wicks": "x", "plan": [{}] * 6000, "settings": []}, {})
    assert [row["value"] for row in told] == [[SAND]]
    assert len(refused) == 4 and all(sentence.endswith(".") for sentence in refused)


@given(ANYTHING, ANYTHING)
def test_anything_is_compared(theirs, ours):
    keys = ("materials", "wicks", "plan", "settings")
    for mine in (ours, {key: ours for key in keys}):
        told, refused = compare_own({key: theirs for key in keys}, mine)
        assert all(row["key"] in keys and row["says"] and isinstance(row["value"], (list, dict)) for row in told)
        assert all(sentence.endswith(".") for sentence in refused)


def test_what_says_nothing_is_left_out_but_places_stay():
    assert lean({"a": "", "b": [{}, {"c": "x"}, {"d": ""}], "e": {"f": []}}) == {"b": [{}, {"c": "x"}]}
