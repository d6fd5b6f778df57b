"""The printed mold: its plastic, its filament, and what it costs a cast."""

from brimbook import sources
from brimbook.cast import plastic
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.quantity.moments import HOUR, show_duration
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.sell.cost import power
from brimbook.steps.facts import Fact
from brimbook.steps.plastic_facts import fact_constant, plastic_fact
from brimbook.steps.weighing import practice_or_yours


def print_cost(said: Said, at: str) -> list[Figure]:
    """The figures of the print, as far as the entries go [figures].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    """
    density = plastic_fact(said, at, "plastic_density")
    by_volume = not said.typed(f"{at}.print_weight")
    weighed = _weight(said, at, density) if by_volume else None
    grams = said.value(f"{at}.print_weight") if not by_volume else weighed.value if weighed else None
    if grams is None:
        return _by_time(said, at)
    figures = [weighed] if weighed else []
    uses = tuple(figure.key for figure in figures)
    return [*figures, *_filament(said, at, grams, density, uses), *_cost(said, at, grams, uses), *_by_time(said, at)]


def _weight(said: Said, at: str, density: Fact | None) -> Figure | None:
    volume = said.value(f"{at}.print_volume")
    if volume is None or density is None:
        return None
    told, value = show.significant, plastic.weight(volume, density.value)
    return Figure(
        f"{at}.print", "Printed mold weighs", value, "g", show.mass(value, said.display), formula="volume × density",
        numbers=f"{told(volume, 8, said.display)} × {told(density.value, 8, said.display)}",
        worked=f"{told(value, 5, said.display)} g", constants=(fact_constant(said, "Density of the plastic", density),))


def _filament(said: Said, at: str, grams: float, density: Fact | None, uses: tuple[str, ...]) -> list[Figure]:
    diameter = said.value(f"{at}.filament")
    if density is None or diameter is None:
        return []
    told, value = show.significant, plastic.filament_length(grams, density.value, diameter)
    shown = f"{told(value, 3, said.display)} m"
    if said.display.length == "in":
        shown = f"{told(from_base(value * 1000, 'ft'), 3, said.display)} ft"
    return [Figure(
        f"{at}.filament", "Filament in it", value, "m", shown, formula="weight ÷ density ÷ (π ÷ 4 × diameter²)",
        numbers=f"{told(grams, 8, said.display)} ÷ {told(density.value, 8, said.display)} ÷ "
                f"(π ÷ 4 × {told(diameter, 8, said.display)}²)", worked=f"{told(value, 5, said.display)} m", uses=uses,
        constants=(fact_constant(said, "Density of the plastic", density),
                   practice_or_yours(said, f"{at}.filament", "Filament", f"{told(diameter, 4, said.display)} mm")))]


def _cost(said: Said, at: str, grams: float, uses: tuple[str, ...]) -> list[Figure]:
    price, spool, casts = (said.value(f"{at}.{name}") for name in ("spool_price", "spool_weight", "lasts"))
    if None in (price, spool, casts):
        return []
    told, display, value = show.significant, said.display, plastic.cost(grams, price, spool)
    spool_told = practice_or_yours(said, f"{at}.spool_weight", "Plastic on a spool", show.mass(spool, display))
    whole = Figure(
        f"{at}.print_cost", "Plastic for the mold", value, display.currency, show_more.money(value, display),
        formula="weight ÷ plastic on a spool × price of a spool",
        numbers=f"{told(grams, 10, display)} ÷ {told(spool, 10, display)} × {told(price, 10, display)}",
        worked=f"{told(value, 5, display)} {display.currency}", uses=uses,
        constants=(Constant("Price of a spool", show_more.money(price, display), sources.YOURS), spool_told))
    each = value / casts
    shown = show_more.money(each, display)
    return [whole, Figure(
        f"{at}.cost_per_cast", "Mold, for each cast", each, display.currency, shown,
        formula="plastic for the mold ÷ casts from it",
        numbers=f"{told(value, 10, display)} ÷ {told(casts, 8, display)}",
        worked=f"{told(each, 5, display)} {display.currency}",
        says=f"Spread over {told(casts, 8, display)} casts, the plastic of the mold comes to {shown} for each",
        constants=(practice_or_yours(said, f"{at}.lasts", "Casts from one mold", told(casts, 8, display)),),
        uses=(whole.key,))]


def _by_time(said: Said, at: str) -> list[Figure]:
    """What the hours of the print cost each cast: wear of the printer, and power."""
    seconds, casts = said.value(f"{at}.print_time"), said.value(f"{at}.lasts")
    wear, watts, price = (said.value(f"selling.0.{name}") for name in ("printer_hour", "printer_power", "kilowatt_hour"))
    if None in (seconds, casts):
        return []
    display, hours = said.display, seconds / HOUR
    shared = (Constant("Printing takes", show_duration(seconds, display), sources.YOURS),
              practice_or_yours(said, f"{at}.lasts", "Casts from one mold", show.significant(casts, 8, display)))
    figures = []
    if wear is not None:
        figures.append(_each(said, f"{at}.wear_per_cast", "Wear of the printer, for each cast", hours * wear / casts,
                             "hours of printing × wear of an hour ÷ casts from it", (hours, "×", wear, "÷", casts),
                             (Constant("An hour of printing wears", show_more.small_money(wear, display), sources.YOURS), *shared)))
    if watts is not None and price is not None:
        figures.append(_each(said, f"{at}.power_per_cast", "Power of the print, for each cast", power(watts, hours, price) / casts,
                             "power drawn × hours of printing ÷ 1000 × price of a kilowatt-hour ÷ casts from it",
                             (watts, "×", hours, "÷", 1000, "×", price, "÷", casts),
                             (Constant("The printer draws", f"{show.significant(watts, 8, display)} W", sources.YOURS),
                              Constant("A kilowatt-hour costs", show_more.small_money(price, display), sources.YOURS), *shared)))
    return figures


def _each(said: Said, key: str, label: str, value: float, formula: str, numbers: tuple[float | str, ...],
          constants: tuple[Constant, ...]) -> Figure:
    told = [part if isinstance(part, str) else show.significant(part, 10, said.display) for part in numbers]
    return Figure(key, label, value, said.display.currency, show_more.small_money(value, said.display), formula, " ".join(told),
                  worked=f"{show.significant(value, 5, said.display)} {said.display.currency}", constants=constants)
