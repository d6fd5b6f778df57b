"""What may be asked of build.py."""

import pytest

from workshop.command import read


def test_no_word_means_build():
    assert read([]).what == "build"


def test_serve_takes_a_port():
    assert read(["serve", "--port", "9000"]).port == 9000
    assert read(["serve"]).port == 8314


def test_all_that_follows_test_goes_to_pytest():
    asked = read(["test", "-k", "water", "--port", "tests/core"])
    assert asked.for_pytest == ["-k", "water", "--port", "tests/core"]


@pytest.mark.parametrize("arguments", [["bake"], ["serve", "--port", "many"], ["serve", "--port", "70000"]])
def test_a_mistake_is_told_and_nothing_is_done(arguments, capsys):
    with pytest.raises(SystemExit) as stopped:
        read(arguments)
    assert stopped.value.code == 2
    assert "error:" in capsys.readouterr().err
