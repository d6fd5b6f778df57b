"""What a link needs besides the record itself, because sections stay on the device."""

from typing import Any

from brimbook.record.said import Said
from brimbook.steps.file_outline import outline_text
from brimbook.steps.model_file import modeled
from brimbook.steps.wax_surface import shape_of


def with_outlines(said: Said, record: dict[str, Any]) -> dict[str, Any]:
    """A record in which each well whose surface its file shows has that outline typed [record].

    said: the record as understood, sections and all [said].
    record: as a link is to hold it [record].
    """
    wells = record.get("wells")
    if not isinstance(wells, list):
        return record
    return {**record, "wells": [_with_outline(said, f"wells.{number}", well) for number, well in enumerate(wells)]}


def _with_outline(said: Said, place: str, well: Any) -> Any:
    if not isinstance(well, dict) or shape_of(said, place) != "file":
        return well
    found = modeled(said, f"{place}.fill")
    text = outline_text(found, found.line) if found is not None else ""
    outline = well.get("outline") if isinstance(well.get("outline"), dict) else {}
    return {**well, "outline": {**outline, "shape": "path", "path": text}} if text else well
