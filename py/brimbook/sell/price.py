"""What to ask: prices from margin or markup, with fees and tax; what is left of a sale; how many sales earn back fixed costs.

A buyer pays the price, tax and all. Tax is a share of what is left of the price when the tax is taken out. A fee's share
is of all that the buyer pays, tax too, as card fees are. Margin is the share of the price before tax that is left after
tax, fees and cost. Markup is that same amount, told as a share of the cost.

    left = price ÷ (1 + tax) − fee share × price − fee each − cost
    left = margin × price ÷ (1 + tax)
    left = markup × cost
"""

import math

# A step is not skipped for the last digits of a sum.
_HAIR = 1e-9


def room(margin: float = 0.0, tax: float = 0.0, fee_share: float = 0.0) -> float:
    """The share of the price that pays for cost and fixed fees, once tax, the fee's share and the margin are taken out [–].

    margin: share of the price before tax that is to be left [–].
    tax: on top of the price before tax [–].
    fee_share: of all that the buyer pays [–].

    Nothing or less where they take the whole price: no price is high enough then.

    Source: arithmetic identity.

    >>> round(room(0.5, 0.25, 0.1), 9), round(room(0.95, 0.0, 0.1), 9)
    (0.3, -0.05)
    """
    return (1 - margin) / (1 + tax) - fee_share


def by_margin(cost: float, margin: float = 0.0, tax: float = 0.0, fee_share: float = 0.0, fee_each: float = 0.0) -> float:
    """The price of which a margin is left; with a margin of 0, the price at which nothing is left [currency].

    cost: of what is sold [currency].
    margin: share of the price before tax that is to be left [–].
    tax: on top of the price before tax [–].
    fee_share: of all that the buyer pays [–].
    fee_each: for each sale [currency].

    Raises ValueError where margin, fees and tax take the whole price.

    Source: arithmetic identity.

    >>> by_margin(4.0, 0.6)
    10.0
    >>> round(by_margin(4.0, 0.5, 0.2, 0.05, 0.3), 4)
    11.7273
    """
    share = room(margin, tax, fee_share)
    if share <= 0:
        raise ValueError("margin, fees and tax take the whole price")
    return (cost + fee_each) / share


def by_markup(cost: float, markup: float, tax: float = 0.0, fee_share: float = 0.0, fee_each: float = 0.0) -> float:
    """The price of which a markup on the cost is left [currency].

    cost: of what is sold [currency].
    markup: what is to be left, as a share of the cost [–].
    tax: on top of the price before tax [–].
    fee_share: of all that the buyer pays [–].
    fee_each: for each sale [currency].

    Raises ValueError where fees and tax take the whole price.

    Source: arithmetic identity.

    >>> by_markup(4.0, 1.5)
    10.0
    """
    return by_margin(cost * (1 + markup), 0.0, tax, fee_share, fee_each)


def left_of(price: float, cost: float, tax: float = 0.0, fee_share: float = 0.0, fee_each: float = 0.0) -> float:
    """What is left of one sale after tax, fees and cost; below zero for a loss [currency].

    price: that the buyer pays, tax and all [currency].
    cost: of what is sold [currency].
    tax: on top of the price before tax [–].
    fee_share: of all that the buyer pays [–].
    fee_each: for each sale [currency].

    Source: arithmetic identity.

    >>> round(left_of(12.0, 4.0, 0.2, 0.05, 0.3), 9)
    5.1
    """
    return price / (1 + tax) - fee_share * price - fee_each - cost


def margin_of(price: float, left: float, tax: float = 0.0) -> float:
    """What is left of a sale as a share of the price before tax [–].

    price: that the buyer pays, tax and all [currency].
    left: of one sale [currency].
    tax: on top of the price before tax [–].

    Source: definition of the margin.

    >>> margin_of(12.0, 5.0, 0.2)
    0.5
    """
    return left / (price / (1 + tax))


def markup_of(cost: float, left: float) -> float:
    """What is left of a sale as a share of the cost [–].

    cost: of what is sold [currency].
    left: of one sale [currency].

    Source: definition of the markup.

    >>> markup_of(4.0, 6.0)
    1.5
    """
    return left / cost


def shop_price(wholesale: float, margin: float, tax: float = 0.0) -> float:
    """What a shop asks for what it bought [currency].

    wholesale: what it paid, before tax [currency].
    margin: the shop's own, of its price before tax [–].
    tax: on top of the price before tax [–].

    Source: arithmetic identity.

    >>> shop_price(10.0, 0.5, 0.2)
    24.0
    """
    return wholesale / (1 - margin) * (1 + tax)


def steps_up(price: float, step: float) -> int:
    """The whole steps that reach a price: it is rounded up, never down [count].

    price: as worked out [currency].
    step: in which prices go [currency].

    >>> steps_up(9.01, 0.5), steps_up(9.0, 0.5), steps_up(0.1 + 0.2, 0.1)
    (19, 18, 3)
    """
    return math.ceil(price / step * (1 - _HAIR))


def sales_to_earn(fixed: float, left: float) -> int:
    """The sales that earn back what is paid however many are sold [count].

    fixed: what is paid however many are sold [currency].
    left: of one sale [currency].

    Raises ValueError where nothing is left of a sale.

    Source: break-even point, fixed costs ÷ what one sale contributes, rounded up.

    >>> sales_to_earn(100.0, 8.0), sales_to_earn(80.0, 8.0)
    (13, 10)
    """
    if left <= 0:
        raise ValueError("nothing is left of a sale")
    return math.ceil(fixed / left * (1 - _HAIR))


def price_of_gram(parts: tuple[tuple[float, float, float], ...]) -> float:
    """What one gram of something blended costs [currency].

    parts: of each thing in it, the grams used, the grams in a pack, and the price of a pack [g, g, currency].

    Source: weighted mean.

    >>> round(price_of_gram(((3.0, 100.0, 12.0), (1.0, 50.0, 10.0))), 9)
    0.14
    """
    return math.fsum(used / pack * price for used, pack, price in parts) / math.fsum(used for used, _, _ in parts)


def gram_in_place_of_wax(fragrance: float, wax: float, fragrance_density: float, wax_density: float, failures: float = 0.0) -> float:
    """What one more gram of fragrance costs in a good candle, with the wax whose room it takes set against it [currency].

    fragrance: what a gram of it costs [currency].
    wax: what a gram of wax costs; 0 to leave it out [currency].
    fragrance_density: of the fragrance [g/mL].
    wax_density: of the wax in the state that the line is for [g/mL].
    failures: share of the fills that fail [–].

    The line stays: what the gram takes of the room, the wax gives up. Volumes are taken to add up.

    Source: arithmetic identity.

    >>> round(gram_in_place_of_wax(0.15, 0.01, 1.0, 0.9, 0.1), 9)
    0.156666667
    """
    return (fragrance - wax * wax_density / fragrance_density) / (1 - failures)
