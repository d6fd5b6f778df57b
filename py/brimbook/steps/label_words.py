"""The words of a label: in this page's own wording, with the least height of their letters."""

from brimbook.draw.label import CAPITAL, SMALL, Words
from brimbook.record.said import Said
from brimbook.steps.label_net import Net
from brimbook.steps.label_panel import Letters
from brimbook.steps.label_scent import Allergens, is_scented, scents_of

# More lines than this are kept, and no longer printed.
MOST_LINES = 12
# Small letters as high as the European rules for labels of chemicals ask for on a package of up to 0.5 L, from 2028 on, as pages on
# them tell it (second hand); for all other lines that height is taken as common practice, no source [mm].
READABLE = 1.2
# Common practice, no source: capitals of the name, and of the word that warns [mm].
_NAME, _WARNING = 2.5, 2.5
# The triangle: no smaller than EN 15494:2019 has its symbols, as a test house tells it; elsewhere common practice [mm].
ALERT_EU, ALERT_US = 5.0, 4.0
# Free space around a net weight: a height of its letters above and below, and two widths of a bold N, which is 1.06 heights wide.
CLEAR = (1.0, 2.2)
_NEVER_ALONE = ("Stay with it while it burns. Keep it well away from anything that can catch fire. Keep it away from children "
                "and pets.")
_SIZES = {"us": ("1/4 in", "1/2 in"), "eu": ("6 mm", "13 mm"), "both": ("1/4 in (6 mm)", "1/2 in (13 mm)")}
PLAIN, CANDLE, SCENTED = "Cast vessel", "Candle", "Scented candle"


def usual_product(said: Said, candle: bool) -> str:
    """What the thing is called while nothing is typed [text].

    said: the record as understood [said].
    candle: does the vessel hold wax [yes or no]?
    """
    if not candle:
        return PLAIN
    return SCENTED if is_scented(said) else CANDLE


def front_words(said: Said, place: str, net: Net, letters: Letters) -> list[Words]:
    """What the front says: product, scent, lines, maker, net weight [words].

    said: the record as understood [said].
    place: path of the label [text].
    net: weight that it tells [net].
    letters: how high that is printed [letters].
    """
    candle = bool(net.grams)
    typed = _typed(said, f"{place}.product")
    found = [Words("product", typed or usual_product(said, candle), _NAME, CAPITAL, bold=True)]
    scent = scents_of(said, place) if candle else ""
    if scent:
        found.append(_line("scent", f"Scent: {scent}"))
    lines = [_typed(said, f"{place}.lines.{row}.text") for row in range(min(said.count(f"{place}.lines"), MOST_LINES))]
    found += [_line("line", line) for line in lines if line]
    maker = _typed(said, f"{place}.maker")
    if maker:
        found.append(_line("maker", maker))
    return [*found, _net(said, place, net, letters)] if candle else found


def _net(said: Said, place: str, net: Net, letters: Letters) -> Words:
    imperial = said.value(f"{place}.market") != "eu"
    text = f"Net Wt {net.statement}" if imperial else net.statement
    return Words("net", text, letters.least, letters.measured, bold=imperial, clear=CLEAR if imperial else (0.0, 0.0), low=letters.low)


def back_words(said: Said, place: str, candle: bool, allergens: Allergens, burn: str, lot: str) -> list[Words]:
    """What the back says: cautions, what some are allergic to, burn time, lot [words].

    said: the record as understood [said].
    place: path of the label [text].
    candle: does the vessel hold wax [yes or no]?
    allergens: that the label names [allergens].
    burn: how long it burns, in words; empty where that is not known [text].
    lot: of the batch [text].
    """
    market, found = said.value(f"{place}.market"), []
    if candle and said.value(f"{place}.cautions") == "yes":
        found += [Words("warning", "WARNING", _WARNING, CAPITAL, bold=True, side="back"), _line("caution", _NEVER_ALONE, "back"),
                  _line("caution", _rules(market), "back")]
    if candle and market != "us" and allergens.all:
        found.append(_line("caution", _contains(allergens), "back"))
    if burn:
        found.append(_line("burn_time", burn, "back"))
    return [*found, _line("lot", f"Lot {lot}", "back")] if lot else found


def _contains(allergens: Allergens) -> str:
    """The sentence of EUH208; where a substance classifies the candle, another one takes its place, and names alone are told."""
    names = f"Contains {', '.join(allergens.all)}."
    return names if allergens.classify else f"{names} May produce an allergic reaction."


def _rules(market: str) -> str:
    trim, rest = _SIZES[market]
    return (f"Trim the wick to {trim} before each lighting. Burn it at most 4 hours at a time. Stop when {rest} of wax is left. Set it level "
            "on something that stands heat. Never put it out with water.")


def _line(name: str, text: str, side: str = "front") -> Words:
    return Words(name, text, READABLE, SMALL, side=side)


def _typed(said: Said, path: str) -> str:
    """A text that can be printed: one that is too long is a fault beside its field."""
    value = said.value(path)
    return " ".join(value.split()) if isinstance(value, str) else ""
