"""The card of a label: what it says, how large it is, and how it is printed."""

from functools import lru_cache
from typing import Any

from brimbook.cards.asking import ask
from brimbook.cards.card import card, figures_below, group
from brimbook.draw.label import Label, Laid
from brimbook.draw.label_draw import laid, preview
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.label import MOST_LABELS, Labeled
from brimbook.steps.label_net import MOST_WEIGHED
from brimbook.steps.label_scent import scents_of
from brimbook.steps.label_size import sides_asked
from brimbook.steps.label_words import MOST_LINES, usual_product
from brimbook.work_out import Answer

# What a second label has in common with the first.
_COPIED = ("product", "maker", "market")


def label_card(answer: Answer, place: str) -> dict[str, Any]:
    """A label of a vessel [card].

    answer: everything worked out [answer].
    place: path of the label [text].
    """
    said, found = answer.said, answer.labels.get(place, Labeled(place, None, ()))
    if int(place.split(".")[1]) >= MOST_LABELS:
        return card(place, "label", "Label", "Which label is it?", waiting=found.waiting or "All are kept.", fields=[], more=[], figures={},
                    answer=(), actions=({"label": "Remove this label", "remove": place},))
    figures = figures_below(answer, place)
    drawn = face_of(found.label, said.display) if found.label is not None else None
    return card(
        place, "label", "Label", "What must it say, and how large?", waiting=found.waiting or "Once the wax is known.",
        fields=_fields(said, place, found), more=_more(said, place), figures=figures, answer=_answer(said, place), closed=("net",),
        notes=(*(drawn.says if drawn else ()), *found.notes), cautions=cautions.LABEL if found.candle else (),
        drawing=preview_of(found.label, said.display) if found.label is not None else "",
        drawing_text=in_words(found.label, drawn.fits) if found.label is not None else "",
        groups=_groups(said, place, found), actions=_actions(said, place),
        prints=({"label": "Print the labels", "ask": "label_pages", "place": place},) if drawn is not None and drawn.fits else ())


@lru_cache(maxsize=32)
def face_of(label: Label, display: Display) -> Laid:
    """A label laid out, remembered: a keystroke elsewhere must not set it anew [label].

    label: what it says [label].
    display: how this maker reads figures [display].
    """
    return laid(label, tell=lambda length: show.length(length, display))


@lru_cache(maxsize=32)
def preview_of(label: Label, display: Display) -> str:
    """A label as it will look, remembered as well [SVG].

    label: what it says [label].
    display: how this maker reads figures [display].
    """
    return preview(face_of(label, display))


def in_words(label: Label, fits: bool) -> str:
    """What the drawing shows, for those who can't see it [text].

    label: drawn [label].
    fits: does it all fit in its size [yes or no]?
    """
    told = " ".join(f"{words.text.rstrip('.')}." for words in label.words)
    size = "" if fits else "It is drawn as large as it would have to be. "
    return f"A {label.shape} label. {size}It says: {told}{' It bears the mark ℮.' if label.average else ''}"


def _answer(said: Said, place: str) -> tuple[str, ...]:
    return ("net", "height") if said.value(f"{place}.market") == "eu" else ("net", "letters")


def _fields(said: Said, place: str, found: Labeled) -> list[dict[str, Any]]:
    return [ask(said, f"{place}.shape"), *(ask(said, f"{place}.{name}") for name in sides_asked(said, place)),
            ask(said, f"{place}.product", usual=usual_product(said, found.candle)),
            *(ask(said, f"{place}.{name}") for name in ("maker", "market", "holds"))]


def _more(said: Said, place: str) -> list[dict[str, Any]]:
    return [] if said.value(f"{place}.shape") == "round" else [ask(said, f"{place}.corner")]


def _groups(said: Said, place: str, found: Labeled) -> tuple[dict[str, Any], ...]:
    parts = [_says(said, place, found)]
    if found.candle:
        parts += [_panel(said, place), _weighed(said, place)]
    return (*parts, _printing(said, place))


def _says(said: Said, place: str, found: Labeled) -> dict[str, Any]:
    """What stands on it besides; of a candle also its weight, its scent and how it burns."""
    names = ["scents", "net_weight", "lot", "cautions", "burn_time", "code"] if found.candle else ["lot", "code"]
    if found.candle and said.value(f"{place}.market") != "us":
        names.insert(-1, "average")
    fields = [ask(said, f"{place}.{name}", usual=_usual(said, place, name, found)) for name in names]
    rows = range(min(said.count(f"{place}.lines"), MOST_LINES))
    lines = [ask(said, f"{place}.lines.{row}.text", label=f"Line {row + 1}") for row in rows]
    removes = ({"label": f"Remove line {row + 1}", "remove": f"{place}.lines.{row}"} for row in rows)
    return group(f"{place}.says", "What it says", "Scent, lot, cautions and more." if found.candle else "Lot and lines.", [*fields, *lines],
                 actions=({"label": "Add a line", "append": f"{place}.lines", "value": {"text": ""}}, *removes))


def _usual(said: Said, place: str, name: str, found: Labeled) -> str:
    """What stands in for a text while it is empty."""
    if name == "scents" and not said.typed(f"{place}.scents"):
        return scents_of(said, place)
    if name == "lot" and found.label is not None and not said.typed(f"{place}.lot"):
        return next((words.text.removeprefix("Lot ") for words in found.label.words if words.name == "lot"), "")
    return ""


_PANEL_ASKS = {"flat": ("panel_width", "panel_height"), "cylinder": ("panel_around", "panel_height"), "other": ("panel_area",),
               "top": ("panel_width", "panel_height", "panel_area")}


def _panel(said: Said, place: str) -> dict[str, Any]:
    """The side that it is seen on: letters of the net weight go by it in the United States."""
    kind = said.value(f"{place}.panel")
    labels = {"panel_area": "Area of the top, in cm²"} if kind == "top" else {}
    fields = [ask(said, f"{place}.{name}", label=labels.get(name, "")) for name in _PANEL_ASKS.get(kind, ())]
    return group(f"{place}.panel_sizes", "The panel", "How high letters of the net weight must be.", [ask(said, f"{place}.panel"), *fields])


def _weighed(said: Said, place: str) -> dict[str, Any]:
    count = min(said.count(f"{place}.weighed"), MOST_WEIGHED)
    fields = [ask(said, f"{place}.weighed.{row}.weight", label=f"Candle {row + 1}, wax alone") for row in range(count)]
    removes = ({"label": f"Remove candle {row + 1}", "remove": f"{place}.weighed.{row}"} for row in range(count))
    summary = f"{count} so far." if count else "What finished ones really hold."
    add = {"label": "Weigh a candle", "append": f"{place}.weighed", "value": {"weight": ""}}
    return group(f"{place}.weighings", "Weighed candles", summary, fields, actions=(*((add,) if count < MOST_WEIGHED else ()), *removes))


def _printing(said: Said, place: str) -> dict[str, Any]:
    return group(f"{place}.printing", "Printing", "How many, and where on the sheet.",
                 [ask(said, f"{place}.{name}") for name in ("copies", "first", "gap", "margin")])


def _actions(said: Said, place: str) -> tuple[dict[str, Any], ...]:
    count = said.count("labels")
    same = {name: said.text(f"{place}.{name}") for name in _COPIED if said.typed(f"{place}.{name}")}
    add = {"label": "Add another label", "append": "labels", "value": {"shape": "rectangle", **same}}
    another = (add,) if count < MOST_LABELS and place == f"labels.{count - 1}" else ()
    return (*another, {"label": "Remove this label", "remove": place}) if count > 1 else another
