"""The bowl card: what it tells closed, and what it asks."""

import pytest
from vessels import put, sheet, vessel


def card(record, **settings):
    return next(card for card in sheet(record, **settings)["cards"] if card["id"] == "bowl")


def answers(**texts):
    return [answer["shown"] for answer in card(vessel(**texts))["answer"]]


def large(**texts):
    """What stands large on the open card, as shown."""
    full = card(vessel(**texts))
    shown = {figure["key"]: figure["shown"] for figure in full["figures"]}
    return [shown[key] for key in full["large"]]


def test_closed_it_tells_the_mixes_and_the_first_water():
    assert large() == ["1 mix", "226 g"] and answers() == ["1 mix"]
    assert large(casts__0__pieces="4", casts__0__batch__bowl="1500 mL") == ["2 mixes", "452 g"]


def test_a_shortage_comes_first_and_then_the_scoop():
    assert large(casts__0__pieces="4", casts__0__left="2500 g") == ["2 of 4 pieces", "1 mix"]
    assert large(casts__0__left="12 kg") == ["1 mix", "226 g"]
    assert large(casts__0__scooped="1120 g") == ["280 g", "14.5 mL"]
    assert large(casts__0__scooped_water="350 g")[0] == "1400 g"


def test_at_most_two_answers_and_four_questions_in_the_open():
    full = card(vessel(casts__0__pieces="4", casts__0__left="1 kg", casts__0__scooped="900 g", casts__0__scooped_water="1 g"))
    assert len(full["answer"]) == 1 and len(full["large"]) == 2 and len(full["fields"]) == 4


def test_every_ingredient_has_its_own_fold():
    record = put(vessel(), "casts.0.mix.others.0.kind", "sand")
    put(record, "casts.0.mix.others.0.scooped", "12 g")
    groups = card(record)["groups"]
    assert [(group["title"], group["summary"]) for group in groups] == [("Silica sand", "Filled in."), ("Water", "As planned.")]
    put(record, "casts.0.mix.others.0.scooped", "much")
    assert card(record)["groups"][0]["summary"] == "Mend the entry that is marked."


def test_molds_of_several_kinds_are_asked_for_each():
    record = vessel()
    record["casts"].append({"bowl": "first", "pieces": "2", "cavity": {"readings": [{"water": "100 g"}]}})
    assert [field["label"] for field in card(record)["more"]][:2] == ["Of mold 1 at hand", "Of mold 2 at hand"]
    assert "Molds at hand" not in [field["label"] for field in card(record)["fields"]]


@pytest.mark.parametrize(("texts", "words"), [
    ({"casts__0__cavity__readings__0__water": ""}, "Once the mix is known."),
    ({"casts__0__allowance": "lots"}, "Mend the entry that is marked."),
])
def test_while_it_waits(texts, words):
    waiting = card(vessel(**texts))
    assert waiting["answer"] == [] and waiting["waiting"] == words and len(words) <= 60


def test_the_working_time_that_is_taken_is_told():
    field = next(field for field in card(vessel())["more"] if field["path"].endswith("working_time"))
    assert field["note"] == "Empty, so 15 min is taken."


def test_lye_is_warned_of_where_it_is_stirred():
    assert "Wet mix burns skin and eyes" in {caution["title"] for caution in card(vessel())["cautions"]}
