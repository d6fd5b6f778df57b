"""A link of a vessel from a file: short, without sections, and with the outline of its wax."""

import pytest
from vessel_models import cup_vessel
from vessels import ask, figures, put

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
