"""Labels for tests: plain ones, and any that could be asked for."""

from hypothesis import strategies as st

from brimbook.draw.label import CAPITAL, SMALL, Label, Words

LINK = "https://example.org/#1." + "aB3_" * 20
CAUTIONS = ("Burn within sight. Keep away from things that catch fire. Keep away from children and pets.",
            "Trim the wick to 1/4 in (6 mm). Burn at most 4 h at a time. Stop at 1/2 in (13 mm) of wax left.")


def words(product: str = "Scented candle", low: bool = True) -> tuple[Words, ...]:
    """What a candle's label usually says."""
    return (Words("lot", "Lot 2026-11-A", 1.2, side="back"), Words("burn_time", "Burns about 38 hours", 1.2, side="back"),
            Words("warning", "WARNING", 1.5, bold=True, side="back"), *(Words("caution", text, 1.2, SMALL, side="back") for text in CAUTIONS),
            Words("net", "Net Wt 6.1 oz (173 g)", 3.2, clear=(1.0, 1.5), low=low), Words("maker", "Alder Lane Castings, Port Ellery", 1.6),
            Words("scent", "Cedar, sea salt", 1.6), Words("product", product, 1.6, bold=True))


def label(shape: str = "rectangle", width: float = 80.0, height: float = 60.0, **told) -> Label:
    """A label that says what a candle's label usually says."""
    return Label(shape, width, height, **{"corner": 2.0, "words": words(), "alert": 5.0, "average": 3.0, **told})


_TEXTS = st.one_of(st.text(max_size=40), st.sampled_from(["Soy candle", "Ålesund & Sons <b>", "Duftkerze im Betongefäß", "香薰蜡烛", "شمعة معطرة",
                                                         "🕯️👩‍👩‍👧 candle", "Donaudampfschifffahrtskerzenständer", "\ud83d\x00", "a " * 30]))


@st.composite
def any_words(draw: st.DrawFn) -> Words:
    """Something a label could say."""
    name = draw(st.sampled_from(["product", "scent", "line", "maker", "net", "warning", "caution", "burn_time", "lot", "other"]))
    return Words(name, draw(_TEXTS), draw(st.floats(0.8, 6.4)), draw(st.sampled_from([CAPITAL, SMALL])), draw(st.booleans()),
                 draw(st.sampled_from(["front", "back"])), draw(st.sampled_from([(0.0, 0.0), (1.0, 1.5)])) if name == "net" else (0.0, 0.0),
                 name == "net" and draw(st.booleans()))


@st.composite
def any_labels(draw: st.DrawFn) -> Label:
    """A label that a maker could ask for."""
    said = draw(st.lists(any_words(), max_size=7))
    # A net weight stands once.
    net = [each for each in said if each.name == "net"][:1]
    return Label(draw(st.sampled_from(["round", "rectangle", "strip"])), draw(st.floats(10, 300)), draw(st.floats(10, 300)), draw(st.floats(0, 100)),
                 tuple([*(each for each in said if each.name != "net"), *net]), draw(st.sampled_from([0.0, 5.0])),
                 draw(st.sampled_from([0.0, 3.0])), draw(st.booleans()), draw(st.booleans()))
