"""What a vessel takes of everything that is bought."""

from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.steps.pot import Potful
from brimbook.steps.supply_amounts import amounts_of
from brimbook.steps.supply_things import Thing, is_told_of, pack_path, things_of


@dataclass(frozen=True)
class Supply:
    """What one vessel takes of something that is bought, as really used: what is wasted counts.

    place: of the record, below which its pack, price and lot stand.
    role: on the shelf: one of the roles of materials, or wick.
    measure: mass, volume or pieces; each and pack are in g, mL or pieces; each is 0 where it was left out.
    step: where it is lost when something fails: cast, candle or packing.
    key: of the figure that each is worked out from, if there is one.
    formula, numbers: how each is worked out, in words and as arithmetic.
    part: of the cost that it belongs to.
    """

    place: str
    role: str
    name: str
    measure: str
    each: float
    step: str
    key: str = ""
    pack: float | None = None
    price: float | None = None
    lot: str = ""
    formula: str = ""
    numbers: str = ""
    part: str = ""


@dataclass(frozen=True)
class _Bought:
    """How something is bought, as typed where it is used, or where it was used before."""

    pack: float | None
    price: float | None
    lot: str


def supplies_of(said: Said, figures: dict[str, Figure], potfuls: dict[str, Potful]) -> tuple[Supply, ...]:
    """What one vessel takes of everything that is bought, as far as it is known [supplies].

    said: the record as understood [said].
    figures: worked out so far, by key [figures].
    potfuls: by the path of the well whose pot it is [potfuls].

    The same thing in a second mold or well is bought as it is in the first, unless the maker says otherwise.
    """
    amounts, found = amounts_of(said, figures, potfuls), []
    before: dict[tuple[str, str], _Bought] = {}
    for thing in things_of(said):
        bought = _bought(said, thing, before)
        amount = amounts.get(thing.place)
        if amount is not None:
            found.append(Supply(
                thing.place, thing.role, thing.name, thing.measure, amount.value, thing.step, amount.key, bought.pack, bought.price,
                bought.lot, amount.formula, amount.numbers, thing.part))
    return tuple(found)


def unmeasured(said: Said, supplies: tuple[Supply, ...]) -> list[Thing]:
    """The things that go into a vessel of which it is not known how much [things].

    said: the record as understood [said].
    supplies: what one vessel takes, as far as it is known [supplies].

    Coats that nobody spoke of are left out: that they are usual does not mean that this vessel has any.
    """
    known = {supply.place for supply in supplies}
    return [thing for thing in things_of(said) if thing.place not in known and (thing.part != "finish" or _is_spoken_of(said, thing))]


def _is_spoken_of(said: Said, coat: Thing) -> bool:
    return is_told_of(said, coat) or said.typed(f"{coat.place}.name") or said.typed(f"{coat.place}_coats")


def _bought(said: Said, thing: Thing, before: dict[tuple[str, str], _Bought]) -> _Bought:
    same = (thing.role, thing.name.casefold())
    if not is_told_of(said, thing) and same in before:
        return before[same]
    price = f"{thing.place}.pack_price"
    bought = _Bought(said.value(pack_path(thing)), said.value(price), said.text(f"{thing.place}.lot").strip())
    if is_told_of(said, thing):
        before.setdefault(same, bought)
    return bought
