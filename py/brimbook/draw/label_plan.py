"""Ways to share a label's face among its things: in one column, or in several side by side."""

from collections.abc import Sequence
from dataclasses import dataclass

from brimbook.draw.label_face import EDGE, Face
from brimbook.draw.label_flow import COLUMN_GAP, Block, Column, Put, Setting, gap_between, set_all, set_foot, set_one

_NARROWEST = 15.0
_MOST_COLUMNS = 4
# What the name and its lines take of the width beside one column, and beside several: as so many columns.
_SHARES, _AS_COLUMNS = (0.38, 0.5, 0.62), (1.0, 1.6)

# Things that stay together, one below the other.
Unit = tuple[Block, ...]


@dataclass(frozen=True)
class Content:
    """What goes on a side: its name and lines, what stands at its foot, what warns and tells more, and the code."""

    front: tuple[Unit, ...]
    foot: tuple[Block, ...]
    back: tuple[Unit, ...]
    code: tuple[Unit, ...]


@dataclass(frozen=True)
class Plan:
    """Streams of things, each through columns of its own, and what stands at the foot of the first column."""

    streams: tuple[tuple[tuple[Unit, ...], tuple[Column, ...]], ...]
    foot: tuple[Block, ...]


def plans(face: Face, content: Content) -> list[Plan]:
    """Every way that is tried, the plainest first [plans].

    face: of the label [face].
    content: that goes on it [content].
    """
    left, right = EDGE, face.width - EDGE
    whole = Column(left, right)
    found = [Plan((((*content.front, *content.back, *content.code), (whole,)),), content.foot)]
    if face.round:
        return found + ([Plan((((*content.front, *content.code, *content.back), (whole,)),), content.foot)] if content.code else [])
    found += _side_by_side(left, right, content.front, (*content.back, *content.code), content.foot, ())
    if content.code:
        side = content.code[0][0].sign
        last = ((content.code, (Column(right - side, right),)),)
        rest = right - side - COLUMN_GAP
        if rest - left >= _NARROWEST:
            found.append(Plan((((*content.front, *content.back), (Column(left, rest),)), *last), content.foot))
            found += _side_by_side(left, rest, content.front, content.back, content.foot, last)
    return found


def put(setting: Setting, plan: Plan) -> list[Put] | None:
    """All things of a plan in their places; none where they have no room [things].

    setting: how they are set [setting].
    plan: to be followed [plan].
    """
    found, limit = [], setting.face.height - EDGE
    first = plan.streams[0][1][0]
    below, low = None, limit
    for block in reversed(plan.foot):
        made = set_foot(setting, block, first, low - (gap_between(setting, block, below) if below else 0.0))
        if made is None:
            return None
        found, low, below = found + made[0], made[1], block
    for number, (units, columns) in enumerate(plan.streams):
        filled = _fill(setting, units, columns, lambda at: low if number == 0 and at == 0 else limit, below if number == 0 else None)
        if filled is None:
            return None
        found += filled
    return found


def _fill(setting: Setting, units: Sequence[Unit], columns: Sequence[Column], limit_of, foot: Block | None) -> list[Put] | None:
    """Units one after the other through columns: one that has no room goes to the next column."""
    found, at, start = [], 0, 0
    while start < len(units):
        if at == len(columns):
            return None
        below = foot if at == 0 else None
        count, end = _taken(setting, units[start:], columns[at], limit_of(at), below)
        if count == 0 and columns[at] is columns[-1]:
            return None
        blocks = [block for unit in units[start:start + count] for block in unit]
        if blocks:
            found += _settled(setting, blocks, columns[at], limit_of(at) - _keep(setting, blocks[-1], below), end)
        start, at = start + count, at + 1
    return found


def _taken(setting: Setting, units: Sequence[Unit], column: Column, limit: float, foot: Block | None) -> tuple[int, float]:
    """How many units a column takes, and where the last one ends."""
    end, before = EDGE, None
    for number, unit in enumerate(units):
        down = end
        for block in unit:
            start = down + (gap_between(setting, before, block) if before else 0.0)
            made = set_one(setting, block, column, start, limit - _keep(setting, block, foot))
            if made is None:
                return number, end
            down, before = made[1], block
        end = down
    return len(units), end


def _keep(setting: Setting, block: Block, foot: Block | None) -> float:
    return gap_between(setting, block, foot) if foot else 0.0


def _settled(setting: Setting, blocks: Sequence[Block], column: Column, limit: float, end: float) -> list[Put]:
    """A column's things in the middle of its height, when they are set for good; else where they begin at the top."""
    made = set_all(setting, blocks, column, EDGE, limit)
    for _ in range(2 if setting.even else 0):
        start = min(put.box.top for put in made[0])
        again = set_all(setting, blocks, column, max(EDGE, start + (limit - made[1] - (start - EDGE)) / 2), limit)
        made = again or made
    return made[0]


def _side_by_side(left: float, right: float, front: tuple[Unit, ...], back: tuple[Unit, ...], foot: tuple[Block, ...],
                  last: tuple) -> list[Plan]:
    """The front in a column of its own and the back in one or more; the back alone in two or more."""
    found = []
    if not back:
        return found
    for count in range(1, _MOST_COLUMNS + 1):
        if not front and not foot:
            if count > 1:
                found += _with_columns(_columns(left, right, count), (), back, (), last)
            continue
        for share in _SHARES if count == 1 else [each / (each + count) for each in _AS_COLUMNS]:
            middle = left + (right - left - COLUMN_GAP) * share
            if middle - left >= _NARROWEST:
                own = (Column(left, middle),)
                found += _with_columns(_columns(middle + COLUMN_GAP, right, count), ((front, own),), back, foot, last)
    return found


def _with_columns(columns: tuple[Column, ...], before: tuple, back: tuple[Unit, ...], foot: tuple[Block, ...], last: tuple) -> list[Plan]:
    if columns[0].right - columns[0].left < _NARROWEST:
        return []
    return [Plan((*before, (back, columns), *last), foot)]


def _columns(left: float, right: float, count: int) -> tuple[Column, ...]:
    width = (right - left - COLUMN_GAP * (count - 1)) / count
    return tuple(Column(left + number * (width + COLUMN_GAP), left + number * (width + COLUMN_GAP) + width, True) for number in range(count))
