"""How large a file may be, and what to do about a larger one."""

from collections.abc import Iterable

from brimbook.mesh.triangles import Corner, ModelError

MOST_BYTES = 64_000_000
MOST_TRIANGLES = 600_000
# Each triangle may bring three corners of its own.
MOST_CORNERS = 3 * MOST_TRIANGLES
MOST_INFLATED = 200_000_000
# A vessel of a meter, drawn in thousandths of a millimeter, stays below it.
FARTHEST = 1e6

_SMALLER = f"Save it with fewer triangles, up to {MOST_TRIANGLES:,}: less fine, or simplified, is fine enough for a volume."


def check_size(count: int) -> None:
    """Refuses a file that is too large to be read here [nothing].

    count: how long the file is [bytes].
    """
    if count > MOST_BYTES:
        raise ModelError(f"This file has {count / 1e6:,.0f} MB; up to {MOST_BYTES / 1e6:.0f} MB are read. "
                         f"Save it as 3MF or binary STL, which are shorter than text, or with fewer triangles, up to {MOST_TRIANGLES:,}.")


def check_triangles(count: int) -> None:
    """Refuses more triangles than can be worked out here [nothing].

    count: how many the file holds, as far as known [triangles].
    """
    if count > MOST_TRIANGLES:
        raise ModelError(f"This model has more than {MOST_TRIANGLES:,} triangles. {_SMALLER}")


def check_corners(count: int) -> None:
    """Refuses more corners than the most triangles can have [nothing].

    count: how many the file holds, as far as known [corners].
    """
    if count > MOST_CORNERS:
        raise ModelError(f"This model has more than {MOST_CORNERS:,} corners. {_SMALLER}")


def check_inflated(count: int) -> None:
    """Refuses packed parts that unpack to more than can be read here [nothing].

    count: how much the parts to be read hold unpacked [bytes].
    """
    if count > MOST_INFLATED:
        raise ModelError(f"This file unpacks to {count / 1e6:,.0f} MB; up to {MOST_INFLATED / 1e6:.0f} MB are read. {_SMALLER}")


def check_places(corners: Iterable[Corner]) -> None:
    """Refuses corners that are nowhere, or farther off than any vessel [nothing].

    corners: all that the file holds [unit of the file].
    """
    reaches = FARTHEST.__ge__
    # What is not a number compares as false, so it is refused too.
    if not all(reaches(abs(x)) and reaches(abs(y)) and reaches(abs(z)) for x, y, z in corners):
        raise ModelError(f"A corner of this model lies farther than {FARTHEST:,.0f} from the middle, or nowhere. "
                         "Save the file again, near the middle of the drawing.")
