"""Files that the maker chooses: read bit by bit, by a second Python that the page starts for it.

Nothing of the door stands on this, so the page fetches it, and what only it stands on, when a file is chosen.
"""
