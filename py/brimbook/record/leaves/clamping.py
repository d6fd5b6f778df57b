"""What holds the mold shut: pressure, bolts, heat, and the plastic it is printed in."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, MONEY, TIME, VOLUME, WEIGHT, Choice, Leaf

FRESH = Bounds(0.3, 4.0, "A fresh mix weighs between 0.3 and 4 g/mL: near 2.2 for mortar.")
THICKNESS = Bounds(0.5, 200, "A flange is between 0.5 and 200 mm thick or wide.")

PLASTICS = (
    Choice("pla", "PLA", "Softens first: mind the heat."), Choice("petg", "PETG"), Choice("abs", "ABS"),
    Choice("pp", "Polypropylene"), Choice("tpu", "TPU", "Bends: back it with something stiff."),
    Choice("own", "Another", "Type its figures under Bolts and flange, Heat and The print."),
)
THREADS = tuple(Choice(name, name.upper()) for name in (
    "m3", "m4", "m5", "m6", "m8", "m10", "1/4-20", "1/4-28", "5/16-18", "3/8-16"))
CLASSES = tuple(Choice(name, name) for name in ("4.6", "4.8", "5.8", "6.8", "8.8", "10.9", "12.9"))
GRADES = (Choice("2", "2, no marks"), Choice("5", "5, 3 marks"), Choice("8", "8, 6 marks"))

CLAMPING = {
    "depth": Leaf("length", "Depth of the mix", "", DIMENSION, "From the lowest point to the top of the mix, funnel too."),
    "width": Leaf("length", "Width at the seam", "", DIMENSION, "Of the cavity, as seen square to the seam."),
    "thread": Leaf("choice", "Bolts", "m5", choices=THREADS),
    "plastic": Leaf("choice", "Printed in", "pla", choices=PLASTICS),
    "density": Leaf("density", "One mL of fresh mix weighs", "", FRESH, "Empty: by the recipe."),
    "property_class": Leaf("choice", "Property class, on the head", "4.6", choices=CLASSES,
                           hint="No mark: take 4.6. The plastic gives way first anyway."),
    "grade": Leaf("choice", "Grade, by the head", "2", choices=GRADES),
    "safety": Leaf("number", "Safety factor", "2", Bounds(1, 10, "A safety factor is between 1 and 10: usually 2."),
                   "Tapping, pouring from high up and old plastic all ask for more."),
    "seams": Leaf("count", "Upright seams", "2", Bounds(1, 12, "A mold has between 1 and 12 seams: two halves have 2."),
                  "Two halves meet in two seams."),
    "washer_outside": Leaf("length", "Washer, outside", "", DIMENSION, "A larger washer is the cheapest way to clamp more."),
    "washer_hole": Leaf("length", "Hole under the washer", "", DIMENSION),
    "bearing": Leaf("pressure", "Pressure the plastic may bear", "",
                    Bounds(0.1, 200, "A plastic bears between 0.1 and 200 MPa: a print near 8."),
                    "Under a washer, for long, across layers: rough until you have tried it."),
    "modulus": Leaf("pressure", "Stiffness of the plastic", "",
                    Bounds(1, 250_000, "Stiffness is between 1 and 250000 MPa: a stiff print near 2000."),
                    "Its modulus of elasticity, as printed."),
    "flange_thickness": Leaf("length", "Flange, thickness", "8 mm", THICKNESS, "Of one half, along the bolt."),
    "flange_width": Leaf("length", "Flange, width", "20 mm", THICKNESS, "From the cavity outward."),
    "gap": Leaf("length", "The seam may open by", "0.1 mm",
                Bounds(0.01, 100, "A seam may open by between 0.01 and 100 mm: usually 0.1 mm.")),
    "core_volume": Leaf("volume", "Core, the part in the mix", "", VOLUME, "Of a core that shapes the inside."),
    "core_weight": Leaf("mass", "Core weighs", "", WEIGHT, "Empty: as if it weighed nothing."),
    "softens": Leaf("temperature", "The plastic softens from", "",
                    Bounds(20, 400, "A plastic softens between 20 and 400 °C (68 and 752 °F).")),
    "print_weight": Leaf("mass", "Printed mold weighs", "", WEIGHT, "All its parts, from the slicer or the scale."),
    "print_volume": Leaf("volume", "Or its plastic takes up", "", VOLUME, "From the slicer, infill as printed."),
    "plastic_density": Leaf("density", "The plastic weighs", "",
                            Bounds(0.5, 3.0, "A print plastic weighs between 0.5 and 3 g/mL."), "On the spool or its sheet."),
    "spool_price": Leaf("money", "A spool costs", "", MONEY, private=True),
    "spool_weight": Leaf("mass", "Plastic on a full spool", "1 kg",
                         Bounds(50, 50_000, "A spool holds between 50 g and 50 kg: usually 1 kg."), "Without the reel."),
    "print_time": Leaf("duration", "Printing it takes", "", TIME, "All its parts, from the slicer.", unit="h"),
    "filament": Leaf("length", "Filament", "1.75 mm", Bounds(0.5, 100, "Filament is between 0.5 and 100 mm across.")),
    "lasts": Leaf("count", "Casts from one mold", "20", Bounds(1, 100_000, "A mold serves for 1 to 100000 casts."),
                  "The cost of the print is spread over them."),
}

LEAVES: dict[str, Leaf] = {f"casts.*.clamping.{name}": leaf for name, leaf in CLAMPING.items()}
