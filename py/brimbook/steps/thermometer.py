"""The thermometer's log of a pot: which of its readings tell how fast it cools."""

from dataclasses import dataclass

from brimbook.candle.cooling import LEAST_ABOVE, Run
from brimbook.quantity import show
from brimbook.quantity.moments import HOUR, MINUTE
from brimbook.record.said import Said

# Of a longer log the newest ones are read.
_MOST = 100
# More than a thermometer's error: it was heated [°C]. After so long it is another pot [s].
_ROSE, _ANOTHER = 1.0, 6 * HOUR


@dataclass(frozen=True)
class Log:
    """Readings that count, as runs of (min after the first, °C); the moment of the first and of the newest [s]; the newest
    temperature read [°C]; what is to be told of those left out."""

    runs: tuple[Run, ...]
    first: float
    newest: float
    read: float
    notes: tuple[str, ...]


def log_of(said: Said, place: str, room: float, scented: float | None, set_below: float | None) -> Log | None:
    """The readings of a pot that tell how fast it cools; none where there is not one [log].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    room: where it cools [°C].
    scented: below it the fragrance is in, none without fragrance [°C].
    set_below: the wax is set below it, none where unknown [°C].
    """
    readings, notes = _all(said, f"{place}.melting.readings"), []
    warm = [(at, celsius) for at, celsius in readings if celsius - room > LEAST_ABOVE]
    if len(warm) < len(readings):
        notes.append("A reading that is no warmer than the room tells nothing of the cooling: it is left out.")
    liquid = [(at, celsius) for at, celsius in warm if set_below is None or celsius >= set_below]
    if len(liquid) < len(warm):
        notes.append(f"Below {show.temperature(set_below, said.display)} wax gives off heat as it sets: such readings are left out.")
    cooling, heated = _since_heated(liquid)
    if heated:
        notes.append("It rose between two readings, so the ones before tell of heating: they are left out.")
    if not cooling:
        return None
    first = cooling[0][0]
    split = next((row for row, (_, celsius) in enumerate(cooling) if scented is not None and celsius < scented), 0)
    parts = [part for part in (cooling[:split], cooling[split:]) if part]
    runs = tuple(tuple(((at - first) / MINUTE, celsius) for at, celsius in part) for part in parts)
    return Log(runs, first, cooling[-1][0], cooling[-1][1], tuple(notes))


def _all(said: Said, path: str) -> list[tuple[float, float]]:
    """Those with a moment and a temperature, in the order of time, one for each moment."""
    count, found = said.count(path), {}
    for row in range(max(count - _MOST, 0), count):
        at, celsius = said.value(f"{path}.{row}.at"), said.value(f"{path}.{row}.temperature")
        if None not in (at, celsius):
            found[at] = celsius
    return sorted(found.items())


def _since_heated(readings: list[tuple[float, float]]) -> tuple[list[tuple[float, float]], bool]:
    """Those since the pot was last heated, or since another pot was begun, from the hottest on."""
    start, heated = 0, False
    for row in range(1, len(readings)):
        rose = readings[row][1] - readings[row - 1][1] > _ROSE
        another = readings[row][0] - readings[row - 1][0] > _ANOTHER
        if rose or another:
            start, heated = row, rose and not another
    last = readings[start:]
    hottest = max(range(len(last)), key=lambda row: last[row][1], default=0)
    return last[hottest:], heated
