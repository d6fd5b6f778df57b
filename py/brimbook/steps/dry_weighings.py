"""The weighings of a drying vessel that count, and whether it is dry enough by them."""

from dataclasses import dataclass

from brimbook.cast.dryness import Curve, Forecast, range_of
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, HOUR
from brimbook.record.said import Said

# A day, as a maker keeps to it.
_ABOUT_A_DAY = 20 * HOUR
# A step of the scale that is more than so much of the vessel can't tell dry from damp.
_COARSE = 0.02
# Nearly all likely curves leave no more than so many times what may be left.
_SURE = 2.0


@dataclass(frozen=True)
class Weighed:
    """The weighings that count: moment of the first [s since 2000], times since [s] and weights [g]; and what they are held
    against: the dry weight [g] if that is known, the margin and the steady weight as shares, the step of the scale [g]."""

    said: Said
    at: str
    first: float
    times: tuple[float, ...]
    weights: tuple[float, ...]
    dry_weight: float | None
    margin: float
    steady: float
    step: float

    @property
    def near_dry(self) -> float:
        """The dry weight, or what is nearest to it [g]."""
        return self.weights[-1] if self.dry_weight is None else self.dry_weight

    @property
    def spare(self) -> float:
        """Water that may be left in a vessel that is dry enough, no less than the scale can show [g]."""
        return max(self.margin * self.near_dry, self.step)

    @property
    def steady_loss(self) -> float:
        """The most that a steady vessel loses in a day, no less than the scale can show [g]."""
        return max(self.steady * self.near_dry, self.step)

    @property
    def is_coarse(self) -> bool:
        """Is the scale too coarse to tell a dry vessel from a damp one [yes or no]?"""
        return self.step > _COARSE * self.near_dry

    def put(self, value: float) -> str:
        """A number that is put in, to eight digits [text].

        value: any finite number [–].
        """
        return show.significant(value, 8, self.said.display)

    def worked(self, value: float) -> str:
        """A result before it is rounded, to two decimals [text].

        value: any finite number [–].
        """
        return show.trimmed(value, 2, self.said.display)

    def mass(self, grams: float) -> str:
        """A small weight, to two digits, and no finer than a tenth of the scale's step [text].

        grams: weight [g].
        """
        tenth = self.step / 10
        return show.small_mass(round(grams / tenth) * tenth, self.said.display)


def is_dry(weighed: Weighed, forecast: Forecast | None) -> bool:
    """Is the vessel dry enough by its newest weighing [yes or no]?

    weighed: the weighings that count [weighings].
    forecast: the curve through them, if there is one [forecast].

    Without a dry weight it takes a steady weight, a curve that has no more than the margin left, and of the likely curves
    nearly all within some times that.
    """
    if weighed.is_coarse:
        return False
    if weighed.dry_weight is not None:
        return weighed.weights[-1] - weighed.dry_weight <= weighed.spare + 1e-9
    if forecast is None or not is_steady(weighed) or left_by(weighed, forecast.curve) > weighed.spare:
        return False
    return range_of([left_by(weighed, one) for one in forecast.likely])[1] <= _SURE * weighed.spare


def left_by(weighed: Weighed, curve: Curve) -> float:
    """Water left at the newest weighing by a curve [g].

    weighed: the weighings that count [weighings].
    curve: through them [curve].
    """
    return curve.left(weighed.times[-1])


def a_day_before(weighed: Weighed) -> int | None:
    """The number of the last weighing that is about a day older than the newest, or more; nothing if none is [count].

    weighed: the weighings that count [weighings].
    """
    old = [number for number, time in enumerate(weighed.times) if time <= weighed.times[-1] - _ABOUT_A_DAY]
    return old[-1] if old else None


def is_steady(weighed: Weighed) -> bool:
    """Does the vessel lose no more in a day than a steady one [yes or no]?

    weighed: the weighings that count [weighings].

    A small loss a day on the average of many days is not enough where it adds up to more than may be left.
    """
    before = a_day_before(weighed)
    if before is None:
        return False
    days, lost = (weighed.times[-1] - weighed.times[before]) / DAY, weighed.weights[before] - weighed.weights[-1]
    return lost / days <= weighed.steady_loss and lost <= weighed.spare
