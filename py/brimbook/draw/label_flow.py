"""Words and signs set one below the other into the columns of a label."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from brimbook.draw.label import Box
from brimbook.draw.label_face import LOW, Face
from brimbook.draw.label_marks import ALERT_WIDTH, AVERAGE_WIDTH
from brimbook.draw.label_text import CAPITAL_SHARE, Line, Word, first_line

# Between columns [mm]; between lines and between things, in sizes of the font.
COLUMN_GAP = 3.0
_LINE_GAP, _BLOCK_GAP, _SAME_GAP = 0.06, 0.45, 0.2
# A line that has no room in a curve tries again so much lower, in sizes of the font.
_STEP = 0.25
# What stands at the foot has at most so many lines, and is tried in steps of so much [mm].
_FOOT_LINES, _LIFT = 3, 0.25
_HALVINGS = 5
_TINY = 1e-9


@dataclass(frozen=True)
class Block:
    """Something to be set: words, a sign, or words with a sign.

    least: least size of its font [mm].
    wanted: size where there is room [mm].
    clear: free space above and below, left and right, in heights of its letters [–].
    sign: height of the triangle before a warning, of the ℮ after a net weight, or side of the code [mm].
    reach: what a line takes above and below its base line, in sizes of the font [–].
    """

    name: str
    words: tuple[Word, ...]
    least: float
    wanted: float
    bold: bool = False
    clear: tuple[float, float] = (0.0, 0.0)
    sign: float = 0.0
    kind: str = ""
    reach: tuple[float, float] = (0.0, 0.0)


@dataclass(frozen=True)
class Column:
    """Where a column is [mm], and do its lines begin at its left?"""

    left: float
    right: float
    at_left: bool = False


@dataclass(frozen=True)
class Put:
    """One line or sign in its place [mm]."""

    box: Box
    kind: str
    text: str = ""
    base: float = 0.0
    size: float = 0.0
    bold: bool = False


@dataclass(frozen=True)
class Setting:
    """How things are set on a face: how far letters grow from the least to the wanted size, 0 to 1, and how lines break.

    product, net, others: whose letters grow so far.

    even: are the lines of a text made about as long as one another?
    """

    face: Face
    product: float = 0.0
    others: float = 0.0
    net: float = 0.0
    even: bool = False

    def size(self, block: Block) -> float:
        """Size of a block's font [mm].

        block: to be set [block].
        """
        return block.least + max(0.0, block.wanted - block.least) * {"product": self.product, "net": self.net}.get(block.name, self.others)


def gap_between(setting: Setting, above: Block, below: Block) -> float:
    """Space between two things [mm].

    setting: how they are set [setting].
    above: the one [block].
    below: the other [block].
    """
    sizes = [setting.size(block) for block in (above, below)]
    share = _SAME_GAP if above.name == below.name or above.name == "warning" else _BLOCK_GAP
    return max(share * max(sizes), *(block.clear[0] * CAPITAL_SHARE * size for block, size in zip((above, below), sizes)), 0.5)


def set_all(setting: Setting, blocks: Sequence[Block], column: Column, top: float, limit: float) -> tuple[list[Put], float] | None:
    """Things one below the other in one column, and where they end; none where they have no room [things and mm].

    setting: how they are set [setting].
    blocks: to be set [blocks].
    column: where [column].
    top: where they begin [mm].
    limit: where they must end [mm].
    """
    found, end = [], top
    for number, block in enumerate(blocks):
        start = end + (gap_between(setting, blocks[number - 1], block) if number else 0.0)
        made = set_one(setting, block, column, start, limit)
        if made is None:
            return None
        found, end = found + made[0], made[1]
    return found, end


def set_foot(setting: Setting, block: Block, column: Column, bottom: float) -> tuple[list[Put], float] | None:
    """A thing as low as it can stand within the lowest part of the face, and where it begins; none where it can't [things and mm].

    setting: how it is set [setting].
    block: to be set [block].
    column: where [column].
    bottom: where it must end [mm].
    """
    line, gap = _line_height(block, setting.size(block), first=True), _LINE_GAP * setting.size(block)
    heights = [line * lines + gap * (lines - 1) for lines in range(1, _FOOT_LINES + 1)]
    found = [made for height in heights if (made := _lowest(setting, block, column, bottom, height)) is not None]
    # In a circle two lines may stand lower than one, whose bottom has to be wide.
    return max(found, key=lambda made: made[1]) if found else None


def _lowest(setting: Setting, block: Block, column: Column, bottom: float, height: float) -> tuple[list[Put], float] | None:
    """A thing of a height as low as it can stand."""
    spare = bottom - height - setting.face.height * (1 - LOW)
    for lift in range(int(spare / _LIFT + _TINY) + 1 if spare >= -_TINY else 0):
        top = bottom - height - lift * _LIFT
        made = set_one(setting, block, column, top, top + height, fixed=True)
        if made is not None:
            return made[0], top
    return None


def set_one(setting: Setting, block: Block, column: Column, top: float, limit: float, fixed: bool = False) -> tuple[list[Put], float] | None:
    """One thing below a height, and where it ends; none where it has no room [things and mm].

    setting: how it is set [setting].
    block: to be set [block].
    column: where [column].
    top: where it begins, or later where a curve is too narrow there [mm].
    limit: where it must end [mm].
    fixed: must it begin there [yes or no]?
    """
    if not block.words:
        return _set_sign(setting.face, block, column, top, limit)
    made = _set_lines(setting, block, column, top, limit, fixed, float("inf"))
    if made is None or not setting.even or len(made[2]) == 1:
        return made and made[:2]
    return _evened(setting, block, column, limit, made)


def _evened(setting: Setting, block: Block, column: Column, limit: float, made: tuple) -> tuple[list[Put], float]:
    """The same lines, none much longer than it need be."""
    high = max(line.width for line in made[2])
    low = max(high / 2, max(word.width for word in block.words))
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        again = _set_lines(setting, block, column, made[3], limit, True, middle)
        if again is not None and len(again[2]) == len(made[2]):
            made, high = again, middle
        else:
            low = middle
    return made[:2]


def _set_lines(setting: Setting, block: Block, column: Column, top: float, limit: float, fixed: bool,
               longest: float) -> tuple[list[Put], float, list[Line], float] | None:
    """Lines of words, where they end, the lines themselves, and where they begin."""
    size, rest = setting.size(block), block.words
    puts, lines, start, down = [], [], top, top
    while rest:
        first = not lines
        height = _line_height(block, size, first)
        if down + height > limit + _TINY:
            return None
        span = _room(setting.face, block, size, column, down, height)
        taken = _sign_room(block, size, first)
        line = first_line(rest, min((span[1] - span[0] - taken) / size, longest)) if span else None
        if line is None:
            if fixed or lines or down + height / 2 > setting.face.height / 2:
                return None
            start = down = down + _STEP * size
            continue
        rest = line[1]
        lines.append(line[0])
        puts += _put_line(block, line[0], size, span, column.at_left, down, height, first, not rest)
        down += height + (_LINE_GAP * size if rest else 0.0)
    return puts, down, lines, start


def _room(face: Face, block: Block, size: float, column: Column, top: float, height: float) -> tuple[float, float] | None:
    """From where to where a line may go: within the face, within the column, and clear of the columns beside it."""
    span = face.span(top, top + height)
    if span is None:
        return None
    keep = max(0.0, block.clear[1] * CAPITAL_SHARE * size - COLUMN_GAP)
    left, right = (column.left + (keep if column.left > span[0] + _TINY else 0.0), column.right - (keep if column.right < span[1] - _TINY else 0.0))
    left, right = max(left, span[0]), min(right, span[1])
    return (left, right) if right > left else None


def _line_height(block: Block, size: float, first: bool) -> float:
    above, below = block.reach
    if block.kind == "average":
        return max(above * size, block.sign) + below * size
    return max((above + below) * size, block.sign if block.kind == "alert" and first else 0.0)


def _sign_room(block: Block, size: float, first: bool) -> float:
    """Width of a block's sign and of the space between it and its line."""
    if block.kind == "average":
        return block.sign * AVERAGE_WIDTH + _average_gap(block, size)
    return block.sign * ALERT_WIDTH + 0.4 * size if block.kind == "alert" and first else 0.0


def _average_gap(block: Block, size: float) -> float:
    return max(0.5, block.clear[1] * CAPITAL_SHARE) * size


def _put_line(block: Block, line: Line, size: float, span: tuple[float, float], at_left: bool, down: float, height: float,
              first: bool, last: bool) -> list[Put]:
    """A line in the middle of its span or at its left, with its sign."""
    above, below = block.reach
    before = block.kind == "alert" and first
    after = block.kind == "average" and last
    taken, width = _sign_room(block, size, first) if before or after else 0.0, line.width * size
    left = span[0] if at_left else (span[0] + span[1] - taken - width) / 2
    base = down + (height - below * size if block.kind == "average" else (height + (above - below) * size) / 2)
    start = left + (taken if before else 0.0)
    box = Box(block.name, start, base - above * size, start + width, base + below * size, size)
    puts = [Put(box, "text", line.text, base, size, block.bold)]
    if before:
        top = down + (height - block.sign) / 2
        puts.append(Put(Box("alert", left, top, left + block.sign * ALERT_WIDTH, top + block.sign), "alert"))
    if after:
        right = start + width + taken
        puts.append(Put(Box("average", right - block.sign * AVERAGE_WIDTH, base - block.sign, right, base), "average"))
    return puts


def _set_sign(face: Face, block: Block, column: Column, top: float, limit: float) -> tuple[list[Put], float] | None:
    """A sign or code that stands by itself."""
    width = block.sign * (ALERT_WIDTH if block.kind == "alert" else 1.0)
    plain = replace(block, clear=(0.0, 0.0))
    while top + block.sign <= limit + _TINY:
        span = _room(face, plain, 1.0, column, top, block.sign)
        if span and span[1] - span[0] >= width - _TINY:
            left = span[0] if column.at_left and block.kind == "alert" else (span[0] + span[1] - width) / 2
            return [Put(Box(block.kind, left, top, left + width, top + block.sign), block.kind)], top + block.sign
        if top + block.sign / 2 > face.height / 2:
            return None
        top += 0.5
    return None
