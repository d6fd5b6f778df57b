"""How one maker reads figures."""

import pytest
from hypothesis import given
from vessels import ANYTHING, DISPLAYS, ask

from brimbook.settings import USUAL, display_of, form, paper_of, whole


@given(ANYTHING)
def test_anything_becomes_whole_settings(given_settings):
    settings = whole(given_settings)
    assert set(settings) == set(USUAL) and all(isinstance(value, str) for value in settings.values())
    display_of(settings)
    form(settings)


@pytest.mark.parametrize("name", ["mass", "length", "temperature", "decimal", "paper"])
def test_an_unknown_choice_is_the_usual_one(name):
    assert whole({name: "furlong"})[name] == USUAL[name] == whole({name: 5})[name]


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_whole_settings_stay_as_they_are(settings):
    assert whole(whole(settings)) == whole(settings) and whole(settings).items() >= settings.items()


@pytest.mark.parametrize(("text", "mass", "grams", "faulty"), [
    ("1 g", "g", 1, False), ("0.1", "g", 0.1, False), ("0.1 oz", "oz", 2.835, False), ("0.1", "oz", 2.835, False),
    ("1/8 oz", "lb", 3.544, False),
    ("2", "g", 2, False), ("", "g", 1, True), ("fine", "g", 1, True), ("0", "g", 1, True), ("-1", "g", 1, True),
    ("1 kg", "g", 1, True),
])
def test_the_steps_of_the_scale(text, mass, grams, faulty):
    settings = whole({"readability": text, "mass": mass})
    assert display_of(settings).readability == pytest.approx(grams, abs=0.001)
    assert bool(form(settings)[-2]["fault"]) == faulty


@pytest.mark.parametrize(("text", "decimal", "grams"),
                         [("0,5", "comma", 0.5), ("0.5", "comma", 0.5), ("0,5", "either", 0.5)])
def test_the_steps_of_the_scale_with_a_comma(text, decimal, grams):
    assert display_of(whole({"readability": text, "decimal": decimal})).readability == grams


@pytest.mark.parametrize("question", form(whole({})), ids=lambda question: question["path"])
def test_a_question_is_whole(question):
    assert question["label"] and question["path"] in USUAL
    assert question["kind"] in ("choice", "mass", "text") and bool(question["choices"]) == (question["kind"] == "choice")
    if question["choices"]:
        assert question["value"] in [choice["value"] for choice in question["choices"]]


def test_the_door_gives_settings_their_form_and_a_blank():
    answer = ask("settings", settings={"mass": "oz", "nonsense": "x"})
    assert answer["settings"] == {**USUAL, "mass": "oz"}
    assert [question["path"] for question in answer["settings_form"]] == list(USUAL)
    assert answer["blank"]["id"] == ""


@pytest.mark.parametrize(("given_settings", "paper"), [
    ({}, "A4"), ({"length": "in"}, "Letter"), ({"mass": "lb"}, "A4"), ({"paper": "Letter"}, "Letter"),
    ({"length": "in", "paper": "A4"}, "A4"), ({"paper": "A5"}, "A4"),
])
def test_the_paper_follows_the_lengths_until_one_is_chosen(given_settings, paper):
    assert paper_of(whole(given_settings)) == paper
