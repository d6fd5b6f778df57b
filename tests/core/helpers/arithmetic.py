"""Work out a figure's `numbers` as a person with a calculator would."""

import math
import re

_SIGNS = {"×": "*", "÷": "/", "−": "-", "²": "**2", "³": "**3", "√": "sqrt", "π": "pi", "^": "**"}
_PLAIN = re.compile(r"(?:[0-9.+()\s×÷−²³√π^]|\bexp(?=\()|\bln(?=\())+")
_RESULT = re.compile(r"(−?\d+(?:\.\d+)?) ?(.*)")


def work_out(expression: str) -> float:
    """The value of an expression in × ÷ + − ² ³ ^ √ π exp ln, brackets and plain decimals."""
    assert _PLAIN.fullmatch(expression), f"more than arithmetic: {expression}"
    python = "".join(_SIGNS.get(character, character) for character in expression)
    return eval(python, {"__builtins__": {}, "sqrt": math.sqrt, "pi": math.pi, "exp": math.exp, "ln": math.log})  # only the signs above reach this


# The numbers put in are rounded too, to digits of their own: a rounded half may tip either way.
SLACK = 1.15


def works_out(figure: dict, comma: bool = False) -> tuple[float, float, str]:
    """The result told by a figure's numbers, how far off it may be, and its unit; fails unless the numbers come to it."""
    numbers = figure["working"]["numbers"]
    expression, told, half_digit, unit = split(numbers.replace(",", ".") if comma else numbers)
    assert abs(work_out(expression) - told) <= half_digit * SLACK, f"{figure['key']}: {numbers}"
    return told, half_digit * SLACK, unit


def split(numbers: str) -> tuple[str, float, float, str]:
    """Expression, result, half its last digit, and its unit, of "2 × 3.1 = 6.2 g ≈ 6 g"."""
    expression, _, rest = numbers.partition(" = ")
    told, unit = _RESULT.fullmatch(rest.partition(" ≈ ")[0]).groups()
    decimals = len(told.partition(".")[2])
    return expression, float(told.replace("−", "-")), 0.5 * 10.0**-decimals, unit
