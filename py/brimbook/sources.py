"""Where a constant or a formula comes from, and how far it can be trusted.

Standing is one of:
    published           read in the source that is named
    second hand         read in a copy that quotes the source
    reference library   agrees with an independent library
    common practice     "common practice, no source"
    from memory         not read; to be replaced when someone reads it
    your entry          the maker typed it
"""

from dataclasses import dataclass


@dataclass(frozen=True)
class Source:
    """A source and its standing."""

    text: str
    standing: str


WATER_DENSITY = Source(
    "Recommended table for the density of water between 0 °C and 40 °C, Metrologia 38 (2001) 301, "
    "doi 10.1088/0026-1394/38/4/3", "second hand")
AIR_BUOYANCY = Source("ISO 8655-6 factor Z: air 1.2 kg/m³, weights 8000 kg/m³", "second hand")
ABSOLUTE_VOLUME = Source(
    "Absolute-volume method of ACI 211.1, as worked in the Navy training course Engineering Aid "
    "(NAVEDTRA 14071), chapter 17", "published")
RAPID_CEMENT = Source("A maker's data sheet for a calcium-sulfoaluminate cement", "published")
PORTLAND = Source("NAVEDTRA 14070, chapter 17; Concrete Construction, “Volume of grout”", "published")
PLASTER = Source(
    "Fitted to published dry densities of generic gypsum plasters at 38 to 74 parts of water (within 1 %)",
    "second hand")
SOY_WAX_POURED = Source(
    "Tristearin at 80 °C by the saponification-value relation of JAOCS 76 (1999) 1415", "second hand")
PARAFFIN_SET = Source("General encyclopaedia, paraffin wax, solid", "second hand")
BEESWAX_SET = Source("Beekeeping handbook page: specific gravity 0.958 to 0.975 at 15 °C", "second hand")
MEMORY = Source("Trade knowledge, from memory: weigh your own to be sure", "from memory")
PRACTICE = Source("common practice, no source", "common practice")
YOURS = Source("Typed by you", "your entry")
STRAY_READING = Source("Grubbs' test for one outlying reading, two-sided, 5 %; table agrees with scipy",
                       "reference library")
STUDENT = Source("Student's t, two-sided, 95 %; table agrees with scipy", "reference library")
ROUNDING = Source("Evaluation of measurement data (GUM), JCGM 100:2008, 4.3.7", "from memory")
IDENTITY = Source("Arithmetic identity", "published")
GEOMETRY = Source("Volume of a solid by formula", "published")
