"""Reads a drawing's file for the outline of the wax: what to write into the record, and what to say of it."""

from collections.abc import Iterator
from typing import Any

from brimbook.mesh.triangles import Progress
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.shape.drawing_file import drawn
from brimbook.shape.outline import path, size
from brimbook.shape.path_data import OutlineError


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
