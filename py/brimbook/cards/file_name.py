"""Names for the files that a maker takes away."""

import re
import unicodedata

_LONGEST = 60


def file_name(text: str) -> str:
    """A text in small letters, digits and hyphens; nothing where it has none of them [text].

    text: such as a vessel's name [text].

    >>> file_name("Keel bowl, 2nd try")
    'keel-bowl-2nd-try'
    """
    letters = unicodedata.normalize("NFKD", text).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", letters).strip("-")[:_LONGEST]
