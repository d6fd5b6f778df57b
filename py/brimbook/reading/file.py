"""What the page may have read, by name: bytes in, JSON out, a step at a time."""

import json
import traceback
from collections.abc import Callable, Iterator
from typing import Any

from brimbook.door import reply
from brimbook.mesh.triangles import ModelError, Progress
from brimbook.reading.drawing import read_drawing
from brimbook.reading.model import read_model
from brimbook.record.said import understand
from brimbook.settings import display_of, whole
from brimbook.shape.path_data import OutlineError


def read(name: str, request: str, data: Any) -> Iterator[str]:
    """Read a file bit by bit, telling each time how far it is, then the answer; always ends with one [JSON texts].

    name: a key of READINGS [text].
    request: its own arguments [JSON text].
    data: the file's content [bytes].

    Each text but the last holds "progress": the share that is done, and what is being done; the last one is a reply as of ask.

    >>> json.loads(list(read("nothing", "{}", b""))[-1])["fault"]["sentence"]
    'There is nothing called “nothing” to read.'
    """
    try:
        if name not in READINGS:
            yield reply(fault={"sentence": f"There is nothing called “{name}” to read.", "detail": ""})
            return
        answer = None
        for step in READINGS[name](json.loads(request), data):
            answer = step
            if isinstance(step, tuple):
                yield reply(progress={"share": round(step[0], 3), "says": step[1]})
        yield reply(answer=answer)
    except (ModelError, OutlineError) as error:
        yield reply(fault={"sentence": str(error), "detail": ""})
    except MemoryError:
        yield reply(fault={"sentence": "This device has too little memory for so large a file. Save it with fewer triangles.", "detail": ""})
    except Exception:  # the page must have its answer whatever went wrong
        yield reply(fault={"sentence": "Something went wrong while reading this file.", "detail": traceback.format_exc()})


# Each yields how far it is, and last of all its answer.
READINGS: dict[str, Callable[[dict[str, Any], Any], Iterator[Progress | dict[str, Any]]]] = {
    "model": lambda request, data: read_model(
        understand(request.get("record"), display_of(whole(request.get("settings")))), request, data),
    "drawing": lambda request, data: read_drawing(request, data, display_of(whole(request.get("settings")))),
}
