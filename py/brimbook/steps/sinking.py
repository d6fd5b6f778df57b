"""What setting does to the level in a well, and the pours that bring it to the line."""

from brimbook.candle import contraction, wax
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.blending import Blend
from brimbook.steps.measure import Measurement
from brimbook.steps.weighing import weigh_out

# More than this share of the line still missing asks for a third pour.
_ENOUGH = 0.02
# What sinks by less needs no second pour [mL].
_LEAST_SINK = 0.05
_POURS = (("first_pour", "First pour", "first, hot to the line"), ("second_pour", "Second pour", "more once it has set, hot to the line"),
          ("third_pour", "Third pour", "more once that has set, hot to the line"))


def sinking(said: Said, place: str, room: Measurement, blend: Blend) -> tuple[list[Figure], float]:
    """What sinks and what is poured when; and how much of it all is poured after the first pour [figures and g].

    said: the record as understood [said].
    place: path of the well [text].
    room: the well to its line, as measured [measurement].
    blend: of the pot that it is filled from [blend].
    """
    if blend.lost is None:
        return [], 0.0
    hot, cold = blend.density_of("poured"), blend.density_of("set")
    told = _Told(said, place, room, blend, hot, cold)
    if blend.basis == "poured":
        return told.poured(), 0.0
    return told.set(), room.volume * (cold - hot)


class _Told:
    """The figures of one well."""

    def __init__(self, said: Said, place: str, room: Measurement, blend: Blend, hot: float, cold: float) -> None:
        self.said, self.place, self.room, self.blend, self.hot, self.cold = said, place, room, blend, hot, cold
        self.densities = tuple(f"{blend.place}.blend_{state}" for state in ("poured", "set"))
        self.shrinks = f"{blend.place}.shrinks_hot"

    def poured(self) -> list[Figure]:
        """The line is for hot wax: it sinks, and may be topped up [figures]."""
        sink = self._sink()
        if sink.value < _LEAST_SINK:
            return [sink]
        grams = sink.value * self.hot
        return [sink, weigh_out(
            self.said, f"{self.place}.top_up", "A top-up takes", "to top it up, hot to the line", grams, None,
            formula="what it shrinks × density of the blend, hot", numbers=f"{self._put(sink.value)} × {self._put(self.hot)}",
            uses=(sink.key, self.densities[0]), verb="Once it has set, pour",
            whole=self.room.volume * self.hot, thing="wax",
            spread="Not in the pot: melt that much more if you want to top it up.")]

    def set(self) -> list[Figure]:
        """The line is for set wax: each pour fills the sink of the one before [figures]."""
        sink, share, volume = self._sink(), self.blend.lost, self.room.volume
        if sink.value < _LEAST_SINK:
            return [sink]
        first = wax.wax_for_volume(volume, 1 / self.hot)
        count = 2 if contraction.missing_after(2, 1.0, share) <= _ENOUGH else 3
        pours = [self._first(first)]
        for number in range(2, count + 1):
            pours.append(self._next(number, contraction.pour(number, first, share), pours[-1]))
        return [sink, *pours, self._missing(count)]

    def _sink(self) -> Figure:
        """What setting does to the level; for a set line, what stands above it while hot."""
        hot, told = self.blend.basis == "poured", self._put
        value = wax.sink(self.room.volume if hot else self.room.volume * self.cold / self.hot, self.hot, self.cold)
        start = told(self.room.volume) + ("" if hot else f" × {told(self.cold)} ÷ {told(self.hot)}")
        shown, share = show.volume(value, self.said.display), show.percent(self.blend.lost, self.said.display)
        says = (f"As it sets it sinks by {shown}, {share} of the hot volume: the wax to top it up is not in the pot" if hot else
                f"Hot, it would stand {shown} above the line: pour to the line, top up with the rest as it sets")
        return Figure(
            f"{self.place}.sink", "Shrinks as it sets", value, "mL", shown,
            "hot volume × (1 − density of the blend as poured ÷ as set)", f"{start} × (1 − {told(self.hot)} ÷ {told(self.cold)})",
            says=says, uses=(f"{self.room.place}.volume", *self.densities),
            spread="Of wax and fragrance together; the fragrance is taken to weigh the same hot and set.")

    def _first(self, grams: float) -> Figure:
        return self._pour(1, grams, "volume to the line × density of the blend, hot",
                          f"{self._put(self.room.volume)} × {self._put(self.hot)}", (f"{self.room.place}.volume", self.densities[0]))

    def _next(self, number: int, grams: float, before: Figure) -> Figure:
        return self._pour(number, grams, "pour before × what it shrinks, of the hot volume",
                          f"{self._put(before.value)} × {self._put(self.blend.lost)}", (before.key, self.shrinks))

    def _pour(self, number: int, grams: float, formula: str, numbers: str, uses: tuple[str, ...]) -> Figure:
        name, label, noun = _POURS[number - 1]
        return weigh_out(self.said, f"{self.place}.{name}", label, noun, grams, None, formula=formula, numbers=numbers, uses=uses,
                         verb="Pour", whole=self.room.volume * self.cold, thing="wax")

    def _missing(self, count: int) -> Figure:
        value = contraction.missing_after(count, self.room.volume, self.blend.lost)
        shown = show.volume(value, self.said.display)
        power = {2: "²", 3: "³"}[count]
        return Figure(
            f"{self.place}.missing", "Still missing then", value, "mL", shown,
            f"volume to the line × (what it shrinks, of the hot volume){power}",
            f"{self._put(self.room.volume)} × {self._put(self.blend.lost)}{power}",
            says=f"Once that has set, {shown} is still missing: top it up with what is left",
            worked=f"{show.significant(value, 6, self.said.display)} mL", uses=(f"{self.room.place}.volume", self.shrinks))

    def _put(self, number: float) -> str:
        return show.significant(number, 8, self.said.display)
