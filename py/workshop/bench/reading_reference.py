"""Reads a file with trimesh over numpy and shapely, and prints times, peak memory and volume as JSON."""

import json
import sys
import time

import shapely
import trimesh

from workshop.bench.processes import own_peak

# As many heights as the core cuts at.
HEIGHTS = 16


def main() -> None:
    """From the file to what trimesh tells of it, and then as much of what the core works out as it has functions for."""
    began = time.perf_counter()
    mesh = trimesh.load(sys.argv[1], force="mesh")
    told = mesh.is_watertight, mesh.is_winding_consistent, mesh.body_count, mesh.area, mesh.bounds.tolist()
    volume = float(mesh.volume)
    plain = 1000 * (time.perf_counter() - began)
    curve = [(section(mesh, height), below(mesh, height)) for height in heights(mesh)]
    took = 1000 * (time.perf_counter() - began)
    if not told[0] or any(one[0] <= 0 for one in curve):
        raise SystemExit("the made-up file is not closed")
    print(json.dumps({"ms": took, "plain": plain, "memory": own_peak(), "volume": volume}))


def heights(mesh: trimesh.Trimesh) -> list[float]:
    """Evenly between bottom and top, without them."""
    low, high = mesh.bounds[0][2], mesh.bounds[1][2]
    return [low + (high - low) * (step + 0.5) / HEIGHTS for step in range(HEIGHTS)]


def section(mesh: trimesh.Trimesh, height: float) -> float:
    """Area within the outlines of the section at a height, put together as polygons."""
    segments = trimesh.intersections.mesh_plane(mesh, (0, 0, 1), (0, 0, height))
    rings = shapely.polygonize(list(shapely.linestrings(segments[:, :, :2].round(6)))).geoms
    return sum(ring.area for ring in rings)


def below(mesh: trimesh.Trimesh, height: float) -> float:
    """Volume below a height: of the part that is cut off, seen from the plane, which then needs no lid."""
    part = trimesh.intersections.slice_mesh_plane(mesh, (0, 0, -1), (0, 0, height))
    part.apply_translation((0, 0, -height))
    return float(part.volume)


if __name__ == "__main__":
    main()
