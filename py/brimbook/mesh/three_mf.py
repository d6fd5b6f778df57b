"""Triangles of a 3MF file: an archive whose model part is XML."""

from collections.abc import Generator
from xml.parsers import expat

from brimbook.mesh.archive import Archive
from brimbook.mesh.three_mf_build import built
from brimbook.mesh.three_mf_part import ModelPart, parser, part
from brimbook.mesh.triangles import ModelError, Progress, Triangles

_RELATIONS = "_rels/.rels"
_IS_MODEL = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"
_USUAL = "3d/3dmodel.model"
_MOST_PARTS = 200
_LONGEST_RELATIONS = 1_000_000


def read(data: memoryview) -> Generator[Progress, None, Triangles]:
    """Reads a 3MF file: all that it places to be printed [steps, then the mesh].

    data: the file [bytes].
    """
    archive = Archive(data)
    root = _root(archive)
    parts: dict[str, ModelPart] = {}
    ahead = [root]
    while ahead:
        name = ahead.pop()
        parts[name] = yield from _part(archive, name)
        ahead += sorted(_named(parts[name]) - parts.keys() - set(ahead))
        if len(parts) + len(ahead) > _MOST_PARTS:
            raise ModelError(f"This 3MF file spreads its model over more than {_MOST_PARTS} parts. Save the model as one mesh.")
    if len({found.unit for found in parts.values()}) > 1:
        raise ModelError("The parts of this 3MF file are drawn in different units. Save the model as one mesh.")
    return (yield from built(parts, root))


def _part(archive: Archive, name: str) -> Generator[Progress, None, ModelPart]:
    if not archive.has(name):
        raise ModelError("This 3MF file refers to a part that it doesn't hold. Save or copy it again.")
    size, reading = max(1, archive.size(name)), part(archive.pieces(name))
    while True:
        try:
            done = next(reading)
        except StopIteration as end:
            return end.value
        yield min(0.8, 0.8 * done / size), "Reading triangles"


def _named(found: ModelPart) -> set[str]:
    """Other parts that a part takes objects from."""
    placed = [*found.items, *(each for thing in found.objects.values() for each in thing.components)]
    return {each.path.lstrip("/").lower() for each in placed if each.path}


def _root(archive: Archive) -> str:
    """The part that tells what is printed."""
    named = _related(archive) if archive.has(_RELATIONS) else ""
    for name in (named, _USUAL):
        if name and archive.has(name):
            return name.lstrip("/").lower()
    raise ModelError("There is no 3MF model in this archive. Unpack it, and choose the STL, 3MF or OBJ file that is in it.")


def _related(archive: Archive) -> str:
    """The part that the archive says to be its model; empty where it doesn't say."""
    targets: list[str] = []

    def start(_: str, attributes: dict[str, str]) -> None:
        if attributes.get("Type") == _IS_MODEL:
            targets.append(attributes.get("Target", ""))

    if archive.size(_RELATIONS) > _LONGEST_RELATIONS:
        return ""
    reader = parser()
    reader.StartElementHandler = start
    try:
        reader.Parse(b"".join(archive.pieces(_RELATIONS)), True)
    except (expat.ExpatError, LookupError, ValueError) as error:
        if isinstance(error, ModelError):
            raise
        return ""
    return targets[0] if targets else ""
