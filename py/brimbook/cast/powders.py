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
    particle_density: str
    water_to_powder: str
    source: Source


POWDERS = (
    Powder("rapid", "Rapid-setting cement", "Calcium-sulfoaluminate type, sets in minutes.", "2.98 g/mL", "4:1",
           sources.RAPID_CEMENT),
    Powder("portland", "Portland cement", "Gray or white, neat.", "3.15 g/mL", "0.40", sources.PORTLAND),
    Powder("gypsum", "Gypsum plaster", "Casting plaster; not for hot wax unsealed.", "2.70 g/mL", "0.70",
           sources.PLASTER),
    Powder("own", "Another powder", "A mix with sand, or what your data sheet says.", "", "", sources.YOURS),
)


def source_of_density(kind: str, typed: str) -> Source:
    """Where the particle density in a record comes from [source].

    kind: the powder's kind in the record [text].
    typed: the particle density in the record, as text [text].

    >>> source_of_density("rapid", "3.05 g/mL").standing
    'your entry'
    """
    known = {powder.kind: powder for powder in POWDERS}.get(kind)
    return known.source if known and known.particle_density == typed else sources.YOURS
