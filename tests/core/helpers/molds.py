"""A mold of known size under load, for tests."""

from arithmetic import works_out
from vessels import figures, sheet, vessel

AT = "casts.0.clamping"


def clamped(how=None, **texts):
    """The figures of a mold 120 mm deep and 80 mm wide, their numbers worked out again."""
    typed = {"depth": "120 mm", "width": "80 mm", **texts}
    shown = figures(vessel(**{f"casts__0__clamping__{name}": text for name, text in typed.items()}), **(how or {}))
    for figure in shown.values():
        works_out(figure, (how or {}).get("decimal") == "comma")
    return {key.removeprefix(f"{AT}."): figure for key, figure in shown.items() if key.startswith(AT)}


def faults(**texts):
    """What is wrong with the entries of a mold, by name."""
    page = sheet(vessel(**{f"casts__0__clamping__{name}": text for name, text in texts.items()}))
    return {fault["path"].removeprefix(f"{AT}."): fault["sentence"] for fault in page["faults"]}
