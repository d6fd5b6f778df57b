"""A flat polygon given a thickness, as triangles."""

from brimbook.shape.outline import Point

Corner = tuple[float, float, float]


def triangles(polygon: tuple[Point, ...]) -> list[tuple[int, int, int]]:
    """A polygon cut into triangles by cutting off its ears, each as three of its corners, counterclockwise [count].

    polygon: simple, counterclockwise, no corner twice [mm].

    >>> triangles(((0, 0), (4, 0), (4, 3), (0, 3)))
    [(3, 0, 1), (1, 2, 3)]
    """
    left, found = list(range(len(polygon))), []
    while len(left) > 3:
        ear = next((place for place in range(len(left)) if _is_ear(polygon, left, place)), 0)
        found.append((left[ear - 1], left[ear], left[(ear + 1) % len(left)]))
        del left[ear]
    return [*found, (left[0], left[1], left[2])]


def _is_ear(polygon: tuple[Point, ...], left: list[int], place: int) -> bool:
    corners = (left[place - 1], left[place], left[(place + 1) % len(left)])
    one, two, three = (polygon[corner] for corner in corners)
    if _turn(one, two, three) <= 0:
        return False
    others = (polygon[corner] for corner in left if corner not in corners)
    return not any(min(_turn(one, two, each), _turn(two, three, each), _turn(three, one, each)) >= 0 for each in others)


def _turn(one: Point, two: Point, three: Point) -> float:
    """Twice the area of a triangle, more than 0 where it turns to the left."""
    return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])


def prism(polygon: tuple[Point, ...], thickness: float) -> list[tuple[Corner, Corner, Corner]]:
    """A polygon with a thickness, standing on the plane at 0: its triangles, counterclockwise from outside [mm].

    polygon: simple, counterclockwise [mm].
    thickness: upward [mm].

    >>> len(prism(((0, 0), (4, 0), (4, 3), (0, 3)), 2.0))
    12
    """
    low = [(x, y, 0.0) for x, y in polygon]
    high = [(x, y, thickness) for x, y in polygon]
    flat = triangles(polygon)
    faces = [(low[three], low[two], low[one]) for one, two, three in flat]
    faces += [(high[one], high[two], high[three]) for one, two, three in flat]
    for one in range(len(polygon)):
        other = (one + 1) % len(polygon)
        faces += [(low[one], low[other], high[other]), (low[one], high[other], high[one])]
    return faces
