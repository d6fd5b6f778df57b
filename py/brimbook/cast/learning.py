"""What the maker's own pours teach about a mix: its true fresh density, and the allowance it needs.

Two things are not known: x, the logarithm of the true fresh density over that of the table, and y, the logarithm of one
plus the share of mix that a mold takes beyond its measured room. Three voices speak of them:

    table   x is 0, give or take what is not known of particles and air
    cups    a cup of known volume tells x, with a scatter, and an error of the cup's volume that does not average out
    pours   what a mold took tells x + y, with a scatter; y is expected to be a film on bowl and tools, give or take, and
            holds what the cavity was measured wrong by, which is the same in every pour

All are normal, so that the marginals are closed: for x the voices are 0, the cups' mean and the pours' mean less the
film expected, weighted by one over their variance; for y they are the film expected and the pours' mean less what table
and cups say of x. A scatter is that of the log, pooled with the one expected, and Student's t stands for its own doubt.
"""

import math
from dataclasses import dataclass

# Standard deviations as shares, and the film's mean: from memory, or common practice.
TABLE_SCATTER = 0.02
CUP_COMMON, CUP_SCATTER = 0.005, 0.007
FILM, FILM_SCATTER = 0.03, 0.03
POUR_SCATTER = 0.01
# The scatter that is expected counts as so many readings of it.
EXPECTED_FREEDOM = 4
FEWEST_FOR_ALLOWANCE = 2
# The normal deviates of 95 % about the middle, and of 95 % below.
_TWO_SIDED, _ONE_SIDED = 1.959963985, 1.644853627


@dataclass(frozen=True)
class Sample:
    """Readings of one thing: their mean, the scatter of one, pooled with the expected one, its degrees of freedom."""

    values: tuple[float, ...]
    mean: float
    expected: float
    scatter: float
    freedom: float

    @property
    def variance(self) -> float:
        """Of the mean, by scatter alone [–]."""
        return self.scatter**2 / len(self.values)


@dataclass(frozen=True)
class Voice:
    """One estimate of a thing: its variance, how much of that is a scatter seen in readings, and its freedom."""

    value: float
    variance: float
    seen: float = 0.0
    freedom: float = math.inf


@dataclass(frozen=True)
class Estimate:
    """Several voices in one: value, variance, each voice's weight, and degrees of freedom."""

    value: float
    variance: float
    weights: tuple[float, ...]
    freedom: float

    @property
    def plus_minus(self) -> float:
        """Half of the interval that holds it with 95 % [unit of the value]."""
        return student_factor(self.freedom) * math.sqrt(self.variance)


@dataclass(frozen=True)
class Seen:
    """What one pour told, by its number in the log: ln of its cup's density, and of what its molds took, over the table's."""

    number: int
    cup: float | None
    taken: float | None


@dataclass(frozen=True)
class Learned:
    """What the pours say: the fresh density over that of the table, its ± as a share, and the allowance to plan with.

    cups and pours are the readings as logarithms of a density over the table's; density
    is x, need is y, taken is x + y, each an estimate in logarithms; without_pours is x by
    table and cups alone; log is what each pour told.
    """

    density_ratio: float
    density_relative: float
    allowance: float | None
    cups: Sample | None = None
    pours: Sample | None = None
    density: Estimate | None = None
    without_pours: Estimate | None = None
    need: Estimate | None = None
    taken: Estimate | None = None
    log: tuple[Seen, ...] = ()


def student_factor(freedom: float, one_sided: bool = False) -> float:
    """Student's t for 95 %, for any degrees of freedom from 4 on [–].

    freedom: degrees of freedom, whole or not [–].
    one_sided: 95 % below, instead of about the middle [yes or no].

    Source: series in one over the degrees of freedom, Abramowitz and Stegun 26.7.5, from memory; agrees with scipy.

    >>> round(student_factor(4), 2), round(student_factor(10), 3), round(student_factor(math.inf), 2)
    (2.78, 2.228, 1.96)
    """
    z, v = _ONE_SIDED if one_sided else _TWO_SIDED, 1 / freedom
    terms = ((z**3 + z) / 4, (5 * z**5 + 16 * z**3 + 3 * z) / 96, (3 * z**7 + 19 * z**5 + 17 * z**3 - 15 * z) / 384,
             (79 * z**9 + 776 * z**7 + 1482 * z**5 - 1920 * z**3 - 945 * z) / 92160)
    return z + sum(term * v**power for power, term in enumerate(terms, start=1))


def sample(values: list[float], expected: float, rounding: float = 0.0) -> Sample:
    """Readings of one thing, their scatter pooled with the one expected [sample].

    values: one or more readings [–].
    expected: standard deviation expected of a reading [–].
    rounding: standard deviation of the scale's rounding in it [–].

    Source: scaled inverse chi-square as the prior of a normal variance, from memory.

    >>> few = sample([0.01, 0.03], 0.01)
    >>> round(few.scatter, 4), few.freedom
    (0.011, 5)
    """
    mean = math.fsum(values) / len(values)
    squares = math.fsum((value - mean) ** 2 for value in values)
    freedom = EXPECTED_FREEDOM + len(values) - 1
    expected = math.hypot(expected, rounding)
    scatter = math.sqrt((EXPECTED_FREEDOM * expected**2 + squares) / freedom)
    return Sample(tuple(values), mean, expected, scatter, freedom)


def combine(voices: list[Voice]) -> Estimate:
    """Independent voices on one thing, weighted by one over their variance [estimate].

    voices: one or more [voices].

    Source: inverse-variance weights; degrees of freedom by Welch and Satterthwaite, from memory.

    >>> both = combine([Voice(0.0, 4.0), Voice(1.0, 1.0)])
    >>> both.value, both.variance, both.weights
    (0.8, 0.8, (0.2, 0.8))
    """
    variance = 1 / math.fsum(1 / voice.variance for voice in voices)
    weights = tuple(variance / voice.variance for voice in voices)
    value = math.fsum(weight * voice.value for weight, voice in zip(weights, voices))
    doubt = math.fsum((weight**2 * voice.seen) ** 2 / voice.freedom for weight, voice in zip(weights, voices))
    return Estimate(value, variance, weights, variance**2 / doubt if doubt else math.inf)


def film_variance(cavity_relative: float) -> float:
    """Variance of what a mold takes beyond its room: the film's, and that of the cavity as measured [–].

    cavity_relative: ± of the cavity at 95 %, as a share [–].

    >>> round(film_variance(0.01), 6)
    0.000925
    """
    return FILM_SCATTER**2 + (cavity_relative / 2) ** 2


def learn(cups: list[float], pours: list[float], cavity_relative: float = 0.0, cup_rounding: float = 0.0,
          pour_rounding: float = 0.0) -> Learned | None:
    """What cups and pours say together; nothing where there are none [learned].

    cups: ln of each cup's density over the table's [–].
    pours: ln of what a mold took, per mL of its room, over the table's density [–].
    cavity_relative: ± of the cavity at 95 %, as a share [–].
    cup_rounding: standard deviation that the scale's steps leave on a cup [–].
    pour_rounding: the same on what a mold took [–].

    >>> taught = learn([-0.012, -0.014], [0.031, 0.029, 0.024])
    >>> round(taught.density_ratio, 4), round(taught.density_relative, 4), round(taught.allowance, 3)
    (0.9888, 0.0126, 0.06)
    """
    if not cups and not pours:
        return None
    cup = sample(cups, CUP_SCATTER, cup_rounding) if cups else None
    pour = sample(pours, POUR_SCATTER, pour_rounding) if pours else None
    film, spread = math.log(1 + FILM), film_variance(cavity_relative)
    apart = [Voice(0.0, TABLE_SCATTER**2)]
    if cup is not None:
        apart.append(Voice(cup.mean, CUP_COMMON**2 + cup.variance, cup.variance, cup.freedom))
    before = combine(apart)
    if pour is None:
        return Learned(math.exp(before.value), before.plus_minus, None, cup, None, before, before)
    density = combine([*apart, Voice(pour.mean - film, spread + pour.variance, pour.variance, pour.freedom)])
    need = combine([Voice(film, spread),
                    Voice(pour.mean - before.value, pour.variance + before.variance, pour.variance, pour.freedom)])
    taken = combine([Voice(before.value + film, before.variance + spread),
                     Voice(pour.mean, pour.variance, pour.variance, pour.freedom)])
    margin = student_factor(pour.freedom, one_sided=True) * math.sqrt(taken.variance + pour.scatter**2)
    enough = len(pours) >= FEWEST_FOR_ALLOWANCE
    return Learned(math.exp(density.value), density.plus_minus, math.exp(need.value + margin) - 1 if enough else None,
                   cup, pour, density, before, need, taken)
