"""The average system of the European Union: how much may be missing of one prepackage, and what the sign ℮ takes."""

import math
from collections.abc import Sequence

# The sign ℮ is for nominal quantities between these [g].
LEAST, MOST = 5.0, 10_000.0
# The sign is at least so high [mm].
SIGN = 3.0
# At most so many of a batch are below the first limit.
FEW = 0.025
# Up to so many grams: a share of the nominal quantity, or a weight [g]. Shares and weights take turns and meet at each step.
_LADDER = ((50.0, 0.09, None), (100.0, None, 4.5), (200.0, 0.045, None), (300.0, None, 9.0), (500.0, 0.03, None),
           (1000.0, None, 15.0), (MOST, 0.015, None))
# Figures of a nominal quantity up to so many grams are at least so high [mm].
_HEIGHTS = ((50.0, 2.0), (200.0, 3.0), (1000.0, 4.0))
_HIGHEST = 6.0
_TENTHS = 10
_HAIR = 1e-6


def covered(nominal: float) -> bool:
    """Is a nominal quantity one that the sign ℮ is for [yes or no]?

    nominal: quantity on the label [g].

    >>> covered(4.9), covered(5.0), covered(10000.0), covered(10001.0)
    (False, True, True, False)
    """
    return LEAST <= nominal <= MOST


def share_of_nominal(nominal: float) -> float | None:
    """The tolerable negative error as a share of the nominal quantity, none where it is a weight [–].

    nominal: quantity on the label, 5 g to 10 kg [g].

    Source: Directive 76/211/EEC, Annex I, 2.4.

    >>> share_of_nominal(173.0), share_of_nominal(250.0)
    (0.045, None)
    """
    return _step(nominal)[1]


def exact_error(nominal: float) -> float:
    """The tolerable negative error of one prepackage before it is rounded [g].

    nominal: quantity on the label, 5 g to 10 kg [g].

    Raises ValueError for any other quantity.

    Source: Directive 76/211/EEC, Annex I, 2.4.

    >>> exact_error(150.0), exact_error(250.0)
    (6.75, 9.0)
    """
    _, share, grams = _step(nominal)
    return nominal * share if grams is None else grams


def tolerable_error(nominal: float) -> float:
    """The tolerable negative error of one prepackage, a share rounded up to a tenth of a gram [g].

    nominal: quantity on the label, 5 g to 10 kg [g].

    Raises ValueError for any other quantity.

    Source: Directive 76/211/EEC, Annex I, 2.4; the rounding as in the annex to the Italian law 690/1978 that carries it out.

    >>> tolerable_error(150.0), tolerable_error(173.0), tolerable_error(400.0)
    (6.8, 7.8, 12.0)
    """
    return math.ceil(exact_error(nominal) * _TENTHS - _HAIR) / _TENTHS


def lower_limit(nominal: float, errors: int) -> float:
    """The nominal quantity less one or two tolerable errors: few may be below the first, none below the second [g].

    nominal: quantity on the label, 5 g to 10 kg [g].
    errors: 1 or 2 [count].

    Raises ValueError for a quantity that is not between 5 g and 10 kg.

    Source: Directive 76/211/EEC, Annex I, 1.2 and 1.3.

    >>> lower_limit(400.0, 1), lower_limit(400.0, 2)
    (388.0, 376.0)
    """
    return round(nominal - errors * tolerable_error(nominal), 6)


def below(weights: Sequence[float], limit: float) -> int:
    """How many of the weighed are below a limit [count].

    weights: of candles [g].
    limit: that they should reach [g].

    >>> below([388.0, 387.9, 401.0], 388.0)
    1
    """
    return sum(weight < limit - _HAIR for weight in weights)


def figure_height(nominal: float) -> float:
    """Least height of the figures of the nominal quantity [mm].

    nominal: quantity on the label [g].

    Source: Directive 76/211/EEC, Annex I, 3.1, as a government's page on European labels tells it.

    >>> [figure_height(grams) for grams in (50, 51, 200, 201, 1000, 1001)]
    [2.0, 3.0, 3.0, 4.0, 4.0, 6.0]
    """
    return next((height for most, height in _HEIGHTS if nominal <= most), _HIGHEST)


def _step(nominal: float) -> tuple[float, float | None, float | None]:
    if not covered(nominal):
        raise ValueError("The tolerable error is told for 5 g to 10 kg.")
    return next(step for step in _LADDER if nominal <= step[0])
