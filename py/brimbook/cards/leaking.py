"""The card of the leak test."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.figure import Figure
from brimbook.quantity.show import Display, small_mass
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.leaking import LABELS, opening_stand_ins
from brimbook.steps.wetting import AFTER_TEST
from brimbook.work_out import Answer

_READINGS = ("dry", "filled", "later", "emptied")
_DRYING = {"open": (("opening", "opening_other"), ("temperature", "humidity")),
           "cup": (("cup_first", "cup_later", "cup_opening", "opening"), ("opening_other",))}
_SUMMARIES = {"open": "Estimated from the room, within a factor of two", "cup": "By what the cup lost"}


def leak_card(answer: Answer, place: str) -> dict[str, Any]:
    """Leak test: what the full vessel loses, and what of it leaked [card].

    answer: everything worked out [answer].
    place: path of the cast [text].
    """
    said, at = answer.said, f"{place}.leaking"
    figures = figures_below(answer, at)
    return card(
        place, "leak", "Leak test", "What did it weigh dry, filled, and a day later?",
        answer=(_found(figures), "absorbed"), closed=(_found(figures) if _found(figures) in figures else "absorbed",),
        waiting=_waiting(said, at),
        fields=[ask(said, f"{at}.{name}", usual=said.canonical.get(f"{place}.drying.dry_weight", "") if name == "dry" else "")
                for name in (*_READINGS, "hours", "air")],
        more=[ask(said, f"{at}.readability", usual=_step(said))], figures=figures, notes=_notes(said, at, figures),
        cautions=cautions.LEAK, groups=_evaporation(said, place, at))


def _found(figures: dict[str, Figure]) -> str:
    """The figure that tells the outcome: the most that leaked, what leaked, or only what was lost."""
    if "most" in figures:
        return "most"
    leaked = figures.get("leaked")
    return "leaked" if leaked is not None and leaked.label == LABELS["leaks"] else "lost"


def _waiting(said: Said, at: str) -> str:
    """What to do next, while there is nothing to tell."""
    if said.is_marked_below(at):
        return "Mend the entry that is marked."
    if not said.typed(f"{at}.filled"):
        known = any(said.typed(path) for path in (f"{at}.dry", f"{at.removesuffix('.leaking')}.drying.dry_weight"))
        return "Now fill it with water, weigh it." if known else "Weigh it dry, then filled."
    return "" if said.typed(f"{at}.later") else "Weigh it again after a day."


def _notes(said: Said, at: str, figures: dict[str, Figure]) -> tuple[str, ...]:
    notes = []
    if "leaked" in figures:
        notes.append(f"{figures['leaked'].says}.")
    elif "lost" in figures and said.value(f"{at}.air") in _DRYING:
        notes.append("To tell a leak from what dried off, type what is asked under Drying off, or cover it and repeat.")
    if figures:
        notes.append(AFTER_TEST)
    return tuple(notes)


def _step(said: Said) -> str:
    """The step of the maker's own scale, as a record would keep it."""
    return small_mass(said.display.readability, Display(mass=said.display.mass_word))


def _evaporation(said: Said, place: str, at: str) -> tuple[dict[str, Any], ...]:
    way = said.value(f"{at}.air")
    if way not in _DRYING:
        return ()
    stands_in = {} if said.typed(f"{at}.opening") or said.typed(f"{at}.opening_other") else {
        name: said.canonical.get(path, "") for name, path in zip(("opening", "opening_other"), opening_stand_ins(said, place))}
    fields, more = ([ask(said, f"{at}.{name}", usual=stands_in.get(name, "")) for name in names] for names in _DRYING[way])
    return (group(f"{at}.drying", "Drying off", _SUMMARIES[way], fields, more=tuple(more), open=True),)
