"""What a file tells of a room, and how the file is to be taken."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import SMALL_LENGTH, Choice, Leaf

SCALE = Bounds(0.01, 100.0, "A print is between 1 % and 10000 % of its drawing: usually 100 %.")
LINE = Bounds(0.0, 3000, "The line lies between 0 mm and 3 m below the brim. Check the digits and the unit.")
HEIGHT = Bounds(0.0, 3000, "A section lies between 0 mm and 3 m above the bottom. Check the digits and the unit.")
ROOM = Bounds(1, 99, "Rooms are counted from the largest on: 1, 2, and so on.")

UNITS = (
    Choice("mm", "Millimeters"), Choice("cm", "Centimeters"), Choice("m", "Meters"), Choice("in", "Inches"),
    Choice("ft", "Feet"), Choice("um", "Micrometers"),
)
UPS = (
    Choice("+z", "As it was drawn"), Choice("-z", "Upside down"), Choice("+y", "With its back side up"),
    Choice("-y", "With its front side up"), Choice("+x", "With its right side up"), Choice("-x", "With its left side up"),
)
PIECE = Choice("piece", "The piece itself", "Cement where the drawing is solid; its room takes the wax.")
CAST_HOLDS = (
    PIECE, Choice("cavity", "The space for the mix", "What the mold leaves free, drawn as a solid."),
    Choice("mold", "The mold", "Its room takes the mix, up to the line."),
)
WELL_HOLDS = (Choice("wax", "The space for the wax", "Drawn as a solid."), PIECE)

FILE = {
    "name": Leaf("text", "File", longest=120),
    "unit": Leaf("choice", "Drawn in", "mm", choices=UNITS),
    "scale": Leaf("share", "Printed at", "100 %", SCALE, "Of the size in the file."),
    "up": Leaf("choice", "How it stands", "+z", choices=UPS),
    "line": Leaf("length", "Line below the brim", "0 mm", LINE, "The brim is where it would run over."),
    "room": Leaf("count", "Which of its rooms", "", ROOM, "1 is the largest."),
    "off": Leaf("length", "Sizes of the print may be off by", "0.2 mm", SMALL_LENGTH, "By calipers. Shrinkage is counted apart."),
    "section": Leaf("length", "Show the section at", "", HEIGHT, "Above the bottom. The nearest cut is drawn, seen from above."),
    "reading": Leaf("text", "What was read from the file", longest=3000),
    "sections": Leaf("text", "Sections read from the file", longest=8000, private=True, large=True),
}
CAST_FILE = {**FILE, "holds": Leaf("choice", "What the file shows", "piece", choices=CAST_HOLDS)}
WELL_FILE = {**FILE, "holds": Leaf("choice", "What the file shows", "wax", choices=WELL_HOLDS)}
