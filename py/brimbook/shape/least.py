"""The step that makes the largest of several falling things as small as can be, within limits: a small linear program."""

_EVEN, _MOST_TURNS = 1e-10, 80


def least_step(rising: list[tuple[float, dict[int, float]]], limits: list[tuple[float, dict[int, float]]],
               wide: int, far: float) -> list[float] | None:
    """The step, none when the limits can't be kept [unit of far].

    rising: each as what it is before the step and how fast it grows along each way [any].
    limits: each as how much is left of it and how fast a step uses it up along each way [any].
    wide: number of ways [count].
    far: the step goes no farther than this along each way [unit of far].

    Source: the simplex method of linear programming on the dual program, whose first corner is known at once.

    >>> least_step([(1.0, {0: 1.0}), (0.0, {0: -1.0})], [], 1, 2.0)
    [-0.5]
    """
    highest = max(range(len(rising)), key=lambda place: rising[place][0])
    columns = [_column(slopes, wide) for _, slopes in (*rising, *limits)]
    base = columns[highest]
    # Columns: rising, limits, then the two ends of each way. Rows: each way, then the sum of the shares of what rises.
    costs = [-value for value, _ in rising] + [left for left, _ in limits] + [far] * (2 * wide)
    rows, held, lows = [], [], len(columns) + wide
    for way in range(wide):
        sign = 1.0 if base[way] <= 0 else -1.0
        row = [sign * (column[way] - base[way]) for column in columns[:len(rising)]]
        row += [sign * column[way] for column in columns[len(rising):]] + [0.0] * (2 * wide)
        row[len(columns) + way], row[lows + way] = sign, -sign
        rows.append([*row, abs(base[way])])
        held.append((len(columns) if sign > 0 else lows) + way)
    rows.append([1.0] * len(rising) + [0.0] * (len(limits) + 2 * wide) + [1.0])
    held.append(highest)
    spare = costs
    for row, place in zip(rows, held):
        cost = costs[place]
        spare = [one - cost * other for one, other in zip(spare, row)]
    if not _turned(rows, spare):
        return None
    return [far - spare[len(columns) + way] for way in range(wide)]


def _column(slopes: dict[int, float], wide: int) -> list[float]:
    column = [0.0] * wide
    for way, slope in slopes.items():
        column[way] = slope
    return column


def _turned(rows: list[list[float]], spare: list[float]) -> bool:
    """Whether the best corner was come to, or nearly; rows and spare are turned in place."""
    for _ in range(_MOST_TURNS):
        least = min(spare)
        if least >= -_EVEN:
            return True
        entering = spare.index(least)
        place, ratio = -1, 0.0
        for at, row in enumerate(rows):
            if row[entering] > _EVEN and (place < 0 or row[-1] < ratio * row[entering]):
                place, ratio = at, row[-1] / row[entering]
        if place < 0:
            return False
        pivot = rows[place][entering]
        turned = rows[place] = [value / pivot for value in rows[place]]
        for at, row in enumerate(rows):
            factor = row[entering]
            if at != place and factor:
                rows[at] = [one - factor * other for one, other in zip(row, turned)]
        factor = spare[entering]
        spare[:] = [one - factor * other for one, other in zip(spare, turned)]
    return True
