"""What people type: every spelling that must be understood, and the sentence for what can't be."""

import re

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from brimbook.quantity.error import QuantityError
from brimbook.quantity.read import Bounds, read
from brimbook.quantity.units import KINDS, UNITS
from brimbook.record.fields import LEAVES
from brimbook.record.leaf import MONEY, TIME, WEIGHT
from brimbook.record.leaves.cast import PARTICLES
from brimbook.record.leaves.fill import WATER
from brimbook.record.leaves.materials import GIVEN_OFF
from brimbook.record.leaves.well import LOAD

MARKS = ["either", "point", "comma"]
OUNCE, POUND = 28.349523125, 453.59237
BARE = {"mass": "g", "length": "mm", "volume": "ml", "density": "g/ml", "share": "%", "temperature": "°c",
        "duration": "min", "pressure": "mpa", "coverage": "m2/l", "heat": "kj/kg", "money": "$"}
RATIO = LEAVES["casts.*.mix.water_to_powder"].bounds
PIECES = LEAVES["casts.*.pieces"].bounds
RULE = LEAVES["casts.*.mix.rule"].bounds
LENGTH = LEAVES["casts.*.cavity.height"].bounds
PLACES = {"mass": WEIGHT, "length": LENGTH, "volume": Bounds(0, 1e6), "density": PARTICLES, "share": LOAD,
          "temperature": WATER,
          "ratio": RATIO, "count": PIECES, "number": RULE, "parts": LEAVES["casts.*.mix.parts"].bounds, "money": MONEY,
          "duration": TIME, "heat": GIVEN_OFF,
          "pressure": Bounds(0.1, 500, "A stress here is between 0.1 and 500 MPa."),
          "coverage": Bounds(0.1, 100, "A tin covers between 0.1 and 100 m²/L.")}


def weigh(text, mark="either", unit="g"):
    return read(text, "mass", WEIGHT, unit, mark)


def refused(text, kind="mass", mark="either", unit=None):
    with pytest.raises(QuantityError) as caught:
        read(text, kind, PLACES[kind], BARE.get(kind, "") if unit is None else unit, mark)
    return caught.value.sentence


@pytest.mark.parametrize(("text", "grams", "canonical"), [
    ("640", 640, "640 g"), ("640 g", 640, "640 g"), ("640g", 640, "640 g"), ("640 G", 640, "640 g"),
    ("640 grams", 640, "640 g"),
    ("640 gr.", 640, "640 g"), ("+640", 640, "640 g"), (" 640  g ", 640, "640 g"), ("６４０ ｇ", 640, "640 g"),
    ("٦٤٠", 640, "640 g"),
    ("640\u00a0g", 640, "640 g"), ("1.7 lb", 1.7 * POUND, "1.7 lb"), ("1 lb 4 oz", 20 * OUNCE, "1 lb 4 oz"),
    ("1lb4oz", 20 * OUNCE, "1 lb 4 oz"), ("1 lb. 4 oz.", 20 * OUNCE, "1 lb 4 oz"),
    ("1 lb, 4 oz", 20 * OUNCE, "1 lb 4 oz"),
    ("1 pound and 4 ounces", 20 * OUNCE, "1 lb 4 oz"), ("1 LBS 4 OZ", 20 * OUNCE, "1 lb 4 oz"),
    ("27½ oz", 27.5 * OUNCE, "27 1/2 oz"), ("27 1/2 oz", 27.5 * OUNCE, "27 1/2 oz"),
    ("1 1/2 oz", 1.5 * OUNCE, "1 1/2 oz"),
    ("1-1/2 oz", 1.5 * OUNCE, "1 1/2 oz"), ("½ lb", POUND / 2, "1/2 lb"), ("1 lb 3½ oz", 19.5 * OUNCE, "1 lb 3 1/2 oz"),
    ("0,640 kg", 640, "0.640 kg"), (".64 kg", 640, "0.64 kg"), ("0.640 kg", 640, "0.640 kg"),
    ("1 kg 200 g", 1200, "1 kg 200 g"),
    ("12,5", 12.5, "12.5 g"), ("12.5", 12.5, "12.5 g"), ("1,250 g", 1250, "1250 g"), ("1,250 kg", 1250, "1.25 kg"),
    ("1,250 lb", 1.25 * POUND, "1.25 lb"), ("1 250 g", 1250, "1250 g"), ("1'250 g", 1250, "1250 g"),
    ("1.234,5 g", 1234.5, "1234.5 g"),
    ("1,234.5 g", 1234.5, "1234.5 g"), ("007", 7, "7 g"), ("640.", 640, "640 g"), ("640.0 g", 640, "640 g"),
    ("500 mg", 0.5, "500 mg"),
    ("100 kg", 100_000, "100 kg"), ("0.001", 0.001, "0.001 g"),
])
def test_weights(text, grams, canonical):
    quantity = weigh(text)
    assert quantity.value == pytest.approx(grams, rel=1e-12)
    assert quantity.canonical == canonical


@pytest.mark.parametrize(("text", "mark", "grams"), [
    ("1,250 g", "point", 1250), ("1,250 g", "comma", 1.25), ("1.250 g", "point", 1.25), ("1.250 g", "comma", 1250),
    ("1.250 kg", "comma", 1250), ("12,5", "point", 12.5), ("12.5", "comma", 12.5), ("1.234,5", "comma", 1234.5),
])
def test_the_decimal_mark_of_the_settings_decides(text, mark, grams):
    assert weigh(text, mark).value == pytest.approx(grams)


@pytest.mark.parametrize(("text", "kind", "unit", "value"), [
    ("80", "length", "mm", 80), ("8 cm", "length", "mm", 80), ("3 1/8 in", "length", "mm", 79.375),
    ('3⅛"', "length", "mm", 79.375),
    ("3.25", "length", "in", 82.55), ("1 ft 2 in", "length", "mm", 355.6), ("8cm 5mm", "length", "mm", 85),
    ("20", "temperature", "°c", 20), ("68", "temperature", "°f", 20), ("68 F", "temperature", "°c", 20),
    ("68°F", "temperature", "°c", 20), ("20 °C", "temperature", "°f", 20), ("20 degrees C", "temperature", "°f", 20),
    ("41 °F", "temperature", "°c", 5), ("104 °F", "temperature", "°c", 40), ("5", "temperature", "°c", 5),
    ("40", "temperature", "°c", 40),
    ("2.98", "density", "g/ml", 2.98), ("2980 kg/m³", "density", "g/ml", 2.98), ("2980 kg/m3", "density", "g/ml", 2.98),
    ("2980 kg/m^3", "density", "g/ml", 2.98), ("2.98 g/cm^3", "density", "g/ml", 2.98),
    ("2.98 g/cm³", "density", "g/ml", 2.98),
    ("2.98 g per mL", "density", "g/ml", 2.98), ("2.98 g/cc", "density", "g/ml", 2.98),
    ("6", "share", "%", 0.06), ("6 %", "share", "%", 0.06), ("6%", "share", "%", 0.06),
    ("1 oz/lb", "share", "%", 0.0625),
    ("1 oz per lb", "share", "%", 0.0625), ("1½ oz/lb", "share", "%", 0.09375),
    ("1 ounce per pound", "share", "%", 0.0625),
    ("60 g/kg", "share", "%", 0.06), ("6,25", "share", "%", 0.0625), ("0", "share", "%", 0),
    ("3", "count", "", 3), ("3 pieces", "count", "", 3), ("3.0", "count", "", 3), ("1,000", "count", "", 1000),
    ("1.88", "number", "", 1.88), ("1,88", "number", "", 1.88), ("1 7/8", "number", "", 1.875),
    ("1.88 g/g", "number", "", 1.88),
    ("1.88 g per g", "number", "", 1.88),
])
def test_other_quantities(text, kind, unit, value):
    assert read(text, kind, PLACES[kind], unit).value == pytest.approx(value, abs=1e-9)


@pytest.mark.parametrize("text", ["68°", "68 °", "68 deg", "68 degrees"])
def test_a_degree_sign_alone_is_the_maker_s_own_degree(text):
    assert read(text, "temperature", WATER, "°f").value == pytest.approx(20, abs=1e-9)
    with pytest.raises(QuantityError):
        read(text, "temperature", WATER, "°c")


@pytest.mark.parametrize("text", ["4:1", "4 : 1", "4 to 1", "4to1", "4：1", "1:4", "0.25", "0,25", "25 %", "25%", "4",
                                  "1/4",
                                  "100:25", "1,000:250", "400:100"])
@pytest.mark.parametrize("mark", ["either", "point"])
def test_a_mix_told_in_many_ways_is_one_mix(text, mark):
    assert read(text, "ratio", RATIO, "", mark).value == pytest.approx(0.25)


@pytest.mark.parametrize("text", ["4:1", "1.000:250", "0,25", "25 %", "3,5:1", "3.5:1"])
def test_a_mix_with_the_comma_as_decimal_mark(text):
    assert read(text, "ratio", RATIO, "", "comma").value == pytest.approx(1 / 3.5 if "5:1" in text else 0.25)


@pytest.mark.parametrize("text", ["", " ", "one", "nan", "inf", "-5", "−5 g", "1e99", "1e3", "0", "1e-3", "about 640",
                                  "~640", "640 + g",
                                  "g", "640 g g", "5 stone", "1#", "0x10", "1_000", "640 ?", "6 fl oz", "6 fl. oz.",
                                  "80 mm", "20 °C",
                                  "1 lb 4", "1 oz 1 lb", "1/2 lb 3 oz", "640 g 20 g", "1/0 oz", "1,2,3", "9" * 70,
                                  "100.1 kg",
                                  "99999999999999", "5-6 g", "640-650", "640 грамм", "\x00", "🕯", "640\n\n20"])
def test_what_can_t_be_understood_gets_one_sentence_or_two_that_help(text):
    sentence = refused(text)
    assert sentence[-1] in ".?"
    assert "\n" not in sentence and len(sentence) < 200
    assert re.search(r"Type |Check |For ", sentence)


@pytest.mark.parametrize(("text", "kind", "word"), [
    ("6 fl oz", "mass", "volume"), ("6 oz", "volume", "fl oz"), ("80 mm", "mass", "a length"),
    ("1 oz", "share", "oz/lb"),
    ("640 g", "length", "a weight"), ("1.88 g", "number", "a number"), ("12 cups", "count", "pieces"),
    ("", "mass", "Nothing is typed"),
    ("-5", "mass", "below zero"), ("1e99", "mass", "in full"), ("1/0 oz", "mass", "below the line"),
    ("1½", "count", "whole"),
    ("0", "count", "at least 1"), ("4:1:1", "ratio", "two sides"), ("2", "density", None),
    ("0.5", "density", "loose heap"),
    ("50", "temperature", "between 5 and 40"), ("60", "share", "between 0 and 50"),
    ("1,250 oz", "mass", "could be 1250 oz or 1.25 oz"),
    ("5 stone", "mass", "isn't a unit"),
])
def test_the_sentence_says_what_is_wrong(text, kind, word):
    if word is None:
        assert read(text, kind, PLACES[kind], BARE.get(kind, "")).value == 2
    else:
        assert word in refused(text, kind)


@pytest.mark.parametrize("text", ["5-6 g", "640-650", "640 – 650 g"])
def test_a_range_is_not_said_to_be_below_zero(text):
    assert "below zero" not in refused(text)


def test_a_mix_typed_with_a_dash_is_not_said_to_be_below_zero():
    assert "below zero" not in refused("4-1", "ratio")


def test_a_raised_figure_does_not_become_a_last_digit():
    """10² g is nothing that anyone weighs; it must not read as 102."""
    assert refused("10² g")


def test_the_bounds_that_a_sentence_names_are_themselves_allowed():
    assert read("41 °F", "temperature", WATER, "°c").value == pytest.approx(5)
    assert read("104 °F", "temperature", WATER, "°c").value == pytest.approx(40)
    assert read("104", "temperature", WATER, "°f").value == pytest.approx(40)
    assert read("3 m", "length", LENGTH, "mm").value == pytest.approx(3000)
    assert read("0.1 mm", "length", LENGTH, "mm").value == pytest.approx(0.1)
    assert read("100 kg", "mass", WEIGHT, "g").value == pytest.approx(1e5)
    assert read("50 %", "share", LOAD, "%").value == pytest.approx(0.5)
    assert read("8 oz/lb", "share", LOAD, "%").value == pytest.approx(0.5)
    assert read("8000 kg/m³", "density", PARTICLES, "g/ml").value == pytest.approx(8)
    assert read("1000 kg/m³", "density", PARTICLES, "g/ml").value == pytest.approx(1)


@given(st.text(max_size=80), st.sampled_from(sorted(KINDS)), st.sampled_from(MARKS))
@settings(max_examples=300)
def test_any_text_is_read_or_refused_with_a_sentence(text, kind, mark):
    check_read_or_refused(text, kind, mark)


PIECES_OF_TEXT = st.sampled_from([*"0123456789", "12", "640", "1,250", "0.5", " ", " ", ".", ",", "'", "-", "+", "/",
                                  ":", "½", "⅓", "%",
                                  "to", "e", "per", "°", "²", "³", "^", '"', "∞", *sorted(UNITS)])


@given(st.lists(PIECES_OF_TEXT, max_size=12).map("".join), st.sampled_from(sorted(KINDS)), st.sampled_from(MARKS))
@settings(max_examples=600)
@example("1 " * 30, "mass", "either")
@example("1,111 " * 10, "mass", "either")
@example("1'111.1,1", "mass", "comma")
@example("0/5", "ratio", "either")
@example("0,0:0,0", "ratio", "comma")
@example("9" * 60 + "%", "ratio", "either")
def test_any_text_of_digits_signs_and_units_is_read_or_refused(text, kind, mark):
    check_read_or_refused(text, kind, mark)


def check_read_or_refused(text, kind, mark):
    bounds = PLACES[kind]
    try:
        quantity = read(text, kind, bounds, BARE.get(kind, ""), mark)
    except QuantityError as error:
        assert error.sentence[-1] in ".?"
        return
    assert bounds.least - 1e-9 <= quantity.value <= bounds.most * (1 + 1e-9)
    for other in MARKS:
        again = read(quantity.canonical, kind, bounds, BARE.get(kind, ""), other)
        assert (again.value, again.canonical) == (quantity.value, quantity.canonical)
    if kind != "ratio":
        for bare in ("oz", "in", "°f"):
            if UNITS[bare].kind == kind:
                assert read(quantity.canonical, kind, bounds, bare).value == quantity.value


@given(st.integers(1, 99_999_999), st.sampled_from(["g", "oz", "lb", "kg"]), st.sampled_from(MARKS))
def test_a_plain_decimal_written_as_canonical_is_itself_under_any_mark(thousandths, unit, mark):
    bounds, number = Bounds(0, 1e9), f"{thousandths / 1000:.3f}"
    quantity = read(f"{number} {unit}", "mass", bounds, "g", "point")
    assert quantity.value == pytest.approx(float(number) * {"g": 1, "oz": OUNCE, "lb": POUND, "kg": 1000}[unit],
                                           rel=1e-9)
    assert read(quantity.canonical, "mass", bounds, "g", mark).value == quantity.value


@given(st.integers(1, 20), st.integers(0, 15), st.integers(1, 15))
def test_pounds_ounces_and_fractions_add_up(pounds, ounces, sixteenths):
    text = f"{pounds} lb {ounces} {sixteenths}/16 oz"
    assert weigh(text).value == pytest.approx((pounds * 16 + ounces + sixteenths / 16) * OUNCE)


def test_a_long_text_is_refused_at_once():
    assert "too long" in refused("1" * 100_000)


@pytest.mark.parametrize("word", sorted(UNITS))
def test_every_word_for_a_unit_can_be_typed(word):
    kind = UNITS[word].kind
    quantity = read(f"3 {word}", kind, Bounds(-1e9, 1e9), BARE.get(kind, ""))
    assert quantity.canonical == f"3 {UNITS[word].symbol}"
    assert read(quantity.canonical, kind, Bounds(-1e9, 1e9)).value == quantity.value


@pytest.mark.parametrize(("text", "parts", "canonical"), [
    ("1:2:0.4", (1, 2, 0.4), "1:2:0.4"), ("1 : 2 : 0,4", (1, 2, 0.4), "1:2:0.4"), ("4:1", (4, 1), "4:1"),
    ("1 to 2 to 0.4", (1, 2, 0.4), "1:2:0.4"), ("1:1/2:0.25", (1, 0.5, 0.25), "1:1/2:0.25"),
    ("100:200:45", (100, 200, 45), "100:200:45"), ("1:2:1:0.45", (1, 2, 1, 0.45), "1:2:1:0.45")])
def test_parts_by_weight(text, parts, canonical):
    quantity = read(text, "parts", PLACES["parts"])
    assert quantity.value == parts and quantity.canonical == canonical
    assert read(canonical, "parts", PLACES["parts"], "", "comma").value == parts


@pytest.mark.parametrize("text", ["1", "1:", "1:2:", "1:2:0", "1:two:0.4", "1:2 kg:0.4", ":", "1::2", "1:-2:3"])
def test_what_are_no_parts_is_refused(text):
    assert refused(text, "parts").endswith(".")


@pytest.mark.parametrize(("text", "amount"), [("24.50", 24.5), ("$24.50", 24.5), ("24,50 $", 24.5), ("$ 1250", 1250)])
def test_a_price(text, amount):
    assert read(text, "money", MONEY, "$").value == amount


def test_a_price_in_another_currency_is_refused():
    assert "Prices here are in $" in refused("24 €", "money") and "Prices here are in $" in refused("EUR 24", "money")
    assert refused("free", "money").endswith(".")


@pytest.mark.parametrize(("text", "seconds", "canonical"), [
    ("45", 2700, "45 min"), ("1 h 30 min", 5400, "1 h 30 min"), ("1.5 h", 5400, "1.5 h"), ("2 days", 172_800, "2 d"),
    ("1 wk 2 d", 777_600, "1 wk 2 d"), ("90 sec", 90, "90 s")])
def test_a_length_of_time(text, seconds, canonical):
    quantity = read(text, "duration", TIME, "min")
    assert (quantity.value, quantity.canonical) == (seconds, canonical)
