"""What goes into cost and price besides materials: work, power, failures, fees, margins. Only the first of the list is worked out."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import MONEY, Choice, Leaf

VESSELS = Bounds(1, 10_000, "A batch makes at least 1 vessel, and at most 10000.")
WORK = Bounds(0.0, 366 * 86400, "Work takes between 0 and a year. Check the digits and the unit.")
POWER = Bounds(0.0, 20_000, "A power is between 0 and 20000 W: a printer draws some 100 W, a small melter 500 to 1500 W.")
FAILS = Bounds(0.0, 0.95, "A share that fails is between 0 and 95 %.")
MARGIN = Bounds(0.0, 0.99, "A margin is a share of the price, between 0 and 99 %. A markup, on top of the cost, may be more.")
MARKUP = Bounds(0.0, 100.0, "A markup is between 0 and 10000 % of the cost.")
FEE = Bounds(0.0, 0.9, "A fee is between 0 and 90 % of the price.")
TAX = Bounds(0.0, 1.0, "A tax on top of the price is between 0 and 100 %.")
STEP = Bounds(0.0001, 1_000_000, "Prices go in steps such as 0.5 or 1: more than 0.")

BY = (
    Choice("margin", "Margin", "A share of the price: at 60 % a cost of 4 sells for 10."),
    Choice("markup", "Markup", "On top of the cost: at 150 % a cost of 4 sells for 10."),
)
LABOR = ("casting", "demolding", "finishing", "filling", "packing")

SELLING = {
    "vessels": Leaf("count", "Vessels in a batch", "", VESSELS, "As many as are begun; those that fail are taken off."),
    "hour_rate": Leaf("money", "An hour of your work", "", MONEY, private=True),
    "labor.casting": Leaf("duration", "Mixing and pouring", "", WORK, "Hands on, for the whole batch."),
    "labor.demolding": Leaf("duration", "Demolding and cleaning up", "", WORK),
    "labor.finishing": Leaf("duration", "Sanding and sealing", "", WORK),
    "labor.filling": Leaf("duration", "Wicks, wax and scent", "", WORK),
    "labor.packing": Leaf("duration", "Labeling and packing", "", WORK),
    "kilowatt_hour": Leaf("money", "A kilowatt-hour costs", "", MONEY, private=True),
    "printer_power": Leaf("number", "The printer draws, in W", "", POWER, "On average while it prints."),
    "melter_power": Leaf("number", "The melter draws, in W", "", POWER),
    "melter_time": Leaf("duration", "The melter runs for", "", WORK, "For the whole batch."),
    "printer_hour": Leaf("money", "An hour of printing wears", "", MONEY, "The printer's price and repairs over the hours it serves.",
                         private=True),
    "cast_failures": Leaf("share", "Casts that fail", "0 %", FAILS, "Of all that are cast: lost before they are filled."),
    "candle_failures": Leaf("share", "Fills that fail", "0 %", FAILS, "Of all that are filled: lost with the vessel."),
    "other_costs": Leaf("money", "Other costs of a batch", "", MONEY, private=True),
    "by": Leaf("choice", "The price comes from", "margin", choices=BY, private=True),
    "margin": Leaf("share", "Margin, of the price", "", MARGIN, private=True),
    "markup": Leaf("share", "Markup, on top of the cost", "", MARKUP, private=True),
    "wholesale_margin": Leaf("share", "Margin when a shop buys", "", MARGIN, private=True),
    "wholesale_markup": Leaf("share", "Markup when a shop buys", "", MARKUP, private=True),
    "shop_margin": Leaf("share", "The shop's own margin", "50 %", MARGIN, "Of the price it asks, before tax.", private=True),
    "fee_share": Leaf("share", "Fees, of the price paid", "0 %", FEE, "Card, market place or commission, of all that the buyer pays, tax too.",
                      private=True),
    "fee_each": Leaf("money", "Fee for each sale", "0", MONEY, private=True),
    "tax": Leaf("share", "Sales tax on top", "0 %", TAX, "VAT or sales tax that the price shown must hold. 0 where it is added at the till."),
    "price_step": Leaf("money", "Prices go in steps of", "0.5", STEP, "A price is rounded up to the next step.", private=True),
    "asked": Leaf("money", "What you ask now", "", MONEY, "Empty: the price worked out.", private=True),
    "fixed": Leaf("money", "Fixed costs to earn back", "", MONEY, "A stall's fee, a course, a mold's design: what is paid however many are sold.",
                  private=True),
}

LEAVES: dict[str, Leaf] = {f"selling.*.{name}": leaf for name, leaf in SELLING.items()}
