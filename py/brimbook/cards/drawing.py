"""A drawing's file for the outline of the wax: the button that asks for one, and what reading it writes into the record."""

from collections.abc import Iterator
from typing import Any

from brimbook.mesh.triangles import Progress
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said
from brimbook.shape.drawing_file import MOST_BYTES, drawn
from brimbook.shape.outline import path, size
from brimbook.shape.path_data import OutlineError
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


def read_drawing(request: dict[str, Any], data: Any, display: Display) -> Iterator[Progress | dict[str, Any]]:
    """How far the reading of a drawing is, and last of all what it writes: the outline in mm [progress, and texts].

    request: place of the outline [request].
    data: the file's content [bytes].
    display: how this maker reads figures [display].

    Raises OutlineError, a sentence, where there is no such outline, or no closed one in the file.
    """
    at = request.get("place")
    if not isinstance(at, str) or "*" in at or leaf_at(f"{at}.path") is None:
        raise OutlineError("There is no such outline.")
    found = yield from drawn(bytes(data))
    wide, high = (show.length(side, display) for side in size(path(found.path)))
    says = " ".join((f"The outline is {wide} across and {high} the other way.", *found.notes))
    yield {"sets": {f"{at}.shape": "path", f"{at}.path": found.path}, "says": says}
