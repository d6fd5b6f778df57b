"""Drawings as SVG text. Colors are the page's: shapes carry class names, never values."""
