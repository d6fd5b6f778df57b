"""What to ask: retail and wholesale, from margin or markup, and how many to sell to break even."""

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.cost import Costing
from brimbook.steps.supplies import Supply


def pricing(said: Said, costing: Costing, supplies: tuple[Supply, ...]) -> list[Figure]:
    """The prices of a vessel, as far as the entries go [figures].

    said: the record as understood [said].
    costing: what it costs [costing].
    supplies: what one vessel takes, for what one more gram of fragrance costs [supplies].
    """
    return []
