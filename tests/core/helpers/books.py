"""Books for tests: any number of rich vessels, the same for the same seed."""

from workshop.bench.book_made import book

__all__ = ["book"]
