"""A vessel's page: its cards in the order of the job, and the vessel in one line."""

from typing import Any

from brimbook.cards.batches import batches_card
from brimbook.cards.bowl import bowl_card
from brimbook.cards.burning import burning_card
from brimbook.cards.clamping import clamp_card
from brimbook.cards.cost import cost_card
from brimbook.cards.curing import cure_card
from brimbook.cards.design import design_action, design_card
from brimbook.cards.drying import dry_card
from brimbook.cards.finishing import finish_card
from brimbook.cards.holder import holder_card
from brimbook.cards.label import label_card
from brimbook.cards.leaking import leak_card
from brimbook.cards.measuring import mold_card, well_card
from brimbook.cards.melting import melting_card
from brimbook.cards.mixing import mix_card
from brimbook.cards.pot import pot_card
from brimbook.cards.pouring import pour_card
from brimbook.cards.price import price_card
from brimbook.cards.scent import scent_card
from brimbook.cards.shelf import Shelf
from brimbook.cards.target import target_card
from brimbook.cards.wax import wax_card
from brimbook.cards.wicks import wicks_card
from brimbook.record.blank import new_cast, new_well
from brimbook.work_out import Answer, has_own_bowl, has_own_pot, label_places, places

_ON_THE_SHELF = ("powder", "water", "wax", "fragrance")


def sheet(answer: Answer, shelf: Shelf = Shelf()) -> dict[str, Any]:
    """A vessel's page, as plain data [sheet].

    answer: everything worked out from the record [answer].
    shelf: the maker's own materials [shelf].
    """
    said, cards = answer.said, _chapter("Design", design_card(answer))
    for place in places(said, "casts"):
        cards += _cast_cards(answer, place, shelf)
    for place in places(said, "wells"):
        cards += _well_cards(answer, place, shelf)
    cards += _selling_cards(answer, shelf) if cards else []
    return {
        "title": said.text("name").strip() or "New vessel", "line": line(answer), "cards": cards,
        "faults": [{"path": fault.path, "label": fault.label, "sentence": fault.sentence} for fault in said.faults],
        "actions": _actions(answer),
    }


def _cast_cards(answer: Answer, place: str, shelf: Shelf) -> list[dict[str, Any]]:
    own = [bowl_card(answer, place)] if has_own_bowl(answer.said, place) else []
    log = [pour_card(answer, place)] if own else []
    return [
        *_chapter("Mold and mix", [mold_card(answer, place), mix_card(answer, place, shelf), *own, clamp_card(answer, place)]),
        *_chapter("Pour and set", [*log, cure_card(answer, place)]),
        *_chapter("Dry and finish", [dry_card(answer, place), leak_card(answer, place), finish_card(answer, place, shelf)]),
    ]


def _well_cards(answer: Answer, place: str, shelf: Shelf) -> list[dict[str, Any]]:
    own = has_own_pot(answer.said, place)
    pot = [scent_card(answer, place, shelf), pot_card(answer, place), melting_card(answer, place)] if own else []
    return [
        *_chapter("Fill", [well_card(answer, place), wax_card(answer, place, shelf), target_card(answer, place), *pot]),
        *_chapter("Wicks", [wicks_card(answer, place, shelf), holder_card(answer, place)]),
        *_chapter("Burn", [burning_card(answer, place)]),
    ]


def _selling_cards(answer: Answer, shelf: Shelf) -> list[dict[str, Any]]:
    labels = [label_card(answer, place) for place in label_places(answer.said)]
    return _chapter("Sell", [cost_card(answer, shelf), price_card(answer, shelf), *labels, batches_card(answer, shelf)])


def _chapter(title: str, cards: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The first card of a chapter carries its title."""
    return [{**card, "chapter": title if row == 0 else ""} for row, card in enumerate(cards)]


def _actions(answer: Answer) -> list[dict[str, Any]]:
    """Buttons below the cards: one mold or well more, or one less."""
    said, display = answer.said, answer.said.display
    adds = [{"label": "Add another mold", "append": "casts", "value": {**new_cast(display), "bowl": "first"}},
            {"label": "Add another well", "append": "wells", "value": {**new_well(display), "pot": "first"}}]
    removes = [{"label": f"Remove {word} {row + 1}", "remove": f"{name}.{row}"}
               for name, word in (("casts", "mold"), ("wells", "well")) for row in range(1, said.count(name))]
    return [*adds, *design_action(said), *removes]


def line(answer: Answer) -> str:
    """A vessel in one line, for the shelf [text].

    answer: everything worked out from the record [answer].
    """
    return " · ".join(f"{figure.shown} {figure.label.lower()}" for figure in answer.figures.values()
                      if _is_weighed_out(figure.key))


def _is_weighed_out(key: str) -> bool:
    """Is it what a mold or a well takes, and not what that costs?"""
    where, *_, name = key.split(".")
    return where in ("casts", "wells") and name in _ON_THE_SHELF and key.count(".") == 2
