"""Generic waxes to start from; weighing your own beats them."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.sources import Source


@dataclass(frozen=True)
class Wax:
    """A wax: its density hot as poured, and cold as set; the temperature its hot density is told for [°C], and who says so.

    expansion_source tells who says that it loses the usual density for each degree.
    """

    kind: str
    label: str
    hint: str
    density_poured: float | None
    density_set: float | None
    poured_source: Source
    set_source: Source
    told_at: float | None = None
    expansion_source: Source = sources.MEMORY


WAXES = (
    Wax("soy", "Soy wax", "Hydrogenated vegetable wax for containers.", 0.86, 0.92,
        sources.SOY_WAX_POURED, sources.MEMORY, 80.0, sources.OIL_EXPANSION),
    Wax("paraffin", "Paraffin wax", "", 0.77, 0.90, sources.MEMORY, sources.PARAFFIN_SET, 80.0,
        sources.ALKANE_EXPANSION),
    Wax("beeswax", "Beeswax", "", 0.82, 0.96, sources.MEMORY, sources.BEESWAX_SET, 98.0),
    Wax("own", "Another wax", "Weigh a known volume of it, hot and set.", None, None, sources.YOURS, sources.YOURS),
)

_BY_KIND = {wax.kind: wax for wax in WAXES}


def generic_wax(kind: str) -> Wax | None:
    """The generic wax of a kind, if there is one [wax].

    kind: as a record names it [text].

    >>> generic_wax("soy").label, generic_wax("unheard of")
    ('Soy wax', None)
    """
    return _BY_KIND.get(kind)


def source_of_density(kind: str, basis: str, density: float) -> Source:
    """Where the wax density in a record comes from [source].

    kind: the wax's kind in the record [text].
    basis: poured or set [text].
    density: in the record, on that basis [g/mL].

    >>> source_of_density("paraffin", "set", 0.90).standing
    'second hand'
    """
    known = _BY_KIND.get(kind)
    if known is None:
        return sources.YOURS
    ours, source = ((known.density_poured, known.poured_source) if basis == "poured"
                    else (known.density_set, known.set_source))
    return source if ours == density else sources.YOURS
