"""The order of the job: a record goes in, every figure comes out."""

from dataclasses import dataclass, field
from typing import Any

from brimbook.cast.learning import Learned
from brimbook.cast.recipe import Recipe
from brimbook.figure import Figure
from brimbook.quantity.show import Display
from brimbook.record.said import Said, understand
from brimbook.record.tree import item_of
from brimbook.steps.blending import Blend, blending
from brimbook.steps.batches import Batch, batches_of
from brimbook.steps.bowl import bowl
from brimbook.steps.burning import Burn, burning
from brimbook.steps.clamping import clamping
from brimbook.steps.cost import Costing, costing
from brimbook.steps.curing import Schedule, curing
from brimbook.steps.design import PLACE, design_of
from brimbook.steps.design_figures import design_figures, design_weights
from brimbook.steps.drying import Dryness, drying
from brimbook.steps.filling import Filled, filling
from brimbook.steps.finishing import finishing
from brimbook.steps.holder import holder
from brimbook.steps.label import Labeled, labeled
from brimbook.steps.leaking import leaking
from brimbook.steps.measure import Measurement, measure
from brimbook.steps.melting import Melt, melting
from brimbook.steps.mixing import mixing, plan_of, shared
from brimbook.steps.plan import Plan
from brimbook.steps.photo import photo_figures
from brimbook.steps.pot import Potful, pot
from brimbook.steps.pouring import pouring
from brimbook.steps.price import pricing
from brimbook.steps.recipe import recipe_of
from brimbook.steps.scent import scent
from brimbook.steps.supplies import Supply, supplies_of
from brimbook.steps.target import Target, target
from brimbook.steps.wax_surface import shape_of
from brimbook.steps.wicks import WickPlan, wicks


@dataclass
class Answer:
    """Everything worked out from a record; what is found for one cast or fill stands under its path.

    by_item holds the same figures as figures, those of each cast and well by themselves.
    """

    said: Said
    figures: dict[str, Figure] = field(default_factory=dict)
    by_item: dict[str, dict[str, Figure]] = field(default_factory=dict)
    rooms: dict[str, Measurement] = field(default_factory=dict)
    recipes: dict[str, Recipe] = field(default_factory=dict)
    plans: dict[str, Plan] = field(default_factory=dict)
    learned: dict[str, Learned] = field(default_factory=dict)
    dryness: dict[str, Dryness] = field(default_factory=dict)
    schedules: dict[str, Schedule] = field(default_factory=dict)
    blends: dict[str, Blend] = field(default_factory=dict)
    fills: dict[str, Filled] = field(default_factory=dict)
    potfuls: dict[str, Potful] = field(default_factory=dict)
    melts: dict[str, Melt] = field(default_factory=dict)
    wick_plans: dict[str, WickPlan] = field(default_factory=dict)
    burns: dict[str, Burn] = field(default_factory=dict)
    targets: dict[str, Target] = field(default_factory=dict)
    supplies: tuple[Supply, ...] = ()
    costing: Costing | None = None
    batches: tuple[Batch, ...] = ()
    labels: dict[str, Labeled] = field(default_factory=dict)

    def keep(self, figures: list[Figure]) -> None:
        """Add figures [nothing].

        figures: worked out, in the order they are told [figures].
        """
        for figure in figures:
            self.figures[figure.key] = figure
            self.by_item.setdefault(item_of(figure.key), {})[figure.key] = figure


def work_out(record: dict[str, Any], display: Display = Display()) -> Answer:
    """Every figure of a vessel, from what the maker said alone [answer].

    record: plain data as the page, a link or a file holds it [record].
    display: how this maker reads figures [display].

    Nothing is raised for a bad entry: it is a fault in answer.said.faults, and the
    figures that need it are missing.

    >>> cup = {"casts": [{"cavity": {"readings": [{"water": "640"}]},
    ...                   "mix": {"powder": {"particle_density": "2.98"}}}]}
    >>> answer = work_out(cup)
    >>> answer.figures["casts.0.powder"].says, answer.figures["casts.0.water"].says
    ('Weigh 1205 g powder', 'Weigh 301 g water')
    """
    answer = Answer(understand(record, display))
    _design(answer)
    casts = places(answer.said, "casts")
    for place in casts:
        _room(answer, f"{place}.cavity")
    for place in casts:
        _cast(answer, place, casts)
    wells = places(answer.said, "wells")
    for place in wells:
        _well(answer, place)
    for place in wells:
        if has_own_pot(answer.said, place):
            _own_pot(answer, place, wells)
    for place in wells:
        _candle(answer, place)
        _target(answer, place)
    _design_weights(answer)
    _sell(answer)
    return answer


def places(said: Said, name: str) -> list[str]:
    """The path of each item of one of the record's lists [texts].

    said: the record as understood [said].
    name: casts or wells [text].
    """
    return [f"{name}.{number}" for number in range(said.count(name))]


def has_own_bowl(said: Said, place: str) -> bool:
    """Is a cast poured from a bowl of its own [yes or no]?

    said: the record as understood [said].
    place: path of the cast [text].
    """
    return place == "casts.0" or said.value(f"{place}.bowl") != "first"


def has_own_pot(said: Said, place: str) -> bool:
    """Is a well filled from a pot of its own [yes or no]?

    said: the record as understood [said].
    place: path of the well [text].
    """
    return place == "wells.0" or said.value(f"{place}.pot") != "first"


def _room(answer: Answer, place: str, porous: bool = False) -> None:
    room = measure(answer.said, place, porous)
    if room is not None:
        answer.rooms[place] = room
        answer.keep(room.figures)


def _cast(answer: Answer, place: str, casts: list[str]) -> None:
    """The steps of one cast, in the order of the job."""
    said, cavity = answer.said, answer.rooms.get(f"{place}.cavity")
    own = has_own_bowl(said, place)
    if own:
        _own_bowl(answer, place, casts, cavity)
    elif cavity is not None:
        answer.keep(shared(said, place, cavity))
    answer.keep(clamping(said, place, answer.recipes.get(place if own else "casts.0"), cavity))
    dry = drying(said, place)
    if dry is not None:
        answer.dryness[place] = dry
        answer.keep(dry.figures)
    answer.schedules[place] = curing(said, place, dry)
    answer.keep(answer.schedules[place].figures)
    answer.keep(leaking(said, place))
    answer.keep(finishing(said, place, cavity))


def _own_bowl(answer: Answer, place: str, casts: list[str], cavity: Measurement | None) -> None:
    said, recipe = answer.said, recipe_of(answer.said, place)
    if recipe is None:
        return
    answer.recipes[place] = recipe
    rooms = _poured_from(answer, place, casts)
    learned, figures = pouring(said, place, recipe, rooms)
    answer.keep(figures)
    if learned is not None:
        answer.learned[place] = learned
    plan = plan_of(said, place, rooms, recipe, learned) if cavity is not None else None
    if plan is not None:
        answer.plans[place] = plan
        answer.keep(mixing(said, place, plan, cavity))
        answer.keep(bowl(said, place, plan))


def _poured_from(answer: Answer, place: str, casts: list[str]) -> dict[str, Measurement]:
    """The measured cavities that this cast's bowl fills: its own, and those that share it."""
    others = [other for other in casts if other != place and place == "casts.0" and not has_own_bowl(answer.said, other)]
    rooms = {other: answer.rooms.get(f"{other}.cavity") for other in [place, *others]}
    return {other: room for other, room in rooms.items() if room is not None}


def _well(answer: Answer, place: str) -> None:
    """One well's wax, from its room and the blend of its pot."""
    said = answer.said
    _room(answer, f"{place}.fill", porous=said.value(f"{place}.sealed") != "yes")
    room = answer.rooms.get(f"{place}.fill")
    if has_own_pot(said, place):
        blend = blending(said, place)
        if blend is not None:
            answer.blends[place] = blend
            answer.keep(list(blend.figures))
    filled = filling(said, place, room, answer.blends.get(_pot_of(said, place))) if room is not None else None
    if filled is not None:
        answer.fills[place] = filled
        answer.keep(list(filled.figures))


def _pot_of(said: Said, place: str) -> str:
    """The well whose pot a well is filled from."""
    return place if has_own_pot(said, place) else "wells.0"


def _own_pot(answer: Answer, place: str, wells: list[str]) -> None:
    """The pot of a well: how large, how scented, how hot."""
    said, blend = answer.said, answer.blends.get(place)
    filled = tuple(answer.fills[other] for other in wells if other in answer.fills and _pot_of(said, other) == place)
    potful = pot(said, place, blend, filled) if blend is not None and filled else None
    if potful is not None:
        answer.potfuls[place] = potful
        answer.keep(list(potful.figures))
    answer.keep(scent(said, place, blend, potful))
    answer.melts[place] = melting(said, place, blend, potful)
    answer.keep(list(answer.melts[place].figures))


def _target(answer: Answer, place: str) -> None:
    """Where a wanted weight of wax leads."""
    fresh, blend = answer.figures.get("casts.0.fresh_density"), answer.blends.get(_pot_of(answer.said, place))
    found = target(answer.said, place, blend, answer.rooms, fresh)
    if found is not None:
        answer.targets[place] = found
        answer.keep(list(found.figures))


def _design(answer: Answer) -> None:
    """The vessel that is designed, if there is one."""
    found = design_of(answer.said)
    if found is not None:
        answer.keep(design_figures(answer.said, found))


def _design_weights(answer: Answer) -> None:
    """What it weighs: only now are mix and wax known."""
    cast, room = (answer.figures.get(f"{PLACE}.{name}") for name in ("cast", "room"))
    if cast is not None and room is not None:
        fresh, blend = answer.figures.get("casts.0.fresh_density"), answer.blends.get("wells.0")
        answer.keep(design_weights(answer.said, cast, room, fresh, blend))


def _candle(answer: Answer, place: str) -> None:
    """The wicks of a well, their holder, and its burn test."""
    plan = wicks(answer.said, place)
    if plan is not None:
        answer.wick_plans[place] = plan
        answer.keep([*plan.figures, *(photo_figures(answer.said, place) if shape_of(answer.said, place) == "photo" else [])])
    answer.keep(holder(answer.said, place, plan))
    answer.burns[place] = burning(answer.said, place, plan, answer.fills.get(place))
    answer.keep(list(answer.burns[place].figures))


def _sell(answer: Answer) -> None:
    """What a vessel costs, what to ask for it, its batches, its labels."""
    said = answer.said
    answer.supplies = supplies_of(said, answer.figures, answer.potfuls)
    answer.costing = costing(said, answer.supplies, answer.figures)
    if answer.costing is not None:
        answer.keep(list(answer.costing.figures))
        answer.keep(pricing(said, answer.costing, answer.supplies))
    answer.batches = batches_of(said)
    answer.keep([figure for batch in answer.batches for figure in batch.figures])
    for place in label_places(said):
        answer.labels[place] = labeled(said, place, answer.fills, answer.burns, answer.figures, answer.batches)
        answer.keep(list(answer.labels[place].figures))


def label_places(said: Said) -> list[str]:
    """The path of each label; of one that is not begun where there is none [texts].

    said: the record as understood [said].
    """
    return places(said, "labels") or ["labels.0"]
