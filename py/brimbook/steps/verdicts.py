"""What a burn test says in words: what to try next, how it stands to published limits, where the log left the method."""

from typing import Any

from brimbook.candle import burning, standards
from brimbook.quantity import show
from brimbook.quantity.moments import HOUR, show_duration
from brimbook.steps.burn_figures import Test, flames
from brimbook.steps.burn_log import Burned

# By eye a flame is not read more closely than this [mm].
_BY_EYE = 5.0
# A pool at the wall sooner than this, or not there after so many times the rule of thumb: common practice.
_TOO_SOON, _PATIENCE = 1.0, 1.25
# A pool this near to the width it needs has reached it.
_REACHED = 0.95
_TRIM_SLACK = 1.0
# Topping up adds what the wax shrank, at most so many times what was poured.
_TOPPED_UP = 1.25
LAST_WORD = "Read the standard, and have a lab test what you sell: nothing here is a certificate."
_FOR_A_LAB = ("For a lab to try too: no second flame for more than 10 s, no lighting again by itself, steady on a slope of 10°, a "
              "vessel that is whole to the end (EN 15493 and ASTM F2417, second hand).")
_DOWN = "By its weight it is down to the wax that should stay:"
_PUT_OUT = f"{_DOWN} put it out now, and don't light it again. Try anything else with a fresh candle."
_NEVER_AGAIN = f"{_DOWN} don't light it again. Try anything else with a fresh candle."
_SOOT_BY_LAB = "Soot by eye is a hint only: EN 15426 has a lab measure it."


def verdicts(test: Test, down: bool = False) -> tuple[str, ...]:
    """Sentences for the maker, the most useful first [texts].

    test: with its log [test].
    down: has it burned down to the wax that should stay [yes or no]?
    """
    seen = any(each.cycle is not None or each.pool is not None for each in test.cycles)
    if not (seen or _signs_hot(test) or _signs_cold(test)):
        return ()
    stop = (_PUT_OUT if test.cycles[-1].burns else _NEVER_AGAIN,) if down else ()
    return (*stop, *_next(test, down), *_odd(test), *_flame(test), *_after_smoke(test), *_departures(test), _FOR_A_LAB, LAST_WORD)


def _value(test: Test, burned: Burned, name: str) -> Any:
    return test.said.value(f"{burned.path}.{name}")


def _signs_hot(test: Test) -> list[str]:
    """What speaks for a smaller wick, by the cycle in which it was seen."""
    signs = []
    for each in test.cycles:
        wall, soot, looks = (_value(test, each, name) for name in ("wall", "soot", "wick_looks"))
        found = [f"soot ({soot})"] if soot in ("little", "much") else []
        found += ["a mushroomed wick"] if looks == "mushroom" else []
        if each.reached == "wall" and each.hours is not None and each.hours < _TOO_SOON:
            found.append("the pool at the wall in less than an hour")
        if (_value(test, each, "flame") or 0) >= standards.FLAME_EN - _BY_EYE:
            found.append("a tall flame")
        if wall is not None and wall >= standards.SKIN_BLISTER:
            found.append(f"a wall too hot to hold ({show.temperature(wall, test.display)})")
        signs += [f"{sign} in cycle {each.number}" for sign in found]
    return signs


def _signs_cold(test: Test) -> list[str]:
    """What speaks for a larger wick: a drowned one, and a newest pool that had the time and did not get there."""
    signs = [f"a drowned wick in cycle {each.number}" for each in test.cycles if _value(test, each, "wick_looks") == "drowned"]
    newest = _newest_pool(test)
    if newest is None or _reaches(test, newest) or newest.hours < _patience(test):
        return signs
    return [*signs, f"a pool short of the wall after {show_duration(newest.hours * HOUR, test.display)} in cycle {newest.number}"]


def _newest_pool(test: Test) -> Burned | None:
    """The newest cycle in which the pool was looked at."""
    looked = [each for each in test.cycles if each.hours is not None and (
        each.reached != "unseen" or each.pool is not None and test.needed is not None)]
    return looked[-1] if looked else None


def _reaches(test: Test, burned: Burned) -> bool:
    if burned.reached != "unseen":
        return burned.reached == "wall"
    return burned.pool >= _REACHED * test.needed


def _patience(test: Test) -> float:
    """So long a pool may take before it is short: the rule of thumb and a quarter, at most a whole burn [h]."""
    if test.needed is None:
        return standards.BURN
    return min(burning.hours_by_rule(test.needed) * _PATIENCE, standards.BURN)


def _next(test: Test, down: bool) -> list[str]:
    """What to try next, in words."""
    hot, cold = _signs_hot(test), _signs_cold(test)
    told = f"Seen: {_listed([*hot, *cold])}." if hot or cold else ""
    if hot and cold:
        return [f"{told} They point both ways: trim the wick to {_trim(test)}, and burn it once more before you change it."]
    if hot:
        fewer = ", or one wick less, or farther from the wall" if test.wicks > 1 else ""
        return [f"{told} Trim the wick to {_trim(test)} and try again; if it comes back, a wick one size down{fewer} (common practice, "
                "no source)."]
    if cold:
        drowned = ", or less fragrance" if any("drowned" in sign for sign in cold) else ""
        return [f"{told} Try a wick one size up, or one wick more{drowned} (common practice, no source)."]
    return _unclear(test, down)


def _unclear(test: Test, down: bool) -> list[str]:
    newest = _newest_pool(test)
    if down:
        return ["The pool reached the wall, and nothing calls for another wick."] if newest and _reaches(test, newest) else []
    if newest is None:
        return ["Look at the pool before you put it out: whether it reaches the wall tells if the wick is large enough."]
    if not _reaches(test, newest):
        return [f"The pool is short of the wall, but cycle {newest.number} was short too: burn it for up to "
                f"{show_duration(_patience(test) * HOUR, test.display)} before you judge the wick."]
    return ["The pool reached the wall, and nothing calls for another wick so far: go on to the last cycle, where a vessel gets hottest."]


def _listed(parts: list[str]) -> str:
    """The newest few, as one would say them."""
    few = parts[-6:]
    return few[0] if len(few) == 1 else f"{', '.join(few[:-1])} and {few[-1]}"


def _trim(test: Test) -> str:
    return f"{show.length(6.0, test.display)}" if test.display.length == "mm" else "1/4 in"


def _odd(test: Test) -> list[str]:
    """What can't be: more burned than there was, more wax than fits, a pool wider than its vessel."""
    first, newest = test.weighed or (0.0, 0.0)
    too_much = test.filled is not None and first - newest > test.filled.total
    return [*(["More has burned than the vessel holds by its fill: check the weights."] if too_much else []), *_held(test),
            *_wide(test)]


def _held(test: Test) -> list[str]:
    """More wax by the vessel's own weight than it holds: even a topped-up one holds less."""
    vessel, first = test.said.value(f"{test.at}.vessel_weight"), next((each.before for each in test.cycles if each.before is not None), None)
    if None in (vessel, first) or test.filled is None or first - vessel <= test.filled.total * _TOPPED_UP:
        return []
    by_weight, by_fill = (show.mass(grams, test.display) for grams in (first - vessel, test.filled.total))
    return [f"By its weights the vessel held {by_weight} of wax, by its fill {by_fill}: check the empty and the first weight."]


def _wide(test: Test) -> list[str]:
    """A pool that is wide enough for the whole surface, and yet was not seen at the wall."""
    odd = [each.number for each in test.cycles if each.reached == "no" and each.pool is not None and test.needed is not None
           and each.pool > test.needed]
    if not odd:
        return []
    told = _cycles(odd)
    return [f"{told[0].upper()}{told[1:]}: a pool that wide would be at the wall if its wick stood where it should. Check its width, "
            "and where the wick stands."]


def _flame(test: Test) -> list[str]:
    seen = flames(test)
    if not seen:
        return []
    flame = max(seen)
    under = "is under" if standards.passes_flame_astm(flame) else "is not under"
    within = "within" if standards.passes_flame_en(flame) else "above"
    close = " By eye that is too close to call." if min(
        abs(standards.below_flame_astm(flame)), abs(standards.below_flame_en(flame))) < _BY_EYE else ""
    astm, en = _limit(test, "3 in", standards.FLAME_ASTM), _limit(test, "75 mm", standards.FLAME_EN)
    return [f"The tallest flame, {show.length(flame, test.display)}, {under} the {astm} of ASTM F2417 and {within} the {en} of "
            f"EN 15493, 2007 text; both limits are second hand.{close}"]


def _limit(test: Test, printed: str, limit: float) -> str:
    """A limit as it is printed, and in the maker's unit where that is another."""
    own = show.length(limit, test.display)
    return printed if own == printed else f"{printed} ({own})"


def _after_smoke(test: Test) -> list[str]:
    seen = [seconds for each in test.cycles if (seconds := _value(test, each, "after_smoke")) is not None]
    if not seen:
        return []
    longest, mean = max(seen), sum(seen) / len(seen)
    old = "within" if standards.below_after_smoke(longest, 2007) >= 0 else "longer than"
    new = "within" if standards.below_after_smoke(mean, 2019) >= 0 else "longer than"
    return [f"It smoked on for up to {show_duration(longest, test.display)}: {old} the 20 s of EN 15493, 2007 text; the average, "
            f"{show_duration(mean, test.display)}, is {new} the 30 s of its 2019 edition (second hand)."]


def _departures(test: Test) -> list[str]:
    """Where the log leaves the method that is quoted for ASTM F2417."""
    said, display, found = test.said, test.display, []
    long = [each.number for each in test.cycles if each.hours is not None and standards.over_burn(each.hours) > 0.25]
    soon = [each.number for each in test.cycles if each.after_last is not None and standards.short_of_cooling(each.after_last) > 0]
    untrimmed = [each.number for each in test.cycles
                 if (_value(test, each, "trimmed") or 0) > standards.TRIM + _TRIM_SLACK]
    room = said.value(f"{test.at}.room")
    found += [f"{_cycles(long)} burned for more than 4 h at a time"] if long else []
    found += [f"{_cycles(soon)} began less than 3 h after the one before"] if soon else []
    found += [f"{_cycles(untrimmed)} began with a wick longer than {_trim(test)}"] if untrimmed else []
    if room is not None and not standards.COLDEST_ROOM <= room <= standards.WARMEST_ROOM:
        low, high = (show.temperature(each, display) for each in (standards.COLDEST_ROOM, standards.WARMEST_ROOM))
        found.append(f"the room is not between {low} and {high}")
    soot = [_SOOT_BY_LAB] if any(_value(test, each, "soot") not in (None, "none") for each in test.cycles) else []
    if not found:
        return soot
    told = _listed(found)
    return [f"{told[0].upper()}{told[1:]}: the method that is quoted for ASTM F2417 does it otherwise (second hand).", *soot]


def _cycles(numbers: list[int]) -> str:
    return f"cycle {numbers[0]}" if len(numbers) == 1 else f"cycles {_listed([str(number) for number in numbers])}"
