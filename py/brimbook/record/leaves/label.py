"""The label: its size, the panel it is seen on, what it says, and how it is printed."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import WEIGHT, YES_NO, Choice, Leaf

SIDE = Bounds(10, 300, "A label here is between 10 and 300 mm. Check the digits and the unit.")
PANEL = Bounds(5, 3000, "A panel is between 5 mm and 3 m. Check the digits and the unit.")
GAP = Bounds(0, 100, "A gap or margin here is between 0 and 100 mm.")
PLACE = Bounds(1, 1000, "Type a place on the sheet, counted row by row: 1 is the first.")
COPIES = Bounds(1, 2000, "Print between 1 and 2000 labels.")

SHAPES = (Choice("round", "Round"), Choice("rectangle", "Rectangle"), Choice("strip", "Strip", "A band, such as around a cup or over a lid."))
MARKETS = (Choice("us", "United States", "Both systems of weight; letters by the panel."),
           Choice("eu", "European Union", "Grams; figures by the nominal quantity."),
           Choice("both", "Both"))
HOLDS = (Choice("all", "Everything on one"), Choice("front", "Front and back", "Name and net weight in front; cautions, lot and code behind."))
PANELS = (
    Choice("flat", "A flat side", "Its height by its width."),
    Choice("cylinder", "A round side", "Seen from the front is 40 % of it."),
    Choice("top", "The top or lid", "An obvious top, all of it."),
    Choice("other", "Another shape", "40 % of all its surface."),
)

LABEL = {
    "shape": Leaf("choice", "The label is", "rectangle", choices=SHAPES),
    "across": Leaf("length", "Across", "75 mm", SIDE),
    "width": Leaf("length", "Width", "80 mm", SIDE),
    "height": Leaf("length", "Height", "60 mm", SIDE),
    "corner": Leaf("length", "Corners rounded by", "2 mm", GAP, "Their radius."),
    "holds": Leaf("choice", "It holds", "all", choices=HOLDS),
    "market": Leaf("choice", "Sold in", "both", choices=MARKETS),
    "product": Leaf("text", "What it is", longest=60, hint="The plain name of the thing, such as scented candle."),
    "maker": Leaf("text", "Maker and place", longest=160, hint="Name, town, and what your law asks for: often a full address."),
    "lines.*.text": Leaf("text", "Another line", longest=120),
    "scents": Leaf("text", "Scent, as told", longest=120, hint="Empty: the names of its scents."),
    "lot": Leaf("text", "Lot", longest=60, hint="Empty: that of the newest batch."),
    "net_weight": Leaf("mass", "Net weight to print", "", WEIGHT, "Empty: what the fill surely holds, rounded down."),
    "weighed.*.weight": Leaf("mass", "Weighed, wax alone", bounds=WEIGHT, hint="A finished candle less its empty vessel and wick."),
    "cautions": Leaf("choice", "Candle cautions", "yes", choices=YES_NO),
    "burn_time": Leaf("choice", "Burn time", "yes", choices=YES_NO, hint="From the burn test, rounded down."),
    "average": Leaf("choice", "The ℮ mark", "no", choices=YES_NO, hint="Only for those who pack by the average system, with its checks and records."),
    "code": Leaf("choice", "QR code of the record", "no", choices=YES_NO, hint="Whoever scans it sees the vessel's record, without prices."),
    "panel": Leaf("choice", "It is seen on", "flat", choices=PANELS),
    "panel_width": Leaf("length", "Width of that side", "", PANEL, "Empty: as wide as the label."),
    "panel_height": Leaf("length", "Height of that side", "", PANEL, "Without shoulder, neck and rim. Empty: as high as the label."),
    "panel_around": Leaf("length", "Once around", "", PANEL),
    "panel_area": Leaf("number", "All its surface, in cm²", "", Bounds(1, 100_000, "A surface here is between 1 and 100000 cm².")),
    "copies": Leaf("count", "Labels to print", "", COPIES, "Empty: a full sheet."),
    "gap": Leaf("length", "Between labels", "3 mm", GAP),
    "margin": Leaf("length", "Margin of the sheet", "10 mm", Bounds(3, 100, "A margin is between 3 and 100 mm: few printers go nearer.")),
    "first": Leaf("count", "First free place", "1", PLACE, "On a sheet that was begun: counted row by row."),
}

LEAVES: dict[str, Leaf] = {f"labels.*.{name}": leaf for name, leaf in LABEL.items()}
