"""What was read from a file, as texts: short, true to a hundred-thousandth, and safe to read from a stranger's link."""

import dataclasses
import math
import random
import re

import pytest
from hypothesis import given, settings, strategies

from brimbook.mesh import curve, digest, letters
from brimbook.mesh.model import UPS, Level, Room
from brimbook.mesh.triangles import ModelError
from tests.core.helpers import read_models

PLAIN = read_models.vessel()
# A cup of radius 45 and height 80, its walls 5 and its floor 8 thick, as it was written before rooms had a surface.
FIRST = ("aFWi3AQrQAAEK0AABCoAAAR1B9IAAMAAAAQAAAAAAAAAACgT9QjjNUZR_-ABRlH_4ABDSA8rwUXGPJUAAAAAAAAAH__4zM0sTsX__5rdf______zW6wAABJFga7SLOUNKMzNAAAAAAD"
         "____________8AAA")
LARGEST = read_models.vessel(levels=60, rooms=4, room_levels=24, sections=16, gaps=8, notes=("A note of some length, as they come.",) * 20)


def area(polygon):
    return sum(a * d - b * c for (a, b), (c, d) in zip(polygon, [*polygon[1:], polygon[0]])) / 2


def again(model):
    return digest.model(digest.reading(model), digest.sections(model))


def same_curve(levels, others, near):
    whole = levels[-1].volume
    heights = [levels[0].height + step / 200 * (levels[-1].height - levels[0].height) for step in range(201)]
    return all(abs(curve.volume_at(levels, height) - curve.volume_at(others, height)) <= near * whole for height in heights)


@pytest.mark.parametrize("model", [PLAIN, LARGEST], ids=["plain", "largest"])
def test_texts_are_short_and_hold_letters_of_links_only(model):
    reading, sections = digest.reading(model), digest.sections(model)
    assert len(reading) <= 1500 and len(sections) <= 6000
    assert re.fullmatch(r"[A-Za-z0-9_.~-]+", reading + sections)


def test_an_ordinary_vessel_is_much_shorter():
    assert len(digest.reading(PLAIN)) < 500


def test_all_that_was_read_comes_back():
    read = again(PLAIN)
    for name in ("up", "unit", "triangles", "bodies", "hollows", "open_edges", "turned", "crossing", "notes"):
        assert getattr(read, name) == getattr(PLAIN, name), name
    assert read.size == pytest.approx(PLAIN.size, rel=1e-6) and read.surface == pytest.approx(PLAIN.surface, rel=1e-6)
    assert read.thinnest == pytest.approx(PLAIN.thinnest, abs=0.02)
    assert dataclasses.astuple(read.outer) == pytest.approx(dataclasses.astuple(PLAIN.outer), abs=0.005)
    assert dataclasses.astuple(read.inner) == pytest.approx(dataclasses.astuple(PLAIN.inner), abs=0.005)


def test_gaps_come_back():
    gaps = again(LARGEST).gaps
    assert len(gaps) == 8
    assert all(dataclasses.astuple(one) == pytest.approx(dataclasses.astuple(other), abs=0.02) for one, other in zip(gaps, LARGEST.gaps))


@pytest.mark.parametrize("model", [PLAIN, LARGEST], ids=["plain", "largest"])
def test_volumes_below_every_height_come_back(model):
    read = again(model)
    assert same_curve(model.solid, read.solid, 1e-5)
    assert all(same_curve(room.levels, other.levels, 1e-5) for room, other in zip(model.rooms, read.rooms, strict=True))


def test_jumps_come_back():
    steps = (Level(0.0, 0.0, 0.0, 400.0), Level(10.0, 4000.0, 400.0, 100.0), Level(80.0, 11000.0, 100.0, 100.0))
    read = again(dataclasses.replace(PLAIN, solid=steps))
    assert [value for level in read.solid for value in (level.below, level.above)] == pytest.approx([0, 400, 400, 100, 100, 100], abs=0.01)
    assert same_curve(steps, read.solid, 1e-5)


def test_levels_too_near_to_tell_apart_become_one():
    near = (Level(0.0, 0.0, 0.0, 100.0), Level(40.0, 4000.0, 100.0, 90.0), Level(40.00001, 4000.0009, 90.0, 80.0), Level(80.0, 7200.0, 80.0, 80.0))
    read = again(dataclasses.replace(PLAIN, solid=near))
    assert [level.height for level in read.solid] == pytest.approx([0.0, 40.0, 80.0], abs=1e-3)
    assert (read.solid[1].below, read.solid[1].above) == pytest.approx((100.0, 80.0), abs=0.01)


def test_sections_come_back():
    read = again(PLAIN)
    assert len(read.sections) == len(PLAIN.sections)
    for one, other in zip(PLAIN.sections, read.sections):
        assert other.height == pytest.approx(one.height, abs=1e-4)
        assert [area(each) for each in other.solid] == pytest.approx([area(each) for each in one.solid], rel=2e-3)
        assert [area(each) for each in other.rooms] == pytest.approx([area(each) for each in one.rooms], rel=2e-3)
    assert sum(sorted(read.cut[0]), ()) == pytest.approx(sum(sorted(PLAIN.cut[0]), ()), abs=0.02)


def test_a_full_text_of_sections_still_holds_sections_and_the_cut():
    read = again(LARGEST)
    assert len(read.sections) >= 4 and len(read.cut) == 2
    assert read.sections[0].height == pytest.approx(LARGEST.sections[0].height, abs=1e-4)
    assert read.sections[-1].height == pytest.approx(LARGEST.sections[-1].height, abs=1e-4)


def test_a_room_that_does_not_come_so_high_has_an_empty_outline():
    first, *others = PLAIN.sections
    read = again(dataclasses.replace(PLAIN, sections=(dataclasses.replace(first, rooms=((),)), *others)))
    assert read.sections[0].rooms == ((),) and len(read.sections[1].rooms[0]) > 10


def test_without_its_sections_a_model_still_has_its_volumes():
    read = digest.model(digest.reading(PLAIN))
    assert read.sections == () and read.cut == () and read.rooms[0].levels[-1].volume > 0


def test_what_was_told_once_is_told_the_same_again():
    read = again(PLAIN)
    assert digest.reading(read) == digest.reading(PLAIN)
    assert digest.sections(read) == digest.sections(PLAIN)


def test_notes_keep_their_marks():
    notes = ("Corners nearer than 0.001 mm were joined; 3 triangles (2 %) were left out.", "It's turned: 90° ± 1, 2 × 3 – so?")
    assert again(dataclasses.replace(PLAIN, notes=notes)).notes == notes


def test_a_note_in_other_letters_is_told_without_them():
    assert again(dataclasses.replace(PLAIN, notes=("<b>Größe</b>",))).notes == ("-b-Gr--e-/b-",)


numbers = strategies.floats(0.001, 1e6)


@given(strategies.tuples(numbers, numbers, numbers), strategies.sampled_from(UPS), strategies.sampled_from(["", "mm", "inch", "micron"]),
       strategies.integers(2, 40), strategies.integers(0, 4), strategies.integers(0, 16), strategies.integers(3, 48))
@settings(max_examples=60, deadline=None)
def test_any_model_comes_back(size, up, unit, levels, rooms, sections, corners):
    model = read_models.vessel(levels, rooms, 5, max(sections, 1), corners)
    by = max(size) / 100
    model = dataclasses.replace(
        model, up=up, unit=unit, size=tuple(by * side for side in model.size), sections=model.sections[:sections],
        solid=tuple(Level(by * each.height, by ** 3 * each.volume, by ** 2 * each.below, by ** 2 * each.above) for each in model.solid))
    model = dataclasses.replace(model, rooms=tuple(Room(tuple(Level(by * each.height, each.volume, each.below, each.above)
                                                               for each in room.levels)) for room in model.rooms))
    read = again(model)
    assert read.up == up and len(read.rooms) == rooms and len(read.sections) <= sections
    assert read.solid[-1].volume == pytest.approx(model.solid[-1].volume, rel=1e-6)


# Strangers' texts.

def damaged(text, chance):
    place, other = chance.randrange(len(text)), chance.randrange(len(text))
    kind = chance.randrange(5)
    if kind == 0:
        return text[:place] + chance.choice(letters.ALPHABET + ".~") + text[place + 1:]
    if kind == 1:
        return text[:place]
    if kind == 2:
        return text[:place] + text[min(place, other):max(place, other)] + text[place:]
    if kind == 3:
        return text[:place] + "_" * chance.randrange(20) + text[place + chance.randrange(20):]
    return text + "".join(chance.choice(letters.ALPHABET) for _ in range(chance.randrange(1, 30)))


def resealed(text):
    """As a stranger would write it who knows the seal."""
    return letters.sealed(text[:1] or "a", text[1 + letters.SEAL:])


@pytest.mark.parametrize(("model", "turns"), [(PLAIN, 500), (LARGEST, 150)], ids=["plain", "largest"])
def test_damaged_texts_are_refused_or_make_sense(model, turns):
    chance = random.Random(5)
    reading, sections = digest.reading(model), digest.sections(model)
    refused = 0
    for turn in range(turns):
        one, other = (damaged(reading, chance), sections) if turn % 2 else (reading, damaged(sections, chance))
        for pair in ((one, other), (resealed(one), resealed(other))):
            try:
                read = digest.model(*pair)
            except ModelError as error:
                refused += 1
                assert str(error) == letters.DAMAGED
                continue
            assert_sound(read)
    assert refused > turns


def assert_sound(model):
    for levels in (model.solid, *(room.levels for room in model.rooms)):
        assert all(low.height < high.height and low.volume <= high.volume for low, high in zip(levels, levels[1:]))
        assert all(math.isfinite(value) and value >= 0 for level in levels for value in dataclasses.astuple(level))
    for section in model.sections:
        assert len(section.rooms) == len(model.rooms)
        assert all(len(each) >= 3 and area(each) for each in section.solid)
    assert len(digest.reading(model)) <= 1500


@pytest.mark.parametrize("text", ["", "a", "c" + digest.reading(PLAIN)[1:], "a" + digest.reading(PLAIN)[1:], "aAAAA", "a" * 5000, "é" * 30, "a....", None, 7, "aAAAA~", "a" + "\x00" * 40])
def test_what_is_no_such_text_is_refused(text):
    with pytest.raises(ModelError):
        digest.model(text)
    if text:
        with pytest.raises(ModelError):
            digest.model(digest.reading(PLAIN), text)


def test_sealed_nonsense_is_refused():
    for body in ("", "A", "_" * 40, "_" * 1400, "A" * 1400, "." * 300, "AAAA.~", "AAAA.~z"):
        with pytest.raises(ModelError):
            digest.model(letters.sealed("a", body))
        with pytest.raises(ModelError):
            digest.model(letters.sealed(digest.VERSION, body))


def test_sections_of_another_model_have_its_rooms_or_are_refused():
    two = read_models.vessel(rooms=2)
    with pytest.raises(ModelError):
        digest.model(digest.reading(PLAIN), digest.sections(two))


def test_a_room_keeps_its_surface():
    rooms = tuple(dataclasses.replace(room, surface=1234.5) for room in PLAIN.rooms)
    assert [room.surface for room in digest.model(digest.reading(dataclasses.replace(PLAIN, rooms=rooms))).rooms] == [1234.5] * len(rooms)


def test_a_reading_of_the_first_kind_is_read_still():
    """As it was written before rooms had a surface."""
    found = digest.model(FIRST)
    assert [room.surface for room in found.rooms] == [0.0]
    assert found.rooms[0].levels[-1].volume == pytest.approx(360878.8, rel=1e-6)
