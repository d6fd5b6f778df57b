"""Scents in a fragrance: their density together, and the load at which a limit is reached."""


def density_together(parts: list[float], densities: list[float]) -> float:
    """Density of several scents mixed by weight [g/mL].

    parts: of each, by weight [–].
    densities: of each [g/mL].

    Volumes are taken to add up.

    Source: arithmetic identity, weight ÷ sum of volumes.

    >>> round(density_together([3.0, 1.0], [0.96, 0.84]), 4)
    0.9269
    """
    return sum(parts) / sum(part / density for part, density in zip(parts, densities))


def load_at_limit(limit: float, share: float) -> float:
    """Load of the whole fragrance with which one of its scents just keeps a limit [–].

    limit: of that scent, on the basis that the load is told on [–].
    share: of that scent in the fragrance [–].

    Source: arithmetic identity.

    >>> load_at_limit(0.05, 0.5)
    0.1
    """
    return limit / share
