"""The face of a label: where within its edge there is room."""

import math
from dataclasses import dataclass

# Nothing is printed nearer to the edge: a cut is off by about a millimeter (common practice) [mm].
EDGE = 2.0
# What must stand low stands in so much of the height, from the bottom.
LOW = 0.3


@dataclass(frozen=True)
class Face:
    """A shape that things are laid in: a circle, or a rectangle with rounded corners, from its top left corner [mm]."""

    round: bool
    width: float
    height: float
    corner: float

    def span(self, top: float, bottom: float) -> tuple[float, float] | None:
        """From where to where a band has room on all of its height, within the quiet edge; none outside of it [mm].

        top: of the band [mm].
        bottom: of the band [mm].
        """
        if top < EDGE - 1e-9 or bottom > self.height - EDGE + 1e-9:
            return None
        inset = self._inset(top, bottom)
        return (EDGE + inset, self.width - EDGE - inset) if self.width - 2 * (EDGE + inset) > 0 else None

    def _inset(self, top: float, bottom: float) -> float:
        """What a curve at the band's narrower end takes on each side."""
        radius = (self.width / 2 if self.round else min(self.corner, self.width / 2, self.height / 2)) - EDGE
        if radius <= 0:
            return 0.0
        into = max(0.0, EDGE + radius - top, bottom - (self.height - EDGE - radius))
        return radius - math.sqrt(max(0.0, radius * radius - min(into, radius) ** 2))


def scaled(face: Face, across: float, down: float) -> Face:
    """A face of the same kind, larger [face].

    face: to begin with [face].
    across: how many times as wide [–].
    down: how many times as high [–].

    >>> scaled(Face(False, 70, 50, 2), 1.5, 1.0)
    Face(round=False, width=105.0, height=50.0, corner=2)
    """
    return Face(face.round, face.width * across, face.height * (across if face.round else down), face.corner)
