"""What ships answers under Pyodide as it does under this machine's Python."""

import json

import pytest

from workshop.proof import difference, first_answer


def test_pyodide_and_python_give_the_same_first_answer(dist, node_door):
    here = json.loads(first_answer())
    assert "answer" in here
    assert difference(here, node_door.ask("first", {})) == ""
    assert json.loads((dist / "first.json").read_text(encoding="utf-8")) == here


def test_the_door_under_node_answers_again_and_again(node_door):
    assert node_door.ask("first", {}) == node_door.ask("first", {})
    assert "fault" in node_door.ask("no such request", {})


@pytest.mark.parametrize(
    ("one", "other", "where"),
    [
        ({"a": [1, 2.0]}, {"a": [1, 2.0 + 1e-12]}, ""),
        ({"a": [1, 2.0]}, {"a": [1, 2.0001]}, "answer.a.1"),
        ({"a": "640 g"}, {"a": "641 g"}, "answer.a"),
        ({"a": 1}, {"b": 1}, "answer"),
        ([1], [1, 2], "answer"),
        ({"a": True}, {"a": 1}, "answer.a"),
        ({"a": None}, {"a": ""}, "answer.a"),
    ],
)
def test_a_difference_is_found_where_it_is(one, other, where):
    assert difference(one, other) == where
