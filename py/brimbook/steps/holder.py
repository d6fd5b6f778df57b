"""The holder: bars across the opening, with a slot for each wick."""

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.wicks import WickPlan


def holder(said: Said, place: str, plan: WickPlan | None) -> list[Figure]:
    """Every figure of this step [figures].

    said: the record as understood [said].
    place: path of the well [text].
    plan: of the wicks [plan].
    """
    return []
