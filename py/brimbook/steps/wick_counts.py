"""How many wicks are tried and shown, and which places the maker wrote."""

from brimbook.candle.wicks import fit
from brimbook.record.leaves.wicks import MOST_WICKS
from brimbook.record.said import Said
from brimbook.shape.covering import Covering

# So many wicks are tried once one of these is typed.
FIRST_TRIED, _SAID_OF = 4, ("outline.shape", "outline.across", "outline.path", "wicks.count", "wicks.name", "wicks.pool")
# Each search takes its time: wicks are placed in so many wells, and in more than a few of them fewer wicks are tried.
PLACED, FEW_WELLS = 12, 4
# Pools that look the same to 0.1 mm are the same [mm].
SAME = 0.05


def has_places(place: str) -> bool:
    """Is this one of the first wells, in which wicks are placed [yes or no]?

    place: path of the well [text].
    """
    return int(place.rsplit(".", 1)[1]) < PLACED


def most_tried(said: Said) -> int:
    """How many wicks are tried at most [count].

    said: the record as understood [said].
    """
    return FIRST_TRIED if said.count("wells") > FEW_WELLS else MOST_WICKS


def tried(said: Said, place: str) -> int:
    """Up to how many wicks are tried; a single one until the maker has said anything of wicks, for a search takes its time [count].

    said: the record as understood [said].
    place: path of the well [text].
    """
    typed = said.value(f"{place}.wicks.up_to")
    said_of = any(said.typed(f"{place}.{name}") for name in _SAID_OF)
    return min(int(typed), most_tried(said)) if typed is not None else FIRST_TRIED if said_of else 1


def usual_count(said: Said, at: str, best: tuple[Covering, ...]) -> int:
    """How many wicks are shown until the maker says: the fewest whose pools reach, else those that come nearest [count].

    said: the record as understood [said].
    at: path of the wicks [text].
    best: the best layout for each count [coverings].
    """
    pool = said.value(f"{at}.pool")
    if pool is None or not best:
        return len(best[0].points) if best else 1
    reaching = (each for each in best if fit(pool + SAME, 2 * each.radius) >= 1)
    return len((next(reaching, None) or worth(best)[-1]).points)


def worth(best: tuple[Covering, ...]) -> list[Covering]:
    """Without counts that need no smaller pools than fewer wicks do [coverings].

    best: the best layout for each count, fewest first [coverings].
    """
    return [each for place, each in enumerate(best) if all(each.radius < fewer.radius - SAME for fewer in best[:place])]


def typed_places(said: Said, at: str) -> list[int]:
    """The rows of places in which the maker, or a move by hand, wrote something [counts].

    said: the record as understood [said].
    at: path of the wicks [text].
    """
    return [row for row in range(said.count(f"{at}.at")) if any(said.typed(f"{at}.at.{row}.{axis}") for axis in "xy")]


def emptied(said: Said, at: str, kept: int = 0) -> dict[str, str]:
    """What empties the places of wicks that were moved [texts].

    said: the record as understood [said].
    at: path of the wicks [text].
    kept: so many of them stay [count].
    """
    return {f"{at}.at.{row}.{axis}": "" for row in typed_places(said, at) if row >= kept for axis in "xy"}
