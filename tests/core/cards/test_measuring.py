"""The mold's card and the well's: which questions are asked for each way of measuring."""

import pytest
from vessels import fields, full_vessel, put, sheet, vessel

ASKED = {
    "on_scale": {"readings.0.water"}, "full_minus_empty": {"readings.0.full", "readings.0.empty"},
    "jug": {"readings.0.before", "readings.0.after"}, "poured_out": {"readings.0.water"},
    "dry_filler": {"readings.0.filler", "filler_density"}, "dimensions": {"solid", "diameter", "height"},
}


def card(record, name):
    return next(card for card in sheet(record)["cards"] if card["id"] == name)


def last(field, fill):
    return field["path"].removeprefix(f"{fill}.")


@pytest.mark.parametrize("way", sorted(ASKED))
@pytest.mark.parametrize(("name", "fill"), [("mold", "casts.0.cavity"), ("well", "wells.0.fill")])
def test_each_way_asks_its_own_questions(way, name, fill):
    asked = card(put(vessel(), f"{fill}.way", way), name)["fields"]
    assert {last(field, fill) for field in asked} - {"way", "wells.0.sealed"} == ASKED[way]


@pytest.mark.parametrize("way", sorted(ASKED))
def test_each_way_has_a_question_of_its_own(way):
    mold, well = (card(put(vessel(), f"{fill}.way", way), name)["question"]
                  for name, fill in (("mold", "casts.0.cavity"), ("well", "wells.0.fill")))
    assert mold.endswith("?") and well.endswith("?") and ("line" in well)


def test_the_newcomer_meets_one_question():
    first = sheet(vessel())["cards"][0]
    assert first["question"] == "What did the water weigh?"
    assert first["fields"][0]["path"] == "casts.0.cavity.readings.0.water"


@pytest.mark.parametrize(("solid", "names"), [("cylinder", ["diameter", "height"]),
                                              ("box", ["length", "width", "height"]),
                                              ("tapered", ["top_diameter", "bottom_diameter", "height"])])
def test_a_solid_asks_for_its_dimensions(solid, names):
    record = vessel(casts__0__cavity__way="dimensions", casts__0__cavity__solid=solid)
    asked = [last(field, "casts.0.cavity") for field in card(record, "mold")["fields"]]
    assert asked == ["solid", *names, "way"]


def test_several_readings_are_numbered_and_can_be_taken_away():
    mold = card(full_vessel(), "mold")
    assert [field["label"] for field in mold["fields"][:3]] == ["Water, reading 1", "Water, reading 2",
                                                                "Water, reading 3"]
    assert [action.get("remove") for action in mold["actions"]] == [None] + [f"casts.0.cavity.readings.{row}"
                                                                             for row in range(3)]


def test_the_only_reading_can_t_be_taken_away():
    assert card(vessel(), "mold")["actions"] == [{"label": "Add a reading", "append": "casts.0.cavity.readings",
                                                  "value": {}}]


def test_a_vessel_without_readings_can_be_given_one():
    """A record from elsewhere may have none: then the first question must still be there to answer."""
    record = vessel()
    del record["casts"][0]["cavity"]["readings"]
    mold = card(record, "mold")
    assert (mold["fields"][0]["path"] == "casts.0.cavity.readings.0.water"
            or mold["actions"][0]["append"] == "casts.0.cavity.readings")


def test_the_answer_is_the_volume_with_its_plus_minus_in_the_drawing():
    mold = card(vessel(), "mold")
    assert mold["answer"] == [{"label": "Volume", "shown": "642 mL", "key": "casts.0.cavity.volume"}]
    assert "642 mL" in mold["drawing"] and "642 mL, ± 0.82 mL" in mold["drawing_text"]


def test_a_drawing_is_to_scale_only_when_the_dimensions_are_known():
    assert "not to scale" in card(vessel(), "mold")["drawing"]
    record = vessel(casts__0__cavity__way="dimensions", casts__0__cavity__diameter="80", casts__0__cavity__height="70")
    assert "not to scale" not in card(record, "mold")["drawing"]
    assert "not to scale" in card(put(record, "casts.0.cavity.height", "tall"), "mold")["drawing"]


@pytest.mark.parametrize("way", sorted(ASKED))
def test_every_leaf_that_the_sum_needs_can_be_reached(way):
    """Whatever can stop the volume, faulty, has a field on the card."""
    from brimbook.work_out import work_out

    record = full_vessel()
    put(record, "casts.0.cavity.way", way)
    for row in range(3):
        put(record, f"casts.0.cavity.readings.{row}.full", "2 kg")
        put(record, f"casts.0.cavity.readings.{row}.empty", "1 kg")
        put(record, f"casts.0.cavity.readings.{row}.before", "2 kg")
        put(record, f"casts.0.cavity.readings.{row}.after", "1 kg")
    assert "casts.0.cavity" in work_out(record).rooms
    for name in list(record["casts"][0]["cavity"]):
        if name in ("readings", "way"):
            continue
        bent = put(full_vessel(), f"casts.0.cavity.{name}", "x")
        bent["casts"][0]["cavity"] = {**record["casts"][0]["cavity"], name: "x"}
        if "casts.0.cavity" not in work_out(bent).rooms:
            assert fields(sheet(bent))[f"casts.0.cavity.{name}"]["fault"], name
