"""3MF files: units, objects in objects, what is moved and mirrored, and what is refused."""

import io
import math
import zipfile

import numpy as np
import pytest
import trimesh
from file_reading import FAMILY, refused, run, spots
from model_files import CORE, as_3mf, mesh_xml, model_xml, object_xml, packed
from models import box, cup, triples

MODEL = "3D/3dmodel.model"
IN_PLACE = "1 0 0 0 1 0 0 0 1 0 0 0"
TURNED = "0 1 0 -1 0 0 0 0 1 10 20 30"
MIRRORED = "-1 0 0 0 1 0 0 0 1 0 0 0"
BOX, CUP = mesh_xml(box()), mesh_xml(cup(facets=9))


def volume(mesh):
    return math.fsum(np.einsum("ij,ij->i", spots(mesh)[:, 0], np.cross(spots(mesh)[:, 1], spots(mesh)[:, 2]))) / 6


def read(objects, items, **how):
    return run(packed({MODEL: model_xml(objects, items, **how)}), "vessel.3mf")


def fault(xml):
    return refused(packed({MODEL: xml}), "vessel.3mf")


@pytest.mark.parametrize("mesh", FAMILY.values(), ids=FAMILY)
@pytest.mark.parametrize("method", [zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED])
def test_a_file_brings_back_its_mesh(method, mesh):
    found = run(as_3mf(mesh, method=method))
    assert np.allclose(spots(found), spots(mesh))
    assert triples(found) == triples(mesh)
    assert found.notes == ()


@pytest.mark.parametrize("write", [lambda: as_3mf(cup(facets=30)), lambda: as_3mf(cup(facets=30), transform=TURNED)])
def test_it_reads_what_the_reference_library_reads(write):
    pytest.importorskip("lxml")
    pytest.importorskip("networkx")
    theirs = trimesh.load(io.BytesIO(write()), file_type="3mf").to_geometry()
    assert volume(run(write())) == pytest.approx(theirs.volume)
    assert np.allclose(np.sort(spots(run(write())), axis=0), np.sort(np.array(theirs.triangles), axis=0))


@pytest.mark.parametrize(("unit", "short"), [("micron", "um"), ("millimeter", "mm"), ("centimeter", "cm"),
                                             ("inch", "in"), ("foot", "ft"), ("meter", "m")])
def test_the_unit_is_that_of_the_file(unit, short):
    assert run(as_3mf(box(), unit)).unit == short


def test_without_a_unit_it_is_millimeters():
    assert run(packed({MODEL: model_xml([object_xml(1, BOX)], [(1, "")]).replace('unit="millimeter" ', "")})).unit == "mm"


def test_the_model_is_the_one_that_the_archive_names():
    xml, other = model_xml([object_xml(1, BOX)], [(1, "")]), model_xml([object_xml(1, CUP)], [(1, "")])
    assert len(run(packed({"3D/other.model": xml, MODEL: other}, root="/3D/other.model")).first) == 12
    for root in ("", "/3D/missing.model"):
        assert len(run(packed({"3D/other.model": other, MODEL: xml}, root=root)).first) == 12
    assert "no 3MF model in this archive" in refused(packed({"vessel.stl": "solid"}, root=""))


def test_an_item_is_moved_as_its_transform_says():
    found = read([object_xml(1, BOX)], [(1, TURNED)])
    x, y, z = spots(box())[..., 0], spots(box())[..., 1], spots(box())[..., 2]
    # A row vector times the matrix: x' = −y + 10, y' = x + 20.
    assert np.allclose(spots(found), np.stack([10 - y, x + 20, z + 30], axis=-1))
    assert volume(found) == pytest.approx(60 * 40 * 50)


def test_what_is_mirrored_still_faces_outward():
    assert volume(read([object_xml(1, BOX)], [(1, MIRRORED)])) == pytest.approx(60 * 40 * 50)
    twice = read([object_xml(1, BOX), object_xml(2, [(1, MIRRORED)])], [(2, MIRRORED)])
    assert volume(twice) == pytest.approx(60 * 40 * 50)


def test_objects_in_objects_are_moved_from_the_inside_out():
    bigger = "2 0 0 0 2 0 0 0 2 0 0 0"
    nested = read([object_xml(1, BOX), object_xml(2, [(1, TURNED)]), object_xml(3, [(2, bigger), (1, "1 0 0 0 1 0 0 0 1 500 0 0")])],
                  [(3, TURNED), (1, "1 0 0 0 1 0 0 0 1 0 0 -200")])
    assert len(nested.first) == 36
    turned, large = (np.array(list(map(float, text.split()))).reshape(4, 3) for text in (TURNED, bigger))
    placed = spots(box())
    for matrix in (turned, large, turned):
        placed = placed @ matrix[:3] + matrix[3]
    assert np.allclose(spots(nested)[:12], placed)
    assert volume(nested) == pytest.approx((8 + 1 + 1) * 60 * 40 * 50)


def test_only_what_is_placed_counts():
    assert len(read([object_xml(1, BOX), object_xml(2, CUP)], [(1, "")]).first) == 12
    assert "places no mesh" in fault(model_xml([object_xml(1, BOX)], []))
    assert "places no mesh" in fault(model_xml([object_xml(1, [])], [(1, "")]))


@pytest.mark.parametrize("kind", ["support", "solidsupport", "surface", "other"])
def test_supports_are_left_out_and_told(kind):
    found = read([object_xml(1, BOX), object_xml(2, CUP, kind), object_xml(3, [(1, ""), (2, "")])], [(3, ""), (2, IN_PLACE)])
    assert len(found.first) == 12
    assert found.notes == ("Supports and other objects that are no part of the model were left out.",)


def test_objects_of_other_parts_are_found():
    other = model_xml([object_xml(7, CUP)], [])
    root = model_xml([object_xml(1, BOX), object_xml(2, [(7, 'p:path="/3D/Objects/cup.model" ' f'transform="{TURNED}"'), (1, "")])],
                     [(2, ""), (7, 'p:path="/3D/Objects/cup.model"')], head='requiredextensions="p"')
    parts = {MODEL: root, "3D/Objects/cup.model": other}
    found = run(packed(parts))
    assert volume(found) == pytest.approx(2 * volume(cup(facets=9)) + 60 * 40 * 50)
    assert "refers to a part that it doesn't hold" in refused(packed({MODEL: root}))
    assert "different units" in refused(packed({**parts, "3D/Objects/cup.model": other.replace("millimeter", "inch")}))


def test_colors_and_groups_are_passed_over():
    materials = "http://schemas.microsoft.com/3dmanufacturing/material/2015/02"
    colors = f'<c:colorgroup xmlns:c="{materials}" id="9"><c:color color="#ffffff"/></c:colorgroup>'
    painted = BOX.replace("<triangle ", '<triangle pid="9" p1="0" ')
    head = f'xmlns:m="{materials}" requiredextensions="m"'
    found = read([colors, object_xml(1, painted)], [(1, "")], head=head)
    assert (len(found.first), found.notes) == (12, ())


BEAMS = "http://schemas.microsoft.com/3dmanufacturing/beamlattice/2017/02"


def test_beams_are_refused_where_the_model_needs_them_and_else_left_out():
    head = f'xmlns:b="{BEAMS}"'
    beams = BOX.replace("</mesh>", '<b:beamlattice><b:beams><b:beam v1="0" v2="1"/></b:beams></b:beamlattice></mesh>')
    found = read([object_xml(1, beams)], [(1, "")], head=head)
    assert found.notes == ("Only triangles were read; what the file holds as beams, slices or formulas was left out.",)
    needed = model_xml([object_xml(1, beams)], [(1, "")], head=head + ' requiredextensions="b"')
    assert "needs an extension that is not read here (“b”)" in fault(needed)


def test_a_chain_of_objects_ends():
    def chain(count):
        return model_xml([object_xml(0, BOX), *(object_xml(number, [(number - 1, "")]) for number in range(1, count))], [(count - 1, "")])

    assert len(run(packed({MODEL: chain(30)})).first) == 12
    assert "deep in each other" in fault(chain(200))
    # Placed one after the other, each is known when the next one asks.
    every = [(number, "") for number in range(100)]
    assert "deep in each other" in fault(model_xml([object_xml(0, BOX), *(object_xml(n, [(n - 1, "")]) for n in range(1, 100))], every))


@pytest.mark.parametrize("content", [BOX, []])
def test_objects_that_double_are_counted_before_they_are_placed(content):
    doubled = [object_xml(0, content), *(object_xml(number, [(number - 1, "")] * 2) for number in range(1, 30))]
    assert "more than" in fault(model_xml(doubled, [(29, "")]))


@pytest.mark.parametrize(("objects", "items", "says"), [
    ([object_xml(1, [(2, "")]), object_xml(2, [(1, "")])], [(1, "")], "part of itself"),
    ([object_xml(1, [(1, "")])], [(1, "")], "part of itself"),
    ([object_xml(1, BOX)], [(2, "")], "places an object that it doesn't hold"),
    ([object_xml(1, BOX), object_xml(1, BOX)], [(1, "")], "damaged"),
    ([object_xml(1, BOX)], [(1, "1 0 0")], "something else than 12 numbers"),
    ([object_xml(1, BOX)], [(1, "1 0 0 0 1 0 0 0 nan 0 0 0")], "something else than 12 numbers"),
    ([object_xml(1, BOX)], [(1, "1 0 0 0 1 0 0 0 0 0 0 0")], "pressed flat"),
    ([object_xml(1, BOX)], [(1, "1e12 0 0 0 1 0 0 0 1 0 0 0")], "far too large"),
    ([object_xml(1, BOX)], [(1, "1 0 0 0 1 0 0 0 1 1e8 0 0")], "lies farther"),
    ([object_xml(1, BOX)] * 0, [(1, "")] * 10_001, "more than 10,000 objects"),
    ([object_xml(1, BOX.replace('v1="0"', 'v1="8"', 1))], [(1, "")], "corner that is not there"),
    ([object_xml(1, BOX.replace('v1="0"', 'v1="-1"', 1))], [(1, "")], "corner that is not there"),
    ([object_xml(1, BOX.replace('v1="0"', "", 1))], [(1, "")], "lacks a number"),
    ([object_xml(1, BOX.replace('x="0"', 'x="o"', 1))], [(1, "")], "“o” stands where a number"),
    ([object_xml(1, BOX.replace('x="0"', 'x="inf"', 1))], [(1, "")], "lies farther"),
    (["<object>" + BOX + "</object>"], [(1, "")], "damaged")])
def test_what_is_wrong_is_told(objects, items, says):
    assert says in fault(model_xml(objects, items))


@pytest.mark.parametrize(("change", "says"), [
    (lambda xml: xml[:-20], "damaged"), (lambda xml: xml.replace("millimeter", "cubit"), "drawn in “cubit”; micron, millimeter"),
    (lambda xml: xml.replace(CORE, "other"), "not a 3MF model"), (lambda xml: "", "damaged"),
    (lambda xml: xml.replace("</mesh>", "<x>" * 40_000), "far more than"),
    (lambda xml: xml.replace("<model", '<!DOCTYPE model [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><model', 1), "declares XML of its own"),
    (lambda xml: xml.replace("<model", '<!DOCTYPE model SYSTEM "other.dtd"><model', 1), "declares XML of its own"),
    (lambda xml: xml.replace("UTF-8", "nothing", 1), "damaged")])
def test_xml_that_is_not_a_model_is_refused(change, says):
    assert says in fault(change(model_xml([object_xml(1, BOX)], [(1, "")])))


@pytest.mark.parametrize("word", ["<metadata name='{}'/>", "<!-- {} -->", "<?vessel {}?>"])
def test_a_word_without_end_is_refused(word):
    xml = model_xml([object_xml(1, BOX)], [(1, "")])
    assert "far more than a model needs" in fault(xml.replace("</resources>", word.format("x" * 3_000_000) + "</resources>"))
    assert len(run(packed({MODEL: xml.replace("</resources>", word.format("x" * 300_000) + "</resources>")})).first) == 12


def test_elements_without_end_are_refused(monkeypatch):
    monkeypatch.setattr("brimbook.mesh.three_mf_part._MOST_ELEMENTS", 1_000)
    xml = model_xml([object_xml(1, BOX)], [(1, "")])
    assert "far more than a model needs" in fault(xml.replace("</resources>", "<metadata/>" * 2_000 + "</resources>"))
