"""Reads a model's file for a fill: what to write into the record, and one sentence about it."""

from collections.abc import Iterator
from typing import Any

from brimbook.mesh import digest, units, whole
from brimbook.mesh.model import Model
from brimbook.mesh.scaled import scaled
from brimbook.mesh.triangles import ModelError, Progress
from brimbook.quantity import show, show_more
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said

# What a new well is given; none of it tells of its room.
_BLANK = ("way", "temperature", "readability", "line_error")
# Told of another file's print, these no longer fit.
_OF_ONE_FILE = ("room", "line", "section")


def read_model(said: Said, request: dict[str, Any], data: Any) -> Iterator[Progress | dict[str, Any]]:
    """Read a file for a fill, telling how far it is, and at last what it writes and says [progress, then an answer].

    said: the record as understood [said].
    request: path of the fill as place, and the file's name [request].
    data: the file's content [bytes].

    Raises ModelError with a sentence when the file can't be used.
    """
    fill, name = str(request.get("place", "")), _plain_name(request.get("name"))
    if leaf_at(f"{fill}.file.name") is None or int(fill.split(".")[1]) >= said.count(fill.split(".")[0]):
        raise ModelError("There is no such mold or well here any more. Nothing was changed.")
    is_same = name == said.text(f"{fill}.file.name").strip()
    up = said.value(f"{fill}.file.up") if is_same and said.typed(f"{fill}.file.up") else None
    model = yield from whole.model(name, data, up or "")
    sets = _sets(said, fill, name, model, is_same)
    yield {"sets": sets, "says": _says(said, fill, name, model, sets)}


def _plain_name(name: Any) -> str:
    """A file's name, without its folders, as long as there is room for."""
    text = "".join(letter for letter in str(name or "") if letter.isprintable()).replace("\\", "/").rpartition("/")[2].strip()
    longest = leaf_at("casts.0.cavity.file.name").longest
    return text if len(text) <= longest else f"{text[:longest - 9]}…{text[-8:]}"


def _sets(said: Said, fill: str, name: str, model: Model, is_same: bool) -> dict[str, str]:
    at, unit = f"{fill}.file", f"{fill}.file.unit"
    keeps_unit = is_same and said.value(unit) and not units.short(model.unit)
    sets = {f"{fill}.way": "file", f"{at}.name": name, f"{at}.up": model.up, f"{at}.reading": digest.reading(model),
            f"{at}.sections": digest.sections(model), unit: said.value(unit) if keeps_unit else units.guess(model.size, model.unit)[0]}
    if not said.value(f"{at}.holds") or not said.typed(f"{at}.holds"):
        sets[f"{at}.holds"] = "piece" if fill.startswith("casts.") or model.rooms else "wax"
    sets |= {f"{at}.{each}": "" for each in _OF_ONE_FILE if not is_same and said.typed(f"{at}.{each}")}
    holds = said.value(f"{at}.holds") if f"{at}.holds" not in sets else sets[f"{at}.holds"]
    if fill.startswith("casts.") and holds in ("piece", "cavity"):
        sets |= {f"{well}.way": "cast_file" for well in _empty_wells(said)[:len(model.rooms)]}
    return sets


def _empty_wells(said: Said) -> list[str]:
    """The fills of wells of which nothing is typed."""
    fills = [f"wells.{number}.fill" for number in range(said.count("wells"))]
    told = {path for path in said.texts if said.typed(path)}
    return [fill for fill in fills if not any(path.startswith(f"{fill}.") and path.removeprefix(f"{fill}.") not in _BLANK for path in told)]


def _says(said: Said, fill: str, name: str, model: Model, sets: dict[str, str]) -> str:
    """What was read, in the size in which it is printed."""
    factor = units.MILLIMETERS[sets[f"{fill}.file.unit"]] * (said.value(f"{fill}.file.scale") or 1.0)
    large = scaled(model, factor)
    size = show_more.size(large.size, said.display)
    rooms = [show.volume(room.levels[-1].volume / 1000, said.display) for room in large.rooms]
    told = f"{'; its rooms hold' if len(rooms) > 1 else '; its room holds'} {', '.join(rooms)} to the brim" if rooms else ""
    wells = sum(path.startswith("wells.") and text == "cast_file" for path, text in sets.items())
    filled = ("", " The well takes its room from it.")[wells] if wells < 2 else f" {wells} wells take their rooms from it."
    return f"Read {name}: {size}, {show.volume(large.solid[-1].volume / 1000, said.display)}{told}.{filled}"
