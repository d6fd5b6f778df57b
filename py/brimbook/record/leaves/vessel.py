"""What the vessel is called."""

from brimbook.record.leaf import Leaf

LEAVES = {
    "id": Leaf("text", "Mark", longest=64),
    "name": Leaf("text", "Name", longest=120),
    "made_on": Leaf("date", "Made on"),
    "notes": Leaf("text", "Notes", longest=2000),
    "own_notes": Leaf("text", "Notes to yourself", longest=2000, hint="They leave with no link unless you say so.", private=True),
}
