"""Everything that is bought for a vessel, whatever its amount: where its pack stands, what it is, where it is lost."""

from dataclasses import dataclass

from brimbook.record.leaves.supply import PACKS
from brimbook.record.said import Said
from brimbook.steps.facts import name_of
from brimbook.steps.recipe import others_of, role_of
from brimbook.steps.scent import name_of_scent, rows_of, scent_path
from brimbook.steps.waxes_in_pot import name_of_wax, waxes_of

# Packaging beyond so many rows is kept, and no longer worked out.
MOST_PACKAGING = 40
COATS = ("sealer", "primer", "paint")
_MINE = "mine: "


@dataclass(frozen=True)
class Thing:
    """Something that is bought and goes into a vessel.

    place: of the record, below which its pack, price and lot stand.
    part: of the cost: cast, finish, wax, fragrance, dye, wicks or packaging.
    step: where it is lost when something fails: cast, candle or packing.
    """

    place: str
    role: str
    name: str
    measure: str
    part: str
    step: str


def things_of(said: Said) -> tuple[Thing, ...]:
    """Everything that is bought for a vessel, in the order of the job, each once [things].

    said: the record as understood [said].
    """
    found: list[Thing] = []
    for row in range(said.count("casts")):
        found += _of_cast(said, f"casts.{row}")
    for row in range(said.count("wells")):
        found += _of_well(said, f"wells.{row}")
    packed = range(min(said.count("packaging"), MOST_PACKAGING))
    return (*found, *(Thing(f"packaging.{row}", "packaging", said.text(f"packaging.{row}.name").strip() or f"Packaging {row + 1}", "pieces",
                            "packaging", "packing") for row in packed if said.value(f"packaging.{row}.each") != 0))


def pack_path(thing: Thing) -> str:
    """Where the record says how much a pack of it holds [text].

    thing: that is bought [thing].
    """
    return f"{thing.place}.{PACKS[thing.measure][0]}"


def is_told_of(said: Said, thing: Thing) -> bool:
    """Did the maker type a pack, a price or a lot of it [yes or no]?

    said: the record as understood [said].
    thing: that is bought [thing].
    """
    return any(said.typed(path) for path in (pack_path(thing), f"{thing.place}.pack_price", f"{thing.place}.lot"))


def _of_cast(said: Said, place: str) -> list[Thing]:
    found = []
    if place == "casts.0" or said.value(f"{place}.bowl") != "first":
        powder = f"{place}.mix.powder"
        found.append(Thing(powder, said.value(f"{powder}.role") or "binder", _name(said, powder, "Powder"), "mass", "cast", "cast"))
        for number, other in enumerate(others_of(said, f"{place}.mix"), 2):
            found.append(Thing(other, role_of(said, other), _name(said, other, f"Ingredient {number}"), "mass", "cast", "cast"))
    coats = [coat for coat in COATS if said.value(f"{place}.finishing.{coat}_coats") != 0]
    return [*found, *(Thing(f"{place}.finishing.{coat}", "coating", said.text(f"{place}.finishing.{coat}.name").strip() or coat.capitalize(),
                            "volume", "finish", "cast") for coat in coats)]


def _name(said: Said, material: str, otherwise: str) -> str:
    """The maker's own name for it, that of its kind, or that of the shelf's material that it is a copy of."""
    kind = said.text(f"{material}.kind").strip()
    own = kind.removeprefix(_MINE).strip() if kind.startswith(_MINE) else ""
    return name_of(said, material) or own or otherwise


def _of_well(said: Said, place: str) -> list[Thing]:
    wick = Thing(f"{place}.wicks", "wick", said.text(f"{place}.wicks.name").strip() or "Wick", "pieces", "wicks", "candle")
    if place != "wells.0" and said.value(f"{place}.pot") == "first":
        return [wick]
    paths = [part.path for part in waxes_of(said, place)] or [f"{place}.wax"]
    waxes = [Thing(path, "wax", _wax_name(said, path), "mass", "wax", "candle") for path in paths]
    scents = _scents(said, place) if said.value(f"{place}.fragrance.load") != 0 else []
    dye = Thing(f"{place}.coloring", "dye", said.text(f"{place}.coloring.name").strip() or "Dye", "mass", "dye", "candle")
    return [*waxes, *scents, *([dye] if said.value(f"{place}.dye") != 0 else []), wick]


def _wax_name(said: Said, path: str) -> str:
    kind, name = said.text(f"{path}.kind").strip(), name_of_wax(said, path)
    own = kind.removeprefix(_MINE).strip() if kind.startswith(_MINE) and not said.text(f"{path}.name").strip() else ""
    return own or ("Wax" if path.endswith(".wax") and name == "The first wax" else name)


def _scents(said: Said, place: str) -> list[Thing]:
    rows = rows_of(said, place)
    if not rows:
        whole = f"{place}.fragrance"
        return [Thing(whole, "fragrance", said.text(f"{whole}.name").strip() or "Fragrance", "mass", "fragrance", "candle")]
    return [Thing(scent_path(place, row), "fragrance", name_of_scent(said, place, row), "mass", "fragrance", "candle")
            for row in rows if said.value(f"{scent_path(place, row)}.parts") != 0]
