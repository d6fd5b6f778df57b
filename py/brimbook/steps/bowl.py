"""The bowl: how many mixes, how long each may take, what to weigh for one, what is held back of the water."""

from dataclasses import dataclass, replace

from brimbook import sources
from brimbook.cast import batch
from brimbook.cast.batch import Mixes, Mold
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import MINUTE, show_duration
from brimbook.record.said import Said
from brimbook.steps.facts import fact
from brimbook.steps.plan import Plan, Portion
from brimbook.steps.scooping import label_of, left_over_stock, noun_of, piece_count, pieces_told, scooped
from brimbook.steps.warnings import warnings
from brimbook.steps.weighing import practice_or_yours, weigh_out

# Each kind of mix is weighed out by itself; more of them than this are no longer kept apart at a bench.
_MOST_KINDS = 6
_TOO_SLOW = ("Mixing and pouring one piece takes longer than the mix stays workable. Make smaller mixes, pour faster, work "
             "colder, or slow the setting as the powder's data sheet allows.")
_COLD_JOINT = ("A piece is larger than the bowl. Weigh all its parts out before you add water, and pour one onto the other "
               "while the first is still wet: a layer that has begun to set makes a cold joint, which can leak and break.")


@dataclass(frozen=True)
class _Limits:
    """What sets the size of a mix: the bowl [mL], pieces in the working time, the molds at hand; and the figures."""

    molds: tuple[Mold, ...]
    bowl: float | None
    most: int | None
    figures: tuple[Figure, ...]
    working: Figure | None


def bowl(said: Said, place: str, plan: Plan) -> list[Figure]:
    """Every figure of the bowl [figures].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    plan: what the bowl is to hold [plan].
    """
    figures, limits = warnings(said, place, plan.recipe), _limits(said, place, plan)
    if limits is None:
        return figures + left_over_stock(said, place, plan)
    kinds = batch.divide(limits.molds, limits.bowl, limits.most)
    figures += [*limits.figures, _mixes(said, place, plan, limits, kinds)]
    figures += _time_taken(said, place, limits, kinds)
    figures += scooped(said, place, plan, kinds)
    if batch.number_of(kinds) > 1:
        figures += _weigh_outs(said, place, plan, limits.molds, kinds)
    else:
        figures += _first_water(said, place, plan, figures)
    return figures + left_over_stock(said, place, plan)


def _limits(said: Said, place: str, plan: Plan) -> _Limits | None:
    """Nothing while an entry that sets the size of a mix is faulty."""
    hands = [f"{mold.place}.batch.molds" for mold in plan.filled]
    bowl_path, paths = f"{place}.batch.bowl", [f"{place}.batch.mixing_time", f"{place}.batch.pouring_time"]
    if any(said.typed(path) and said.value(path) is None for path in (*hands, bowl_path, *paths)):
        return None
    at_hand = [said.value(path) for path in hands]
    molds = tuple(Mold(mold.pieces, mold.volume * (1 + plan.allowance), None if number is None else int(number))
                  for mold, number in zip(plan.filled, at_hand))
    room, working = said.value(bowl_path), _working_time(said, place)
    figures, most = [], None
    if room is not None:
        figures.append(_by_bowl(said, place, plan, molds, room))
    if working is not None:
        by_time = _by_time(said, place, working)
        most = batch.pieces_in_time(working.value * MINUTE, *(said.value(path) for path in paths))
        figures += [working, by_time]
    return _Limits(molds, room, most, tuple(figures), working)


def _working_time(said: Said, place: str) -> Figure | None:
    powder = f"{place}.mix.powder"
    known, reference = fact(said, powder, "working_time"), fact(said, powder, "reference_temperature")
    if known is None or reference is None:
        return None
    bench, told = said.value(f"{place}.curing.temperature"), show.significant
    bench = reference.value if bench is None else bench
    minutes = known.value / MINUTE * batch.setting_factor(bench, reference.value)
    numbers, constants = told(known.value / MINUTE, 8, said.display), [
        Constant(f"Working time at {show.temperature(reference.value, said.display)}",
                 show_duration(known.value, said.display), known.source)]
    if bench != reference.value:
        constants.append(Constant("Colder or warmer", "doubles per 20 °F colder, halves per 20 °F warmer",
                                  sources.SETTING_RULE))
        numbers += (f" × 2 ^ (({told(reference.value, 8, said.display)} − {_signed(bench, said)}) ÷ "
                    f"{told(batch.HALVING, 8, said.display)})")
    return Figure(
        f"{place}.batch.working_time", "Working time on your bench", minutes, "min",
        show_duration(minutes * MINUTE, said.display),
        formula="working time × 2 ^ ((its temperature − your bench) ÷ 20 °F)" if len(constants) > 1 else "as it is told",
        numbers=numbers, worked=f"{told(minutes, 5, said.display)} min", constants=tuple(constants),
        says=f"The mix stays workable for about {show_duration(minutes * MINUTE, said.display)} at "
             f"{show.temperature(bench, said.display)}",
        spread="" if bench == reference.value else
        "A rough rule, told for concrete: your powder may follow another one. Warm water shortens it too.")


def _signed(celsius: float, said: Said) -> str:
    shown = show.significant(celsius, 8, said.display)
    return f"({shown})" if celsius < 0 else shown


def _by_bowl(said: Said, place: str, plan: Plan, molds: tuple[Mold, ...], room: float) -> Figure:
    told, key = show.significant, f"{place}.batch.by_bowl"
    constants = (Constant("Mix your bowl takes", show.volume(room, said.display), sources.YOURS),)
    if len(molds) > 1:
        bowls = plan.volume / room
        return Figure(key, "Bowls of mix", bowls, "bowls", f"{told(bowls, 3, said.display)} bowls", constants=constants,
                      formula="mix needed ÷ mix that the bowl takes", worked=f"{told(bowls, 5, said.display)} bowls",
                      numbers=f"{told(plan.volume, 8, said.display)} ÷ {told(room, 8, said.display)}",
                      uses=(f"{place}.mix_needed",))
    share = room / molds[0].volume
    whole = batch.pieces_made((replace(molds[0], pieces=1),), room)[0]
    says = f"The bowl takes the mix for {piece_count(whole)}" if whole else "One piece takes more mix than the bowl holds"
    return Figure(key, "Pieces in the bowl", share, "pieces", told(share, 3, said.display), constants=constants, says=says,
                  formula="mix that the bowl takes ÷ (cavity × (1 + allowance)), whole pieces of it",
                  worked=told(share, 5, said.display),
                  numbers=f"{told(room, 8, said.display)} ÷ ({told(plan.filled[0].volume, 8, said.display)} × "
                          f"(1 + {told(plan.allowance, 8, said.display)}))", uses=(f"{plan.filled[0].place}.cavity.volume",))


def _by_time(said: Said, place: str, working: Figure) -> Figure:
    told = show.significant
    names = (("mixing_time", "Mixing"), ("pouring_time", "Pouring one piece"))
    mixing, pouring = (said.value(f"{place}.batch.{name}") / MINUTE for name, _ in names)
    pieces = (working.value - mixing) / pouring
    whole = batch.pieces_in_time(working.value, mixing, pouring)
    return Figure(
        f"{place}.batch.by_time", "Pieces in the working time", pieces, "pieces", told(pieces, 3, said.display),
        formula="(working time − mixing) ÷ pouring one piece, whole pieces of it", worked=told(pieces, 5, said.display),
        numbers=f"({told(working.value, 8, said.display)} − {told(mixing, 8, said.display)}) ÷ {told(pouring, 8, said.display)}",
        says=f"There is time to pour {piece_count(whole)} from one mix" if whole else "There is not time to pour one piece",
        constants=tuple(practice_or_yours(said, f"{place}.batch.{name}", label,
                                          show_duration(said.value(f"{place}.batch.{name}"), said.display))
                        for name, label in names), uses=(working.key,))


def _mixes(said: Said, place: str, plan: Plan, limits: _Limits, kinds: tuple[Mixes, ...]) -> Figure:
    number = batch.number_of(kinds)
    formula, numbers = _mixes_worked(limits, kinds)
    return Figure(
        f"{place}.batch.mixes", "To stir", number, "mix", "1 mix" if number == 1 else f"{number} mixes", formula=formula,
        numbers=numbers, says=_mixes_told(plan, kinds, number), notes=_mixes_notes(said, limits, kinds),
        uses=tuple(figure.key for figure in limits.figures))


def _mixes_worked(limits: _Limits, kinds: tuple[Mixes, ...]) -> tuple[str, str]:
    """In words and in numbers; what is rounded up is told as the places that stay empty."""
    number, first = batch.number_of(kinds), limits.molds[0]
    if len(limits.molds) > 1:
        return "mixes of each kind, added up", " + ".join(str(each.count) for each in kinds)
    if kinds[0].parts > 1:
        return "pieces × parts that each is mixed in", f"{first.pieces} × {kinds[0].parts}"
    if number == 1:
        return "all the pieces are poured from one mix", "1"
    most = batch.most_in_one_mix(first, limits.bowl, limits.most)
    empty = number * most - first.pieces
    return (("(pieces + places that stay empty) ÷ most pieces in one mix", f"({first.pieces} + {empty}) ÷ {most}") if empty
            else ("pieces ÷ most pieces in one mix", f"{first.pieces} ÷ {most}"))


def _mixes_told(plan: Plan, kinds: tuple[Mixes, ...], number: int) -> str:
    if len(kinds) > _MOST_KINDS:
        return f"Mix {number} times: there are {len(kinds)} different mixes"
    each = [pieces_told(plan, mixes) for mixes in kinds]
    if number == 1:
        return f"One mix, for {each[0]}"
    if len(kinds) == 1:
        return f"Mix {number} times, each time for {each[0]}"
    times = ["once" if mixes.count == 1 else f"{mixes.count} times" for mixes in kinds]
    return f"Mix {number} times: {', '.join(f'{often} for {pieces}' for often, pieces in zip(times, each))}"


def _mixes_notes(said: Said, limits: _Limits, kinds: tuple[Mixes, ...]) -> tuple[str, ...]:
    notes = [_TOO_SLOW] if limits.most == 0 else []
    if batch.number_of(kinds) > 1:
        notes.append(_governs(said, limits))
    if any(mixes.parts > 1 for mixes in kinds):
        notes.append(_COLD_JOINT)
    if len(kinds) > _MOST_KINDS:
        notes.append(f"There are {len(kinds)} different mixes; the first {_MOST_KINDS} are weighed out here. Fewer molds in "
                     "one bowl are easier to keep apart.")
    return tuple(notes)


def _governs(said: Said, limits: _Limits) -> str:
    """Which limit alone would make the most mixes."""
    free = tuple(replace(mold, at_hand=None) for mold in limits.molds)
    alone = {"bowl": batch.divide(free, limits.bowl, None), "time": batch.divide(free, None, limits.most),
             "molds": batch.divide(limits.molds, None, None)}
    known = {"bowl": limits.bowl is not None, "time": limits.most is not None, "molds": True}
    governs = max((name for name in alone if known[name]), key=lambda name: batch.number_of(alone[name]))
    if governs == "bowl":
        return f"The bowl governs: it takes {show.volume(limits.bowl, said.display)} of mix."
    if governs == "time":
        return (f"The working time governs: in {limits.working.shown} there is time for "
                f"{piece_count(max(1, limits.most))}. Pour one mix out before you add water to the next.")
    return "The molds at hand govern: the next mix waits until they are empty again."


def _time_taken(said: Said, place: str, limits: _Limits, kinds: tuple[Mixes, ...]) -> list[Figure]:
    """How long the fullest mix takes, against its working time."""
    if limits.working is None:
        return []
    told, pieces = show.significant, max(sum(mixes.pieces) for mixes in kinds)
    mixing, pouring = (said.value(f"{place}.batch.{name}") / MINUTE for name in ("mixing_time", "pouring_time"))
    minutes = mixing + pieces * pouring
    return [Figure(
        f"{place}.batch.time_taken", "Until the mix is poured", minutes, "min", show_duration(minutes * MINUTE, said.display),
        formula="mixing + pieces × pouring one", worked=f"{told(minutes, 5, said.display)} min",
        numbers=f"{told(mixing, 8, said.display)} + {pieces} × {told(pouring, 8, said.display)}",
        says=f"A mix is poured {show_duration(minutes * MINUTE, said.display)} after the water goes in; it stays workable "
             f"for about {limits.working.shown}", uses=(limits.working.key,))]


def _weigh_outs(said: Said, place: str, plan: Plan, molds: tuple[Mold, ...], kinds: tuple[Mixes, ...]) -> list[Figure]:
    figures, first = [], 1
    for row, mixes in enumerate(kinds[:_MOST_KINDS]):
        key, which = f"{place}.batch.mix_{row + 1}", _which(kinds, mixes, first)
        volume = _mix_volume(said, key, plan, mixes, molds, which)
        weights = [_weight(said, place, plan, portion, volume, f"{key}.{portion.name}", which) for portion in plan.portions]
        figures += [volume, *weights, *_held_back(said, place, key, weights[-1].value, weights[-1].key, which)]
        first += mixes.count
    return figures


def _which(kinds: tuple[Mixes, ...], mixes: Mixes, first: int) -> str:
    if len(kinds) == 1:
        return "each mix"
    last = first + mixes.count - 1
    return f"mix {first}" if first == last else f"each of mixes {first} {'and' if last == first + 1 else 'to'} {last}"


def _mix_volume(said: Said, key: str, plan: Plan, mixes: Mixes, molds: tuple[Mold, ...], which: str) -> Figure:
    told, volume = show.significant, mixes.volume(molds)
    rooms = " + ".join(f"{pieces} × {told(mold.volume, 8, said.display)}"
                       for pieces, mold in zip(mixes.pieces, plan.filled) if pieces)
    parts = f" ÷ {mixes.parts}" if mixes.parts > 1 else ""
    return Figure(
        f"{key}.volume", f"Volume of {which}", volume, "mL", show.volume(volume, said.display),
        formula="(pieces × cavity) × (1 + allowance)" + (" ÷ parts" if parts else ""),
        numbers=f"({rooms}) × (1 + {told(plan.allowance, 8, said.display)}){parts}",
        says=f"{show.volume(volume, said.display)} of mix in {which}, for {pieces_told(plan, mixes)}",
        uses=tuple(f"{mold.place}.cavity.volume" for mold in plan.filled))


def _weight(said: Said, place: str, plan: Plan, portion: Portion, volume: Figure, key: str, which: str) -> Figure:
    told = show.significant
    whole = f"{place}.{portion.name}" if portion.name in ("powder", "water") else f"{portion.place}.weigh"
    noun = noun_of(portion)
    return weigh_out(
        said, key, f"{label_of(portion)} for {which}", f"{noun} for {which}", portion.grams * volume.value / plan.volume,
        plan.relative, formula=f"all the {noun} × volume of {which} ÷ mix needed",
        numbers=f"{told(portion.grams, 8, said.display)} × {told(volume.value, 8, said.display)} ÷ "
                f"{told(plan.volume, 8, said.display)}", uses=(whole, volume.key, f"{place}.mix_needed"))


def _first_water(said: Said, place: str, plan: Plan, figures: list[Figure]) -> list[Figure]:
    """Of one mix: its water as planned, or that for what was scooped; none once the water has been weighed."""
    if said.value(f"{place}.scooped_water") is not None:
        return []
    followed = {figure.key: figure.value for figure in figures}.get(f"{place}.batch.scooped.water")
    if followed is not None:
        return _held_back(said, place, f"{place}.batch", followed, f"{place}.batch.scooped.water", "")
    return _held_back(said, place, f"{place}.batch", plan.portions[-1].grams, f"{place}.water", "")


def _is_sifted(said: Said, place: str) -> bool:
    """Plaster is sifted into all of its water, unless the maker says how much to hold back."""
    return said.text(f"{place}.mix.powder.kind") == "gypsum" and not said.typed(f"{place}.held_back")


def _held_back(said: Said, place: str, key: str, grams: float, water: str, which: str) -> list[Figure]:
    """The first water, and what waits until the mix shows that it needs it."""
    share, told = said.value(f"{place}.held_back"), show.significant
    if not share or _is_sifted(said, place):
        return []
    constant = practice_or_yours(said, f"{place}.held_back", "Held back", show.percent(share, said.display))
    to, of = (f" for {which}", f"water for {which}") if which else ("", "water")
    whole, part = told(grams, 8, said.display), told(share, 8, said.display)
    first = weigh_out(said, f"{key}.first_water", f"First water{to}", of, grams * (1 - share), None, verb="Start with", whole=grams,
                      formula="water × (1 − share held back)", numbers=f"{whole} × (1 − {part})", uses=(water,),
                      constants=(constant,))
    later = weigh_out(said, f"{key}.held_back", f"Water held back{to}", of, grams * share, None, verb="Hold back", whole=grams,
                      formula="water × share held back", numbers=f"{whole} × {part}", uses=(water,), constants=(constant,))
    return [first, replace(later, says=f"{later.says}, and add it little by little")]
