"""A label laid out: all of it inside, nothing over another, no letter too small; or how large it would have to be."""

import math
import re
import xml.etree.ElementTree as ET

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from labels import LINK, any_labels, label, words

from brimbook.draw.code import modules
from brimbook.draw.label import CAPITAL, Label, Words
from brimbook.draw.label_draw import laid, preview
from brimbook.draw.label_text import CAPITAL_SHARE, clean, size_for

EDGE, NEAR = 2.0, 1e-6
SVG = "{http://www.w3.org/2000/svg}"


def inside(shape, side, corner, box):
    """Does a box keep the quiet edge?"""
    if shape == "round":
        radius = side.width / 2
        return all(math.hypot(x - radius, y - radius) <= radius - EDGE + NEAR for x in (box.left, box.right) for y in (box.top, box.bottom))
    if not (box.left >= EDGE - NEAR and box.top >= EDGE - NEAR and box.right <= side.width - EDGE + NEAR and box.bottom <= side.height - EDGE + NEAR):
        return False
    radius = min(corner, side.width / 2, side.height / 2)
    for x, y in ((x, y) for x in (box.left, box.right) for y in (box.top, box.bottom)):
        beyond = [max(radius - at, at - (whole - radius), 0.0) for at, whole in ((x, side.width), (y, side.height))]
        if math.hypot(*beyond) > max(radius - EDGE, 0.0) + NEAR and all(beyond):
            return False
    return True


def over(one, other):
    return (one.left < other.right - NEAR and other.left < one.right - NEAR and one.top < other.bottom - NEAR and other.top < one.bottom - NEAR)


def names(side):
    """What a side says, in reading order of each name's first line."""
    return [box.name for box in side.boxes]


def drawn(side):
    """The texts of a side, by line, with their attributes."""
    root = ET.fromstring(f'<svg xmlns="{SVG[1:-1]}">{"".join(side.shapes)}</svg>')
    return [(element.text, element.attrib) for element in root.iter(f"{SVG}text")]


def check(asked, made):
    """What every label keeps, whatever was asked."""
    size = (made.needed or (asked.width, asked.height)) if asked.shape != "round" else (made.needed or (min(asked.width, asked.height),) * 2)
    for side in made.sides:
        assert (side.width, side.height) == size
        for number, box in enumerate(side.boxes):
            assert inside(asked.shape, side, asked.corner, box), box
            assert not [other for other in side.boxes[:number] if over(box, other)]
        for told in asked.words:
            if (not asked.apart or told.side == side.name) and told.low and clean(told.text):
                assert all(box.top >= 0.7 * side.height - NEAR for box in side.boxes if box.name == told.name)
    for told in asked.words:
        heights = [box.letters for side in made.sides for box in side.boxes if box.name == told.name]
        least = min(size_for(each.least, each.measured) * CAPITAL_SHARE for each in asked.words if each.name == told.name)
        assert all(height >= least - NEAR for height in heights)


@settings(max_examples=120)
@given(any_labels(), st.sampled_from(["", LINK]))
@example(Label("round", 10.0, 300.0, 100.0, (), 5.0, 3.0, True, True), LINK)
@example(Label("rectangle", 300.0, 10.0, 100.0, (Words("product", "龙" * 60, 6.4),)), "")
def test_everything_is_inside_apart_and_large_enough(asked, link):
    made = laid(asked, link)
    check(asked, made)
    assert made.fits or made.says
    assert made.fits == (made.needed is None and bool(made.sides))
    assert all(sentence.endswith(".") for sentence in made.says)
    ET.fromstring(preview(made))


@given(any_labels())
def test_no_word_is_lost(asked):
    made = laid(asked)
    if not made.sides:
        return
    shown = sorted("".join(text for side in made.sides for text, _ in drawn(side)).replace(" ", "").replace("\u00a0", ""))
    said = sorted("".join(clean(each.text) for each in asked.words if clean(each.text).strip("\u00a0\u200c\u200d\u200e\u200f"))
                  .replace(" ", "").replace("\u00a0", ""))
    # Marks that have no width by themselves are not printed.
    assert len(shown) <= len(said) and set(shown) <= set(said)
    if "".join(said).isascii():
        assert shown == said


@pytest.mark.parametrize(("asked", "link"), [
    (label(), ""), (label("round", 80.0, 80.0), ""), (label("strip", 220.0, 32.0), ""), (label(apart=True, width=60.0, height=45.0), ""),
    (label("round", 90.0, 90.0, code=True), LINK), (label(code=True, width=100.0, height=70.0), LINK), (label("round", 62.0, 62.0, apart=True), ""),
])
def test_usual_labels_fit_and_say_everything(asked, link):
    made = laid(asked, link)
    assert made.fits and made.says == () and made.needed is None
    check(asked, made)
    found = [name for side in made.sides for name in names(side)]
    assert set(found) == {each.name for each in asked.words} | {"alert", "average"} | ({"code"} if link else set())
    assert len(made.sides) == (2 if asked.apart else 1)


def test_the_name_is_the_largest_and_stands_first():
    for asked in (label(), label(apart=True), label("round", 60.0, 60.0, apart=True)):
        side = laid(asked).sides[0]
        product, *others = ([box for box in side.boxes if box.name == name] for name in ("product", "scent", "maker", "net"))
        assert all(box.letters < product[0].letters and box.top > product[-1].bottom for boxes in others for box in boxes)


def test_below_one_another_things_keep_their_order():
    made = laid(label("round", 110.0, 110.0, words=words(low=False), average=0.0), "")
    tops = {name: min(box.top for box in made.sides[0].boxes if box.name == name) for name in
            ("product", "scent", "maker", "net", "warning", "caution", "burn_time", "lot")}
    assert list(tops.values()) == sorted(tops.values())


def test_words_have_no_more_than_their_room_in_any_font():
    for text, attributes in drawn(laid(label()).sides[0]):
        assert attributes["lengthAdjust"] == "spacingAndGlyphs" and float(attributes["textLength"]) > 0, text


def test_nothing_stands_in_the_space_around_the_net_weight():
    for asked in (label(), label("strip", 220.0, 32.0), label("round", 80.0, 80.0), label(code=True, width=100.0, height=70.0)):
        side = laid(asked, LINK).sides[0]
        net = [box for box in side.boxes if box.name == "net"]
        for box in net:
            for other in (each for each in side.boxes if each.name not in ("net", "average")):
                assert not over(type(box)("", box.left - 1.5 * box.letters, box.top - box.letters, box.right + 1.5 * box.letters,
                                          box.bottom + box.letters), other)
        (mark,) = [box for box in side.boxes if box.name == "average"]
        assert mark.bottom - mark.top == pytest.approx(3.0) and mark.left - net[-1].right >= 1.5 * net[-1].letters - NEAR


def test_the_triangle_stands_before_its_word_at_its_height():
    side = laid(label()).sides[0]
    (triangle,), (word,) = ([box for box in side.boxes if box.name == name] for name in ("alert", "warning"))
    assert triangle.bottom - triangle.top == pytest.approx(5.0) and triangle.right <= word.left
    assert triangle.top <= word.top and word.bottom <= triangle.bottom
    alone = laid(label(words=words()[-1:])).sides[0]
    assert [box.name for box in alone.boxes if box.name == "alert"] == ["alert"]


@pytest.mark.parametrize("shape", ["rectangle", "round", "strip"])
def test_a_label_that_is_too_small_tells_the_size_at_which_it_fits(shape):
    made = laid(label(shape, 30.0, 20.0))
    assert not made.fits and "too small" in made.says[0] and re.search(r"about \d+ mm (by \d+ mm|across)\.$", made.says[-1])
    width, height = made.needed
    assert laid(label(shape, width, height)).fits
    assert not laid(label(shape, width - 2, height - 2)).fits
    # The label is seen as it would have to be.
    assert {(side.width, side.height) for side in made.sides} == {(width, height)}


def test_a_strip_that_is_too_small_grows_in_height_alone():
    assert laid(label("strip", 240.0, 12.0)).needed[0] == 240.0


def test_what_is_in_the_way_is_named():
    assert "QR code" in laid(label(code=True, width=72.0, height=55.0), LINK * 3).says[0]
    assert "let front and back be two labels" in laid(label(width=62.0, height=42.0)).says[0]
    assert laid(label(width=62.0, height=42.0, apart=True)).fits
    assert "least height of letters" in laid(label(width=30.0, height=20.0)).says[0]


def test_lengths_are_told_as_the_maker_reads_them():
    assert "about 2 in by" in laid(label(width=30.0, height=20.0, words=(Words("product", "Candle", 6.0),)), "", lambda _: "2 in").says[-1]


def test_no_label_is_large_enough_for_too_much():
    made = laid(label(words=(Words("line", "word " * 4000, 6.4),)))
    assert not made.fits and made.sides == () and made.needed is None and "Even a label of 300 mm" in made.says[-1]
    ET.fromstring(preview(made))


def test_a_link_that_no_code_holds_is_told():
    made = laid(label(code=True), "https://example.org/#1." + "a" * 3000)
    assert not made.fits and "too large for a QR code" in made.says[0]


def test_a_code_has_modules_of_two_fifths_of_a_millimeter_and_its_quiet_zone():
    side = laid(label(code=True, width=100.0, height=70.0), LINK).sides[0]
    (box,) = [box for box in side.boxes if box.name == "code"]
    assert box.right - box.left == pytest.approx((len(modules(LINK)) + 8) * 0.4)
    assert "laid out when" in laid(label(code=True)).says[0] and laid(label(code=True)).fits


def test_front_and_back_share_the_words():
    front, back = laid(label(apart=True, code=True), LINK).sides
    assert set(names(front)) == {"product", "scent", "maker", "net", "average"}
    assert set(names(back)) == {"warning", "alert", "caution", "burn_time", "lot", "code"}
    # Without anything for the back there is no back.
    assert [side.name for side in laid(label(apart=True, alert=0.0, words=words()[-1:])).sides] == ["front"]


def test_a_word_too_long_for_the_label_is_broken_only_where_it_must():
    long = Words("product", "Betongefäßkerzenwachsmischung", 3.0, CAPITAL)
    wide, narrow = (laid(label(width=width, height=60.0, words=(long,), alert=0.0)) for width in (120.0, 30.0))
    assert [text for text, _ in drawn(wide.sides[0])] == [long.text]
    broken = [text for text, _ in drawn(narrow.sides[0])]
    assert narrow.fits and len(broken) > 1 and "".join(broken) == long.text


def test_the_same_label_is_laid_out_the_same():
    assert laid(label(), LINK) == laid(label(), LINK)


def test_a_preview_is_as_wide_as_the_card_and_carries_its_own_colors():
    root = ET.fromstring(preview(laid(label(apart=True, words=words("<b onload='x'> & candle")))))
    assert root.get("viewBox").startswith("0 0 350 ") and {"style", "onload"}.isdisjoint(name for each in root.iter() for name in each.keys())
    assert {element.get("fill") for element in root.iter(f"{SVG}rect")} == {"#fff"}
    assert len(list(root.iter(f"{SVG}rect"))) == 2
