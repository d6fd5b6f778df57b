"""JSON as its standard has it: what Python alone would take for a number is refused."""

import json
import math


def _finite(number: str) -> float:
    value = float(number)
    if not math.isfinite(value):
        raise ValueError(number)
    return value


def _refuse(constant: str) -> None:
    raise ValueError(constant)


DECODER = json.JSONDecoder(parse_constant=_refuse, parse_float=_finite)
