"""How high letters and figures of a net weight must be, by the panel and by the nominal quantity."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from label_answers import answer, told
from vessels import vessel

from brimbook.draw.label_text import size_for


def net_words(found):
    return next(words for words in found.labels["labels.0"].label.words if words.name == "net")


@pytest.mark.parametrize(("texts", "area", "letters"), [
    ({}, 48.0, 3.175),
    ({"panel_width": "50 mm", "panel_height": "40 mm"}, 20.0, 1.5875),
    ({"panel": "cylinder", "panel_around": "250 mm", "panel_height": "90 mm"}, 90.0, 3.175),
    ({"panel": "cylinder", "panel_around": "314 mm"}, 75.36, 3.175),
    ({"panel": "top", "panel_area": "44.2"}, 44.2, 3.175),
    ({"panel": "top", "panel_width": "80 mm", "panel_height": "80 mm"}, 64.0, 3.175),
    ({"panel": "other", "panel_area": "1000"}, 400.0, 4.7625),
    ({"panel": "other", "panel_area": "6000"}, 2400.0, 6.35),
    ({"panel": "other", "panel_area": "10000"}, 4000.0, 12.7),
])
def test_letters_go_by_the_panel(texts, area, letters):
    found = answer(market="us", **texts)
    assert told(found, "panel").value == pytest.approx(area) and told(found, "letters").value == pytest.approx(letters)
    assert net_words(found).least == pytest.approx(letters) and net_words(found).measured == "small"


def test_a_round_label_stands_in_for_a_flat_panel():
    assert told(answer(market="us", shape="round", across="60 mm"), "panel").value == pytest.approx(36)


def test_where_no_side_is_typed_that_is_said():
    said = "not by the label"
    assert any(said in note for note in answer().labels["labels.0"].notes)
    sized = answer(panel_width="80 mm", panel_height="60 mm").labels["labels.0"]
    assert not any(said in note for note in sized.notes)


@pytest.mark.parametrize(("panel", "asks"), [("cylinder", "once around"), ("other", "all its surface")])
def test_a_size_that_is_missing_is_asked_for(panel, asks):
    found = answer(panel=panel).labels["labels.0"]
    assert found.label is None and asks in found.waiting
    assert answer(panel=panel, market="eu").labels["labels.0"].label is not None


def test_a_faulty_size_is_waited_for_where_it_counts():
    assert answer(panel_width="x").labels["labels.0"].waiting == "Mend the entry that is marked."
    assert answer(panel="other", panel_width="x", panel_area="300").labels["labels.0"].label is not None
    assert answer(width="x").labels["labels.0"].label is None


@pytest.mark.parametrize(("net", "height"), [("40 g", 2.0), ("150 g", 3.0), ("250 g", 4.0)])
def test_european_figures_go_by_the_nominal_quantity(net, height):
    found = answer(market="eu", net_weight=net)
    assert told(found, "height").value == height and net_words(found).least == height and net_words(found).measured == "capital"
    assert not net_words(found).low and net_words(found).clear == (0.0, 0.0) and "labels.0.letters" not in found.figures


@given(st.sampled_from(["40 g", "150 g", "250 g"]), st.sampled_from(["5 mm", "30 mm", "90 mm", "300 mm"]))
def test_for_both_markets_the_larger_of_the_two_counts(net, side):
    found = answer(vessel(), market="both", net_weight=net, panel_width=side, panel_height=side)
    words, figures = net_words(found), found.figures
    asked = max(size_for(figures["labels.0.letters"].value, "small"), size_for(figures["labels.0.height"].value, "capital"))
    assert size_for(words.least, words.measured) == pytest.approx(asked)


@pytest.mark.parametrize(("side", "low"), [("50 mm", False), ("70 mm", True)])
def test_on_a_small_panel_the_net_weight_may_stand_anywhere(side, low):
    found = answer(market="us", panel_width=side, panel_height=side)
    assert net_words(found).low == low and net_words(found).clear == (1.0, 2.2) and net_words(found).bold
    assert any("lowest 30 %" in note for note in found.labels["labels.0"].notes) == low


@pytest.mark.parametrize(("area", "standing"), [("30", "published"), ("300", "second hand"), ("9000", "from memory")])
def test_how_far_the_ladder_was_read_is_told(area, standing):
    constants = told(answer(market="us", panel="top", panel_area=area), "letters").constants
    assert constants[0].source.standing == standing
