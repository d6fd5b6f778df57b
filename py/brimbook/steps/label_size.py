"""How large a label is, in each of its shapes."""

from dataclasses import dataclass

from brimbook.record.said import Said


@dataclass(frozen=True)
class Size:
    """A label's shape and size; width and height are both the diameter where it is round [mm]."""

    shape: str
    width: float
    height: float
    corner: float = 0.0


def sides_asked(said: Said, place: str) -> tuple[str, ...]:
    """The sizes that are asked of a label's shape [texts].

    said: the record as understood [said].
    place: path of the label [text].
    """
    return ("across",) if said.value(f"{place}.shape") == "round" else ("width", "height")


def size_of(said: Said, place: str) -> Size | None:
    """How large a label is; none while a size can't be read [size].

    said: the record as understood [said].
    place: path of the label [text].
    """
    shape = said.value(f"{place}.shape")
    sizes = [said.value(f"{place}.{name}") for name in sides_asked(said, place)]
    corner = 0.0 if shape == "round" else said.value(f"{place}.corner")
    if None in (shape, corner, *sizes):
        return None
    return Size(shape, sizes[0], sizes[-1], corner)
