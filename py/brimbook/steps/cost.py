"""What a vessel costs: materials, mold, power, work, packaging, and what fails."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.record.said import Said
from brimbook.sell.cost import failing, rounded_to_add_up, turn_out
from brimbook.steps.cost_items import CANDLE, CAST, PACKING, PLACE, Item, Items, amount_figure, items_of, put, total, vessels_of
from brimbook.steps.supplies import Supply

__all__ = ["PLACE", "Costing", "Part", "costing"]

# The parts of a cost in the order of the job, and what each is called.
PARTS = {"cast": "Cast", "finish": "Sealer and paint", "wax": "Wax", "fragrance": "Fragrance", "dye": "Dye", "wicks": "Wicks",
         "packaging": "Packaging", "mold": "Mold", "power": "Power", "work": "Your work", "other": "Other costs", "failures": "Failures"}
_MATERIALS = ("cast", "finish", "wax", "fragrance", "dye", "wicks", "packaging")
_STAGES = {CAST: ("to_cast", "Spent before it is filled"), CANDLE: ("to_fill", "Spent on filling it"),
           PACKING: ("to_pack", "Spent on packing it")}
# So many names stand in one sentence.
_MOST_NAMES = 6


@dataclass(frozen=True)
class Part:
    """One part of the cost of a good vessel, in the maker's currency; shown is rounded so that the parts shown add up.

    share: of the whole, in whole percents that add up to 100 [%].
    """

    name: str
    amount: float
    shown: str
    key: str
    share: int = 0


@dataclass(frozen=True)
class Costing:
    """What one good vessel costs, with its parts; and what a batch costs, of so many good vessels [currency, count].

    complete: is every price known, and every amount?
    """

    each: float
    batch: float
    vessels: float
    parts: tuple[Part, ...]
    figures: tuple[Figure, ...]
    complete: bool = True


def costing(said: Said, supplies: tuple[Supply, ...], figures: dict[str, Figure]) -> Costing | None:
    """The cost of a vessel; none while no price at all is known [costing].

    said: the record as understood [said].
    supplies: what one vessel takes [supplies].
    figures: worked out so far, by key [figures].
    """
    vessels = vessels_of(said)
    failures = tuple(said.value(f"{PLACE}.{name}") for name in ("cast_failures", "candle_failures"))
    if vessels is None or None in failures:
        return None
    items = items_of(said, supplies, figures, vessels)
    return _Told(said, items, vessels, *failures).costing() if total(items.known) > 0 else None


def lacking(items: Items) -> tuple[str, ...]:
    """What is not counted, in sentences [texts].

    items: of a vessel's cost [items].
    """
    told = (("No price yet for", items.no_price), ("Type what a pack holds of", items.no_pack),
            ("Not counted, as how much of it is not known yet", items.no_amount))
    return tuple(f"{words}: {_names(names)}." for words, names in told if names)


def _names(names: list[str]) -> str:
    names = list(dict.fromkeys(names))
    rest = len(names) - _MOST_NAMES
    return "; ".join(names[:_MOST_NAMES]) + (f"; and {rest} more" if rest > 0 else "")


class _Told:
    """The cost as figures."""

    def __init__(self, said: Said, items: Items, vessels: float, cast_failures: float, candle_failures: float) -> None:
        self.said, self.items, self.vessels, self.known = said, items, vessels, items.known
        self.cast_failures, self.candle_failures = cast_failures, candle_failures
        self.complete = not (items.no_price or items.no_pack or items.no_amount)
        amounts = {part: total(self.known, part=part) for part in PARTS if any(item.part == part for item in self.known)}
        if cast_failures or candle_failures:
            amounts["failures"] = failing(total(self.known, CAST), total(self.known, CANDLE), cast_failures, candle_failures)
        self.amounts, self.each = amounts, math.fsum(amounts.values())

    def costing(self) -> Costing:
        """All of it [costing]."""
        decimals = show_more.money_decimals(self.said.display)
        rounded = rounded_to_add_up(list(self.amounts.values()), decimals)
        shares = rounded_to_add_up([amount / self.each * 100 for amount in self.amounts.values()], 0)
        parts = tuple(Part(PARTS[name], amount, show_more.money(shown, self.said.display), f"{PLACE}.{name}", int(share))
                      for (name, amount), shown, share in zip(self.amounts.items(), rounded, shares))
        own = [item.figure for item in self.known if item.figure.key.startswith(f"{PLACE}.")]
        told = [*own, *self._parts(parts), self._cost()]
        told += [*self._materials(), *self._without_work(), self._batch()]
        good = self.vessels * self._turn_out()
        return Costing(self.each, self.each * good, good, parts, tuple(told), self.complete)

    def _turn_out(self) -> float:
        return turn_out(self.cast_failures, self.candle_failures)

    def _parts(self, parts: tuple[Part, ...]) -> list[Figure]:
        figures = []
        for part in parts:
            name = part.key.removeprefix(f"{PLACE}.")
            if name == "failures":
                figures += [*self._stages(), self._failures(part)]
                continue
            items = [item for item in self.known if item.part == name]
            figures.append(amount_figure(
                self.said, name, part.name, part.amount, " + ".join(item.figure.label for item in items) if len(items) < 6
                else "all of it, added up", self._added([item.amount for item in items]), uses=tuple(item.figure.key for item in items),
                shown=part.shown, spread=self._share_told(part)))
        return figures

    def _share_told(self, part: Part) -> str:
        put = show.significant
        return (f"{part.share} % of the cost of one vessel: {put(part.amount, 5, self.said.display)} ÷ {put(self.each, 5, self.said.display)}. "
                "Parts are rounded so that they add up.")

    def _added(self, amounts: list[float]) -> str:
        return " + ".join(put(self.said, amount) for amount in amounts)

    def _stages(self) -> list[Figure]:
        """What is spent on one vessel up to where it may fail, whatever part it belongs to."""
        figures = []
        for step, (key, label) in _STAGES.items():
            items = [item for item in self.known if item.step == step]
            if items and step != PACKING:
                figures.append(amount_figure(
                    self.said, key, label, total(items), "everything that is lost when it fails there, for one that is begun",
                    self._added([item.amount for item in items]), uses=tuple(item.figure.key for item in items)))
        return figures

    def _failures(self, part: Part) -> Figure:
        cast, candle = total(self.known, CAST), total(self.known, CANDLE)
        first, second = (put(self.said, share) for share in (self.cast_failures, self.candle_failures))
        shares = [Constant(name, show.percent(share, self.said.display), sources.YOURS) for name, share in (
            ("Casts that fail", self.cast_failures), ("Fills that fail", self.candle_failures)) if share]
        return amount_figure(
            self.said, "failures", part.name, part.amount,
            "spent before it is filled × (1 ÷ ((1 − casts that fail) × (1 − fills that fail)) − 1) + spent on filling it × "
            "(1 ÷ (1 − fills that fail) − 1)",
            f"{put(self.said, cast)} × (1 ÷ ((1 − {first}) × (1 − {second})) − 1) + {put(self.said, candle)} × (1 ÷ (1 − {second}) − 1)",
            constants=(*shares, Constant("Casts and fills for a good one", "1 ÷ the share that turns out", sources.IDENTITY)),
            uses=tuple(f"{PLACE}.{key}" for step, (key, _) in _STAGES.items()
                       if step != PACKING and any(item.step == step for item in self.known)),
            says=f"Each good vessel bears {part.shown} for those that fail", shown=part.shown, spread=self._share_told(part))

    def _cost(self) -> Figure:
        shown = show_more.money(self.each, self.said.display)
        says = f"One vessel costs {shown}" if self.complete else f"What is known so far comes to {shown} for one vessel"
        return amount_figure(
            self.said, "cost", "One vessel" if self.complete else "One vessel, so far", self.each, "all its parts, added up",
            self._added(list(self.amounts.values())), uses=tuple(f"{PLACE}.{name}" for name in self.amounts), says=says, shown=shown,
            notes=lacking(self.items))

    def _materials(self) -> list[Figure]:
        bought = {name: amount for name, amount in self.amounts.items() if name in _MATERIALS}
        if not bought:
            return []
        value = math.fsum(bought.values())
        return [amount_figure(
            self.said, "materials", "Materials in it", value, "everything that is bought for one vessel, added up",
            self._added(list(bought.values())), uses=tuple(f"{PLACE}.{name}" for name in bought))]

    def _without_work(self) -> list[Figure]:
        """What is paid out for a good vessel: its cost without the maker's own hours."""
        rest = [item for item in self.known if item.part != "work"]
        if not rest or len(rest) == len(self.known):
            return []
        cast, candle, packing = (total(rest, step) for step in (CAST, CANDLE, PACKING))
        first, second = (put(self.said, share) for share in (self.cast_failures, self.candle_failures))
        value = cast / self._turn_out() + candle / (1 - self.candle_failures) + packing
        return [amount_figure(
            self.said, "without_work", "Without your work", value,
            "all but your work: before filling ÷ ((1 − casts that fail) × (1 − fills that fail)) + filling ÷ (1 − fills that fail) + packing",
            f"{put(self.said, cast)} ÷ ((1 − {first}) × (1 − {second})) + {put(self.said, candle)} ÷ (1 − {second}) + {put(self.said, packing)}",
            uses=tuple(dict.fromkeys(item.figure.key for item in rest)), says=f"Without your work it costs "
            f"{show_more.money(value, self.said.display)}")]

    def _batch(self) -> Figure:
        good, begun = self.vessels * self._turn_out(), put(self.said, self.vessels)
        value, failed = self.each * good, self.cast_failures or self.candle_failures
        fails = f" × (1 − {put(self.said, self.cast_failures)}) × (1 − {put(self.said, self.candle_failures)})" if failed else ""
        words = " × (1 − casts that fail) × (1 − fills that fail)" if failed else ""
        told = f"{begun} vessel{'' if self.vessels == 1 else 's'}"
        told += f", of which {show.significant(good, 3, self.said.display)} turn out on average," if failed else ""
        shown = show_more.money(value, self.said.display)
        return amount_figure(
            self.said, "batch_cost", f"A batch of {begun}", value, f"cost of one vessel × vessels in a batch{words}",
            f"{put(self.said, self.each)} × {begun}{fails}", uses=(f"{PLACE}.cost",), shown=shown,
            says=f"A batch of {told} costs {shown}",
            constants=(Constant("Vessels in a batch", begun, sources.YOURS),))
