"""How large a drawing's file may be."""

MOST_BYTES = 5_000_000
