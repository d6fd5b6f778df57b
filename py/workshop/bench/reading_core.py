"""Reads a file with our core in CPython, and prints time, peak memory and volume as JSON."""

import json
import sys
import time
from pathlib import Path

from brimbook.mesh import whole
from workshop.bench.processes import own_peak


def main() -> None:
    """From the file to the whole model."""
    began = time.perf_counter()
    path = Path(sys.argv[1])
    work = whole.model(path.name, path.read_bytes())
    while True:
        try:
            next(work)
        except StopIteration as done:
            model = done.value
            break
    took = 1000 * (time.perf_counter() - began)
    print(json.dumps({"ms": took, "memory": own_peak(), "volume": model.solid[-1].volume}))


if __name__ == "__main__":
    main()
