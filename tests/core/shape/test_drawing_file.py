"""An outline out of a drawing (SVG): shapes of known area, transforms worked by hand, and files meant to do harm."""

import math

import pytest

from brimbook.shape import outline as outlines
from brimbook.shape.drawing_file import drawn
from brimbook.shape.drawing_limits import MOST_BYTES
from brimbook.shape.drawing_joined import joined
from brimbook.shape.drawing_place import after, fitted, length_of, numbers_of, transform_of
from brimbook.shape.path_data import LONGEST, OutlineError

HEAD = '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'
MM = f'{HEAD} width="300mm" height="200mm" viewBox="0 0 300 200">'


def found(text):
    steps = drawn(text if isinstance(text, bytes) else text.encode())
    while True:
        try:
            share, says = next(steps)
            assert 0 <= share <= 1 and says
        except StopIteration as stop:
            return stop.value


def outline(inside, head=MM):
    return outlines.path(found(f"{head}{inside}</svg>").path)


def size(inside, head=MM):
    return pytest.approx(outlines.size(outline(inside, head)), abs=0.03)


@pytest.mark.parametrize("shape, area, sides", [
    ('<rect x="10" y="20" width="80" height="60"/>', 4800, (80, 60)),
    ('<rect width="80" height="60" rx="10"/>', 4800 - (4 - math.pi) * 100, (80, 60)),
    ('<rect width="80" height="60" ry="10"/>', 4800 - (4 - math.pi) * 100, (80, 60)),
    ('<rect width="80" height="60" rx="20" ry="5"/>', 4800 - (4 - math.pi) * 100, (80, 60)),
    ('<rect width="80" height="60" rx="400" ry="300"/>', math.pi * 40 * 30, (80, 60)),
    ('<circle cx="50" cy="50" r="40"/>', math.pi * 1600, (80, 80)),
    ('<ellipse cx="50" cy="50" rx="40" ry="20"/>', math.pi * 800, (80, 40)),
    ('<ellipse cx="50" cy="50" rx="40" ry="auto"/>', math.pi * 1600, (80, 80)),
    ('<polygon points="0,0 80,0 80 40"/>', 1600, (80, 40)),
    ('<polyline points="0 0 80 0 80 40 0 40"/>', 3200, (80, 40)),
    ('<path d="M10 10h80v60h-80z"/>', 4800, (80, 60)),
    ('<path d="m10 10 80 0 0 60-80 0z"/>', 4800, (80, 60)),
    ('<path d="M0 0C0 40 80 40 80 0z"/>', 0.6 * 80 * 40, (80, 30)),
    ('<path d="M0 0Q40 40 80 0z"/>', 2 / 3 * 80 * 20, (80, 20)),
    ('<path d="M0 40A40 40 0 0 1 80 40z"/>', math.pi * 800, (80, 40)),
    ('<path d="M0 40a40 40 0 0180 0z"/>', math.pi * 800, (80, 40)),
])
def test_each_shape_has_its_area_and_size(shape, area, sides):
    made = outline(shape)
    assert outlines.area(made) == pytest.approx(area, rel=2e-3)
    assert outlines.size(made) == pytest.approx(sides, rel=1e-3)


@pytest.mark.parametrize("wide, high, view, sides", [
    ("80mm", "60mm", "0 0 80 60", (80, 60)), ("8cm", "6cm", "0 0 160 120", (80, 60)), ("2in", "1in", "0 0 2 1", (50.8, 25.4)),
    ("144pt", "72pt", "0 0 10 5", (50.8, 25.4)), ("12pc", "6pc", "0 0 10 5", (50.8, 25.4)), ("192px", "96px", "0 0 10 5", (50.8, 25.4)),
    ("192", "96", "", (50.8, 25.4)), ("320Q", "240Q", "0 0 80 60", (80, 60)), ("", "", "0 0 192 96", (50.8, 25.4)),
    ("100%", "100%", "0 0 192 96", (50.8, 25.4)), ("80mm", "", "0 0 8 6", (80, 60)),
])
def test_units_and_view_boxes_give_the_size_in_mm(wide, high, view, sides):
    x, y, width, height = (view or f"0 0 {wide} {high}").split()
    given = " ".join(f'{name}="{text}"' for name, text in (("width", wide), ("height", high), ("viewBox", view)) if text)
    assert outlines.size(outline(f'<rect width="{width}" height="{height}"/>', f"{HEAD} {given}>")) == pytest.approx(sides, abs=0.03)


def test_a_size_without_mm_or_inches_is_told_to_be_pixels():
    assert any("96 to the inch" in note for note in found(f'{HEAD} viewBox="0 0 400 400"><rect width="300" height="200"/></svg>').notes)
    assert found(f'{MM}<rect width="80" height="60"/></svg>').notes == ()


def test_lengths_in_percent_are_parts_of_the_page():
    assert (90, 50) == size('<rect width="30%" height="25%"/>')


@pytest.mark.parametrize("text, point, goes", [
    ("translate(10)", (1, 2), (11, 2)), ("translate(10,20)", (1, 2), (11, 22)), ("scale(2)", (1, 2), (2, 4)), ("scale(2 -1)", (1, 2), (2, -2)),
    ("rotate(90)", (1, 2), (-2, 1)), ("rotate(90 10 10)", (10, 0), (20, 10)), ("skewX(45)", (1, 2), (3, 2)), ("skewY(45)", (1, 2), (1, 3)),
    ("matrix(1 2 3 4 5 6)", (1, 2), (12, 16)), ("translate(10,0) scale(2), rotate(90)", (1, 2), (6, 2)), ("", (1, 2), (1, 2)),
])
def test_transforms_worked_by_hand(text, point, goes):
    a, b, c, d, e, f = transform_of(text)
    assert (a * point[0] + c * point[1] + e, b * point[0] + d * point[1] + f) == pytest.approx(goes)


@pytest.mark.parametrize("text", ["translate(1 2 3)", "scale()", "turn(4)", "rotate(1 2)", "rotate(90", "skewX(90)", "matrix(1 2 3)", "scale(2)x", "scale(1e999)"])
def test_a_transform_that_can_t_be_read_is_told(text):
    with pytest.raises(OutlineError, match="in this drawing"):
        transform_of(text)


def test_transforms_of_groups_go_from_the_outside_in():
    square = '<g transform="translate(50 50)"><g transform="rotate(45)"><rect width="50" height="50" transform="scale(2 1)"/></g></g>'
    made = outline(square)
    assert outlines.area(made) == pytest.approx(5000, rel=1e-3)
    assert outlines.size(made) == pytest.approx((150 / math.sqrt(2), 150 / math.sqrt(2)), abs=0.03)


@pytest.mark.parametrize("align, goes", [
    ("", (10, 0, 2)), ("xMinYMin", (0, 0, 2)), ("xMaxYMid", (20, 0, 2)), ("xMidYMid slice", (0, -10, 4)), ("xMidYMax slice", (0, -20, 4)),
])
def test_a_view_box_is_fitted_as_it_says(align, goes):
    across, _, _, down, x, y = fitted((0, 0, 10, 10), (0, 0, 40, 20), align)
    assert (x, y, across) == goes and across == down


def test_a_view_box_may_be_stretched():
    assert fitted((5, 5, 10, 10), (0, 0, 40, 20), "none") == (4, 0, 0, 2, -20, -10)


def test_a_drawing_within_a_drawing_has_a_page_of_its_own():
    inner = '<svg x="10" y="10" width="100" height="50" viewBox="0 0 10 10"><rect width="10" height="10"/></svg>'
    assert (50, 50) == size(inner)


@pytest.mark.parametrize("inside", [
    '<defs><rect id="a" width="80" height="60"/></defs><use href="#a"/>',
    '<use xlink:href="#a" x="7"/><defs><rect id="a" width="80" height="60"/></defs>',
    '<symbol id="a" viewBox="0 0 8 6"><rect width="8" height="6"/></symbol><use href="#a" width="80" height="60"/>',
    '<defs><g id="b"><use href="#a"/></g><rect id="a" width="80" height="60"/></defs><use href="#b" transform="translate(9)"/>',
])
def test_copies_are_drawn_where_they_are_put(inside):
    assert (80, 60) == size(inside)


@pytest.mark.parametrize("hidden", [
    '<defs>{}</defs>', '<clipPath>{}</clipPath>', '<symbol id="a">{}</symbol>', '<g display="none">{}</g>', '<g style="display : none">{}</g>',
    '<mask>{}</mask>', '<pattern>{}</pattern>', '<x:g xmlns:x="urn:x">{}</x:g>',
])
def test_what_isn_t_shown_is_not_taken(hidden):
    assert (80, 60) == size(hidden.format('<rect width="200" height="150"/>') + '<rect width="80" height="60"/>')


def test_the_largest_outline_is_taken_and_the_others_are_told():
    made = found(f'{MM}<circle r="9"/><path d="M0 0h90v60h-90zM10 10h70v40h-70zm200 0h20v20h-20z"/></svg>')
    assert outlines.size(outlines.path(made.path)) == (90, 60) and made.notes[0].startswith("4 outlines in this file")


def test_an_outline_saved_piece_by_piece_is_joined():
    pieces = '<path d="M0 0H80"/><path d="M0 60V0"/><path d="M80 60.005A40 30 0 0 1 0 60"/><path d="M80 0V60"/>'
    made = found(f"{MM}{pieces}</svg>")
    assert outlines.area(outlines.path(made.path)) == pytest.approx(4800 + math.pi * 40 * 30 / 2, rel=2e-3) and made.notes == ()


def test_an_open_outline_is_closed_and_told():
    made = found(f'{MM}<path d="M0 0H80V60"/></svg>')
    assert outlines.area(outlines.path(made.path)) == 2400 and "closed with a straight line" in made.notes[0]


def test_joining_goes_both_ways_from_where_it_begins():
    sides = [((0.0, 0.0), (4.0, 0.0)), ((4.0, 0.0), (4.0, 3.0)), ((-2.0, 5.0), (0.0, 0.0)), ((9.0, 9.0), (8.0, 8.0))]
    rows = joined([(side,) for side in sides])
    assert sorted((len(row), is_closed) for row, is_closed in rows) == [(1, False), (3, False)]


def test_a_finely_drawn_outline_keeps_its_area_in_fewer_corners():
    points = " ".join(f"{100 + 90 * math.cos(step / 2000 * 2 * math.pi):.3f},{100 + 60 * math.sin(step / 2000 * 2 * math.pi):.3f}" for step in range(2000))
    made = found(f'{MM}<polygon points="{points}"/></svg>')
    assert len(made.path) <= LONGEST and "fine detail" in made.notes[0]
    assert outlines.area(outlines.path(made.path)) == pytest.approx(math.pi * 90 * 60, rel=3e-3)


def test_curves_stay_curves_where_there_is_room():
    assert "C" in found(f'{MM}<path d="M0 0C0 40 80 40 80 0z"/></svg>').path


@pytest.mark.parametrize("text, says", [
    ("", "no SVG drawing"), ("solid vase", "no SVG drawing"), ("<html/>", "no SVG drawing"), (f"{MM}", "damaged"), (f"{MM}<g></svg>", "damaged"),
    (b"\x1f\x8b\x08", "packed"), (bytes(range(256)), "no SVG drawing"), (b'<?xml version="1.0" encoding="none-such"?><svg/>', "no SVG drawing"),
    (f"{MM}<text>vase</text></svg>", "no closed outline"), (f"{MM}<line x2='80'/></svg>", "no closed outline"), (f'{MM}<rect width="0" height="5"/></svg>', "no closed outline"),
    (f'{MM}<path d="MNaN 0L80 0 80 60z"/></svg>', "can't be read"), (f'{MM}<path d="M1e999 0L80 0 80 60z"/></svg>', "can't be read"),
    (f'{MM}<rect width="3" height="2"/></svg>', "mm across"), (f'{MM}<rect width="9000" height="20"/></svg>', "mm across"),
    (f'{MM}<path d="M0 0L80 60V0L0 50z"/></svg>', "crosses"), (f'{MM}<rect width="4em" height="20"/></svg>', "can't be read"),
    (f'{HEAD} width="4em"><rect width="80" height="60"/></svg>', "Units are mm"), (f'{HEAD} viewBox="0 0 x 9"/>', "not a list of numbers"),
])
def test_a_file_that_holds_no_outline_is_told(text, says):
    with pytest.raises(OutlineError, match=says):
        found(text)


def test_a_part_that_can_t_be_read_does_not_spoil_the_others():
    assert found(f'{MM}<path d="M0 0Lx"/><rect width="80" height="60"/></svg>').notes == ("A part that can't be read was left out.",)


LAUGHS = "".join(f'<!ENTITY l{row} "{f"&l{row - 1};" * 10}">' for row in range(1, 10))


@pytest.mark.parametrize("text, says", [
    (f'<!DOCTYPE svg [<!ENTITY l0 "ha">{LAUGHS}]>{MM}<text>&l9;</text></svg>', "entities of its own"),
    (f'<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>{MM}<text>&x;</text></svg>', "entities of its own"),
    (f"{MM}{'<g>' * 100_000}{'</g>' * 100_000}</svg>", "nested too deeply"),
    (f"{MM}{'<g/>' * 400_000}</svg>", "parts"),
    (f'{MM}<polygon points="{"1,1 " * 1_000_000}"/></svg>', "too detailed"),
    (MM + "".join(f'<g id="g{row}">{f"""<use href="#g{row + 1}"/>""" * 10}</g>' for row in range(9)) + '<g id="g9"><rect width="9" height="9"/></g></svg>', "copies"),
    (f'{MM}<g transform="{"scale(9)" * 90_000}"><rect width="80" height="60"/></g></svg>', "can't be read"),
    (b" " * (MOST_BYTES + 1), "larger than 5 MB"),
])
def test_a_file_meant_to_do_harm_is_refused(text, says):
    with pytest.raises(OutlineError, match=says):
        found(text)


def test_a_copy_of_itself_ends():
    assert (80, 60) == size('<g id="a"><use href="#a"/><rect width="80" height="60"/></g>')


def test_a_doctype_without_entities_does_no_harm():
    head = '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">'
    assert outlines.size(outlines.path(found(f'{head}{MM}<rect width="80" height="60"/></svg>').path)) == (80, 60)


def test_lists_and_lengths_as_files_write_them():
    assert numbers_of("1,2-3.5 .5") == [1, 2, -3.5, 0.5] and numbers_of("  ") == []
    assert length_of(" 1e1 mm ", 0) == pytest.approx(960 / 25.4)
    assert after(transform_of("rotate(30)"), transform_of("rotate(-30)")) == pytest.approx((1, 0, 0, 1, 0, 0))
