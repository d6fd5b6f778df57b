"""Generic waxes to start from; weighing your own beats them."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.sources import Source


@dataclass(frozen=True)
class Wax:
    """A wax: its density hot as poured, and cold as set."""

    kind: str
    label: str
    hint: str
    density_poured: str
    density_set: str
    poured_source: Source
    set_source: Source


WAXES = (
    Wax("soy", "Soy wax", "Hydrogenated vegetable wax for containers.", "0.86 g/mL", "0.92 g/mL",
        sources.SOY_WAX_POURED, sources.MEMORY),
    Wax("paraffin", "Paraffin wax", "", "0.77 g/mL", "0.90 g/mL", sources.MEMORY, sources.PARAFFIN_SET),
    Wax("beeswax", "Beeswax", "", "0.82 g/mL", "0.96 g/mL", sources.MEMORY, sources.BEESWAX_SET),
    Wax("own", "Another wax", "Weigh a known volume of it, hot and set.", "", "", sources.YOURS, sources.YOURS),
)


def source_of_density(kind: str, basis: str, typed: str) -> Source:
    """Where the wax density in a record comes from [source].

    kind: the wax's kind in the record [text].
    basis: poured or set [text].
    typed: the density in the record, as text [text].

    >>> source_of_density("paraffin", "set", "0.90 g/mL").standing
    'second hand'
    """
    known = {wax.kind: wax for wax in WAXES}.get(kind)
    if known is None:
        return sources.YOURS
    density, source = ((known.density_poured, known.poured_source) if basis == "poured"
                       else (known.density_set, known.set_source))
    return source if density == typed else sources.YOURS
