"""A model cut upright, from left to right."""

from brimbook.mesh.joining import Loop, Plane, loops
from brimbook.mesh.model import Polygon
from brimbook.mesh.nesting import area
from brimbook.mesh.simplify import simplified
from brimbook.mesh.triangles import Triangles

# A drawing needs no more corners a polygon, no more polygons, and none whose area is a smaller share of the square of its size.
MOST_CORNERS, MOST_POLYGONS, LEAST = 60, 24, 5e-5


def upright(mesh: Triangles, front: float) -> tuple[Polygon, ...]:
    """The section of the solid by an upright plane: places from the left and heights, the largest first [unit of the file].

    mesh: that stands [mesh].
    front: where the plane is, from the front [unit of the file].

    Counterclockwise around what is solid, clockwise around its holes, seen from the front.
    """
    return drawn([loop.points for loop in across(mesh, front)], MOST_CORNERS)


def across(mesh: Triangles, front: float) -> list[Loop]:
    """Loops of an upright section, with all their corners [unit of the file].

    mesh: that stands [mesh].
    front: where the plane is, from the front [unit of the file].
    """
    places = [y for _, y, _ in mesh.corners]
    behind = [y >= front for y in places]
    crossing = [number for number, (one, two, three) in enumerate(zip(mesh.first, mesh.second, mesh.third))
                if not behind[one] == behind[two] == behind[three]]
    found, _ = loops(mesh, crossing, Plane(places, front, front, 0, 2))
    # Seen from the front what is below the cut is near, so that left and right change sides.
    return [Loop(loop.points[::-1], (*loop.triangles[-2::-1], loop.triangles[-1])) for loop in found]


def drawn(polygons: list[Polygon], most: int) -> tuple[Polygon, ...]:
    """Polygons fit for a drawing: the largest ones, with few corners [unit of the file].

    polygons: closed, either way around [unit of the file].
    most: corners of each [count].
    """
    return tuple(drawn_each(polygons, most).values())


def drawn_each(polygons: list[Polygon], most: int) -> dict[int, Polygon]:
    """The same by the polygons' numbers, the largest first [unit of the file].

    polygons: closed, either way around [unit of the file].
    most: corners of each [count].
    """
    if not polygons:
        return {}
    ways = [list(zip(*polygon)) for polygon in polygons]
    size = max(max(max(way[axis]) for way in ways) - min(min(way[axis]) for way in ways) for axis in (0, 1))
    areas = sorted(((abs(area(polygon)), number) for number, polygon in enumerate(polygons)), reverse=True)[:MOST_POLYGONS]
    return {number: simplified(polygons[number], most, size) for own, number in areas if own > LEAST * size * size}
