"""Which triangles of a lathe belong to which line of its profile."""


def parts(profile, facets=48):
    """For each line of the profile the numbers of its triangles, as models.lathe lays them."""
    found, begin = [], 0
    for one, other in zip(profile, [*profile[1:], profile[0]]):
        count = facets * ((one[0] != 0) + (other[0] != 0))
        found.append(range(begin, begin + count))
        begin += count
    return found


def of_lines(profile, lines, facets=48):
    """The triangles of several lines of the profile."""
    return [number for line in lines for number in parts(profile, facets)[line]]


def run(generator):
    """What a reading function returns, and the shares of the work that it told on the way."""
    shares = []
    while True:
        try:
            share, doing = next(generator)
        except StopIteration as done:
            return done.value, shares
        assert doing and isinstance(doing, str)
        shares.append(share)
