"""Sections and the upright cut of a model as letters: corners on a fine grid, from each to the next."""

from collections.abc import Iterator, Sequence

from brimbook.mesh.letters import Packer, Unpacker, require, steps
from brimbook.mesh.model import Model, Polygon, Section

LONGEST = 6000
# Letters are kept free for the version and the seal.
_ROOM = LONGEST - 8
MOST_SECTIONS, MOST_POLYGONS, MOST_CORNERS, _MOST_ROOMS = 16, 63, 127, 4
# A finer grid, then a coarser one, then fewer sections: the first that fits. Bits of a side of the model.
_GRIDS, _FEWER = (13, 12, 11, 10), (12, 8, 6, 4, 2, 0)
_FEWEST_POLYGONS = 6
_HEIGHT = 20
# Bits of a grid's own width, of a step's width, and of a polygon's number among all.
_GRID, _STEP, _NUMBER = 4, 4, 11

Corners = tuple[tuple[int, int], ...]


def packed(model: Model) -> str:
    """The sections and the cut of a model in at most 5,992 letters [text].

    model: as it was read [model].
    """
    for sections, polygons, grid in _plans(min(len(model.sections), MOST_SECTIONS)):
        text = _packed(model, _some(model.sections, sections), polygons, grid)
        if len(text) <= _ROOM:
            return text
    return _packed(model, (), 0, _GRIDS[-1])


def unpacked(text: str, size: Sequence[float], rooms: int) -> tuple[tuple[Section, ...], tuple[Polygon, ...]]:
    """Sections and the cut again [sections, polygons].

    text: as packed() made it [text].
    size: left to right, front to back, height of the model [unit of the file].
    rooms: how many rooms the model has [rooms].

    Raises ModelError where a text makes no sense.
    """
    reader = _Reader(text)
    sections = tuple(_section(reader, size, rooms) for _ in range(reader.unpacker.take(5, MOST_SECTIONS)))
    require(all(low.height < high.height for low, high in zip(sections, sections[1:])))
    cut = reader.polygons(size[0], size[2])
    reader.unpacker.end()
    return sections, cut


def _plans(count: int) -> Iterator[tuple[int, int, int]]:
    """How many sections, polygons of each and bits of the grid to try."""
    yield from ((count, MOST_POLYGONS, grid) for grid in _GRIDS)
    for fewer in (count, *(each for each in _FEWER if each < count)):
        yield fewer, _FEWEST_POLYGONS, _GRIDS[-1]


def _some(sections: Sequence[Section], count: int) -> list[Section]:
    """So many of the sections, spread over all of them, the lowest and the highest among them."""
    last = len(sections) - 1
    return [sections[round(place * last / max(count - 1, 1))] for place in range(min(count, last + 1))]


def _packed(model: Model, sections: Sequence[Section], most: int, grid: int) -> str:
    writer = _Writer(grid)
    wide, deep, high = model.size
    told: dict[int, Section] = {steps(each.height, high, _HEIGHT): each for each in sections}
    rooms = min(len(model.rooms), _MOST_ROOMS)
    writer.packer.put(len(told), 5)
    for height, section in sorted(told.items(), key=lambda pair: pair[0]):
        writer.packer.put(height, _HEIGHT)
        writer.polygons(section.solid, wide, deep, most)
        outlines = (*section.rooms, *((),) * rooms)[:rooms]
        for outline in outlines:
            writer.polygon(writer.on_grid(outline, wide, deep))
    writer.polygons(model.cut, wide, high, most)
    return writer.packer.letters()


def _section(reader: "_Reader", size: Sequence[float], rooms: int) -> Section:
    height = reader.unpacker.share(size[2], _HEIGHT)
    solid = reader.polygons(size[0], size[1])
    return Section(height, solid, tuple(reader.polygon(size[0], size[1], True) for _ in range(min(rooms, _MOST_ROOMS))))


class _Writer:
    """Packs polygons; one that was told before, either way around, is told by its number."""

    def __init__(self, grid: int):
        self.packer = Packer()
        self._grid = grid
        self._numbers: dict[Corners, int] = {}
        self.packer.put(grid, _GRID)

    def polygons(self, polygons: Sequence[Polygon], wide: float, high: float, most: int) -> None:
        """Nothing; packs a list of polygons, the largest where they are too many [nothing].

        polygons: closed [unit of the file].
        wide: the side of the model along the first axis [unit of the file].
        high: the side along the second one [unit of the file].
        most: of them [polygons].
        """
        corners = [each for each in (self.on_grid(polygon, wide, high) for polygon in polygons) if each]
        largest = set(sorted(range(len(corners)), key=lambda place: -abs(_area(corners[place])))[:most])
        self.packer.put(len(largest), 6)
        for place, each in enumerate(corners):
            if place in largest:
                self.polygon(each)

    def on_grid(self, polygon: Polygon, wide: float, high: float) -> Corners:
        """A polygon's corners on the grid, without those that fall together; none where nothing is left [steps of the grid].

        polygon: closed [unit of the file].
        wide: the side of the model along the first axis [unit of the file].
        high: the side along the second one [unit of the file].
        """
        corners = [(steps(x, wide, self._grid), steps(y, high, self._grid)) for x, y in polygon]
        corners = [corner for corner, before in zip(corners, [*corners[-1:], *corners]) if corner != before]
        if len(corners) > MOST_CORNERS:
            corners = [corners[place * len(corners) // MOST_CORNERS] for place in range(MOST_CORNERS)]
        return _turned(tuple(corners)) if len(corners) >= 3 and _area(corners) else ()

    def polygon(self, corners: Corners) -> None:
        """Nothing; packs one polygon, or no corners at all [nothing].

        corners: as on_grid gave them [steps of the grid].
        """
        told = self._told_before(corners)
        self.packer.put(told is not None, 1)
        if told is not None:
            self.packer.put(told[0], _NUMBER)
            self.packer.put(told[1], 1)
            return
        if len(self._numbers) < 1 << _NUMBER:
            self._numbers[corners] = len(self._numbers)
        self._steps(corners)

    def _told_before(self, corners: Corners) -> tuple[int, bool] | None:
        for turned, each in enumerate((corners, _turned(corners[::-1]))):
            if each in self._numbers:
                return self._numbers[each], bool(turned)
        return None

    def _steps(self, corners: Corners) -> None:
        moves = [(x - a, y - b) for (a, b), (x, y) in zip(corners, corners[1:])]
        width = max((abs(value) for move in moves for value in move), default=0).bit_length() + 1
        self.packer.put(len(corners), 7)
        for value in corners[0] if corners else ():
            self.packer.put(value, self._grid)
        if corners:
            self.packer.put(width, _STEP)
        for value in (value for move in moves for value in move):
            self.packer.put(value + (1 << width - 1), width)


class _Reader:
    """Unpacks what a _Writer packed."""

    def __init__(self, text: str):
        self.unpacker = Unpacker(text)
        self._grid = self.unpacker.take(_GRID)
        require(self._grid in _GRIDS)
        self._told: list[Corners] = []

    def polygons(self, wide: float, high: float) -> tuple[Polygon, ...]:
        """A list of polygons [unit of the file].

        wide: the side of the model along the first axis [unit of the file].
        high: the side along the second one [unit of the file].
        """
        return tuple(self.polygon(wide, high, False) for _ in range(self.unpacker.take(6, MOST_POLYGONS)))

    def polygon(self, wide: float, high: float, may_be_empty: bool) -> Polygon:
        """One polygon [unit of the file].

        wide: the side of the model along the first axis [unit of the file].
        high: the side along the second one [unit of the file].
        may_be_empty: may it have no corners? [yes or no]
        """
        if self.unpacker.take(1):
            number, turned = self.unpacker.take(_NUMBER), self.unpacker.take(1)
            require(number < len(self._told))
            corners = _turned(self._told[number][::-1]) if turned else self._told[number]
        else:
            corners = self._corners()
            self._told.append(corners)
        require(len(corners) >= 3 and _area(corners) != 0 or may_be_empty and not corners)
        whole = (1 << self._grid) - 1
        return tuple((x / whole * wide, y / whole * high) for x, y in corners)

    def _corners(self) -> Corners:
        count = self.unpacker.take(7)
        if not count:
            return ()
        whole = (1 << self._grid) - 1
        x, y = self.unpacker.take(self._grid), self.unpacker.take(self._grid)
        width = self.unpacker.take(_STEP)
        require(width >= 1)
        corners = [(x, y)]
        for _ in range(count - 1):
            x += self.unpacker.take(width) - (1 << width - 1)
            y += self.unpacker.take(width) - (1 << width - 1)
            require(0 <= x <= whole and 0 <= y <= whole)
            corners.append((x, y))
        return tuple(corners)


def _turned(corners: Corners) -> Corners:
    """The same polygon, beginning at its lowest corner, so that equal polygons are equal."""
    first = corners.index(min(corners)) if corners else 0
    return corners[first:] + corners[:first]


def _area(corners: Sequence[tuple[int, int]]) -> int:
    return sum(a * d - b * c for (a, b), (c, d) in zip(corners, (*corners[1:], *corners[:1])))
