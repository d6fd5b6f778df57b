"""The card of the pot: what is melted at once for several wells and vessels."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.pot import pieces_stand_in
from brimbook.work_out import Answer, has_own_pot, places

_MARKED = "Mend the entry that is marked."
_KEEP_HOT = "Keep it hot under a lid in the water bath, or melt it again."
_POURS = ("first_pour", "second_pour", "third_pour")
# Pours of so many wells are told one by one.
_MOST_WELLS = 12


def pot_card(answer: Answer, place: str) -> dict[str, Any]:
    """How much is melted at once, and what each well takes of it [card].

    answer: everything worked out [answer].
    place: path of the well whose pot it is [text].
    """
    said, at, figures = answer.said, f"{place}.batch", figures_below(answer, f"{place}.batch")
    return card(
        place, "pot", "Pot", "How much is melted at once?", answer=("wax", "fragrance"), closed=("pot",),
        waiting=_MARKED if said.is_marked_below(at) else "Once the wax is known.", figures=figures,
        fields=[ask(said, f"{at}.pieces", usual=pieces_stand_in(said)), ask(said, f"{at}.melted")],
        more=[ask(said, f"{at}.left")], groups=(_size(said, at, figures),), notes=_notes(answer, place, figures))


def _size(said: Said, at: str, figures: dict[str, Figure]) -> dict[str, Any]:
    marked = any(said.fault_at(f"{at}.{name}") for name in ("capacity", "fill_to"))
    told = f"{figures['size'].says}." if "size" in figures else "How large it must be."
    return group(f"{at}.size", "Size of the pot", _MARKED if marked else told, [ask(said, f"{at}.capacity"), ask(said, f"{at}.fill_to")])


def _notes(answer: Answer, place: str, figures: dict[str, Figure]) -> tuple[str, ...]:
    over = [f"{figures[name].says}." for name in ("fills", "over", "more_wax") if name in figures]
    kept = [f"{figures['kept_back'].says}. {_KEEP_HOT}"] if "kept_back" in figures else []
    return (*over, *_by_well(answer, place), *kept) if figures else ()


def _by_well(answer: Answer, place: str) -> list[str]:
    """What goes into each well, first and later, where that is not all of the pot."""
    said, potful = answer.said, answer.potfuls.get(place)
    wells = [well for well in places(said, "wells")
             if well in answer.fills and (well == place or (place == "wells.0" and not has_own_pot(said, well)))]
    vessels = 0 if potful is None else potful.vessels
    if not vessels or (vessels == 1 and len(wells) == 1):
        return []
    each = f" in each of {show.significant(vessels, 6, said.display)} vessels" if vessels > 1 else ""
    return [f"{_name(well, len(wells))}{_poured(answer, well)}{each}." for well in wells[:_MOST_WELLS]]


def _name(well: str, count: int) -> str:
    return "" if count == 1 else f"Well {int(well.split('.')[1]) + 1}: "


def _poured(answer: Answer, well: str) -> str:
    pours = [answer.figures[f"{well}.{name}"].shown for name in _POURS if f"{well}.{name}" in answer.figures]
    if not pours:
        return f"{answer.figures[f'{well}.pot'].shown}"
    return f"{pours[0]} first, then {' and '.join(pours[1:])}"
