"""What to buy of one thing for all that is planned: what it takes, what is on hand, which packs, what is left after making."""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display
from brimbook.quantity.show_more import money
from brimbook.sell.packs import Purchase, fewest_money
from brimbook.sources import YOURS, Source

UNITS = {"mass": "g", "volume": "mL", "pieces": "pieces"}
OF_THE_VESSEL = Source("Worked out from what you typed for this vessel", "your entry")
# From so much on a weight is told in kilograms, a volume in liters.
_LARGE = 1000
# What vessels take is summed: its last digits call for nothing to be bought.
_HAIR = 1e-9


@dataclass(frozen=True)
class Pack:
    """A pack of something: what it holds [g, mL or pieces], what it costs [currency] where that is known, and how its size is told."""

    size: float
    price: float | None
    text: str


@dataclass(frozen=True)
class Take:
    """What one planned vessel takes of a thing: so much for each that is begun, of which a share turns out [count, g, mL or pieces, –]."""

    vessel: str
    count: float
    each: float
    turns_out: float

    @property
    def amount(self) -> float:
        """For all of them, with those that fail [g, mL or pieces]."""
        return self.count * self.each / self.turns_out


@dataclass(frozen=True)
class Wanted:
    """A thing that is needed: what takes it, its packs, the usual one first, and what is on hand, where that is counted [g, mL or pieces]."""

    name: str
    role: str
    measure: str
    takes: tuple[Take, ...]
    packs: tuple[Pack, ...] = ()
    stock: float | None = None


@dataclass(frozen=True)
class Bought:
    """What to buy of a thing.

    need, missing: in g, mL or pieces.
    buys: as a text, such as 2 × 1 kg; nothing where enough is on hand.
    cost: of that [currency]; none while no pack has a price.
    left: after making [g, mL or pieces]; none while no pack has a size.
    fault: a sentence on why no packs could be told.
    """

    wanted: Wanted
    need: float
    missing: float
    buys: str
    cost: float | None
    left: float | None
    figures: tuple[Figure, ...]
    fault: str = ""


def told(amount: float, measure: str, display: Display, up: bool = False) -> str:
    """An amount of something that is bought [text].

    amount: 0 or more [g, mL or pieces].
    measure: mass, volume or pieces [text].
    display: how this maker reads figures [display].
    up: is it rounded up, where less would not do [yes or no]?

    >>> told(12400.2, "mass", Display(), up=True), told(820.0, "mass", Display()), told(2.4, "pieces", Display(), up=True)
    ('12.41 kg', '820 g', '3 pieces')
    """
    toward = math.ceil if up else math.floor
    if measure == "pieces":
        whole = toward(round(amount, 6))
        return f"{whole} {'piece' if whole == 1 else 'pieces'}"
    if amount < _LARGE or display.mass != "g":
        if measure == "volume":
            step = 1.0 if amount >= 99.5 else 0.1
            return show.volume(math.ceil(round(amount / step, 6)) * step if up else amount, display)
        return (show.mass_at_least if up else show.mass)(amount, display)
    # Four digits, so that a step is no more than a thousandth of it.
    step = 10.0 ** (math.floor(math.log10(amount)) - 3)
    rounded = (toward if up else round)(round(amount / step, 6)) * step
    return f"{show.trimmed(rounded / 1000, 3, display)} {'kg' if measure == 'mass' else 'L'}"


def bought(wanted: Wanted, place: str, display: Display) -> Bought:
    """What to buy of a thing, with its figures [what to buy].

    wanted: what is needed of it [thing].
    place: that its figures stand below [text].
    display: how this maker reads figures [display].
    """
    return _Told(wanted, place, display).bought()


def to_pay(costs: list[tuple[str, float, str]], display: Display) -> Figure:
    """What all of it costs [figure].

    costs: of each thing its name, its cost and the key of the figure of that, one at least [text, currency, text].
    display: how this maker reads figures [display].
    """
    value = math.fsum(cost for _, cost, _ in costs)
    return Figure(
        "plan.0.to_pay", "To pay", value, display.currency, money(value, display), "what each thing costs, added up",
        " + ".join(show.significant(cost, 10, display) for _, cost, _ in costs), says=f"To pay: {money(value, display)}",
        worked=f"{show.significant(value, 8, display)} {display.currency}", uses=tuple(key for _, _, key in costs))


@lru_cache(maxsize=512)
def _fewest_money(need: float, packs: tuple[tuple[float, float], ...]) -> Purchase:
    """With every digit that is typed all is told anew, and most needs are as they were."""
    return fewest_money(need, packs)


class _Told:
    """One thing's figures, each standing on those before it."""

    def __init__(self, wanted: Wanted, place: str, display: Display) -> None:
        self.wanted, self.place, self.display = wanted, place, display
        self.need = math.fsum(take.amount for take in wanted.takes)
        self.stock = wanted.stock or 0.0
        missing = self.need - self.stock
        self.missing = missing if missing > self.need * _HAIR else 0.0
        self.figures: list[Figure] = []

    def bought(self) -> Bought:
        """All of it [what to buy]."""
        self._needed()
        if not self.missing:
            return self._made("", 0.0, self._left(0.0))
        if self.wanted.stock:
            self._missing()
        if not self.wanted.packs:
            return self._made(told(self.missing, self.wanted.measure, self.display, up=True), None, None)
        return self._in_packs()

    def _made(self, buys: str, cost: float | None, left: float | None, fault: str = "") -> Bought:
        return Bought(self.wanted, self.need, self.missing, buys, cost, left, tuple(self.figures), fault)

    def _in_packs(self) -> Bought:
        """Whole packs: of those with a price the cheapest together; where none has one, of the usual pack."""
        priced = [pack for pack in self.wanted.packs if pack.price is not None]
        packs = priced or [self.wanted.packs[0]]
        try:
            counts = _fewest_money(self.missing, tuple((pack.size, pack.price or 0.0) for pack in packs)).counts
        except QuantityError as error:
            return self._made(told(self.missing, self.wanted.measure, self.display, up=True), None, None, error.sentence)
        taken = [(count, pack) for count, pack in zip(counts, packs) if count]
        holds = self._holds(taken)
        cost = self._costs(taken) if priced else None
        return self._made(self._words(taken), cost, self._left(holds))

    def _words(self, taken: list[tuple[int, Pack]]) -> str:
        return " + ".join(f"{count} × {pack.text}" for count, pack in taken)

    def _needed(self) -> None:
        each = dict.fromkeys(Constant(f"One {take.vessel} takes", self._shown(take.each), OF_THE_VESSEL) for take in self.wanted.takes)
        shares = dict.fromkeys(Constant(f"Turns out, of each {take.vessel} that is begun", show.percent(take.turns_out, self.display, 2), YOURS)
                               for take in self.wanted.takes if take.turns_out != 1)
        words = " ÷ share that turns out" if shares else ""
        self._add("need", f"{self.wanted.name}: needed", self.need, f"vessels to make × what one takes{words}{', added up' * (len(self.wanted.takes) > 1)}",
                  " + ".join(self._term(take) for take in self.wanted.takes), self._shown(self.need, up=True), (), (*each, *shares))

    def _term(self, take: Take) -> str:
        share = f" ÷ {self._put(take.turns_out)}" if take.turns_out != 1 else ""
        return f"{self._put(take.count)} × {self._put(take.each)}{share}"

    def _missing(self) -> None:
        self._add("missing", f"{self.wanted.name}: missing", self.missing, "needed − on hand", f"{self._put(self.need)} − {self._put(self.stock)}",
                  self._shown(self.missing, up=True), ("need",), (self._on_hand(),))

    def _on_hand(self) -> Constant:
        return Constant("On hand", self._shown(self.stock), YOURS)

    def _holds(self, taken: list[tuple[int, Pack]]) -> float:
        """What the packs hold; they are the cheapest that are enough."""
        value = math.fsum(count * pack.size for count, pack in taken)
        words = "the cheapest packs that are enough" if len(self.wanted.packs) > 1 else "whole packs"
        self._add("buy", f"{self.wanted.name}: buy", value, f"packs × what each holds: {words}",
                  " + ".join(f"{count} × {self._put(pack.size)}" for count, pack in taken), self._words(taken),
                  ("missing" if self.wanted.stock else "need",), says=f"Buy {self._words(taken)} of {self.wanted.name}")
        return value

    def _costs(self, taken: list[tuple[int, Pack]]) -> float:
        value = math.fsum(count * pack.price for count, pack in taken)
        figure = Figure(
            f"{self.place}.costs", f"{self.wanted.name}: costs", value, self.display.currency, money(value, self.display), "packs × price of each",
            " + ".join(f"{count} × {self._put(pack.price)}" for count, pack in taken), worked=f"{self._put(value)} {self.display.currency}",
            uses=(f"{self.place}.buy",),
            constants=tuple(Constant(f"A pack of {pack.text}", money(pack.price, self.display), YOURS) for _, pack in taken))
        self.figures.append(figure)
        return value

    def _left(self, holds: float) -> float:
        value = max(self.stock + holds - self.need, 0.0)
        numbers = [self._put(each) for each in (self.stock, holds) if each] or ["0"]
        words = [word for word, each in (("on hand", self.stock), ("bought", holds)) if each]
        self._add("left", f"{self.wanted.name}: left", value, f"{' + '.join(words) or 'on hand'} − needed",
                  f"{' + '.join(numbers)} − {self._put(self.need)}", self._shown(value), ("need", *(("buy",) if holds else ())),
                  (self._on_hand(),) if self.stock else (), says=f"{self._shown(value)} of {self.wanted.name} is left after making")
        return value

    def _add(self, name: str, label: str, value: float, formula: str, numbers: str, shown: str, uses: tuple[str, ...],
             constants: tuple[Constant, ...] = (), says: str = "") -> None:
        unit = UNITS[self.wanted.measure]
        # As finely as the numbers that are put in, of which it may be a small difference.
        decimals = 7 - math.floor(math.log10(max(self.need, self.stock, value, 1.0)))
        self.figures.append(Figure(
            f"{self.place}.{name}", label, value, unit, shown, formula, numbers, says=says, worked=f"{show.trimmed(value, max(decimals, 0), self.display)} {unit}",
            uses=tuple(f"{self.place}.{each}" for each in uses), constants=constants))

    def _shown(self, value: float, up: bool = False) -> str:
        return told(value, self.wanted.measure, self.display, up)

    def _put(self, number: float) -> str:
        return show.significant(number, 10, self.display)
