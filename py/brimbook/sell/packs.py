"""What to buy of packs in several sizes so that it is enough and costs the least: exactly, in whole numbers."""

import heapq
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import reduce
from typing import NamedTuple

from brimbook.quantity.error import QuantityError

MOST_PACKS = 10_000
# Sizes are counted in billionths of their unit, which an ounce and a pound are whole numbers of; prices in millionths.
_SIZE_GRAIN, _PRICE_GRAIN = 10**9, 10**6
# Sums of what vessels take are off in their last digits: so little too much does not call for one more pack.
_HAIR = 1e-9
_FEW = 5
# After so many selections, only what would cost less is still sought.
_MANY = 50_000
# And after so many the search is given up rather than let the page wait.
_TOO_LONG = 200_000


@dataclass(frozen=True)
class Purchase:
    """So many of each pack, in the order in which they were given; what they cost and hold, and what is more than was needed.

    Cost in the currency of the prices, bought and over in the unit of the need.
    """

    counts: tuple[int, ...]
    cost: float
    bought: float
    over: float


@dataclass(frozen=True)
class _Pack:
    size: int
    price: int
    row: int


class _State(NamedTuple):
    """Some packs, none of them of the best kind. excess and spare tell cost and number beyond what as much of the best kind takes."""

    size: int
    excess: int
    spare: int
    # Counts from the largest pack down, each below zero: of two that are alike else, the one with larger packs is the lesser.
    order: tuple[int, ...]


def fewest_money(need: float, packs: Sequence[tuple[float, float]]) -> Purchase:
    """The packs that hold at least what is needed and cost the least together [purchase].

    need: how much, in the unit of the sizes [any unit].
    packs: size and price of each kind; as many of it can be had as one likes [any unit, currency].

    Of those that cost the same, the one with the least left over is taken, then the one with the fewest packs,
    then the one with the larger packs.

    Why it is exact. Call the kind with the lowest price for its size (the largest of them) the best. Any answer
    is some packs of other kinds, and packs of the best kind until there is enough; so it is enough to look at
    the others, closed with the best. Three things are left out, and none can be an answer that is better:
    a kind in whose place enough packs of one other kind cost less; a selection that costs more than the best
    answer found even if the rest came at the best kind's price for its size, in parts of packs; and a selection
    whose size differs by whole packs of the best kind from a smaller one's, when that one with these packs added
    costs no more, is of no more packs, and so on. All is worked out in whole numbers. Once 50000 selections were
    looked at, as where packs of odd sizes cost nothing, only what costs less is still sought: the cost stays the
    least, while another answer of the same cost may leave less over.

    Source: branch and bound for whole-number covering, with the group of sizes modulo the best pack.

    Raises QuantityError with a sentence where the answer is of more than 10000 packs, and where more than 200000
    selections would have to be looked at: prices then follow odd sizes to many decimals, as no price list does.

    >>> fewest_money(1200, [(1000, 9.0), (500, 5.0), (250, 3.0)])
    Purchase(counts=(1, 0, 1), cost=12.0, bought=1250.0, over=50.0)
    >>> fewest_money(999.9999999, [(1000, 9.0), (500, 4.5)]).counts
    (1, 0)
    """
    if not all(math.isfinite(value) and value >= 0 for value in (need, *(value for pack in packs for value in pack))):
        raise ValueError("needs, sizes and prices are numbers from 0 up")
    wanted = math.ceil(need * (1 - _HAIR) * _SIZE_GRAIN)
    kinds = _kinds(packs)
    if wanted <= 0 or not kinds:
        return Purchase((0,) * len(packs), 0.0, 0.0, 0.0)
    if wanted > MOST_PACKS * kinds[0].size:
        raise QuantityError(_TOO_MANY)
    counts = [0] * len(packs)
    for kind, count in zip(kinds, _least(wanted, kinds)):
        counts[kind.row] = count
    if sum(counts) > MOST_PACKS:
        raise QuantityError(_TOO_MANY)
    bought, cost = (math.fsum(count * pack[part] for count, pack in zip(counts, packs)) for part in (0, 1))
    return Purchase(tuple(counts), cost, bought, max(bought - need, 0.0))


_TOO_MANY = f"This would take more than {MOST_PACKS} packs. Check the size of the pack, or add a larger one."
_TOO_ALIKE = "These packs cost so nearly the same for their size that the cheapest can't be told. Leave some of them out."


def _kinds(packs: Sequence[tuple[float, float]]) -> list[_Pack]:
    """The packs worth looking at, the largest first, in whole numbers without a common divisor of the prices."""
    found: list[_Pack] = []
    rows = sorted(((round(size * _SIZE_GRAIN), round(price * _PRICE_GRAIN), row) for row, (size, price) in enumerate(packs)),
                  key=lambda pack: (-pack[0], pack[1], pack[2]))
    for size, price, row in rows:
        # Of two of one size the dearer is never bought.
        if size > 0 and (not found or found[-1].size != size):
            found.append(_Pack(size, price, row))
    found = [pack for pack in found if not any(-(-pack.size // other.size) * other.price < pack.price for other in found)]
    grain = reduce(math.gcd, (kind.price for kind in found), 0) or 1
    return [_Pack(kind.size, kind.price // grain, kind.row) for kind in found]


def _least(wanted: int, kinds: list[_Pack]) -> list[int]:
    """How many of each kind; kinds with the largest first."""
    # By cross-multiplying: price ÷ size is compared in whole numbers. The first of the least is the largest.
    best = reduce(lambda one, other: other if other.price * one.size < one.price * other.size else one, kinds)
    number = kinds.index(best)
    search = _Search(wanted, kinds, number)
    states = [_State(0, 0, 0, (0,) * len(kinds))]
    search.close(states[0])
    # The dearest for their size first: of them the fewest are worth having, and so the selections stay few for long.
    others = sorted((row for row in range(len(kinds)) if row != number),
                    key=lambda row: (best.price * kinds[row].size - kinds[row].price * best.size, row))
    # At first only a few are followed, for a good answer to start with: it cuts the rest short.
    for most in (_FEW, None):
        kept = states
        for row in others:
            kept = sorted(search.with_more(kept, row), key=lambda state: state.excess)[:most]
    return search.counts()


class _Search:
    """The best answer so far, and what is still worth looking at."""

    def __init__(self, wanted: int, kinds: list[_Pack], number: int) -> None:
        self.wanted, self.kinds, self.number, self.best = wanted, kinds, number, kinds[number]
        # Cost, size, packs and order of the best answer.
        self.found: tuple[int, int, int, tuple[int, ...]] | None = None
        self.seen = 0

    def close(self, state: _State) -> None:
        """Add the best kind until there is enough, and remember the answer if it is better [nothing].

        state: some packs of the other kinds [state].
        """
        best = self.best
        more = max(-((state.size - self.wanted) // best.size), 0)
        size = state.size + more * best.size
        cost = (state.excess + best.price * state.size) // best.size + more * best.price
        packs = (state.spare + state.size) // best.size + more
        order = tuple(count - (more if row == self.number else 0) for row, count in enumerate(state.order))
        answer = (cost, size, packs, order)
        if self.found is None or answer < self.found:
            self.found = answer

    def hopeless(self, state: _State) -> bool:
        """Can nothing that begins with these packs be as good as the answer known [yes or no]?

        state: some packs of the other kinds [state].
        """
        best, (cost, size, packs, _) = self.best, self.found
        # What it has cost beyond the best price, and all that is needed at the best price, in parts of packs.
        least = -(-(state.excess + best.price * max(self.wanted, state.size)) // best.size)
        if self.seen > _MANY:
            return least >= cost
        if least != cost or size != self.wanted:
            return least > cost
        # Only fewer packs could still be better.
        rest = self.wanted - state.size
        return (state.spare + state.size) // best.size - (-rest // self.kinds[0].size) > packs

    def with_more(self, states: list[_State], row: int) -> Iterator[_State]:
        """These selections with any number of one more kind added, without those that can't be better [states].

        states: selections of the kinds before [states].
        row: which kind is added [count].
        """
        kind, best = self.kinds[row], self.best
        excess, spare = kind.price * best.size - best.price * kind.size, best.size - kind.size
        heap, known = list(states), {}
        heapq.heapify(heap)
        while heap:
            state = heapq.heappop(heap)
            told, rest = (state.excess, state.spare, self._order_of(state)), state.size % best.size
            if self.hopeless(state) or (rest in known and known[rest] <= told):
                continue
            known[rest], self.seen = told, self.seen + 1
            if self.seen > _TOO_LONG:
                raise QuantityError(_TOO_ALIKE)
            self.close(state)
            yield state
            if state.size < self.wanted:
                order = (*state.order[:row], state.order[row] - 1, *state.order[row + 1:])
                heapq.heappush(heap, _State(state.size + kind.size, state.excess + excess, state.spare + spare, order))

    def _order_of(self, state: _State) -> tuple[int, ...]:
        """Its order, as if the best kind had been taken away for its size: so selections that differ by that compare."""
        whole = state.size // self.best.size
        return tuple(count + (whole if row == self.number else 0) for row, count in enumerate(state.order))

    def counts(self) -> list[int]:
        """How many of each kind the best answer has [counts]."""
        return [-count for count in self.found[3]]
