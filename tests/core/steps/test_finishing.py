"""Finishing: areas, coats, and the time they take."""

import math

import pytest
from vessels import figures, notes, put, sheet, vessel

ROUND = {"casts__0__finishing__inside_top": "80 mm", "casts__0__finishing__inside_height": "100 mm"}


def told(name, **texts):
    return figures(vessel(**texts)).get(f"casts.0.finishing.{name}")


def test_a_straight_cup_by_hand():
    """π · 8 · 10 + π · 4² = 301.6 cm²; two coats at 8 m²/L take 7.5 mL."""
    assert told("inside", **ROUND)["value"] == pytest.approx(math.pi * (80 + 16), rel=1e-6)
    assert told("inside", **ROUND)["shown"] == "302 cm²"
    assert told("sealer", **ROUND)["value"] == pytest.approx(2 * 301.59 / 10 / 8, rel=1e-4)
    assert told("sealer", **ROUND)["says"] == "7.5 mL of sealer for 2 coats"


def test_a_tapered_cup_has_its_leaning_wall():
    figure = told("inside", casts__0__finishing__inside_bottom="60 mm", **ROUND)
    assert figure["value"] == pytest.approx((math.pi * 70 * math.hypot(100, 10) + math.pi * 900) / 100, rel=1e-6)


def test_any_outline():
    figure = told("outside", casts__0__finishing__shape="outline", casts__0__finishing__outside_outline="320 mm",
                  casts__0__finishing__outside_height="50 mm")
    assert figure["value"] == pytest.approx((320 * 50 + 320**2 / (4 * math.pi)) / 100, rel=1e-6)


def test_a_given_area_beats_the_sizes():
    figure = told("inside", casts__0__finishing__inside_area="250", **ROUND)
    assert figure["value"] == 250 and figure["working"]["constants"][0]["standing"] == "your entry"
    assert told("inside", casts__0__finishing__inside_area="lots", **ROUND) is None


def test_a_mold_and_a_well_that_were_measured_by_dimensions_stand_in():
    record = vessel(casts__0__cavity__way="dimensions", casts__0__cavity__diameter="90 mm", casts__0__cavity__height="100 mm",
                    wells__0__fill__way="dimensions", wells__0__fill__solid="box", wells__0__fill__length="60 mm",
                    wells__0__fill__width="40 mm", wells__0__fill__height="50 mm")
    shown = figures(record)
    assert shown["casts.0.finishing.outside"]["value"] == pytest.approx((math.pi * 9000 + math.pi / 4 * 8100) / 100, rel=1e-6)
    assert shown["casts.0.finishing.inside"]["value"] == pytest.approx((200 * 50 + 200**2 / (4 * math.pi)) / 100, rel=1e-6)
    assert any("sizes are those of the mold" in note for note in notes(sheet(record)))
    typed = figures(put(record, "casts.0.finishing.outside_top", "50 mm"))
    assert "casts.0.finishing.outside" not in typed


def test_every_piece_is_coated():
    one, three = told("sealer", **ROUND)["value"], told("sealer", casts__0__pieces="3", **ROUND)["value"]
    assert three == pytest.approx(3 * one)


def test_no_coat_takes_nothing_and_no_time():
    assert told("sealer", casts__0__finishing__sealer_coats="0", **ROUND) is None
    assert told("primer") is None and told("hours")["says"] == "All the coats take 12 h to dry, one after the other"
    none = {f"casts__0__finishing__{name}_coats": "0" for name in ("sealer", "paint")}
    assert told("hours", **none) is None
    assert told("hours", casts__0__finishing__primer_coats="1")["value"] == 14


@pytest.mark.parametrize(("path", "text"), [("inside_top", "x"), ("inside_height", "-3"), ("inside_bottom", "a foot long")])
def test_a_faulty_size_leaves_the_area_out(path, text):
    shown = figures(put(vessel(**ROUND), f"casts.0.finishing.{path}", text))
    assert "casts.0.finishing.inside" not in shown and "casts.0.finishing.hours" in shown


def test_usual_figures_are_marked_for_what_they_are():
    constants = {constant["name"]: constant["standing"] for constant in told("sealer", **ROUND)["working"]["constants"]}
    assert constants == {"One liter of sealer covers": "from memory", "Coats": "common practice"}
    own = told("sealer", casts__0__finishing__sealer_coverage="10", **ROUND)
    assert own["working"]["constants"][0]["standing"] == "your entry"


def test_paint_for_several_pieces_says_so():
    assert told("sealer", casts__0__pieces="3", **ROUND)["says"] == "22.6 mL of sealer for 2 coats on 3 pieces"


def test_the_inside_ends_at_its_floor():
    assert "floor" in told("inside", **ROUND)["working"]["formula"] and "foot" not in told("inside", **ROUND)["working"]["formula"]


def test_an_inside_larger_than_its_outside_is_told_of():
    outside = {"casts__0__finishing__outside_top": "70 mm", "casts__0__finishing__outside_height": "100 mm"}
    assert "larger than the outside" in told("inside", **ROUND, **outside)["notes"][0]
    assert told("inside", **ROUND, **{**outside, "casts__0__finishing__outside_top": "95 mm"})["notes"] == []
