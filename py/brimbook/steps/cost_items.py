"""What goes into the cost of one vessel, one by one: what is bought, molds, power, work; and what is not known of it."""

import math
from dataclasses import dataclass, field

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.quantity.moments import HOUR, show_duration
from brimbook.record.leaves.selling import LABOR, SELLING
from brimbook.record.said import Said
from brimbook.sell.cost import of_pack, power
from brimbook.steps.supplies import Supply, unmeasured

# Only the first of the list is worked out: a vessel has one cost.
PLACE = "selling.0"
CAST, CANDLE, PACKING = "cast", "candle", "packing"
# Where the work of each step is lost when something fails.
_STEPS = {"casting": CAST, "demolding": CAST, "finishing": CAST, "filling": CANDLE, "packing": PACKING}


@dataclass(frozen=True)
class Item:
    """One thing that a vessel costs: the part it belongs to, the step at which it is lost, and its figure."""

    part: str
    step: str
    figure: Figure

    @property
    def amount(self) -> float:
        """For one vessel that is begun [currency]."""
        return self.figure.value


@dataclass
class Items:
    """All that is known of the cost of one vessel; and by name what lacks a price, what lacks a pack, and what is not known."""

    known: list[Item] = field(default_factory=list)
    no_price: list[str] = field(default_factory=list)
    no_pack: list[str] = field(default_factory=list)
    no_amount: list[str] = field(default_factory=list)


def vessels_stand_in(said: Said) -> str:
    """The text that is taken for the vessels of a batch: as many as are cast [text].

    said: the record as understood [said].
    """
    return said.canonical.get("casts.0.pieces", "1")


def vessels_of(said: Said) -> float | None:
    """The vessels of a batch, or nothing where the entry is faulty [count].

    said: the record as understood [said].
    """
    path = f"{PLACE}.vessels"
    return said.value(path) if said.typed(path) else said.value("casts.0.pieces") or 1.0


def items_of(said: Said, supplies: tuple[Supply, ...], figures: dict[str, Figure], vessels: float) -> Items:
    """What goes into the cost of one vessel that is begun [items].

    said: the record as understood [said].
    supplies: what one vessel takes [supplies].
    figures: worked out so far, by key [figures].
    vessels: of a batch [count].
    """
    items = Items()
    for number, supply in enumerate(supplies, 1):
        _of_supply(said, items, number, supply)
    items.no_amount += [thing.name for thing in unmeasured(said, supplies)]
    for row in range(said.count("casts")):
        _of_mold(said, items, f"casts.{row}.clamping", figures)
    _of_printer(said, items)
    _of_melter(said, items, vessels)
    _of_work(said, items, vessels)
    _of_others(said, items, vessels)
    return items


def put(said: Said, number: float) -> str:
    """A number as it is put into a working [text].

    said: the record as understood [said].
    number: any finite one [any unit].
    """
    return show.significant(number, 10, said.display)


def amount_figure(said: Said, key: str, label: str, value: float, formula: str, numbers: str, *, constants: tuple[Constant, ...] = (),
                  uses: tuple[str, ...] = (), says: str = "", shown: str = "", spread: str = "", notes: tuple[str, ...] = ()) -> Figure:
    """An amount of money with its working [figure].

    said: the record as understood [said].
    key: of the figure below the place of selling [text].
    label: what it is called beside the number [text].
    value: the amount [currency].
    formula: in words [text].
    numbers: the formula with the numbers put in [text].
    constants: it takes from outside the record [constants].
    uses: keys of the figures it stands on [texts].
    says: the sentence that tells it [text].
    shown: as it is shown, where it is rounded to add up with others [text].
    spread: what else belongs to its working [text].
    notes: what the maker should know of it [texts].
    """
    currency = said.display.currency
    return Figure(f"{PLACE}.{key}", label, value, currency, shown or show_more.small_money(value, said.display), formula, numbers,
                  says=says, worked=f"{show.significant(value, 6, said.display)} {currency}", constants=constants, uses=uses,
                  spread=spread, notes=notes)


def told_amount(said: Said, measure: str, amount: float) -> str:
    """An amount of something that is bought [text].

    said: the record as understood [said].
    measure: mass, volume or pieces [text].
    amount: in the base unit of that [g, mL or pieces].
    """
    if measure == "mass":
        return show.mass(amount, said.display)
    if measure == "volume":
        return show.volume(amount, said.display)
    told = show.significant(amount, 4, said.display)
    return f"{told} piece" if amount == 1 else f"{told} pieces"


def _of_supply(said: Said, items: Items, number: int, supply: Supply) -> None:
    """Of what was left out this time, nothing need be known."""
    if supply.each == 0:
        return
    if supply.price is None:
        items.no_price.append(supply.name)
    elif supply.price and supply.pack is None:
        items.no_pack.append(supply.name)
    else:
        items.known.append(Item(supply.part, supply.step, _supply_figure(said, number, supply)))


def _supply_figure(said: Said, number: int, supply: Supply) -> Figure:
    """What is free costs nothing, however large its pack."""
    free = supply.pack is None
    value = 0.0 if free else of_pack(supply.each, supply.pack, supply.price)
    price = Constant("A pack costs", show_more.money(supply.price, said.display), sources.YOURS)
    pack = () if free else (Constant("A pack holds", told_amount(said, supply.measure, supply.pack), sources.YOURS),)
    told = told_amount(said, supply.measure, supply.each)
    shown = show_more.small_money(value, said.display)
    return amount_figure(
        said, f"supply_{number}", supply.name, value, f"{supply.formula} {'' if free else '÷ what a pack holds '}× price of a pack",
        f"{supply.numbers} {'' if free else f'÷ {put(said, supply.pack)} '}× {put(said, supply.price)}",
        constants=(price, *pack), uses=(supply.key,) if supply.key else (), says=f"{supply.name}: {told} for one vessel, {shown}")


def _of_mold(said: Said, items: Items, at: str, figures: dict[str, Figure]) -> None:
    """The print of one mold: its plastic, the printer's wear and its power, each spread over the casts it serves."""
    for name, part in (("cost_per_cast", "mold"), ("wear_per_cast", "mold"), ("power_per_cast", "power")):
        if f"{at}.{name}" in figures:
            items.known.append(Item(part, CAST, figures[f"{at}.{name}"]))
    weighed, priced = said.typed(f"{at}.print_weight") or said.typed(f"{at}.print_volume"), said.typed(f"{at}.spool_price")
    if f"{at}.cost_per_cast" not in figures and (weighed or priced):
        _add(items.no_amount if priced else items.no_price, "Plastic of the mold")


def _of_printer(said: Said, items: Items) -> None:
    """What was typed of the printer and can't be counted yet."""
    timed = any(said.value(f"casts.{row}.clamping.print_time") is not None for row in range(said.count("casts")))
    watts = said.value(f"{PLACE}.printer_power")
    if said.value(f"{PLACE}.printer_hour") and not timed:
        _add(items.no_amount, "Wear of the printer")
    if watts and not timed:
        _add(items.no_amount, "Power of the print")
    if watts and timed and said.value(f"{PLACE}.kilowatt_hour") is None:
        _add(items.no_price, "Power")


def _of_melter(said: Said, items: Items, vessels: float) -> None:
    watts, seconds, price = (said.value(f"{PLACE}.{name}") for name in ("melter_power", "melter_time", "kilowatt_hour"))
    if not said.typed(f"{PLACE}.melter_power") and not said.typed(f"{PLACE}.melter_time"):
        return
    if None in (watts, seconds):
        _add(items.no_amount, "Power of the melter")
    elif price is None:
        _add(items.no_price, "Power")
    else:
        hours = seconds / HOUR
        items.known.append(Item("power", CANDLE, amount_figure(
            said, "melter", "Power of the melter", power(watts, hours, price) / vessels,
            "power drawn × hours ÷ 1000 × price of a kilowatt-hour ÷ vessels in a batch",
            f"{put(said, watts)} × {put(said, hours)} ÷ 1000 × {put(said, price)} ÷ {put(said, vessels)}",
            constants=(Constant("The melter draws", f"{put(said, watts)} W", sources.YOURS),
                       Constant("It runs for", show_duration(seconds, said.display), sources.YOURS),
                       Constant("A kilowatt-hour costs", show_more.small_money(price, said.display), sources.YOURS)))))


def _of_work(said: Said, items: Items, vessels: float) -> None:
    rate = said.value(f"{PLACE}.hour_rate")
    typed = [step for step in LABOR if said.typed(f"{PLACE}.labor.{step}")]
    if rate and not typed:
        _add(items.no_amount, "Your work")
    for step in typed:
        seconds, label = said.value(f"{PLACE}.labor.{step}"), SELLING[f"labor.{step}"].label
        if seconds is None:
            _add(items.no_amount, label)
        elif rate is None and seconds:
            _add(items.no_price, "Your work")
        elif rate is not None:
            items.known.append(Item("work", _STEPS[step], _work_figure(said, step, label, seconds, rate, vessels)))


def _work_figure(said: Said, step: str, label: str, seconds: float, rate: float, vessels: float) -> Figure:
    hours = seconds / HOUR
    return amount_figure(
        said, f"work_{step}", label, hours * rate / vessels, "hours for the batch × an hour of your work ÷ vessels in it",
        f"{put(said, hours)} × {put(said, rate)} ÷ {put(said, vessels)}",
        constants=(Constant(label, show_duration(seconds, said.display), sources.YOURS),
                   Constant("An hour of your work", show_more.money(rate, said.display), sources.YOURS)))


def _of_others(said: Said, items: Items, vessels: float) -> None:
    """Paid once for a batch, whatever comes of it: the good ones bear it, as they bear the casts."""
    amount = said.value(f"{PLACE}.other_costs")
    if amount is not None:
        items.known.append(Item("other", CAST, amount_figure(
            said, "others", "Other costs", amount / vessels, "other costs of a batch ÷ vessels in it",
            f"{put(said, amount)} ÷ {put(said, vessels)}",
            constants=(Constant("Other costs of a batch", show_more.money(amount, said.display), sources.YOURS),))))


def _add(names: list[str], name: str) -> None:
    if name not in names:
        names.append(name)


def total(items: list[Item], step: str = "", part: str = "") -> float:
    """What some of the items come to [currency].

    items: of a vessel's cost [items].
    step: at which they are lost; any if not given [text].
    part: that they belong to; any if not given [text].
    """
    return math.fsum(item.amount for item in items if step in ("", item.step) and part in ("", item.part))
