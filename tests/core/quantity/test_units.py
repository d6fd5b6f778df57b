"""Words for units, and what one of each is in base units."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.quantity.units import KINDS, UNITS, from_base, symbols, to_base


@given(st.sampled_from(sorted(UNITS)), st.floats(-1e6, 1e6))
def test_there_and_back(word, value):
    assert from_base(to_base(value, UNITS[word]), word) == pytest.approx(value, rel=1e-12, abs=1e-9)


@given(st.sampled_from(sorted(UNITS)), st.floats(-1e4, 1e4), st.floats(0.001, 100))
def test_more_is_more_in_every_unit(word, value, more):
    assert to_base(value + more, UNITS[word]) > to_base(value, UNITS[word])


def test_every_base_unit_is_itself():
    for word in ("g", "ml", "mm", "c", "g/ml", "g/g", "pieces"):
        assert to_base(12.34, UNITS[word]) == pytest.approx(12.34, rel=1e-14)


@pytest.mark.parametrize(("big", "small", "count"), [
    ("lb", "oz", 16), ("kg", "g", 1000), ("l", "ml", 1000), ("gal", "qt", 4), ("qt", "pt", 2), ("pt", "cup", 2),
    ("cup", "floz", 8), ("ft", "in", 12), ("m", "mm", 1000), ("cm", "mm", 10), ("g/ml", "kg/m3", 1000),
    ("oz/lb", "g/kg", 62.5),
])
def test_how_many_go_into_the_next(big, small, count):
    assert from_base(to_base(1.0, UNITS[big]), small) == pytest.approx(count, rel=1e-9)


@pytest.mark.parametrize(("fahrenheit", "celsius"), [(32, 0), (41, 5), (68, 20), (104, 40), (212, 100), (-40, -40)])
def test_fahrenheit(fahrenheit, celsius):
    assert to_base(fahrenheit, UNITS["f"]) == pytest.approx(celsius, abs=1e-9)
    assert from_base(celsius, "f") == pytest.approx(fahrenheit, abs=1e-9)


def test_ounces_of_weight_and_of_volume_are_told_apart():
    assert UNITS["oz"].kind == "mass" and UNITS["floz"].kind == "volume"


def test_words_are_written_as_tidy_leaves_them():
    assert [word for word in UNITS if word != word.lower() or " " in word or "." in word] == []


def test_every_unit_belongs_to_a_known_kind():
    assert {unit.kind for unit in UNITS.values()} <= set(KINDS)


def test_a_symbol_is_itself_a_word_for_its_unit():
    from brimbook.quantity.text import tidy

    for unit in UNITS.values():
        assert UNITS[tidy(unit.symbol).replace(" ", "").replace("^", "")] == unit


def test_symbols_commonest_first():
    assert symbols("mass") == ["g", "kg", "mg", "lb", "oz"]
    assert symbols("temperature") == ["°C", "°F"]
