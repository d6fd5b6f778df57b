"""What every card holds, and which figures belong to it."""

from typing import Any

from brimbook.figure import Figure
from brimbook.mesh.limits import MOST_BYTES
from brimbook.record.tree import item_of
from brimbook.steps.cautions import Caution
from brimbook.work_out import Answer


# Parts below a cast or a well that have a card of their own.
APART = ("cavity", "fill", "pouring", "batch", "clamping", "curing", "drying", "leaking", "finishing",
         "scent", "melting", "wicks", "holder", "burning", "target")


# So large a file is refused before it is read.
_LIMIT = {"most_bytes": MOST_BYTES, "too_large": f"This file is larger than {MOST_BYTES / 1e6:.0f} MB, which is more than can be read here. "
                                                  "Save it as 3MF or binary STL, or with fewer triangles."}


def figures_below(answer: Answer, place: str) -> dict[str, Figure]:
    """The figures below a place of the record by their name there, without those that have a card of their own [figures].

    answer: everything worked out [answer].
    place: a part of the record [text].
    """
    below = {key.removeprefix(f"{place}."): figure for key, figure in answer.by_item.get(item_of(place), {}).items()
             if key.startswith(f"{place}.")}
    apart = APART if place.count(".") == 1 else ()
    return {name: figure for name, figure in below.items() if name.partition(".")[0] not in apart}


def group(id: str, title: str, summary: str, fields: list[dict[str, Any]], *, more: tuple[dict[str, Any], ...] = (),
          actions: tuple[dict[str, Any], ...] = (), open: bool = False) -> dict[str, Any]:
    """Questions that belong together and can be folded away, such as one pour of the log [group].

    id: a name that stays the same while it is edited [text].
    title: what it is [text].
    summary: what it says, in one short line [text].
    fields: the questions asked in it [fields].
    more: the questions in it that seldom change [fields].
    actions: buttons in it [actions].
    open: does it start unfolded [yes or no]?
    """
    return {"id": id, "title": title, "summary": summary, "fields": fields, "more": list(more), "actions": list(actions),
            "open": open}


def beside(figures: dict[str, Figure], ours: tuple[str, tuple[str, ...]], rule: tuple[str, tuple[str, ...]],
           told_by: str) -> dict[str, Any] | None:
    """The worked-out answer and the maker's rule of thumb, side by side, where both are known [table].

    figures: of the card by name [figures].
    ours: what to call the worked-out answer, and its figures' names [texts].
    rule: what to call the rule, and its figures' names in the same order [texts].
    told_by: name of the figure that says what the difference is [text].
    """
    pairs = [(figures[one], figures[other]) for one, other in zip(ours[1], rule[1])
             if one in figures and other in figures]
    if not pairs or told_by not in figures:
        return None
    rows = [[ours[0], *(one.shown for one, _ in pairs)], [rule[0], *(other.shown for _, other in pairs)]]
    return {"columns": [one.label for one, _ in pairs], "rows": rows, "says": f"{figures[told_by].says}."}


def card(place: str, id: str, title: str, question: str, *, waiting: str, fields: list[dict[str, Any]],
         more: list[dict[str, Any]], figures: dict[str, Figure], answer: tuple[str, ...], notes: tuple[str, ...] = (),
         cautions: tuple[Caution, ...] = (), beside: dict[str, Any] | None = None, drawing: str = "",
         drawing_text: str = "", actions: tuple[dict[str, Any], ...] = (), groups: tuple[dict[str, Any], ...] = (),
         timers: tuple[dict[str, str], ...] = (), saves: tuple[dict[str, str], ...] = (),
         prints: tuple[dict[str, str], ...] = (), table: dict[str, Any] | None = None, drag: dict[str, str] | None = None,
         picks: tuple[dict[str, Any], ...] = (), photo: dict[str, Any] | None = None,
         closed: tuple[str, ...] | None = None) -> dict[str, Any]:
    """One card, as plain data for the page [card].

    place: the cast or well it is about [text].
    id: its name; a second cast or well has its number added [text].
    title: of the step [text].
    question: that the step asks [text].
    waiting: what to do while there is no answer [text].
    fields: the questions asked in the open [fields].
    more: the questions that seldom change [fields].
    figures: by name [figures].
    answer: names of the figures that stand large on the card [texts].
    notes: what the maker should know [texts].
    cautions: what can hurt here [cautions].
    beside: two ways to the same answer, as a small table, if there are two [table].
    drawing: of the step [SVG].
    drawing_text: the drawing in words [text].
    actions: buttons that add or remove a row [actions].
    groups: questions that can be folded away [groups].
    timers: what is due when: label, and due as year-month-dayThour:minute [timers].
    saves: files that the maker can take away: label, and the door's name for it [saves].
    prints: sheets at true size: label, the door's name for it, and its place [prints].
    table: an answer that is a table: columns, rows of texts, which row is chosen, and what choosing one writes [table].
    drag: the door's name for moving a mark of the drawing, and its place [drag].
    picks: files that the maker can have read: label, the door's name for it (reading), its place, the endings it may have (accept),
        whether it is kept on the device (keep), whether what was read no longer fits (again), the name that was read, and what to say [picks].
    photo: what is marked on a photo, and its place [photo].
    closed: names of those that the closed card tells, in one line of a phone; all of answer if not given [texts].
    """
    number = int(place.split(".")[1]) + 1
    all_notes = [*notes, *(note for figure in figures.values() for note in figure.notes)]
    return {
        "id": id if number == 1 else f"{id}-{number}", "title": title if number == 1 else f"{title} {number}",
        "question": question, "waiting": waiting, "fields": fields, "more": more,
        "answer": [{"label": figures[name].label, "shown": figures[name].shown, "key": figures[name].key}
                   for name in (answer if closed is None else closed) if name in figures],
        "large": [figures[name].key for name in answer if name in figures],
        "figures": [figure.to_plain() for figure in figures.values()], "notes": list(dict.fromkeys(all_notes)),
        "cautions": [{"title": each.title, "sentence": each.sentence, "source": each.source} for each in cautions],
        "beside": beside, "drawing": drawing, "drawing_text": drawing_text, "actions": list(actions), "groups": list(groups), "timers": list(timers), "saves": list(saves),
        "prints": list(prints), "table": table, "drag": drag,
        "picks": [{**_LIMIT, **each} for each in picks], "photo": photo, "chapter": "",
    }
