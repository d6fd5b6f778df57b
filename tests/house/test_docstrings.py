"""Public functions tell meaning, units and an example that runs."""

import ast
import doctest
import importlib
import re
from pathlib import Path

import pytest

PY = Path(__file__).parents[2] / "py"
FILES = sorted((PY / "brimbook").rglob("*.py"))
# Only the arithmetic needs an example for each function; elsewhere an example for some will do.
ARITHMETIC = ("cast/dryness.py", "cast/form.py", "cast/bolts.py", "cast/plastic.py", "cast/heat.py", "cast/leak.py", "cast/maturity.py",
              "candle/wax.py", "candle/contraction.py", "candle/warmth.py", "candle/scent.py", "candle/hazard.py", "candle/cooling.py", "candle/burning.py", "candle/wicks.py", "candle/standards.py", "cast/mix.py", "cast/learning.py", "cast/flow.py",
              "fill/water.py", "fill/readings.py", "shape/solid.py", "shape/bars.py", "shape/prism.py", "shape/curves.py", "shape/photo.py", "shape/drawing_place.py", "shape/outline.py", "shape/covering.py", "shape/inset.py", "shape/family.py", "shape/shell.py", "shape/designed.py", "quantity/units.py",
              "sell/cost.py", "sell/price.py", "sell/panel.py", "sell/net_quantity.py", "sell/prepackage.py", "quantity/show.py", "sell/failing_share.py", "cast/batch.py", "cast/coating.py")


def public_functions():
    for path in FILES:
        tree = ast.parse(path.read_text("utf-8"))
        for owner in [tree, *(node for node in tree.body if isinstance(node, ast.ClassDef))]:
            for node in owner.body:
                if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                    yield pytest.param(path, node, id=f"{path.relative_to(PY / 'brimbook')}:{node.name}")


FUNCTIONS = list(public_functions())


def parameters(node: ast.FunctionDef) -> list[str]:
    named = [*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs, node.args.vararg]
    return [arg.arg for arg in named if arg is not None and arg.arg != "self"]


def untold(node: ast.FunctionDef) -> list[str]:
    """What a docstring leaves out: the unit of the result, or a parameter with its unit."""
    text = ast.get_docstring(node) or ""
    summary = " ".join(text.split("\n\n")[0].split())
    missing = [] if re.search(r"\[[^\]]+\][.?]?$", summary) else ["result"]
    for name in parameters(node):
        told = re.search(rf"^{name}: (?:.|\n(?!\n|\w+: ))*?\[[^\]]+\]", text, re.MULTILINE)
        missing += [] if told else [name]
    return missing


@pytest.mark.parametrize(("path", "node"), FUNCTIONS)
def test_every_parameter_and_result_has_its_unit(path, node):
    assert untold(node) == []


@pytest.mark.parametrize(("path", "node"), FUNCTIONS)
def test_no_docstring_tells_of_a_parameter_that_is_not_there(path, node):
    told = re.findall(r"^(\w+): .*", ast.get_docstring(node) or "", re.MULTILINE)
    assert set(told) - {"Source"} <= set(parameters(node))


@pytest.mark.parametrize(("path", "node"), FUNCTIONS)
def test_arithmetic_has_an_example(path, node):
    if path.relative_to(PY / "brimbook").as_posix() in ARITHMETIC and not node.decorator_list:
        assert ">>>" in ast.get_docstring(node)


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(PY).as_posix())
def test_examples_run(path):
    module = importlib.import_module(".".join(path.relative_to(PY).with_suffix("").parts).removesuffix(".__init__"))
    failed, _ = doctest.testmod(module, optionflags=doctest.ELLIPSIS)
    assert failed == 0


def test_the_rule_would_notice():
    node = ast.parse('def area(side):\n    """Area [mm²].\n\n    side: one side.\n    """').body[0]
    assert untold(node) == ["side"]
    assert untold(ast.parse('def area():\n    """Area."""').body[0]) == ["result"]
