"""Solids as meshes of triangles: read from a file, checked, measured, and cut into sections."""
