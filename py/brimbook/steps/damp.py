"""How long a cast is kept damp, and so from when on it can dry."""

from brimbook import sources
from brimbook.quantity.moments import DAY
from brimbook.record.said import Said
from brimbook.steps.facts import Fact, fact
from brimbook.steps.mold_heat import mix_of
from brimbook.steps.poured import poured_at

_USUAL = {"portland": Fact(3 * DAY, "3 d", sources.PRACTICE), "gypsum": Fact(0.0, "0 d", sources.PRACTICE),
          "rapid": Fact(DAY, "1 d", sources.MEMORY)}


def damp_stands_in(said: Said, place: str) -> Fact:
    """How long a cast of this powder is kept damp while the maker types nothing else [fact].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    powder = f"{mix_of(said, place)}.powder"
    follows = fact(said, powder, "follows")
    if follows is not None and follows.value == "portland":
        return _USUAL["portland"]
    return _USUAL.get(said.text(f"{powder}.kind"), _USUAL["rapid"])


def kept_damp(said: Said, place: str) -> Fact | None:
    """How long a cast is kept damp from demolding on; nothing where the entry is faulty [fact].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    path = f"{place}.curing.damp"
    if not said.typed(path):
        return damp_stands_in(said, place)
    value = said.value(path)
    return None if value is None else Fact(value, said.canonical[path], sources.YOURS)


def wrapped(said: Said, place: str) -> tuple[float, float] | None:
    """The moments between which a cast is in its mold or kept damp, at the pace of its data sheet [s since 2000].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    poured, damp = poured_at(said, place), kept_damp(said, place)
    needed = fact(said, f"{mix_of(said, place)}.powder", "demold_time")
    return None if None in (poured, damp, needed) else (poured, poured + needed.value + damp.value)
