"""What weighed candles say of the net weight on a label, by the rules of its market."""

from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.sell import label_rules, prepackage
from brimbook.sell.net_quantity import average
from brimbook.steps.label_net import Net

# Fewer say little of a batch (common practice, no source).
_ENOUGH = 5
_SHORT = ("How far short a single one may be goes, in the United States, by a table of NIST Handbook 133 that is not in here: aim for none "
          "below the label.")
_HAIR = 1e-6


def limits_of(said: Said, place: str, net: Net) -> list[Figure]:
    """How much may be missing of one candle by the average system, where its label is one for it [figures].

    said: the record as understood [said].
    place: path of the label [text].
    net: weight that it tells [net].
    """
    if said.value(f"{place}.market") == "us" or not prepackage.covered(net.grams):
        return []
    error = _error(said, place, net.grams)
    return [error, *(_limit(said, place, net.grams, error, errors) for errors in (1, 2))]


def _put(said: Said, number: float) -> str:
    return show.significant(number, 8, said.display)


def _error(said: Said, place: str, grams: float) -> Figure:
    value, share = prepackage.tolerable_error(grams), prepackage.share_of_nominal(grams)
    numbers, formula = _put(said, value), "by the nominal quantity"
    if share is not None:
        off = value - prepackage.exact_error(grams)
        numbers, formula = f"{_put(said, grams)} × {_put(said, share)} + {_put(said, off)}", "share of the nominal quantity + what is rounded up"
    told = show.percent(share, said.display) if share is not None else f"{_put(said, value)} g"
    return Figure(
        f"{place}.error", "Tolerable error of one", value, "g", show.small_mass(value, said.display, 3), formula=formula,
        numbers=numbers, worked=f"{_put(said, value)} g",
        constants=(Constant("By the nominal quantity", told, label_rules.EU_ERROR),
                   Constant("Rounded up to", f"{_put(said, 0.1)} g", label_rules.EU_ROUNDING)), uses=(f"{place}.net",))


def _limit(said: Said, place: str, grams: float, error: Figure, errors: int) -> Figure:
    value = prepackage.lower_limit(grams, errors)
    times = "" if errors == 1 else "2 × "
    label = "Few may be below" if errors == 1 else "None may be below"
    return Figure(
        f"{place}.limit_{errors}", label, value, "g", show.small_mass(value, said.display, 4),
        formula=f"nominal quantity − {times}tolerable error", numbers=f"{_put(said, grams)} − {times}{_put(said, error.value)}",
        worked=f"{_put(said, value)} g", constants=(Constant("Average system", "three rules", label_rules.EU_RULES),),
        uses=(f"{place}.net", error.key))


def verdicts_of(said: Said, place: str, net: Net) -> tuple[str, ...]:
    """What the weighed candles say of the label, in sentences [texts].

    said: the record as understood [said].
    place: path of the label [text].
    net: weight that it tells, and what was weighed [net].
    """
    if not net.weights or not net.grams:
        return ()
    market, found = said.value(f"{place}.market"), [_average(said, net)]
    if market != "us" and prepackage.covered(net.grams):
        found += _one_by_one(said, net)
    if market != "eu":
        found += [*_lighter(said, net), _SHORT]
    if len(net.weights) < _ENOUGH:
        found.append(f"{len(net.weights)} weighed {'says' if len(net.weights) == 1 else 'say'} little of a batch: weigh {_ENOUGH} or more, "
                     "from its start, its middle and its end.")
    return tuple(found)


def _told(said: Said, grams: float) -> str:
    return show.small_mass(grams, said.display, 4)


def _average(said: Said, net: Net) -> str:
    mean = average(net.weights)
    if mean >= net.grams * (1 - _HAIR):
        return f"On average they hold {_told(said, mean)}, not less than the label says."
    return f"On average they hold {_told(said, mean)}, less than the label says: print less, or fill more."


def _lighter(said: Said, net: Net) -> list[str]:
    lighter = prepackage.below(net.weights, net.grams)
    return [f"{lighter} of {len(net.weights)} {'is' if lighter == 1 else 'are'} lighter than the label says."] if lighter else []


def _one_by_one(said: Said, net: Net) -> list[str]:
    """Each candle beside the two limits of the average system."""
    first, second = (prepackage.lower_limit(net.grams, errors) for errors in (1, 2))
    few, none, count = prepackage.below(net.weights, first), prepackage.below(net.weights, second), len(net.weights)
    if none:
        return [f"{none} of {count} {'is' if none == 1 else 'are'} below {_told(said, second)}: not one such may be sold under the mark ℮."]
    if few > prepackage.FEW * count:
        share = show.percent(prepackage.FEW, said.display)
        return [f"{few} of {count} {'is' if few == 1 else 'are'} below {_told(said, first)}: of a batch about {share} may be."]
    if few:
        return [f"{few} of {count} {'is' if few == 1 else 'are'} below {_told(said, first)}, none below {_told(said, second)}."]
    return [f"None is below {_told(said, first)}."]
