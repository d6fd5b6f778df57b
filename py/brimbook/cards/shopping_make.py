"""The card of one planned vessel: how many to make, what they cost, and how many the stock is enough for."""

import math
from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card
from brimbook.cards.shopping_things import Key, Own, key_of
from brimbook.cards.shopping_vessels import Made, Needed, Planned
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.show_more import money
from brimbook.record.said import Said
from brimbook.sources import YOURS
from brimbook.steps.shopping import OF_THE_VESSEL, told

_GONE = "The book has no such vessel any more. Take it off the plan."
_MARKED = "In this vessel an entry is marked. Mend it there: what rests on it is missing here."
# Sums of a stock are off in their last digits: so little too little is enough.
_HAIR = 1e-9


def make_card(said: Said, planned: Planned, own: dict[Key, Own]) -> dict[str, Any]:
    """One vessel of the plan [card].

    said: the plan as understood [said].
    planned: its row [row].
    own: things of the shelf [things].
    """
    path, made = f"{planned.place}.count", planned.made
    figures = _figures(said, planned, own) if made is not None else {}
    is_wrong = bool(said.fault_at(path))
    shown = card("plan.0", f"make-{planned.row + 1}", planned.title, "How many good ones do you want?", answer=tuple(figures), figures=figures,
                 waiting=_GONE if made is None else "Mend the entry that is marked." if is_wrong else "", more=[],
                 fields=[] if made is None else [ask(said, path)], notes=_notes(said, planned, own),
                 actions=({"label": "Take it off the plan", "remove": planned.place},))
    if made is None or is_wrong or planned.count is None:
        return {**shown, "answer": []}
    told_first = {"label": "to make", "shown": show.trimmed(planned.count, 2, said.display), "key": path}
    return {**shown, "answer": [told_first, *shown["answer"][-1:]] if "from_stock" in figures else [told_first]}


def _figures(said: Said, planned: Planned, own: dict[Key, Own]) -> dict[str, Figure]:
    named = {"begin": _begin(said, planned), "cost": _cost(said, planned), "from_stock": _from_stock(said, planned, own)}
    return {name: figure for name, figure in named.items() if figure is not None}


def _put(said: Said, number: float) -> str:
    return show.significant(number, 10, said.display)


def _begin(said: Said, planned: Planned) -> Figure | None:
    """Where some fail, more are begun than are wanted."""
    count, begun = planned.count, planned.made.begun
    if not count or begun == 1:
        return None
    value = count * begun
    shown = f"{math.ceil(round(value, 6))} casts"
    return Figure(
        f"{planned.place}.begin", "Begin with", value, "pieces", shown, "vessels to make ÷ share that turns out",
        f"{_put(said, count)} ÷ {_put(said, 1 / begun)}", worked=f"{show.significant(value, 5, said.display)} pieces",
        says=f"Begin with {shown}, for some fail on average",
        constants=(Constant("Turns out, of all that is cast", show.percent(1 / begun, said.display, 2), YOURS),))


def _cost(said: Said, planned: Planned) -> Figure | None:
    count, each = planned.count, planned.made.cost
    if not count or each is None:
        return None
    value, currency = count * each, said.display.currency
    shown = money(value, said.display)
    return Figure(
        f"{planned.place}.cost", "They cost" if planned.made.complete else "They cost, so far", value, currency, shown,
        "vessels to make × cost of one", f"{_put(said, count)} × {_put(said, each)}", says=f"They cost {shown}",
        worked=f"{show.significant(value, 7, said.display)} {currency}", constants=(Constant("One costs", money(each, said.display), OF_THE_VESSEL),),
        notes=() if planned.made.complete else ("Some of the cost of this vessel is not known yet: see its card of the cost.",))


def _stocked(made: Made, own: dict[Key, Own]) -> list[tuple[str, float, float, str]]:
    """What is counted on the shelf of all that it takes: name, stock, what a good one takes [text, g, mL or pieces], measure."""
    taken: dict[Key, tuple[Needed, float]] = {}
    for need in made.needs:
        key = key_of(need, made)
        taken[key] = (need, taken.get(key, (need, 0.0))[1] + need.each / need.turns_out)
    return [(own[key].name, own[key].stock, each, need.measure) for key, (need, each) in taken.items()
            if key in own and own[key].stock is not None]


def _from_stock(said: Said, planned: Planned, own: dict[Key, Own]) -> Figure | None:
    """How many good ones the stock is enough for, by the thing that runs out first."""
    stocked = _stocked(planned.made, own)
    if not stocked:
        return None
    name, stock, each, measure = min(stocked, key=lambda one: one[1] / one[2])
    value = stock / each
    whole = math.floor(value * (1 + _HAIR))
    shown = f"{whole} {'vessel' if whole == 1 else 'vessels'}"
    return Figure(
        f"{planned.place}.from_stock", "Stock is enough for", value, "pieces", shown, f"{name} on hand ÷ what a good one takes of it",
        f"{_put(said, stock)} ÷ {_put(said, each)}", worked=f"{show.significant(value, 5, said.display)} pieces",
        says=f"Of what is counted on hand, {name} runs out first: enough for {shown}, if nothing else is made of it",
        constants=(Constant(f"{name} on hand", told(stock, measure, said.display), YOURS),
                   Constant("A good one takes, with those that fail", told(each, measure, said.display) if measure != "pieces" else
                            f"{show.significant(each, 4, said.display)} pieces", OF_THE_VESSEL)))


def _notes(said: Said, planned: Planned, own: dict[Key, Own]) -> tuple[str, ...]:
    made = planned.made
    if made is None:
        return (_GONE,)
    notes = [_MARKED] if made.marked else []
    if not made.needs:
        notes.append("It is not known yet what one of these takes: open it, and measure its mold first.")
    stock = _from_stock(said, planned, own)
    return (*notes, f"{stock.says}.") if stock is not None else tuple(notes)
