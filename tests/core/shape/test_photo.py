"""A rim out of a photo: synthetic cameras see a sheet and a rim; the marks lead back to the rim at true size."""

import math
from dataclasses import replace

import numpy as np
import pytest

from brimbook.shape import outline as outlines
from brimbook.shape.perspective import around, solved
from brimbook.shape.photo import Photo, Ruler, Sheet, area_off, traced

A4 = Sheet(297.0, 210.0)
CORNERS = ((-148.5, -105.0), (148.5, -105.0), (148.5, 105.0), (-148.5, 105.0))


def camera(chance, ratio, tilt=40.0, height=None):
    """A pinhole camera somewhere above the table: gives what it sees of a place, and its height [mm]."""
    lens = chance.uniform(0.65, 1.1) * max(1.0, ratio)
    lean, way, roll = math.radians(chance.uniform(0, tilt)), chance.uniform(0, 2 * math.pi), chance.uniform(0, 2 * math.pi)
    away = height / math.cos(lean) if height else chance.uniform(350, 700)
    toward = np.array([math.sin(lean) * math.cos(way), math.sin(lean) * math.sin(way), math.cos(lean)])
    eye = toward * away + np.array([60.0, 0.0, 0.0])
    right = np.cross(-toward, [math.cos(roll), math.sin(roll), 0.0])
    right /= np.linalg.norm(right)
    turn = np.array([right, np.cross(-toward, right), -toward])

    def sees(x, y, z=0.0):
        across, down, deep = turn @ (np.array([x, y, z]) - eye)
        return 1000 * (0.5 + lens * across / deep), 1000 * (ratio / 2 + lens * down / deep)

    return sees, eye[2]


def rim(chance, count=10, across=45.0, deep=32.0):
    x, y = chance.uniform(-60, 60, 2)
    return [(x + across * math.cos(2 * math.pi * row / count), y + deep * math.sin(2 * math.pi * row / count)) for row in range(count)]


def area_of(points):
    return sum(one[0] * other[1] - one[1] * other[0] for one, other in zip(points, [*points[1:], points[0]])) / 2


def shot(seed, ratio=0.75, **more):
    """A photo with exact marks, and the rim that was photographed."""
    chance = np.random.default_rng(seed)
    sees, _ = camera(chance, ratio, **more)
    true = rim(chance)
    known = [sees(*corner) for corner in CORNERS]
    chance.shuffle(known)
    return Photo(A4, tuple(map(tuple, known)), tuple(sees(*point) for point in true), ratio, is_round=False), true


def sides(points):
    return sorted(math.dist(one, other) for one, other in zip(points, [*points[1:], points[0]]))


@pytest.mark.parametrize("ratio", [0.75, 4 / 3, 1.0])
@pytest.mark.parametrize("seed", range(40))
def test_exact_marks_lead_back_to_the_rim_from_any_pose(seed, ratio):
    photo, true = shot(seed, ratio)
    found = traced(photo)
    assert found.area == pytest.approx(area_of(true), rel=1e-9)
    assert sides(found.outline.points) == pytest.approx(sides(true), abs=1e-6)


def test_the_corners_may_be_marked_in_any_order():
    photo, _ = shot(7)
    for order in ((0, 1, 2, 3), (2, 0, 3, 1), (3, 2, 1, 0)):
        assert traced(replace(photo, known=tuple(photo.known[row] for row in order))) == traced(photo)


def test_the_rim_lies_as_in_the_photo():
    """A pear with its narrow end to the right and up in the photo has it there in the outline."""
    seen = ((400, 500), (500, 560), (560, 480), (700, 300), (520, 420))
    points = traced(Photo(A4, ((100, 100), (800, 110), (810, 590), (95, 600)), seen, is_round=False)).outline.points
    farthest = max(points, key=lambda point: math.hypot(*point))
    assert farthest[0] > 0 and farthest[1] > 0


def test_a_sheet_taken_for_the_other_way_around_can_be_turned():
    photo, true = shot(3)
    other = traced(replace(photo, by=Sheet(297.0, 210.0, is_other_way=True)))
    assert abs(other.area / area_of(true) - 1) < 1e-9 and other.is_wide != traced(photo).is_wide
    assert outlines.size(other.outline) != pytest.approx(outlines.size(traced(photo).outline), rel=0.05)


def test_marks_that_are_a_little_off_stay_within_the_plus_minus_for_about_95_of_100():
    chance, inside, off = np.random.default_rng(11), 0, 5.0
    for seed in range(300):
        photo, true = shot(seed, tilt=30.0)
        # Off by no more than `off` for 95 of 100: two standard deviations.
        moved = [tuple((x + chance.normal(0, off / 2), y + chance.normal(0, off / 2)) for x, y in marks) for marks in (photo.known, photo.rim)]
        noisy = replace(photo, known=moved[0], rim=moved[1])
        inside += abs(traced(noisy).area - area_of(true)) <= area_off(noisy, off)
    assert 0.92 <= inside / 300 <= 0.99


@pytest.mark.parametrize("seed", range(10))
def test_a_rim_above_the_sheet_is_put_right_by_the_height_of_the_camera(seed):
    chance = np.random.default_rng(seed)
    sees, height = camera(chance, 0.75, height=500.0)
    true = rim(chance)
    photo = Photo(A4, tuple(sees(*corner) for corner in CORNERS), tuple(sees(*point, 60.0) for point in true), is_round=False)
    assert traced(photo).area > 1.2 * area_of(true)
    assert traced(replace(photo, nearer=60.0 / height)).area == pytest.approx(area_of(true), rel=1e-9)


@pytest.mark.parametrize("count, off", [(8, 0.004), (10, 0.002), (12, 0.002), (24, 0.0005)])
def test_a_round_rim_needs_few_marks(count, off):
    chance = np.random.default_rng(count)
    sees, _ = camera(chance, 0.75)
    photo = Photo(A4, tuple(sees(*corner) for corner in CORNERS), tuple(sees(*point) for point in rim(chance, count)))
    found = traced(photo)
    assert found.area == pytest.approx(math.pi * 45 * 32, rel=off)
    assert outlines.area(found.outline) == pytest.approx(found.area, rel=2e-3)


def test_a_circle_marked_unevenly_is_that_circle():
    seen = tuple((500 + 200 * math.cos(angle), 400 + 200 * math.sin(angle)) for angle in (0.0, 0.4, 1.3, 1.9, 2.6, 3.6, 4.1, 5.2))
    found = traced(Photo(Ruler(100.0), ((0.0, 0.0), (1000.0, 0.0)), seen))
    assert found.area == pytest.approx(math.pi * 400, rel=1e-4)


def test_with_a_ruler_lengths_are_those_of_the_photo():
    square = ((100.0, 100.0), (500.0, 100.0), (500.0, 500.0), (100.0, 500.0))
    found = traced(Photo(Ruler(150.0), ((100.0, 700.0), (400.0, 300.0)), square, is_round=False))
    # 500 thousandths of the width are 150 mm, so the square's 400 are 120 mm.
    assert found.area == pytest.approx(14400.0) and found.scale == pytest.approx(300.0)


SHEET = ((100.0, 100.0), (800.0, 100.0), (800.0, 600.0), (100.0, 600.0))
RIM = ((300.0, 300.0), (500.0, 300.0), (500.0, 500.0), (300.0, 500.0))


@pytest.mark.parametrize("known, seen, says", [
    (((100, 100), (800, 100), (300, 200), (100, 600)), RIM, "four corners of a sheet"),
    (((100, 100), (100, 100), (800, 600), (100, 600)), RIM, "four corners of a sheet"),
    (((100, 100), (500, 100), (900, 100), (500, 600)), RIM, "four corners of a sheet"),
    (((450, 300), (550, 300), (990, 700), (10, 700)), RIM, "from the side"),
    (((100, 300), (900, 300), (900, 380), (100, 380)), RIM, "from the side"),
    (((300, 300), (700, 300), (800, 600), (200, 600)), ((480, -900), (520, -900), (500, 500)), "horizon"),
    (SHEET, ((300, 300), (500, 500), (500, 300), (300, 500)), "crosses itself"),
    (SHEET, ((300, 300), (300, 300), (500, 500), (300, 500)), "same place"),
    (SHEET, ((300, 300), (305, 300), (305, 304)), "mm across"),
    (SHEET, RIM[:2], "takes 3 to 90 marks"),
])
def test_marks_that_can_t_be_are_told(known, seen, says):
    with pytest.raises(outlines.OutlineError, match=says):
        traced(Photo(A4, known, seen, is_round=False))


def test_ends_of_a_ruler_that_are_one_are_told():
    with pytest.raises(outlines.OutlineError, match="too close together"):
        traced(Photo(Ruler(100.0), ((100.0, 100.0), (110.0, 100.0)), RIM))


def test_linear_equations_agree_with_numpy():
    chance = np.random.default_rng(5)
    for _ in range(20):
        factors, right = chance.normal(size=(8, 8)), chance.normal(size=8)
        assert solved([[*row, one] for row, one in zip(factors.tolist(), right.tolist())]) == pytest.approx(np.linalg.solve(factors, right))
    assert solved([(1.0, 1.0, 2.0), (2.0, 2.0, 5.0)]) is None


def test_corners_go_round_from_the_side_that_runs_to_the_right():
    assert around([(0.1, 0.8), (0.9, 0.9), (0.8, 0.1), (0.1, 0.1)]) == ((0.1, 0.1), (0.8, 0.1), (0.9, 0.9), (0.1, 0.8))
