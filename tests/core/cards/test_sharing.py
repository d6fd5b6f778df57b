"""A link of a vessel from a file: short, without sections, and with the outline of its wax."""

import pytest
from vessel_models import cup, cup_vessel
from vessels import ask, figures, put

from brimbook.mesh.model import Level, Room, Section

FILL = "wells.0.fill"


def shared(record):
    return ask("share", record=record, address="https://example.org/")["link"]


def opened(record):
    return ask("open_link", fragment=shared(record).partition("#")[2])["record"]


def test_sections_stay_here_and_the_outline_of_the_wax_goes_along():
    record = opened(cup_vessel())
    assert "sections" not in record["casts"][0]["cavity"]["file"] and record["casts"][0]["cavity"]["file"]["reading"]
    assert record["wells"][0]["outline"]["shape"] == "path" and record["wells"][0]["outline"]["path"].count(",") < 48
    assert "outline" not in cup_vessel()["wells"][0]


def test_figures_are_the_same_at_the_other_end():
    here, there = figures(cup_vessel()), figures(opened(cup_vessel()))
    for name in ("wicks.needed", "wax", "fill.volume"):
        assert there[f"wells.0.{name}"]["value"] == pytest.approx(here[f"wells.0.{name}"]["value"], rel=1e-6)


def test_the_plus_minus_of_an_oblong_room_stays():
    room = ((10.0, 20.0), (130.0, 20.0), (130.0, 40.0), (10.0, 40.0))
    level = Room((Level(8.0, 0.0, 0.0, 2400.0), Level(80.0, 2400.0 * 72, 2400.0, 0.0)))
    sections = tuple(Section(height, (((0.0, 10.0), (140.0, 10.0), (140.0, 50.0), (0.0, 50.0)), room[::-1]), (room,)) for height in (20.0, 60.0))
    record = cup_vessel(cup(rooms=(level,), sections=sections, size=(140.0, 60.0, 80.0)))
    here, there = figures(record), figures(opened(record))
    assert there[f"{FILL}.volume"]["plus_minus"] == here[f"{FILL}.volume"]["plus_minus"]


def test_the_link_is_short():
    assert len(shared(cup_vessel())) < 2500


@pytest.mark.parametrize("texts", [{"wells.0.outline.shape": "round", "wells.0.outline.across": "70 mm"}, {f"{FILL}.way": "on_scale"}])
def test_an_outline_of_the_maker_s_own_is_left_as_it_is(texts):
    record = cup_vessel()
    for path, text in texts.items():
        put(record, path, text)
    assert opened(record)["wells"][0].get("outline") == record["wells"][0].get("outline")


def test_any_wells_are_shared_as_they_are():
    assert opened({**cup_vessel(), "wells": "none"})["wells"] == "none"
