"""What a label says: in every market and shape, of plain vessels and candles of several wells."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from label_answers import answer
from vessels import put, vessel

from brimbook.record import blank
from brimbook.steps.batches import Batch
from brimbook.steps.label import MOST_LABELS, labeled


def label(*path, **texts):
    return answer(*path, **texts).labels["labels.0"].label


def says(made, name):
    return [words.text for words in made.words if words.name == name]


def scented(*scents, load="8 %", **more):
    record = put(vessel(wells__0__fragrance__load=load, wells__0__fragrance__basis="blend"), "wells.0.fragrance.scents", list(scents))
    for path, text in more.items():
        put(record, path.replace("__", "."), text)
    return record


def burned(hours="4"):
    """Ten grams in an hour: 188 g and 12 g less what stays."""
    record = vessel()
    cycles = [{"before": "600 g", "lit_at": "2026-11-01T10:00", "out_at": "2026-11-01T14:00", "after": "560 g"}]
    record["wells"][0]["burning"] = {"cycles": cycles, "rest": "weight", "rest_weight": "20 g"}
    return record


@pytest.mark.parametrize("market", ["us", "eu", "both"])
def test_the_cautions_have_their_word_and_their_rules(market):
    made = label(market=market)
    assert says(made, "warning") == ["WARNING"]
    warns, rules = says(made, "caution")
    for part in ("Stay with it", "catch fire", "children and pets"):
        assert part in warns
    for part in ("before each lighting", "4 hours", "level", "stands heat", "water"):
        assert part in rules
    assert ("1/4 in" in rules and "1/2 in" in rules) == (market != "eu") and ("6 mm" in rules and "13 mm" in rules) == (market != "us")
    word = next(words for words in made.words if words.name == "warning")
    assert word.bold and word.measured == "capital" and made.alert == (4.0 if market == "us" else 5.0)


def test_without_cautions_there_is_no_triangle_and_that_is_said():
    found = answer(cautions="no").labels["labels.0"]
    assert not says(found.label, "warning") and not says(found.label, "caution") and found.label.alert == 0
    assert any("Without cautions" in note for note in found.notes)


@pytest.mark.parametrize(("texts", "size"), [
    ({"shape": "round"}, ("round", 75.0, 75.0)), ({"shape": "round", "across": "2 in"}, ("round", 50.8, 50.8)),
    ({}, ("rectangle", 80.0, 60.0)), ({"shape": "strip", "width": "200 mm", "height": "30 mm"}, ("strip", 200.0, 30.0))])
def test_each_shape_has_its_sizes(texts, size):
    made = label(**texts)
    assert (made.shape, made.width, made.height) == (size[0], pytest.approx(size[1]), pytest.approx(size[2]))


def test_front_and_back():
    made = label(holds="front", maker="Quay Works, Saltmere", lot="7")
    sides = {words.name: words.side for words in made.words}
    assert made.apart and not label().apart
    assert {sides[name] for name in ("product", "maker", "net")} == {"front"}
    assert {sides[name] for name in ("warning", "caution", "lot")} == {"back"}


@pytest.mark.parametrize(("record", "named"), [
    (vessel(), "Scented candle"), (vessel(wells__0__fragrance__load="0"), "Candle"), (blank.blank(), "Cast vessel")])
def test_what_it_is_called(record, named):
    assert says(label(record), "product") == [named]
    assert says(label(record, product="Harbor  light"), "product") == ["Harbor light"]


def test_lines_and_maker():
    made = label(lines=[{"text": "Poured by hand"}, {"text": ""}, {"text": "Refill it"}], maker="Quay Works")
    assert says(made, "line") == ["Poured by hand", "Refill it"] and says(made, "maker") == ["Quay Works"]
    assert any("names its maker" in note for note in answer().labels["labels.0"].notes)


def test_the_scent_is_told_by_its_names_or_as_typed():
    record = scented({"name": "Sea salt"}, {"name": "Fig"}, {"name": "None of it", "parts": "0"}, {"parts": "1"})
    assert says(label(record), "scent") == ["Scent: Sea salt, Fig"]
    assert says(label(record, scents="A day at sea"), "scent") == ["Scent: A day at sea"]
    assert says(label(vessel(wells__0__fragrance__name="Cedar")), "scent") == ["Scent: Cedar"]
    assert says(label(scented({"name": "Sea salt"}, load="0")), "scent") == [] == says(label(vessel()), "scent")


def test_the_scents_of_all_pots_are_told_once():
    record = scented({"name": "Fig"})
    well = {**record["wells"][0], "fragrance": {"load": "6 %", "scents": [{"name": "Fig"}, {"name": "Rose"}]}}
    record["wells"] += [well, {**well, "pot": "first", "fragrance": {"load": "6 %", "scents": [{"name": "Not melted"}]}}]
    assert says(label(record), "scent") == ["Scent: Fig, Rose"]


LIMONENE = {"name": "Limonene", "share": "5 %", "class": "1B"}
STRONG = {"name": "Linalool", "share": "25 %", "class": "1B"}


@pytest.mark.parametrize("market", ["eu", "both"])
def test_what_some_are_allergic_to_is_named_in_the_words_of_the_regulation(market):
    made = label(scented({"name": "Fig", "sensitizers": [LIMONENE, {**LIMONENE, "name": "Citral"}]}), market=market)
    assert says(made, "caution")[-1] == "Contains Limonene, Citral. May produce an allergic reaction."
    (words,) = [words for words in made.words if words.text.startswith("Contains")]
    assert (words.least, words.measured) == (1.2, "small")


def test_below_its_threshold_nothing_is_named():
    made = label(scented({"name": "Fig", "sensitizers": [LIMONENE]}, load="1.9 %"), market="eu")
    assert not any("Contains" in text for text in says(made, "caution"))


def test_what_classifies_the_candle_takes_more_than_this_label():
    found = answer(scented({"name": "Fig", "sensitizers": [STRONG, LIMONENE]}), market="eu").labels["labels.0"]
    assert says(found.label, "caution")[-1] == "Contains Linalool, Limonene."
    assert "H317" in found.notes[0] and "Linalool classifies" in found.notes[0] and "pictogram" in found.notes[0] and "CLP" in found.notes[0]


def test_for_the_united_states_alone_it_is_left_out_and_that_is_said():
    found = answer(scented({"name": "Fig", "sensitizers": [LIMONENE]}), market="us").labels["labels.0"]
    assert not any("Contains" in text for text in says(found.label, "caution"))
    assert any("European Union would have it name Limonene" in note for note in found.notes)


def test_a_sensitizer_without_a_name_can_t_be_named():
    found = answer(scented({"name": "Fig", "sensitizers": [{**LIMONENE, "name": ""}]}), market="eu").labels["labels.0"]
    assert not any("Contains" in text for text in says(found.label, "caution"))
    assert any("has no name yet" in note for note in found.notes)


def test_the_burn_time_is_the_low_end_rounded_down():
    found = answer(burned())
    whole, printed = found.figures["wells.0.burning.hours"], found.figures["labels.0.burn"]
    assert printed.value <= whole.value - whole.plus_minus < printed.value + 1
    assert says(found.labels["labels.0"].label, "burn_time") == [f"Burn time about {printed.value:.0f} hours"]
    assert says(label(burned(), burn_time="no"), "burn_time") == []


def test_of_several_wells_the_shortest_counts_and_all_must_be_known():
    record = burned()
    longer = {**record["wells"][0], "burning": {**record["wells"][0]["burning"], "rest_weight": "5 g"}}
    record["wells"].append(longer)
    found = answer(record)
    assert found.figures["labels.0.burn"].uses == ("wells.0.burning.hours",)
    record["wells"][1] = {**longer, "burning": {}}
    assert "labels.0.burn" not in answer(record).figures


def test_the_lot_is_typed_or_that_of_the_newest_batch():
    found = answer()
    batches = (Batch("batches.0", "A-1", "", 4, 4), Batch("batches.1", "B-2", "", 4, 4))
    newest = labeled(found.said, "labels.0", found.fills, found.burns, found.figures, batches)
    assert says(newest.label, "lot") == ["Lot B-2"] and not any("Without a lot" in note for note in newest.notes)
    assert says(label(lot=" C 3 "), "lot") == ["Lot C 3"]
    none = labeled(found.said, "labels.0", found.fills, found.burns, found.figures, ())
    assert says(none.label, "lot") == [] and any("Without a lot" in note for note in none.notes)


def test_what_it_can_t_know_is_always_said():
    for record in (vessel(), blank.blank()):
        assert "where you sell" in answer(record).labels["labels.0"].notes[-1]
    assert any("tested in this vessel" in note for note in answer().labels["labels.0"].notes)


def test_the_code_is_asked_for():
    assert label(code="yes").code and not label().code


def test_only_so_many_labels_are_worked_out():
    record = {**vessel(), "labels": [{} for _ in range(MOST_LABELS + 1)]}
    found = answer(record).labels
    assert found[f"labels.{MOST_LABELS - 1}"].label is not None and found[f"labels.{MOST_LABELS}"].label is None
    assert "All are kept" in found[f"labels.{MOST_LABELS}"].waiting


@given(st.sampled_from(["us", "eu", "both"]), st.sampled_from(["round", "rectangle", "strip"]), st.integers(0, 3),
       st.sampled_from(["flat", "cylinder", "top", "other"]), st.sampled_from(["all", "front"]), st.booleans())
@settings(max_examples=80)
def test_every_market_shape_and_number_of_wells_makes_a_whole_label(market, shape, wells, panel, holds, average):
    record = vessel()
    record["wells"] = [record["wells"][0]] * wells
    made = label(record, market=market, shape=shape, panel=panel, holds=holds, panel_around="250 mm", panel_area="300",
                 average="yes" if average else "no")
    names = [words.name for words in made.words]
    assert ("net" in names) == ("warning" in names) == (made.alert > 0) == (wells > 0) and names.count("product") == 1
    assert (made.average > 0) == (average and market != "us" and wells > 0)
    for words in made.words:
        assert words.text and words.least >= 1.2 and words.measured in ("capital", "small") and words.side in ("front", "back")
