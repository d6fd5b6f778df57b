"""Models as they are read from files, made by rule, and vessels that were measured by them."""

import math
from dataclasses import replace

from vessels import put, vessel

from brimbook.mesh import digest
from brimbook.mesh.model import Draft, Gap, Level, Model, Room, Section
from brimbook.mesh.scaled import scaled

FACETS = 48


def ring(radius, middle=(45.0, 45.0), facets=FACETS):
    """A circle of corners whose facets hold the circle's area."""
    out = radius * math.sqrt(2 * math.pi / facets / math.sin(2 * math.pi / facets))
    return tuple((middle[0] + out * math.cos(2 * math.pi * step / facets), middle[1] + out * math.sin(2 * math.pi * step / facets))
                 for step in range(facets))


def cup(radius=45.0, height=80.0, wall=5.0, floor=8.0, by=1.0, **changed):
    """A straight round cup in mm, or in so many units of the file for a mm."""
    inner, middle = radius - wall, (radius, radius)
    whole, room = math.pi * radius**2, math.pi * inner**2
    ring_area = whole - room
    solid = (Level(0.0, 0.0, 0.0, whole), Level(floor, whole * floor, whole, ring_area),
             Level(height, whole * floor + ring_area * (height - floor), ring_area, 0.0))
    rooms = (Room((Level(floor, 0.0, 0.0, room), Level(height, room * (height - floor), room, 0.0))),)
    heights = [height * step / 12 + 0.5 for step in range(12)]
    sections = tuple(Section(at, (ring(radius, middle), *((ring(inner, middle)[::-1],) if at > floor else ())),
                             (ring(inner, middle) if at > floor else (),)) for at in heights)
    wide = 2 * radius
    cut = (((0.0, 0.0), (wide, 0.0), (wide, height), (wide - wall, height), (wide - wall, floor), (wall, floor), (wall, height),
            (0.0, height)),)
    surface = 2 * whole + 2 * math.pi * radius * height + 2 * math.pi * inner * (height - floor)
    model = Model(up="+z", unit="", size=(wide, wide, height), triangles=576, bodies=1, hollows=0, surface=surface, solid=solid,
                  rooms=rooms, open_edges=0, gaps=(), turned=0, crossing=False, thinnest=(wall, 40.0),
                  outer=Draft(0.0, 1.0, 0.0), inner=Draft(0.0, 1.0, 0.0), sections=sections, cut=cut)
    return _grown(replace(model, **changed), by)


def plug(radius=40.0, height=72.0, **changed):
    """A straight round solid, as the space for wax."""
    area = math.pi * radius**2
    sections = tuple(Section(height * step / 12 + 0.5, (ring(radius, (radius, radius)),), ()) for step in range(12))
    cut = (((0.0, 0.0), (2 * radius, 0.0), (2 * radius, height), (0.0, height)),)
    kept = dict(rooms=(), thinnest=None, inner=None, sections=sections, cut=cut, size=(2 * radius, 2 * radius, height),
                solid=(Level(0.0, 0.0, 0.0, area), Level(height, area * height, area, 0.0)),
                surface=2 * area + 2 * math.pi * radius * height)
    return cup(**{**kept, **changed})


def gap(left=12.0, front=30.0, height=45.0, around=18.0):
    return Gap(left, front, height, around)


def _grown(model, by):
    return replace(scaled(model, by), unit=model.unit)


def read_into(record, fill, model, **texts):
    """A record in which a fill is measured by a model; two underscores stand for a dot."""
    put(record, f"{fill}.way", "file")
    put(record, f"{fill}.file.name", "cup.stl")
    put(record, f"{fill}.file.reading", digest.reading(model))
    put(record, f"{fill}.file.sections", digest.sections(model))
    for path, text in texts.items():
        put(record, f"{fill}.{path.replace('__', '.')}", text)
    return record


def cup_vessel(model=None, **texts):
    """A vessel whose piece comes from a file, and whose well is the room in it."""
    record = read_into(vessel(), "casts.0.cavity", model or cup(), **texts)
    return put(record, "wells.0.fill.way", "cast_file")
