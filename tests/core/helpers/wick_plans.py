"""Openings and wicks in them, for tests of the holder: plain plans, made without the steps that find them."""

import math
import random

from brimbook import work_out as job
from brimbook.shape.covering import Covering
from brimbook.shape.outline import Outline
from brimbook.steps.wicks import WickPlan


def circle(diameter, corners=96):
    half = diameter / 2
    return Outline(tuple((half * math.cos(2 * math.pi * corner / corners), half * math.sin(2 * math.pi * corner / corners))
                         for corner in range(corners)))


def rectangle(length, width):
    x, y = length / 2, width / 2
    return Outline(((-x, -y), (x, -y), (x, y), (-x, y)))


def plan(outline, *wicks):
    """A plan whose wicks stand where they are told to."""
    covering = Covering(tuple(wicks), 20.0, (0.0, 0.0)) if wicks else None
    return WickPlan(outline, covering, (), False, ())


def given(monkeypatch, made):
    """Have every well take this plan."""
    monkeypatch.setattr(job, "wicks", lambda said, place: made)


def scattered(seed, count, apart=25.0):
    """So many wicks in a round opening, none too near another or the wall: the opening, and the wicks."""
    chance, radius, wicks = random.Random(seed), 30 + 8 * count, []
    while len(wicks) < count:
        wick = (chance.uniform(-radius, radius), chance.uniform(-radius, radius))
        if math.hypot(*wick) < radius - 8 and all(math.dist(wick, other) >= apart for other in wicks):
            wicks.append(wick)
    return circle(2 * radius), tuple(wicks)
