"""The card of drying: the newest weighing in the open, the older ones folded away, the curve drawn."""

import xml.etree.ElementTree as ET

import pytest
from vessels import DISPLAYS, sheet, vessel

AT = "casts.0.drying"
ROWS = [("2026-11-20T09:00", "946 g"), ("2026-11-21T09:30", "928 g"), ("2026-11-22T08:00", "918 g")]


def card(rows=(), settings=None, **texts):
    weights = [{"at": at, "weight": weight} for at, weight in rows]
    record = vessel(**{f"casts__0__drying__{name}": text for name, text in texts.items()}, casts__0__drying__weights=weights)
    return next(each for each in sheet(record, **(settings or {}))["cards"] if each["id"] == "dry")


def asked(part):
    return [field["path"].removeprefix(f"{AT}.") for field in part]


def test_before_any_weighing_it_says_what_to_do():
    shown = card()
    assert shown["answer"] == [] and shown["waiting"] == "Weigh it now, and tomorrow."
    assert asked(shown["fields"]) == ["dry_weight"] and shown["groups"] == [] and shown["drawing"] == ""
    assert shown["actions"] == [{"label": "Weigh it", "append": f"{AT}.weights", "value": {"weight": "", "at": ""}}]


def test_the_newest_weighing_is_asked_in_the_open_and_older_ones_in_groups():
    shown = card(ROWS, dry_weight="900 g")
    assert asked(shown["fields"]) == ["weights.2.weight", "weights.2.at", "dry_weight"]
    assert [(group["title"], group["summary"], group["open"]) for group in shown["groups"]] == [
        ("Weighing 2", "928 g · Sat, Nov 21, 09:30", False), ("Weighing 1", "946 g · Fri, Nov 20, 09:00", False)]
    assert shown["groups"][1]["actions"] == [{"label": "Remove this weighing", "remove": f"{AT}.weights.0"}]
    assert [action["label"] for action in shown["actions"]] == ["Weigh it again", "Remove the newest weighing"]
    assert asked(shown["more"]) == ["margin", "steady", "readability"]


def closed(*rows, **texts):
    return [(each["shown"], each["label"]) for each in card(*rows, **texts)["answer"]]


def test_the_closed_card_tells_the_day_and_before_it_is_known_the_water():
    assert closed(ROWS, dry_weight="900 g") == [("Wed, Nov 25", "Likely dry")]
    assert closed([("2026-11-20T09:00", "902 g")], dry_weight="900 g") == [("Fri, Nov 20", "Dry since")]
    assert closed(ROWS[:1], dry_weight="900 g") == [("46 g", "Water left")]
    assert len(card(ROWS)["large"]) == 2


def test_the_closed_card_is_one_line_of_a_phone():
    for settings in ({}, {"mass": "lb"}):
        for rows in (ROWS[:2], ROWS, [*ROWS, ("2026-11-29T09:00", "901 g")]):
            assert len(" ".join(" ".join(each) for each in closed(rows, settings, dry_weight="900 g"))) <= 34


def test_after_a_leak_test_it_is_to_be_weighed_again():
    record = vessel(casts__0__drying__dry_weight="900 g", casts__0__drying__weights=[{"at": ROWS[0][0], "weight": "901 g"}],
                    casts__0__leaking__filled="1200 g")
    shown = next(each for each in sheet(record)["cards"] if each["id"] == "dry")
    assert any("A leak test wets it" in note for note in shown["notes"])
    assert not any("A leak test" in note for note in card(ROWS)["notes"])


def test_while_there_is_nothing_to_tell_it_says_what_to_do():
    assert card([("", "")])["waiting"] == "Type what it weighs, and when."
    assert card([("", "946 g")])["waiting"] == "Type what it weighs, and when."
    assert card(ROWS[:1])["waiting"] == "Weigh it again tomorrow."
    assert card(ROWS[:1], margin="x")["waiting"] == "Mend the entry that is marked."
    assert card([("", ""), ("", "")])["groups"][0]["summary"] == "Nothing typed yet."


def classes(svg):
    return [shape.get("class") for shape in ET.fromstring(svg)]


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
@pytest.mark.parametrize("dry", ["", "900 g"])
def test_the_curve_is_drawn_and_told_in_words(settings, dry):
    shown = card(ROWS, settings, dry_weight=dry)
    drawn = classes(shown["drawing"])
    assert drawn.count("mark") == 3 and drawn.count("curve") == 1 and "band" in drawn and drawn.count("mark-soft") == 2
    assert shown["drawing_text"].startswith("3 weighings: from ") and "The curve comes to dry enough on" in shown["drawing_text"]


def test_a_dry_vessel_is_drawn_without_a_forecast():
    shown = card([*ROWS, ("2026-11-29T09:00", "901 g")], dry_weight="900 g")
    assert classes(shown["drawing"]).count("mark") == 4 and "curve" not in classes(shown["drawing"])
    assert "The curve" not in shown["drawing_text"]


def test_one_weighing_is_drawn_as_one_mark():
    shown = card(ROWS[:1], dry_weight="900 g")
    assert classes(shown["drawing"]).count("mark") == 1
    assert shown["drawing_text"] == "One weighing: 946 g on Fri, Nov 20."


def test_the_days_below_the_curve_are_midnights():
    texts = [shape.text for shape in ET.fromstring(card(ROWS, dry_weight="900 g")["drawing"]) if shape.text]
    assert "Nov 21" in texts and "weight, g" in texts and "dry enough" in texts and "Wed, Nov 25" in texts


def test_a_damp_vessel_is_warned_of():
    titles = {each["title"] for each in card()["cautions"]}
    assert titles == {"A damp vessel spits hot wax", "Don't force it dry with heat"}


def test_no_path_is_asked_twice():
    shown = card(ROWS, dry_weight="900 g")
    paths = [field["path"] for part in [shown, *shown["groups"]] for field in [*part["fields"], *part["more"]]]
    assert len(paths) == len(set(paths))
