"""The core against values from outside, one test for each row of the CSV files beside this one.

Columns: quantity (a public function below brimbook), inputs (its arguments), expected, tolerance (absolute, in the same
unit), unit, source, standing. A tolerance is the rounding of the printed value. Where the core's formula is another
than the source's, it is the stated agreement of the two: 0.02 kg/m³ among water densities (all known formulas lie within
0.012 over 5 to 40 °C), 0.0001 for factor Z (the core keeps air at 1.2 kg/m³).

Standing, the better ones preferred where several are to be had:
    published                     read in the source that is named
    second hand                   read in a copy that quotes the source
    reference library             worked out with an independent library, named with its version
    common practice, no source    what makers do; shows that the core does it too, not that it is right
    from memory                   not read by anyone here yet; not an outside check
    regression                    worked by hand from an identity or from our own output; not an outside check

Left out, as misprints or disagreements between sources:
    the 1975 water formula with a denominator coefficient of 16.897850e-3 (digits swapped: 0.27 kg/m³ off)
    the density of water measured at 16 °C, 998.9468 ± 0.0006 kg/m³: formula and library both give 998.946, 0.0009 lower
    melted beeswax at 0.9822 against water at 15.5 °C (a misprint), and beeswax igniting near 120 °C (contradicted)
    the example of a mortar by "dry volume × 1.33": another method than absolute volume
    fine aggregate at 1153 lb in one course page, 1152 in the other: the worked one stands
"""

import importlib.util
import inspect
import re
from collections import Counter
from pathlib import Path

import pytest

from brimbook.fill import readings, water
from brimbook.quantity.units import KINDS, UNITS

_spec = importlib.util.spec_from_file_location("published_rows", Path(__file__).with_name("rows.py"))
published = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(published)

ROWS = published.rows()
FEWEST = {"cost": 3, "price": 7, "labels": 46, "failing": 9, "codes": 2, "covering": 14, "wicks": 1, "contraction": 30, "scent": 18, "cooling": 17, "burning": 12, "standards": 14, "dryness": 8, "maturity": 20, "recipe": 29, "form": 82, "leak": 9, "flow": 3, "learning": 11, "water": 89, "absolute_volume": 25, "units": 22, "wax": 15, "readings": 22, "shape": 13}
BASES = {"gram": "g", "milliliter": "mL", "millimeter": "mm", "degree_Celsius": "°C", "gram / milliliter": "g/mL",
         "dimensionless": "–"}
# The mix is worked out in any units that belong together, as its module says.
COHERENT = {"mL": {"mL", "ft3", "m3"}, "g": {"g", "lb", "kg"}, "mL/g": {"mL/g", "ft3/lb"}}


def told_unit(function) -> str:
    """The unit in brackets that a docstring's first paragraph ends with."""
    return re.findall(r"\[([^\]]+)\]", inspect.getdoc(function).split("\n\n")[0])[-1]


def units_allowed(row) -> set[str]:
    """The units that a row may be in, by its function's docstring."""
    told, inputs = told_unit(published.function_of(row)), row["inputs"]
    if told == "base unit of the kind":
        kind = inputs["kind"] if "kind" in inputs else UNITS[inputs["unit"]].kind
        return {BASES[KINDS[kind].base]}
    if told == "the unit named":
        return {UNITS[inputs["word"]].symbol}
    if told == "unit of the values":
        return {"g", "mL"}
    if told == "answer":
        return {published.function_of(row)(inputs["record"]).figures[inputs["figure"]].unit}
    return COHERENT[told] if row["quantity"].startswith(("cast.mix.", "cast.recipe.")) and told in COHERENT else {told}


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['name']} {row['quantity']} {row['expected']:g}")
def test_the_core_meets_the_row(row):
    assert published.failures([row]) == []


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["name"])
def test_the_row_is_told_in_full(row):
    assert row["standing"] in published.STANDINGS
    assert row["unit"] in units_allowed(row)
    assert 0 < row["tolerance"] <= 0.06 * abs(row["expected"])
    assert len(row["source"]) >= (8 if row["standing"] != "common practice, no source" else 1)
    if row["standing"] == "reference library":
        assert re.match(r"(iapws|scipy|CoolProp|thermo) \d+\.\d+", row["source"])
    if row["standing"] == "common practice, no source":
        assert row["source"] == "common practice, no source"


def test_no_row_is_lost():
    assert Counter(row["name"].split(":")[0] for row in ROWS) == FEWEST


def test_most_rows_stand_on_more_than_memory():
    outside = [row for row in ROWS if row["standing"] in ("published", "second hand", "reference library")]
    assert len(outside) > 0.8 * len(ROWS)


def test_a_wrong_row_is_noticed():
    row = {**ROWS[0], "expected": ROWS[0]["expected"] * 1.01}
    assert len(published.failures([row])) == 1
    assert len(published.failures([{**row, "expected": float("nan")}])) == 1


def test_water_is_as_dense_as_the_library_makes_it_today():
    from iapws import IAPWS95

    off = {celsius: water.density(celsius) - IAPWS95(T=celsius + 273.15, P=0.101325).rho / 1000
           for celsius in range(5, 41)}
    assert max(map(abs, off.values())) < 2e-5


def test_every_library_row_for_water_is_the_library_s_own_value():
    from iapws import IAPWS95

    rows = [row for row in ROWS if row["name"].startswith("water:") and row["source"].startswith("iapws")]
    assert len(rows) == 36
    for row in rows:
        kelvin = row["inputs"]["temperature"] + 273.15
        assert row["expected"] == pytest.approx(IAPWS95(T=kelvin, P=0.101325).rho / 1000, abs=1e-7)


def test_student_s_table_is_scipy_s():
    from scipy import stats

    exact = [stats.t.ppf(0.975, freedom) for freedom in range(1, len(readings.STUDENT_T) + 1)]
    assert list(readings.STUDENT_T) == pytest.approx(exact, abs=5.1e-4)
    assert readings.LARGE_SAMPLE_T >= stats.t.ppf(0.975, len(exact) + 1)


def test_grubbs_table_is_scipy_s():
    from scipy import stats

    for count, told in enumerate(readings.GRUBBS, start=3):
        student = stats.t.ppf(1 - 0.05 / (2 * count), count - 2)
        exact = (count - 1) / count**0.5 * (student**2 / (count - 2 + student**2)) ** 0.5
        assert told == pytest.approx(exact, abs=5.1e-4), count


def test_the_sheet_says_that_the_rule_of_thumb_carries_about_ten_percent():
    """1.88 g of powder for a gram of water (common practice) beside 1.71 g in one mL of mix."""
    from brimbook.cards.sheet import sheet
    from brimbook.work_out import work_out

    mold = {"casts": [{"cavity": {"readings": [{"water": "640 g"}]}, "mix": {"powder": {"particle_density": "2.98"}}}]}
    (mix,) = (card for card in sheet(work_out(mold))["cards"] if card["id"] == "mix")
    told = {figure["key"]: figure for figure in mix["figures"]}
    assert "One mL of mix holds 1.71 g of powder" in told["casts.0.mix_per_gram"]["says"]
    share = re.search(r"an allowance of (\d+(?:\.\d+)?) %", told["casts.0.rule_allowance"]["says"])
    assert 9 < float(share[1]) < 11
