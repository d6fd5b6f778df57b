"""Cold and hot limits for a curing piece, told where they are passed."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.sources import Source


@dataclass(frozen=True)
class _Limit:
    """A temperature that cement should keep off, how that is told, what happens there, who says so, and does it count
    at that temperature itself?"""

    celsius: float
    told: str
    sentence: str
    source: Source
    itself: bool = False


_COLD = (
    _Limit(5.0, "At {} or below", "it gains strength slowly, and frost can ruin it: warm the bench", sources.COLD_WEATHER, True),
    _Limit(10.0, "At {} or below", "it cures too slowly: keep it warmer", sources.CURING_LEAST, True),
    _Limit(13.0, "Below {}", "it is rather cold for a thin wall: use warm water, or a warmer room", sources.THIN_SECTIONS),
)
_HOT = _Limit(35.0, "Above {}", "it is hotter than concrete may be, dries out and cracks: use cold water, and shade",
              sources.HOT_CONCRETE)


def limits(said: Said, seen: tuple[float, ...]) -> tuple[str, ...]:
    """What the coldest and the warmest of the temperatures mean for a piece of cement [texts].

    said: the record as understood [said].
    seen: temperatures of the bench and the log, at least one [°C].
    """
    coldest = min(seen)
    cold = [limit for limit in _COLD if coldest < limit.celsius or (limit.itself and coldest == limit.celsius)]
    hot = [_HOT] if max(seen) > _HOT.celsius else []
    return tuple(_told(said, limit) for limit in [*cold[:1], *hot])


def _told(said: Said, limit: _Limit) -> str:
    where = limit.told.format(show.temperature(limit.celsius, said.display))
    return f"{where} {limit.sentence} ({limit.source.text}; {limit.source.standing})."
