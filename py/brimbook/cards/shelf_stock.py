"""What a thing of the shelf costs and how much of it is on hand: its figures, its other packs, its lots."""

from typing import Any

from brimbook import sources
from brimbook.cards.asking import ask
from brimbook.cards.card import group
from brimbook.cards.shelf import pack_name
from brimbook.figure import Constant, Figure
from brimbook.quantity import show, show_more
from brimbook.quantity.units import from_base
from brimbook.record.leaves.materials import MEASURES, STOCK
from brimbook.record.said import Said, localize

# More packs or lots of one thing are kept, and no longer shown.
MOST_PACKS, MOST_LOTS = 20, 60
# The unit that a price is told for, by what is bought: its word, and how it is said.
_UNITS = {"mass": ("kg", "a kg"), "volume": ("l", "a liter"), "pieces": ("", "each")}
_OUNCES = {"mass": ("lb", "a lb"), "volume": ("floz", "a fl oz"), "pieces": ("", "each")}
_SYMBOLS = {"l": "L", "floz": "fl oz"}
_WEIGH = {"mass": "weighs", "volume": "holds", "pieces": "holds"}
_BASES = {"mass": "g", "volume": "mL", "pieces": "pieces"}


def stock_fields(said: Said, place: str, role: str) -> list[dict[str, Any]]:
    """Its pack, what that costs, and what is on hand [fields].

    said: the record of the shelf as understood [said].
    place: path of the material or wick [text].
    role: one of the roles of materials, or wick [text].
    """
    lot = () if said.count(f"{place}.lots") else ("lot",)
    return [ask(said, f"{place}.{name}") for name in (pack_name(role), "pack_price", _stock(role), *lot)]


def stock_figures(said: Said, place: str, role: str) -> dict[str, Figure]:
    """What a kg, a liter or a piece of it costs, what is on hand, and what that is worth, as far as they are known [figures].

    said: the record of the shelf as understood [said].
    place: path of the material or wick [text].
    role: one of the roles of materials, or wick [text].
    """
    price, stock = _unit_price(said, place, role), _on_hand(said, place, role)
    worth = _worth(said, place, role, price, stock) if price is not None and stock is not None else None
    named = {"unit_price": price, "on_hand": stock, "worth": worth}
    return {name: figure for name, figure in named.items() if figure is not None}


def stock_notes(said: Said, place: str, role: str) -> tuple[str, ...]:
    """What is missing for a price of a kg, a liter or a piece [texts].

    said: the record of the shelf as understood [said].
    place: path of the material or wick [text].
    role: one of the roles of materials, or wick [text].
    """
    measure, size = _measure(role), f"{place}.{pack_name(role)}"
    notes = []
    if said.typed(f"{place}.pack_price") and not said.typed(size):
        notes.append("Type how many pieces a pack holds, and what one costs is told." if measure == "pieces" else
                     f"Type what a pack {_WEIGH[measure]}, and what {_unit(said, role)[1]} costs is told.")
    for name, most in (("packs", MOST_PACKS), ("lots", MOST_LOTS)):
        if said.count(f"{place}.{name}") > most:
            notes.append(f"{most} {name} are shown here. All are kept.")
    return tuple(notes)


def stock_groups(said: Said, place: str, role: str) -> tuple[dict[str, Any], ...]:
    """The other packs it comes in, then its lots [groups].

    said: the record of the shelf as understood [said].
    place: path of the material or wick [text].
    role: one of the roles of materials, or wick [text].
    """
    packs, lots = said.count(f"{place}.packs"), said.count(f"{place}.lots")
    return (*(_pack(said, f"{place}.packs.{row}", role) for row in range(min(packs, MOST_PACKS))),
            *(_lot(said, place, row) for row in range(max(0, lots - MOST_LOTS), lots)))


def stock_actions(place: str) -> tuple[dict[str, Any], ...]:
    """Buttons that add a pack or a lot [actions].

    place: path of the material or wick [text].
    """
    return ({"label": "Add another pack it comes in", "append": f"{place}.packs", "value": {}},
            {"label": "Add a lot", "append": f"{place}.lots", "value": {"lot": ""}, "today": ["got_on"]})


def told_in_a_line(figures: dict[str, Figure], said: Said, role: str) -> list[dict[str, str]]:
    """The closed card: what a kg or a piece costs, what it is, and what is on hand [answers].

    figures: of the card by name [figures].
    said: the record of the shelf as understood [said].
    role: one of the roles of materials, or wick [text].
    """
    words = {"unit_price": f"{_unit(said, role)[1]} · {role}", "on_hand": "on hand"}
    if "unit_price" not in figures:
        words["on_hand"] = f"on hand · {role}"
    return [{"label": words[name], "shown": figures[name].shown, "key": figures[name].key} for name in words if name in figures]


def _measure(role: str) -> str:
    return MEASURES.get(role, "mass")


def _stock(role: str) -> str:
    return STOCK[_measure(role)][0]


def _unit(said: Said, role: str) -> tuple[str, str]:
    return (_UNITS if said.display.mass == "g" else _OUNCES)[_measure(role)]


def _in_unit(said: Said, role: str, amount: float) -> float:
    word = _unit(said, role)[0]
    return from_base(amount, word) if word else amount


def _per(said: Said, role: str) -> str:
    word = _unit(said, role)[0]
    return f"{said.display.currency}/{_SYMBOLS.get(word, word)}" if word else said.display.currency


def _put(said: Said, number: float) -> str:
    return show.significant(number, 10, said.display)


def packs_of(said: Said, place: str, role: str) -> list[tuple[float, float]]:
    """Every pack whose size and price are known, the usual one first [base unit and currency].

    said: the record of the shelf as understood [said].
    place: path of the material or wick [text].
    role: one of the roles of materials, or wick [text].
    """
    name = pack_name(role).removeprefix("pack_")
    paths = [(f"{place}.{pack_name(role)}", f"{place}.pack_price"),
             *((f"{place}.packs.{row}.{name}", f"{place}.packs.{row}.price") for row in range(min(said.count(f"{place}.packs"), MOST_PACKS)))]
    found = [(said.value(size), said.value(price)) for size, price in paths]
    return [(size, price) for size, price in found if size and price is not None]


def _unit_price(said: Said, place: str, role: str) -> Figure | None:
    packs = packs_of(said, place, role)
    if not packs:
        return None
    size, price = min(packs, key=lambda pack: pack[1] / pack[0])
    held, word = _in_unit(said, role, size), _unit(said, role)[1]
    value = price / held
    several = "of the pack that is cheapest for its size " if len(packs) > 1 else "of a pack "
    return Figure(
        f"{place}.unit_price", f"Price, {word}", value, _per(said, role), show_more.small_money(value, said.display),
        formula=f"price {several}÷ what it {_WEIGH[_measure(role)]}", numbers=f"{_put(said, price)} ÷ {_put(said, held)}",
        worked=f"{show.significant(value, 6, said.display)} {_per(said, role)}",
        constants=(Constant("Price of the pack", show_more.money(price, said.display), sources.YOURS),))


def _on_hand(said: Said, place: str, role: str) -> Figure | None:
    path = f"{place}.{_stock(role)}"
    value = said.value(path)
    if value is None:
        return None
    unit, shown = _BASES[_measure(role)], localize(said.canonical[path], said.display)
    return Figure(f"{place}.on_hand", "On hand", value, unit, shown, formula="as you counted it", numbers=_put(said, value),
                  worked=f"{_put(said, value)} {unit}", constants=(Constant("On hand", shown, sources.YOURS),))


def _worth(said: Said, place: str, role: str, price: Figure, stock: Figure) -> Figure:
    held = _in_unit(said, role, stock.value)
    value = held * price.value
    return Figure(
        f"{place}.worth", "That is worth", value, said.display.currency, show_more.money(value, said.display),
        formula=f"on hand × price, {_unit(said, role)[1]}", numbers=f"{_put(said, held)} × {_put(said, price.value)}",
        worked=f"{show.significant(value, 6, said.display)} {said.display.currency}", uses=(price.key, stock.key))


def _pack(said: Said, path: str, role: str) -> dict[str, Any]:
    name = pack_name(role).removeprefix("pack_")
    size, price = said.canonical.get(f"{path}.{name}"), said.value(f"{path}.price")
    fields = [ask(said, f"{path}.{name}"), ask(said, f"{path}.price")]
    summary = "Mend the entry that is marked." if any(field["fault"] for field in fields) else (
        show_more.money(price, said.display) if price is not None else "What it costs.")
    title = f"Pack of {localize(size, said.display)}" if size else "Another pack"
    return group(path, title, summary, fields,
                 actions=({"label": "Remove this pack", "remove": path},))


def _lot(said: Said, place: str, row: int) -> dict[str, Any]:
    path = f"{place}.lots.{row}"
    got_on = said.canonical.get(f"{path}.got_on", "")
    told = (f"got on {got_on}" if got_on else "", "in use now" if row == _in_use(said, place) else "")
    summary = "Mend the entry that is marked." if said.is_marked_below(path) else " · ".join(word for word in told if word)
    return group(path, f"Lot {said.text(f'{path}.lot').strip()}".strip() if said.typed(f"{path}.lot") else "New lot",
                 summary or "As printed on the pack.", [ask(said, f"{path}.{name}") for name in ("lot", "got_on", "remarks")],
                 actions=({"label": "Remove this lot", "remove": path},))


def _in_use(said: Said, place: str) -> int:
    """The newest lot stands last; one that has no name yet is in use by nobody."""
    return next((row for row in reversed(range(said.count(f"{place}.lots"))) if said.typed(f"{place}.lots.{row}.lot")), -1)
