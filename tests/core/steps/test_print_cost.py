"""The printed mold and its cost."""

import pytest
from molds import clamped, faults
from vessels import ask, figures, vessel

from brimbook.record.link import from_fragment


def test_weight_from_the_slicer_s_volume():
    shown = clamped(print_volume="100 mL")
    assert shown["print"]["value"] == pytest.approx(124) and "print_cost" not in shown
    assert clamped(print_volume="100 mL", plastic="petg")["print"]["value"] == pytest.approx(127)


def test_the_scale_beats_the_slicer():
    shown = clamped(print_volume="100 mL", print_weight="180 g")
    assert "print" not in shown and "180" in shown["filament"]["working"]["numbers"]
    assert {"print", "filament"}.isdisjoint(clamped(print_volume="100 mL", print_weight="heavy"))


def test_a_kilogram_of_filament_is_as_long_as_it_should_be():
    assert clamped(print_weight="1 kg")["filament"]["value"] == pytest.approx(335.3, abs=0.05)
    assert clamped({"length": "in"}, print_weight="1 kg")["filament"]["shown"] == "1100 ft"


def test_the_cost_is_spread_over_the_casts():
    shown = clamped(print_weight="180 g", spool_price="24")
    assert shown["print_cost"]["shown"] == "$4.32" and shown["cost_per_cast"]["shown"] == "$0.22"
    assert clamped(print_weight="180 g", spool_price="24", lasts="4")["cost_per_cast"]["value"] == pytest.approx(1.08)
    assert clamped(print_weight="180 g", spool_price="24", spool_weight="500 g")["print_cost"]["value"] == pytest.approx(8.64)


def test_a_price_in_another_currency_and_mark():
    shown = clamped({"currency": "€", "decimal": "comma"}, print_weight="180 g", spool_price="24,50")
    assert shown["print_cost"]["shown"] == "4,41 €"


@pytest.mark.parametrize("name", ["spool_price", "spool_weight", "lasts"])
def test_a_faulty_entry_leaves_the_cost_out(name):
    texts = {"print_weight": "180 g", "spool_price": "24", name: "x"}
    assert "print_cost" not in clamped(**texts) and name in faults(**texts)


def test_another_plastic_has_no_density_of_its_own():
    assert "print" not in clamped(plastic="own", print_volume="100 mL")
    assert clamped(plastic="own", print_volume="100 mL", plastic_density="1.1 g/mL")["print"]["value"] == pytest.approx(110)
    assert "filament" not in clamped(plastic="own", print_weight="180 g")


def test_a_price_stays_out_of_links():
    record = vessel(casts__0__clamping__spool_price="87.65", casts__0__clamping__lasts="31")
    link = ask("share", record=record, settings={}, address="https://example.org/")["link"]
    assert from_fragment(link.partition("#")[2])["casts"][0]["clamping"] == {"lasts": "31"}


def test_filament_is_told_as_it_is_sold():
    shown = figures(vessel(casts__0__clamping__print_weight="210 g"), length="in")["casts.0.clamping.filament"]
    assert {each["name"]: each["shown"] for each in shown["working"]["constants"]}["Filament"] == "1.75 mm"


PRINTER = {"selling__0__printer_hour": "0.2", "selling__0__printer_power": "100", "selling__0__kilowatt_hour": "0.30"}


def of_print(**texts):
    """The figures of a print that takes ten hours and serves for 50 casts."""
    return figures(vessel(casts__0__clamping__print_time="10 h", casts__0__clamping__lasts="50", **texts))


def test_the_hours_of_a_print_are_spread_over_the_casts():
    """10 h × 0.20 ÷ 50 = 0.04; 100 W × 10 h ÷ 1000 × 0.30 ÷ 50 = 0.006."""
    shown = of_print(**PRINTER)
    assert shown["casts.0.clamping.wear_per_cast"]["value"] == pytest.approx(0.04)
    assert shown["casts.0.clamping.power_per_cast"]["value"] == pytest.approx(0.006)
    assert shown["casts.0.clamping.power_per_cast"]["shown"] == "$0.006"


@pytest.mark.parametrize(("left_out", "gone"), [("printer_hour", "wear_per_cast"), ("printer_power", "power_per_cast"),
                                                ("kilowatt_hour", "power_per_cast")])
def test_what_is_not_known_of_the_printer_is_not_told(left_out, gone):
    shown = of_print(**{path: text for path, text in PRINTER.items() if not path.endswith(left_out)})
    assert f"casts.0.clamping.{gone}" not in shown
    assert len({"casts.0.clamping.wear_per_cast", "casts.0.clamping.power_per_cast"} & set(shown)) == 1
    assert not any("per_cast" in key for key in figures(vessel(**PRINTER)))
