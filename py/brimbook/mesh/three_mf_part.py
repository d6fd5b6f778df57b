"""A model part of a 3MF file: its objects, and what is placed to be printed."""

import math
from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass, field
from operator import itemgetter
from xml.parsers import expat

from brimbook.mesh.corners import floats, whole_numbers
from brimbook.mesh.limits import check_corners, check_triangles
from brimbook.mesh.triangles import Corner, ModelError

CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02"
PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06"
# They color and group triangles, and move none.
_HARMLESS = {CORE, PRODUCTION, "http://schemas.microsoft.com/3dmanufacturing/material/2015/02",
             "http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07"}
# Shapes of other kinds than triangles, in extensions that are not read.
_SHAPES = {"beamlattice", "slicestack", "levelset", "booleans", "displacementmesh"}
UNITS = {"micron": "um", "millimeter": "mm", "centimeter": "cm", "inch": "in", "foot": "ft", "meter": "m"}
MOST_PLACED = 10_000
_MOST_ELEMENTS = 3_000_000
_MOST_NAMES = 1_000
_DEEPEST = 50
_LONGEST_WORD = 1_000_000

Transform = tuple[float, ...]
_FAR_MORE = "This 3MF file holds far more than a model needs. Save the model alone, as 3MF or STL."
_DAMAGED = "This 3MF file is damaged: its model can't be read. Save or copy it again."


@dataclass(frozen=True)
class Placed:
    """An object put somewhere: the part that holds it, empty for the same one, its number, and how it is moved."""

    path: str
    number: str
    transform: Transform | None


@dataclass
class Object:
    """A mesh, or objects put together. kind is model, or something that is not printed as part of it."""

    kind: str
    corners: list[Corner] = field(default_factory=list)
    columns: tuple[list[int], ...] = field(default_factory=lambda: ([], [], []))
    components: list[Placed] = field(default_factory=list)


@dataclass
class ModelPart:
    """All that counts of one part."""

    unit: str = ""
    objects: dict[str, Object] = field(default_factory=dict)
    items: list[Placed] = field(default_factory=list)
    unread: bool = False


def parser() -> expat.XMLParserType:
    """A reader of XML that refuses declarations of its own words, which can grow without end [parser]."""
    made = expat.ParserCreate(namespace_separator=" ")
    made.ordered_attributes = False
    made.buffer_text = False
    made.StartDoctypeDeclHandler = _refuse
    made.EntityDeclHandler = _refuse
    return made


def _refuse(*_: object) -> None:
    raise ModelError("This 3MF file declares XML of its own kind, which no model needs. Save it again from the drawing program.")


def part(pieces: Iterator[bytes]) -> Generator[int, None, ModelPart]:
    """Reads a model part [bytes read so far, then the part].

    pieces: the part's XML, one after the other [bytes].
    """
    reader, read = _Reader(), 0
    for piece in pieces:
        reader.feed(piece, False)
        read += len(piece)
        yield read
    reader.feed(b"", True)
    if not reader.part.unit:
        raise ModelError(_DAMAGED)
    return reader.part


class _Reader:
    """Collects corners and triangles as they come, and turns them into numbers in bulk."""

    def __init__(self) -> None:
        self.part = ModelPart()
        self._object = Object("")
        self._spaces: dict[str, str] = {}
        self._vertices: list[dict[str, str]] = []
        self._triangles: list[dict[str, str]] = []
        self._others: list[dict[str, str]] = []
        self._ends: list[str] = []
        self._elements = self._depth = self._corners = self._count = self._fed = self._understood = 0
        # Corners and triangles are most of a file: for them no more is done here than putting them aside.
        self._takes: dict[str, Callable[[dict[str, str]], None]] = {
            f"{CORE} vertex": self._vertices.append, f"{CORE} triangle": self._triangles.append, f"{CORE} model": self._model,
            f"{CORE} object": self._begin_object, f"{CORE} component": self._component, f"{CORE} item": self._item}
        self._parser = parser()
        self._parser.StartNamespaceDeclHandler = self._space
        self._parser.StartElementHandler = self._start
        self._parser.EndElementHandler = self._ends.append

    def feed(self, piece: bytes, last: bool) -> None:
        """Takes the next piece [nothing].

        piece: of the part's XML [bytes].
        last: does nothing come after it? [yes or no].
        """
        try:
            self._parser.Parse(piece, last)
        except (expat.ExpatError, LookupError, ValueError) as error:
            raise (error if isinstance(error, ModelError) else ModelError(_DAMAGED)) from None
        self._settle()
        self._depth -= len(self._ends)
        self._ends.clear()
        self._fed += len(piece)
        # A word that doesn't end is looked through anew with each piece; the parser's place is -1 where it waits for more of it.
        self._understood = max(self._understood, self._parser.CurrentByteIndex)
        if self._depth > _DEEPEST or self._elements > _MOST_ELEMENTS or self._fed - self._understood > _LONGEST_WORD:
            raise ModelError(_FAR_MORE)

    def _start(self, name: str, attributes: dict[str, str]) -> None:
        take = self._takes.get(name)
        if take is None:
            take = self._takes[name] = self._other(name)
        take(attributes)

    def _other(self, name: str) -> Callable[[dict[str, str]], None]:
        """What to do with elements of a name that was not seen before: they are only counted."""
        if not self.part.unit:
            raise ModelError("This file is not a 3MF model as it is read here. Save it again as 3MF, or as STL.")
        if len(self._takes) > _MOST_NAMES:
            raise ModelError(_FAR_MORE)
        space, _, word = name.rpartition(" ")
        self.part.unread = self.part.unread or (space not in _HARMLESS and word in _SHAPES)
        return self._others.append

    def _opened(self, count: int) -> None:
        self._elements += count
        self._depth += count

    def _settle(self) -> None:
        """Turns what was put aside into corners and triangles of the object at hand."""
        self._opened(len(self._vertices) + len(self._triangles) + len(self._others))
        self._corners += len(self._vertices)
        self._count += len(self._triangles)
        check_corners(self._corners)
        check_triangles(self._count)
        try:
            columns = [floats(map(itemgetter(axis), self._vertices)) for axis in "xyz"]
            numbers = [whole_numbers(map(itemgetter(corner), self._triangles)) for corner in ("v1", "v2", "v3")]
        except KeyError:
            raise ModelError("A corner or triangle in this 3MF file lacks a number. Save or copy the file again.") from None
        self._object.corners += zip(*columns)
        for column, more in zip(self._object.columns, numbers):
            column += more
        self._vertices.clear()
        self._triangles.clear()
        self._others.clear()

    def _space(self, prefix: str | None, space: str) -> None:
        if self._depth == 0:
            self._spaces[prefix or ""] = space

    def _model(self, attributes: dict[str, str]) -> None:
        self._opened(1)
        unit = attributes.get("unit", "millimeter")
        if unit not in UNITS:
            raise ModelError(f"This 3MF file is drawn in “{unit[:20]}”; {', '.join(UNITS)} are read. Save it again in one of them.")
        self.part.unit = UNITS[unit]
        for prefix in attributes.get("requiredextensions", "").split():
            if self._spaces.get(prefix) not in _HARMLESS:
                raise ModelError(f"This 3MF file needs an extension that is not read here (“{prefix[:20]}”). "
                                 "Save the model as plain triangles, as 3MF or STL.")

    def _begin_object(self, attributes: dict[str, str]) -> None:
        self._settle()
        self._opened(1)
        number = attributes["id"]
        if number in self.part.objects or len(self.part.objects) >= MOST_PLACED:
            raise ModelError(_DAMAGED)
        self._object = self.part.objects[number] = Object(attributes.get("type", "model"))

    def _component(self, attributes: dict[str, str]) -> None:
        self._opened(1)
        self._place(self._object.components, attributes)

    def _item(self, attributes: dict[str, str]) -> None:
        self._opened(1)
        self._place(self.part.items, attributes)

    def _place(self, places: list[Placed], attributes: dict[str, str]) -> None:
        check_placed(len(places) + 1)
        places.append(Placed(attributes.get(f"{PRODUCTION} path", ""), attributes["objectid"], _transform(attributes.get("transform", ""))))


def check_placed(count: int) -> None:
    """Refuses more objects than a plate can hold [nothing].

    count: how many are placed [objects].
    """
    if count > MOST_PLACED:
        raise ModelError(f"This 3MF file places more than {MOST_PLACED:,} objects. Save the model alone, as one mesh.")


def _transform(text: str) -> Transform | None:
    if not text.strip():
        return None
    numbers = tuple(floats(text.split()))
    if len(numbers) != 12 or not all(map(math.isfinite, numbers)):
        raise ModelError("An object in this 3MF file is placed by something else than 12 numbers. Save or copy the file again.")
    return numbers
