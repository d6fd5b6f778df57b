"""The section of a mold or a vessel, filled to its line."""

from dataclasses import dataclass
from xml.sax.saxutils import escape

WIDTH, HEIGHT = 350, 190
_LEFT, _RIGHT, _TOP, _BOTTOM = 20, 172, 34, 166
_WALL = 12


@dataclass(frozen=True)
class Profile:
    """Half-open outline of a room in section: how wide at the top and the bottom, how high [mm]."""

    top: float
    bottom: float
    height: float
    to_scale: bool


# A stout cup, for a room whose shape nobody has told.
UNKNOWN = Profile(84.0, 74.0, 70.0, to_scale=False)


def vessel(profile: Profile, contents: str, labels: list[str]) -> str:
    """A cast vessel in section, its well filled to the line [SVG].

    profile: of the well to its line [mm].
    contents: what fills it: wax or water, a class name [text].
    labels: lines of text beside the fill line, the first one large [text].

    >>> vessel(UNKNOWN, "wax", ["196 mL"]).startswith('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 350 190"')
    True
    """
    room = _room(profile)
    (left, top), (_, bottom), (_, _), (right, _) = room
    rim = top - 16
    outer = [(left - _WALL, rim), (room[1][0] - _WALL, bottom + _WALL), (room[2][0] + _WALL, bottom + _WALL),
             (right + _WALL, rim), (right, rim), (right, top), room[2], room[1], (left, top), (left, rim)]
    return _svg([_polygon(outer, "vessel-wall"), _polygon(room, contents), *_line_and_labels(top, right, labels),
                 *_scale_note(profile)])


def mold(profile: Profile, labels: list[str]) -> str:
    """A mold in section, its cavity filled with water to the brim [SVG].

    profile: of the cavity [mm].
    labels: lines of text beside the fill line, the first one large [text].

    A cavity whose shape is not known is drawn as the room round a hanging core.

    >>> 'class="water"' in mold(UNKNOWN, ["642 mL"])
    True
    """
    room = _room(profile)
    (left, top), (_, bottom), (_, _), (right, _) = room
    body = [(left - _WALL, top), (left - _WALL, bottom + _WALL), (right + _WALL, bottom + _WALL), (right + _WALL, top)]
    shapes = [_polygon(body, "mold"), _polygon(room, "water")]
    if not profile.to_scale:
        shapes.append(_polygon(_core(room), "mold"))
    return _svg([*shapes, *_line_and_labels(top, right, labels), *_scale_note(profile)])


def _room(profile: Profile) -> list[tuple[float, float]]:
    """The room's corners on the sheet: top left, bottom left, bottom right, top right."""
    widest = max(profile.top, profile.bottom)
    scale = min((_RIGHT - _LEFT - 2 * _WALL) / widest, (_BOTTOM - _TOP - _WALL) / profile.height)
    middle, bottom = (_LEFT + _RIGHT) / 2, _BOTTOM - _WALL
    top = bottom - profile.height * scale
    half_top, half_bottom = profile.top * scale / 2, profile.bottom * scale / 2
    return [(middle - half_top, top), (middle - half_bottom, bottom), (middle + half_bottom, bottom),
            (middle + half_top, top)]


def _core(room: list[tuple[float, float]]) -> list[tuple[float, float]]:
    (left, top), (low_left, bottom), (low_right, _), (right, _) = room
    inset = 18
    return [(left + inset, top - 12), (low_left + inset, bottom - inset), (low_right - inset, bottom - inset),
            (right - inset, top - 12)]


def _line_and_labels(level: float, right: float, labels: list[str]) -> list[str]:
    start = _number(max(right + _WALL + 4, _RIGHT + 14))
    shapes = [f'<line class="fill-line" x1="{_number(_LEFT - 16)}" y1="{_number(level)}" x2="{_RIGHT + 12}" '
              f'y2="{_number(level)}"/>']
    for place, text in enumerate(labels):
        style = "label" if place == 0 else "label-small"
        shapes.append(f'<text class="{style}" x="{start}" '
                      f'y="{_number(level + 6 + 20 * place)}">{escape(text)}</text>')
    return shapes


def _scale_note(profile: Profile) -> list[str]:
    if profile.to_scale:
        return []
    return [f'<text class="label-small" x="{WIDTH - 8}" y="{HEIGHT - 8}" text-anchor="end">not to scale</text>']


def _polygon(corners: list[tuple[float, float]], style: str) -> str:
    points = " ".join(f"{_number(x)},{_number(y)}" for x, y in corners)
    return f'<polygon class="{style}" points="{points}"/>'


def _number(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")


def _svg(shapes: list[str]) -> str:
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" class="section">'
            f'{"".join(shapes)}</svg>')
