"""When a cast was poured: as typed at the clock, else as its newest pour was logged."""

from brimbook.record.said import Said


def poured_at(said: Said, place: str) -> float | None:
    """Moment of the pour; nothing while it is not known or its entry is faulty [s since 2000].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    path = f"{place}.curing.poured_at"
    return said.value(path) if said.typed(path) else logged_at(said, place)


def logged_at(said: Said, place: str) -> float | None:
    """Moment of the newest pour in the log of the bowl that a cast is poured from; nothing where none is told [s since 2000].

    said: the record as understood [said].
    place: path of the cast [text].
    """
    log = "casts.0.pours" if said.value(f"{place}.bowl") == "first" else f"{place}.pours"
    moments = [said.value(f"{log}.{row}.when") for row in range(said.count(log))]
    return max((moment for moment in moments if moment is not None), default=None)
