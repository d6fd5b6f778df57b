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
GYPSUM_HEAT = Source(
    "Heats of formation of hemihydrate −1576.7, water −285.8 and dihydrate −2022.6 kJ/mol give 17.2 kJ/mol, "
    "119 kJ/kg of hemihydrate", "from memory")
SILICA_SAND = Source("NAVEDTRA 14070, chapter 17: fine aggregate 2.65", "published")
HEMATITE = Source("University mineral pages and an engineering materials page: hematite 4.9 to 5.3", "published")
MINERALS = Source("Mineral comparison notes: magnetite 4.9 to 5.2, rutile 4.2 to 4.3", "second hand")
POLYPROPYLENE = Source("A reference page on plastics: polypropylene 0.900 to 0.910", "published")
PIGMENT_LIMIT = Source("ASTM C979/C979M, 1.4: pigments at most 10 % of the cement by mass", "second hand")
YOUR_POURS = Source("Worked out from the pours that you logged", "your entry")
STUDENT_SERIES = Source("Student's t by a series in 1 ÷ degrees of freedom; agrees with scipy within 0.2 % from 4 on",
                        "reference library")
WEIGHTED = Source("Independent estimates weighted by 1 ÷ their variance", "from memory")
FLOW = Source("ASTM C1437: flow is the increase of the average diameter over that of the base", "second hand")
CONE_SIZES = Source("Molds of ASTM C230 and EN 1015-3 and the mini-slump cone, by their dimensions", "from memory")
CONSISTENCY = Source("EN 1015-6: stiff below 140 mm, plastic to 200 mm, soft above", "from memory")
LEAST_SQUARES = Source("Straight line by least squares", "from memory")
LIQUID_HEAD = Source(
    "ACI 347: a mix that flows freely presses as a liquid, p = w h; Concrete Construction, “Form pressure”", "published")
GRAVITY = Source("Standard gravity, by definition", "from memory")
HYDROSTATICS = Source("Hydrostatics: pressure grows evenly with depth; Archimedes' principle", "from memory")
ISO_BOLTS = Source("EN ISO 898-1, proof loads of coarse threads, in a copy of the table", "second hand")
SAE_BOLTS = Source("SAE J429, proof stresses of grades 2, 5 and 8, in a copy of the table", "second hand")
METRIC_WASHER = Source("ISO 7089 plain washer, in a copy of the table", "second hand")
WIDE_WASHER = Source("Wide plain washer of ASME B18.21.1", "from memory")
NUT_FACTOR = Source("Torque = 0.20 × diameter × force, for a dry, plain bolt", "second hand")
BEAM = Source("Beam fixed at both ends under an even load: w L⁴ ÷ (384 E I)", "from memory")
PRINT_STRENGTH = Source("Rough, for a layered print under lasting load: try a bolt on a scrap", "from memory")
PLA = Source("A reference page on print plastics: PLA 1.22 to 1.26 g/mL, glass transition 55 to 65 °C", "published")
PETG = Source("A reference page on print plastics: PETG 1.25 to 1.29 g/mL, glass transition 75 to 85 °C", "published")
HEAT_CAPACITY = Source(
    "NIST paper on the heat capacity of hydrating cement paste: 4.18 × water + 0.75 × cement, in J/(g·K)", "published")
STILL_WATER = Source(
    "Rates of evaporation from swimming pools in active use, ASHRAE Transactions 104 (1998) 1A: undisturbed pools gave "
    "74 % of 95 × vapor pressure difference ÷ latent heat", "published")
VAPOR = Source("Magnus formula, 17.62 and 243.12 °C; agrees with iapws within 0.4 % from 0 to 40 °C", "reference library")
SETTING_RULE = Source(
    "Setting time halves per +20 °F (11.1 °C) and doubles per −20 °F: nfba.org, magazine of October 2020; told for "
    "concrete", "published")
ACI_STRENGTH = Source(
    "Table of ACI 211.1 in a course's copy: water-cement ratio and mean strength of concrete at 28 days, without added air",
    "second hand")
SURFACE = Source("Lateral area of a cone frustum, π (R + r) s, and area of a circle, π r²", "published")
EQUIVALENT_AGE = Source("Equivalent age of ASTM C1074, for Portland cement: exp(−E ÷ R × (1 ÷ T − 1 ÷ T₀)), in kelvin",
                        "second hand")
ACTIVATION = Source("33.5 kJ/mol, quoted as the default of ASTM C1074; its older editions had 40 to 45", "second hand")
GAS_CONSTANT = Source("Molar gas constant", "from memory")
TEMPERATURE_TIME = Source("Temperature-time factor of ASTM C1074, for Portland cement", "second hand")
DATUM = Source("ASTM C1074: 0 °C for Portland cement without admixtures; −10 °C is the traditional one", "second hand")
ADJUSTED_AGE = Source("EN 1992-1-1 (B.10), age adjusted to 20 °C", "from memory")
STRENGTH_GAIN = Source("EN 1992-1-1:2004 (3.2), cement of class N: 0.25", "second hand")
KEPT_DAMP = Source("Masonry and Concrete (2004), page 35: share of the design strength by days of moist curing; straight "
                   "lines between its entries", "published")
COLD_WEATHER = Source("ACI on cold weather concrete: air at or below 40 °F (5 °C) calls for protection", "published")
CURING_LEAST = Source("Curing above 50 °F (10 °C), general rule", "second hand")
THIN_SECTIONS = Source("ACI 306R table: concrete in sections thinner than 300 mm placed at 55 °F (13 °C) or warmer",
                       "from memory")
HOT_CONCRETE = Source("ACI 301-20 and 305.1-14: concrete at most 95 °F (35 °C)", "second hand")
DRYING_CURVE = Source("A reference chapter on drying rates: a constant rate at first, then a falling one", "published")
YOUR_WEIGHINGS = Source("Fitted to the weighings that you logged", "your entry")
NET_HEAT = Source("Net heats of combustion from heats of formation of n-eicosane and stearic acid; agree with chemicals 1.5.2",
                  "reference library")
FLAME_ASTM = Source("ASTM F2417 (edition 23 is the one seen): flame under 3 in, as a candle-makers' association quotes it",
                    "second hand")
FLAME_EN = Source("EN 15493, 2007 text: flame at most 75 mm, but 30 mm for a tea light", "second hand")
STOP_BURNING = Source("A military fire office: put a container candle out before the last 1/2 in of wax", "second hand")
NEWTON_COOLING = Source("Newton's law of cooling; worked problems on public pages come out the same", "published")
RESTING = Source("Technical questions and answers of a candle makers' association: before a burn test vegetable wax rests "
                 "14 days, paraffin 24 to 48 hours, mixes 1 to 14 days", "second hand")
SOY_MELTS = Source("US patent 11,008,532: hydrogenated natural oil for candles melts at 49 to 57 °C", "published")
PARAFFIN_MELTS = Source("General encyclopaedia, paraffin wax: melts at 46 to 68 °C", "second hand")
BEESWAX_MELTS = Source("Beekeeping handbook page: beeswax melts at 62 to 64 °C", "second hand")
IFRA = Source("IFRA standards: limits are shares of the finished product; category 12 is for candles and the like", "second hand")
FLASH_POINT = Source("NIST glossary: the lowest temperature, at 101.3 kPa, at which vapor takes fire from a flame in the stated "
                     "test", "published")
OPEN_CUP = Source("A closed cup reads about 5 to 10 K below an open one", "second hand")
CLP_FLAMMABLE = Source("Regulation (EC) 1272/2008 (CLP), Annex I, Table 2.6.1, flammable liquids", "published")
CLP_SENSITIZER = Source(
    "Regulation (EC) 1272/2008 (CLP), Annex I, Table 3.4.5, in a copy; different substances are not added up", "second hand")
CLP_NAMED = Source("Regulation (EC) 1272/2008 (CLP), Annex I, Table 3.4.6, in a copy: one tenth of what classifies",
                   "second hand")
OIL_EXPANSION = Source("Density and viscosity of vegetable oils, JAOCS 76 (1999) 1415: about 0.00064 g/mL lost for each °C",
                       "published")
ALKANE_EXPANSION = Source("n-eicosane and n-docosane lose 0.00062 and 0.00066 g/mL for each °C from 60 to 90 °C: thermo 0.6.1",
                          "reference library")
YOUR_CUP = Source("Worked out from the cup of wax that you weighed", "your entry")
COVERING = Source("The least discs that cover a shape (k-center); agrees with published coverings of disc and square within 0.3 %",
                  "published")
PERSPECTIVE = Source("A plane in a photo: the projective map through four known corners, by eight linear equations", "from memory")
