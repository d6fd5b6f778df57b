"""How long a candle burns, as a label may promise it: rounded down, of the well that ends first."""

import math

from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.filling import Filled

_HAIR = 1e-6


def burn_of(said: Said, place: str, fills: dict[str, Filled], figures: dict[str, Figure]) -> Figure | None:
    """The hours that a label tells; none unless every well was burned [figure].

    said: the record as understood [said].
    place: path of the label [text].
    fills: what each well takes, by its path [fills].
    figures: worked out so far, by key [figures].
    """
    if said.value(f"{place}.burn_time") != "yes":
        return None
    tested = [figures.get(f"{well}.burning.hours") for well in fills]
    if not tested or None in tested:
        return None
    shortest = min(tested, key=_sure)
    value = float(math.floor(_sure(shortest) + _HAIR))
    if value < 1:
        return None
    off = _sure(shortest) - value
    put = show.significant
    numbers = " − ".join(put(number, 9, said.display) for number in (shortest.value, shortest.plus_minus or 0.0))
    shown = f"{put(value, 6, said.display)} h"
    off_told = f" − {put(off, 9, said.display)}" if off > 0 else ""
    return Figure(
        f"{place}.burn", "Burn time to print", value, "h", shown, formula="burn time − its ± − what is rounded off",
        numbers=f"{numbers}{off_told}", worked=shown, says=f"It says that it burns about {shown}", uses=(shortest.key,),
        spread="The well that ends first counts, at the low end of its ±." if len(tested) > 1 else "The low end of its ±, rounded down.")


def burn_words(figure: Figure | None) -> str:
    """The burn time as it is printed; nothing where there is none [text].

    figure: of the burn time to print [figure].

    >>> burn_words(None), burn_words(Figure("k", "Burn", 34.0, "h", "34 h", "a", "34"))
    ('', 'Burn time about 34 hours')
    """
    if figure is None:
        return ""
    return f"Burn time about {figure.value:.0f} {'hour' if figure.value == 1 else 'hours'}"


def _sure(figure: Figure) -> float:
    return figure.value - (figure.plus_minus or 0.0)
