"""Letters of a label: sizes that no font falls short of, widths, and where texts break."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw.label import CAPITAL, SMALL
from brimbook.draw.label_text import Word, clean, cut_to, first_line, reach, size_for, width_of, words_of

# Measured in the fonts' own files, in sizes of the font: capitals, small letters.
FONTS = {"Liberation Sans": (0.688, 0.528), "DejaVu Sans": (0.729, 0.547)}


@pytest.mark.parametrize("font", FONTS)
@given(st.floats(0.5, 20))
def test_letters_are_never_lower_than_asked(font, least):
    capital, small = FONTS[font]
    assert size_for(least, CAPITAL) * capital >= least and size_for(least, SMALL) * small >= least
    # Nor much higher: less than a tenth.
    assert size_for(least, CAPITAL) * capital < 1.1 * least and size_for(least, SMALL) * small < 1.1 * least


# Widths of the font's own table [thousandths]: measured in Liberation Sans.
@pytest.mark.parametrize(("text", "bold", "width"), [
    ("Candle", False, 0.722 + 4 * 0.556 + 0.222), ("Candle", True, 0.722 + 2 * 0.556 + 2 * 0.611 + 0.278), ("173 g", False, 2.502),
    ("@", True, 0.975), ("", False, 0.0), ("龙龙", False, 2.0), ("é", False, 0.6), ("e\u0301", False, 0.556), ("\u200d", True, 0.0)])
def test_words_are_as_wide_as_their_letters(text, bold, width):
    assert width_of(text, bold) == pytest.approx(width, abs=1e-12)


@given(st.text())
def test_a_cleaned_text_has_nothing_that_can_t_be_seen(text):
    made = clean(text)
    assert clean(made) == made and made == made.strip(" ") and "  " not in made
    made.encode("utf-8")
    assert not set(made) & set("\n\t\x00\x7f")


@given(st.text(max_size=60), st.booleans(), st.floats(0.3, 30))
def test_lines_hold_all_words_in_order_and_none_is_too_long(text, bold, room):
    words, lines = cut_to(words_of(clean(text), bold), room, bold), []
    rest = words
    while rest and (made := first_line(rest, room)):
        lines.append(made[0])
        rest = made[1]
    assert all(line.width <= room + 1e-6 for line in lines)
    assert all(width_of(line.text, bold) == pytest.approx(line.width, abs=1e-9) for line in lines)
    assert "".join(line.text for line in lines).replace(" ", "") + "".join(word.text for word in rest) == clean(text).replace(" ", "")
    # What is left over is a letter wider than the line.
    assert not rest or (rest[0].width > room and len(cut_to(rest[:1], room, bold)) == 1)


def test_numbers_stay_with_their_units():
    assert [word.text for word in words_of(clean("Net Wt 6.1 oz (173 g)"), False)] == ["Net", "Wt", "6.1\u00a0oz", "(173\u00a0g)"]
    assert [word.text for word in words_of(clean("2 candles"), False)] == ["2", "candles"]


def test_chinese_breaks_between_signs_but_not_before_a_comma():
    assert [word.text for word in words_of("香薰，蜡烛 x", False)] == ["香", "薰，", "蜡", "烛", "x"]
    assert words_of("香薰", False)[1].space == 0


def test_a_family_and_its_joiners_are_not_taken_apart():
    assert [word.text for word in cut_to(words_of("👩‍👩‍👧e\u0301e\u0301", False), 0.7, False)][-1] == "e\u0301"
    assert all(not word.text.startswith(("\u200d", "\u0301")) for word in cut_to(words_of("👩‍👩‍👧e\u0301", False), 0.7, False))


def test_accents_take_more_height():
    assert reach("Candle × 2 – “soft”") == (0.8, 0.25) and reach("Ål") == reach("龙") == (1.0, 0.35)


def test_a_word_has_its_space_only_before_it():
    assert first_line((Word("ab", 1.0, 0.3), Word("cd", 1.0, 0.3)), 2.3)[0].text == "ab cd"
    assert first_line((Word("ab", 1.0, 0.3), Word("cd", 1.0, 0.3)), 2.2)[0].text == "ab"
