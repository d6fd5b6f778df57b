"""How much of everything that is bought one vessel takes, as really used: what is left over and wasted counts."""

import math
from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.pot import Potful
from brimbook.steps.pour_log import of_another_mix
from brimbook.steps.recipe import others_of
from brimbook.steps.scent import rows_of, scent_path
from brimbook.steps.supply_things import COATS, MOST_PACKAGING
from brimbook.steps.waxes_in_pot import waxes_of


@dataclass(frozen=True)
class Amount:
    """What one vessel takes [g, mL or pieces], in words and in numbers; key is of the figure that it rests on, if there is one."""

    value: float
    formula: str
    numbers: str
    key: str = ""


@dataclass(frozen=True)
class _Share:
    """What one vessel takes of all that its bowl fills: a factor [–], told in words and as arithmetic that follows a number."""

    factor: float
    words: str
    numbers: str


def amounts_of(said: Said, figures: dict[str, Figure], potfuls: dict[str, Potful]) -> dict[str, Amount]:
    """What one vessel takes of each thing that is bought, by its place in the record, where that is known [amounts].

    said: the record as understood [said].
    figures: worked out so far, by key [figures].
    potfuls: by the path of the well whose pot it is [potfuls].
    """
    found: dict[str, Amount] = {}
    for row in range(said.count("casts")):
        found |= _of_bowl(said, f"casts.{row}", figures)
        found |= _of_coats(said, f"casts.{row}", figures)
    for row in range(said.count("wells")):
        place = f"wells.{row}"
        potful = potfuls.get(place)
        if potful is not None and potful.vessels > 0:
            found |= _of_pot(said, place, figures, potful.vessels)
        found |= _of_wicks(said, place, figures)
    for row in range(min(said.count("packaging"), MOST_PACKAGING)):
        each = said.value(f"packaging.{row}.each")
        if each is not None:
            found[f"packaging.{row}"] = Amount(each, "as many as one vessel takes", _put(said, each))
    return found


def _put(said: Said, number: float) -> str:
    return show.significant(number, 10, said.display)


def _of_bowl(said: Said, place: str, figures: dict[str, Figure]) -> dict[str, Amount]:
    """Powder and other dry ingredients: of the newest pour, else as scooped, else as planned."""
    if place != "casts.0" and said.value(f"{place}.bowl") == "first":
        return {}
    pour = _newest_pour(said, place)
    poured = _as_poured(said, place, pour, figures) if pour else {}
    return poured or _as_planned(said, place, figures)


def _newest_pour(said: Said, place: str) -> str:
    """The last pour of the log that is of this mix and says how much powder it took, or nothing."""
    others = set(of_another_mix(said, place))
    rows = (row for row in reversed(range(said.count(f"{place}.pours"))) if row not in others)
    return next((f"{place}.pours.{row}" for row in rows if said.value(f"{place}.pours.{row}.powder")), "")


def _as_poured(said: Said, place: str, pour: str, figures: dict[str, Figure]) -> dict[str, Amount]:
    share = _share(said, place, figures, f"{pour}.pieces" if said.typed(f"{pour}.pieces") else f"{place}.pieces")
    powder, planned = said.value(f"{pour}.powder"), figures.get(f"{place}.powder")
    if share is None:
        return {}
    grams, words = {f"{place}.mix.powder": powder}, {}
    for number, other in enumerate(others_of(said, f"{place}.mix")):
        typed, weigh = said.value(f"{pour}.others.{number}.weighed"), figures.get(f"{other}.weigh")
        if typed is not None:
            grams[other] = typed
        elif planned is not None and weigh is not None and not said.typed(f"{pour}.others.{number}.weighed"):
            grams[other] = weigh.value / planned.value * powder
            words[other] = "by the recipe, for the powder of your newest pour"
    more = _filled_up(said, place, pour, figures, math.fsum(grams.values()))
    if more is None:
        return {}
    return {path: Amount(some * more[0] * share.factor, f"{words.get(path, 'weighed in your newest pour')}{more[1]}{share.words}",
                         f"{_put(said, some)}{more[2]}{share.numbers}") for path, some in grams.items()}


def _filled_up(said: Said, place: str, pour: str, figures: dict[str, Figure], dry: float) -> tuple[float, str, str] | None:
    """Mix that was lacking was weighed in besides: how many times the pour that makes; none while its weights are unknown."""
    short = said.value(f"{pour}.short") if said.typed(f"{pour}.short") else 0.0
    if not short:
        return None if short is None else (1.0, "", "")
    water, powder = figures.get(f"{place}.water"), figures.get(f"{place}.powder")
    poured = said.value(f"{pour}.water")
    if poured is None and None not in (water, powder):
        poured = water.value / powder.value * said.value(f"{pour}.powder")
    if poured is None:
        return None
    total = dry + poured
    return 1 + short / total, " × (1 + mix that was lacking ÷ mix weighed)", f" × (1 + {_put(said, short)} ÷ {_put(said, total)})"


def _as_planned(said: Said, place: str, figures: dict[str, Figure]) -> dict[str, Amount]:
    share = _share(said, place, figures, f"{place}.pieces")
    if share is None:
        return {}
    scooped, words, numbers = _scooped(said, place, figures)
    weighed = {f"{place}.mix.powder": f"{place}.powder", **{other: f"{other}.weigh" for other in others_of(said, f"{place}.mix")}}
    return {path: Amount(figures[key].value * scooped * share.factor, f"weighed out{words}{share.words}",
                         f"{_put(said, figures[key].value)}{numbers}{share.numbers}", key)
            for path, key in weighed.items() if key in figures}


def _scooped(said: Said, place: str, figures: dict[str, Figure]) -> tuple[float, str, str]:
    """The batch against its plan where something else was weighed; at least what fills the molds, or there is no vessel."""
    factor, needed = figures.get(f"{place}.batch.scooped.factor"), figures.get(f"{place}.mix_needed")
    if factor is None or needed is None:
        return 1.0, "", ""
    bare = math.fsum(said.value(f"{other}.pieces") * figures[f"{other}.cavity.volume"].value for other in _filled(said, place, figures))
    if factor.value >= bare / needed.value:
        return factor.value, " × batch against its plan", f" × {_put(said, factor.value)}"
    return bare / needed.value, " × room in the molds ÷ mix needed", f" × {_put(said, bare)} ÷ {_put(said, needed.value)}"


def _filled(said: Said, place: str, figures: dict[str, Figure]) -> list[str]:
    """The casts that a bowl fills and whose mold is measured: its own, and those that are poured from the first one's."""
    rows = range(1, said.count("casts")) if place == "casts.0" else ()
    places = [place, *(f"casts.{row}" for row in rows if said.value(f"casts.{row}.bowl") == "first")]
    return [each for each in places if f"{each}.cavity.volume" in figures and said.value(f"{each}.pieces") is not None]


def _share(said: Said, place: str, figures: dict[str, Figure], pieces_path: str) -> _Share | None:
    """One piece of each mold, of all the pieces that the bowl fills; none while one of them is not known."""
    places, pieces = _filled(said, place, figures), said.value(pieces_path)
    if pieces is None:
        return None
    if len(places) < 2:
        return _Share(1 / pieces, " ÷ pieces", f" ÷ {_put(said, pieces)}")
    counts = [pieces, *(said.value(f"{other}.pieces") for other in places[1:])]
    rooms = [figures[f"{other}.cavity.volume"].value for other in places]
    filled = math.fsum(count * room for count, room in zip(counts, rooms))
    one = " + ".join(_put(said, room) for room in rooms)
    every = " + ".join(f"{_put(said, count)} × {_put(said, room)}" for count, room in zip(counts, rooms))
    return _Share(math.fsum(rooms) / filled, " × room of one piece of each mold ÷ room of all the pieces", f" × ({one}) ÷ ({every})")


def _of_coats(said: Said, place: str, figures: dict[str, Figure]) -> dict[str, Amount]:
    pieces, found = said.value(f"{place}.pieces"), {}
    for coat in COATS:
        key = f"{place}.finishing.{coat}"
        if pieces is not None and key in figures:
            volume = figures[key].value
            found[key] = Amount(volume / pieces, f"{coat} for all coats ÷ pieces", f"{_put(said, volume)} ÷ {_put(said, pieces)}", key)
    return found


def _of_pot(said: Said, place: str, figures: dict[str, Figure], vessels: float) -> dict[str, Amount]:
    """Waxes, scents and dye of a pot, with what stays in it."""
    parts = [("wax", [(part.path, part.share) for part in waxes_of(said, place)]), ("fragrance", _scent_shares(said, place)),
             ("dye", [(f"{place}.coloring", 1.0)])]
    found = {}
    for name, shares in parts:
        key = f"{place}.batch.{name}"
        for path, share in shares if key in figures else ():
            grams, apart = figures[key].value, share != 1
            found[path] = Amount(
                grams * share / vessels, f"{name} in the pot{' × its share of it' if apart else ''} ÷ vessels filled from it",
                f"{_put(said, grams)}{f' × {_put(said, share)}' if apart else ''} ÷ {_put(said, vessels)}", key)
    return found


def _scent_shares(said: Said, place: str) -> list[tuple[str, float]]:
    """The scents by their place with their shares of the fragrance; the fragrance itself where none is listed."""
    rows = rows_of(said, place)
    if not rows:
        return [(f"{place}.fragrance", 1.0)]
    parts = {scent_path(place, row): said.value(f"{scent_path(place, row)}.parts") for row in rows}
    if None in parts.values() or not sum(parts.values()):
        return []
    return [(path, some / math.fsum(parts.values())) for path, some in parts.items() if some]


def _of_wicks(said: Said, place: str, figures: dict[str, Figure]) -> dict[str, Amount]:
    at, count = f"{place}.wicks", said.value(f"{place}.wicks.count")
    if count is None and not said.typed(f"{at}.count"):
        count = 0
        while f"{at}.left_{count + 1}" in figures:
            count += 1
    return {at: Amount(count, "wicks in one vessel", _put(said, count))} if count else {}
