"""What the card of the cost asks: packs and prices, packaging, work, power, failures."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import group
from brimbook.cards.shelf import Shelf, supply_field
from brimbook.figure import Figure
from brimbook.record.leaves.selling import LABOR
from brimbook.record.said import Said
from brimbook.steps.cost_items import PLACE, told_amount
from brimbook.steps.supplies import Supply, unmeasured
from brimbook.steps.supply_things import MOST_PACKAGING, Thing, pack_path, things_of

_MARKED = "Mend the entry that is marked."
_POWER = ("kilowatt_hour", "printer_power", "melter_power", "melter_time", "printer_hour")
_FAILURES = ("cast_failures", "candle_failures", "other_costs")


def cost_groups(said: Said, supplies: tuple[Supply, ...], figures: dict[str, Figure], shelf: Shelf) -> tuple[dict[str, Any], ...]:
    """The questions of the card, folded: each thing that is bought, work, power and printer, failures and others [groups].

    said: the record as understood [said].
    supplies: what one vessel takes [supplies].
    figures: of the card, by name [figures].
    shelf: the maker's own materials [shelf].
    """
    told = {supply.place: _told(said, supply, figures.get(f"supply_{number}")) for number, supply in enumerate(supplies, 1)}
    unknown = {thing.place for thing in unmeasured(said, supplies)}
    things = {thing.place: thing for thing in things_of(said)}
    bought = [_bought(said, thing, told.get(place, "How much of it is not known yet."), shelf)
              for place, thing in things.items() if thing.part != "packaging" and (place in told or place in unknown)]
    packed = [_packaging(said, row, told, shelf) for row in range(min(said.count("packaging"), MOST_PACKAGING))]
    return (*bought, *packed, _work(said, figures), _power(said, figures), _failures(said, figures))


def add_packaging(said: Said) -> tuple[dict[str, Any], ...]:
    """The button that adds a row of packaging, while there is room [actions].

    said: the record as understood [said].
    """
    return ({"label": "Add packaging", "append": "packaging", "value": {"each": "1"}},) if said.count("packaging") < MOST_PACKAGING else ()


def _told(said: Said, supply: Supply, cost: Figure | None) -> str:
    """A supply in one short line: how much of it, and what that costs."""
    amount = told_amount(said, supply.measure, supply.each)
    if cost is not None:
        return f"{amount} · {cost.shown}"
    return f"{amount} · {'no price yet' if supply.price is None else 'type what a pack holds'}"


def _bought(said: Said, thing: Thing, told: str, shelf: Shelf) -> dict[str, Any]:
    place = thing.place
    return group(f"{place}.bought", thing.name, _MARKED if _is_marked(said, thing) else told,
                 [supply_field(said, place, shelf, thing.role), ask(said, pack_path(thing)), ask(said, f"{place}.pack_price")], more=(ask(said, f"{place}.lot"),))


def _packaging(said: Said, row: int, told: dict[str, str], shelf: Shelf) -> dict[str, Any]:
    place = f"packaging.{row}"
    title = said.text(f"{place}.name").strip() or f"Packaging {row + 1}"
    summary = _MARKED if said.is_marked_below(place) else told.get(place, "none of it")
    return group(place, title, summary, [supply_field(said, place, shelf, "packaging"), *(ask(said, f"{place}.{name}") for name in ("each", "pack_pieces", "pack_price"))],
                 more=(ask(said, f"{place}.lot"),), actions=({"label": "Remove this packaging", "remove": place},))


def _is_marked(said: Said, thing: Thing) -> bool:
    return any(said.fault_at(path) for path in (pack_path(thing), *(f"{thing.place}.{name}" for name in ("name", "pack_price", "lot"))))


def _summary(said: Said, names: tuple[str, ...], otherwise: str) -> str:
    return _MARKED if any(said.fault_at(f"{PLACE}.{name}") for name in names) else otherwise


def _work(said: Said, figures: dict[str, Figure]) -> dict[str, Any]:
    names = ("hour_rate", *(f"labor.{step}" for step in LABOR))
    told = f"{figures['work'].shown} for one vessel" if "work" in figures else "An hour of it, and the hours for a batch."
    return group(f"{PLACE}.labor", "Your work", _summary(said, names, told), [ask(said, f"{PLACE}.{name}") for name in names])


def _power(said: Said, figures: dict[str, Figure]) -> dict[str, Any]:
    """Power and the printer. How long a mold prints is asked of each that has a print."""
    told = [f"{figures[name].shown} {word}" for name, word in (("power", "power"), ("mold", "mold")) if name in figures]
    prints = [row for row in range(said.count("casts")) if row == 0 or said.typed(f"casts.{row}.clamping.print_time")
              or said.typed(f"casts.{row}.clamping.print_weight") or said.typed(f"casts.{row}.clamping.print_volume")]
    times = [ask(said, f"casts.{row}.clamping.print_time", label="Printing the mold takes" if row == 0 else f"Printing mold {row + 1} takes")
             for row in prints]
    return group(f"{PLACE}.power", "Power and printer", _summary(said, _POWER, " · ".join(told) or "What is drawn, and for how long."),
                 [*(ask(said, f"{PLACE}.{name}") for name in _POWER), *times])


def _failures(said: Said, figures: dict[str, Figure]) -> dict[str, Any]:
    told = [f"{figures[name].shown} {word}" for name, word in (("failures", "for failures"), ("other", "other costs")) if name in figures]
    return group(f"{PLACE}.failures", "Failures and other costs", _summary(said, _FAILURES, " · ".join(told) or "What is lost, and what else is paid."),
                 [ask(said, f"{PLACE}.{name}") for name in _FAILURES])
