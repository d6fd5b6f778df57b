"""One pot of wax for several wells and several vessels: its size, what is left over, what each well takes."""

import math
from dataclasses import dataclass

from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.filling import Filled, waxes_apart
from brimbook.steps.weighing import practice_or_yours, sum_as_weighed, weigh_out


@dataclass(frozen=True)
class Potful:
    """All that is melted at once [g], in [mL] hot; vessels are those that it is poured into, fewer where it is short [count]."""

    total: float
    volume: float | None
    figures: tuple[Figure, ...]
    vessels: float = 1.0


def pot(said: Said, place: str, blend: Blend, wells: tuple[Filled, ...]) -> Potful | None:
    """The pot of a well, for all wells and vessels that are filled from it; none while it is unknown [potful].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    blend: in the pot [blend].
    wells: filled from it [filled].
    """
    at = f"{place}.batch"
    pieces, left = pieces_of(said, place), said.value(f"{at}.left")
    melted = said.value(f"{at}.melted")
    if None in (pieces, left) or (melted is None and said.typed(f"{at}.melted")):
        return None
    return _Told(said, at, blend, wells, pieces, left, melted).potful()


def pieces_stand_in(said: Said) -> str:
    """The text that is taken for the vessels to fill: as many as are cast [text].

    said: the record as understood [said].
    """
    return said.canonical.get("casts.0.pieces", "1")


def pieces_of(said: Said, place: str) -> float | None:
    """How many vessels are filled from a pot, or nothing where the entry is faulty [count].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    """
    path = f"{place}.batch.pieces"
    return said.value(path) if said.typed(path) else said.value("casts.0.pieces") or 1.0


class _Told:
    """The pot as figures."""

    def __init__(self, said: Said, at: str, blend: Blend, wells: tuple[Filled, ...], pieces: float, left: float,
                 melted: float | None) -> None:
        self.said, self.at, self.blend, self.wells = said, at, blend, wells
        self.pieces, self.left, self.melted = pieces, left, melted
        self.each = math.fsum(well.total for well in wells)
        self.needed = pieces * self.each + left
        self.total = self.needed if melted is None else melted * blend.mass
        self.vessels = pieces if melted is None else min(pieces, max(math.floor(self._fillable()), 0))

    def potful(self) -> Potful:
        """All of it [potful]."""
        needed = self._needed()
        weighed = self._weighed(needed)
        volume = self._volume(weighed[0]) if self.blend.hot is not None else None
        sizes = self._sizes(volume) if volume is not None else []
        over = self._over(needed, weighed[0]) if self.melted is not None else []
        figures = (needed, *weighed, *over, *self._kept_back(), *sizes)
        return Potful(self.total, None if volume is None else volume.value, figures, self.vessels)

    def _fillable(self) -> float:
        """Vessels that all of it fills; a hair more, so that just enough is enough."""
        return (self.total - self.left) / self.each + 1e-6

    def _needed(self) -> Figure:
        uses = tuple(figure.key for well in self.wells for figure in well.figures
                     if figure.key in (f"{well.place}.{name}" for name in ("wax", "fragrance", "dye")))
        # A cup of wax that is off makes every well off alike; the wells' own volumes are off each for itself.
        cup = self.blend.relative
        volumes = [well.total * math.sqrt(max(well.relative**2 - cup**2, 0.0)) for well in self.wells]
        rounds = math.hypot(*volumes, self.each * cup) * self.pieces / self.needed
        return weigh_out(
            self.said, f"{self.at}.needed", "Needed in the pot", "needed in the pot", self.needed, rounds,
            formula="all for one vessel × vessels + what stays in the pot",
            numbers=f"{self._each([well.total for well in self.wells])} × {self._put(self.pieces)} + {self._put(self.left)}", uses=uses, verb="In all",
            constants=(practice_or_yours(self.said, f"{self.at}.left", "Stays in the pot and on tools",
                                         show.mass(self.left, self.said.display)),),
            spread=f"± from the volumes of the wells{', and from the cup of wax that you weighed' if cup else ''}.", thing="blend")

    def _weighed(self, needed: Figure) -> list[Figure]:
        """Wax, each wax by itself, fragrance, dye, and their sum."""
        wax, mass = self.total / self.blend.mass, f"(1 + {self._put(self.blend.load)} + {self._put(self.blend.dye)})"
        load = f"{self.blend.place}.load_of_wax"
        told = {"formula": "needed in the pot ÷ (1 + fragrance load of the wax + dye)", "uses": (needed.key, load),
                "numbers": f"{self._put(self.needed)} ÷ {mass}"}
        if self.melted is not None:
            told = {"formula": "as you melted it", "numbers": self._put(self.melted), "verb": "You melted"}
        first = weigh_out(self.said, f"{self.at}.wax", "Wax", "wax", wax, None, **told)
        parts = [first]
        for name, share, uses, words in (("fragrance", self.blend.load, (first.key, load), "fragrance load of the wax"),
                                         ("dye", self.blend.dye, (first.key,), "dye, of the wax")):
            if share:
                parts.append(weigh_out(self.said, f"{self.at}.{name}", name.capitalize(), name, wax * share, None,
                                       formula=f"wax in the pot × {words}", numbers=f"{self._put(wax)} × {self._put(share)}", uses=uses))
        apart = waxes_apart(self.said, self.at, self.blend, first) if self.melted is None else []
        return [first, *apart, *parts[1:], sum_as_weighed(self.said, f"{self.at}.pot", "In the pot", parts)]

    def _over(self, needed: Figure, wax: Figure) -> list[Figure]:
        """What the wax that was melted comes to, beside what is needed."""
        over, display = self.total - self.needed, self.said.display
        mass = f"(1 + {self._put(self.blend.load)} + {self._put(self.blend.dye)})"
        shown = show.mass(abs(over), display)
        figures = [Figure(
            f"{self.at}.over", "Left over" if over >= 0 else "Short by", over, "g", shown,
            "wax you melted × (1 + fragrance load of the wax + dye) − needed in the pot",
            f"{self._put(self.melted)} × {mass} − {self._put(self.needed)}",
            says=f"{shown} will be left over" if over >= 0 else f"It is {shown} short",
            worked=f"{show.significant(over, 5, display)} g", uses=(wax.key, needed.key))]
        if over < 0:
            figures.append(weigh_out(
                self.said, f"{self.at}.more_wax", "Wax to melt besides", "more wax", -over / self.blend.mass, None,
                formula="short by ÷ (1 + fragrance load of the wax + dye)", numbers=f"{self._put(-over)} ÷ {mass}",
                uses=(figures[0].key,), verb="Melt"))
        return figures + self._fills(mass, wax)

    def _fills(self, mass: str, wax: Figure) -> list[Figure]:
        vessels = (self.total - self.left) / self.each
        if vessels <= 0:
            return []
        whole = math.floor(self._fillable())
        shown = f"{whole} vessel{'' if whole == 1 else 's'}" if whole else "none"
        return [Figure(
            f"{self.at}.fills", "It fills", vessels, "pieces", shown,
            "(all in the pot − what stays in it) ÷ all for one vessel, whole vessels of it",
            f"({self._put(self.melted)} × {mass} − {self._put(self.left)}) ÷ {self._each([well.total for well in self.wells])}", says=f"It fills {shown if whole else 'no vessel'}",
            worked=show.significant(vessels, 5, self.said.display), uses=(wax.key,))]

    def _kept_back(self) -> list[Figure]:
        last = [(well, well.top_up) for well in self.wells if well.top_up > 0]
        if not last or not self.vessels:
            return []
        grams = self.vessels * math.fsum(some for _, some in last)
        uses = tuple(figure.key for well, _ in last for figure in well.figures if figure.key == f"{well.place}.first_pour")
        return [weigh_out(
            self.said, f"{self.at}.kept_back", "For the pours after the first", "for the pours after the first", grams, None,
            formula="(all for one vessel − its first pour) × vessels", numbers=f"{self._each([some for _, some in last])} × {self._put(self.vessels)}", uses=uses,
            verb="Keep back", whole=self.total, thing="wax")]

    def _volume(self, wax: Figure) -> Figure:
        value = self.total / self.blend.mass * self.blend.hot
        dye, oil = self.blend.dye, self.blend.load
        shown = show.volume(value, self.said.display)
        hot = f"{self.blend.place}.blend_poured"
        density = self.blend.density_of("poured")
        return Figure(f"{self.at}.volume", "Hot, it takes up", value, "mL", shown,
                      "wax in the pot × (1 + fragrance load of the wax + dye) ÷ density of the blend, hot",
                      f"{self._put(wax.value)} × (1 + {self._put(oil)} + {self._put(dye)}) ÷ {self._put(density)}",
                      says=f"Hot, it takes up {shown}", worked=f"{show.significant(value, 6, self.said.display)} mL",
                      uses=(wax.key, hot), spread="At the temperature it is poured at: hotter, it is some percent more.")

    def _sizes(self, volume: Figure) -> list[Figure]:
        """The pot that it takes, beside the maker's own."""
        most, capacity, display = self.said.value(f"{self.at}.fill_to"), self.said.value(f"{self.at}.capacity"), self.said.display
        if most is None:
            return [volume]
        value, full = volume.value / most, show.percent(most, display)
        constant = practice_or_yours(self.said, f"{self.at}.fill_to", "A pot is filled at most to", full)
        shown = show.volume(value, display)
        size = Figure(f"{self.at}.size", "Size of the pot, at least", value, "mL", shown, "hot volume ÷ how full at most",
                      f"{self._put(volume.value)} ÷ {self._put(most)}", says=f"Take a pot that holds {shown} or more",
                      worked=f"{show.significant(value, 6, display)} mL", constants=(constant,), uses=(volume.key,))
        return [volume, size, *self._lots(size, constant, capacity)]

    def _lots(self, size: Figure, constant: Constant, capacity: float | None) -> list[Figure]:
        if capacity is None or capacity >= size.value * (1 - 1e-9):
            return []
        ratio, lots = size.value / capacity, math.ceil(size.value / capacity - 1e-9)
        note = f"Your pot is too small for all of it: melt it in {lots} lots."
        return [Figure(f"{self.at}.lots", "Melt it in", ratio, "pieces", f"{lots} lots", "size that it takes ÷ what your pot holds, rounded up",
                       f"{self._put(size.value)} ÷ {self._put(capacity)}", says=f"Melt it in {lots} lots",
                       worked=show.significant(ratio, 5, self.said.display), constants=(constant,), uses=(size.key,), notes=(note,))]

    def _each(self, grams: list[float]) -> str:
        """The wells of one vessel, added."""
        numbers = " + ".join(self._put(some) for some in grams)
        return f"({numbers})" if len(grams) > 1 else numbers

    def _put(self, number: float) -> str:
        return show.significant(number, 8, self.said.display)
