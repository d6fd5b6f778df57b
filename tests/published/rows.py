"""Check values from outside, as data: read the CSV files and work each row out with the core.

Standard library and core only, so that the same rows run in the page's Python:
read_rows takes text where there are no files.
"""

import csv
import importlib
import io
import json
from pathlib import Path
from typing import Any

from brimbook.quantity.read import Bounds
from brimbook.quantity.units import UNITS

COLUMNS = ["quantity", "inputs", "expected", "tolerance", "unit", "source", "standing"]
STANDINGS = ("published", "second hand", "reference library", "common practice, no source", "from memory", "regression")


def read_rows(name: str, text: str) -> list[dict[str, Any]]:
    """The rows of one CSV file [rows].

    name: of the file, for the row's own name [text].
    text: what the file holds [CSV text].
    """
    table = csv.DictReader(io.StringIO(text), strict=True)
    found = [{**row, "name": f"{name}:{number}", "inputs": json.loads(row["inputs"]),
              "expected": float(row["expected"]), "tolerance": float(row["tolerance"])}
             for number, row in enumerate(table, start=2)]
    if table.fieldnames != COLUMNS:
        raise ValueError(f"{name} has columns {table.fieldnames}")
    return found


def rows(folder: Path | None = None) -> list[dict[str, Any]]:
    """Every row of every CSV file beside this one [rows].

    folder: where the CSV files are, if elsewhere [path].
    """
    files = sorted((folder or Path(__file__).parent).glob("*.csv"))
    return [row for file in files for row in read_rows(file.stem, file.read_text("utf-8"))]


def function_of(row: dict[str, Any]) -> Any:
    """The public function that a row is about [function].

    row: of one of the files [row].
    """
    module, _, name = row["quantity"].rpartition(".")
    return getattr(importlib.import_module(f"brimbook.{module}"), name)


def compute(row: dict[str, Any]) -> float:
    """What the core makes of a row's inputs [unit of the row].

    row: of one of the files [row].

    A unit is given by its word, bounds as least and most, and for a whole record the key of the
    figure meant is given beside it.
    """
    inputs = dict(row["inputs"])
    key = inputs.pop("figure", None)
    if row["quantity"] == "quantity.units.to_base":
        inputs["unit"] = UNITS[inputs["unit"]]
    if "bounds" in inputs:
        inputs["bounds"] = Bounds(*inputs["bounds"])
    result = function_of(row)(**inputs)
    if key is not None:
        return result.figures[key].value
    return getattr(result, "value", result)


def failures(some: list[dict[str, Any]]) -> list[str]:
    """The rows that the core does not meet, each told in one line; none when all is well [texts].

    some: rows [rows].
    """
    told = []
    for row in some:
        got = compute(row)
        if not abs(got - row["expected"]) <= row["tolerance"]:
            told.append(f"{row['name']} {row['quantity']}: {got}, expected {row['expected']} ± {row['tolerance']}")
    return told
