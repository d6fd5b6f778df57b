"""When the scoop came out different, or there is not enough: how the other ingredients follow, and what it fills."""

import math
from dataclasses import replace

from brimbook.cast import batch
from brimbook.cast.batch import Mixes, Mold
from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.plan import Plan, Portion
from brimbook.steps.weighing import weigh_out

# A scoop so many times off its plan is a slip of the pen rather than of the hand.
FARTHEST = 3.0
_FAR = "What you weighed is far from the plan. Check its digits and its unit, and the pieces that are planned."
_NONE_PLANNED = "None of it is planned. Type how much of it belongs in the mix, or leave this empty."


def piece_count(pieces: int) -> str:
    """A number of pieces in words [text].

    pieces: how many [count].

    >>> piece_count(1), piece_count(4)
    ('1 piece', '4 pieces')
    """
    return "1 piece" if pieces == 1 else f"{pieces} pieces"


def pieces_told(plan: Plan, mixes: Mixes) -> str:
    """What one of several mixes fills, in words [text].

    plan: what the bowl is to hold [plan].
    mixes: of one kind [mixes].
    """
    if mixes.parts > 1:
        return f"1 of the {mixes.parts} parts of a piece"
    return _of_molds(plan, mixes.pieces)


def _of_molds(plan: Plan, pieces: tuple[int, ...]) -> str:
    if len(plan.filled) == 1:
        return piece_count(pieces[0])
    each = [f"{number} of mold {int(mold.place.split('.')[1]) + 1}" for number, mold in zip(pieces, plan.filled) if number]
    return " and ".join(each) or piece_count(0)


def scooped(said: Said, place: str, plan: Plan, kinds: tuple[Mixes, ...]) -> list[Figure]:
    """What to do when something weighed came out different; none while nothing is typed [figures].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    plan: what the bowl is to hold [plan].
    kinds: the mixes that it is split into; what was weighed is compared with the first [mixes].
    """
    molds = _with_allowance(plan)
    share = kinds[0].volume(molds) / plan.volume
    planned = {portion.name: portion.grams * share for portion in plan.portions}
    weighed = _weighed(said, place, plan, planned)
    if not weighed:
        return []
    factor = _factor(said, place, plan, planned, weighed)
    several = () if batch.number_of(kinds) == 1 else ("What you weighed is compared with the first of the mixes.",)
    follow = [_follow(said, place, portion, planned[portion.name], weighed, factor) for portion in plan.portions]
    mix = _mix_of_it(said, place, plan, share, factor)
    far = (_FAR,) if not 1 / FARTHEST <= factor.value <= FARTHEST else ()
    spare = _spare(said, place, plan, kinds[0], mix)
    return [replace(factor, notes=(*far, *several)), *(figure for figure in follow if figure is not None), mix, spare]


def _with_allowance(plan: Plan) -> tuple[Mold, ...]:
    return tuple(Mold(mold.pieces, mold.volume * (1 + plan.allowance)) for mold in plan.filled)


def _weighed(said: Said, place: str, plan: Plan, planned: dict[str, float]) -> dict[str, float]:
    """What some of the ingredients really weighed, by their names; faults where none was planned."""
    found = {}
    for portion in plan.portions:
        path = {"powder": f"{place}.scooped", "water": f"{place}.scooped_water"}.get(portion.name, f"{portion.place}.scooped")
        grams = said.value(path)
        if grams is not None and planned[portion.name] <= 0:
            said.fault(path, _NONE_PLANNED)
        elif grams is not None:
            found[portion.name] = grams
    return found


def label_of(portion: Portion) -> str:
    """What a portion is called at the bowl: powder and water by these words, others by their own names [text].

    portion: of the plan [portion].
    """
    return portion.name.capitalize() if portion.name in ("powder", "water") else portion.label


def noun_of(portion: Portion) -> str:
    """The same in a sentence [text].

    portion: of the plan [portion].
    """
    return label_of(portion).lower()


def _factor(said: Said, place: str, plan: Plan, planned: dict[str, float], weighed: dict[str, float]) -> Figure:
    """How large the batch becomes against its plan."""
    told, value, key = show.significant, batch.batch_factor(planned, weighed), f"{place}.batch.scooped.factor"
    portions = {portion.name: portion for portion in plan.portions}
    ruler = max(weighed, key=lambda name: weighed[name] / planned[name])
    share = weighed[ruler] / planned[ruler]
    shown = show.percent(value, said.display)
    if value > share:
        return Figure(key, "Batch against its plan", value, "–", shown, formula="as planned: water that is short is added",
                      numbers="1 × 100", says="The batch stays as planned")
    says = f"The {noun_of(portions[ruler])} is {shown} of its plan"
    says += ": nothing can be taken out of a bowl, so the rest is filled up to match" if len(weighed) > 1 else \
        ", and the rest follows"
    return Figure(key, "Batch against its plan", value, "–", shown, formula=f"{noun_of(portions[ruler])} weighed ÷ its plan",
                  numbers=f"{told(weighed[ruler], 8, said.display)} ÷ {told(planned[ruler], 8, said.display)} × 100",
                  says=says, worked=f"{told(value * 100, 5, said.display)} %")


def _follow(said: Said, place: str, portion: Portion, planned: float, weighed: dict[str, float],
            factor: Figure) -> Figure | None:
    """What one ingredient must come to, or what is added to it."""
    told, noun, target = show.significant, noun_of(portion), planned * factor.value
    key = f"{place}.batch.scooped.{portion.name}"
    product = f"{told(planned, 8, said.display)} × {told(factor.value, 8, said.display)}"
    if portion.name not in weighed:
        return weigh_out(said, key, f"{label_of(portion)} for what you weighed", noun, target, None, numbers=product,
                         formula=f"{noun} planned × batch against its plan", uses=(factor.key,))
    lacking = target - weighed[portion.name]
    if lacking < said.display.readability / 2:
        return None
    return weigh_out(said, key, f"{label_of(portion)} to add", f"{noun} to what is there", lacking, None, verb="Add", whole=target,
                     formula=f"{noun} planned × batch against its plan − {noun} weighed",
                     numbers=f"{product} − {told(weighed[portion.name], 8, said.display)}", uses=(factor.key,))


def _mix_of_it(said: Said, place: str, plan: Plan, share: float, factor: Figure) -> Figure:
    told, planned = show.significant, plan.volume * share
    made = planned * factor.value
    return Figure(
        f"{place}.batch.scooped.mix", "Mix from what you weighed", made, "mL", show.volume(made, said.display),
        formula="mix planned × batch against its plan",
        numbers=f"{told(planned, 8, said.display)} × {told(factor.value, 8, said.display)}",
        uses=(f"{place}.mix_needed", factor.key), notes=_overflow(said, place, planned, made))


def _overflow(said: Said, place: str, planned: float, made: float) -> tuple[str, ...]:
    room = said.value(f"{place}.batch.bowl")
    if room is None or made <= max(room, planned) * (1 + 1e-9):
        return ()
    return (f"What you weighed makes {show.volume(made, said.display)} of mix, and your bowl takes "
            f"{show.volume(room, said.display)}: take a larger one.",)


def _spare(said: Said, place: str, plan: Plan, mixes: Mixes, made: Figure) -> Figure:
    rooms = tuple(Mold(mold.pieces, mold.volume) for mold in plan.filled)
    bare = mixes.volume(rooms)
    spare = made.value - bare
    plus_minus = math.hypot(bare * plan.volume_relative, made.value * plan.density_relative)
    told, shown = show.significant, show.volume(abs(spare), said.display)
    shown = shown if spare >= 0 else f"{shown} short"
    return Figure(
        f"{place}.batch.scooped.spare", "Left when the mold is full", spare, "mL", shown,
        formula="mix from what you weighed − room in the molds", worked=f"{told(spare, 4, said.display)} mL",
        numbers=f"{told(made.value, 8, said.display)} − {told(bare, 8, said.display)}",
        says=_spare_told(said, plan, mixes, made.value, bare, plus_minus), plus_minus=plus_minus,
        plus_minus_shown=f"± {show.plus_minus(plus_minus, said.display)} mL", uses=(made.key,))


def _spare_told(said: Said, plan: Plan, mixes: Mixes, made: float, bare: float, plus_minus: float) -> str:
    spare, several = made - bare, sum(mixes.pieces) > 1
    them = "its part of the mold" if mixes.parts > 1 else "the molds" if several else "the mold"
    if abs(spare) <= plus_minus:
        return f"It just fills {them}, with nothing for the bowl and the tools: scoop a little more"
    if spare > 0:
        return f"It fills {them}: {show.volume(spare, said.display)} over, " \
               f"{show.percent(spare / bare, said.display)} for the bowl and the tools"
    more = show.mass_at_least(-spare / plan.per_gram, said.display)
    rest = "" if len(plan.portions) == 2 else ", and the rest to match"
    says = f"It does not fill {them}: short by {show.volume(-spare, said.display)}. Scoop at least {more} more powder{rest}"
    return f"{says}. As it is, it makes {_filled(plan, mixes, made)}" if several else says


def _filled(plan: Plan, mixes: Mixes, made: float) -> str:
    """The pieces that a mix too small for all of its own still makes, allowance and all."""
    rows = [row for row, pieces in enumerate(mixes.pieces) if pieces]
    molds = tuple(Mold(mixes.pieces[row], plan.filled[row].volume * (1 + plan.allowance)) for row in rows)
    filled = dict(zip(rows, batch.pieces_made(molds, made)))
    return _of_molds(plan, tuple(filled.get(row, 0) for row in range(len(mixes.pieces))))


def left_over_stock(said: Said, place: str, plan: Plan) -> list[Figure]:
    """How many pieces what is left of an ingredient makes, and what to weigh for them where it is short [figures].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    plan: what the bowl is to hold [plan].
    """
    left = {}
    for portion in plan.portions[:-1]:
        grams = said.value(f"{place}.left" if portion.name == "powder" else f"{portion.place}.left")
        if grams is not None and portion.grams > 0:
            left[portion] = grams
    if not left:
        return []
    least = min(left, key=lambda portion: left[portion] / portion.grams)
    others = [portion for portion in left if portion is not least and left[portion] < portion.grams * (1 - 1e-9)]
    notes = tuple(f"Short of {noun_of(each)} too: {show.mass(left[each], said.display)} of the "
                  f"{show.mass(each.grams, said.display)}." for each in others)
    made = batch.pieces_made(_with_allowance(plan), plan.volume * left[least] / least.grams)
    more = _with_less_over(said, plan, left[least] / least.grams, sum(made))
    figure = replace(_left_pieces(said, place, plan, least, left[least], made), notes=(*more, *notes))
    return [figure, *_for_these(said, place, plan, made, figure)] if _is_short(least, left[least]) else [figure]


def _with_less_over(said: Said, plan: Plan, share: float, made: int) -> tuple[str, ...]:
    """Pieces that what is left would still fill, up to those planned, if less is allowed for."""
    rooms = tuple(Mold(mold.pieces, mold.volume) for mold in plan.filled)
    filled = tuple(min(more, mold.pieces) for more, mold in zip(batch.pieces_made(rooms, plan.volume * share), plan.filled))
    if sum(filled) <= made or share >= 1:
        return ()
    bare = math.fsum(number * mold.volume for number, mold in zip(filled, rooms))
    over = plan.volume * share / bare - 1
    return (f"It would fill {_of_molds(plan, filled)} with {show.percent(over, said.display)} for the bowl and the tools, instead of "
            f"{show.percent(plan.allowance, said.display)}.",)


def _is_short(portion: Portion, left: float) -> bool:
    return left < portion.grams * (1 - 1e-9)


def _left_pieces(said: Said, place: str, plan: Plan, portion: Portion, left: float, made: tuple[int, ...]) -> Figure:
    told, noun, total = show.significant, noun_of(portion), sum(made)
    pieces = left / portion.grams * plan.pieces
    grams = show.mass(left, said.display)
    if _is_short(portion, left):
        shown = f"{total} of {piece_count(plan.pieces)}"
        says = f"Short of {noun}: {grams} of the {show.mass(portion.grams, said.display)}. What there is makes {shown}"
        says += f", {_of_molds(plan, made)}" if total and len(plan.filled) > 1 else ""
        says += "" if total else f": enough for {show.percent(_floored(pieces), said.display, 0)} of one"
    else:
        shown = piece_count(total)
        says = f"{grams} of {noun} makes {shown}; {plan.pieces} {'is' if plan.pieces == 1 else 'are'} planned"
    return Figure(
        f"{place}.batch.left_pieces", "From what is left", pieces, "pieces", shown,
        formula=f"{noun} left ÷ {noun} needed × pieces, whole pieces of it", worked=told(pieces, 4, said.display),
        numbers=f"{told(left, 8, said.display)} ÷ {told(portion.grams, 8, said.display)} × {plan.pieces}", says=says,
        uses=(f"{place}.powder" if portion.name == "powder" else f"{portion.place}.weigh",))


def _floored(share: float) -> float:
    """Almost a piece is never called all of one."""
    return math.floor(share * 100 + 1e-9) / 100


def _for_these(said: Said, place: str, plan: Plan, made: tuple[int, ...], pieces: Figure) -> list[Figure]:
    """What to weigh for the whole pieces that can be made."""
    volume = math.fsum(number * mold.volume for number, mold in zip(made, _with_allowance(plan)))
    if volume <= 0:
        return []
    told, share, figures = show.significant, volume / plan.volume, []
    for portion in plan.portions:
        noun = noun_of(portion)
        figures.append(weigh_out(
            said, f"{place}.batch.left.{portion.name}", f"{label_of(portion)} for these", f"{noun} for {_of_molds(plan, made)}",
            portion.grams * share, plan.relative, formula=f"{noun} needed × mix for these pieces ÷ mix needed",
            numbers=f"{told(portion.grams, 8, said.display)} × {told(volume, 8, said.display)} ÷ "
                    f"{told(plan.volume, 8, said.display)}", uses=(pieces.key, f"{place}.mix_needed")))
    return figures
