"""Splitting a plan into mixes that the bowl, the clock and the molds allow; what a scoop or a shortage changes."""

import math
from dataclasses import dataclass

# Volumes and weights that should be the same may differ by rounding.
_SLACK = 1e-9
# A bench so much warmer halves the setting time: 20 °F, here in °C.
HALVING = 20 / 1.8
# Above so many pieces of several molds, each mold is mixed for itself.
MOST_TOGETHER = 120


@dataclass(frozen=True)
class Mold:
    """A mold to fill: how many pieces, the mix that one takes [mL], how many of the mold are at hand, none if enough."""

    pieces: int
    volume: float
    at_hand: int | None = None


@dataclass(frozen=True)
class Mixes:
    """So many mixes of one kind: the pieces of each mold that one of them fills, or the parts that a large piece takes."""

    count: int
    pieces: tuple[int, ...]
    parts: int = 1

    def volume(self, molds: tuple[Mold, ...]) -> float:
        """Of one of these mixes [mL].

        molds: those that the pieces are of [molds].

        >>> Mixes(2, (3, 1)).volume((Mold(6, 300.0), Mold(2, 80.0)))
        980.0
        """
        return math.fsum(number * mold.volume for number, mold in zip(self.pieces, molds)) / self.parts


def setting_factor(celsius: float, reference: float) -> float:
    """How many times as long a mix takes to set on a bench of another temperature [–].

    celsius: of the bench [°C].
    reference: the temperature that its time is told for [°C].

    Source: setting time halves per +20 °F and doubles per −20 °F; nfba.org, magazine of October 2020.

    >>> round(setting_factor(20.0, 20.0), 3), round(setting_factor(20 + 20 / 1.8, 20.0), 3)
    (1.0, 0.5)
    """
    return 2.0 ** ((reference - celsius) / HALVING)


def pieces_in_time(working: float, mixing: float, pouring: float) -> int:
    """Whole pieces that can be poured before the mix stiffens; none where even the first can't [count].

    working: time from the water until it no longer pours [s].
    mixing: time that mixing takes of it [s].
    pouring: time to pour one piece [s].

    >>> pieces_in_time(900.0, 180.0, 60.0), pieces_in_time(200.0, 180.0, 60.0)
    (12, 0)
    """
    return max(0, math.floor((working - mixing) / pouring + _SLACK))


def divide(molds: tuple[Mold, ...], bowl: float | None, most: int | None) -> tuple[Mixes, ...]:
    """The least number of even mixes that fill the molds, alike ones together [mixes].

    molds: to fill [molds].
    bowl: mix that the bowl takes, none if any [mL].
    most: pieces that can be poured from one mix, none if any [count].

    Pieces of one mold are spread so that no mix has more than one piece more than another. Pieces of
    several molds are spread by volume. A piece larger than the bowl is mixed in equal parts.

    >>> divide((Mold(10, 300.0),), 1300.0, None)
    (Mixes(count=1, pieces=(4,), parts=1), Mixes(count=2, pieces=(3,), parts=1))
    >>> divide((Mold(1, 300.0),), 200.0, None)
    (Mixes(count=2, pieces=(1,), parts=2),)
    """
    large = [row for row, mold in enumerate(molds) if bowl is not None and mold.volume > bowl * (1 + _SLACK)]
    rest = [row for row in range(len(molds)) if row not in set(large)]
    found = []
    if len(rest) > 1 and sum(molds[row].pieces for row in rest) <= MOST_TOGETHER:
        found += _together(molds, rest, bowl, most)
    else:
        found += [mixes for row in rest for mixes in _alone(molds, row, bowl, most)]
    for row in large:
        parts = math.ceil(molds[row].volume / bowl - _SLACK)
        found.append(Mixes(molds[row].pieces * parts, _only(molds, row, 1), parts))
    return tuple(found)


def number_of(mixes: tuple[Mixes, ...]) -> int:
    """How many mixes there are [count].

    mixes: of each kind [mixes].

    >>> number_of(divide((Mold(10, 300.0),), 1300.0, None))
    3
    """
    return sum(each.count for each in mixes)


def most_in_one_mix(mold: Mold, bowl: float | None, most: int | None) -> int:
    """Pieces of one mold that a mix can fill [count].

    mold: to fill [mold].
    bowl: mix that the bowl takes, none if any; no less than one piece [mL].
    most: pieces that can be poured from one mix, none if any [count].

    >>> most_in_one_mix(Mold(10, 300.0, 6), 1300.0, 5)
    4
    """
    limits = [mold.pieces, most, mold.at_hand, None if bowl is None else math.floor(bowl / mold.volume + _SLACK)]
    return max(1, min(limit for limit in limits if limit is not None))


def _only(molds: tuple[Mold, ...], row: int, pieces: int) -> tuple[int, ...]:
    return tuple(pieces if other == row else 0 for other in range(len(molds)))


def _alone(molds: tuple[Mold, ...], row: int, bowl: float | None, most: int | None) -> list[Mixes]:
    mold = molds[row]
    number = math.ceil(mold.pieces / most_in_one_mix(mold, bowl, most))
    fewer, larger = divmod(mold.pieces, number)
    kinds = [(larger, fewer + 1), (number - larger, fewer)]
    return [Mixes(count, _only(molds, row, pieces)) for count, pieces in kinds if count]


def _together(molds: tuple[Mold, ...], rows: list[int], bowl: float | None, most: int | None) -> list[Mixes]:
    """Several molds: the least number of mixes for which spreading the largest pieces first works out."""
    total = sum(molds[row].pieces for row in rows)
    by_volume = 1 if bowl is None else math.ceil(sum(molds[row].pieces * molds[row].volume for row in rows) / bowl - _SLACK)
    by_hand = max(math.ceil(molds[row].pieces / (molds[row].at_hand or molds[row].pieces)) for row in rows)
    by_time = 1 if most is None else math.ceil(total / max(1, most))
    fewest = min(max(1, by_volume, by_hand, by_time), total)
    tried = (_spread(molds, rows, number, bowl, most) for number in range(fewest, total + 1))
    filled = next(each for each in tried if each is not None)
    return [Mixes(filled.count(pieces), pieces) for pieces in dict.fromkeys(filled)]


def _spread(molds: tuple[Mold, ...], rows: list[int], number: int, bowl: float | None,
            most: int | None) -> list[tuple[int, ...]] | None:
    """Each piece, the largest first, into the mix that is the least full and may take it; nothing where none may."""
    filled = [[0] * len(molds) for _ in range(number)]
    volumes, numbers = [0.0] * number, [0] * number
    room = math.inf if bowl is None else bowl * (1 + _SLACK)
    for row in sorted(rows, key=lambda each: -molds[each].volume):
        mold = molds[row]
        for _ in range(mold.pieces):
            free = [at for at in range(number) if volumes[at] + mold.volume <= room
                    and (mold.at_hand is None or filled[at][row] < mold.at_hand)
                    and (most is None or numbers[at] < max(1, most))]
            if not free:
                return None
            least = min(free, key=lambda at: volumes[at])
            filled[least][row] += 1
            volumes[least] += mold.volume
            numbers[least] += 1
    return [tuple(pieces) for pieces in filled]


def pieces_made(molds: tuple[Mold, ...], volume: float) -> tuple[int, ...]:
    """Pieces of each mold that a volume of mix fills: whole sets first, then pieces in the order of the molds [counts].

    molds: to fill, each with the pieces that are planned [molds].
    volume: of fresh mix there is [mL].

    A set is the smallest share of the plan that holds whole pieces of every mold: 1 cup and 2 lids of 4 cups and 8 lids.

    >>> pieces_made((Mold(4, 300.0), Mold(8, 50.0)), 1000.0)
    (2, 6)
    """
    sets = math.gcd(*(mold.pieces for mold in molds))
    each = [mold.pieces // sets for mold in molds]
    one_set = math.fsum(number * mold.volume for number, mold in zip(each, molds))
    whole = math.floor(volume / one_set + _SLACK)
    rest = volume - whole * one_set
    made = []
    for number, mold in zip(each, molds):
        more = min(number, max(0, math.floor(rest / mold.volume + _SLACK)))
        rest -= more * mold.volume
        made.append(whole * number + more)
    return tuple(made)


def batch_factor(planned: dict[str, float], weighed: dict[str, float]) -> float:
    """How many times the plan a batch must become, once some of it is weighed: nothing can be taken out of a bowl [–].

    planned: weight of each ingredient by the plan, the water among them [g].
    weighed: what some of them really weighed, by the same names [g].

    The largest share of its plan rules, and the rest is topped up. Water alone that came out short is
    topped up to the plan: the powder does not go back into the bag for it.

    >>> batch_factor({"powder": 1000.0, "water": 250.0}, {"powder": 900.0})
    0.9
    >>> batch_factor({"powder": 1000.0, "water": 250.0}, {"water": 240.0})
    1.0
    """
    largest = max(grams / planned[name] for name, grams in weighed.items())
    return max(1.0, largest) if set(weighed) == {"water"} else largest
