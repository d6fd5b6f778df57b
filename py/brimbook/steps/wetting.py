"""A leak test wets the vessel: what was dry before it is not dry after it."""

from brimbook.record.said import Said

AFTER_TEST = "A leak test wets it: after one, dry and weigh it again to a steady weight before any wax goes in."


def was_filled(said: Said, place: str) -> bool:
    """Was the vessel filled with water for a leak test [yes or no]?

    said: the record as understood [said].
    place: path of the cast [text].
    """
    return said.value(f"{place}.leaking.filled") is not None
