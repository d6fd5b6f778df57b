"""The finishing card: what it tells closed, and what it asks."""

from vessels import put, sheet, vessel

from brimbook.record import blank


def card(record):
    return next(card for card in sheet(record)["cards"] if card["id"] == "finish")


SIZED = vessel(casts__0__finishing__inside_top="80 mm", casts__0__finishing__inside_height="100 mm")


def test_closed_it_tells_the_sealer():
    assert [(answer["label"], answer["shown"]) for answer in card(SIZED)["answer"]] == [("Sealer", "7.5 mL")]


def test_it_waits_for_sizes():
    waiting = card(blank.blank())
    assert waiting["answer"] == [] and len(waiting["waiting"]) <= 60
    assert card(vessel(casts__0__finishing__inside_top="x"))["waiting"] == "Mend the entry that is marked."


def test_the_outline_sets_what_is_asked():
    assert [field["path"].rsplit("_")[-1] for field in card(SIZED)["fields"][1:]] == ["top", "bottom", "height"]
    other = card(put(vessel(), "casts.0.finishing.shape", "outline"))
    assert [field["path"].rsplit("_")[-1] for field in other["fields"][1:]] == ["outline", "height"]


def test_folds_tell_what_is_in_them():
    summaries = {group["title"]: group["summary"] for group in card(SIZED)["groups"]}
    assert summaries == {"Outside": "Its sizes, for primer and paint.", "Sealer": "7.5 mL", "Primer": "None.",
                         "Paint": "Coats, coverage and drying time."}


def test_dust_fire_and_sealers_are_warned_of():
    titles = {caution["title"] for caution in card(SIZED)["cautions"]}
    assert titles == {"An unsealed vessel can burn like a wick", "Sanding dust harms the lungs",
                      "Sealer and paint have sheets of their own"}


def test_a_vessel_that_is_not_to_be_sealed_is_warned_of_in_words():
    bare = card(vessel(casts__0__finishing__sealer_coats="0"))
    assert any("can burn like a wick" in note for note in bare["notes"])
    assert not any("wick" in note for note in card(SIZED)["notes"])


def test_the_closed_card_is_one_line_of_a_phone():
    record = vessel(**{f"casts__0__finishing__{side}_area": "1000" for side in ("inside", "outside")})
    for settings in ({}, {"mass": "oz"}):
        shown = next(each for each in sheet(record, **settings)["cards"] if each["id"] == "finish")
        told = [f"{each['shown']} {each['label']}" for each in shown["answer"]]
        assert told and len("   ".join(told)) <= 34 and len(shown["large"]) == 2
