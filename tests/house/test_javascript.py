"""The page's JavaScript does no arithmetic and formats no number: that is the core's to do."""

import re
from pathlib import Path

import pytest
import tree_sitter_javascript
from tree_sitter import Language, Parser

WEB = Path(__file__).parents[2] / "web"
FILES = sorted(WEB.rglob("*.js"))
PARSER = Parser(Language(tree_sitter_javascript.language()))

ARITHMETIC = {"+", "-", "*", "/", "%", "**", "<<", ">>", ">>>", "&", "|", "^", "~",
              "+=", "-=", "*=", "/=", "%=", "**=", "++", "--"}
OPERATIONS = {"binary_expression", "unary_expression", "update_expression", "augmented_assignment_expression"}
FORMATTING = {"Math", "Intl", "BigInt", "Number", "parseFloat", "parseInt", "toFixed", "toPrecision", "toExponential",
              "toLocaleString", "toLocaleDateString", "toLocaleTimeString"}


def sums(source: bytes) -> list[str]:
    """Each place of a source that reckons or formats a number."""
    found, todo = [], [PARSER.parse(source).root_node]
    while todo:
        node = todo.pop()
        todo += node.children
        operator = node.child_by_field_name("operator")
        sign = operator.type if operator else node.children[0].type if node.type == "update_expression" else ""
        named = node.type in ("identifier", "property_identifier") and node.text.decode() in FORMATTING
        if named or (node.type in OPERATIONS and sign in ARITHMETIC):
            found.append(f"line {node.start_point[0] + 1}: {node.text.decode()[:60]}")
    return found


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(WEB).as_posix())
def test_no_arithmetic_and_no_number_formatting(path):
    assert sums(path.read_bytes()) == []


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(WEB).as_posix())
def test_a_file_parses_and_stays_short(path):
    source = path.read_bytes()
    assert not PARSER.parse(source).root_node.has_error
    assert source.count(b"\n") <= 300


@pytest.mark.parametrize("source", [b"a + b", b"i++", b"--i", b"x -= 1", b"-x", b"n.toFixed(2)", b"Math.max(a)",
                                    b"`${a * 2}`", b"new Intl.NumberFormat()", b"f(a / b)", b"Number(x)"])
def test_the_rule_would_notice(source):
    assert sums(source)


@pytest.mark.parametrize("source", [b"`a + ${b}`", b"// a + b", b"a < b && c", b"'1 - 2'", b"/a+/.test(b)", b"!a"])
def test_the_rule_lets_plain_code_pass(source):
    assert not sums(source)


def imported(start: str, found: list[str] | None = None) -> list[str]:
    """Every module of the page that one module reads before it runs, itself first."""
    found = [] if found is None else found
    if start not in found:
        found.append(start)
        source = (WEB / start).read_text("utf-8") if (WEB / start).exists() else ""
        for path in re.findall(r'(?:from|import)\s+"(\.[^"]+)"', source):
            imported((WEB / start).parent.joinpath(path).resolve().relative_to(WEB).as_posix(), found)
    return found


def test_the_page_asks_for_all_its_modules_at_once():
    """Else each one is asked for only when the one that needs it has come."""
    listed = re.findall(r'<link rel="modulepreload" href="\./([^"]+)">', (WEB / "index.html").read_text("utf-8"))
    assert sorted(listed) == sorted({*imported("core/begin.js"), *imported("app.js")})
