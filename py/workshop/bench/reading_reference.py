"""Reads a file with trimesh over numpy, and prints time, peak memory and volume as JSON."""

import json
import sys
import time

import trimesh

from workshop.bench.processes import own_peak


def main() -> None:
    """From the file to what trimesh tells of it: closed or not, bodies, volume, surface."""
    began = time.perf_counter()
    mesh = trimesh.load(sys.argv[1], force="mesh")
    told = mesh.is_watertight, mesh.is_winding_consistent, mesh.body_count, mesh.area, mesh.bounds.tolist()
    volume = float(mesh.volume)
    took = 1000 * (time.perf_counter() - began)
    if not told[0]:
        raise SystemExit("the made-up file is not closed")
    print(json.dumps({"ms": took, "memory": own_peak(), "volume": volume}))


if __name__ == "__main__":
    main()
