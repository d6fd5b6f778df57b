"""Straight lines of a printed page, read from the PDF itself."""

from pypdf import PageObject
from pypdf.generic import ContentStream

_POINT = 25.4 / 72


def size_of(page: PageObject) -> tuple[float, float]:
    """Width and height of the paper [mm]."""
    return float(page.mediabox.width) * _POINT, float(page.mediabox.height) * _POINT


def lines(page: PageObject) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    """Both ends of every straight piece that is drawn, from the top left corner of the paper [mm]."""
    height, found = float(page.mediabox.height), []
    for start, end in _pieces(page.get_contents(), page, (1, 0, 0, 1, 0, 0)):
        found.append(tuple((x * _POINT, (height - y) * _POINT) for x, y in (start, end)))
    return found


def _pieces(stream, owner, matrix):
    """Pieces of a stream of drawing steps in points, those of the forms that it calls too."""
    kept, here, first = [], (0.0, 0.0), (0.0, 0.0)
    for numbers, step in ContentStream(stream, owner.pdf).operations:
        if step == b"q":
            kept.append(matrix)
        elif step == b"Q":
            matrix = kept.pop()
        elif step == b"cm":
            matrix = _times([float(each) for each in numbers], matrix)
        elif step == b"m":
            here = first = _moved(numbers, matrix)
        elif step == b"l":
            there = _moved(numbers, matrix)
            yield here, there
            here = there
        elif step in (b"c", b"v", b"y"):
            here = _moved(numbers[-2:], matrix)
        elif step == b"h":
            yield here, first
            here = first
        elif step == b"Do":
            form = owner["/Resources"]["/XObject"][numbers[0]].get_object()
            if form["/Subtype"] == "/Form":
                own = [float(each) for each in form.get("/Matrix", (1, 0, 0, 1, 0, 0))]
                form.pdf = owner.pdf
                yield from _pieces(form, form, _times(own, matrix))


def _times(first, then):
    a, b, c, d, e, f = first
    g, h, i, j, k, m = then
    return (a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m)


def _moved(point, matrix):
    x, y = (float(each) for each in point)
    a, b, c, d, e, f = matrix
    return x * a + y * c + e, x * b + y * d + f
