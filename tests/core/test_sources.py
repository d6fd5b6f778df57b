"""Where constants come from."""

import re

import pytest

from brimbook import sources
from brimbook.sources import Source

EVERY = {name: value for name, value in vars(sources).items() if isinstance(value, Source)}


@pytest.mark.parametrize("name", sorted(EVERY))
def test_a_source_has_a_text_and_a_standing_that_is_explained(name):
    source = EVERY[name]
    assert source.text and source.text.strip() == source.text
    assert re.search(rf"^    {source.standing} ", sources.__doc__, re.MULTILINE)


@pytest.mark.parametrize("name", sorted(name for name, source in EVERY.items() if source.standing == "published"))
def test_what_is_published_can_be_found_again(name):
    """A formula of geometry or arithmetic aside, a published source is named well enough to look up."""
    if name not in ("IDENTITY", "GEOMETRY"):
        assert len(EVERY[name].text) > 40


def test_practice_and_memory_are_called_what_they_are():
    assert sources.PRACTICE == Source("common practice, no source", "common practice")
    assert "from memory" in sources.MEMORY.text and sources.MEMORY.standing == "from memory"
    assert sources.YOURS.standing == "your entry"
