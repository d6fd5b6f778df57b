"""Skin sensitizers: what each substance comes to in the finished candle, and what its label says of it."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.candle import hazard
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said

# More entries than this are kept, and no longer worked out.
MOST_ENTRIES = 100
OF_CANDLE, UNNAMED = ", of the candle", "A sensitizer of "
CLASSIFIES, NAMED, BELOW = "classifies the candle (H317)", "named on the label (EUH208)", "below both thresholds"
VERDICTS = (CLASSIFIES, NAMED, BELOW)


@dataclass(frozen=True)
class Part:
    """One scent of a fragrance: its parts, and its share of the fragrance, for a gram of wax, and of the finished candle [–]."""

    number: int
    path: str
    name: str
    parts: float
    share: float
    of_wax: float
    of_candle: float


@dataclass(frozen=True)
class Entry:
    """A sensitizer as the sheet of one scent tells it: its share of that scent [–], its category and limit of its own [–]."""

    path: str
    name: str
    part: Part
    share: float
    category: str
    specific: float | None


def percent(said: Said, share: float) -> str:
    """A share in percent to three digits, however small it is [text].

    said: the record as understood [said].
    share: as a plain fraction [–].
    """
    return f"{show.significant(share * 100, 3, said.display)} %"


def entries_of(said: Said, scents: tuple[Part, ...]) -> list[tuple[Entry, ...]]:
    """The sensitizers that are known in full: one substance with all its entries after the other [entries].

    said: the record as understood [said].
    scents: in the fragrance [parts].

    The same name in several scents is the same substance; one without a name stands by itself.
    """
    paths = [(part, f"{part.path}.sensitizers.{row}") for part in scents
             for row in range(said.count(f"{part.path}.sensitizers"))][:MOST_ENTRIES]
    substances: dict[str, list[Entry]] = {}
    for part, path in paths:
        share, category = said.value(f"{path}.share"), said.value(f"{path}.class")
        if None in (share, category) or (said.typed(f"{path}.specific") and said.value(f"{path}.specific") is None):
            continue
        name = " ".join(said.text(f"{path}.name").split())
        substances.setdefault(name.casefold() or path, []).append(
            Entry(path, name or f"{UNNAMED}{part.name}", part, share, category, said.value(f"{path}.specific")))
    return [tuple(entries) for entries in substances.values()]


def sensitizing(said: Said, at: str, scents: tuple[Part, ...]) -> list[Figure]:
    """What each substance comes to in the candle, and whether that names it or classifies it [figures].

    said: the record as understood [said].
    at: where the figures stand [text].
    scents: in the fragrance [parts].
    """
    return [_substance(said, at, number, entries) for number, entries in enumerate(entries_of(said, scents), 1)]


def _substance(said: Said, at: str, number: int, entries: tuple[Entry, ...]) -> Figure:
    value = sum(entry.share * entry.part.of_candle for entry in entries)
    # Where the sheets differ the most careful one counts.
    classifies, named, specific = min((hazard.classifies_from(entry.category, entry.specific),
                                       hazard.named_from(entry.category, entry.specific), entry.specific is not None)
                                      for entry in entries)
    put = show.significant
    numbers = " + ".join(f"{put(entry.share, 8, said.display)} × {put(entry.part.of_candle * 100, 8, said.display)}"
                         for entry in entries)
    shown, name = f"{put(value * 100, 4, said.display)} %", entries[0].name
    return Figure(
        f"{at}.sensitizer_{number}", f"{name}{OF_CANDLE}", value, "–", shown,
        "its share of the scent × the scent's share of the candle, summed over the scents", numbers,
        says=f"{name}: {shown} of the candle, {_verdict(value, classifies, named)}",
        worked=f"{put(value * 100, 5, said.display)} %",
        constants=(
            Constant("Classifies the candle from", percent(said, classifies),
                     sources.YOURS if specific else sources.CLP_SENSITIZER),
            Constant("Named on the label from", percent(said, named), sources.CLP_NAMED)),
        uses=tuple(dict.fromkeys(f"{at}.of_candle_{entry.part.number}" for entry in entries)),
        notes=_clash(name, entries))


def _verdict(share: float, classifies: float, named: float) -> str:
    if hazard.reaches(share, classifies):
        return CLASSIFIES
    return NAMED if hazard.reaches(share, named) else BELOW


def _clash(name: str, entries: tuple[Entry, ...]) -> tuple[str, ...]:
    if len({hazard.classifies_from(entry.category, entry.specific) for entry in entries}) == 1:
        return ()
    return (f"Your sheets differ about {name}: the lowest limit is taken.",)
