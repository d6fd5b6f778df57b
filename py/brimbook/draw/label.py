"""A label at true size: what stands on it, laid out in its shape."""

from dataclasses import dataclass

# How the height of letters is told: by a capital or a numeral, or by a small letter such as o or x.
CAPITAL, SMALL = "capital", "small"


@dataclass(frozen=True)
class Words:
    """Something that a label says.

    name: product, net, maker, scent, warning, caution, burn_time, lot or line.
    text: may be broken at spaces.
    least: the least height of its letters that a rule or the eye asks for [mm]; they may be larger.
    measured: capital or small.
    side: front or back; both the same where everything is on one label.
    clear: free space around it that a rule asks for, above and below, left and right, in heights of its letters [–].
    low: must it stand in the lowest 30 % of the front?
    """

    name: str
    text: str
    least: float
    measured: str = CAPITAL
    bold: bool = False
    side: str = "front"
    clear: tuple[float, float] = (0.0, 0.0)
    low: bool = False


@dataclass(frozen=True)
class Label:
    """A label: its shape and size [mm], what it says, and which of the standing signs it shows.

    shape: round, rectangle or strip; width and height are both the diameter where it is round.
    alert: height of the triangle with an exclamation mark, 0 for none [mm].
    average: height of the ℮ mark, 0 for none [mm].
    code: is there a QR code?
    apart: are front and back two labels?
    """

    shape: str
    width: float
    height: float
    corner: float
    words: tuple[Words, ...]
    alert: float = 0.0
    average: float = 0.0
    code: bool = False
    apart: bool = False


@dataclass(frozen=True)
class Box:
    """What one thing takes of a side, from its top left corner, and how high its letters are, 0 for a sign [mm].

    name: of the words; alert, average or code for a sign.
    """

    name: str
    left: float
    top: float
    right: float
    bottom: float
    letters: float = 0.0


@dataclass(frozen=True)
class Side:
    """One printed label, laid out: its shapes as SVG, and what each of them takes, from its top left corner [mm]."""

    name: str
    width: float
    height: float
    shapes: tuple[str, ...]
    boxes: tuple[Box, ...]


@dataclass(frozen=True)
class Laid:
    """A label laid out.

    fits: does all of it fit at its least heights?
    says: what does not, or what the maker should know.
    needed: width and height at which all of it would fit; none where no label that is made here is large enough [mm].
    sides: front, or front and back; where it does not fit, as they would be at the size that is needed.
    """

    label: Label
    fits: bool
    says: tuple[str, ...]
    sides: tuple[Side, ...]
    needed: tuple[float, float] | None = None
