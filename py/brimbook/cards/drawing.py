"""The button that asks for a drawing's file, for the outline of the wax."""

from typing import Any

from brimbook.record.said import Said
from brimbook.shape.drawing_limits import MOST_BYTES
from brimbook.steps.wax_surface import shape_of


def drawing_picks(said: Said, place: str) -> tuple[dict[str, Any], ...]:
    """The button for a drawing, where the outline is one that was drawn [picks].

    said: the record as understood [said].
    place: path of the well [text].
    """
    if shape_of(said, place) != "path":
        return ()
    return ({"label": "Take it from a drawing (SVG)", "reading": "drawing", "place": f"{place}.outline", "accept": ".svg,image/svg+xml",
             "keep": False, "again": False, "name": "", "says": "", "most_bytes": MOST_BYTES,
             "too_large": f"This file is larger than {MOST_BYTES / 1e6:.0f} MB. Save a drawing that holds the outline alone."},)
