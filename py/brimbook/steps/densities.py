"""The density of a pot's wax, hot or set: by the maker's cup, else as typed, else that of its kind; waxes blend by volume."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.candle import warmth
from brimbook.candle.scent import density_together
from brimbook.candle.waxes import generic_wax, source_of_density
from brimbook.figure import Constant, Figure
from brimbook.fill.readings import readability_of_difference
from brimbook.quantity import show
from brimbook.record.leaves.well import OIL
from brimbook.record.said import Said
from brimbook.steps.temperatures import pour_at, temperature_constant
from brimbook.steps.waxes_in_pot import WaxPart, waxes_of

TOLD_STATE = {"poured": "hot, as poured", "set": "cold, as set"}
CUP = ("volume", "empty")


@dataclass(frozen=True)
class Density:
    """A density of the wax in a pot and its ± [g/mL]; figures that tell it, the last one it; and what it was taken from."""

    value: float
    plus_minus: float
    figures: tuple[Figure, ...]
    constants: tuple[Constant, ...]


@dataclass(frozen=True)
class _Told:
    """A density as it is told, the temperature that is for [°C], and where it comes from."""

    name: str
    value: float
    at: float | None
    # Did the maker type the temperature or where it is poured? Else a density stands as it is told.
    follows: bool
    source: sources.Source
    expansion_source: sources.Source


def density_of(said: Said, place: str, state: str) -> Density | None:
    """The density of the wax in a pot; none while an entry that it needs is missing or faulty [density].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    state: poured or set [text].
    """
    if has_cup(said, place, state):
        return _by_cup(said, place, state)
    parts = waxes_of(said, place)
    told = [_told(said, place, part, state) for part in parts]
    if not parts or None in told:
        return None
    return _blended(said, place, state, parts, told) if len(parts) > 1 else _single(said, place, state, told[0])


def has_cup(said: Said, place: str, state: str) -> bool:
    """Did the maker weigh a cup of the wax [yes or no]?

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    state: poured or set [text].
    """
    return all(said.typed(f"{place}.wax.cup_{name}") for name in (*CUP, state))


def told_at_stands_in(said: Said, wax: str) -> float | None:
    """The temperature that the hot density of a wax is told for, where it is that of its kind [°C].

    said: the record as understood [said].
    wax: path of the wax [text].
    """
    known, value = generic_wax(said.text(f"{wax}.kind")), said.value(f"{wax}.density_poured")
    return known.told_at if known is not None and value is not None and value == known.density_poured else None


def _told(said: Said, place: str, part: WaxPart, state: str) -> _Told | None:
    value = said.value(f"{part.path}.density_{state}")
    if value is None:
        return None
    kind = said.text(f"{part.path}.kind")
    known, source = generic_wax(kind), source_of_density(kind, state, value)
    at, typed = told_at_stands_in(said, part.path), said.typed(f"{part.path}.density_at")
    if typed:
        at = said.value(f"{part.path}.density_at")
        if at is None:
            return None
    follows = typed or said.typed(f"{place}.melting.pour_at")
    return _Told(part.name, value, at if state == "poured" else None, follows, source,
                 known.expansion_source if known else sources.MEMORY)


def _single(said: Said, place: str, state: str, told: _Told) -> Density | None:
    found = _warmed(said, place, told)
    if found is None:
        return None
    value, numbers, warm = found
    constants = (_as_told(said, "the wax", state, told), *warm)
    formula = "density as told − loss for each °C × (poured at − told for)" if warm else "as told"
    figure = _figure(said, place, state, value, formula, numbers, constants, spread=_stands(said, told))
    return Density(value, 0.0, (figure,), constants)


def _blended(said: Said, place: str, state: str, parts: tuple[WaxPart, ...], told: list[_Told]) -> Density | None:
    found = [_warmed(said, place, each) for each in told]
    if None in found:
        return None
    value = density_together([part.share for part in parts], [each[0] for each in found])
    volumes = " + ".join(f"{_put(said, part.share)} ÷ {f'({each[1]})' if each[2] else each[1]}" for part, each in zip(parts, found))
    warm = tuple(dict.fromkeys(constant for each in found for constant in each[2]))
    constants = (*(_as_told(said, each.name, state, each) for each in told), *warm)
    figure = _figure(said, place, state, value, "1 ÷ sum of (share of the wax ÷ its density)", f"1 ÷ ({volumes})",
                     (*constants, Constant("Volumes of the waxes", "add up", sources.IDENTITY)), spread=_all_stand(said, told))
    return Density(value, 0.0, (figure,), constants)


def _by_cup(said: Said, place: str, state: str) -> Density | None:
    cup = _cup(said, place, state)
    if cup is None:
        return None
    at = said.value(f"{place}.wax.cup_temperature") if state == "poured" else None
    if state == "poured" and at is None and said.typed(f"{place}.wax.cup_temperature"):
        return None
    told = _Told("the wax", cup.value, at, True, sources.YOUR_CUP, _expansion_source(said, place))
    found = _warmed(said, place, told)
    if found is None:
        return None
    value, numbers, warm = found
    constants = (_as_told(said, "the wax", state, told), *warm)
    figures = (cup,) if not warm else (cup, _figure(
        said, place, state, value, "density by your cup − loss for each °C × (poured at − cup at)", numbers, constants,
        uses=(cup.key,), plus_minus=cup.plus_minus))
    return Density(value, cup.plus_minus, figures, constants)


def _expansion_source(said: Said, place: str) -> sources.Source:
    known = generic_wax(said.text(f"{place}.wax.kind"))
    return known.expansion_source if known else sources.MEMORY


def _cup(said: Said, place: str, state: str) -> Figure | None:
    """The density that a cup tells, with its ±."""
    volume, empty, full, off = (said.value(f"{place}.wax.cup_{name}") for name in (*CUP, state, "error"))
    step = said.value(f"{place}.fill.readability")
    if None in (volume, empty, full, off, step) or said.fault_at(f"{place}.wax.cup_{state}"):
        return None
    if full <= empty:
        said.fault(f"{place}.wax.cup_{state}", "The full cup weighs no more than the empty one. Were the two swapped?")
        return None
    value = warmth.density_of_cup(full, empty, volume)
    if not OIL.least <= value <= OIL.most:
        said.fault(f"{place}.wax.cup_{state}", f"By this cup one mL of wax would weigh {show.significant(value, 3, said.display)} g: "
                   "0.5 to 1.6 g is possible. Check the cup's volume and the weights.")
        return None
    weighed = readability_of_difference(step)
    plus_minus = warmth.plus_minus_of_cup(full - empty, volume, weighed, off)
    return _figure(
        said, place, f"cup_{state}", value, "(full cup − empty cup) ÷ what it holds",
        f"({_put(said, full)} − {_put(said, empty)}) ÷ {_put(said, volume)}",
        (Constant("± of two rounded displays", "2 steps ÷ √6", sources.ROUNDING),), plus_minus=plus_minus,
        spread=f"± at about 95 %, parts added as squares. From the scale's steps: {show.mass_plus_minus(weighed, said.display)}; "
               f"from the cup: ± {show.plus_minus(off, said.display)} mL.")


def _warmed(said: Said, place: str, told: _Told) -> tuple[float, str, tuple[Constant, ...]] | None:
    """A density where it is poured, its numbers, and what that took; as it is told where there is nothing to follow."""
    if told.at is None or not told.follows:
        return told.value, _put(said, told.value), ()
    pours, expansion = pour_at(said, place), said.value(f"{place}.wax.expansion")
    if None in (pours, expansion):
        return None
    numbers = f"{_put(said, told.value)} − {_put(said, expansion)} × ({_put(said, pours)} − {_put(said, told.at)})"
    source = told.expansion_source if said.is_usual(f"{place}.wax.expansion") else sources.YOURS
    return warmth.density_at(told.value, told.at, pours, expansion), numbers, (
        Constant(f"{told.name[0].upper()}{told.name[1:]}, told for", show.temperature(told.at, said.display), told.source),
        Constant("Loses for each °C", f"{_put(said, expansion)} g/mL", source),
        temperature_constant(said, place, "pour_at", "Poured at"))


def _stands(said: Said, told: _Told) -> str:
    """Why a density that is told for a temperature does not follow yet."""
    if told.at is None or told.follows:
        return ""
    return f"It is told for {show.temperature(told.at, said.display)}: type where you pour, and it follows."


def _all_stand(said: Said, told: list[_Told]) -> str:
    """The same of waxes that are blended, each told for a temperature of its own."""
    standing = [f"{each.name} for {show.temperature(each.at, said.display)}" for each in told if each.at is not None and not each.follows]
    return f"Told hot: {', '.join(standing)}. Type where you pour, and it follows." if standing else ""


def _as_told(said: Said, name: str, state: str, told: _Told) -> Constant:
    return Constant(f"Density of {name}, {TOLD_STATE[state]}", show.density(told.value, said.display), told.source)


_LABELS = {"poured": "Wax, hot as poured", "set": "Wax, cold and set", "cup_poured": "Hot wax, by your cup",
           "cup_set": "Set wax, by your cup"}


def _figure(said: Said, place: str, name: str, value: float, formula: str, numbers: str, constants: tuple[Constant, ...],
            uses: tuple[str, ...] = (), plus_minus: float | None = None, spread: str = "") -> Figure:
    key = f"{place}.density_{name}" if name in TOLD_STATE else f"{place}.{name}"
    return Figure(
        key, _LABELS[name], value, "g/mL", show.density(value, said.display), formula, numbers,
        worked=f"{show.significant(value, 6, said.display)} g/mL", plus_minus=plus_minus,
        plus_minus_shown="" if plus_minus is None else f"± {show.plus_minus(plus_minus, said.display)} g/mL",
        constants=constants, uses=uses, spread=spread)


def _put(said: Said, number: float) -> str:
    return show.significant(number, 8, said.display)
