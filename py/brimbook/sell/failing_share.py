"""How large the share that fails may be in the long run, told by the batches so far."""

import math

# Of the standard normal distribution: 95 of 100 lie within.
WITHIN_95 = 1.959963984540054


def least_failing(failed: float, made: float) -> float:
    """The least share that fails in the long run, of a range that holds it 95 times in 100 [–].

    failed: so far [count].
    made: so far, more than 0 [count].

    Source: the interval of E. B. Wilson (1927), as in NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1.

    >>> round(least_failing(2, 24), 4), least_failing(0, 24)
    (0.0232, 0.0)
    """
    # With none failed the end lies on 0, and rounding would put it a hair beside.
    return _end(failed, made, -1) if failed else 0.0


def most_failing(failed: float, made: float) -> float:
    """The largest share that fails in the long run, of a range that holds it 95 times in 100 [–].

    failed: so far [count].
    made: so far, more than 0 [count].

    Source: the interval of E. B. Wilson (1927), as in NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1.

    >>> round(most_failing(2, 24), 4), round(most_failing(0, 24), 4)
    (0.2585, 0.138)
    """
    return _end(failed, made, +1) if failed < made else 1.0


def _end(failed: float, made: float, side: int) -> float:
    share, squared = failed / made, WITHIN_95**2
    half = WITHIN_95 * math.sqrt(share * (1 - share) / made + squared / (4 * made**2))
    return (share + squared / (2 * made) + side * half) / (1 + squared / made)
