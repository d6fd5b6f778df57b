"""Quantities as people type them: read into plain floats, and shown back."""
