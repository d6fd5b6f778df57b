"""A burn test of known weights and pools, for tests."""

from arithmetic import works_out
from vessels import vessel

from brimbook.record.said import understand
from brimbook.settings import display_of, whole
from brimbook.shape.covering import Covering
from brimbook.shape.outline import Outline
from brimbook.steps.burning import burning
from brimbook.steps.filling import Filled
from brimbook.steps.wicks import WickPlan

AT = "wells.0.burning"
SQUARE = Outline(((-30.0, -30.0), (30.0, -30.0), (30.0, 30.0), (-30.0, 30.0)))
LOG = [{"lit_at": "2026-11-01T10:00", "out_at": "2026-11-01T14:00", "before": "570 g", "after": "556 g", "pool": "52 mm"},
       {"lit_at": "2026-11-01T18:00", "out_at": "2026-11-01T22:00", "after": "541 g", "flame": "31 mm"},
       {"lit_at": "2026-11-02T09:00", "out_at": "2026-11-02T13:30", "after": "524 g", "pool": "66 mm", "reached": "wall"}]
FILLED = Filled("wells.0", 188.0, 12.0, 0.0, 0.0, ())


def plan(wicks=1, radius=35.0):
    """A square 60 mm wide with so many wicks, the farthest spot so far from one."""
    points = tuple((10.0 * number, 0.0) for number in range(wicks))
    return WickPlan(SQUARE, Covering(points, radius, (0.0, 0.0)), (), False, ())


def burn(cycles=LOG, how=None, wicks=None, filled=FILLED, **texts):
    """What was understood, the burn test, and its figures, whose numbers are worked out again."""
    kind = texts.pop("kind", "paraffin")
    record = vessel(wells__0__burning={"cycles": cycles, **texts}, wells__0__wax={"kind": kind, "density_set": "0.9 g/mL"})
    said = understand(record, display_of(whole(how or {})))
    found = burning(said, "wells.0", wicks, filled)
    figures = {figure.key.removeprefix(f"{AT}."): figure for figure in found.figures}
    for figure in figures.values():
        told, off, unit = works_out(figure.to_plain(), (how or {}).get("decimal") == "comma")
        assert unit.startswith("%" if figure.unit == "–" else figure.unit), figure.key
        assert abs(figure.value * (100 if figure.unit == "–" else 1) - told) <= off, figure.key
        assert figure.unit == "g" or figure.key.startswith(AT)
    return said, found, figures


def faults(said):
    """What is wrong with the entries of a burn test, by name."""
    return {fault.path.removeprefix(f"{AT}."): fault.sentence for fault in said.faults}
