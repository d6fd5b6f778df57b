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


def split(numbers: str) -> tuple[str, float, float, str]:
    """Expression, result, half its last digit, and its unit, of "2 × 3.1 = 6.2 g ≈ 6 g"."""
    expression, _, rest = numbers.partition(" = ")
    told, unit = _RESULT.fullmatch(rest.partition(" ≈ ")[0]).groups()
    decimals = len(told.partition(".")[2])
    return expression, float(told.replace("−", "-")), 0.5 * 10.0**-decimals, unit
