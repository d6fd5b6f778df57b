"""A label laid out in its shape, and seen on the card."""

import math
from collections.abc import Callable
from dataclasses import replace

from brimbook.draw.code import modules
from brimbook.draw.label import CAPITAL, Box, Label, Laid, Side, Words
from brimbook.draw.label_face import EDGE, Face
from brimbook.draw.label_flow import Block, Put
from brimbook.draw.label_marks import alert, average, code, code_side, line_of_text, number
from brimbook.draw.label_plan import Content, Unit
from brimbook.draw.label_search import LARGEST, fits, largest, needed
from brimbook.draw.label_text import CAPITAL_SHARE, NO_BREAK, clean, cut_to, reach, size_for, words_of

# In this order they stand, from the top.
_FRONT = ("product", "scent", "line", "maker", "net")
_BACK = ("warning", "caution", "burn_time", "lot")
# How high capitals are where there is room, in the square root of the label's area (a matter of looks).
_WANTED = {"product": 0.12, "scent": 0.07, "line": 0.045, "maker": 0.045, "net": 0.055, "warning": 0.05, "caution": 0.034,
           "burn_time": 0.036, "lot": 0.034}
_USUAL_WANTED = 0.034
_LATER = "The QR code is laid out when the label is printed: it may take room from the letters."
_WIDE, _BETWEEN = 350.0, 10.0
# Of a circle's width within its edge, what a line has that stands a good way from the middle.
_CHORD = 0.7


def laid(label: Label, code: str = "", tell: Callable[[float], str] = lambda length: f"{length:g} mm") -> Laid:
    """A label with everything in its place, letters as large as there is room [label].

    label: what stands on it [label].
    code: the link that its QR code holds; without one, no code is laid out yet [text].
    tell: how a length is told to the maker [text].

    Where it does not fit at its least heights, its sides are those of the size that it would need.
    """
    face = _face(label)
    try:
        whole = _contents(label, code, math.inf)
    except ValueError as error:
        return Laid(label, False, (str(error),), ())
    cut = _contents(label, code, _longest_line(face))
    told = (_LATER,) if label.code and not code else ()
    for contents in (whole, cut)[:1 + (cut != whole)]:
        made = [largest(face, content) for _, content in contents]
        if None not in made:
            return Laid(label, True, told, tuple(_side(name, face, puts, code) for (name, _), puts in zip(contents, made)))
    return _too_small(label, face, whole, code, tell) or _too_small(label, face, cut, code, tell) or Laid(
        label, False, (_in_the_way(face, whole), f"Even a label of {tell(LARGEST)} would be too small."), ())


def preview(laid: Laid) -> str:
    """A label as it will look, black on white, front above back [SVG].

    laid: the label laid out [label].
    """
    face = _face(laid.label)
    sides = laid.sides or (Side("front", face.width, face.height, (), ()),)
    scale = (_WIDE - 2 * _BETWEEN) / max(*(side.width for side in sides), 0.8 * max(side.height for side in sides))
    shapes, down = [], _BETWEEN
    for side in sides:
        left = (_WIDE - side.width * scale) / 2
        shapes.append(f'<g transform="translate({number(left)} {number(down)}) scale({scale:.5g})">{outline(laid.label, side, "#fff", 0.3)}'
                      f'{"".join(side.shapes)}</g>')
        down += side.height * scale + _BETWEEN
    return (f'<svg xmlns="http://www.w3.org/2000/svg" class="label-face" viewBox="0 0 {number(_WIDE)} {number(down)}" '
            f'font-family="sans-serif">{"".join(shapes)}</svg>')


def outline(label: Label, side: Side, fill: str, thickness: float) -> str:
    """The edge of a label [SVG].

    label: whose shape it is [label].
    side: how large it is [side].
    fill: color within it [text].
    thickness: of the line [mm].
    """
    style = f'fill="{fill}" stroke="#000" stroke-width="{number(thickness)}"'
    if label.shape == "round":
        return f'<circle cx="{number(side.width / 2)}" cy="{number(side.width / 2)}" r="{number(side.width / 2)}" {style}/>'
    corner = max(0.0, min(label.corner, side.width / 2, side.height / 2))
    return f'<rect width="{number(side.width)}" height="{number(side.height)}" rx="{number(corner)}" {style}/>'


def _face(label: Label) -> Face:
    if label.shape == "round":
        across = min(label.width, label.height)
        return Face(True, across, across, 0.0)
    return Face(False, label.width, label.height, max(0.0, label.corner))


def _longest_line(face: Face) -> float:
    """A word that is longer than this has to be cut: in a circle, where the lines are not the widest."""
    return (face.width - 2 * EDGE) * (_CHORD if face.round else 1.0)


def _contents(label: Label, link: str, longest: float) -> list[tuple[str, Content]]:
    """What goes on each side, by the side's name, words cut that are longer than so much."""
    spare = math.sqrt(label.width * label.height)
    holds = [("front", label.words)] if not label.apart else [(name, [each for each in label.words if each.side == name]) for name in ("front", "back")]
    last = holds[-1][0]
    count = len(modules(link)) if label.code and link else 0
    made = [(name, _content(label, words, spare, longest, count if name == last else 0, name == last)) for name, words in holds]
    return [(name, content) for name, content in made if content != Content((), (), (), ())] or made[:1]


def _content(label: Label, words: tuple[Words, ...], spare: float, longest: float, count: int, is_last: bool) -> Content:
    ordered = sorted(words, key=lambda each: (*_FRONT, *_BACK).index(each.name) if each.name in (*_FRONT, *_BACK) else len(_FRONT) + 1)
    warns = next((each for each in ordered if each.name in ("warning", "caution")), None) if label.alert > 0 else None
    blocks = [(each, _block(label, each, spare, longest, each is warns)) for each in ordered]
    blocks = [(each, block) for each, block in blocks if any(word.width > 0 for word in block.words)]
    front = tuple((block,) for each, block in blocks if each.name in _FRONT and not each.low)
    foot = tuple(block for each, block in blocks if each.low)
    back = [block for each, block in blocks if each.name not in _FRONT and not each.low]
    if label.alert > 0 and is_last and not any(block.kind == "alert" for _, block in blocks):
        back.append(Block("alert", (), 0.0, 0.0, sign=label.alert, kind="alert"))
    side = Block("code", (), 0.0, 0.0, sign=code_side(count), kind="code")
    return Content(front, foot, _units(back), ((side,),) if count else ())


def _units(back: list[Block]) -> tuple[Unit, ...]:
    """The word that warns stays with what it warns of."""
    if len(back) > 1 and back[0].name == "warning":
        return ((back[0], back[1]), *((block,) for block in back[2:]))
    return tuple((block,) for block in back)


def _block(label: Label, words: Words, spare: float, longest: float, warns: bool) -> Block:
    text = clean(words.text)
    if words.name == "net":
        # A net weight breaks between its two systems of weight, not within one.
        text = text.replace(" ", NO_BREAK).replace(f"{NO_BREAK}(", " (")
    least = size_for(words.least, words.measured)
    wanted = size_for(_WANTED.get(words.name, _USUAL_WANTED) * spare, CAPITAL)
    kind = "alert" if warns else "average" if words.name == "net" and label.average > 0 else ""
    sign = {"alert": label.alert, "average": label.average}.get(kind, 0.0)
    found = words_of(text, words.bold)
    if words.name != "net" and longest < math.inf:
        found = cut_to(found, max(longest - (2 * sign if kind == "alert" else 0.0), least) / least, words.bold)
    return Block(words.name, found, least, wanted, words.bold, words.clear, sign, kind, reach(text))


def _too_small(label: Label, face: Face, contents: list[tuple[str, Content]], code: str, tell: Callable[[float], str]) -> Laid | None:
    """What is in the way, and the label as it would have to be; none where none is large enough."""
    only_height = label.shape == "strip"
    found = [needed(face, content, only_height) or needed(face, content, only_height=False) for _, content in contents]
    if None in found:
        return None
    larger = replace(face, width=max(each.width for each in found), height=max(each.height for each in found))
    size = f"{tell(larger.width)} across" if face.round else f"{tell(larger.width)} by {tell(larger.height)}"
    says = (_in_the_way(face, contents), f"It would have to be about {size}.")
    made = [largest(larger, content) for _, content in contents]
    sides = tuple(_side(name, larger, puts, code) for (name, _), puts in zip(contents, made) if puts is not None)
    return Laid(label, False, says, sides, (larger.width, larger.height))


def _in_the_way(face: Face, contents: list[tuple[str, Content]]) -> str:
    """What would fit if one thing were not there."""
    if any(content.code for _, content in contents) and all(fits(face, replace(content, code=())) for _, content in contents):
        return "The label is too small for its QR code: leave the code off, or make the label larger."
    one = len(contents) == 1
    if one and contents[0][1].front and contents[0][1].back and all(fits(face, part) for part in _apart(contents[0][1])):
        return "The label is too small to hold everything: let front and back be two labels, or make it larger."
    return "The label is too small for what it must say at the least height of letters."


def _apart(content: Content) -> tuple[Content, Content]:
    return Content(content.front, content.foot, (), ()), Content((), (), content.back, content.code)


def _side(name: str, face: Face, puts: list[Put], link: str) -> Side:
    return Side(name, face.width, face.height, tuple(_shape(put, link) for put in puts), tuple(_box(put) for put in puts))


def _shape(put: Put, link: str) -> str:
    box = put.box
    if put.kind == "text":
        return line_of_text(put.text, box.left, put.base, put.size, box.right - box.left, put.bold)
    if put.kind == "code":
        return code(link, box.left, box.top)
    return {"alert": alert, "average": average}[put.kind](box.left, box.top, box.bottom - box.top)


def _box(put: Put) -> Box:
    """A box with the height of its capitals; what has no letters has none."""
    return replace(put.box, letters=put.size * CAPITAL_SHARE)
