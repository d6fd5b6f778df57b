"""One build at a time: two commands in one tree wait for each other."""

import contextlib
import os
from collections.abc import Iterator

from workshop.places import BUILD
from workshop.say import say

if os.name == "nt":
    import msvcrt
else:
    import fcntl


@contextlib.contextmanager
def one_at_a_time() -> Iterator[None]:
    """Hold the tree's build lock; wait, saying so, while another command holds it."""
    BUILD.mkdir(exist_ok=True)
    with open(BUILD / "turn", "w") as held:
        if not _take(held, wait=False):
            say("Another build is at work in this tree: waiting for it.")
            _take(held, wait=True)
        yield


def _take(held, wait: bool) -> bool:
    try:
        if os.name == "nt":
            msvcrt.locking(held.fileno(), msvcrt.LK_LOCK if wait else msvcrt.LK_NBLCK, 1)
        else:
            fcntl.flock(held, fcntl.LOCK_EX if wait else fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        if wait:
            raise
        return False
    return True
