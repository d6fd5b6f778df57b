"""The card that weighs out wax and fragrance."""

from typing import Any

from brimbook.candle.waxes import WAXES
from brimbook.cards.asking import ask, plain_choice
from brimbook.cards.card import beside, card, figures_below, group
from brimbook.cards.measuring import well_profile
from brimbook.cards.shelf import Shelf, as_it_is, kind_of, left_behind, own_choice, supply_field, taken_of
from brimbook.draw import section
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.fields import Choice
from brimbook.record.said import Said
from brimbook.steps import cautions
from brimbook.steps.densities import has_cup, told_at_stands_in
from brimbook.steps.waxes_in_pot import MOST_BLENDED, blended_path, name_of_wax, waxes_of
from brimbook.work_out import Answer, has_own_pot

_MARKED = "Mend the entry that is marked."
_POURS = ("first_pour", "second_pour", "third_pour", "missing")


def wax_card(answer: Answer, place: str, shelf: Shelf) -> dict[str, Any]:
    """The wax: wax, fragrance and dye to weigh [card].

    answer: everything worked out [answer].
    place: path of the well [text].
    shelf: the maker's own materials [shelf].
    """
    figures = figures_below(answer, place)
    own = has_own_pot(answer.said, place)
    asked = _asked(answer.said, place, figures, shelf) if own else {"fields": [], "more": []}
    told = [f"{figures[name].shown} {figures[name].label.lower()}" for name in ("wax", "fragrance", "dye")
            if name in figures]
    return card(
        place, "wax", "Wax", "What to weigh for the fill", answer=("wax", "fragrance"), waiting=_waiting(answer, place, own),
        figures=figures, **asked, notes=(*(() if own else ("From the pot of the first well.",)), *_pours(figures)),
        cautions=cautions.WAX, beside=beside(figures, ("By density", ("wax", "fragrance")),
                                             ("Your rule", ("rule_wax", "rule_fragrance")), "rule_difference"),
        drawing=section.vessel(well_profile(answer.said, place), "wax", told or ["to the line"]),
        drawing_text=f"Section of the vessel, filled with wax: {', '.join(told) or 'to the line'}.")


def _asked(said: Said, place: str, figures: dict[str, Figure], shelf: Shelf) -> dict[str, Any]:
    rows = range(min(said.count(f"{place}.wax.blended"), MOST_BLENDED + 1))
    return {
        "fields": [_wax_field(said, place, shelf), ask(said, f"{place}.basis"), ask(said, f"{place}.fragrance.load"),
                   ask(said, f"{place}.fragrance.basis")],
        "more": [*_densities(said, place), *(ask(said, f"{place}.{name}") for name in ("fragrance.density", "dye")), *_dye(said, place, shelf),
                 ask(said, f"{place}.rule")],
        "groups": (*(_blended(said, place, row, figures, shelf) for row in rows), _cup(said, place, figures)),
        "actions": () if len(rows) >= MOST_BLENDED else (
            {"label": "Blend in another wax", "append": f"{place}.wax.blended",
             "value": {"kind": "beeswax", "share": "10 %", **_generic("beeswax")}},)}


def _dye(said: Said, place: str, shelf: Shelf) -> list[dict[str, Any]]:
    """Which dye, where the shelf has any; else its name is asked where it is paid for."""
    return [supply_field(said, f"{place}.coloring", shelf, "dye", "Which dye")] if shelf.of_role("dye") else []


def _waiting(answer: Answer, place: str, own: bool) -> str:
    said = answer.said
    if f"{place}.fill" not in answer.rooms:
        return "Once the well is measured."
    if not own:
        return _MARKED if said.is_marked_below("wells.0") else "Once the wax of the first well is known."
    basis = said.value(f"{place}.basis") or "poured"
    missing = [] if has_cup(said, place, basis) else [
        part for part in waxes_of(said, place) if not said.typed(f"{part.path}.density_{basis}")]
    if not missing:
        return _MARKED
    return ("Type the density of your wax: weigh a known volume of it." if missing[0].number == 1 else
            "Type the density of each wax that is blended in.")


def _pours(figures: dict[str, Figure]) -> tuple[str, ...]:
    """What is poured when, where the wax is poured in several goes."""
    told = [figures[name].says for name in _POURS if name in figures]
    return (f"{'. '.join(told)}.",) if told else ()


def _wax_field(said: Said, place: str, shelf: Shelf) -> dict[str, Any]:
    return _kind_field(said, f"{place}.wax", shelf, f"{place}.wax.density_at")


def _kind_field(said: Said, wax: str, shelf: Shelf, told_at: str = "") -> dict[str, Any]:
    """Choosing a wax writes its densities; what the maker typed its hot density to be told for no longer holds."""
    sets = {told_at: ""} if told_at and said.typed(told_at) else {}
    left = left_behind(said, wax, shelf, "wax")
    gone = {path: text for path, text in left.items() if path != f"{wax}.kind"}
    offered = [plain_choice(Choice(each.kind, each.label, each.hint), gone if each.density_set is None else {
        **gone, **{f"{wax}.{name}": text for name, text in _generic(each.kind).items()}, **sets}) for each in WAXES]
    offered += [own_choice(kind_of(item), item, {**sets, **taken_of(said, wax, "wax", item, left)}) for item in shelf.of_role("wax")]
    present = said.text(f"{wax}.kind")
    if present and present not in [choice["value"] for choice in offered]:
        offered.append(as_it_is(present, said.text(f"{wax}.name").strip() or "Another wax"))
    return ask(said, f"{wax}.kind", choices=offered)


def _generic(kind: str) -> dict[str, str]:
    """The densities of a generic wax as the record keeps them."""
    known = next(each for each in WAXES if each.kind == kind)
    return {"density_poured": f"{known.density_poured:.2f} g/mL", "density_set": f"{known.density_set:.2f} g/mL"}


def _densities(said: Said, place: str) -> list[dict[str, Any]]:
    wax = f"{place}.wax"
    fields = [_beaten(said, place, ask(said, f"{wax}.density_{state}"), state) for state in ("poured", "set")]
    at = told_at_stands_in(said, wax)
    return [*fields, ask(said, f"{wax}.density_at", usual="" if at is None else f"{at:g} °C"), ask(said, f"{wax}.expansion")]


def _beaten(said: Said, place: str, field: dict[str, Any], state: str) -> dict[str, Any]:
    """A density, with a word where that of the cup is taken instead."""
    return {**field, "note": "Your cup of wax is taken instead: see below."} if has_cup(said, place, state) else field


def _blended(said: Said, place: str, row: int, figures: dict[str, Figure], shelf: Shelf) -> dict[str, Any]:
    path = blended_path(place, row)
    return group(path, name_of_wax(said, path), _blended_told(said, path, figures.get(f"wax_{row + 2}")),
                 [_kind_field(said, path, shelf), ask(said, f"{path}.share")],
                 more=tuple(ask(said, f"{path}.{name}") for name in ("name", "density_poured", "density_set")),
                 actions=({"label": "Remove this wax", "remove": path},))


def _blended_told(said: Said, path: str, weighed: Figure | None) -> str:
    if said.is_marked_below(path):
        return _MARKED
    share = said.value(f"{path}.share")
    if share is None:
        return "Type how much of it."
    told = f"{show.percent(share, said.display)} of the wax"
    return told if weighed is None else f"{weighed.shown} · {told}"


def _cup(said: Said, place: str, figures: dict[str, Figure]) -> dict[str, Any]:
    wax = f"{place}.wax"
    told = [f"{figures[name].shown} {word}" for name, word in (("cup_poured", "hot"), ("cup_set", "set")) if name in figures]
    marked = any(said.fault_at(f"{wax}.cup_{name}") for name in ("volume", "error", "empty", "poured", "temperature", "set"))
    return group(f"{wax}.cup", "Weigh your own", _MARKED if marked else " · ".join(told) or "A cup of it, hot and set: surer than any list.",
                 [ask(said, f"{wax}.cup_{name}") for name in ("volume", "empty", "poured", "set")],
                 more=(ask(said, f"{wax}.cup_temperature"), ask(said, f"{wax}.cup_error")))
