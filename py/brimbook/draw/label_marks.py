"""Signs of a label as shapes: the triangle that warns, the sign ℮, a QR code; and its lines of text."""

from xml.sax.saxutils import escape

from brimbook.draw.code import module_path, modules

# How wide the signs are, in their heights.
ALERT_WIDTH, AVERAGE_WIDTH = 1.12, 1.0
# A phone reads modules of 0.4 mm at the distance of a hand; a label maker of 300 dots to the inch draws them with nearly 5 dots.
# 0.4 mm: second hand, from print advice (qrtool.ch); 4 dots and more: read in qrcode.com, module size.
MODULE = 0.4
QUIET = 4


def number(value: float) -> str:
    """A number as SVG has it [text].

    value: any [mm].

    >>> number(2.50004), number(-0.00001)
    ('2.5', '0')
    """
    return f"{value:.3f}".rstrip("0").rstrip(".") if round(value, 3) else "0"


def line_of_text(text: str, left: float, base: float, size: float, width: float, bold: bool) -> str:
    """A line of text that takes the same width in any font [SVG].

    text: plain [text].
    left: where it starts [mm].
    base: its base line, downwards [mm].
    size: of its font [mm].
    width: that it takes [mm].
    bold: in bold letters [yes or no].
    """
    weight = ' font-weight="700"' if bold else ""
    return (f'<text x="{number(left)}" y="{number(base)}" font-size="{number(size)}" textLength="{number(width)}" '
            f'lengthAdjust="spacingAndGlyphs"{weight} fill="#000" stroke="none">{escape(text)}</text>')


def alert(left: float, top: float, height: float) -> str:
    """A triangle with an exclamation mark, drawn after the general idea, not after a standard's own figure [SVG].

    left: of it [mm].
    top: of it [mm].
    height: of it [mm].
    """
    body = "M52 3Q56 -3 60 3L111 93Q115 100 106 100H6Q-3 100 1 93Z"
    mark = "M49.5 30H62.5L60 66H52ZM56 72A7 7 0 1 0 56 86A7 7 0 1 0 56 72Z"
    return _moved(left, top, height / 100, f'<path d="{body}" fill="#000" stroke="none"/><path d="{mark}" fill="#fff" stroke="none"/>')


def average(left: float, top: float, height: float) -> str:
    """The sign ℮, drawn after its general look: an e of even strokes in a circle [SVG].

    left: of it [mm].
    top: of it [mm].
    height: of it [mm].
    """
    sign = ("M99.9 53.5A50 50 0 1 0 92 77.1L86.4 73.3Q79 84 69.3 83.7A30 44 0 0 1 20.1 53.5Z"
            "M20.1 46.5A30 44 0 0 1 79.9 46.5Z")
    return _moved(left, top, height / 100, f'<path d="{sign}" fill="#000" fill-rule="evenodd" stroke="none"/>')


def code_side(count: int, module: float = MODULE) -> float:
    """Side of a QR code with its quiet zone of four modules all around [mm].

    count: modules along a side [count].
    module: side of one [mm].

    Source: the quiet zone, and the same sum, are told at qrcode.com (code area).

    >>> round(code_side(29, 0.254), 3), round(code_side(41), 3)
    (9.398, 19.6)
    """
    return (count + 2 * QUIET) * module


def code(link: str, left: float, top: float) -> str:
    """A link as a QR code with its quiet zone, dark on light [SVG].

    link: the whole address [text].
    left: of the quiet zone [mm].
    top: of the quiet zone [mm].

    Raises ValueError when the link is too long for any QR code.
    """
    rows = modules(link)
    side = number(len(rows) + 2 * QUIET)
    inside = (f'<path d="M0 0h{side}v{side}h-{side}z" fill="#fff" stroke="none"/>'
              f'<path transform="translate({QUIET} {QUIET})" d="{module_path(rows)}" fill="#000" stroke="none" shape-rendering="crispEdges"/>')
    return _moved(left, top, MODULE, inside)


def _moved(left: float, top: float, scale: float, inside: str) -> str:
    return f'<g transform="translate({number(left)} {number(top)}) scale({scale:.5g})">{inside}</g>'
