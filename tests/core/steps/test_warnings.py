"""What a tradesman would say to a recipe."""

import pytest
from vessels import figures, notes, put, sheet, vessel


def mix(*others, **texts):
    """Portland cement 1:0.5, with other ingredients as role, share and most."""
    record = vessel(casts__0__mix__powder__kind="portland", casts__0__mix__powder__particle_density="3.15",
                    casts__0__mix__water_to_powder="0.5", **texts)
    for row, (kind, role, share, most) in enumerate(others):
        for name, text in (("kind", kind), ("role", role), ("share", share), ("most", most)):
            put(record, f"casts.0.mix.others.{row}.{name}", text)
    return record


def told(record, name):
    return figures(record).get(f"casts.0.{name}")


def warned(record, *words):
    return any(all(word in note for word in words) for note in notes(sheet(record)))


def test_the_strength_of_the_table_is_read_between_its_entries():
    figure = told(mix(), "strength")
    assert figure["value"] == pytest.approx(34.5 - 6.9 * 0.02 / 0.09) and figure["shown"] == "33 MPa"
    assert [constant["standing"] for constant in figure["working"]["constants"]] == ["second hand"]
    assert "hint" in figure["working"]["spread"]


@pytest.mark.parametrize(("ratio", "words"), [("0.35", "does not reach down to 0.35"), ("0.9", "0.9 is weaker")])
def test_beyond_the_table_it_says_so(ratio, words):
    record = mix(casts__0__mix__recipe="ratio")
    put(record, "casts.0.mix.water_to_powder", ratio)
    assert told(record, "strength") is None and warned(record, "ACI 211.1", words)


@pytest.mark.parametrize("kind", ["rapid", "gypsum", "own"])
def test_only_portland_cement_has_a_strength_by_the_table(kind):
    record = put(mix(), "casts.0.mix.powder.kind", kind)
    assert told(record, "strength") is None and not warned(record, "ACI 211.1")
    assert told(record, "water_to_binder")["shown"] == "50 %"


def test_a_pozzolan_counts_as_binder():
    record = put(mix(("metakaolin", "pozzolan", "10 %", "")), "casts.0.mix.recipe", "percent")
    put(record, "casts.0.mix.water_share", "45 %")
    assert told(record, "water_to_binder")["value"] == pytest.approx(0.45)


@pytest.mark.parametrize(("pigments", "limit"), [
    ([("red_oxide", "pigment", "9.9 %", "")], None),
    ([("red_oxide", "pigment", "10 %", "")], None),
    ([("red_oxide", "pigment", "10.1 %", "")], "10 %"),
    ([("red_oxide", "pigment", "5 %", "4 %")], "4 %"),
    ([("red_oxide", "pigment", "3 %", "6 %"), ("black_oxide", "pigment", "3 %", "10 %")], None),
    ([("red_oxide", "pigment", "1 %", "6 %"), ("black_oxide", "pigment", "5.1 %", "10 %")], "6 %"),
    ([("red_oxide", "pigment", "6 %", "50 %"), ("black_oxide", "pigment", "6 %", "50 %")], "10 %"),
])
def test_all_the_pigment_keeps_to_the_lowest_limit(pigments, limit):
    record = mix(*pigments)
    assert warned(record, "Pigment is", f"More than {limit or ''}") == (limit is not None)
    assert told(record, "pigment_share")["value"] == pytest.approx(sum(float(each[2][:-2]) for each in pigments) / 100)


def test_pigment_is_counted_against_the_cement_in_a_bagged_mix():
    record = put(mix(("red_oxide", "pigment", "8 %", "")), "casts.0.mix.powder.binder_share", "25 %")
    figure = told(record, "pigment_share")
    assert figure["value"] == pytest.approx(0.08)
    powder, pigment = (figures(record)[f"casts.0.{key}"]["value"] for key in ("powder", "mix.others.0.weigh"))
    assert pigment == pytest.approx(powder * 0.25 * 0.08)


def test_fiber_is_told_in_both_bases():
    record = put(mix(("glass_fiber", "fiber", "2 %", "")), "casts.0.mix.others.0.base", "mix")
    figure = told(record, "fiber_share")
    assert figure["shown"] == "2 %"
    assert figure["says"] == "Fiber is 2 % of the wet mix, which is 3.1 % of the binder"


@pytest.mark.parametrize(("share", "base", "over"), [("5 %", "mix", False), ("5.1 %", "mix", True), ("5 %", "binder", False),
                                                     ("5.1 %", "binder", True)])
def test_a_fiber_s_limit_is_meant_in_its_own_base(share, base, over):
    record = put(mix(("glass_fiber", "fiber", share, "")), "casts.0.mix.others.0.base", base)
    assert warned(record, "told for it", "the wet mix" if base == "mix" else "the binder") == over


@pytest.mark.parametrize(("kind", "role", "share", "over"), [
    ("plasticizer", "plasticizer", "2 %", False), ("plasticizer", "plasticizer", "2.1 %", True),
    ("polymer", "polymer", "20 %", False), ("polymer", "polymer", "21 %", True), ("metakaolin", "pozzolan", "16 %", True),
    ("metakaolin", "pozzolan", "15 %", False),
])
def test_a_dose_above_its_most_is_told(kind, role, share, over):
    record = put(mix((kind, role, share, "")), "casts.0.mix.recipe", "percent")
    assert (told(record, "mix.others.0.dose") is not None) == over
    assert warned(record, "is the most that is told for it") == over


def test_where_nothing_binds_nothing_is_compared_with_it():
    record = put(mix(("red_oxide", "pigment", "3 %", "")), "casts.0.mix.powder.binder_share", "0 %")
    assert "casts.0.powder" in figures(record)
    assert told(record, "water_to_binder") is None and told(record, "pigment_share") is None


def test_the_strength_is_told_no_finer_than_it_is_known():
    texts = {"casts__0__mix__powder": {"kind": "portland", "particle_density": "3.15"}, "casts__0__mix__water_to_powder": "0.45"}
    assert figures(vessel(**texts))["casts.0.strength"]["shown"] == "37 MPa"
    assert figures(vessel(**texts), length="in")["casts.0.strength"]["shown"] == "5400 psi"
