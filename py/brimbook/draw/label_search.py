"""The largest letters that a label has room for, and the size that a label would have to be."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from brimbook.draw.label_face import Face, scaled
from brimbook.draw.label_flow import Put, Setting
from brimbook.draw.label_plan import Content, Plan, plans, put

# No label that is made here is larger [mm].
LARGEST = 300.0
_STEPS, _GAIN, _GROWTH, _FINEST = 5, 0.03, 1.2, 1.0
# So many millimeters less are tried once a size is found.
_FEWER = (1, 2, 3)


def largest(face: Face, content: Content) -> list[Put] | None:
    """Everything in place with letters as large as there is room; none where it has none at its least heights [things].

    face: of the label [face].
    content: that goes on it [content].
    """
    best, common = _best(face, plans(face, content))
    if best is None:
        return None
    product = _most(lambda share: Setting(face, share, common), best, common)
    others = _most(lambda share: Setting(face, product, share), best, common)
    net = _most(lambda share: Setting(face, product, others, share), best, 0.0, _lines_of_net(put(Setting(face, product, others), best)))
    return put(Setting(face, product, others, net, even=True), best)


def fits(face: Face, content: Content) -> bool:
    """Does everything have room at its least heights [yes or no]?

    face: of the label [face].
    content: that goes on it [content].
    """
    return any(put(Setting(face), plan) is not None for plan in plans(face, content))


def needed(face: Face, content: Content, only_height: bool) -> Face | None:
    """The smallest face of the same kind, in whole millimeters, on which everything has room; none where none has [face].

    face: that is too small [face].
    content: that goes on it [content].
    only_height: is it to be as wide as it is [yes or no]?
    """
    most = LARGEST / (face.height if only_height else max(face.width, face.height))
    high = 1.0
    while not fits(_times(face, high, only_height), content):
        if high >= most:
            return None
        high = min(most, high * _GROWTH)
    low = max(1.0, high / _GROWTH)
    while (high - low) * max(face.width, face.height) > _FINEST:
        middle = (low + high) / 2
        low, high = (low, middle) if fits(_times(face, middle, only_height), content) else (middle, high)
    return _in_millimeters(_times(face, high, only_height), content, only_height)


def _in_millimeters(face: Face, content: Content, only_height: bool) -> Face | None:
    """The next face in whole millimeters: now and then a millimeter more or some fewer, because lines break anew."""
    start = replace(face, width=float(-int(-face.width // 1)), height=float(-int(-face.height // 1)))
    found = next((more for more in (0, 1, 2, 3) if fits(_wider(start, more, only_height), content)), None)
    while found is not None and (less := next((found - by for by in _FEWER if fits(_wider(start, found - by, only_height), content)), None)) is not None:
        found = less
    return None if found is None else _wider(start, found, only_height)


def _wider(face: Face, more: float, only_height: bool) -> Face:
    return replace(face, width=face.width + (0.0 if only_height else more), height=face.height + more)


def _times(face: Face, share: float, only_height: bool) -> Face:
    return scaled(face, 1.0 if only_height else share, share)


def _best(face: Face, ways: Sequence[Plan]) -> tuple[Plan | None, float]:
    """The way in which all letters can be the largest, and how far they grow."""
    best, most = None, 0.0
    for plan in ways:
        least = most + _GAIN if best else 0.0
        if least > 1.0:
            break
        if put(Setting(face, least, least), plan) is not None:
            best, most = plan, _most(lambda share: Setting(face, share, share), plan, least)
    return best, most


def _most(setting_of: Callable[[float], Setting], plan: Plan, low: float, lines: int | None = None) -> float:
    """The largest share at which a plan has room, from one at which it has; the net weight in so many lines and no more."""
    def has_room(share: float) -> bool:
        made = put(setting_of(share), plan)
        return made is not None and (lines is None or _lines_of_net(made) <= lines)

    if has_room(1.0):
        return 1.0
    high = 1.0
    for _ in range(_STEPS):
        middle = (low + high) / 2
        low, high = (middle, high) if has_room(middle) else (low, middle)
    return low


def _lines_of_net(puts: list[Put]) -> int:
    return sum(put.box.name == "net" for put in puts)
