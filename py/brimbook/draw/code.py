"""A link as a QR code: a drawing of its own, or the modules that it is made of."""

import io
from functools import lru_cache
from itertools import groupby

import segno


def qr(link: str) -> str:
    """A link as a QR code with its quiet zone [SVG].

    link: the whole address [text].

    Raises ValueError when the link is too long for any QR code.

    >>> qr("https://example.org/#1.abc").startswith("<svg")
    True
    """
    code, sheet = _made(link), io.BytesIO()
    # Dark on light in any theme: many readers do not take the inverse.
    code.save(sheet, kind="svg", xmldecl=False, border=4, scale=1, omitsize=True, dark="#000", light="#fff",
              svgclass="code", lineclass=None)
    return sheet.getvalue().decode("ascii").strip()


@lru_cache(maxsize=8)
def modules(link: str) -> tuple[tuple[bool, ...], ...]:
    """The dark modules of a link's QR code, row by row, without its quiet zone [yes or no].

    link: the whole address [text].

    Raises ValueError when the link is too long for any QR code.

    >>> len(modules("https://example.org/#1.abc"))
    25
    """
    return tuple(tuple(bool(dark) for dark in row) for row in _made(link).matrix)


def module_path(rows: tuple[tuple[bool, ...], ...]) -> str:
    """The dark modules as one path, a module a unit long [SVG].

    rows: of the code, from the top [yes or no].

    Modules side by side are one piece, so that no seam shows between them.

    >>> module_path(((True, True, False), (False, False, True)))
    'M0 0h2v1h-2zM2 1h1v1h-1z'
    """
    pieces = []
    for down, row in enumerate(rows):
        along = 0
        for dark, run in groupby(row):
            length = len(list(run))
            pieces += [f"M{along} {down}h{length}v1h-{length}z"] if dark else []
            along += length
    return "".join(pieces)


def _made(link: str) -> segno.QRCode:
    try:
        return segno.make_qr(link, error="l")
    except segno.DataOverflowError:
        raise ValueError("This vessel is too large for a QR code. Send its link instead.") from None
