"""The card of the batches: their lots, what went in, who got what."""

import datetime
from collections import Counter
from collections.abc import Iterable
from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, group
from brimbook.cards.shelf import Shelf, current_lot
from brimbook.figure import Figure
from brimbook.quantity.moments import show_date
from brimbook.record.lots import plain_lot
from brimbook.record.said import Said
from brimbook.steps.batches import MOST_BATCHES, Batch, vessels_told
from brimbook.steps.cost_items import vessels_stand_in
from brimbook.steps.supplies import Supply
from brimbook.work_out import Answer

_MARKED = "Mend the entry that is marked."
_WHY = "A lot tells which powder, wax and scent are in a vessel: with it you can find and call back what one bad lot went into."
_MOST_ROWS = 60
# So many names stand in one sentence.
_MOST_NAMES = 6


def batches_card(answer: Answer, shelf: Shelf) -> dict[str, Any]:
    """The batches of a vessel, the newest on top [card].

    answer: everything worked out [answer].
    shelf: the maker's own materials, whose newest lots a new batch takes [shelf].
    """
    said, batches = answer.said, answer.batches
    figures = {figure.key.removeprefix("batches."): figure for batch in batches for figure in batch.figures}
    newest = batches[-1] if batches else None
    names = tuple(f"{newest.place.removeprefix('batches.')}.{name}" for name in ("made", "left", "all_left")) if newest else ()
    return card(
        "batches.0", "batches", "Batches and lots", "What went in, and who got them?", answer=names, fields=[], more=[], figures=figures,
        waiting=_MARKED if newest and said.is_marked_below(newest.place) else
        "Type how many vessels were made." if newest else "Note a batch and its lots.", notes=_notes(answer),
        groups=tuple(_group(said, batch, batches) for batch in reversed(batches)), actions=(_new(answer, shelf),))


def _notes(answer: Answer) -> tuple[str, ...]:
    said, batches = answer.said, answer.batches
    if not batches:
        return (_WHY,)
    notes = [f"{figure.says}.{_for_the_cost(said, figure)}" for figure in batches[-1].figures if figure.key.endswith(".failing")]
    if not batches[-1].lot:
        notes.append("The newest batch has no lot: type the day it was made on, or a lot of your own.")
    without = _without_lot(said, batches[-1].place)
    if without:
        notes.append(f"The newest batch has no lot yet for: {', '.join(without[:_MOST_NAMES])}"
                     f"{f', and {len(without) - _MOST_NAMES} more' if len(without) > _MOST_NAMES else ''}.")
    lots = Counter(plain_lot(batch.lot) for batch in batches if batch.lot)
    twice = {plain_lot(batch.lot): batch.lot for batch in batches if lots[plain_lot(batch.lot)] > 1}
    notes += [f"More than one batch has the lot {lot}: nobody can tell them apart by it." for lot in twice.values()]
    if answer.said.count("batches") > MOST_BATCHES:
        notes.append(f"The newest {MOST_BATCHES} batches are shown. All are kept.")
    return tuple(notes)


def _for_the_cost(said: Said, failing: Figure) -> str:
    """Where what fails is counted, as long as the cost counts none."""
    told = any(said.typed(f"selling.0.{name}") for name in ("cast_failures", "candle_failures"))
    return " The good ones bear it: type that share on the card of the cost." if failing.value and not told else ""


def _without_lot(said: Said, place: str) -> list[str]:
    """The materials that went into a batch and have no lot there."""
    used = [f"{place}.used.{row}" for row in range(said.count(f"{place}.used"))]
    return [said.text(f"{each}.name").strip() for each in used if said.text(f"{each}.name").strip() and not said.typed(f"{each}.lot")]


def _kept_lots(said: Said, batches: Iterable[Batch]) -> dict[str, str]:
    """What writes down the lots that are made of name and day, once somebody may go by them: a later name must not change them.

    It goes with noting the next batch, and with noting who got some.
    """
    return {f"{batch.place}.lot": batch.lot for batch in batches if batch.lot and not said.typed(f"{batch.place}.lot")}


def _moved_up(said: Said, batches: tuple[Batch, ...], removed: Batch) -> dict[str, str]:
    """The same for the batches of a day of which one before them is removed: their lots are numbered, and they move up in the list."""
    later = [batch for batch in batches if batch.made_on == removed.made_on and _row(batch.place) > _row(removed.place)]
    return {f"batches.{_row(batch.place) - 1}.lot": batch.lot for batch in later if batch.lot and not said.typed(f"{batch.place}.lot")}


def _row(place: str) -> int:
    return int(place.split(".")[1])


def _group(said: Said, batch: Batch, batches: tuple[Batch, ...]) -> dict[str, Any]:
    place, newest = batch.place, batch is batches[-1]
    used, went = (range(min(said.count(f"{place}.{name}"), _MOST_ROWS)) for name in ("used", "went_to"))
    receivers = [ask(said, f"{place}.went_to.{row}.{name}", label) for row in went for name, label in _receiver(row)]
    return group(
        place, batch.lot or "No lot yet", _summary(said, batch),
        [ask(said, f"{place}.made_on"), ask(said, f"{place}.vessels"), ask(said, f"{place}.failed"), ask(said, f"{place}.lot", usual=batch.lot),
         *(field for row in used for field in _used(said, f"{place}.used.{row}")), *receivers],
        more=(ask(said, f"{place}.remarks"),), open=newest and not said.typed(f"{place}.vessels"),
        actions=({"label": "Note who got some", "append": f"{place}.went_to", "value": {"who": "", "vessels": ""}, "today": ["on"],
                  "sets": _kept_lots(said, (batch,))},
                 {"label": "Add another lot that went in", "append": f"{place}.used", "value": {"name": "", "lot": ""}},
                 *({"label": f"Remove the lot of {_name(said, f'{place}.used.{row}', row)}", "remove": f"{place}.used.{row}"} for row in used),
                 *({"label": f"Remove who got some, {row + 1}", "remove": f"{place}.went_to.{row}"} for row in went),
                 {"label": "Remove this batch", "remove": place, "sets": _moved_up(said, batches, batch)}))


def _receiver(row: int) -> tuple[tuple[str, str], ...]:
    return ("who", f"Who got some, {row + 1}"), ("vessels", f"How many they got, {row + 1}"), ("on", f"When, {row + 1}")


def _used(said: Said, place: str) -> list[dict[str, Any]]:
    """The lot of a material that is named; of one that a maker adds, its name too."""
    name = said.text(f"{place}.name").strip()
    known = name and said.text(f"{place}.role").strip()
    asked = [ask(said, f"{place}.lot", f"Lot of {name}" if name else "Its lot")]
    return asked if known else [ask(said, f"{place}.name"), *asked]


def _name(said: Said, place: str, row: int) -> str:
    return said.text(f"{place}.name").strip() or f"material {row + 1}"


def _summary(said: Said, batch: Batch) -> str:
    """The day, how many, and how many are still here, in one short line."""
    if said.is_marked_below(batch.place):
        return _MARKED
    told = [show_date(datetime.date.fromisoformat(batch.made_on))] if batch.made_on else []
    told += [vessels_told(batch.made)] if batch.made is not None else []
    told += [f"{batch.left:.0f} here"] if batch.left is not None and batch.left != batch.made else []
    return " · ".join(told) or "Type when, and how many."


def _new(answer: Answer, shelf: Shelf) -> dict[str, Any]:
    """A new batch starts from what the vessel takes, with the lots that are in use."""
    used = {(supply.role, supply.name.casefold()): {"role": supply.role, "name": supply.name, "lot": _lot(supply, shelf)}
            for supply in answer.supplies if supply.name and supply.each}
    return {"label": "Note a batch", "append": "batches", "today": ["made_on"], "sets": _kept_lots(answer.said, answer.batches),
            "value": {"vessels": vessels_stand_in(answer.said), "used": list(used.values())}}


def _lot(supply: Supply, shelf: Shelf) -> str:
    """That of the shelf, where the maker notes a new one first; else that of the vessel's copy."""
    own = [each for each in shelf.of_role(supply.role) if each["name"].strip().casefold() == supply.name.strip().casefold()]
    return (current_lot(own[0]) if own else "") or supply.lot
