"""The objects of a 3MF file, put where they are printed."""

import math
from collections.abc import Generator
from dataclasses import dataclass

from brimbook.mesh.corners import shared
from brimbook.mesh.limits import check_corners, check_triangles
from brimbook.mesh.three_mf_part import ModelPart, Object, Placed, Transform, check_placed
from brimbook.mesh.triangles import Corner, ModelError, Progress, Triangles

_DEEPEST = 32
_IDENTITY = (1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0)
# Products of three such numbers are still finite.
_LARGEST = 1e9
_Key = tuple[str, str]


@dataclass(frozen=True)
class _Load:
    """What placing an object once brings: triangles, corners, objects, and how deep they lie in each other."""

    triangles: int
    corners: int
    objects: int
    depth: int


class _Building:
    """What was placed so far."""

    def __init__(self, parts: dict[str, ModelPart]) -> None:
        self._parts = parts
        self._loads: dict[_Key, _Load | None] = {}
        self.corners: list[Corner] = []
        self.columns: tuple[list[int], ...] = ([], [], [])
        self.left_out: set[str] = set()

    def load(self, key: _Key, depth: int) -> _Load:
        """What placing an object brings [load].

        key: the part and the object's number [text].
        depth: in how many objects it lies [objects].

        It is counted before anything is placed, as objects in objects can be more than any memory holds.
        """
        if key in self._loads:
            known = self._loads[key]
            if known is None:
                raise ModelError("In this 3MF file an object is part of itself. The file is damaged: save it again.")
            return known
        self._loads[key] = None
        below = [self.load(_key(placed, key[0]), depth + 1) for placed in self._object_of(key).components]
        found = self._loads[key] = self._sum(key, below)
        if depth > _DEEPEST or found.depth > _DEEPEST:
            raise ModelError(f"In this 3MF file objects lie more than {_DEEPEST} deep in each other. Save the model as one mesh.")
        return found

    def _sum(self, key: _Key, below: list[_Load]) -> _Load:
        thing = self._object_of(key)
        found = _Load(len(thing.columns[0]) + sum(load.triangles for load in below), len(thing.corners) + sum(load.corners for load in below),
                      1 + sum(load.objects for load in below), 1 + max((load.depth for load in below), default=0))
        check_triangles(found.triangles)
        check_corners(found.corners)
        check_placed(found.objects)
        return found

    def _object_of(self, key: _Key) -> Object:
        """The object, or an empty one in place of what is no part of the model."""
        path, number = key
        if path not in self._parts or number not in self._parts[path].objects:
            raise ModelError("This 3MF file places an object that it doesn't hold. Save or copy it again.")
        found = self._parts[path].objects[number]
        if found.kind == "model":
            return found
        self.left_out.add(found.kind)
        return Object(found.kind)

    def place(self, key: _Key, transform: Transform) -> Generator[None, None, None]:
        """Adds an object and all that is in it [steps].

        key: the part and the object's number [text].
        transform: how it is moved [12 numbers].
        """
        thing = self._object_of(key)
        if thing.columns[0]:
            self._add(thing, transform)
            yield
        for placed in thing.components:
            yield from self.place(_key(placed, key[0]), _after(placed.transform, transform))

    def _add(self, thing: Object, transform: Transform) -> None:
        _check_numbers(thing)
        begin = len(self.corners)
        self.corners += thing.corners if transform == _IDENTITY else _moved(thing.corners, transform)
        first, second, third = thing.columns
        # A mirrored object has its inside out, unless its triangles go around the other way.
        order = (first, third, second) if _mirrors(transform) else (first, second, third)
        for column, numbers in zip(self.columns, order):
            column += [number + begin for number in numbers] if begin else numbers


def built(parts: dict[str, ModelPart], root: str) -> Generator[Progress, None, Triangles]:
    """All that the file places to be printed, as one mesh [steps, then the mesh].

    parts: the model parts by their names [parts].
    root: name of the part whose build counts [text].
    """
    building, part = _Building(parts), parts[root]
    loads = [building.load(_key(item, root), 0) for item in part.items]
    check_triangles(sum(load.triangles for load in loads))
    check_corners(sum(load.corners for load in loads))
    check_placed(sum(load.objects for load in loads))
    for place, item in enumerate(part.items):
        for _ in building.place(_key(item, root), item.transform or _IDENTITY):
            yield 0.8 + 0.1 * place / len(part.items), "Putting the objects in place"
    if not building.columns[0]:
        raise ModelError("This 3MF file places no mesh to be printed. Put the model on the plate, and save it again.")
    return (yield from shared(building.corners, building.columns, part.unit, _notes(building.left_out, parts)))


def _key(placed: Placed, path: str) -> _Key:
    return placed.path.lstrip("/").lower() or path, placed.number


def _notes(left_out: set[str], parts: dict[str, ModelPart]) -> tuple[str, ...]:
    notes = []
    if left_out:
        notes.append("Supports and other objects that are no part of the model were left out.")
    if any(part.unread for part in parts.values()):
        notes.append("Only triangles were read; what the file holds as beams, slices or formulas was left out.")
    return tuple(notes)


def _check_numbers(thing: Object) -> None:
    if not all(0 <= min(column) <= max(column) < len(thing.corners) for column in thing.columns):
        raise ModelError("A triangle in this 3MF file names a corner that is not there. The file is damaged: save or copy it again.")


def _moved(corners: list[Corner], transform: Transform) -> list[Corner]:
    a, b, c, d, e, f, g, h, i, j, k, m = transform
    return [(x * a + y * d + z * g + j, x * b + y * e + z * h + k, x * c + y * f + z * i + m) for x, y, z in corners]


def _after(inner: Transform | None, outer: Transform) -> Transform:
    """First the inner one, then the outer one."""
    if inner is None:
        return outer
    if outer == _IDENTITY:
        return inner
    rows = _moved([inner[0:3], inner[3:6], inner[6:9]], (*outer[:9], 0.0, 0.0, 0.0)) + _moved([inner[9:12]], outer)
    return tuple(number for row in rows for number in row)


def _mirrors(transform: Transform) -> bool:
    if not all(abs(number) <= _LARGEST for number in transform):
        raise ModelError("An object in this 3MF file is placed far away, or made far too large. Save or copy the file again.")
    a, b, c, d, e, f, g, h, i = transform[:9]
    size = math.fsum((a * e * i, b * f * g, c * d * h, -c * e * g, -b * d * i, -a * f * h))
    if size == 0:
        raise ModelError("An object in this 3MF file is pressed flat where it is placed. Save or copy the file again.")
    return size < 0
