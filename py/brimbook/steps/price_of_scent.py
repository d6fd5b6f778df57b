"""What one more gram of fragrance costs: in a good candle, and in the price."""

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.show_more import small_money
from brimbook.record.said import Said
from brimbook.sell.price import gram_in_place_of_wax, price_of_gram
from brimbook.steps.cost import PLACE
from brimbook.steps.cost_items import amount_figure, put
from brimbook.steps.densities import density_of
from brimbook.steps.supplies import Supply
from brimbook.steps.weighing import practice_or_yours


def one_more_gram(said: Said, supplies: tuple[Supply, ...], per_cost: tuple[float, str, str] | None) -> list[Figure]:
    """What one more gram of fragrance costs in the first pot whose fragrance has a price [figures].

    said: the record as understood [said].
    supplies: what one vessel takes [supplies].
    per_cost: how much the price rises for each unit of cost, in words, and what it comes from, if known [–, text, text].
    """
    scents = [supply for supply in supplies if supply.role == "fragrance" and _is_priced(supply)]
    failures = said.value(f"{PLACE}.candle_failures")
    if not scents or failures is None:
        return []
    well = _well_of(scents[0])
    gram = _price_of_gram(said, "gram", "A gram of fragrance", [supply for supply in scents if _well_of(supply) == well])
    wax = _wax(said, well, [supply for supply in supplies if supply.role == "wax" and _well_of(supply) == well])
    told = _told(said, well, gram, wax, failures)
    figures = [gram, *([wax] if wax is not None else []), told]
    return figures if per_cost is None else [*figures, _in_price(said, told, per_cost)]


def _is_priced(supply: Supply) -> bool:
    return bool(supply.pack) and supply.price is not None and supply.measure == "mass" and supply.each > 0


def _well_of(supply: Supply) -> str:
    return ".".join(supply.place.split(".")[:2])


def _price_of_gram(said: Said, name: str, label: str, parts: list[Supply]) -> Figure:
    value = price_of_gram(tuple((part.each, part.pack, part.price) for part in parts))
    if len(parts) == 1:
        formula, numbers = "price of a pack ÷ what it holds", f"{put(said, parts[0].price)} ÷ {put(said, parts[0].pack)}"
    else:
        formula = "what is used of each ÷ its pack × its price, together ÷ all that is used"
        costs = " + ".join(f"{put(said, part.each)} ÷ {put(said, part.pack)} × {put(said, part.price)}" for part in parts)
        numbers = f"({costs}) ÷ ({' + '.join(put(said, part.each) for part in parts)})"
    prices = tuple(Constant(part.name, f"{small_money(part.price, said.display)} for {put(said, part.pack)} g", sources.YOURS) for part in parts)
    return amount_figure(said, name, label, value, formula, numbers, constants=prices)


def _wax(said: Said, well: str, waxes: list[Supply]) -> Figure | None:
    """The price of a gram of its wax, where all the waxes of the pot have one."""
    if not waxes or not all(_is_priced(supply) for supply in waxes) or _densities(said, well) is None:
        return None
    return _price_of_gram(said, "gram_of_wax", "A gram of wax", waxes)


def _densities(said: Said, well: str) -> tuple[float, float] | None:
    """Of fragrance and wax, in the state that the line is for."""
    oil, basis = said.value(f"{well}.fragrance.density"), said.value(f"{well}.basis")
    wax = density_of(said, well, basis) if basis is not None else None
    return None if oil is None or wax is None else (oil, wax.value)


def _told(said: Said, well: str, gram: Figure, wax: Figure | None, failures: float) -> Figure:
    densities = _densities(said, well) if wax is not None else None
    oil, density = densities or (1.0, 1.0)
    value = gram_in_place_of_wax(gram.value, wax.value if wax is not None else 0.0, oil, density, failures)
    room = f" − {put(said, wax.value)} × {put(said, density)} ÷ {put(said, oil)}" if wax is not None else ""
    words = " − gram of wax × density of wax ÷ density of fragrance" if wax is not None else ""
    constants = []
    if failures:
        constants.append(practice_or_yours(said, f"{PLACE}.candle_failures", "Fills that fail", show.percent(failures, said.display, 2)))
    if wax is not None:
        constants.append(practice_or_yours(said, f"{well}.fragrance.density", "Density of the fragrance", show.density(oil, said.display)))
    without = "the wax whose room it takes is counted against it" if wax is not None else "the wax whose room it takes is not counted against it"
    formula, numbers = f"gram of fragrance{words}", f"{put(said, gram.value)}{room}"
    if failures:
        formula, numbers = f"({formula}) ÷ (1 − fills that fail)", f"({numbers}) ÷ (1 − {put(said, failures)})"
    return amount_figure(
        said, "gram_of_fragrance", "One more gram of fragrance", value, formula, numbers, uses=(gram.key, *((wax.key,) if wax is not None else ())),
        constants=tuple(constants), says=f"One more gram of fragrance costs {small_money(value, said.display)}: {without}")


def _in_price(said: Said, told: Figure, per_cost: tuple[float, str, str]) -> Figure:
    factor, words, by = per_cost
    value = told.value * factor
    return amount_figure(
        said, "gram_in_price", "In the price", value, f"one more gram of fragrance {words}", f"{put(said, told.value)} × {put(said, factor)}",
        uses=(told.key,), says=f"With the same {by}, one more gram of fragrance adds {small_money(value, said.display)} to the price")
