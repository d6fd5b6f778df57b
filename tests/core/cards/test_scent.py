"""The scent card: what it tells closed, what it asks, what can be taken over."""

from vessels import fields, put, sheet, vessel

from brimbook.record import blank
from brimbook.steps import cautions

SCENTS = "wells.0.fragrance.scents"
JUNIPER = {"name": "Juniper", "parts": "3", "supplier_most": "10 %", "ifra_most": "100 %", "flash": "65 °C", "density": "0.95 g/mL",
           "sensitizers": [{"name": "Limonene", "share": "25 %", "class": "1B"}, {"name": "Linalool", "share": "5 %"}]}
CEDAR = {"name": "Cedar", "flash": "80 °C", "density": "0.90 g/mL", "sensitizers": [{"name": "limonene", "share": "1 %"}]}


def card(record, **settings):
    return next(card for card in sheet(record, **settings)["cards"] if card["id"] == "scent")


def scented(*scents, **texts):
    return put(vessel(**texts), SCENTS, list(scents))


def closed(record):
    return [f"{answer['shown']} {answer['label']}" for answer in card(record)["answer"]]


def test_nothing_typed_it_says_what_to_do():
    waiting = card(blank.blank())
    assert waiting["answer"] == [] and waiting["waiting"] == "Copy its limits from the supplier's sheet."
    assert waiting["groups"] == [] and [action["label"] for action in waiting["actions"]] == ["Add a scent"]


def test_closed_it_is_one_line():
    assert closed(scented({"name": "Juniper"})) == ["5.66 % of the candle"]
    assert closed(scented({"supplier_most": "10 %"})) == ["60 % of the nearest limit"]
    assert closed(scented({"supplier_most": "5 %"})) == ["Over a limit"]
    assert all(len(told) <= 34 for record in (scented(JUNIPER, CEDAR),) for told in closed(record))


def test_open_it_tells_the_share_and_the_most():
    assert [key.rpartition(".")[2] for key in card(scented(JUNIPER))["large"]] == ["of_candle", "most"]


def test_a_faulty_entry_is_asked_to_be_mended():
    assert card(scented({"name": "x", "parts": "y"}, wells__0__fragrance__load="lots"))["waiting"] == "Mend the entry that is marked."
    groups = card(scented({"name": "x", "ifra_most": "0", "sensitizers": [{"share": "200 %"}]}))["groups"]
    assert [group["summary"] for group in groups] == ["Mend the entry that is marked."] * 2


def test_each_scent_is_a_group_and_each_sensitizer_one_below_it():
    groups = {group["title"]: group for group in card(scented(JUNIPER, CEDAR))["groups"]}
    assert list(groups) == ["Juniper", "Limonene in Juniper", "Linalool in Juniper", "Cedar", "limonene in Cedar"]
    assert groups["Juniper"]["summary"].startswith("4.25 % of the candle · ")
    # The same substance is told as it comes to over both scents.
    assert groups["limonene in Cedar"]["summary"] == groups["Limonene in Juniper"]["summary"] == (
        "1.075 % of the candle, classifies the candle (H317)")
    assert [action["label"] for action in groups["Cedar"]["actions"]] == ["Add a sensitizer", "Remove this scent"]
    assert groups["limonene in Cedar"]["actions"] == [{"label": "Remove this sensitizer", "remove": f"{SCENTS}.1.sensitizers.0"}]


def test_a_scent_goes_with_its_sensitizers():
    """They lie inside it in the record, so that none is left behind that counts for another scent."""
    asked = [path for path in fields(sheet(scented(JUNIPER, CEDAR))) if ".sensitizers." in path]
    assert asked and all(path.startswith(f"{SCENTS}.") for path in asked)


def test_parts_are_asked_in_the_open_only_among_several():
    (alone,) = card(scented({"name": "Juniper"}))["groups"]
    first, *_ = card(scented({"name": "Juniper"}, {"name": "Cedar"}))["groups"]
    assert [field["path"].endswith("parts") for field in alone["fields"]] == [False] * 4
    assert first["fields"][1]["path"].endswith("parts") and len(first["fields"]) <= 5


def test_what_can_hurt_is_told_first():
    notes = card(scented({**JUNIPER, "supplier_most": "4 %"}, CEDAR))["notes"]
    assert notes[0].startswith("Over a limit") and "no flame" in notes[1]
    assert "Classifies the candle (H317): Limonene." in notes and "Named on the label (EUH208): Linalool." in notes


def test_whose_word_counts_is_told_beside_a_sensitizer():
    assert any("Your supplier's sheet decides" in note and "water" in note for note in card(scented(JUNIPER))["notes"])
    assert not any("supplier's sheet decides" in note for note in card(scented({"name": "x"}))["notes"])


def test_a_hundred_percent_by_ifra_is_told_for_what_it_is():
    assert any("skin alone" in note for note in card(scented(JUNIPER))["notes"])
    assert not any("skin alone" in note for note in card(scented({"ifra_most": "99 %"}))["notes"])


def test_neat_oil_and_flash_points_are_warned_of():
    assert {each["title"] for each in card(vessel())["cautions"]} == {cautions.NEAT_OIL.title, cautions.FLASH.title}
    assert "no rule for when to add it" in cautions.FLASH.sentence and "isn't where the oil takes fire" in cautions.FLASH.sentence


def test_the_density_of_the_scents_can_be_taken_over():
    record = scented({"density": "0.95 g/mL"}, {"density": "0.90 g/mL"})
    rows = card(record)["table"]["rows"]
    assert [row["chosen"] for row in rows] == [True, False] and rows[1]["cells"][1] == "0.9243 g/mL"
    ((path, text),) = rows[1]["sets"].items()
    for decimal in ("point", "comma"):
        taken = card(put(record, path, text), decimal=decimal)
        assert path == "wells.0.fragrance.density" and taken["table"] is None


def test_taking_the_density_that_is_taken_changes_nothing():
    record = scented({"density": "0.95 g/mL"}, wells__0__fragrance__density="0.98765 g/mL")
    assert list(card(record)["table"]["rows"][0]["sets"].values()) == ["0.98765 g/mL"]
    assert card(scented({"density": "1 g/mL"}))["table"] is None and card(scented({"name": "x"}))["table"] is None


def test_a_well_that_shares_a_pot_has_no_card_of_its_own():
    record = scented(JUNIPER)
    record["wells"].append({**record["wells"][0], "pot": "first"})
    assert [each["id"] for each in sheet(record)["cards"] if each["id"].startswith("scent")] == ["scent"]
