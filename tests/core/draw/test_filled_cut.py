"""What fills a cut below a line: its area, wherever walls lean, posts stand and handles leave gaps."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw.filled_cut import gaps_below, solid_below
from brimbook.shape.flatten import signed_area

# A leaning trough with a handle on its right: 4 high inside from 1 to 5, its walls lean outward by 1.
CUP = ((0.0, 0.0), (8.0, 0.0), (9.0, 5.0), (8.0, 5.0), (7.0, 1.0), (1.0, 1.0), (0.0, 5.0), (-1.0, 5.0))
HANDLE = ((8.2, 1.0), (11.0, 1.0), (11.0, 4.0), (8.8, 4.0), (8.7, 3.5), (10.0, 3.5), (10.0, 1.5), (8.3, 1.5))
POST = ((3.0, 1.0), (5.0, 1.0), (5.0, 3.0), (3.0, 3.0))


def filled(cut, line):
    return sum(abs(signed_area(list(each))) for each in gaps_below(cut, 1.0, line, (0.0, 8.0)))


@pytest.mark.parametrize("line", [1.5, 2.0, 3.7, 5.0])
def test_the_room_of_a_leaning_trough_is_filled_and_the_handle_is_not(line):
    deep = line - 1.0
    assert filled((CUP,), line) == pytest.approx(6 * deep + deep**2 / 4)
    assert filled((CUP, HANDLE), line) == pytest.approx(6 * deep + deep**2 / 4)


def test_a_post_stands_in_it():
    assert filled((CUP, POST), 4.0) == pytest.approx(6 * 3 + 9 / 4 - 4)


@given(st.floats(0.1, 5.0))
def test_the_solid_below_a_line_grows_to_the_whole(line):
    part = sum(abs(signed_area(list(each))) for each in solid_below((CUP,), line))
    assert 0 < part <= signed_area(list(CUP)) + 1e-9
    assert all(z <= line + 1e-9 for each in solid_below((CUP,), line) for _, z in each)


def test_nothing_is_filled_without_a_cut_or_below_the_floor():
    assert gaps_below((), 1.0, 3.0, (0.0, 8.0)) == solid_below((), 3.0) == gaps_below((CUP,), 1.0, 1.0, (0.0, 8.0)) == ()
