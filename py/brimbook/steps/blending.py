"""The blend of a pot: waxes, fragrance and dye, how hot and cold they fill, what they lose as they set."""

from dataclasses import dataclass, replace

from brimbook import sources
from brimbook.candle import contraction, wax
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.densities import Density, density_of, has_cup
from brimbook.steps.temperatures import pour_at, window
from brimbook.steps.waxes_in_pot import WaxPart, waxes_of
from brimbook.steps.weighing import practice_or_yours


@dataclass(frozen=True)
class Blend:
    """What one gram of wax makes with its fragrance and dye, as the pot of a well is planned.

    load and dye are for a gram of wax; hot and cold are the blend from a gram of wax [mL], None where unknown;
    pour_at is the temperature it is poured at [°C]. basis says whether lines are for it poured or set, density is that of
    the wax in that state [g/mL], and relative the ± that its own ± leaves on a volume of the blend [–].
    """

    place: str
    load: float
    dye: float
    hot: float | None
    cold: float | None
    pour_at: float
    figures: tuple[Figure, ...]
    basis: str = "poured"
    density: float = 0.0
    relative: float = 0.0
    waxes: tuple[WaxPart, ...] = ()

    @property
    def mass(self) -> float:
        """The blend from a gram of wax [g]."""
        return 1 + self.load + self.dye

    @property
    def per_gram(self) -> float:
        """The blend from a gram of wax in the state that the line is for [mL]."""
        return self.hot if self.basis == "poured" else self.cold

    def density_of(self, state: str) -> float | None:
        """The density of the blend, where it is known [g/mL].

        state: poured or set [text].
        """
        volume = self.hot if state == "poured" else self.cold
        return None if volume is None else wax.blend_density(volume, self.load, self.dye)

    @property
    def lost(self) -> float | None:
        """Share of its hot volume that it loses as it sets, where both densities are known [–]."""
        return None if None in (self.hot, self.cold) else contraction.of_hot(self.density_of("poured"), self.density_of("set"))


def blending(said: Said, place: str) -> Blend | None:
    """The blend of a well's own pot; none while an entry that it needs is missing or faulty [blend].

    said: the record as understood [said].
    place: path of the well [text].
    """
    basis = said.value(f"{place}.basis")
    names = ("fragrance.load", "fragrance.basis", "fragrance.density", "dye")
    if basis is None or any(said.value(f"{place}.{name}") is None for name in names):
        return None
    densities = {state: density_of(said, place, state) for state in ("poured", "set")}
    if densities[basis] is None:
        return None
    if None not in densities.values() and densities["set"].value < densities["poured"].value:
        said.fault(*_swapped(said, place))
        densities = {**densities, "set" if basis == "poured" else "poured": None}
    return _blend(said, place, basis, densities)


def _swapped(said: Said, place: str) -> tuple[str, str]:
    """Where hot wax comes out denser than cold wax: the entry to look at, and what to say of it."""
    hot, cold = (said.value(f"{place}.wax.density_{state}") for state in ("poured", "set"))
    if has_cup(said, place, "set"):
        return f"{place}.wax.cup_set", "Cold wax is denser than hot wax. Were the two cups swapped?"
    if not has_cup(said, place, "poured") and None not in (hot, cold) and hot <= cold and said.typed(f"{place}.melting.pour_at"):
        return (f"{place}.melting.pour_at", "So cold, the hot wax would be denser than set wax. Check this, and what the hot density "
                "is told for.")
    return f"{place}.wax.density_set", "Cold wax is denser than hot wax. Were the two densities swapped?"


def _blend(said: Said, place: str, basis: str, densities: dict[str, Density | None]) -> Blend:
    load = _load_of_wax(said, place)
    dye, oil = said.value(f"{place}.dye"), said.value(f"{place}.fragrance.density")
    volumes = {state: None if density is None else wax.volume_per_gram_of_wax(density.value, oil, load.value, dye)
               for state, density in densities.items()}
    told = [figure for density in densities.values() if density is not None for figure in density.figures]
    per_gram = _blend_per_gram(said, place, load, densities[basis], volumes[basis])
    density, pours = densities[basis], pour_at(said, place)
    blend = Blend(
        place, load.value, dye, volumes["poured"], volumes["set"],
        window(said, place, "pour_at").usual if pours is None else pours, (), basis, density.value,
        density.plus_minus / density.value * (1 + dye) / density.value / volumes[basis], waxes_of(said, place))
    figures = (load, _load_of_blend(said, place, load), *told, per_gram, *_set_and_hot(said, blend, densities, oil, load))
    return replace(blend, figures=figures)


def _put(said: Said, number: float) -> str:
    return show.significant(number, 8, said.display)


def _load_of_wax(said: Said, place: str) -> Figure:
    load, dye = said.value(f"{place}.fragrance.load"), said.value(f"{place}.dye")
    shown = _put(said, load * 100)
    key, label = f"{place}.load_of_wax", "Fragrance load of the wax"
    if said.value(f"{place}.fragrance.basis") == "wax":
        return Figure(key, label, load, "–", show.percent(load, said.display, 2), "as you chose", shown,
                      says=f"{show.percent(load, said.display, 2)} of the wax")
    value = wax.load_of_wax(load, dye)
    return Figure(key, label, value, "–", show.percent(value, said.display, 2),
                  "load of the blend × (1 + dye) ÷ (1 − load of the blend)",
                  f"{shown} × (1 + {_put(said, dye)}) ÷ (1 − {_put(said, load)})",
                  says=f"{show.percent(value, said.display, 2)} of the wax",
                  constants=(Constant("Bases", "two ways to tell one load", sources.IDENTITY),))


def _load_of_blend(said: Said, place: str, of_wax: Figure) -> Figure:
    dye = said.value(f"{place}.dye")
    value = wax.load_of_blend(of_wax.value, dye)
    return Figure(f"{place}.load_of_blend", "Fragrance load of the blend", value, "–",
                  show.percent(value, said.display, 2), "load of the wax ÷ (1 + load of the wax + dye)",
                  f"{_put(said, of_wax.value * 100)} ÷ (1 + {_put(said, of_wax.value)} + {_put(said, dye)})",
                  says=f"{show.percent(value, said.display, 2)} of the blend", uses=(of_wax.key,),
                  constants=(Constant("Bases", "limits for a finished candle are of the blend", sources.IDENTITY),))


def _blend_per_gram(said: Said, place: str, load: Figure, density: Density, value: float) -> Figure:
    dye, oil = said.value(f"{place}.dye"), said.value(f"{place}.fragrance.density")
    return Figure(
        f"{place}.blend_per_gram", "Blend from one gram of wax", value, "mL/g", f"{show.significant(value, 4, said.display)} mL",
        "(1 + dye) ÷ density of wax + fragrance load of the wax ÷ density of fragrance",
        _volume_put(said, density.value, load.value, dye, oil),
        constants=(*density.constants, practice_or_yours(said, f"{place}.fragrance.density", "Density of the fragrance",
                                                         show.density(oil, said.display))),
        uses=(load.key, density.figures[-1].key),
        spread="Volumes are taken to add up, and the fragrance to weigh the same hot and set.")


def _volume_put(said: Said, density: float, load: float, dye: float, oil: float) -> str:
    return f"(1 + {_put(said, dye)}) ÷ {_put(said, density)} + {_put(said, load)} ÷ {_put(said, oil)}"


def _set_and_hot(said: Said, blend: Blend, densities: dict[str, Density | None], oil: float, load: Figure) -> list[Figure]:
    """The density of the blend in each state, and what it loses between them, told on both volumes."""
    figures = []
    for state, label in (("poured", "Blend, hot as poured"), ("set", "Blend, cold and set")):
        density = densities[state]
        if density is not None:
            value = blend.density_of(state)
            figures.append(Figure(
                f"{blend.place}.blend_{state}", label, value, "g/mL", show.density(value, said.display),
                "(1 + fragrance load of the wax + dye) ÷ blend from one gram of wax",
                f"(1 + {_put(said, blend.load)} + {_put(said, blend.dye)}) ÷ "
                f"({_volume_put(said, density.value, blend.load, blend.dye, oil)})",
                worked=f"{show.significant(value, 6, said.display)} g/mL", uses=(load.key, density.figures[-1].key)))
    return [*figures, *_lost(said, blend, *figures)] if len(figures) == 2 else figures


def _lost(said: Said, blend: Blend, hot: Figure, cold: Figure) -> list[Figure]:
    poured, set_, uses = _put(said, hot.value), _put(said, cold.value), (hot.key, cold.key)
    found = (
        ("shrinks_hot", "Shrinks, of the hot volume", blend.lost, "1 − density of the blend as poured ÷ as set",
         f"(1 − {poured} ÷ {set_}) × 100", uses),
        ("shrinks_set", "Shrinks, of the set volume", contraction.of_set(hot.value, cold.value),
         "density of the blend as set ÷ as poured − 1", f"({set_} ÷ {poured} − 1) × 100", uses),
        ("shrinks_along", "Shrinks, of any length", contraction.along(blend.lost), "1 − (density as poured ÷ as set)^(1 ÷ 3)",
         f"(1 − ({poured} ÷ {set_})^(1 ÷ 3)) × 100", uses))
    spread = {"shrinks_along": "If it shrinks alike in every direction: most of it goes into the sink, the rest may leave a gap "
                               "at the wall."}
    return [Figure(f"{blend.place}.{name}", label, value, "–", show.percent(value, said.display), formula, numbers,
                   worked=f"{show.significant(value * 100, 5, said.display)} %", uses=used, spread=spread.get(name, ""))
            for name, label, value, formula, numbers, used in found]
