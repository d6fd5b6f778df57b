"""From what a person types to plain characters, numerals and unit words."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.quantity import text as words
from brimbook.quantity.error import QuantityError


@pytest.mark.parametrize(("typed", "plain"), [
    ("  640  g ", "640 g"), ("６４０ ｇ", "640 g"), ("٦٤٠", "640"), ("६४०", "640"), ("640\u00a0g", "640 g"),
    ("640\u202fg", "640 g"), ("27½ oz", "27 1/2 oz"), ("½lb", "1/2 lb"), ("3⅛″", '3 1/8 "'), ("1⁄2 oz", "1/2 oz"),
    ("−5", "-5"), ("1’250", "1'250"), ("20 º", "20 °"), ("1 LB 4 OZ", "1 lb 4 oz"), ("5㎏", "5kg"),
    ("1 lb, 4 oz", "1 lb 4 oz"), ("1 lb & 4 oz", "1 lb 4 oz"), ("1 lb and 4 oz", "1 lb 4 oz"),
])
def test_tidy(typed, plain):
    assert words.tidy(typed).replace(' "', '"') == plain.replace(' "', '"')


@given(st.text(max_size=60))
def test_tidy_leaves_single_spaces_and_lower_case(typed):
    tidy = words.tidy(typed)
    assert "  " not in tidy and tidy == tidy.strip()
    assert not any(unicodedata.category(character) == "Nd" and character not in "0123456789" for character in tidy)


@given(st.text(max_size=60))
def test_tidying_twice_changes_nothing(typed):
    once = words.tidy(typed)
    assert words.tidy(once) == once


@pytest.mark.parametrize("typed", ["640 g\u200b", "\ufeff640 g", "640\u200b g", "\u200e640 g"])
def test_characters_that_nobody_sees_do_no_harm(typed):
    assert words.tidy(typed) == "640 g"


@pytest.mark.parametrize(("text", "found"), [
    ("1lb4oz", [("1", "lb"), ("4", "oz")]), ("640", [("640", None)]), ("0,640 kg", [("0,640", "kg")]),
    ("2.98 g/cm3", [("2.98", "g/cm3")]), ("2980 kg/m3", [("2980", "kg/m3")]), ("186 lb/ft^3", [("186", "lb/ft^3")]),
    ("1.5 oz. per lb.", [("1.5", "oz. per lb")]), ("", []), ("1 250 g", [("1 250", "g")]),
])
def test_parts(text, found):
    assert [(part["numeral"], part["unit"]) for part in words.parts(text)] == found


@pytest.mark.parametrize("text", ["g", "about 640", "~640", "640 + g", "..5", "one"])
def test_what_is_not_a_number_is_said_to_be_none(text):
    with pytest.raises(QuantityError):
        words.parts(text)


@pytest.mark.parametrize(("numeral", "either", "point", "comma"), [
    ("640", ["640"], ["640"], ["640"]),
    ("12,5", ["12.5"], ["12.5"], ["12.5"]),
    ("12.5", ["12.5"], ["12.5"], ["12.5"]),
    ("1,250", ["1250", "1.250"], ["1250"], ["1.250"]),
    ("1.250", ["1.250"], ["1.250"], ["1250", "1.250"]),
    ("0,250", ["0.250"], ["0.250"], ["0.250"]),
    ("1,234,567", ["1234567"], ["1234567"], ["1234567"]),
    ("1.234,5", ["1234.5"], ["1234.5"], ["1234.5"]),
    ("1,234.5", ["1234.5"], ["1234.5"], ["1234.5"]),
    ("1'250", ["1250"], ["1250"], ["1250"]),
    ("1 250", ["1250"], ["1250"], ["1250"]),
    ("1,2,3", [], [], []), ("12,34,567", [], [], []), ("1'25", [], [], []),
    ("5.", ["5.0"], ["5.0"], ["5.0"]), (",5", ["0.5"], ["0.5"], ["0.5"]),
])
def test_what_a_numeral_can_mean(numeral, either, point, comma):
    assert words.readings(numeral, "either") == either
    assert words.readings(numeral, "point") == point
    assert words.readings(numeral, "comma") == comma
