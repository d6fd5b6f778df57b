"""The bars as a solid, read back by an independent library: closed, outward, of the right volume, slots at their places."""

import io

import numpy as np
import pytest
import trimesh
from wick_plans import scattered

from brimbook.draw.stl import stl
from brimbook.shape.bars import Sizes, lay, shape_of, turned
from brimbook.shape.prism import prism

STICK = Sizes(18, 2, 15, 4, 2)
THICK = 2.4


def mesh(text):
    return trimesh.load(io.StringIO(text), file_type="stl")


def bars(seed, count):
    outline, wicks = scattered(seed, count)
    holder = lay(outline, wicks, STICK)
    return wicks, holder, [mesh(stl("bar", prism(shape_of(bar, STICK), THICK))) for bar in holder.bars]


def gaps(solid, depth):
    """Where a level cut through a bar, so deep behind its front edge, finds nothing: from and to along the bar."""
    cut = trimesh.intersections.mesh_plane(solid, plane_normal=(0, 1, 0), plane_origin=(0, depth, 0))
    ends = sorted({(round(min(a[0], b[0]), 5), round(max(a[0], b[0]), 5)) for a, b in cut if abs(a[0] - b[0]) > 1e-6})
    filled = []
    for start, end in ends:
        if filled and start <= filled[-1][1] + 1e-6:
            filled[-1][1] = max(end, filled[-1][1])
        else:
            filled.append([start, end])
    return [(one[1], other[0]) for one, other in zip(filled, filled[1:])]


def middles(solid, bar, depth):
    """The middles of the gaps, along the bars from the middle of the outline: bars lie with their overhang on the rim."""
    return [(start + end) / 2 - STICK.overhang - STICK.wider / 2 + bar.left for start, end in gaps(solid, depth)]


@pytest.mark.parametrize("count", [1, 2, 3, 5, 8])
def test_a_bar_is_a_closed_solid_of_area_times_thickness(count):
    _, holder, solids = bars(count, count)
    for bar, solid in zip(holder.bars, solids, strict=True):
        assert solid.is_watertight and solid.is_winding_consistent and solid.is_volume
        expected = (bar.length * 18 - sum(2 * slot.depth for slot in bar.slots)) * THICK
        assert solid.volume == pytest.approx(expected, rel=1e-6)
        assert solid.extents == pytest.approx((bar.length, 18, THICK), abs=1e-5) and solid.bounds[0] == pytest.approx((0, 0, 0))


@pytest.mark.parametrize("count", [1, 2, 3, 5, 8])
def test_the_slots_of_the_solid_hold_the_wicks_where_the_plan_has_them(count):
    wicks, holder, solids = bars(40 + count, count)
    found = 0
    for bar, solid in zip(holder.bars, solids):
        slots = gaps(solid, 1.0)
        mine = sorted(turned(wicks[slot.wick], holder.angle) for slot in bar.slots)
        assert [end - start for start, end in slots] == pytest.approx([STICK.slot] * len(mine), abs=1e-4)
        assert middles(solid, bar, 1.0) == pytest.approx([along for along, _ in mine], abs=1e-4)
        for along, across in mine:
            deep = across - bar.front + STICK.slot / 2
            reached = [any(abs(each - along) < 1e-3 for each in middles(solid, bar, deep + step)) for step in (-0.01, 0.01)]
            assert reached == [True, False]
        found += len(slots)
    assert found == len(wicks)


def test_the_normals_that_are_written_are_those_of_the_faces():
    text = stl("bar", prism(((0, 0), (40, 0), (40, 18), (0, 18)), THICK))
    told = np.array([[float(each) for each in line.split()[2:]] for line in text.splitlines() if "facet normal" in line])
    solid = trimesh.load(io.StringIO(text), file_type="stl", process=False)
    assert told == pytest.approx(solid.face_normals, abs=1e-6)


def test_the_text_is_plain_and_always_the_same():
    faces = prism(((0, 0), (40, 0), (40, 18), (0, 18)), THICK)
    text = stl("Küche <1>\nendsolid", faces)
    assert text == stl("Küche <1>\nendsolid", faces) and text.isascii() and "-0.000000" not in text
    assert text.splitlines()[0] == "solid K_che_1_endsolid" and text.splitlines()[-1] == "endsolid K_che_1_endsolid"
    assert text.count("facet normal") == 12
