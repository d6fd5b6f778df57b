"""Generic materials to start from, each figure with its source; a maker's own data sheet beats them."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.sources import Source


@dataclass(frozen=True)
class Material:
    """A material as the shelf offers it.

    facts are leaves of a material with their texts and where each comes from; dose is
    the text of a usual share, base what that is a share of, and ratio the text of a usual
    powder to water.
    """

    kind: str
    role: str
    label: str
    hint: str
    facts: dict[str, tuple[str, Source]]
    dose: str = ""
    base: str = "binder"
    ratio: str = ""

    def texts(self) -> dict[str, str]:
        """Its facts as texts, as a record holds them [texts]."""
        return {name: text for name, (text, _) in self.facts.items()}


OWN = "own"
_MEMORY, _PRACTICE = sources.MEMORY, sources.PRACTICE


def _binder(density: str, of: Source, least: str, most: str, working: str, demold: str, heat: str, heat_of: Source,
            follows: str = "observed") -> dict[str, tuple[str, Source]]:
    return {"particle_density": (density, of), "water_least": (least, _MEMORY), "water_most": (most, _MEMORY),
            "working_time": (working, _MEMORY), "demold_time": (demold, _MEMORY),
            "reference_temperature": ("20 °C", _PRACTICE), "follows": (follows, _PRACTICE), "heat": (heat, heat_of)}


def _grain(density: str, of: Source, **more: tuple[str, Source]) -> dict[str, tuple[str, Source]]:
    return {"particle_density": (density, of), **more}


GENERIC = (
    Material("rapid", "binder", "Rapid-setting cement", "Calcium-sulfoaluminate type, sets in minutes.", _binder(
        "2.98 g/mL", sources.RAPID_CEMENT, "0.20", "0.40", "15 min", "45 min", "350 kJ/kg", _MEMORY), ratio="4:1"),
    Material("portland", "binder", "Portland cement", "Gray or white, neat.", _binder(
        "3.15 g/mL", sources.PORTLAND, "0.28", "0.60", "60 min", "24 h", "200 kJ/kg", _MEMORY, "portland"), ratio="0.40"),
    Material("gypsum", "binder", "Gypsum plaster", "Casting plaster; not for hot wax unsealed.", _binder(
        "2.70 g/mL", sources.PLASTER, "0.60", "0.80", "8 min", "30 min", "119 kJ/kg", sources.GYPSUM_HEAT), ratio="0.70"),
    Material("sand", "sand", "Silica sand", "Dry, graded fine for thin walls.",
             _grain("2.65 g/mL", sources.SILICA_SAND), dose="100 %"),
    Material("limestone", "sand", "Limestone powder", "Calcite, ground: a white filler.",
             _grain("2.70 g/mL", _MEMORY), dose="20 %"),
    Material("metakaolin", "pozzolan", "Metakaolin", "White; less efflorescence.",
             _grain("2.50 g/mL", _MEMORY, most=("15 %", _MEMORY)), dose="10 %"),
    Material("silica_fume", "pozzolan", "Silica fume", "Very fine; needs a plasticizer.",
             _grain("2.20 g/mL", _MEMORY, most=("10 %", _MEMORY)), dose="5 %"),
    Material("fly_ash", "pozzolan", "Fly ash", "Between 1.9 and 2.8 g/mL: look at its sheet.",
             _grain("2.30 g/mL", _MEMORY, most=("25 %", _MEMORY)), dose="15 %"),
    Material("slag", "pozzolan", "Ground slag", "Granulated blast-furnace slag.",
             _grain("2.90 g/mL", _MEMORY, most=("50 %", _MEMORY)), dose="30 %"),
    Material("red_oxide", "pigment", "Red iron oxide", "Hematite.",
             _grain("5.20 g/mL", sources.HEMATITE, most=("10 %", sources.PIGMENT_LIMIT)), dose="3 %"),
    Material("black_oxide", "pigment", "Black iron oxide", "Magnetite.",
             _grain("5 g/mL", sources.MINERALS, most=("10 %", sources.PIGMENT_LIMIT)), dose="3 %"),
    Material("yellow_oxide", "pigment", "Yellow iron oxide", "Goethite.",
             _grain("4.10 g/mL", _MEMORY, most=("10 %", sources.PIGMENT_LIMIT)), dose="3 %"),
    Material("titanium_white", "pigment", "Titanium white", "Rutile.",
             _grain("4.20 g/mL", sources.MINERALS, most=("10 %", sources.PIGMENT_LIMIT)), dose="3 %"),
    Material("glass_fiber", "fiber", "Alkali-resistant glass fiber", "Chopped, for premix.",
             _grain("2.70 g/mL", _MEMORY, most=("5 %", _MEMORY)), dose="2 %", base="mix"),
    Material("plastic_fiber", "fiber", "Polypropylene fiber", "Fine: against shrinkage cracks.",
             _grain("0.91 g/mL", sources.POLYPROPYLENE, most=("1 %", _MEMORY)), dose="0.2 %"),
    Material("plasticizer", "plasticizer", "High-range plasticizer, liquid", "About a third solids.",
             _grain("1.30 g/mL", _MEMORY, water_content=("65 %", _MEMORY), most=("2 %", _MEMORY)), dose="0.5 %"),
    Material("polymer", "polymer", "Acrylic polymer in water", "About half solids; its water counts.",
             _grain("1.08 g/mL", _MEMORY, water_content=("53 %", _MEMORY), most=("20 %", _MEMORY)), dose="10 %"),
)
_BY_KIND = {material.kind: material for material in GENERIC}


def generic(kind: str) -> Material | None:
    """The generic material of a kind, or nothing where there is none [material].

    kind: as a record names it [text].

    >>> generic("sand").facts["particle_density"][0]
    '2.65 g/mL'
    """
    return _BY_KIND.get(kind)
