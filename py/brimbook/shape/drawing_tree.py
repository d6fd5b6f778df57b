"""A drawing's file (SVG) as a tree of its elements; nothing in it is fetched, and no entity of its own is known."""

from collections.abc import Generator
from dataclasses import dataclass, field
from xml.parsers import expat

from brimbook.shape.path_data import OutlineError

_CHUNK = 1 << 17
_DEEPEST, MOST_PARTS = 100, 30_000
_SPACE = " "
_OWN = ("http://www.w3.org/2000/svg", "")


@dataclass
class Element:
    """One element: its name, what it is given, and what stands inside it; other makers' elements have no name."""

    name: str
    given: dict[str, str]
    inside: list["Element"] = field(default_factory=list)


class _Builder:
    """Builds the tree while the parser goes along, and finds elements by their ids."""

    def __init__(self) -> None:
        self.top = Element("", {})
        self.ids: dict[str, Element] = {}
        self._open = [self.top]
        self._count = 0

    def start(self, name: str, given: dict[str, str]) -> None:
        """An element begins [nothing].

        name: with its space before it [text].
        given: its attributes [texts].
        """
        space, _, plain = name.rpartition(_SPACE)
        self._count += 1
        if self._count > MOST_PARTS:
            raise OutlineError(f"This drawing has more than {MOST_PARTS:,} parts. Save one that holds the outline alone.")
        if len(self._open) > _DEEPEST:
            raise OutlineError("This drawing is nested too deeply. Ungroup it, then save it again.")
        element = Element(plain if space in _OWN else "", {key.rpartition(_SPACE)[2]: value for key, value in given.items()})
        self._open[-1].inside.append(element)
        self._open.append(element)
        if "id" in element.given:
            self.ids.setdefault(element.given["id"], element)

    def end(self, name: str) -> None:
        """An element ends [nothing].

        name: with its space before it [text].
        """
        self._open.pop()


def tree_of(data: bytes) -> Generator[tuple[float, str], None, tuple[Element, dict[str, Element]]]:
    """The drawing's outermost element, and all that have an id by it [element and elements].

    data: content of the file [bytes].

    Raises OutlineError, a sentence, when it is no SVG drawing, is damaged, or defines entities of its own.
    """
    if data[:2] == b"\x1f\x8b":
        raise OutlineError("This drawing is packed (SVGZ). Save it as plain SVG.")
    builder, parser = _Builder(), expat.ParserCreate(namespace_separator=_SPACE)
    parser.buffer_text = True
    parser.StartElementHandler, parser.EndElementHandler = builder.start, builder.end
    parser.StartDoctypeDeclHandler, parser.EntityDeclHandler = _doctype, _entity
    try:
        for begin in range(0, len(data), _CHUNK):
            yield 0.5 * begin / len(data), "Reading the drawing"
            parser.Parse(data[begin:begin + _CHUNK], False)
        parser.Parse(b"", True)
    except expat.ExpatError as error:
        raise OutlineError(f"This file is no SVG drawing, or it is damaged at line {error.lineno}.") from None
    except (ValueError, LookupError) as error:
        if isinstance(error, OutlineError):
            raise
        raise OutlineError("This file is no SVG drawing that can be read here. Save it as plain SVG.") from None
    if builder.top.inside[0].name != "svg":
        raise OutlineError("This file is no SVG drawing. Save the drawing as plain SVG.")
    return builder.top.inside[0], builder.ids


def _doctype(name: str, system: str | None, public: str | None, has_subset: int) -> None:
    if has_subset:
        _entity()


def _entity(*_: object) -> None:
    raise OutlineError("This drawing defines entities of its own, which are not read here. Save it as plain SVG.")
