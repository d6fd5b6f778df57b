"""The waxes of a pot: the first one, and those blended into it by their shares."""

import math
from dataclasses import dataclass

from brimbook.candle.waxes import WAXES, generic_wax
from brimbook.quantity import show
from brimbook.record.said import Said

# So many waxes besides the first are blended.
MOST_BLENDED = 10
_FIRST = "The first wax"
_LABELS = {*(wax.label for wax in WAXES), _FIRST}


@dataclass(frozen=True)
class WaxPart:
    """One wax of a pot: where it stands in the record, its number and name, and its share of all the wax [–]."""

    path: str
    number: int
    name: str
    share: float

    @property
    def noun(self) -> str:
        """Its name inside a sentence [text]."""
        return self.name.lower() if self.name in _LABELS else self.name


def waxes_of(said: Said, place: str) -> tuple[WaxPart, ...]:
    """The waxes of a pot with their shares; none while a share is faulty or they come to too much [waxes].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    count = said.count(f"{place}.wax.blended")
    if count > MOST_BLENDED:
        _mark(said, f"{blended_path(place, MOST_BLENDED)}.share", f"At most {MOST_BLENDED} waxes are blended into the first. "
              "Remove this one.")
        return ()
    typed = [row for row in range(count) if said.typed(f"{blended_path(place, row)}.share")]
    shares = [said.value(f"{blended_path(place, row)}.share") for row in typed]
    if None in shares:
        return ()
    total = math.fsum(shares)
    if total > 1 + 1e-9:
        told = show.significant(total * 100, 6, said.display)
        _mark(said, f"{blended_path(place, typed[-1])}.share", f"The waxes blended in come to {told} % of all the wax. Together they "
              "are at most 100 %.")
        return ()
    rest = 1 - total
    first = [WaxPart(f"{place}.wax", 1, name_of_wax(said, f"{place}.wax"), rest)] if rest > 1e-9 else []
    return (*first, *(WaxPart(blended_path(place, row), row + 2, name_of_wax(said, blended_path(place, row)), share)
                      for row, share in zip(typed, shares) if share))


def _mark(said: Said, path: str, sentence: str) -> None:
    """Several steps ask for the waxes: what is wrong with them is told once."""
    if not said.fault_at(path):
        said.fault(path, sentence)


def blended_path(place: str, row: int) -> str:
    """Path of one of the waxes blended in [text].

    place: path of the well whose pot it is [text].
    row: its place in the list [count].
    """
    return f"{place}.wax.blended.{row}"


def name_of_wax(said: Said, path: str) -> str:
    """What to call a wax of a pot: the maker's own name for it, else that of its kind [text].

    said: the record as understood [said].
    path: of the wax [text].
    """
    known = generic_wax(said.text(f"{path}.kind"))
    if said.text(f"{path}.name").strip():
        return said.text(f"{path}.name").strip()
    if known is not None and known.density_set is not None:
        return known.label
    return f"Wax {int(path.rpartition('.')[2]) + 2}" if ".blended." in path else _FIRST
