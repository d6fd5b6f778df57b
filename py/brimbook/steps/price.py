"""What to ask: retail and wholesale, from margin or markup, and how many to sell to break even."""

import math
from dataclasses import dataclass, replace

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.show_more import money, money_decimals, small_money
from brimbook.record.said import Said
from brimbook.sell import price as arithmetic
from brimbook.steps.cost import PLACE, Costing
from brimbook.steps.cost_items import amount_figure, put
from brimbook.steps.price_of_scent import one_more_gram
from brimbook.steps.supplies import Supply
from brimbook.steps.weighing import practice_or_yours

# The figures of the price by their names below the place of selling, in the order in which they may come.
NAMES = ("least", "exact", "retail", "asked", "left", "margin", "markup", "break_even", "wholesale_exact", "wholesale", "wholesale_left",
         "wholesale_margin", "wholesale_markup", "wholesale_break_even", "shop_price", "gram", "gram_of_wax", "gram_of_fragrance",
         "gram_in_price")
# With less than this left of a price for the cost, no price makes sense.
_LEAST_ROOM = 0.001
# So small a share of the price is nothing that one could live on, and no more than its numbers are rounded by.
_NOTHING = 1e-4
_OUT_OF_PRICE = "Together they must leave some of the price for the cost."


@dataclass(frozen=True)
class Taken:
    """What is taken out of a sale before anything is left: tax and a fee's share of it, and a fee for each."""

    tax: float = 0.0
    fee_share: float = 0.0
    fee_each: float = 0.0

    def texts(self, said: Said) -> tuple[str, str, str]:
        """Each as it is put into a working [texts].

        said: the record as understood [said].
        """
        return put(said, self.tax), put(said, self.fee_share), put(said, self.fee_each)


def pricing(said: Said, costing: Costing, supplies: tuple[Supply, ...]) -> list[Figure]:
    """The prices of a vessel, as far as the entries go [figures].

    said: the record as understood [said].
    costing: what it costs [costing].
    supplies: what one vessel takes, for what one more gram of fragrance costs [supplies].
    """
    taken = [said.value(f"{PLACE}.{name}") for name in ("tax", "fee_share", "fee_each")]
    share = _share(said, "")
    retail = Taken(*taken) if None not in taken else None
    if retail is not None and arithmetic.room(0.0, retail.tax, retail.fee_share) < _LEAST_ROOM:
        said.fault(f"{PLACE}.fee_share", f"Fees of {show.percent(retail.fee_share, said.display, 2)} and a tax of "
                                         f"{show.percent(retail.tax, said.display, 2)} take the whole price. {_OUT_OF_PRICE}")
        retail = None
    figures = [] if retail is None else _Prices(said, costing, retail).retail(share)
    own = next((figure for figure in reversed(figures) if figure.key in (f"{PLACE}.retail", f"{PLACE}.asked")), None)
    if retail is not None:
        figures += _Prices(said, costing, Taken(), "wholesale_").wholesale(_share(said, "wholesale_"), retail.tax, own)
    per_cost = _per_cost(share, retail) if retail is not None else None
    return [*figures, *one_more_gram(said, supplies, per_cost)]


def step_stand_in(said: Said) -> str:
    """The text that is taken for the steps in which prices go, where none is typed; nothing for the usual one [text].

    said: the record as understood [said].
    """
    return "" if money_decimals(said.display) else "10"


@dataclass(frozen=True)
class Share:
    """The share that a price comes from: margin or markup, and how much [–]."""

    by: str
    path: str
    value: float


def _share(said: Said, prefix: str) -> Share | None:
    by = said.value(f"{PLACE}.by")
    path = f"{PLACE}.{prefix}{by}"
    value = said.value(path) if by is not None else None
    return None if value is None else Share(by, path, value)


def _per_cost(share: Share | None, taken: Taken) -> tuple[float, str, str] | None:
    """How much a price rises for each unit of cost, told as a factor, in words and as arithmetic without it."""
    if share is None or arithmetic.room(share.value if share.by == "margin" else 0.0, taken.tax, taken.fee_share) < _LEAST_ROOM:
        return None
    margin, on_top = (share.value, 1.0) if share.by == "margin" else (0.0, 1 + share.value)
    return on_top / arithmetic.room(margin, taken.tax, taken.fee_share), _TO_PRICE[share.by], share.by


_TO_PRICE = {"margin": "÷ ((1 − margin) ÷ (1 + tax) − fees)", "markup": "× (1 + markup) ÷ (1 ÷ (1 + tax) − fees)"}


class _Prices:
    """Prices to one kind of buyer: what is taken out of a sale to them, and how their figures' names begin."""

    def __init__(self, said: Said, costing: Costing, taken: Taken, prefix: str = "") -> None:
        self.said, self.cost, self.complete, self.taken, self.prefix = said, costing.each, costing.complete, taken, prefix
        self.to_shop = " to a shop" if prefix else ""
        # Without tax and fees the workings say nothing of them.
        self.is_plain = taken == Taken()
        self.uses = tuple(figure.key for figure in costing.figures if figure.key == f"{PLACE}.cost")

    def retail(self, share: Share | None) -> list[Figure]:
        """The prices to those who use what they buy, and what the maker's own price leaves [figures].

        share: margin or markup, if there is one [share].
        """
        figures = [self._least(), *self._by(share, "retail", "Ask for it")]
        asked = self.said.value(f"{PLACE}.asked")
        if asked:
            figures.append(amount_figure(self.said, "asked", "You ask now", asked, "as you typed", put(self.said, asked)))
        price = figures[-1] if len(figures) > 1 else None
        return figures if price is None else [*figures, *self._left_of(price)]

    def wholesale(self, share: Share | None, tax: float, own: Figure | None) -> list[Figure]:
        """The price to a shop, what it leaves, and what the shop asks then [figures].

        share: margin or markup, if there is one [share].
        tax: that the shop's price holds [–].
        own: the price that the maker asks of others, if it is known [figure].
        """
        figures = self._by(share, "wholesale", "Ask of a shop")
        if not figures:
            return []
        figures += self._left_of(figures[-1])
        margin = self.said.value(f"{PLACE}.shop_margin")
        return figures if margin is None else [*figures, self._shop_price(figures[1], margin, tax, own)]

    def _constants(self, share_path: str = "") -> tuple[Constant, ...]:
        """What the maker typed of tax and fees, where it is not nothing, and the share that the price comes from."""
        display, told = self.said.display, []
        if share_path:
            name = "Margin" if share_path.endswith("margin") else "Markup"
            told.append((name, show.percent(self.said.value(share_path), display, 2)))
        told += [(name, show.percent(value, display, 2)) for name, value in (("Tax", self.taken.tax), ("Fees", self.taken.fee_share)) if value]
        if self.taken.fee_each:
            told.append(("Fee for each sale", money(self.taken.fee_each, display)))
        return tuple(Constant(*each, sources.YOURS) for each in told)

    def _least(self) -> Figure:
        tax, fees, each = self.taken.texts(self.said)
        notes = () if self.complete else ("Some of the cost is not known yet, so every price here is too low: see what the card of the cost misses.",)
        cost, value = put(self.said, self.cost), arithmetic.by_margin(self.cost, 0.0, self.taken.tax, self.taken.fee_share, self.taken.fee_each)
        formula, numbers = ("what it costs", cost) if self.is_plain else (
            "(cost + fee for each sale) ÷ (1 ÷ (1 + tax) − fees)", f"({cost} + {each}) ÷ (1 ÷ (1 + {tax}) − {fees})")
        return amount_figure(self.said, "least", "Nothing is left at", value, formula, numbers, uses=self.uses, constants=self._constants(),
                             notes=notes)

    def _by(self, share: Share | None, name: str, label: str) -> list[Figure]:
        """The price from margin or markup, exactly and in the maker's steps."""
        step = self._step()
        if share is None or step is None or self._is_impossible(share):
            return []
        taken = (self.taken.tax, self.taken.fee_share, self.taken.fee_each)
        exact = (arithmetic.by_margin if share.by == "margin" else arithmetic.by_markup)(self.cost, share.value, *taken)
        told = amount_figure(self.said, f"{self.prefix}exact", f"Price{self.to_shop} before it is rounded", exact, *self._worked(share), uses=self.uses,
                             constants=self._constants(share.path))
        steps = arithmetic.steps_up(exact, step)
        path, price = f"{PLACE}.price_step", round(steps * step, 9)
        return [told, amount_figure(
            self.said, name, label, price, "the price before it is rounded, up to the next step",
            f"{steps} × {put(self.said, step)}", uses=(told.key,), shown=money(price, self.said.display),
            constants=(practice_or_yours(self.said, path, "Steps of", small_money(step, self.said.display)),))]

    def _worked(self, share: Share) -> tuple[str, str]:
        """The formula of a price and its numbers."""
        cost, value, (tax, fees, each) = put(self.said, self.cost), put(self.said, share.value), self.taken.texts(self.said)
        if self.is_plain and share.by == "margin":
            return "cost ÷ (1 − margin)", f"{cost} ÷ (1 − {value})"
        if self.is_plain:
            return "cost × (1 + markup)", f"{cost} × (1 + {value})"
        if share.by == "margin":
            return ("(cost + fee for each sale) ÷ ((1 − margin) ÷ (1 + tax) − fees)",
                    f"({cost} + {each}) ÷ ((1 − {value}) ÷ (1 + {tax}) − {fees})")
        return ("(cost × (1 + markup) + fee for each sale) ÷ (1 ÷ (1 + tax) − fees)",
                f"({cost} × (1 + {value}) + {each}) ÷ (1 ÷ (1 + {tax}) − {fees})")

    def _step(self) -> float | None:
        path = f"{PLACE}.price_step"
        stand_in = step_stand_in(self.said)
        return float(stand_in) if stand_in and not self.said.typed(path) else self.said.value(path)

    def _is_impossible(self, share: Share) -> bool:
        """Do margin, fees and tax take the whole price? Then it is said at the margin."""
        if share.by == "markup" or arithmetic.room(share.value, self.taken.tax, self.taken.fee_share) >= _LEAST_ROOM:
            return False
        percent = show.percent
        taken = f" and fees of {percent(self.taken.fee_share, self.said.display, 2)}" if self.taken.fee_share else ""
        taken += " of what is paid with tax" if taken and self.taken.tax else ""
        self.said.fault(share.path, f"A margin of {percent(share.value, self.said.display, 2)}{taken} take the whole price. {_OUT_OF_PRICE}")
        return True

    def _left_of(self, price: Figure) -> list[Figure]:
        """What a price leaves: in money, as margin and as markup; and the sales that earn back what is fixed."""
        said, cost, amount = self.said, put(self.said, self.cost), put(self.said, price.value)
        tax, fees, each = self.taken.texts(said)
        left = arithmetic.left_of(price.value, self.cost, self.taken.tax, self.taken.fee_share, self.taken.fee_each)
        before = f"({amount} ÷ (1 + {tax}))" if self.taken.tax else amount
        numbers = f"{amount} − {cost}" if self.is_plain else f"{amount} ÷ (1 + {tax}) − {fees} × {amount} − {each} − {cost}"
        told = amount_figure(said, f"{self.prefix}left", f"Left of one sale{self.to_shop}", left,
                             "price − cost" if self.is_plain else "price ÷ (1 + tax) − fees × price − fee for each sale − cost", numbers,
                             uses=(price.key, *self.uses), constants=self._constants(), shown=money(left, said.display),
                             notes=self._warning(price, left))
        # As finely as the numbers that are put in, of which it may be a small difference.
        told = replace(told, worked=f"{_to(left, 5 - _power(price.value), said)} {said.display.currency}")
        shares = (("margin", "Margin", arithmetic.margin_of(price.value, left, self.taken.tax), "left ÷ price before tax × 100", before),
                  ("markup", "Markup", arithmetic.markup_of(self.cost, left), "left ÷ cost × 100", cost))
        of = {"margin": "of the price before tax", "markup": "on top of the cost"}
        # The working goes on from the same numbers: what is left, rounded, would be a poor start where it is small.
        figures = [told, *(Figure(
            f"{PLACE}.{self.prefix}{name}", f"{label}{self.to_shop}", value, "–", show.percent(value, said.display), formula, f"({numbers}) ÷ {whole} × 100",
            says=f"{show.percent(value, said.display)} {of[name]}", worked=f"{_to(value * 100, 3, said)} %",
            uses=(told.key, price.key) if name == "margin" else (told.key, *self.uses))
            for name, label, value, formula, whole in shares)]
        return [*figures, *(self._break_even(told, numbers) if left > _NOTHING * price.value else [])]

    def _warning(self, price: Figure, left: float) -> tuple[str, ...]:
        """What to say where a price leaves nothing, or less."""
        if left > _NOTHING * price.value:
            return ()
        lost = f"each sale loses {money(-left, self.said.display)}" if left < -_NOTHING * price.value else "nothing is left of a sale"
        so = ", so no number of sales earns back the fixed costs" if self.said.value(f"{PLACE}.fixed") else ""
        return (f"At {price.shown} {lost}{so}.",)

    def _break_even(self, left: Figure, numbers: str) -> list[Figure]:
        said, fixed = self.said, self.said.value(f"{PLACE}.fixed")
        if not fixed:
            return []
        sales = arithmetic.sales_to_earn(fixed, left.value)
        to_shops, shown = " to shops" if self.prefix else "", f"{sales} {'vessel' if sales == 1 else 'vessels'}"
        return [Figure(
            f"{PLACE}.{self.prefix}break_even", f"Sell{to_shops} to break even", fixed / left.value, "pieces", shown,
            "fixed costs ÷ left of one sale, up to the next whole vessel", f"{put(said, fixed)} ÷ ({numbers})",
            says=f"Sell {shown}{to_shops} to earn back {money(fixed, said.display)}: from the next one on it is yours",
            worked=f"{show.significant(fixed / left.value, 5, said.display)} vessels", uses=(left.key,),
            constants=(Constant("Fixed costs", money(fixed, said.display), sources.YOURS),))]

    def _shop_price(self, wholesale: Figure, margin: float, tax: float, own: Figure | None) -> Figure:
        said, path = self.said, f"{PLACE}.shop_margin"
        value, notes = arithmetic.shop_price(wholesale.value, margin, tax), ()
        if own is not None and own.value < value - 0.005:
            notes = (f"Your own price, {own.shown}, is below the shop's, {money(value, said.display)}. A shop that is undersold by its maker "
                     "seldom buys again: ask more yourself, or less of the shop.",)
        constants = [practice_or_yours(said, path, "The shop's margin", show.percent(margin, said.display, 2))]
        if tax:
            constants.append(Constant("Tax", show.percent(tax, said.display, 2), sources.YOURS))
        return amount_figure(
            said, "shop_price", "The shop then asks", value, "wholesale price ÷ (1 − the shop's margin) × (1 + tax)",
            f"{put(said, wholesale.value)} ÷ (1 − {put(said, margin)}) × (1 + {put(said, tax)})", uses=(wholesale.key,), notes=notes,
            shown=money(value, said.display), constants=tuple(constants))


def _power(value: float) -> int:
    """The power of ten of a number's first digit."""
    return math.floor(math.log10(value)) if value > 0 else 0


def _to(value: float, decimals: int, said: Said) -> str:
    """A number to five digits, but never to more decimals than these."""
    finest = 4 - _power(abs(value))
    return show.trimmed(value, min(max(finest, 0), max(decimals, 0)), said.display)
