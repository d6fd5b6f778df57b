"""Generic powders to start from; a maker's own data sheet beats them."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.sources import Source


@dataclass(frozen=True)
class Powder:
    """A castable powder: what a new mix starts from."""

    kind: str
    label: str
    hint: str
    particle_density: float | None
    water_to_powder: str
    source: Source


POWDERS = (
    Powder("rapid", "Rapid-setting cement", "Calcium-sulfoaluminate type, sets in minutes.", 2.98, "4:1",
           sources.RAPID_CEMENT),
    Powder("portland", "Portland cement", "Gray or white, neat.", 3.15, "0.40", sources.PORTLAND),
    Powder("gypsum", "Gypsum plaster", "Casting plaster; not for hot wax unsealed.", 2.70, "0.70",
           sources.PLASTER),
    Powder("own", "Another powder", "A mix with sand, or what your data sheet says.", None, "", sources.YOURS),
)


def source_of_density(kind: str, density: float) -> Source:
    """Where the particle density in a record comes from [source].

    kind: the powder's kind in the record [text].
    density: the particle density in the record [g/mL].

    >>> source_of_density("rapid", 3.05).standing
    'your entry'
    """
    known = {powder.kind: powder for powder in POWDERS}.get(kind)
    return known.source if known and known.particle_density == density else sources.YOURS
