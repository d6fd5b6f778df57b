"""An outline as text: SVG path data, or a plain list of points."""

import math
import re
from collections.abc import Iterator

Point = tuple[float, float]
Curve = tuple[Point, ...]

LONGEST = 2000
_NUMBER = r"[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?"
_WORD = re.compile(rf"\s*,?\s*(?:([MmLlHhVvCcSsQqTtAaZz])|({_NUMBER}))")
_FLAG = re.compile(r"\s*,?\s*(?:([MmLlHhVvCcSsQqTtAaZz])|([01]))")
_TAKES = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "A": 7, "Z": 0}
# Arcs are cut into pieces of at most so much, each as a cubic that is 7e-8 of the radius off, on the outside [rad].
_PIECE = math.pi / 8
# Coordinates beyond this are a slip [mm]; an arc between points nearer than this share of its radius is a line.
_FAR, _NEAR = 1e6, 1e-9


class OutlineError(ValueError):
    """An outline that can't be: its message is a sentence for the maker."""


def curves(text: str) -> list[Curve]:
    """The pieces of one closed outline, each a line of two points or a cubic of four [mm].

    text: SVG path data, or points such as 0 0, 80 0, 80 40; y goes up in points and down in path data [text].

    Raises OutlineError when the text can't be read as one outline.

    Source: SVG 2, chapter 9, path data; appendix B.2, arcs.

    >>> curves("M 0 0 h 80 v 40 z")
    [((0.0, 0.0), (80.0, 0.0)), ((80.0, 0.0), (80.0, -40.0)), ((80.0, -40.0), (0.0, 0.0))]
    """
    if len(text) > LONGEST:
        raise OutlineError(f"This outline is longer than {LONGEST:,} letters. Draw it with fewer points.")
    words = words_of(text)
    if not any(isinstance(word, str) for word in words):
        return _closed(list(_joined(_pairs(words))))
    pen = Pen()
    for letter, numbers in commands(words):
        pen.draw(letter, numbers)
    return [tuple((x, 0.0 - y) for x, y in curve) for curve in _closed(pen.drawn)]


def words_of(text: str) -> list[str | float]:
    """The letters and numbers of an outline's text, in order [letters and numbers].

    text: SVG path data, or points [text].

    Raises OutlineError where something else stands in it, or a number far too large.

    >>> words_of("M0 0h80")
    ['M', 0.0, 0.0, 'h', 80.0]
    """
    words, at, text, letter = [], 0, text.strip(), 0
    while at < len(text):
        # The two flags of an arc may stand without a gap between them and the next number.
        is_flag = words[letter:letter + 1] in (["A"], ["a"]) and (len(words) - letter - 1) % 7 in (3, 4)
        found = (_FLAG if is_flag else _WORD).match(text, at)
        if found is None:
            raise OutlineError(f"“{text[at:at + 8].strip()}” is neither a path letter nor a number."
                               " Points are right as 0 0, 80 0, 80 40.")
        words.append(found[1] or float(found[2]))
        letter = len(words) - 1 if found[1] else letter
        at = found.end()
    if not all(isinstance(word, str) or abs(word) <= _FAR for word in words):
        raise OutlineError("One of these numbers is far too large. Type millimeters.")
    if not words:
        raise OutlineError("Type the corners as 0 0, 80 0, 80 40, or paste a path.")
    return words


def _pairs(numbers: list[float]) -> list[Point]:
    if len(numbers) % 2:
        raise OutlineError("One point has no second number: each corner takes two.")
    return list(zip(numbers[::2], numbers[1::2]))


def _joined(points: list[Point]) -> Iterator[Curve]:
    return zip(points, points[1:])


def _closed(drawn: list[Curve]) -> list[Curve]:
    """Without pieces of no length, and with the line back to where it began."""
    drawn = [curve for curve in drawn if any(point != curve[0] for point in curve)]
    if drawn and drawn[-1][-1] != drawn[0][0]:
        drawn.append((drawn[-1][-1], drawn[0][0]))
    return drawn


def commands(words: list[str | float]) -> Iterator[tuple[str, list[float]]]:
    """Each letter with as many numbers as it takes once; a letter may be followed by several such lots [letters and numbers].

    words: of path data [letters and numbers].

    Raises OutlineError where they don't begin with M, or where a letter has too few or too many numbers.

    >>> list(commands(["M", 0.0, 0.0, 8.0, 4.0]))
    [('M', [0.0, 0.0]), ('L', [8.0, 4.0])]
    """
    if words[0] not in ("M", "m"):
        raise OutlineError("A path begins with M and where its outline starts, such as M 0 0.")
    at = 0
    while at < len(words):
        letter, at = words[at], at + 1
        takes, lots = _TAKES[letter.upper()], 0
        while lots == 0 or (takes and at < len(words) and not isinstance(words[at], str)):
            numbers = words[at:at + takes]
            if len(numbers) < takes or any(isinstance(number, str) for number in numbers):
                raise OutlineError(f"{letter} in this path takes {takes} number{'s' if takes > 1 else ''} at a time.")
            yield letter, numbers
            at, lots = at + takes, lots + 1
            letter = {"M": "L", "m": "l"}.get(letter, letter)
        if takes == 0 and at < len(words) and not isinstance(words[at], str):
            raise OutlineError("Z closes the outline: it takes no number.")


class Pen:
    """Draws the commands of one outline one after the other: at is where it is, start where the outline began."""

    def __init__(self, at: Point = (0.0, 0.0), start: Point | None = None) -> None:
        self.drawn: list[Curve] = []
        self.at = at
        self.start = start
        # Where the last curve's handle mirrors to, and whether that curve was a cubic.
        self._mirrored: tuple[str, Point] = ("", (0.0, 0.0))
        self.is_closed = False

    def draw(self, letter: str, numbers: list[float]) -> None:
        """Draw one command [nothing].

        letter: of the command [text].
        numbers: as many as it takes [mm, but °, and yes or no, for some of an arc].
        """
        kind = letter.upper()
        if self.is_closed or (kind == "M" and self.start is not None):
            raise OutlineError("This path draws more than one outline. Keep only the outer one.")
        if kind == "A":
            return self._arc(*numbers[:5], self._point(letter, numbers[5:]))
        if kind == "M":
            self.at = self.start = self._point(letter, numbers)
            return None
        if kind == "Z":
            self.is_closed = True
            return self._line(self.start)
        if kind in "HV":
            here = self.at if letter.islower() else (0.0, 0.0)
            return self._line((here[0] + numbers[0], self.at[1]) if kind == "H" else (self.at[0], here[1] + numbers[0]))
        points = [self._point(letter, numbers[place:place + 2]) for place in range(0, len(numbers), 2)]
        return self._line(points[0]) if kind == "L" else self._curve(kind, points)

    def _point(self, letter: str, pair: list[float]) -> Point:
        x, y = self.at if letter.islower() else (0.0, 0.0)
        return (x + pair[0], y + pair[1])

    def _line(self, to: Point) -> None:
        self.drawn.append((self.at, to))
        self.at, self._mirrored = to, ("", to)

    def _curve(self, kind: str, points: list[Point]) -> None:
        family = "C" if kind in "CS" else "Q"
        if kind in "ST":
            points = [self._mirrored[1] if self._mirrored[0] == family else self.at, *points]
        handle, end = points[-2], points[-1]
        if family == "Q":
            points = [_between(self.at, handle, 2 / 3), _between(end, handle, 2 / 3), end]
        self.drawn.append((self.at, *points))
        self.at, self._mirrored = end, (family, _between(handle, end, 2.0))

    def _arc(self, across: float, along: float, turned: float, large: float, sweep: float, to: Point) -> None:
        across, along, turned = abs(across), abs(along), math.radians(turned)
        if across == 0 or along == 0 or to == self.at:
            return self._line(to)
        cos, sin = math.cos(turned), math.sin(turned)
        half = ((self.at[0] - to[0]) / 2, (self.at[1] - to[1]) / 2)
        x, y = (cos * half[0] + sin * half[1]) / across, (cos * half[1] - sin * half[0]) / along
        far = math.hypot(x, y)
        if far < _NEAR:
            return self._line(to)
        grown = max(far, 1.0)
        off = math.sqrt(max(0.0, (grown / far) ** 2 - 1)) * (1 if bool(large) != bool(sweep) else -1)
        begin = math.atan2(y - off * -x, x - off * y)
        swept = math.atan2(-y - off * -x, -x - off * y) - begin
        swept += 2 * math.pi * ((swept < 0) - (swept > 0)) if (swept > 0) != bool(sweep) else 0.0
        middle = ((self.at[0] + to[0]) / 2 + cos * off * y * across + sin * off * x * along,
                  (self.at[1] + to[1]) / 2 + sin * off * y * across - cos * off * x * along)
        pieces = max(1, math.ceil(abs(swept) / _PIECE))

        def placed(u: float, v: float) -> Point:
            u, v = grown * across * u, grown * along * v
            return (middle[0] + cos * u - sin * v, middle[1] + sin * u + cos * v)

        handle = 4 / 3 * math.tan(swept / pieces / 4)
        for piece in range(pieces):
            one, other = (begin + swept * (piece + more) / pieces for more in (0, 1))
            end = to if piece == pieces - 1 else placed(math.cos(other), math.sin(other))
            self.drawn.append((self.at, placed(math.cos(one) - handle * math.sin(one), math.sin(one) + handle * math.cos(one)),
                               placed(math.cos(other) + handle * math.sin(other), math.sin(other) - handle * math.cos(other)), end))
            self.at = end
        self._mirrored = ("", to)
        return None


def _between(one: Point, other: Point, share: float) -> Point:
    return (one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1]))
