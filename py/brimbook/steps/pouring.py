"""The pours: what was really weighed and left over, and what that teaches."""

import math
from dataclasses import dataclass

from brimbook import sources
from brimbook.cast import learning
from brimbook.cast.learning import Learned, Sample
from brimbook.cast.recipe import Recipe
from brimbook.figure import Constant, Figure
from brimbook.fill import readings
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.measure import Measurement
from brimbook.steps.pour_log import Pour, learn_from, log_of, molds_of
from brimbook.steps.spreading import spreading

# So many pours are told one by one; all of them are counted.
TOLD = 8
# As many readings as the test for a stray one goes to.
_NEWEST = 20
_WORDS = {"table": "the table", "cups": "your cups", "pours": "your pours"}


@dataclass(frozen=True)
class _Lesson:
    """What the figures of one log are told from."""

    said: Said
    place: str
    recipe: Recipe
    relative: float
    pours: list[Pour]
    learned: Learned

    def told(self, value: float) -> str:
        """A number that is put in, to eight digits, in brackets where it is below zero [text].

        value: of the number [any unit].
        """
        number = show.significant(value, 8, self.said.display)
        return f"({number})" if value < 0 else number

    def key(self, name: str) -> str:
        """The key of a figure of this log [text].

        name: of the figure [text].
        """
        return f"{self.place}.pouring.{name}"


def pouring(said: Said, place: str, recipe: Recipe,
            rooms: dict[str, Measurement]) -> tuple[Learned | None, list[Figure]]:
    """What the logged pours say [learned and figures].

    said: the record as understood [said].
    place: path of the cast whose bowl it is [text].
    recipe: for one gram of powder [recipe].
    rooms: the measured cavity of each cast poured from this bowl, by the cast's path [measurements].
    """
    molds = molds_of(said, place, rooms)
    pours = log_of(said, place, recipe, molds)
    learned = learn_from(said, pours, molds)
    figures = [] if learned is None else _figures(
        _Lesson(said, place, recipe, molds.relative if molds else 0.0, pours, learned))
    return learned, [*figures, *spreading(said, place, recipe, pours)]


def _figures(lesson: _Lesson) -> list[Figure]:
    scatters = [_scatter(lesson, name, sample) for name, sample in _samples(lesson)]
    weights = _weights(lesson, scatters)
    density = _density(lesson, weights)
    figures = [density, *_need(lesson, density), _yield(lesson, density), *weights, *scatters]
    for pour in [pour for pour in lesson.pours if pour.cup or pour.taken][-TOLD:]:
        figures += _one_pour(lesson, pour, density)
    return figures


def _samples(lesson: _Lesson) -> list[tuple[str, Sample]]:
    named = [("cups", lesson.learned.cups), ("pours", lesson.learned.pours)]
    return [(name, sample) for name, sample in named if sample is not None]


def _percent(lesson: _Lesson, name: str, label: str, share: float, formula: str, numbers: str, **more) -> Figure:
    display = lesson.said.display
    return Figure(lesson.key(name), label, share, "–", more.pop("shown", show.percent(share, display)), formula=formula,
                  numbers=f"({numbers}) × 100", worked=f"{show.number(share * 100, 3, display)} %", **more)


def _scatter(lesson: _Lesson, name: str, sample: Sample) -> Figure:
    told, count = lesson.told, len(sample.values)
    squares = [f"({told(value)} − {told(sample.mean)})²" for value in sample.values]
    total = math.fsum((value - sample.mean) ** 2 for value in sample.values)
    numbers = " + ".join(squares) if count <= TOLD else told(total)
    freedom, display = learning.EXPECTED_FREEDOM, lesson.said.display
    each, them = {"cups": ("cup", "cups"), "pours": ("pour", "pours")}[name]
    return _percent(
        lesson, f"scatter_{name}", f"Scatter of {them}", sample.scatter,
        f"√((freedom × expected² + sum of (ln density over table − average)²) ÷ (freedom + {them} − 1))",
        f"√(({told(freedom)} × {told(sample.expected)}² + {numbers}) ÷ ({told(freedom)} + {count} − 1))",
        says=f"From {each} to {each} it varies by {show.percent(sample.scatter, display)}: what is expected, and what "
             "was seen, together",
        constants=(Constant(f"Scatter expected of {them}, with the scale's steps", show.percent(sample.expected, display, 2),
                            sources.MEMORY),
                   Constant("It counts as so many degrees of freedom", str(freedom), sources.PRACTICE)),
        notes=_stray_notes(lesson, name, sample))


def _stray_notes(lesson: _Lesson, name: str, sample: Sample) -> tuple[str, ...]:
    newest = list(sample.values[-_NEWEST:])
    odd = readings.stray(newest, sample.expected)
    if odd is None:
        return ()
    seen = [seen.number for seen in lesson.learned.log if (seen.cup if name == "cups" else seen.taken) is not None]
    number = seen[-_NEWEST:][odd]
    what = "The cup of pour" if name == "cups" else "Pour"
    return (f"{what} {number} stands apart from the others. It is still counted: look at its entries again, or remove it if "
            "you know what went wrong.",)


def _voices(lesson: _Lesson) -> list[tuple[str, str, str]]:
    """Each voice on the density: its name, its variance in numbers, and its value in numbers."""
    told, learned = lesson.told, lesson.learned
    voices = [("table", f"{told(learning.TABLE_SCATTER)}²", "0")]
    if learned.cups is not None:
        own = f"{told(learned.cups.scatter)}² ÷ {len(learned.cups.values)}"
        voices.append(("cups", f"({told(learning.CUP_COMMON)}² + {own})", told(learned.cups.mean)))
    if learned.pours is not None:
        own = f"{told(learned.pours.scatter)}² ÷ {len(learned.pours.values)}"
        film = f"({told(learned.pours.mean)} − ln(1 + {told(learning.FILM)}))"
        voices.append(("pours", f"({told(learning.FILM_SCATTER)}² + ({told(lesson.relative)} ÷ 2)² + {own})", film))
    return voices


def _weights(lesson: _Lesson, scatters: list[Figure]) -> list[Figure]:
    voices, weights = _voices(lesson), lesson.learned.density.weights
    everything = " + ".join(f"1 ÷ {variance}" for _, variance, _ in voices)
    figures = []
    for (name, variance, _), share, whole in zip(voices, weights, _whole_percents(weights)):
        figures.append(_percent(
            lesson, f"weight_{name}", f"Weight of {_WORDS[name]}", share,
            "1 ÷ its variance, as a share of that of all of them together", f"1 ÷ {variance} ÷ ({everything})",
            shown=f"{whole} %", constants=_weight_constants(lesson, name),
            uses=tuple(figure.key for figure in scatters), says=f"{_WORDS[name].capitalize()} counts for {whole} %"
            if name == "table" else f"{_WORDS[name].capitalize()} count for {whole} %"))
    return figures


def _whole_percents(weights: tuple[float, ...]) -> list[int]:
    """Shares in whole percents that come to 100: the largest remainders are rounded up."""
    floors = [math.floor(weight * 100) for weight in weights]
    order = sorted(range(len(weights)), key=lambda row: weights[row] * 100 - floors[row], reverse=True)
    for row in order[:100 - sum(floors)]:
        floors[row] += 1
    return floors


def _weight_constants(lesson: _Lesson, name: str) -> tuple[Constant, ...]:
    display = lesson.said.display
    film = f"{show.percent(learning.FILM, display)} ± {show.percent(learning.FILM_SCATTER, display)}"
    own = {
        "table": (Constant("What the table may be off by, particles and air", show.percent(learning.TABLE_SCATTER, display),
                           sources.MEMORY),),
        "cups": (Constant("What the cup's volume may be off by, in every pour", show.percent(learning.CUP_COMMON, display),
                          sources.MEMORY),),
        "pours": (Constant("Film expected on bowl and tools, of the mix", film, sources.PRACTICE),
                  Constant("± of the mold's volume, in every pour", show.percent(lesson.relative, display, 2),
                           sources.YOURS)),
    }
    return (*own[name], Constant("Method", "weights by variance", sources.WEIGHTED))


def _density(lesson: _Lesson, weights: list[Figure]) -> Figure:
    told, learned, display = lesson.told, lesson.learned, lesson.said.display
    value = lesson.recipe.density * learned.density_ratio
    terms = " + ".join(f"{told(weight)} × {worth}" for weight, (_, _, worth) in zip(learned.density.weights, _voices(lesson)))
    plus_minus = f"± {show.plus_minus(value * learned.density_relative, display)} g/mL"
    off = learned.density_ratio - 1
    share, word = show.percent(abs(off), display), "heavier" if off > 0 else "lighter"
    than = f"{share} {word} than" if abs(off) >= 0.0005 else "just as heavy as"
    return Figure(
        lesson.key("density"), "Your mix", value, "g/mL", show.density(value, display),
        formula="density by the table × exp(each voice's ln of density over the table's, by its weight)",
        numbers=f"{told(lesson.recipe.density)} × exp({terms})", worked=f"{show.significant(value, 6, display)} g/mL",
        says=f"Your mix is {than} the table says: {show.density(value, display)} {plus_minus}",
        plus_minus=value * learned.density_relative, plus_minus_shown=plus_minus,
        constants=(_student(lesson, learned.density.freedom),), uses=tuple(figure.key for figure in weights),
        spread="± at about 95 %: Student's t × √(1 ÷ the sum of 1 ÷ each variance).")


def _student(lesson: _Lesson, freedom: float, one_sided: bool = False) -> Constant:
    name = "Student's t, 95 % below" if one_sided else "Student's t, 95 %"
    factor = learning.student_factor(freedom, one_sided)
    return Constant(name, show.significant(factor, 4, lesson.said.display), sources.STUDENT_SERIES)


def _yield(lesson: _Lesson, density: Figure) -> Figure:
    told, learned, display = lesson.told, lesson.learned, lesson.said.display
    value = lesson.recipe.volume / learned.density_ratio
    return Figure(
        lesson.key("yield"), "Mix from one gram of powder, by your pours", value, "mL/g",
        f"{show.significant(value, 3, display)} mL", formula="mix from one gram by the table ÷ your density over the table's",
        numbers=f"{told(lesson.recipe.volume)} ÷ {told(learned.density_ratio)}",
        worked=f"{show.significant(value, 5, display)} mL", plus_minus=value * learned.density_relative,
        plus_minus_shown=f"± {show.plus_minus(value * learned.density_relative, display)} mL",
        uses=(density.key,), spread="The same share as the ± of the density.")


def _need(lesson: _Lesson, density: Figure) -> list[Figure]:
    """What the pours needed beyond the mold's room, and what to plan with; nothing where no rest was weighed."""
    learned = lesson.learned
    if learned.pours is None:
        return []
    return [_needed(lesson, density), *([_allowance(lesson)] if learned.allowance is not None else []),
            _filled(lesson, density)]


def _needed(lesson: _Lesson, density: Figure) -> Figure:
    told, learned, display = lesson.told, lesson.learned, lesson.said.display
    expected, seen = learned.need.weights
    share, count = math.exp(learned.need.value) - 1, len(learned.pours.values)
    half = learned.need.plus_minus * (1 + share)
    scatter = show.percent(learned.pours.scatter, display)
    more = f"{show.percent(share, display)} beyond the mold" if share >= 0 else \
        f"{show.percent(-share, display)} less than the mold is measured to hold"
    pours = "The pour" if count == 1 else f"The last {count} pours"
    return _percent(
        lesson, "needed", "Needed beyond the mold", share,
        "exp(ln(1 + film expected), and what the pours took less the density by table and cups, each by its weight) − 1",
        f"exp({told(expected)} × ln(1 + {told(learning.FILM)}) + {told(seen)} × ({told(learned.pours.mean)} − "
        f"{told(learned.without_pours.value)})) − 1",
        says=f"{pours} needed {more}, and vary by {scatter}",
        plus_minus=half, plus_minus_shown=f"± {show.plus_minus(half * 100, display)} %",
        constants=(*_weight_constants(lesson, "pours"), _student(lesson, learned.need.freedom)),
        uses=(density.key, lesson.key("scatter_pours")), notes=_not_planned_with(learned, count),
        spread=f"± at about 95 %, of the average; from pour to pour it varies by {scatter}. What a cup does not tell apart, "
               "a heavier mix or more film, stays in it.")


def _not_planned_with(learned: Learned, count: int) -> tuple[str, ...]:
    """Why the pours give no allowance yet."""
    if learned.allowance is not None:
        return ()
    if count < learning.FEWEST_FOR_ALLOWANCE:
        return ("One pour more with what was left over, and it is said which allowance to plan with.",)
    return ("No mold takes so much less than it holds. Measure it again, and look at the weights of the pours; until then the "
            "allowance that you typed is taken.",)


def _allowance(lesson: _Lesson) -> Figure:
    told, learned, display = lesson.told, lesson.learned, lesson.said.display
    factor = learning.student_factor(learned.pours.freedom, one_sided=True)
    negative = ("Your pours needed less than the mold is measured to hold. Measure the mold again.",)
    return _percent(
        lesson, "allowance", "Allowance to plan", learned.allowance,
        "exp(ln(1 + needed) + t × √(variance of what the next takes on average + scatter²)) − 1",
        f"exp({told(learned.need.value)} + {told(factor)} × √({told(learned.taken.variance)} + "
        f"{told(learned.pours.scatter)}²)) − 1",
        says=f"Plan with {show.percent(learned.allowance, display)}: about 1 pour in 20 then comes short",
        constants=(_student(lesson, learned.pours.freedom, one_sided=True),),
        uses=(lesson.key("needed"), lesson.key("scatter_pours")), notes=negative if learned.allowance < 0 else ())


def _filled(lesson: _Lesson, density: Figure) -> Figure:
    told, learned, display = lesson.told, lesson.learned, lesson.said.display
    value = lesson.recipe.volume / math.exp(learned.taken.value)
    half = value * learned.taken.plus_minus
    return Figure(
        lesson.key("filled"), "Mold filled by one gram of powder", value, "mL/g", f"{show.significant(value, 3, display)} mL",
        formula="mix from one gram by the table ÷ (your density over the table's × (1 + needed))",
        numbers=f"{told(lesson.recipe.volume)} ÷ ({told(learned.density_ratio)} × {told(math.exp(learned.need.value))})",
        worked=f"{show.significant(value, 5, display)} mL", plus_minus=half,
        plus_minus_shown=f"± {show.plus_minus(half, display)} mL", uses=(density.key, lesson.key("needed")),
        constants=(_student(lesson, learned.taken.freedom),),
        spread="± at about 95 %. It is known better than density and film apart, as your pours tell the two together.")


def _one_pour(lesson: _Lesson, pour: Pour, density: Figure) -> list[Figure]:
    told, display, figures = lesson.told, lesson.said.display, []
    if pour.cup is not None:
        cup = pour.cup
        figures.append(Figure(
            lesson.key(f"cup_{pour.number}"), f"Cup of pour {pour.number}", cup.density, "g/mL",
            show.density(cup.density, display), formula="(cup full − cup empty) ÷ what it holds",
            numbers=f"({told(cup.full)} − {told(cup.empty)}) ÷ {told(cup.volume)}",
            worked=f"{show.significant(cup.density, 6, display)} g/mL"))
    if pour.taken is not None:
        took, true = pour.taken, pour.own.density * lesson.learned.density_ratio
        share = took.mass / (took.room * true) - 1
        weights = [told(took.weighed), *([f"− {told(took.left_over)}"] if took.left_over else []),
                   *([f"+ {told(took.short)}"] if took.short else [])]
        figures.append(_percent(
            lesson, f"needed_{pour.number}", f"Pour {pour.number} needed beyond the mold", share,
            "(weighed − left over + lacking) ÷ (room of the mold × density of the mix by its own weights) − 1",
            f"({' '.join(weights)}) ÷ ({told(took.room)} × {told(true)}) − 1",
            uses=(density.key,)))
    return figures
