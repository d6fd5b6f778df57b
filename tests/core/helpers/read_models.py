"""Models as reading makes them, by rule: of round vessels, and as long as they come."""

import math

from brimbook.mesh.model import Draft, Gap, Level, Model, Room, Section


def cone_levels(low, high, bottom, top, count):
    """Levels of a round frustum between two heights, exact."""
    levels = []
    for step in range(count):
        share = step / (count - 1)
        radius = low + share * (high - low)
        area = math.pi * radius * radius
        deep = share * (top - bottom)
        volume = math.pi * deep * (low * low + low * radius + radius * radius) / 3
        levels.append(Level(bottom + deep, volume, area, area))
    return tuple(levels)


def ring(radius, corners, x=50.0, y=50.0, turned=False):
    """A circle's corners, counterclockwise unless turned."""
    points = [(x + radius * math.cos(2 * math.pi * step / corners), y + radius * math.sin(2 * math.pi * step / corners))
              for step in range(corners)]
    return tuple(points[::-1] if turned else points)


def vessel(levels=20, rooms=1, room_levels=12, sections=14, corners=48, notes=("The drawing was inside out; it was turned.",), gaps=0):
    """A round vessel of 100 × 100 × 80 with so many rooms beside each other."""
    heights = [80 * (step + 0.5) / sections for step in range(sections)]
    middles = [25 + 50 * place / max(rooms - 1, 1) for place in range(rooms)]
    holes = [[ring(8 + height / 40, corners, middle, 50.0, True) for middle in middles] for height in heights]
    return Model(
        up="-z", unit="mm", size=(100.0, 100.0, 80.0), triangles=499_968, bodies=3, hollows=1, surface=43_210.5,
        solid=cone_levels(40.0, 50.0, 0.0, 80.0, levels),
        rooms=tuple(Room(cone_levels(8.0, 10.0, 6.0 + place, 79.0, room_levels)) for place in range(rooms)),
        open_edges=12 * gaps, gaps=tuple(Gap(10.0, 20.0, 30.0 + place, 40.0 - place) for place in range(gaps)), turned=4, crossing=True,
        thinnest=(3.25, 41.5), outer=Draft(7.11, 0.0, 0.0), inner=Draft(-1.57, 0.01, 1.0),
        sections=tuple(Section(height, (ring(40 + height / 8, corners), *each), tuple(hole[::-1] for hole in each))
                       for height, each in zip(heights, holes)),
        cut=(((10.0, 0.0), (90.0, 0.0), (100.0, 80.0), (0.0, 80.0)), ((40.0, 60.0), (60.0, 60.0), (60.0, 20.0), (40.0, 20.0))), notes=notes)
