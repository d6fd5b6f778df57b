"""Where equal discs stand so that they cover an outline and are as small as can be."""

from dataclasses import dataclass

from brimbook.shape.outline import Outline, Point


@dataclass(frozen=True)
class Covering:
    """Points inside an outline, the distance to the worst-served spot, and that spot; distances go inside the outline."""

    points: tuple[Point, ...]
    radius: float
    worst: Point


def cover(outline: Outline, count: int, from_wall: float, between: float) -> Covering | None:
    """Where so many points stand so that the farthest spot of the outline is as near as can be [covering].

    outline: to be covered [outline].
    count: of points, 1 to 8 [count].
    from_wall: least distance of a point from the wall [mm].
    between: least distance of two points [mm].
    """
    return None


def reach(outline: Outline, points: tuple[Point, ...]) -> Covering:
    """The worst-served spot for points that stand where they stand [covering].

    outline: to be covered [outline].
    points: inside it [mm].
    """
    return Covering(points, 0.0, points[0])


def pool(outline: Outline, point: Point, radius: float) -> tuple[Point, ...]:
    """What lies within a distance of a point, going inside the outline, as a polygon [mm].

    outline: that holds it [outline].
    point: inside it [mm].
    radius: of the pool [mm].
    """
    return ()
