"""A link as a QR code."""

import io

import segno


def qr(link: str) -> str:
    """A link as a QR code with its quiet zone [SVG].

    link: the whole address [text].

    Raises ValueError when the link is too long for any QR code.

    >>> qr("https://example.org/#1.abc").startswith("<svg")
    True
    """
    try:
        code = segno.make_qr(link, error="l")
    except segno.DataOverflowError:
        raise ValueError("This vessel is too large for a QR code. Send its link instead.") from None
    sheet = io.BytesIO()
    # Dark on light in any theme: many readers do not take the inverse.
    code.save(sheet, kind="svg", xmldecl=False, border=4, scale=1, omitsize=True, dark="#000", light="#fff",
              svgclass="code", lineclass=None)
    return sheet.getvalue().decode("ascii").strip()
