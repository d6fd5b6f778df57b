"""What the label says: net weight, letters, cautions, scent, lot and burn time."""

from dataclasses import dataclass

from brimbook.draw.label import Label
from brimbook.figure import Figure
from brimbook.record.said import Said
from brimbook.sell import prepackage
from brimbook.steps.batches import Batch
from brimbook.steps.burning import Burn
from brimbook.steps.filling import Filled
from brimbook.steps.label_burn import burn_of, burn_words
from brimbook.steps.label_checks import limits_of, verdicts_of
from brimbook.steps.label_net import MARKED, Net, net_of
from brimbook.steps.label_notes import notes_of
from brimbook.steps.label_panel import Letters, letters_of
from brimbook.steps.label_scent import Allergens, allergens_of
from brimbook.steps.label_size import Size, size_of
from brimbook.steps.label_words import ALERT_EU, ALERT_US, back_words, front_words

# More labels than this are kept, and no longer worked out.
MOST_LABELS = 12
_TOO_MANY = f"The first {MOST_LABELS} labels are worked out. All are kept."
_CHOICES = ("shape", "holds", "market", "cautions", "burn_time", "average", "code")


@dataclass(frozen=True)
class Labeled:
    """A label with the figures that it rests on, and what it can't know.

    waiting: why there is no label yet.
    candle: does the vessel hold wax, as far as is known?
    """

    place: str
    label: Label | None
    figures: tuple[Figure, ...]
    notes: tuple[str, ...] = ()
    waiting: str = ""
    candle: bool = False


@dataclass(frozen=True)
class _Told:
    """All that goes into a label."""

    size: Size
    net: Net
    letters: Letters
    allergens: Allergens
    burn: Figure | None
    lot: str


def labeled(said: Said, place: str, fills: dict[str, Filled], burns: dict[str, Burn], figures: dict[str, Figure],
            batches: tuple[Batch, ...]) -> Labeled:
    """A label of a vessel, as far as the entries go [labeled].

    said: the record as understood [said].
    place: path of the label [text].
    fills: what each well takes, by its path [fills].
    burns: the burn test of each well, by its path [burns].
    figures: worked out so far, by key [figures].
    batches: of the vessel [batches].
    """
    if int(place.split(".")[1]) >= MOST_LABELS:
        return Labeled(place, None, (), waiting=_TOO_MANY)
    size, net = size_of(said, place), net_of(said, place, fills)
    if size is None or any(said.value(f"{place}.{name}") is None for name in _CHOICES):
        return Labeled(place, None, (), waiting=MARKED, candle=bool(fills or net.grams))
    if net.waiting:
        return Labeled(place, None, net.figures, waiting=net.waiting, candle=bool(fills or net.weights))
    letters = letters_of(said, place, size, net) if net.grams else Letters()
    burn = burn_of(said, place, fills, figures) if net.grams else None
    allergens = allergens_of(said, figures) if net.grams else Allergens()
    told = _Told(size, net, letters, allergens, burn, _lot(said, place, batches))
    return _labeled(said, place, told)


def _labeled(said: Said, place: str, told: _Told) -> Labeled:
    net, letters = told.net, told.letters
    figures = (*net.figures, *letters.figures, *(limits_of(said, place, net) if net.grams else []), *([told.burn] if told.burn else []))
    if letters.waiting:
        return Labeled(place, None, figures, verdicts_of(said, place, net), letters.waiting, candle=True)
    average = _average(said, place, net)
    label = _label(said, place, told, average)
    notes = (*verdicts_of(said, place, net), *notes_of(said, place, net, letters, told.allergens, told.lot))
    return Labeled(place, label, figures, notes, "" if net.grams else "This vessel has no wax: the label only names it.", bool(net.grams))


def _label(said: Said, place: str, told: _Told, average: float) -> Label:
    size, net, candle = told.size, told.net, bool(told.net.grams)
    words = (*front_words(said, place, net, told.letters),
             *back_words(said, place, candle, told.allergens, burn_words(told.burn), told.lot))
    warns = candle and said.value(f"{place}.cautions") == "yes"
    alert = (ALERT_US if said.value(f"{place}.market") == "us" else ALERT_EU) if warns else 0.0
    return Label(size.shape, size.width, size.height, size.corner, words, alert, average, said.value(f"{place}.code") == "yes",
                 said.value(f"{place}.holds") == "front")


def _average(said: Said, place: str, net: Net) -> float:
    """The height of the mark ℮, 0 where the label does not bear it [mm]."""
    if said.value(f"{place}.average") != "yes" or said.value(f"{place}.market") == "us" or not net.grams:
        return 0.0
    if not prepackage.covered(net.grams):
        said.fault(f"{place}.average", "The mark ℮ is for 5 g to 10 kg: leave it off this label.")
        return 0.0
    return prepackage.SIGN


def _lot(said: Said, place: str, batches: tuple[Batch, ...]) -> str:
    """As typed, else that of the newest batch."""
    typed = said.value(f"{place}.lot")
    if typed and typed.strip():
        return " ".join(typed.split())
    return "" if said.typed(f"{place}.lot") else batches[-1].lot if batches else ""
