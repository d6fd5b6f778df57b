"""The photo on the wicks' card: what is asked next, what taps write, and a drawing's file that is read."""

import json
import math

import pytest
from arithmetic import works_out
from vessels import ask, put, sheet, vessel

from brimbook import door
from brimbook.reading import file

AT = "wells.0.outline.photo"
CORNERS = [(100, 100), (694, 100), (694, 520), (100, 520)]
# A circle 200 thousandths across; the sheet's 594 thousandths are 297 mm, so it is 100 mm across.
RIM = [(round(400 + 100 * math.cos(row * math.pi / 6)), round(300 + 100 * math.sin(row * math.pi / 6))) for row in range(12)]


def text(marks):
    return " ".join(f"{x},{y}" for x, y in marks)


def record(marks=(), **texts):
    made = vessel(wells__0__outline__shape="photo", wells__0__outline__photo__size="1600 1200", wells__0__outline__photo__marks=text(marks))
    for name, each in texts.items():
        put(made, f"{AT}.{name}", each)
    return made


def card(made, **settings):
    return next(each for each in sheet(made, **settings)["cards"] if each["id"] == "wicks")


def figure(made, name, **settings):
    return next(each for each in card(made, **settings)["figures"] if each["key"] == f"wells.0.wicks.{name}")


def marked(made, **request):
    return ask("mark_photo", record=made, place=AT, **request)


def test_a_photo_is_asked_for_only_where_the_outline_is_from_one():
    assert card(vessel())["photo"] is None
    fresh = card(vessel(wells__0__outline__shape="photo"))
    assert fresh["photo"]["marks"] == "" and fresh["photo"]["place"] == AT and fresh["waiting"] == "Mark the rim on a photo."
    assert not fresh["photo"]["fault"] and fresh["photo"]["back"] is None


@pytest.mark.parametrize("count, says", [
    (0, "Tap corner 1 of 4 of the sheet."), (3, "Tap corner 4 of 4 of the sheet."), (4, "Tap round the inner edge of the rim, in order: 0 so far."),
    (6, "Tap round the inner edge of the rim, in order: 2 so far."), (16, "Tap round the inner edge of the rim, in order: 12 so far. Drag a mark to mend it."),
])
def test_it_says_what_to_tap_next(count, says):
    assert card(record([*CORNERS, *RIM][:count]))["photo"]["says"] == says


def test_it_says_what_to_type_next():
    marks = [*CORNERS, *RIM]
    assert "Type the sides of the sheet." in card(record(marks, paper="other"))["photo"]["says"]
    assert "how far apart the two ends are" in card(record(marks, by="ruler"))["photo"]["says"]
    assert "how far the camera was" in card(record(marks, rim="20 mm"))["photo"]["says"]
    assert card(record([], by="ruler"))["photo"]["says"] == "Tap end 1 of 2 of the way on the ruler."


def test_marks_become_the_outline_with_its_plus_minus():
    made = record([*CORNERS, *RIM])
    area = figure(made, "area")
    assert area["value"] == pytest.approx(math.pi * 2500 / 100, rel=0.01)
    assert area["plus_minus"].startswith("± ") and area["plus_minus"].endswith(" cm²") and "16 marks" in area["working"]["spread"]
    assert figure(made, "photo_wide")["value"] == pytest.approx(100, abs=0.5)
    assert figure(made, "photo_scale")["value"] == pytest.approx(500 / 1600, rel=0.01)
    assert figure(made, "needed")["value"] == pytest.approx(100, abs=0.5)
    assert figure(made, "area", length="in")["plus_minus"].endswith(" in²")


def test_the_figures_of_a_photo_work_out():
    for each in card(record([*CORNERS, *RIM], rim="20 mm", camera="400 mm"))["figures"]:
        if "photo" in each["key"] or each["key"].endswith("area"):
            works_out(each)


def test_a_rim_above_the_sheet_is_smaller_than_it_looks():
    flat, raised = (figure(record([*CORNERS, *RIM], **more), "area")["value"] for more in ({}, {"rim": "20 mm", "camera": "400 mm"}))
    assert raised == pytest.approx(0.95**2 * flat)
    assert figure(record([*CORNERS, *RIM], rim="20 mm", camera="400 mm"), "photo_nearer")["shown"] == "5 %"


def test_a_pixel_is_told_in_the_maker_s_unit():
    made = record([*CORNERS, *RIM])
    assert figure(made, "photo_scale")["shown"] == "0.312 mm" and figure(made, "photo_scale", length="in")["shown"] == "0.0123 in"


def test_a_surer_mark_makes_a_smaller_plus_minus():
    def half(off):
        return float(figure(record([*CORNERS, *RIM], off=off), "area")["plus_minus"].split()[1])

    assert half("0.25 %") < 0.6 * half("0.5 %")


@pytest.mark.parametrize("paper, sides", [("a4", 297), ("letter", 279.4), ("other", 400)])
def test_the_sheet_is_as_large_as_is_said(paper, sides):
    ratio = {"a4": 1, "letter": 279.4 / 297 * 215.9 / 210, "other": 400 / 297 * 300 / 210}[paper]
    made = record([*CORNERS, *RIM], paper=paper, wide="400 mm", high="300 mm")
    assert figure(made, "area")["value"] == pytest.approx(ratio * figure(record([*CORNERS, *RIM]), "area")["value"], rel=1e-3)
    assert f">{sides:g} mm<" in card(made)["photo"]["marks"]


def test_marks_are_drawn_as_handles_that_say_what_they_are():
    drawn = card(record([*CORNERS, *RIM]))["photo"]["marks"]
    assert drawn.count('class="handle"') == 16 and 'viewBox="0 0 1000 750"' in drawn
    assert "Corner 1, 10 % from the left, 13.3 % from the top" in drawn and "Rim 12, " in drawn
    assert 'class="photo-sheet"' not in card(record(CORNERS[:3]))["photo"]["marks"]


def test_the_last_mark_can_be_taken_back_and_all_begun_anew():
    photo = card(record(CORNERS))["photo"]
    assert photo["back"] == {f"{AT}.marks": text(CORNERS[:3])} and photo["anew"] == {f"{AT}.marks": ""}


def test_a_tap_adds_a_mark_and_a_drag_moves_one():
    made = record(CORNERS)
    assert marked(made, x=500.4, y=300.6) == {"sets": {f"{AT}.marks": text([*CORNERS, (500, 301)])}, "row": 4, "x": 500, "y": 301}
    assert marked(made, row=1, x=700, y=90)["sets"][f"{AT}.marks"] == text([CORNERS[0], (700, 90), *CORNERS[2:]])
    assert marked(made, row=1, step="left")["sets"][f"{AT}.marks"] == text([CORNERS[0], (693, 100), *CORNERS[2:]])
    assert marked(made, row=1, step="down", far=True)["x"] == 694 and marked(made, row=1, step="down", far=True)["y"] == 105


def test_a_mark_stays_on_the_photo():
    sets = marked(record(CORNERS), row=0, x=-50, y=5000)
    assert (sets["x"], sets["y"]) == (0, 750)


def test_a_new_photo_of_another_shape_has_no_marks():
    made = record(CORNERS)
    assert marked(made, width=1200, height=1600)["sets"] == {f"{AT}.size": "1200 1600", f"{AT}.paper": "a4", f"{AT}.marks": ""}
    assert f"{AT}.marks" not in marked(made, width=800, height=600)["sets"]
    assert ask("mark_photo", record=made, place=AT, width=800, height=600, settings={"length": "in"})["sets"][f"{AT}.paper"] == "letter"
    assert f"{AT}.paper" not in marked(record(paper="a4"), width=800, height=600)["sets"]


@pytest.mark.parametrize("request_", [
    {}, {"place": 5}, {"place": "wells.7.outline.photo"}, {"place": "wells.*.outline.photo"}, {"place": "casts.0"}, {"place": "x"}, {"place": AT},
    {"place": AT, "x": "1", "y": 2}, {"place": AT, "x": True, "y": 2}, {"place": AT, "x": 1e300, "y": 2}, {"place": AT, "row": 9, "x": 1, "y": 1},
    {"place": AT, "row": True, "x": 1, "y": 1}, {"place": AT, "row": 0, "step": "out"}, {"place": AT, "width": 9, "height": 5000},
    {"place": AT, "width": "800", "height": 600}, {"place": AT, "width": None},
])
def test_a_request_that_makes_no_sense_is_answered_with_a_sentence(request_):
    reply = json.loads(door.ask("mark_photo", json.dumps({"record": record(CORNERS), **request_})))
    assert reply["fault"]["sentence"].endswith(".") and not reply["fault"]["detail"]


def test_before_a_photo_nothing_can_be_marked():
    made = vessel(wells__0__outline__shape="photo")
    reply = json.loads(door.ask("mark_photo", json.dumps({"record": made, "place": AT, "x": 1, "y": 1})))
    assert reply["fault"]["sentence"] == "Choose a photo first, then mark it."


@pytest.mark.parametrize("name, typed, path", [
    ("marks", "1,2 x", "marks"), ("marks", "12345,1", "marks"), ("size", "1600x1200", "size"), ("size", "9 9", "size"), ("size", "100 9000", "size"),
    ("camera", "30 mm", "camera"),
])
def test_what_can_t_be_read_is_told_beside_its_field(name, typed, path):
    made = record([*CORNERS, *RIM], rim="20 mm", camera="400 mm")
    put(made, f"{AT}.{name}", typed)
    assert [fault["path"] for fault in sheet(made)["faults"]] == [f"{AT}.{path}"]


def test_marks_that_can_t_be_a_sheet_are_told_on_the_photo():
    made = record([(100, 100), (200, 200), (300, 300), (100, 520), *RIM])
    assert "four corners of a sheet" in card(made)["photo"]["fault"] and card(made)["photo"]["marks"]


def test_rough_marks_are_told_to_be_rough():
    far = [*((x // 4, y // 4) for x, y in CORNERS), *((x + 400, y + 300) for x, y in RIM)]
    assert any("Let sheet and rim lie close together" in note for note in card(record(far))["notes"])


def test_a_photo_travels_in_a_link():
    made = record([*CORNERS, *RIM])
    link = ask("share", record=made, address="https://example.org/")["link"]
    opened = ask("open_link", fragment=link.partition("#")[2])
    assert opened["record"]["wells"][0]["outline"]["photo"]["marks"] == text([*CORNERS, *RIM])
    assert len(link) < 700


SVG = b'<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="60mm" viewBox="0 0 90 60"><rect width="80" height="50"/><circle r="4"/></svg>'


def read(data, **request):
    return [json.loads(each) for each in file.read("drawing", json.dumps(request), data)]


def test_a_drawing_is_read_into_the_outline():
    *steps, last = read(SVG, place="wells.0.outline", settings={"length": "in"})
    assert all("progress" in each for each in steps) and steps
    assert last["answer"]["sets"] == {"wells.0.outline.shape": "path", "wells.0.outline.path": "M0 0L80 0L80 50L0 50Z"}
    assert last["answer"]["says"] == "The outline is 3.15 in across and 1.97 in the other way. 2 outlines in this file; the largest is taken."
    made = vessel(**{path.replace(".", "__"): text for path, text in last["answer"]["sets"].items()})
    assert figure(made, "area")["value"] == pytest.approx(40)


@pytest.mark.parametrize("place", [None, 5, "", "wells.0", "casts.0.outline", "wells.*.outline"])
def test_a_drawing_for_no_outline_is_answered_with_a_sentence(place):
    assert read(SVG, place=place)[-1]["fault"] == {"sentence": "There is no such outline.", "detail": ""}


def test_a_file_that_is_no_drawing_is_answered_with_a_sentence():
    assert read(b"solid vase", place="wells.0.outline")[-1]["fault"]["detail"] == ""


def test_the_button_for_a_drawing_stands_where_an_outline_is_drawn():
    shown = card(vessel(wells__0__outline__shape="path"))["picks"]
    assert [(pick["reading"], pick["place"]) for pick in shown] == [("drawing", "wells.0.outline")] and "5 MB" in shown[0]["too_large"]
    assert card(vessel())["picks"] == []
