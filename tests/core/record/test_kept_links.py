"""Links that were made by each version and are out in the world: each must open for ever, to the same record.

kept_links.json is only ever added to. A link in it is never made anew.
"""

import json
from pathlib import Path

import pytest
from vessels import ask

from brimbook.record.link import from_fragment

KEPT = json.loads(Path(__file__).with_name("kept_links.json").read_text("utf-8"))


@pytest.mark.parametrize("kept", KEPT, ids=lambda kept: kept["name"])
def test_a_kept_link_opens_to_the_same_record(kept):
    assert from_fragment(kept["link"]) == kept["record"]


@pytest.mark.parametrize("kept", KEPT, ids=lambda kept: kept["name"])
def test_a_kept_link_is_shown(kept):
    assert ask("open_link", fragment=kept["link"])["record"] == kept["record"]


def test_none_was_lost():
    versions = [kept["link"].partition(".")[0] for kept in KEPT]
    assert versions.count("1") >= 10 and versions.count("2") >= 3 and versions.count("4") >= 4 and {*versions} == {"1", "2", "3", "4"}
