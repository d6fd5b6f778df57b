"""Damaged and hostile files of all kinds: each ends soon, in a mesh or in a sentence."""

import random
import time

import pytest
from model_files import as_3mf, as_obj, as_text_stl, mesh_xml, model_xml, object_xml, packed
from models import as_stl, cup, sphere

from brimbook.mesh import read
from brimbook.mesh.triangles import ModelError, Triangles

# Seconds of this process alone, above what any of them takes: a hang is told from a busy machine.
LONGEST = 2.0
MESH = cup(facets=24)
FILES = {
    "binary": as_stl(MESH), "text": as_text_stl(MESH), "obj": as_obj(MESH, "/1/1"), "back": as_obj(sphere(facets=12, rings=6), "", True),
    "3mf": as_3mf(MESH), "stored": as_3mf(MESH, "inch", "0 1 0 -1 0 0 0 0 1 1 2 3", 0),
    "parts": packed({"3D/3dmodel.model": model_xml([object_xml(1, mesh_xml(MESH)), object_xml(2, [(1, ""), (1, "1 0 0 0 1 0 0 0 -1 0 0 0")])],
                                                   [(2, ""), (3, 'p:path="/3D/b.model"')]),
                     "3D/b.model": model_xml([object_xml(3, mesh_xml(MESH))], [])}, 0)}
NUMBERS = (b"\xff\xff\xff\xff", b"\0\0\0\0", b"\xff\xff\xff\x7f", b"\0\0\0\x80", b"\0\0\x80\x7f", b"\0\0\xc0\x7f")
WORDS = (b"-999999999", b"1e400", b"nan", b"f 1 2 3 4 5 6 7", b"endfacet", b"facet normal", b"<object id='1'>", b"</mesh>",
         b"\\\n", b"&lt;", b"]]>", b"PK\x05\x06")


def damaged(seed):
    """A file, and what was done to it, by its number alone."""
    chance = random.Random(seed)
    kind = chance.choice(sorted(FILES))
    data = bytearray(FILES[kind])
    for _ in range(chance.randint(1, 6)):
        one, other = sorted(chance.randrange(len(data) + 1) for _ in range(2))
        other = min(other, one + chance.choice((1, 40, 4_000)))
        how = chance.randrange(7)
        if how == 0 and one < len(data):
            data[one] ^= 1 << chance.randrange(8)
        elif how == 1:
            del data[one:other]
        elif how == 2:
            data[one:one] = data[one:other] * chance.choice((1, 2, 30))
        elif how == 3:
            data[one:one + 4] = chance.choice(NUMBERS)
        elif how == 4:
            data[one:one] = chance.choice(WORDS)
        elif how == 5:
            data[one:other] = chance.randbytes(other - one)
        elif len(data) > 100:
            place = chance.choice((80, len(data) - 14, len(data) - 10, len(data) - 6))
            data[place:place + 4] = chance.choice(NUMBERS)
        if not data:
            break
    return kind, bytes(data)


def ending(data, name=""):
    """The mesh or the sentence that reading ends with."""
    begun, steps = time.process_time(), read.triangles(name, data)
    try:
        while True:
            next(steps)
    except StopIteration as end:
        found = end.value
    except ModelError as error:
        found = str(error)
    assert time.process_time() - begun < LONGEST
    return found


def check(found):
    """A mesh all of whose triangles have corners, or a whole sentence."""
    if isinstance(found, Triangles):
        assert len(found.first) == len(found.second) == len(found.third) > 0
        assert all(0 <= number < len(found.corners) for column in (found.first, found.second, found.third) for number in column)
        assert all(abs(value) <= 1e6 for corner in found.corners for value in corner)
    else:
        assert len(found) > 20 and found[0].isupper() and found.endswith(".")


@pytest.mark.parametrize("group", range(10))
def test_five_hundred_damaged_files(group):
    for seed in range(50 * group, 50 * group + 50):
        kind, data = damaged(seed)
        check(ending(data, f"vessel.{kind}"))


def test_the_damage_is_of_all_kinds():
    """Most files break, some stay whole enough, and every kind of file is among them."""
    seen = [(kind, type(ending(data))) for kind, data in map(damaged, range(200))]
    assert {kind for kind, _ in seen} == set(FILES)
    assert {how for _, how in seen} == {Triangles, str}


@pytest.mark.parametrize("name", ["a.stl", "a.obj", "a.3mf", ""])
def test_bytes_by_chance(name):
    for seed in range(40):
        chance = random.Random(seed)
        start = chance.choice((b"", b"solid ", b"PK\x03\x04", b"v 0 0 0\n", b"\xff\xfe", b"\xef\xbb\xbfsolid"))
        check(ending(start + chance.randbytes(chance.choice((0, 1, 83, 84, 5_000))), name))


@pytest.mark.parametrize("data", [
    b"solid " * 100_000, b"solid\n" * 100_000, b"solid\nfacet normal " * 50_000, b"solid\n" + b" " * 2_000_000, b"solid\nfacet" + b"\n" * 2_000_000,
    b"solid\nfacet normal 0 0 0 outer loop vertex " + b"1" * 2_000_000,
    b"v 0 0 0\n" * 200_000, b"f 1 2 3\n" * 200_000, b"v 0 0 0\n" + b"\\\n" * 500_000,
    b"v 0 0 0\n" + b"\\" * 5_000_000,
    b"v 0 0 0\nf" + b" 1" * 100_000, b"v 0 0 0\nf" + b" -1" * 250_000, b"v 0 0 0\nf 1" + b"/" * 2_000_000,
    b"v 1 2 3\n" + b"\t" * 2_000_000 + b"v"], ids=range(14))
def test_texts_that_could_take_long(data):
    check(ending(data))


def test_faces_that_could_take_long():
    rim = b"".join(b"v %d %d 0\n" % (step, 0 if step % 2 else 9) for step in range(800)) + b"v 800 -9 0\nv 0 -9 0\n"
    check(ending(rim + (b"f " + b" ".join(b"%d" % number for number in range(1, 803)) + b"\n") * 500))


@pytest.mark.parametrize("inside", [b"<a>" * 3_000_000, b"<a/>" * 1_000_000, b" " * 100_000_000,
                                    b"".join(b"<a%d/>" % number for number in range(100_000)), b"<vertex>" * 1_000_000,
                                    b"<!-- " + b"-" * 10_000_000, b"<a b='" + b"x" * 20_000_000])
def test_parts_that_unpack_to_far_more(inside):
    head, _, tail = model_xml([], []).encode().partition(b"<resources>")
    check(ending(packed({"3D/3dmodel.model": head + inside + tail})))
