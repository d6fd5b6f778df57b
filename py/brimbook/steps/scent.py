"""Scents: shares, weights, limits and flash points; their sensitizers are in a file of their own."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.candle import hazard, wax
from brimbook.candle.scent import density_together, load_at_limit
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.leaves.scent import SCENT
from brimbook.record.said import Said
from brimbook.sources import Source
from brimbook.steps.blending import Blend
from brimbook.steps.pot import Potful
from brimbook.steps.sensitizers import Part, percent, sensitizing
from brimbook.steps.temperatures import scent_at
from brimbook.steps.weighing import weigh_out

# More scents than this are kept, and no longer worked out.
MOST_SCENTS = 30
_BASES = {"wax": "of the wax", "blend": "of the candle"}
_CATEGORIES = {0: "too high for a flammable liquid by CLP", 2: "a flammable liquid by CLP, category 1 or 2",
               3: "a flammable liquid by CLP, category 3"}


@dataclass(frozen=True)
class Limit:
    """The most that a sheet allows of a part of the fragrance, on its basis, beside what there is of it [–]."""

    name: str
    label: str
    share: float
    basis: str
    most: float
    taken: float
    source: Source

    @property
    def used(self) -> float:
        """How much of the limit is taken up [–]."""
        return self.taken / self.most


def scent(said: Said, place: str, blend: Blend | None, potful: Potful | None = None) -> list[Figure]:
    """Every figure of this step [figures].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    potful: all that is melted, where that is known [potful].
    """
    rows = rows_of(said, place)
    if rows and all(said.value(f"{scent_path(place, row)}.parts") == 0 for row in rows):
        said.fault(f"{scent_path(place, rows[0])}.parts", "With no part of any scent there is none. Type 1, or remove them.")
    if blend is None:
        return []
    at, scents = f"{place}.scent", parts_of(said, place, blend)
    whole = _of_candle(said, at, blend)
    figures = [whole]
    for part in scents:
        figures += _shares(said, at, part, blend, whole)
        if potful is not None and len(scents) > 1 and blend.load:
            figures.append(_weight(said, at, part, potful, whole))
    return [*figures, *_limits(said, place, scents, blend), *_flashes(said, place, scents, blend), *_density(said, place, scents),
            *sensitizing(said, at, scents)]


def scent_path(place: str, row: int) -> str:
    """Path of one of the scents of a well's fragrance [text].

    place: path of the well whose pot it is [text].
    row: its place in the list [count].
    """
    return f"{place}.fragrance.scents.{row}"


def rows_of(said: Said, place: str) -> list[int]:
    """The scents of which something was typed, as many as are worked out [counts].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    rows = range(min(said.count(f"{place}.fragrance.scents"), MOST_SCENTS))
    return [row for row in rows if said.count(f"{scent_path(place, row)}.sensitizers")
            or any(said.typed(f"{scent_path(place, row)}.{name}") for name in SCENT)]


def name_of_scent(said: Said, place: str, row: int) -> str:
    """What to call a scent [text].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    row: its place in the list [count].
    """
    return said.text(f"{scent_path(place, row)}.name").strip() or f"Scent {row + 1}"


def parts_of(said: Said, place: str, blend: Blend) -> tuple[Part, ...]:
    """The scents with their shares; none while the parts of one are faulty [parts].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    """
    parts = {row: said.value(f"{scent_path(place, row)}.parts") for row in rows_of(said, place)}
    if None in parts.values() or not sum(parts.values()):
        return ()
    total, of_candle = sum(parts.values()), wax.load_of_blend(blend.load, blend.dye)
    return tuple(
        Part(row + 1, scent_path(place, row), name_of_scent(said, place, row), some, some / total, blend.load * some / total,
             of_candle * some / total)
        for row, some in parts.items() if some)


def _put(said: Said, number: float) -> str:
    return show.significant(number, 8, said.display)


def _worked(said: Said, share: float) -> str:
    return f"{show.significant(share * 100, 5, said.display)} %"


def _of_candle(said: Said, at: str, blend: Blend) -> Figure:
    value = wax.load_of_blend(blend.load, blend.dye)
    shown = percent(said, value)
    return Figure(f"{at}.of_candle", "of the candle", value, "–", shown,
                  "load of the wax ÷ (1 + load of the wax + dye)",
                  f"{_put(said, blend.load * 100)} ÷ (1 + {_put(said, blend.load)} + {_put(said, blend.dye)})",
                  says=f"Fragrance: {shown} of the candle", worked=_worked(said, value),
                  uses=tuple(figure.key for figure in blend.figures if figure.key.endswith(".load_of_wax")))


def _shares(said: Said, at: str, part: Part, blend: Blend, whole: Figure) -> list[Figure]:
    """A scent's share of the wax, and of the finished candle."""
    total = part.parts / part.share
    ratio = f"× {_put(said, part.parts)} ÷ {_put(said, total)}"
    return [
        Figure(f"{at}.of_{basis}_{part.number}", f"{part.name}, {_BASES[told]}", value, "–", percent(said, value),
               f"fragrance {_BASES[told]} × its parts ÷ all parts", f"{_put(said, load * 100)} {ratio}",
               says=f"{part.name}: {percent(said, value)} {_BASES[told]}", worked=_worked(said, value), uses=uses)
        for basis, told, value, load, uses in (("wax", "wax", part.of_wax, blend.load, ()),
                                               ("candle", "blend", part.of_candle, whole.value, (whole.key,)))]


def _weight(said: Said, at: str, part: Part, potful: Potful, whole: Figure) -> Figure:
    return weigh_out(
        said, f"{at}.weight_{part.number}", part.name, part.name, potful.total * part.of_candle, None,
        formula="all in the pot × fragrance of the candle × its share of the fragrance",
        numbers=f"{_put(said, potful.total)} × {_put(said, whole.value)} × {_put(said, part.share)}",
        uses=(whole.key,))


def limits_of(said: Said, place: str, scents: tuple[Part, ...], blend: Blend) -> list[Limit]:
    """The limits that the sheets tell, of the wax and of each scent [limits].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    scents: in the fragrance [parts].
    blend: in the pot [blend].
    """
    most = said.value(f"{place}.fragrance.wax_most")
    limits = [Limit("wax", "Fragrance in all, limit of your wax", 1.0, "wax", most, blend.load, sources.YOURS)] if most else []
    for part in scents:
        supplier, basis, ifra = (said.value(f"{part.path}.{name}") for name in ("supplier_most", "supplier_basis", "ifra_most"))
        if supplier and basis:
            limits.append(Limit(f"supplier_{part.number}", f"{part.name}, supplier's limit", part.share, basis, supplier,
                                part.of_wax if basis == "wax" else part.of_candle, sources.YOURS))
        if ifra:
            limits.append(Limit(f"ifra_{part.number}", f"{part.name}, IFRA's limit", part.share, "blend", ifra, part.of_candle,
                                sources.IFRA))
    return limits


def _limits(said: Said, place: str, scents: tuple[Part, ...], blend: Blend) -> list[Figure]:
    limits = limits_of(said, place, scents, blend)
    if not limits:
        return []
    figures = [_limit(said, f"{place}.scent", limit) for limit in limits]
    nearest = max(zip(limits, figures), key=lambda pair: pair[0].used)
    return [*figures, _nearest(said, f"{place}.scent", *nearest), *_most(said, place, limits, blend)]


def _limit(said: Said, at: str, limit: Limit) -> Figure:
    taken, most = (percent(said, share) for share in (limit.taken, limit.most))
    over = hazard.exceeds(limit.taken, limit.most)
    says = f"{limit.label}: {most} {_BASES[limit.basis]}; yours has {taken}"
    return Figure(
        f"{at}.{limit.name}", limit.label, limit.used, "–", percent(said, limit.used),
        f"its share {_BASES[limit.basis]} ÷ the limit",
        f"{_put(said, limit.taken * 100)} ÷ {_put(said, limit.most * 100)} × 100", says=says, worked=_worked(said, limit.used),
        constants=(Constant("The most that its sheet allows", f"{most} {_BASES[limit.basis]}", limit.source),),
        notes=(f"Over a limit. {says}.",) if over else ())


def _nearest(said: Said, at: str, limit: Limit, figure: Figure) -> Figure:
    over = hazard.exceeds(limit.taken, limit.most)
    shown, label = ("Over", "a limit") if over else (percent(said, limit.used), "of the nearest limit")
    return Figure(f"{at}.nearest", label, limit.used, "–", shown, figure.formula, figure.numbers, says=f"{shown} {label}",
                  worked=figure.worked, uses=(figure.key,), spread=f"The nearest: {limit.label}.")


def _most(said: Said, place: str, limits: list[Limit], blend: Blend) -> list[Figure]:
    """The largest load that keeps every limit, on the basis that the load is told on."""
    told = said.value(f"{place}.fragrance.basis") or "wax"
    loads = [(_load(limit, blend), limit) for limit in limits]
    load, limit = min(loads, key=lambda pair: pair[0])
    # So much no wax holds: as good as no limit.
    if load > 1:
        return []
    value = load if told == "wax" else wax.load_of_blend(load, blend.dye)
    one, dye = load_at_limit(limit.most, limit.share), _put(said, blend.dye)
    formula, numbers = "the limit ÷ its share of the fragrance", f"{_put(said, limit.most * 100)} ÷ {_put(said, limit.share)}"
    if limit.basis != told:
        formula = f"({formula}), told {_BASES[told]}: " + (
            "it × (1 + dye) ÷ (1 − it)" if told == "wax" else "it ÷ (1 + it + dye)")
        numbers = f"{_put(said, one * 100)} × (1 + {dye}) ÷ (1 − {_put(said, one)})" if told == "wax" else (
            f"{_put(said, one * 100)} ÷ (1 + {_put(said, one)} + {dye})")
    shown = _at_most(said, value)
    return [Figure(f"{place}.scent.most", "At most", value, "–", shown, formula, numbers,
                   says=f"At most {shown} {_BASES[told]}", worked=_worked(said, value),
                   constants=(Constant(limit.label, f"{percent(said, limit.most)} {_BASES[limit.basis]}", limit.source),),
                   uses=(f"{place}.scent.{limit.name}",),
                   spread="The most fragrance with which every limit that you copied is kept, rounded down.")]


def _load(limit: Limit, blend: Blend) -> float:
    """The load of the wax with which a limit is just kept; without end where no load reaches it."""
    load = load_at_limit(limit.most, limit.share)
    if limit.basis == "wax":
        return load
    return wax.load_of_wax(load, blend.dye) if load < 1 else math.inf


def _at_most(said: Said, share: float) -> str:
    """Rounded down: a limit told too high would be broken."""
    decimals = 2 if share >= 0.01 else 4
    steps = 10.0 ** (decimals + 2)
    return show.percent(math.floor(share * steps * (1 + 1e-9)) / steps, said.display, decimals)


def _flashes(said: Said, place: str, scents: tuple[Part, ...], blend: Blend) -> list[Figure]:
    goes_in, figures = scent_at(said, place) if blend.load else None, []
    for part in scents:
        flash, cup = said.value(f"{part.path}.flash"), said.value(f"{part.path}.flash_cup")
        if None not in (flash, cup):
            figures.append(_flash(said, f"{place}.scent", part, flash, cup, goes_in))
    return figures


def _flash(said: Said, at: str, part: Part, flash: float, cup: str, goes_in: float | None) -> Figure:
    value, typed = hazard.closed_cup(flash, cup), show.temperature(flash, said.display)
    shown = show.temperature(value, said.display)
    least, numbers = ("at least ", f"{_put(said, flash)} − {_put(said, hazard.OPEN_CUP_ABOVE)}") if cup == "open" else (
        "", _put(said, flash))
    constants = [Constant(f"Flash point on its sheet, {cup} cup", typed, sources.YOURS),
                 Constant("What a flash point is", "a test with a flame", sources.FLASH_POINT),
                 Constant("Flammable liquid of category 3", f"{show.temperature(23, said.display)} to "
                          f"{show.temperature(60, said.display)}", sources.CLP_FLAMMABLE)]
    if cup == "open":
        constants.append(Constant("An open cup reads higher by", "5 to 10 K", sources.OPEN_CUP))
    above = goes_in is not None and not goes_in < value
    return Figure(
        f"{at}.flash_{part.number}", f"{part.name}, flash point", value, "°C", shown,
        "as on its sheet, less 10 K for the open cup" if cup == "open" else "as on its sheet", numbers,
        says=f"{part.name}: flash point {least}{shown} in a closed cup, {_CATEGORIES[hazard.flammable_category(value)]}",
        worked=f"{_put(said, value)} °C", constants=tuple(constants), notes=(
            f"{part.name} goes in at {show.temperature(goes_in, said.display)}, and its vapor can take fire from "
            f"{shown} on: no flame and no spark near the pot, and air the room.",) if above else ())


def _density(said: Said, place: str, scents: tuple[Part, ...]) -> list[Figure]:
    densities = [said.value(f"{part.path}.density") for part in scents]
    if not scents or None in densities:
        return []
    parts = [part.parts for part in scents]
    value, shown = density_together(parts, densities), [_put(said, some) for some in parts]
    volumes = " + ".join(f"{some} ÷ {_put(said, density)}" for some, density in zip(shown, densities))
    return [Figure(f"{place}.scent.density", "One mL of the fragrance weighs", value, "g/mL", show.density(value, said.display),
                   "all parts ÷ sum of (parts ÷ density)", f"{_put(said, sum(parts))} ÷ ({volumes})",
                   worked=f"{show.significant(value, 5, said.display)} g/mL",
                   constants=(Constant("Volumes of oils", "add up", sources.IDENTITY),))]
