"""The card of the scents: what their sheets allow, and what their sensitizers come to in the candle."""

from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.cards.shelf import Shelf, supply_field
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.quantity.read import Bounds, read
from brimbook.record.fields import leaf_at
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.scent import MOST_SCENTS, name_of_scent, parts_of, rows_of, scent_path
from brimbook.steps.sensitizers import CLASSIFIES, MOST_ENTRIES, NAMED, OF_CANDLE, VERDICTS, entries_of
from brimbook.work_out import Answer

_MARKED = "Mend the entry that is marked."
_SKIN = "100 % by IFRA is a word on skin alone: it says neither that the wax holds so much nor that it burns well."
_WATER = "Hazards to water and to the lungs are not worked out here. Your supplier's sheet decides, and local rules."
_TOGETHER = "The flash point of a mix isn't worked out here: it can lie near that of its most volatile scent."
_NAMED = "Where one substance classifies the candle, its label names the others without the sentence of EUH208."
# Densities that are farther apart than this are worth a word.
_APART = 0.005
_ANY = Bounds(0.0, 1e15)


def scent_card(answer: Answer, place: str, shelf: Shelf) -> dict[str, Any]:
    """What is in the fragrance, and what its sheets allow of it [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    shelf: the maker's own materials [shelf].
    """
    said, figures = answer.said, figures_below(answer, f"{place}.scent")
    rows = range(min(said.count(f"{place}.fragrance.scents"), MOST_SCENTS))
    given = bool(rows_of(said, place)) or "nearest" in figures
    verdicts = _verdicts(answer, place, figures)
    groups = [each for row in rows for each in _scent(said, place, row, figures, verdicts, shelf)]
    return card(
        place, "scent", "Scent", "What does your supplier's sheet say of it?", waiting=_waiting(answer, place, given),
        fields=[], more=[ask(said, f"{place}.fragrance.wax_most")], figures=figures,
        answer=("of_candle", "most") if given else (), closed=_closed(figures, given), groups=tuple(groups),
        notes=_notes(said, place, rows, figures), cautions=cautions.SCENT, table=_densities(said, place, figures),
        actions=({"label": "Add a scent", "append": f"{place}.fragrance.scents", "value": {"name": ""}},))


def _closed(figures: dict[str, Figure], given: bool) -> tuple[str, ...]:
    return ("nearest",) if "nearest" in figures else ("of_candle",) if given else ()


def _waiting(answer: Answer, place: str, given: bool) -> str:
    if answer.said.is_marked_below(place if given else f"{place}.fragrance.scents"):
        return _MARKED
    return "Once the wax is known." if given else "Copy its limits from the supplier's sheet."


def _scent(said: Said, place: str, row: int, figures: dict[str, Figure], verdicts: dict[str, str], shelf: Shelf) -> list[dict[str, Any]]:
    """The scent, then each of its sensitizers."""
    path, name, several = scent_path(place, row), name_of_scent(said, place, row), said.count(f"{place}.fragrance.scents") > 1
    parts = ("parts",) if several else ()
    scent = group(
        path, name, _summary(said, path, row, figures),
        [supply_field(said, path, shelf, "fragrance"), *(ask(said, f"{path}.{leaf}") for leaf in (*parts, "supplier_most", "ifra_most", "flash"))],
        more=tuple(ask(said, f"{path}.{leaf}")
                   for leaf in ("supplier_basis", "flash_cup", "density", *(() if several else ("parts",)))),
        actions=({"label": "Add a sensitizer", "append": f"{path}.sensitizers", "value": {"name": ""}},
                 {"label": "Remove this scent", "remove": path}))
    count = min(said.count(f"{path}.sensitizers"), MOST_ENTRIES)
    return [scent, *(_sensitizer(said, f"{path}.sensitizers.{entry}", entry, name, verdicts) for entry in range(count))]


def _summary(said: Said, path: str, row: int, figures: dict[str, Figure]) -> str:
    if said.is_marked_below(path):
        return _MARKED
    told = [f"{figures[key].shown}{words}" for key, words in ((f"of_candle_{row + 1}", " of the candle"), (f"weight_{row + 1}", ""))
            if key in figures]
    return " · ".join(told) or "Its limits, flash point and density."


def _sensitizer(said: Said, path: str, entry: int, name: str, verdicts: dict[str, str]) -> dict[str, Any]:
    substance = said.text(f"{path}.name").strip() or f"Sensitizer {entry + 1}"
    summary = _MARKED if said.is_marked_below(path) else verdicts.get(path, "Its share of the scent, and its category.")
    return group(path, f"{substance} in {name}", summary, [ask(said, f"{path}.{leaf}") for leaf in ("name", "share", "class")],
                 more=(ask(said, f"{path}.specific"),), actions=({"label": "Remove this sensitizer", "remove": path},))


def _verdicts(answer: Answer, place: str, figures: dict[str, Figure]) -> dict[str, str]:
    """What each entry's substance comes to, over all the scents, by the entry's path."""
    blend = answer.blends.get(place)
    if blend is None:
        return {}
    substances = entries_of(answer.said, parts_of(answer.said, place, blend))
    return {entry.path: figures[f"sensitizer_{number}"].says.rpartition(": ")[2]
            for number, entries in enumerate(substances, 1) for entry in entries}


def _notes(said: Said, place: str, rows: range, figures: dict[str, Figure]) -> tuple[str, ...]:
    """What is over a limit or above a flash point comes first."""
    notes = [note for name, figure in figures.items() if not name.startswith("weight_") for note in figure.notes]
    by_verdict = {verdict: [figure.label.removesuffix(OF_CANDLE) for name, figure in figures.items()
                            if name.startswith("sensitizer_") and figure.says.endswith(verdict)] for verdict in VERDICTS}
    notes += [f"{verdict[0].upper()}{verdict[1:]}: {', '.join(names)}." for verdict, names in by_verdict.items() if names]
    if by_verdict[CLASSIFIES] and by_verdict[NAMED]:
        notes.append(_NAMED)
    if any(by_verdict.values()):
        notes.append(_WATER)
    if any((said.value(f"{scent_path(place, row)}.ifra_most") or 0) >= 1 for row in rows):
        notes.append(_SKIN)
    if sum(name.startswith("flash_") for name in figures) > 1:
        notes.append(_TOGETHER)
    if said.count(f"{place}.fragrance.scents") > MOST_SCENTS:
        notes.append(f"The first {MOST_SCENTS} scents are worked out. All are kept.")
    return tuple(notes)


def _densities(said: Said, place: str, figures: dict[str, Figure]) -> dict[str, Any] | None:
    """The density that is taken beside that of the scents together, to choose from, where they differ."""
    path, taken = f"{place}.fragrance.density", said.value(f"{place}.fragrance.density")
    together = figures.get("density")
    if together is None or taken is None or abs(together.value / taken - 1) < _APART:
        return None
    rows = [{"cells": [words, show.density(value, said.display)], "chosen": value == taken, "sets": {path: text},
             "says": f"{words}: {show.density(value, said.display)}"}
            for words, value, text in (("As it is taken now", taken, said.canonical.get(path, leaf_at(path).usual)),
                                       ("By your scents", together.value, _written(together.value)))]
    return {"columns": ["The fragrance", "One mL weighs"], "rows": rows, "says": "Tap the one that the wax is weighed out with."}


def _written(density: float) -> str:
    """A density as the record keeps it: it reads the same under any settings."""
    return read(f"{density:.4f} g/mL", "density", _ANY, mark="point").canonical
