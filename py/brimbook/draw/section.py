"""The section of a mold or a vessel, filled to its line."""

from dataclasses import dataclass

from brimbook.draw.model_section import Cut, upright
from brimbook.draw.section_parts import BOTTOM, HEIGHT, LEFT, RIGHT, TOP, WALL, WIDTH, line_and_labels, polygon, sheet


@dataclass(frozen=True)
class Profile:
    """Half-open outline of a room in section: how wide at the top and the bottom, how high [mm]; or its true cut."""

    top: float
    bottom: float
    height: float
    to_scale: bool
    cut: Cut | None = None


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
    if profile.cut is not None:
        return upright(profile.cut, contents, labels)
    room = _room(profile)
    (left, top), (_, bottom), (_, _), (right, _) = room
    rim = top - 16
    outer = [(left - WALL, rim), (room[1][0] - WALL, bottom + WALL), (room[2][0] + WALL, bottom + WALL),
             (right + WALL, rim), (right, rim), (right, top), room[2], room[1], (left, top), (left, rim)]
    return sheet([polygon(outer, "vessel-wall"), polygon(room, contents), *line_and_labels(top, right, labels),
                 *_scale_note(profile)])


def mold(profile: Profile, labels: list[str]) -> str:
    """A mold in section, its cavity filled with water to the brim [SVG].

    profile: of the cavity [mm].
    labels: lines of text beside the fill line, the first one large [text].

    A cavity whose shape is not known is drawn as the room round a hanging core.

    >>> 'class="water"' in mold(UNKNOWN, ["642 mL"])
    True
    """
    if profile.cut is not None:
        return upright(profile.cut, "water", labels)
    room = _room(profile)
    (left, top), (_, bottom), (_, _), (right, _) = room
    body = [(left - WALL, top), (left - WALL, bottom + WALL), (right + WALL, bottom + WALL), (right + WALL, top)]
    shapes = [polygon(body, "mold"), polygon(room, "water")]
    if not profile.to_scale:
        shapes.append(polygon(_core(room), "mold"))
    return sheet([*shapes, *line_and_labels(top, right, labels), *_scale_note(profile)])


def _room(profile: Profile) -> list[tuple[float, float]]:
    """The room's corners on the sheet: top left, bottom left, bottom right, top right."""
    widest = max(profile.top, profile.bottom)
    scale = min((RIGHT - LEFT - 2 * WALL) / widest, (BOTTOM - TOP - WALL) / profile.height)
    middle, bottom = (LEFT + RIGHT) / 2, BOTTOM - WALL
    top = bottom - profile.height * scale
    half_top, half_bottom = profile.top * scale / 2, profile.bottom * scale / 2
    return [(middle - half_top, top), (middle - half_bottom, bottom), (middle + half_bottom, bottom),
            (middle + half_top, top)]


def _core(room: list[tuple[float, float]]) -> list[tuple[float, float]]:
    (left, top), (low_left, bottom), (low_right, _), (right, _) = room
    inset = 18
    return [(left + inset, top - 12), (low_left + inset, bottom - inset), (low_right - inset, bottom - inset),
            (right - inset, top - 12)]


def _scale_note(profile: Profile) -> list[str]:
    if profile.to_scale:
        return []
    return [f'<text class="label-small" x="{WIDTH - 8}" y="{HEIGHT - 8}" text-anchor="end">not to scale</text>']
