"""What is known of a mold's plastic: the maker's own entry first, else the generic one."""

from brimbook import sources
from brimbook.cast.plastic import PLASTICS
from brimbook.figure import Constant
from brimbook.quantity.show import Display
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said, localize, understand_text
from brimbook.steps.facts import Fact


def plastic_fact(said: Said, at: str, name: str) -> Fact | None:
    """One figure of the plastic, or nothing where none is known or the entry is faulty [fact].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    name: a leaf of it, as in bearing [text].
    """
    path, leaf = f"{at}.{name}", leaf_at(f"{at}.{name}")
    if said.typed(path):
        value = said.value(path)
        return None if value is None else Fact(value, said.canonical[path], sources.YOURS)
    known = PLASTICS.get(said.value(f"{at}.plastic"))
    if known is None:
        return None
    text, source = known.facts[name]
    # A generic text is written so that it reads the same under any settings.
    return Fact(understand_text(leaf, text, Display())[0], text, source)


def plastic_usual(said: Said, at: str, name: str) -> str:
    """The text that is taken for a figure of the plastic while the maker leaves it empty [text].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    name: a leaf of it [text].
    """
    known = PLASTICS.get(said.value(f"{at}.plastic"))
    return known.facts[name][0] if known else ""


def plastic_name(said: Said, at: str) -> str:
    """What to call the plastic in a sentence [text].

    said: the record as understood [said].
    at: path of the clamping topic [text].
    """
    known = PLASTICS.get(said.value(f"{at}.plastic"))
    return known.label if known else "The plastic"


def fact_constant(said: Said, name: str, fact: Fact) -> Constant:
    """A figure of the plastic as a constant of a formula [constant].

    said: the record as understood [said].
    name: what it is called [text].
    fact: the figure [fact].
    """
    return Constant(name, localize(fact.text, said.display), fact.source)
