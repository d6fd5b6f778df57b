"""Designed vessels for tests."""

from vessels import put, vessel


def designed_vessel(shape: str = "round", **sizes: str):
    """A vessel whose mold and well go by its design, 80 mm across and 75 mm high."""
    record = vessel(casts__0__cavity__way="design", wells__0__fill__way="design")
    usual = {"across": "80 mm", "height": "32 mm" if shape == "bowl" else "75 mm", "other": "60 mm", "bottom": "64 mm", "corner": "6 mm", "foot": "30 mm",
             "path": "M 0 0 h 80 v 20 a 20 20 0 0 1 -20 20 h -60 z"}
    for name, text in {**usual, "shape": shape, **sizes}.items():
        put(record, f"design.0.{name}", text)
    return record


SHAPES = ("round", "tapered", "oval", "rectangle", "polygon", "bowl", "path")
