"""The log of the pours as it was understood: each pour with its own weights, its cup and its spread."""

import math
from dataclasses import dataclass, replace

from brimbook.cast import flow, learning
from brimbook.cast.learning import Learned, Seen
from brimbook.cast.recipe import Part, Recipe
from brimbook.fill import readings
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.measure import Measurement
from brimbook.steps.recipe import others_of

# A fresh mix outside these, or this many times off its table, is a slip of the pen [g/mL, –].
LIGHTEST, HEAVIEST, FARTHEST = 0.3, 4.0, 1.6
# A mold that took less or more than so many times its room was not what was weighed for.
LEAST_TAKEN, MOST_TAKEN = 0.6, 2.0
# A mold measured too large can need less than its room, but not less than this.
LEAST_ALLOWANCE = -0.05
# A mix that spread so many times as wide the one way as the other ran off a slope, or is a slip of the pen.
LOPSIDED = 1.5


@dataclass(frozen=True)
class Cup:
    """A cup of fresh mix: what it weighed full and empty [g], and holds [mL]."""

    full: float
    empty: float
    volume: float

    @property
    def net(self) -> float:
        """What the mix in it weighs [g]."""
        return self.full - self.empty

    @property
    def density(self) -> float:
        """Of the mix in it [g/mL]."""
        return self.net / self.volume


@dataclass(frozen=True)
class Taken:
    """What the molds of one pour took: weighed, left over and lacking [g], their room as measured [mL]."""

    weighed: float
    left_over: float
    short: float
    room: float

    @property
    def mass(self) -> float:
        """Of the mix that the molds, the bowl and the tools took [g]."""
        return self.weighed - self.left_over + self.short


@dataclass(frozen=True)
class Pour:
    """One pour: its number, its place, the recipe by its own weights, and what was seen of it."""

    number: int
    place: str
    own: Recipe
    cup: Cup | None
    taken: Taken | None
    spread: float | None


@dataclass(frozen=True)
class Molds:
    """What a bowl fills: the first mold's room and pieces as planned, and the room of the others with their pieces [mL]."""

    room: float
    pieces: float
    others: float
    relative: float


def molds_of(said: Said, place: str, rooms: dict[str, Measurement]) -> Molds | None:
    """The molds that a cast's bowl fills; nothing while one of them is not measured [molds].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    rooms: the measured cavity of each cast poured from this bowl, by the cast's path [measurements].
    """
    casts = range(1, said.count("casts")) if place == "casts.0" else ()
    places = [place, *(f"casts.{row}" for row in casts if said.value(f"casts.{row}.bowl") == "first")]
    counts = [said.value(f"{each}.pieces") for each in places]
    if None in counts or any(each not in rooms for each in places):
        return None
    volumes = [pieces * rooms[each].volume for each, pieces in zip(places, counts)]
    spread = math.fsum(pieces * rooms[each].plus_minus for each, pieces in zip(places, counts))
    return Molds(rooms[place].volume, counts[0], math.fsum(volumes[1:]), spread / math.fsum(volumes))


def log_of(said: Said, place: str, recipe: Recipe, molds: Molds | None) -> list[Pour]:
    """The pours that can be understood, in the order of the log [pours].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    recipe: as planned now, for what a pour leaves open [recipe].
    molds: what the bowl fills [molds].
    """
    found, cup_before, base = [], {}, base_of(said, place)
    others = set(of_another_mix(said, place))
    for row in range(said.count(f"{place}.pours")):
        pour = f"{place}.pours.{row}"
        _remember_cup(said, pour, cup_before)
        if row in others:
            continue
        powder, own = own_recipe(said, pour, recipe)
        cup = _cup(said, pour, own, cup_before)
        if own is not None:
            taken = _taken(said, pour, own, powder, molds) if powder is not None and molds is not None else None
            found.append(Pour(row + 1, pour, own, cup, taken, _spread(said, pour, base)))
    return found


# As long as a record keeps it.
_LONGEST = 1000


def mix_name(said: Said, place: str) -> str:
    """The powder and the ingredients of a mix by their kinds, so that a pour of another one is known [text].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    materials = [f"{place}.mix.powder", *others_of(said, f"{place}.mix")]
    return " + ".join(said.text(f"{material}.kind").strip() or "own" for material in materials)[:_LONGEST].strip()


def of_another_mix(said: Said, place: str) -> list[int]:
    """The rows of the pours that were logged when the mix had another powder or other ingredients [counts].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    present, rows = mix_name(said, place), range(said.count(f"{place}.pours"))
    logged = [said.text(f"{place}.pours.{row}.of").strip() for row in rows]
    return [row for row in rows if logged[row] and logged[row] != present]


def own_recipe(said: Said, pour: str, recipe: Recipe) -> tuple[float | None, Recipe | None]:
    """The powder of a pour, if it was typed, and its mix for a gram of it by its own weights [g and recipe].

    said: the record as understood [said].
    pour: path of the pour [text].
    recipe: as planned now, for what the pour leaves open [recipe].

    An entry that is faulty leaves the recipe out.
    """
    if not said.typed(f"{pour}.powder"):
        return None, recipe
    powder = said.value(f"{pour}.powder")
    if powder is None:
        return None, None
    water = _typed_or(said, f"{pour}.water", recipe.water * powder)
    weights = [_typed_or(said, f"{pour}.{part.name}.weighed", part.weighed * powder) for part in recipe.parts[1:]]
    if water is None or None in weights:
        return powder, None
    parts = [_weighed_as(part, weight / powder) for part, weight in zip(recipe.parts[1:], weights)]
    return powder, replace(recipe, parts=(recipe.parts[0], *parts), water=water / powder)


def base_of(said: Said, place: str) -> float | None:
    """Diameter of the base of the cone or ring that the spread is measured with [mm].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    cone = said.value(f"{place}.flow.cone")
    return flow.CONES[cone].base if cone in flow.CONES else said.value(f"{place}.flow.base")


def _typed_or(said: Said, path: str, otherwise: float) -> float | None:
    return said.value(path) if said.typed(path) else otherwise


def _weighed_as(part: Part, weighed: float) -> Part:
    return part if weighed == part.weighed else replace(part, weighed=weighed)


def _remember_cup(said: Said, pour: str, before: dict[str, float]) -> None:
    """A cup stays the same from pour to pour: what it holds and weighs empty need only be typed once."""
    for name in ("cup_volume", "cup_empty"):
        if said.typed(f"{pour}.{name}"):
            before[name] = said.value(f"{pour}.{name}")


def _cup(said: Said, pour: str, own: Recipe | None, before: dict[str, float]) -> Cup | None:
    full, empty, volume = said.value(f"{pour}.cup_full"), before.get("cup_empty"), before.get("cup_volume")
    if None in (full, empty, volume) or own is None:
        return None
    if full <= empty:
        said.fault(f"{pour}.cup_full", "The cup weighs no more full than empty. Were the two swapped?")
        return None
    cup = Cup(full, empty, volume)
    if not (LIGHTEST <= cup.density <= HEAVIEST and 1 / FARTHEST <= cup.density / own.density <= FARTHEST):
        said.fault(f"{pour}.cup_full", f"So the mix would weigh {show.density(cup.density, said.display)}, and the table says "
                   f"{show.density(own.density, said.display)}. Check what the cup holds, and both weights.")
        return None
    return cup


def _taken(said: Said, pour: str, own: Recipe, powder: float, molds: Molds) -> Taken | None:
    paths = [f"{pour}.{name}" for name in ("left_over", "short", "pieces")]
    left_over, short = (_typed_or(said, path, 0.0) for path in paths[:2])
    pieces = _typed_or(said, paths[2], molds.pieces)
    if None in (left_over, short, pieces) or not any(said.typed(path) for path in paths[:2]):
        return None
    if left_over > 0 and short > 0:
        said.fault(paths[1], "Mix was left over and lacking too. Keep the one that was so, and empty the other.")
        return None
    taken = Taken(own.mass * powder, left_over, short, pieces * molds.room + molds.others)
    if taken.mass <= 0:
        said.fault(paths[0], f"More is left over than was weighed, {show.mass(taken.weighed, said.display)} in all. Check "
                   "both.")
        return None
    share = taken.mass / (taken.room * own.density)
    if not LEAST_TAKEN <= share <= MOST_TAKEN:
        said.fault(paths[0] if said.typed(paths[0]) else paths[1],
                   f"So the mold took {show.percent(share, said.display, 0)} of the mix that it holds. Check the weights, "
                   "the pieces, and the mold's own volume.")
        return None
    return taken


def _spread(said: Said, pour: str, base: float | None) -> float | None:
    paths = [path for path in (f"{pour}.spread_1", f"{pour}.spread_2") if said.typed(path)]
    diameters = [said.value(path) for path in paths]
    if not diameters or None in diameters or base is None:
        return None
    spread = flow.mean_diameter(diameters)
    if max(diameters) > LOPSIDED * min(diameters):
        said.fault(paths[1], "The two spreads are far apart. Check both; if they are right, level the plate and spread it again.")
        return None
    if spread < base:
        said.fault(paths[0], f"The mix can't lie narrower than the cone stood: {show.length(base, said.display)}. Check the "
                   "spread, and which cone it was.")
        return None
    return spread


def learn_from(said: Said, pours: list[Pour], molds: Molds | None) -> Learned | None:
    """What the pours of a log teach [learned].

    said: the record as understood [said].
    pours: of the log [pours].
    molds: what the bowl fills [molds].

    Each pour is held against the table for its own weights, so that it teaches of any recipe of the same powder.
    """
    step = readings.readability_of_difference(said.display.readability) / 2
    log = [Seen(pour.number, math.log(pour.cup.density / pour.own.density) if pour.cup else None,
                math.log(pour.taken.mass / pour.taken.room / pour.own.density) if pour.taken else None) for pour in pours]
    cups, taken = [pour.cup for pour in pours if pour.cup], [pour for pour in pours if pour.taken]
    cup_rounding = _root_mean_square([step / cup.net for cup in cups])
    # Each ingredient, the water and the rest are weighed one by one.
    pour_rounding = _root_mean_square([step * math.sqrt(len(pour.own.parts) + 2) / pour.taken.mass for pour in taken])
    learned = learning.learn([seen.cup for seen in log if seen.cup is not None],
                             [seen.taken for seen in log if seen.taken is not None],
                             molds.relative if molds else 0.0, cup_rounding, pour_rounding)
    if learned is None:
        return None
    # Whatever the pours say, a plan must not leave the mold half empty.
    sane = learned.allowance if learned.allowance is not None and learned.allowance >= LEAST_ALLOWANCE else None
    return replace(learned, allowance=sane, log=tuple(seen for seen in log if (seen.cup, seen.taken) != (None, None)))


def _root_mean_square(values: list[float]) -> float:
    return math.sqrt(math.fsum(value**2 for value in values) / len(values)) if values else 0.0
