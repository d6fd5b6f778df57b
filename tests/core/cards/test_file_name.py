"""Names of files: letters, digits and hyphens only."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.cards.file_name import file_name


@pytest.mark.parametrize(("text", "name"), [("Keel bowl", "keel-bowl"), ("Küche, Nr. 2", "kuche-nr-2"), ("../../x", "x"),
                                            ("龙", ""), ("", ""), ("--a--", "a")])
def test_a_name(text, name):
    assert file_name(text) == name


@given(st.text(max_size=200))
def test_any_text_is_a_safe_name(text):
    assert re.fullmatch(r"(?:[a-z0-9]+(?:-[a-z0-9]*)*)?", file_name(text)) and len(file_name(text)) <= 60
