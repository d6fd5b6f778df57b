"""Drawings as SVG text, whose colors are the page's: shapes carry class names. And the calendar file."""
