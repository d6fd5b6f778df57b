"""The outline of the wax out of a photo: what lies beside the vessel, and what was marked."""

from brimbook.quantity.read import Bounds
from brimbook.record.leaf import DIMENSION, Choice, Leaf

BESIDE = (
    Choice("sheet", "A sheet of paper", "Its four corners are marked. The photo may be taken a little aslant."),
    Choice("ruler", "A ruler", "Two places on it are marked. Only for a photo taken straight from above."),
)
PAPERS = (Choice("a4", "A4"), Choice("letter", "Letter"), Choice("other", "Another size"))
CURVES = (Choice("round", "Round"), Choice("straight", "Straight", "For a rim with corners: mark each corner."))
LIES = (Choice("seen", "As it looks"), Choice("other", "The other way around", "Where its longer side was taken for the shorter one."))
ABOVE = Bounds(0.0, 500, "A rim is between 0 and 500 mm above the sheet. Check the digits and the unit.")
CAMERA = Bounds(50, 5000, "A camera is between 50 mm and 5 m above the sheet. Check the digits and the unit.")
OFF = Bounds(0.0005, 0.05, "A mark is off by 0.05 to 5 % of the photo's width.")

# Marks are "x,y" in thousandths of the photo's width, a space between two; the first are those of the sheet or the ruler.
LEAVES: dict[str, Leaf] = {
    "wells.*.outline.photo.by": Leaf("choice", "Beside the vessel lies", "sheet", choices=BESIDE),
    "wells.*.outline.photo.paper": Leaf("choice", "The sheet", "a4", choices=PAPERS),
    "wells.*.outline.photo.wide": Leaf("length", "Its longer side", "", DIMENSION),
    "wells.*.outline.photo.high": Leaf("length", "Its shorter side", "", DIMENSION),
    "wells.*.outline.photo.distance": Leaf("length", "From mark to mark on the ruler", "", DIMENSION),
    "wells.*.outline.photo.size": Leaf("text", "The photo's pixels, across and down", longest=20),
    "wells.*.outline.photo.marks": Leaf("text", "Marks", longest=1000,
                                        hint="Each in thousandths of the photo's width, from its left and its top, such as 120,85."),
    "wells.*.outline.photo.curve": Leaf("choice", "From mark to mark the rim is", "round", choices=CURVES),
    "wells.*.outline.photo.lies": Leaf("choice", "The sheet lies", "seen", choices=LIES),
    "wells.*.outline.photo.rim": Leaf("length", "The rim is above the sheet by", "0 mm", ABOVE,
                                      "What is nearer to the camera looks larger: best lay the sheet level with the rim."),
    "wells.*.outline.photo.camera": Leaf("length", "The camera was above the sheet by", "", CAMERA, "Asked where the rim is above the sheet."),
    "wells.*.outline.photo.off": Leaf("share", "Each mark may be off by", "0.5 %", OFF, "Of the photo's width."),
}
