"""Solids by formula."""
