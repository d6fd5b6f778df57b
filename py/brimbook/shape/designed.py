"""A vessel by its sizes: outside and room for wax, a wall and a floor apart."""

import math
from dataclasses import dataclass

from brimbook.shape import outline as outlines
from brimbook.shape.family import Family, least_between_ovals
from brimbook.shape.shell import Ball, Pulled, Shell, volume

# The sizes that tell each shape, beside its height.
SIZES = {"round": ("across",), "tapered": ("across", "bottom"), "oval": ("across", "other"), "rectangle": ("across", "other", "corner"),
         "polygon": ("across", "sides"), "bowl": ("across", "foot"), "path": ("path",)}
# A room less than this across or deep holds nothing worth a wick [mm].
_LEAST = 1.0


class DesignError(ValueError):
    """A vessel that can't be: the name of the size at fault, and a sentence for the maker."""

    def __init__(self, name: str, sentence: str) -> None:
        super().__init__(sentence)
        self.name = name


@dataclass(frozen=True)
class Designed:
    """Both sides of a vessel, its height and its least wall [mm]."""

    outside: Shell
    room: Shell
    height: float
    least_wall: float

    @property
    def cast(self) -> float:
        """The mix in it [mL]."""
        return volume(self.outside, self.height) - volume(self.room, self.height)

    def room_to(self, line: float) -> float:
        """The room for wax up to a height [mL].

        line: above the vessel's bottom [mm].

        >>> round(designed("round", {"across": 80.0, "height": 70.0, "lean": 0.0}, 5.0, 10.0).room_to(70.0), 2)
        230.91
        """
        return volume(self.room, line)

    def wet(self, line: float) -> float:
        """Surface of the room up to a height, its floor too [mm²].

        line: above the vessel's bottom [mm].

        >>> round(designed("round", {"across": 80.0, "height": 70.0, "lean": 0.0}, 5.0, 10.0).wet(70.0), 1)
        17043.1
        """
        return self.room.surface(self.room.low, line) + self.room.area(self.room.low)

    @property
    def skin(self) -> float:
        """Surface of the whole cast: outside, bottom, rim, and room [mm²]."""
        rim = self.outside.area(self.height) - self.room.area(self.height)
        return self.outside.surface(0.0, self.height) + self.outside.area(0.0) + rim + self.wet(self.height)


def designed(shape: str, sizes: dict[str, float | str], wall: float, floor: float, inside: bool = False) -> Designed:
    """A vessel of a shape [vessel].

    shape: a key of SIZES [text].
    sizes: those of the shape and the height [mm], lean [°], sides [count], path [text].
    wall: its thickness, square to it [mm].
    floor: its thickness [mm].
    inside: are the sizes those of the room for wax [yes or no]?

    Raises DesignError where there is no such vessel, and OutlineError where an outline can't be read.

    >>> cup = designed("round", {"across": 80.0, "height": 70.0, "lean": 0.0}, 5.0, 10.0)
    >>> round(cup.cast, 2), round(cup.room_to(60.0), 2)
    (120.95, 192.42)
    """
    if shape == "bowl":
        return _bowl(sizes, wall, floor, inside)
    height = sizes["height"] + (floor if inside else 0.0)
    slope = _slope(shape, sizes)
    reach = wall * math.hypot(1.0, slope)
    family = _family(shape, sizes)
    rim = -reach if inside else 0.0
    if height - floor < _LEAST:
        raise DesignError("floor_thickness", "This floor leaves no room for wax. Make it thinner, or the vessel higher.")
    outside, room = Pulled(family, rim, slope, 0.0, height), Pulled(family, rim + reach, slope, floor, height)
    _check(shape, outside, room)
    least = wall if shape != "oval" else min(
        least_between_ovals(*family.sizes_at(outside.inset(level)), reach) for level in (floor, height)) / math.hypot(1.0, slope)
    return Designed(outside, room, height, least)


def _family(shape: str, sizes: dict[str, float | str]) -> Family:
    if shape == "path":
        return Family("path", (), outlines.path(sizes["path"]).points)
    if shape in ("round", "tapered"):
        return Family("round", (sizes["across"],))
    family = Family(shape, tuple(sizes[name] for name in SIZES[shape]))
    if shape == "rectangle" and family.sizes[2] > min(family.sizes[:2]) / 2 * (1 + 1e-9):
        raise DesignError("corner", "The corners are rounder than the shorter side allows: their radius is at most half of it.")
    return family


def _slope(shape: str, sizes: dict[str, float | str]) -> float:
    """How far in the wall goes for each mm down."""
    if shape == "tapered":
        return (sizes["across"] - sizes["bottom"]) / 2 / sizes["height"]
    # A tangent's last digit may differ from computer to computer.
    return round(math.tan(math.radians(sizes["lean"])), 12)


def _check(shape: str, outside: Pulled, room: Pulled) -> None:
    lean = "bottom" if shape == "tapered" else "lean"
    if outside.area(0.0) <= 0:
        raise DesignError(lean, "Leaning so much, the wall meets itself above the bottom. Lean it less, or make the vessel wider or lower.")
    narrow = max(room.inset(room.low), room.inset(room.high))
    if narrow > room.family.deepest() - _LEAST / 2 or room.family.area(narrow) <= 0:
        raise DesignError("wall_thickness", "This wall leaves no room for wax, or no room in one piece. "
                          "Make it thinner, lean it less, or make the vessel wider.")
    if outside.family.area(outside.inset(outside.high)) <= 0:
        raise DesignError("wall_thickness", "Outside of this outline a wall so thick meets itself. Make it thinner.")


def _bowl(sizes: dict[str, float | str], wall: float, floor: float, inside: bool) -> Designed:
    """Two parts of balls with one middle, so that the wall is the same all around."""
    half, foot, deep = sizes["across"] / 2, sizes["foot"] / 2, sizes["height"]
    if foot >= half:
        raise DesignError("foot", "The foot is as wide as the bowl. Make it narrower, or choose a tapered round vessel.")
    middle = (half * half + deep * deep - foot * foot) / (2 * deep)
    if middle < deep * (1 - 1e-9):
        raise DesignError("height", "So deep, the bowl would bulge beyond its rim. Without a foot it is at most half as deep as it is "
                          "across; with one, less.")
    radius = math.hypot(half, middle - deep)
    inner = radius if inside else radius - wall
    top = deep
    if inside:
        # The sizes begin at the room's floor: the vessel's bottom is below it by the floor, or where the ball ends.
        below = min(floor, inner + wall - middle)
        middle, top = middle + below, deep + below
    outside = Ball(inner + wall, middle, 0.0, top)
    low = below if inside else max(floor, middle - inner)
    if inner <= 0 or low > top - _LEAST or inner**2 <= (top - middle) ** 2:
        raise DesignError("wall_thickness", "This wall or floor leaves no room for wax. Make it thinner, or the bowl larger.")
    return Designed(outside, Ball(inner, middle, low, top), top, wall)
