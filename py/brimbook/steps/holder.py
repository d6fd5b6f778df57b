"""The holder: bars across the opening, with a slot for each wick."""

import math

from brimbook import sources
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.shape.bars import BEHIND, Bar, Holder, Sizes, direction, lay
from brimbook.shape.outline import Point
from brimbook.steps.weighing import practice_or_yours
from brimbook.steps.wicks import WickPlan, is_outside

_ANGLES = {"auto": None, "across": 0.0, "deep": 90.0}
_SIZES = ("bar_width", "slot_width", "overhang", "wider", "clearance")


def holder(said: Said, place: str, plan: WickPlan | None) -> list[Figure]:
    """Every figure of this step [figures].

    said: the record as understood [said].
    place: path of the well [text].
    plan: of the wicks [plan].
    """
    sizes = sizes_of(said, place)
    if sizes is None or plan is None or plan.covering is None or is_outside(plan):
        return []
    wrong = _too_small(said, sizes)
    if wrong:
        said.fault(f"{place}.holder.{wrong[0]}", wrong[1])
        return []
    laid = laid_of(said, place, plan)
    if laid is None:
        said.fault(f"{place}.holder.bar_width", _crowded(said, place, plan, sizes))
        return []
    return _Told(said, f"{place}.holder", plan.covering.points, sizes, laid).figures()


def sizes_of(said: Said, place: str) -> Sizes | None:
    """Of the bars, as the maker wants them; none while one is faulty [sizes].

    said: the record as understood [said].
    place: path of the well [text].
    """
    found = [said.value(f"{place}.holder.{name}") for name in _SIZES]
    return None if None in found else Sizes(*found)


def laid_of(said: Said, place: str, plan: WickPlan | None) -> Holder | None:
    """The bars of a well, as they lie; none while they can't be told [holder].

    said: the record as understood [said].
    place: path of the well [text].
    plan: of the wicks [plan].
    """
    sizes, way = sizes_of(said, place), said.value(f"{place}.holder.direction")
    if None in (sizes, way, plan) or plan.covering is None or is_outside(plan) or _too_small(said, sizes):
        return None
    return lay(plan.outline, plan.covering.points, sizes, _ANGLES[way])


def _too_small(said: Said, sizes: Sizes) -> tuple[str, str] | None:
    """The size that leaves no room for a slot, and what to say of it."""
    slot = show.length(sizes.slot, said.display)
    if sizes.width < sizes.narrowest:
        least = show.length(_upward(said, sizes.narrowest), said.display)
        return "bar_width", f"A slot {slot} wide needs a bar at least {least} wide, or it breaks behind the slot."
    if sizes.overhang + sizes.wider / 2 < sizes.slot / 2 + BEHIND:
        least = show.length(_upward(said, sizes.slot / 2 + BEHIND - sizes.wider / 2), said.display)
        return "overhang", f"With a slot {slot} wide a bar reaches at least {least} over the rim."
    return None


def _upward(said: Said, value: float) -> float:
    """The next length that can be told, so that what is told is never too little."""
    step = 0.254 if said.display.length == "in" else 0.1
    return round(math.ceil(value / step - 1e-6) * step, 6)


def _crowded(said: Said, place: str, plan: WickPlan, sizes: Sizes) -> str:
    """What to change where bars would overlap."""
    width, angle = show.length(sizes.width, said.display), _ANGLES[said.value(f"{place}.holder.direction") or "auto"]
    for part in (0.75, 0.5, 0.25, 0.0):
        narrower = _upward(said, sizes.narrowest + part * (sizes.width - sizes.narrowest))
        if narrower < sizes.width and lay(plan.outline, plan.covering.points, Sizes(narrower, *_rest(sizes)), angle) is not None:
            return f"The wicks stand too close for bars {width} wide. Make the bars {show.length(narrower, said.display)} wide, or move the wicks apart."
    if angle is not None and lay(plan.outline, plan.covering.points, sizes) is not None:
        return f"The wicks stand too close for bars {width} wide that lie this way. Turn the bars, or move the wicks apart."
    return f"The wicks stand too close for bars with slots {show.length(sizes.slot, said.display)} wide. Move the wicks apart."


def _rest(sizes: Sizes) -> tuple[float, ...]:
    return sizes.slot, sizes.overhang, sizes.wider, sizes.clearance


class _Told:
    """The bars as figures."""

    def __init__(self, said: Said, at: str, wicks: tuple[Point, ...], sizes: Sizes, laid: Holder) -> None:
        self.said, self.at, self.wicks, self.sizes, self.laid = said, at, wicks, sizes, laid

    def figures(self) -> list[Figure]:
        """All of them, bar by bar, then those of all bars [figures]."""
        bars = [figure for number, bar in enumerate(self.laid.bars, 1) for figure in self._bar(number, bar)]
        return [*self._turn(), *bars, *self._all([figure for figure in bars if figure.key.endswith(".length")])]

    def _bar(self, number: int, bar: Bar) -> list[Figure]:
        at, name = f"{self.at}.bar_{number}", self._name(number)
        opening = self._figure(f"{at}.opening", f"Opening below {name.lower()}", bar.right - bar.left,
                               "wall on the right − wall on the left, along the bar, from the middle of the outline",
                               f"{_told(bar.right, self.said)} {self._less(bar.left)}")
        slots = [figure for row in range(len(bar.slots)) for figure in self._slot(at, name, bar, row)]
        length = self._figure(
            f"{at}.length", name, bar.length, "opening below it + what the rim is wider + 2 × over the rim",
            f"{_told(opening.value, self.said)} + {self._put('wider')} + 2 × {self._put('overhang')}",
            says=f"{name}: {show.length(bar.length, self.said.display)} long, {self._slots(slots)}", uses=(opening.key,),
            constants=(self._constant("overhang", "Over the rim, each side"), self._constant("wider", "The rim is wider by")))
        return [opening, length, *slots]

    def _name(self, number: int) -> str:
        return "Bar" if len(self.laid.bars) == 1 else f"Bar {number}"

    def _slots(self, slots: list[Figure]) -> str:
        """In words: slot at 51 mm from the left end."""
        places = [figure.shown for figure in slots if figure.key.endswith(".along")]
        listed = " and ".join([", ".join(places[:-1]), places[-1]] if len(places) > 1 else places)
        return f"slot{'s' if len(places) > 1 else ''} at {listed} from the left end"

    def _slot(self, at: str, name: str, bar: Bar, row: int) -> list[Figure]:
        slot = bar.slots[row]
        (x, y), (cosine, sine) = self.wicks[slot.wick], direction(self.laid.angle)
        along, across = self._turned(x, cosine, y, sine), self._turned(y, cosine, -x, sine)
        label = f"{name}, slot for wick {slot.wick + 1}"
        half = f"{self._put('slot')} ÷ 2"
        return [
            self._figure(f"{at}.slot_{row + 1}.along", f"{label}, from the left end", slot.along,
                         "over the rim + half of what the rim is wider + from the wall on the left to the wick",
                         f"{self._put('overhang')} + {self._put('wider')} ÷ 2 + {along} {self._less(bar.left)}",
                         constants=(self._constant("overhang", "Over the rim, each side"),)),
            self._figure(f"{at}.slot_{row + 1}.depth", f"{label}, how deep", slot.depth,
                         "from the front edge of the bar to the wick + half the slot", f"{across} {self._less(bar.front)} + {half}",
                         constants=(self._constant("slot_width", "Width of a slot"), self._constant("bar_width", "Width of a bar"),
                                    Constant("Stick left behind a slot, at least", show.length(BEHIND, self.said.display),
                                             sources.PRACTICE))),
        ]

    def _turn(self) -> list[Figure]:
        if self.laid.angle == 0:
            return []
        told, way = show.trimmed(abs(self.laid.angle), 2, self.said.display), "counterclockwise" if self.laid.angle > 0 else "clockwise"
        return [Figure(f"{self.at}.turn", f"Bars turned {way}", abs(self.laid.angle), "°", f"{told}°",
                       formula="from lying left to right, seen from above", numbers=told, worked=f"{told}°",
                       says=f"The bars lie turned by {told}° {way}, seen from above")]

    def _all(self, lengths: list[Figure]) -> list[Figure]:
        """How many bars, and the stick for all of them."""
        count = len(lengths)
        keys = tuple(figure.key for figure in lengths)
        bars = Figure(f"{self.at}.bars", "Bars" if count > 1 else "Bar", count, "pieces", str(count),
                      formula="the fewest in which every wick's slot fits", numbers=" + ".join(["1"] * count), uses=keys,
                      constants=(self._constant("clearance", "Least gap between bars"),))
        stick = self._figure(f"{self.at}.stick", "Stick in all", sum(figure.value for figure in lengths), "all bars, end to end",
                             " + ".join(_told(figure.value, self.said) for figure in lengths), uses=keys)
        return [bars, stick] if count > 1 else [bars]

    def _figure(self, key: str, label: str, value: float, formula: str, numbers: str, **more) -> Figure:
        display = self.said.display
        return Figure(key, label, value, "mm", show.length(value, display), formula=formula, numbers=numbers,
                      worked=f"{show.significant(round(value, 6), 6, display)} mm", **more)

    def _constant(self, leaf: str, name: str) -> Constant:
        path = f"{self.at}.{leaf}"
        return practice_or_yours(self.said, path, name, show.length(self.said.value(path), self.said.display))

    def _put(self, size: str) -> str:
        return _told(getattr(self.sizes, size), self.said)

    def _less(self, value: float) -> str:
        """Taken away, without a sign upon a sign."""
        return f"{'+' if value < 0 else '−'} {_told(abs(value), self.said)}"

    def _turned(self, first: float, cosine: float, second: float, sine: float) -> str:
        """The numbers of first × cosine + second × sine, where one is nothing only the other."""
        if sine == 0 or cosine == 0:
            return self._signed(first if sine == 0 else second)
        return (f"{self._signed(first)} × {self._signed(cosine)} {self._less(-second)} × {_told(sine, self.said)}")

    def _signed(self, value: float) -> str:
        told = _told(value, self.said)
        return f"({told})" if told.startswith("−") else told


def _told(value: float, said: Said) -> str:
    """Without the dust of sines and cosines."""
    return show.significant(round(value, 8), 8, said.display)
