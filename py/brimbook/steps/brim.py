"""What is left free above the wax, below the brim."""

from brimbook.quantity import show
from brimbook.record.said import Said

# So much is left free above the wax, and less than the other is told of. Common practice, no source [mm].
_FREE, _LEAST = 10.0, 3.0


def brim_notes(said: Said, below: float) -> list[str]:
    """What to know where the wax comes close to the brim [texts].

    said: the record as understood [said].
    below: how far below the brim it ends [mm].
    """
    if below >= _LEAST:
        return []
    where = "at the brim" if below <= 0 else f"only {show.length(below, said.display)} below the brim"
    return [f"The wax ends {where}: hot, it runs over easily. Type how far below the brim it is to end; {show.length(_FREE, said.display)} or so is "
            "common practice, no source."]
