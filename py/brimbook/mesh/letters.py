"""Whole numbers packed into letters that a link may hold, six bits to a letter, and read back with care."""

import math
import struct
import zlib

from brimbook.mesh.triangles import ModelError

DAMAGED = "What was read from the file is damaged. Choose the file again."
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"
_PLACES = {letter: format(place, "06b") for place, letter in enumerate(ALPHABET)}
# A seal of so many letters tells a text that lost a letter on its way.
SEAL = 4
# No length, area or volume of a file is larger.
_LARGEST = 1e24
# Marks that stand in notes, each behind a ~; a space is a _.
_MARKS = {",": "a", ".": "b", ":": "c", ";": "d", "'": "e", "(": "f", ")": "g", "%": "h", "±": "i", "×": "j", "°": "k", "–": "l",
          "²": "m", "³": "n", "?": "o", "+": "p", "’": "q", "/": "r", "µ": "s"}
_READ_MARKS = {letter: mark for mark, letter in _MARKS.items()}


class Packer:
    """Takes whole numbers, each with its width in bits."""

    def __init__(self):
        self._bits: list[str] = []

    def put(self, value: int, width: int) -> None:
        """Nothing; too large a value is told as the largest that fits [nothing].

        value: 0 or more [whole number].
        width: how many bits it may take [bits].
        """
        self._bits.append(format(max(0, min(value, (1 << width) - 1)), f"0{width}b"))

    def share(self, value: float, whole: float, width: int) -> None:
        """Nothing; a share of a whole, from 0 to 1, as so many steps [nothing].

        value: from 0 to the whole [any unit].
        whole: what it is a share of [the same unit].
        width: how many bits it may take [bits].
        """
        self.put(steps(value, whole, width), width)

    def number(self, value: float) -> None:
        """Nothing; a number of seven digits [nothing].

        value: 0 or more [any unit].
        """
        self.put(struct.unpack("<I", struct.pack("<f", value))[0], 32)

    def letters(self) -> str:
        """All that was put in [text]."""
        bits = "".join(self._bits)
        bits += "0" * (-len(bits) % 6)
        return "".join(ALPHABET[int(bits[start:start + 6], 2)] for start in range(0, len(bits), 6))


class Unpacker:
    """Gives back what a Packer took, in the same order; ModelError where letters are missing, left over or make no sense."""

    def __init__(self, letters: str):
        require(all(letter in _PLACES for letter in letters))
        self._bits = "".join(map(_PLACES.__getitem__, letters))
        self._at = 0

    def take(self, width: int, most: int | None = None) -> int:
        """The next whole number [whole number].

        width: its bits [bits].
        most: the largest that makes sense [whole number].
        """
        end = self._at + width
        require(end <= len(self._bits))
        value = int(self._bits[self._at:end], 2)
        self._at = end
        require(most is None or value <= most)
        return value

    def share(self, whole: float, width: int) -> float:
        """The next share of a whole [unit of the whole].

        whole: what it is a share of [any unit].
        width: its bits [bits].
        """
        return self.take(width) / ((1 << width) - 1) * whole

    def number(self) -> float:
        """The next number, 0 or more [any unit]."""
        value = struct.unpack("<f", struct.pack("<I", self.take(32)))[0]
        require(math.isfinite(value) and 0 <= value <= _LARGEST)
        return value

    def end(self) -> None:
        """Nothing, if nothing but filling is left [nothing]."""
        require(len(self._bits) - self._at < 6 and "1" not in self._bits[self._at:])


def require(sound: bool) -> None:
    """Nothing [nothing].

    sound: does what was read make sense? [yes or no]

    Raises ModelError if not.
    """
    if not sound:
        raise ModelError(DAMAGED)


def steps(value: float, whole: float, width: int) -> int:
    """A share of a whole as so many steps, the whole being all of them [steps].

    value: from 0 to the whole [any unit].
    whole: what it is a share of [the same unit].
    width: bits of the number of steps [bits].

    >>> steps(5.0, 10.0, 4), steps(-1.0, 10.0, 4), steps(11.0, 10.0, 4)
    (8, 0, 15)
    """
    return round(max(0.0, min(value / whole, 1.0)) * ((1 << width) - 1)) if whole > 0 else 0


def sealed(version: str, body: str) -> str:
    """A text behind its version and a seal [text].

    version: one letter [text].
    body: the letters to keep whole [text].
    """
    packer = Packer()
    packer.put(zlib.crc32((version + body).encode("ascii", "replace")) & 0xFFFFFF, 6 * SEAL)
    return version + packer.letters() + body


def opened(version: str, text: str, most: int) -> str:
    """A text without its version and seal [text].

    version: the one that is read here [text].
    text: as sealed() made it [text].
    most: letters that it may have [letters].

    Raises ModelError where it is anything else.
    """
    require(isinstance(text, str) and 1 + SEAL < len(text) <= most and text[0] == version)
    body = text[1 + SEAL:]
    require(sealed(version, body) == text)
    return body


def note_letters(note: str) -> str:
    """A sentence in letters that a link may hold [text].

    note: a sentence; marks that it can't hold become - [text].

    >>> note_letters("It was turned.")
    'It_was_turned~b'
    """
    return "".join(_note_letter(letter) for letter in note)


def _note_letter(letter: str) -> str:
    if letter == " ":
        return "_"
    if letter in _MARKS:
        return "~" + _MARKS[letter]
    return letter if letter.isascii() and letter.isalnum() else "-"


def note(letters: str) -> str:
    """The sentence again [text].

    letters: as note_letters() made them [text].

    >>> note("It_was_turned~b")
    'It was turned.'
    """
    plain, *marked = letters.split("~")
    require(all(part and part[0] in _READ_MARKS for part in marked))
    whole = plain + "".join(_READ_MARKS[part[0]] + part[1:] for part in marked)
    require(all(letter in _PLACES or letter in _MARKS for letter in whole))
    return whole.replace("_", " ")
