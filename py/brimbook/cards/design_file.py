"""What the design's card gives away: the vessel for a 3D printer."""

from typing import Any

from brimbook.cards.file_name import file_name
from brimbook.draw.stl import stl
from brimbook.quantity.error import QuantityError
from brimbook.shape.designed_mesh import mesh
from brimbook.steps.design import design_of
from brimbook.work_out import Answer


def design_model(answer: Answer, place: Any) -> dict[str, str]:
    """The vessel as designed, as a file [file].

    answer: everything worked out from the record [answer].
    place: path of the design; a vessel has only one [text].

    Raises QuantityError with a sentence where there is no such vessel yet.
    """
    found = design_of(answer.said)
    if found is None:
        raise QuantityError("There is no vessel yet. Type the sizes that you want on the card of the design first.")
    name = " ".join(answer.said.text("name").split()) or "Vessel"
    return {"name": f"{file_name(name) or 'vessel'}-design.stl", "kind": "model/stl", "text": stl(name, mesh(found.body))}
