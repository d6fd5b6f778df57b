"""The cards that weigh out: what stands on them, and what they say while they wait."""

import pytest
from vessels import fields, full_vessel, put, sheet, vessel

from brimbook.cards.shelf import COPIED
from brimbook.record import blank
from brimbook.record.fields import LEAVES


def card(record, name, **settings):
    return next(card for card in sheet(record, **settings)["cards"] if card["id"] == name)


def test_the_closed_cards_carry_what_to_weigh():
    assert [answer["shown"] for answer in card(vessel(), "mix")["answer"]] == ["1205 g", "301 g"]
    assert [answer["shown"] for answer in card(vessel(), "wax")["answer"]] == ["246 g", "15 g"]
    assert [answer["label"] for answer in card(vessel(), "wax")["answer"]] == ["Wax", "Fragrance"]


@pytest.mark.parametrize(("path", "text", "name", "words"), [
    ("casts.0.cavity.readings.0.water", "", "mix", "Once the mold is measured"),
    ("casts.0.mix.powder.kind", "own", "mix", "particle density, from the powder"),
    ("casts.0.allowance", "lots", "mix", "Mend the entry"),
    ("wells.0.fill.readings.0.water", "", "wax", "Once the well is measured"),
    ("wells.0.wax.density_poured", "", "wax", "density of your wax"),
    ("wells.0.fragrance.load", "lots", "wax", "Mend the entry"),
])
def test_while_it_waits_a_card_says_for_what(path, text, name, words):
    record = put(vessel(), path, text)
    if text == "own":
        put(record, "casts.0.mix.powder.particle_density", "")
    waiting = card(record, name)
    assert waiting["answer"] == [] and words in waiting["waiting"]


def test_a_mended_entry_is_one_that_the_card_shows():
    record = put(vessel(), "casts.0.allowance", "lots")
    shown = card(record, "mix")
    assert [field["path"] for field in [*shown["fields"], *shown["more"]] if field["fault"]] == ["casts.0.allowance"]


def test_the_wax_drawing_tells_what_is_in_it():
    wax = card(vessel(wells__0__dye="0.5 %"), "wax")
    assert wax["drawing_text"].endswith("245 g wax, 15 g fragrance, 1.2 g dye.")
    assert "245 g wax" in wax["drawing"]


def test_a_blank_vessel_waits_on_every_card():
    for each in sheet(blank.blank())["cards"]:
        assert each["answer"] == [] and each["waiting"].endswith(".")


def variants():
    """The full vessel, and copies in which one choice is another one."""
    yield full_vessel()
    for path, leaf in LEAVES.items():
        if path.startswith(("casts", "wells", "design")):
            for choice in leaf.choices[1:]:
                yield put(full_vessel(), path.replace("*", "0"), choice.value)
    for solid in ("tapered", "box"):
        record = full_vessel()
        for fill in ("casts.0.cavity", "wells.0.fill"):
            put(put(record, f"{fill}.way", "dimensions"), f"{fill}.solid", solid)
        yield record
    yield put(put(full_vessel(), "casts.0.cavity.way", "file"), "casts.0.cavity.file.holds", "mold")
    for path, value in (("paper", "other"), ("by", "ruler")):
        yield put(put(full_vessel(), "wells.0.outline.shape", "photo"), f"wells.0.outline.photo.{path}", value)
    record = full_vessel()
    record["casts"].append(record["casts"][0])
    record["wells"].append({**record["wells"][0], "pot": "first"})
    yield record
    record = full_vessel()
    del record["wells"][0]["fragrance"]["scents"]
    yield record
    for name in ("sand", "plasticizer", "fiber"):
        for way in ("ratio", "percent"):
            yield put(put(full_vessel(), "casts.0.mix.others.0.role", name), "casts.0.mix.recipe", way)


def test_every_leaf_of_a_cast_and_a_well_is_asked_somewhere():
    asked = {".".join("*" if step.isdigit() else step for step in path.split("."))
             for record in variants() for path in fields(sheet(record)) if path.startswith(("casts", "wells", "design"))}
    # Choosing a material writes these; they are edited on the shelf of materials.
    written = {f"casts.*.mix.{place}.{name}" for place in ("powder", "others.*")
               for name in ("name", "role", *COPIED)}
    # Choosing a file writes these.
    written |= {f"{fill}.file.{name}" for fill in ("casts.*.cavity", "wells.*.fill") for name in ("reading", "sections")}
    # Dragged on the plan.
    written |= {"wells.*.wicks.at.*.x", "wells.*.wicks.at.*.y"}
    expected = {path for path in LEAVES if path.startswith(("casts", "wells", "design"))}
    assert asked <= expected and expected - asked <= written


def test_a_folded_ingredient_says_that_its_entry_is_marked():
    record = put(vessel(), "casts.0.mix.others.0", {"kind": "red_oxide", "share": "x"})
    mix = next(each for each in sheet(record)["cards"] if each["id"] == "mix")
    assert mix["groups"][0]["summary"] == "Mend the entry that is marked."


def test_a_faulty_entry_of_the_eleventh_mold_marks_no_other_card():
    record = vessel(casts__0__mix__powder__kind="own", casts__0__mix__powder__particle_density="")
    record["casts"] = [dict(record["casts"][0]) for _ in range(11)]
    record["casts"][10] = {**record["casts"][10], "allowance": "x"}
    waiting = {each["id"]: each["waiting"] for each in sheet(record)["cards"]}
    assert waiting["mix-2"] == "Type the particle density, from the powder's data sheet."
    assert waiting["mix-11"] == "Mend the entry that is marked."
