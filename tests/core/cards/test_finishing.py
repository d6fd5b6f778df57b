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
