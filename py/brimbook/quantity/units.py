"""The units a maker may type. The only module that knows pint.

Inside the core a quantity is a plain float in the base unit of its kind; this
module says which words name which unit, and what one of them is in base units.
"""

from dataclasses import dataclass
from functools import lru_cache

import pint


@dataclass(frozen=True)
class Unit:
    """A unit as the maker sees it (symbol) and as the registry knows it (name)."""

    kind: str
    symbol: str
    name: str


@dataclass(frozen=True)
class Kind:
    """A kind of quantity: its base unit, what to call it, and examples to offer."""

    name: str
    base: str
    noun: str
    examples: str
    finest: float


KINDS = {
    kind.name: kind
    for kind in (
        # finest: smaller steps than any bench tool shows, in base units. It tells
        # 1,250 g (1250) from 1,250 kg (1.25).
        Kind("mass", "gram", "a weight", "640 g or 1 lb 4 oz", 0.005),
        Kind("volume", "milliliter", "a volume", "250 mL or 8 fl oz", 0.005),
        Kind("length", "millimeter", "a length", "80 mm or 3 1/8 in", 0.005),
        Kind("temperature", "degree_Celsius", "a temperature", "20 °C or 68 °F", 0.0),
        Kind("density", "gram / milliliter", "a density", "0.90 g/mL or 56 lb/ft³", 0.0),
        Kind("share", "dimensionless", "a share", "6 % or 1 oz/lb", 0.0),
        Kind("ratio", "dimensionless", "a ratio", "4:1 or 0.25", 0.0),
        Kind("count", "dimensionless", "a number of pieces", "3", 1.0),
        Kind("number", "dimensionless", "a number", "1.88", 0.0),
        Kind("parts", "dimensionless", "parts by weight", "1:2:0.4", 0.0),
        Kind("money", "dimensionless", "a price", "24.50", 0.0),
        Kind("duration", "second", "a length of time", "45 min or 1 h 30 min", 0.05),
        Kind("pressure", "megapascal", "a stress", "8 MPa or 1200 psi", 0.0),
        Kind("coverage", "meter ** 2 / liter", "a coverage", "8 m²/L or 330 ft²/gal", 0.0),
        Kind("heat", "kilojoule / kilogram", "a heat", "150 kJ/kg or 65 BTU/lb", 0.0),
    )
}

# kind, symbol, registry name, the words people type for it (lower case, no dots or spaces)
_WORDS = (
    ("mass", "g", "gram", "g gr gm gms gram grams gramme grammes"),
    ("mass", "kg", "kilogram", "kg kgs kilo kilos kilogram kilograms"),
    ("mass", "mg", "milligram", "mg milligram milligrams"),
    ("mass", "lb", "pound", "lb lbs pound pounds"),
    ("mass", "oz", "ounce", "oz ozs ounce ounces"),
    ("volume", "mL", "milliliter", "ml mls cc ccm cm3 milliliter milliliters millilitre millilitres"),
    ("volume", "L", "liter", "l lt ltr liter liters litre litres"),
    ("volume", "fl oz", "US_fluid_ounce", "floz fluidoz flounce flounces fluidounce fluidounces usfloz"),
    ("volume", "cup", "US_liquid_cup", "cup cups"),
    ("volume", "pt", "US_pint", "pt pint pints"),
    ("volume", "qt", "US_liquid_quart", "qt quart quarts"),
    ("volume", "gal", "US_liquid_gallon", "gal gallon gallons"),
    ("volume", "in³", "cubic_inch", "in3 cuin cubicinch cubicinches"),
    ("length", "mm", "millimeter", "mm millimeter millimeters millimetre millimetres"),
    ("length", "cm", "centimeter", "cm centimeter centimeters centimetre centimetres"),
    ("length", "m", "meter", "m meter meters metre metres"),
    ("length", "in", "inch", 'in inch inches "'),
    ("length", "ft", "foot", "ft foot feet '"),
    ("temperature", "°C", "degree_Celsius", "c °c degc degreec degreesc celsius"),
    ("temperature", "°F", "degree_Fahrenheit", "f °f degf degreef degreesf fahrenheit"),
    ("density", "g/mL", "gram / milliliter", "g/ml g/cm3 g/cc kg/l g/ccm"),
    ("density", "kg/m³", "kilogram / meter ** 3", "kg/m3 g/l"),
    ("density", "lb/ft³", "pound / foot ** 3", "lb/ft3 lbs/ft3 lb/cuft pcf"),
    ("density", "lb/gal", "pound / US_liquid_gallon", "lb/gal lbs/gal ppg"),
    ("share", "%", "percent", "% percent pct /cent"),
    ("share", "oz/lb", "ounce / pound", "oz/lb oz/pound ounce/pound ounces/pound ounces/lb oz/lbs"),
    ("share", "g/kg", "gram / kilogram", "g/kg"),
    ("count", "pieces", "dimensionless", "pc pcs piece pieces"),
    ("number", "g/g", "gram / gram", "g/g g/gram gram/gram grams/gram"),
    ("duration", "min", "minute", "min mins minute minutes"),
    ("duration", "h", "hour", "h hr hrs hour hours"),
    ("duration", "d", "day", "d day days"),
    ("duration", "wk", "week", "wk wks week weeks"),
    ("duration", "s", "second", "s sec secs second seconds"),
    ("pressure", "MPa", "megapascal", "mpa n/mm2 megapascal"),
    ("pressure", "kPa", "kilopascal", "kpa kilopascal"),
    ("pressure", "GPa", "gigapascal", "gpa gigapascal"),
    ("pressure", "psi", "pound_force_per_square_inch", "psi"),
    ("pressure", "ksi", "kilopound_force_per_square_inch", "ksi"),
    ("coverage", "m²/L", "meter ** 2 / liter", "m2/l sqm/l"),
    ("coverage", "ft²/gal", "foot ** 2 / US_liquid_gallon", "ft2/gal sqft/gal"),
    ("heat", "kJ/kg", "kilojoule / kilogram", "kj/kg j/g"),
    ("heat", "BTU/lb", "british_thermal_unit / pound", "btu/lb"),
)

UNITS = {word: Unit(kind, symbol, name) for kind, symbol, name, words in _WORDS for word in words.split()}


@lru_cache(maxsize=1)
def _registry() -> pint.UnitRegistry:
    return pint.UnitRegistry(cache_folder=None)


@lru_cache(maxsize=None)
def _line(name: str, base: str) -> tuple[float, float]:
    """Slope and offset from a unit to its base unit; temperatures have an offset."""
    quantity = _registry().Quantity
    offset = quantity(0.0, name).to(base).magnitude
    # Over a long stretch, so that an offset leaves no dust in the slope.
    stretch = 1e6 if offset else 1.0
    return (quantity(stretch, name).to(base).magnitude - offset) / stretch, offset


def to_base(value: float, unit: Unit) -> float:
    """The value in the base unit of its kind [base unit of the kind].

    value: as typed [the unit given].
    unit: one of UNITS [unit].

    >>> round(to_base(1.0, UNITS["lb"]), 9)
    453.59237
    >>> round(to_base(68.0, UNITS["°f"]), 9)
    20.0
    """
    slope, offset = _line(unit.name, KINDS[unit.kind].base)
    # Rounded, or 104 °F would lie a hair above 40 °C.
    return round(value * slope + offset, 10) if offset else value * slope


def from_base(value: float, word: str) -> float:
    """A base-unit value told in another unit of its kind [the unit named].

    value: in the base unit of the kind [base unit].
    word: a unit's word, a key of UNITS [text].

    >>> round(from_base(100.0, "oz"), 4)
    3.5274
    """
    unit = UNITS[word]
    slope, offset = _line(unit.name, KINDS[unit.kind].base)
    return (value - offset) / slope


def symbols(kind: str) -> list[str]:
    """The symbols a kind of quantity may be typed in, commonest first [text].

    kind: a key of KINDS [text].

    >>> symbols("mass")
    ['g', 'kg', 'mg', 'lb', 'oz']
    """
    return list(dict.fromkeys(unit.symbol for unit in UNITS.values() if unit.kind == kind))
