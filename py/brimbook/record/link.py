"""A record as a link's fragment and back: compressed, URL-safe, whole by itself.

The fragment is a version, a point, and base64url of a zlib stream whose preset
dictionary holds the words of that version. A dictionary never changes: links live
for ever. A later version is taken only where it is much shorter, so that a plain vessel's
link opens in an older page too.
"""

import base64
import bisect
import json
import re
import zlib
from typing import Any

from brimbook.record import tree
from brimbook.record.link_words import WORDS_1, WORDS_2, WORDS_3, WORDS_4
from brimbook.record.strict import DECODER

WORDS = {"1": WORDS_1, "2": WORDS_2, "3": WORDS_3, "4": WORDS_4}
MUCH_SHORTER = 0.9
LONGEST_FRAGMENT = 8_000
LARGEST_RECORD = 100_000


class LinkError(ValueError):
    """A link that holds no vessel; its message is a sentence for the maker."""


def to_fragment(record: dict[str, Any]) -> str:
    """A record as what follows the # of a link [text].

    record: plain data [record].

    Of more batches than a link has room for, only the newest go along; the record itself keeps them all.

    Raises LinkError when the record is too large for a link.

    >>> to_fragment({"name": "Tide cup"})[:2]
    '1.'
    """
    if not isinstance(record, dict) or not tree.within_limits(record):
        raise LinkError("There is no vessel here that a link could hold.")
    bare = _without_empty(record)
    fragment = _fragment(bare) or _with_newest_batches(bare)
    if not fragment:
        raise LinkError("This vessel is too large for a link. Shorten its notes.")
    return fragment


def _with_newest_batches(bare: dict[str, Any]) -> str:
    """The fragment with as many of the newest batches as there is room for; nothing where there is none for one."""
    batches = bare.get(tree.LOG)
    if not isinstance(batches, list) or len(batches) < 2:
        return ""
    left_out = range(1, len(batches))
    fewest = bisect.bisect_left(left_out, True, key=lambda count: bool(_fragment({**bare, tree.LOG: batches[count:]})))
    return _fragment({**bare, tree.LOG: batches[left_out[fewest]:]}) if fewest < len(left_out) else ""


def _fragment(bare: dict[str, Any]) -> str:
    """The shortest that a record comes to; nothing where it is too large."""
    # Half an emoji, as a cut text can leave it, has no bytes of its own: a question mark stands for it.
    plain = json.dumps(bare, ensure_ascii=False, separators=(",", ":")).encode("utf-8", "replace")
    if len(plain) > LARGEST_RECORD:
        return ""
    fragment, *later = (f"{version}.{_pack(plain, words)}" for version, words in WORDS.items())
    for each in later:
        fragment = each if len(each) < MUCH_SHORTER * len(fragment) else fragment
    return fragment if len(fragment) <= LONGEST_FRAGMENT else ""


def from_fragment(fragment: str) -> dict[str, Any]:
    """The record in what follows the # of a link [record].

    fragment: as to_fragment made it, perhaps with spaces or a line end that mail put in [text].

    Raises LinkError with a sentence when it is damaged, too large or of a newer kind.

    >>> from_fragment(to_fragment({"name": "Tide cup"}))
    {'name': 'Tide cup'}
    """
    if len(fragment) > 2 * LONGEST_FRAGMENT:
        raise LinkError("This link is longer than any vessel's link. Ask for it again.")
    text = re.sub(r"\s", "", fragment).removeprefix("#")
    version, dot, body = text.partition(".")
    if dot and version.isdigit() and version not in WORDS:
        raise LinkError("This link was made by a newer version of this page. Update the page, then open it again.")
    if version not in WORDS or not re.fullmatch(r"[A-Za-z0-9_-]+", body):
        raise LinkError("This link holds no vessel. It may have been cut short: ask for it again.")
    record = _parse(_unpack(body, WORDS[version]))
    if not isinstance(record, dict) or not tree.within_limits(record):
        raise LinkError("This link holds something that is not a vessel.")
    return record


def _pack(plain: bytes, words: bytes) -> str:
    packer = zlib.compressobj(9, zlib.DEFLATED, 15, 9, zlib.Z_DEFAULT_STRATEGY, words)
    return base64.urlsafe_b64encode(packer.compress(plain) + packer.flush()).decode("ascii").rstrip("=")


def _without_empty(part: Any) -> Any:
    """Empty texts take room and say nothing; an empty reading keeps its place in its list."""
    if isinstance(part, dict):
        kept = {step: _without_empty(branch) for step, branch in part.items()}
        return {step: branch for step, branch in kept.items() if branch != ""}
    return [_without_empty(branch) for branch in part] if isinstance(part, list) else part


def _unpack(body: str, words: bytes) -> bytes:
    damaged = "This link is damaged: some of it is missing or changed. Ask for it again."
    unpacker = zlib.decompressobj(15, words)
    try:
        packed = base64.urlsafe_b64decode(body + "=" * (-len(body) % 4))
        plain = unpacker.decompress(packed, LARGEST_RECORD)
    except (ValueError, zlib.error):
        raise LinkError(damaged) from None
    if not unpacker.eof:
        raise LinkError("This link unpacks to more than a vessel can be." if unpacker.unconsumed_tail else damaged)
    return plain


def _parse(plain: bytes) -> Any:
    try:
        return DECODER.decode(plain.decode("utf-8"))
    except (ValueError, RecursionError):
        raise LinkError("This link is damaged: what it holds can't be read. Ask for it again.") from None
