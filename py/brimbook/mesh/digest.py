"""What was read from a file as two texts: one short enough for a link, and one with the sections for this device."""

from brimbook.mesh import drawn, letters, thin, units
from brimbook.mesh.letters import Packer, Unpacker, require
from brimbook.mesh.model import UPS, Draft, Gap, Level, Model, Room

# A later kind of text would have another letter. Of the first kind of reading rooms have no surface.
VERSION, _FIRST, _SECTIONS = "b", "a", "a"
# A text of a reading has no more letters, nor is a longer one read.
LONGEST = 1500
MOST_LEVELS, MOST_ROOM_LEVELS, MOST_ROOMS, MOST_GAPS = 40, 24, 4, 8
# Where levels are too many together, each curve has at most so many.
_FEWER = (34, 28, 24, 22, 20, 18, 16, 14, 12, 10, 8)
_LONGEST_NOTES = 360
_UNITS = ("", *units.MILLIMETERS)
# Bits: heights to a millionth of the model's, volumes to a four-millionth, sections to a 130,000th of the largest; angles to a hundredth of a degree.
_HEIGHT, _VOLUME, _AREA = 20, 22, 17
_PLACE, _COUNT, _DEGREES, _HUNDREDTHS = 12, 21, 15, 100


def reading(model: Model) -> str:
    """All but the sections and the cut, in at most 1,500 letters, digits and - _ . ~ [text].

    model: as it was read [model].
    """
    for most in (MOST_LEVELS, *_FEWER):
        text = letters.sealed(VERSION, _packed(model, most) + _notes(model.notes))
        if len(text) <= LONGEST:
            return text
    raise AssertionError("a reading with the fewest levels fits")


def sections(model: Model) -> str:
    """The sections and the cut, in at most 6,000 letters, digits and - _ . ~ [text].

    model: as it was read [model].
    """
    return letters.sealed(_SECTIONS, drawn.packed(model))


def model(reading: str, sections: str = "") -> Model:
    """A model again, its numbers rounded to a few millionths of the whole [model].

    reading: as reading() made it [text].
    sections: as sections() made it, empty for a model without them [text].

    Raises ModelError where a text is damaged or no such text.
    """
    version = _FIRST if isinstance(reading, str) and reading.startswith(_FIRST) else VERSION
    body, *notes = letters.opened(version, reading, LONGEST).split(".")
    require(sum(map(len, notes)) <= LONGEST)
    unpacker = Unpacker(body)
    told = _told(unpacker, version != _FIRST)
    unpacker.end()
    cuts = drawn.unpacked(letters.opened(_SECTIONS, sections, drawn.LONGEST), told["size"], len(told["rooms"])) if sections else ((), ())
    return Model(**told, sections=cuts[0], cut=cuts[1], notes=tuple(letters.note(each) for each in notes))


def _packed(model: Model, most: int) -> str:
    packer = Packer()
    packer.put(UPS.index(model.up), 3)
    packer.put(_UNITS.index(units.short(model.unit)), 3)
    for side in (*model.size, model.surface):
        packer.number(side)
    for count in (model.triangles, model.bodies, model.hollows, model.open_edges, model.turned):
        packer.put(count, _COUNT)
    packer.put(model.crossing, 1)
    _pack_gaps(packer, model)
    packer.put(model.thinnest is not None, 1)
    if model.thinnest is not None:
        packer.number(model.thinnest[0])
        packer.share(model.thinnest[1], model.size[2], _PLACE)
    _pack_draft(packer, model.outer)
    _pack_draft(packer, model.inner)
    rooms = model.rooms[:MOST_ROOMS]
    packer.put(len(rooms), 3)
    _pack_levels(packer, model.solid, model.size[2], most)
    for room in rooms:
        _pack_levels(packer, room.levels, model.size[2], min(most, MOST_ROOM_LEVELS))
        packer.number(room.surface)
    return packer.letters()


def _told(unpacker: Unpacker, with_surfaces: bool) -> dict:
    up = UPS[unpacker.take(3, len(UPS) - 1)]
    unit = _UNITS[unpacker.take(3, len(_UNITS) - 1)]
    *size, surface = (unpacker.number() for _ in range(4))
    require(min(size) > 0)
    triangles, bodies, hollows, open_edges, turned = (unpacker.take(_COUNT) for _ in range(5))
    crossing = bool(unpacker.take(1))
    gaps = tuple(_gap(unpacker, size) for _ in range(unpacker.take(4, MOST_GAPS)))
    thinnest = (unpacker.number(), unpacker.share(size[2], _PLACE)) if unpacker.take(1) else None
    outer, inner = _draft(unpacker), _draft(unpacker)
    rooms = unpacker.take(3, MOST_ROOMS)
    solid = _levels(unpacker, size[2], MOST_LEVELS)
    return {"up": up, "unit": unit, "size": tuple(size), "triangles": triangles, "bodies": bodies, "hollows": hollows,
            "surface": surface, "solid": solid, "open_edges": open_edges, "gaps": gaps, "turned": turned, "crossing": crossing,
            "rooms": tuple(Room(_levels(unpacker, size[2], MOST_ROOM_LEVELS), unpacker.number() if with_surfaces else 0.0) for _ in range(rooms)),
            "thinnest": thinnest,
            "outer": outer, "inner": inner}


def _pack_levels(packer: Packer, levels: tuple[Level, ...], high: float, most: int) -> None:
    levels = thin.thinned(_apart(levels, high), most)
    whole, area = levels[-1].volume, max(max(level.below, level.above) for level in levels)
    packer.put(len(levels), 6)
    packer.number(whole)
    packer.number(area)
    least = 0.0
    for level in levels:
        least = max(least, level.volume)
        packer.share(level.height, high, _HEIGHT)
        packer.share(least, whole, _VOLUME)
        packer.share(level.below, area, _AREA)
        jumps = letters.steps(level.below, area, _AREA) != letters.steps(level.above, area, _AREA)
        packer.put(jumps, 1)
        if jumps:
            packer.share(level.above, area, _AREA)


def _apart(levels: tuple[Level, ...], high: float) -> list[Level]:
    """Levels whose heights differ when they are told; of those that don't, the last, as large below as the first."""
    kept: list[Level] = []
    for level in levels:
        if kept and letters.steps(kept[-1].height, high, _HEIGHT) == letters.steps(level.height, high, _HEIGHT):
            level = Level(level.height, level.volume, kept.pop().below, level.above)
        kept.append(level)
    return kept


def _levels(unpacker: Unpacker, high: float, most: int) -> tuple[Level, ...]:
    count = unpacker.take(6, most)
    require(count >= 2)
    whole, area = unpacker.number(), unpacker.number()
    levels = []
    for _ in range(count):
        height, volume = unpacker.share(high, _HEIGHT), unpacker.share(whole, _VOLUME)
        below = unpacker.share(area, _AREA)
        levels.append(Level(height, volume, below, unpacker.share(area, _AREA) if unpacker.take(1) else below))
    require(all(low.height < up.height and low.volume <= up.volume for low, up in zip(levels, levels[1:])))
    require(levels[-1].volume == whole > 0)
    return tuple(levels)


def _pack_gaps(packer: Packer, model: Model) -> None:
    gaps = model.gaps[:MOST_GAPS]
    packer.put(len(gaps), 4)
    for gap in gaps:
        for place, side in zip((gap.left, gap.front, gap.height), model.size):
            packer.share(place, side, _PLACE)
        packer.number(gap.around)


def _gap(unpacker: Unpacker, size: list[float]) -> Gap:
    return Gap(*(unpacker.share(side, _PLACE) for side in size), unpacker.number())


def _pack_draft(packer: Packer, draft: Draft | None) -> None:
    packer.put(draft is not None, 1)
    if draft is not None:
        packer.put(round((draft.least + 90) * _HUNDREDTHS), _DEGREES)
        packer.share(draft.upright, 1, _PLACE)
        packer.share(draft.overhanging, 1, _PLACE)


def _draft(unpacker: Unpacker) -> Draft | None:
    if not unpacker.take(1):
        return None
    return Draft(unpacker.take(_DEGREES, 180 * _HUNDREDTHS) / _HUNDREDTHS - 90, unpacker.share(1, _PLACE), unpacker.share(1, _PLACE))


def _notes(notes: tuple[str, ...]) -> str:
    """Whole notes, as many as there is room for, each behind a point."""
    told = ""
    for each in notes:
        more = "." + letters.note_letters(each)
        told += more if len(told) + len(more) <= _LONGEST_NOTES else ""
    return told
