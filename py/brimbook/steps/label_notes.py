"""What the maker should know of a label, and what it can't know."""

from brimbook.record.said import Said
from brimbook.steps.label_net import Net
from brimbook.steps.label_panel import Letters
from brimbook.steps.label_scent import Allergens

_LAW = ("What the law where you sell asks for beyond this, such as a full address, a registration, another language or a deposit, is not "
        "known here: ask there.")
_WORDS = ("The cautions are in words of our own. ASTM F2058 and EN 15494, which are the usual ones, have words, sizes and symbols of their "
          "own: take them from the standard.")
_TESTED = "Whether the candle was tested in this vessel is not known here, and a label does not make up for it."
_NO_CAUTIONS = "Without cautions it is no label for a candle, unless they stand elsewhere on it."
_RECORDS = ("The mark ℮ says that you pack by the average system, with its checks and records. Whether you keep them is not known here: your "
            "authority for weights and measures comes first.")
_NAMELESS = "A sensitizer that the label must name has no name yet: type it on the Scent card."
_NO_MAKER = "A label names its maker and place: type them."
_NO_LOT = "Without a lot it can't be told which batch a candle came from: log the batch, or type its lot."
_LOW = "Stick it so that the net weight comes within the lowest 30 % of the side that it is seen on, level with its foot."
_BY_LABEL = ("Letters go by the whole side that the label is seen on, not by the label: as none is typed, it is taken to be as large as the "
             "label.")
_UNCHECKED = "Nothing here checks the net weight that you typed: weigh a finished candle."
_PLAIN = ("A label of a vessel without wax. Cement, plaster, pigment and sealer are not made for food or drink unless their makers say so "
          "and it was tested, and a damp or unsealed wall can harm plants: say so on the label if it could be used that way.")


def notes_of(said: Said, place: str, net: Net, letters: Letters, allergens: Allergens, lot: str) -> tuple[str, ...]:
    """What stands below a label, what matters most first [texts].

    said: the record as understood [said].
    place: path of the label [text].
    net: weight that it tells [net].
    letters: how high that is printed [letters].
    allergens: that it names [allergens].
    lot: that it tells [text].
    """
    found = _of_candle(said, place, net, letters, allergens) if net.grams else [_PLAIN]
    if not said.typed(f"{place}.maker"):
        found.append(_NO_MAKER)
    if not lot:
        found.append(_NO_LOT)
    return (*found, _LAW)


def _of_candle(said: Said, place: str, net: Net, letters: Letters, allergens: Allergens) -> list[str]:
    market, found = said.value(f"{place}.market"), []
    if allergens.classify:
        found.append(f"By its sheets {_and(allergens.classify)} {'classifies' if len(allergens.classify) == 1 else 'classify'} the candle (H317). "
                     "In the European Union CLP then asks for a pictogram, a signal word and statements that this label does not make: "
                     "your supplier's text for the label and CLP come first.")
    if allergens.nameless and market != "us":
        found.append(_NAMELESS)
    if allergens.all and market == "us":
        found.append(f"The European Union would have it name {_and(allergens.all)}; for the United States alone the label leaves it out.")
    if not net.checked:
        found.append(_UNCHECKED)
    if letters.by_label:
        found.append(_BY_LABEL)
    found.append(_WORDS if said.value(f"{place}.cautions") == "yes" else _NO_CAUTIONS)
    found.append(_TESTED)
    if letters.low:
        found.append(_LOW)
    if said.value(f"{place}.average") == "yes" and market != "us":
        found.append(_RECORDS)
    return found


def _and(names: tuple[str, ...]) -> str:
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"
