"""Where the rules for labels come from, and how far they were read."""

from brimbook.sources import Source

PANEL = Source("16 CFR 500.21(a): the area of the principal display panel", "published")
LETTERS_SMALL = Source("16 CFR 500.21(b): 1/16 in on a panel of up to 5 square inches", "published")
LETTERS = Source("The ladder of 16 CFR 500.21(b) as a guide to food labels has it: 1/8 in up to 25 and 3/16 in up to 100 square "
                 "inches", "second hand")
LETTERS_LARGE = Source("16 CFR 500.21(b): 1/4 in up to 400 square inches, 1/2 in above", "from memory")
SMALL_LETTERS = Source("Among small letters the o must be that high: 16 CFR 500.21, as a guide to labels tells it", "second hand")
FACTORS = Source("16 CFR 500.19(a): 1 g is 0.0352740 oz, by these factors and no others", "published")
DIGITS = Source("16 CFR 500.19(b): three digits, below 100 g two will do", "published")
NEVER_MORE = Source("NIST, as quoted: round down, never up; of two that differ the larger one is held to", "second hand")
POUNDS = Source("16 CFR 500.9, as told on a metric association's list: from a pound on, pounds and what is over", "second hand")
NET = Source("16 CFR 500.25: without wrappers; on average not below the label, none short beyond reason", "published")
EU_ERROR = Source("Directive 76/211/EEC, Annex I, 2.4: tolerable negative error by the nominal quantity", "published")
EU_ROUNDING = Source("Annex to the Italian law 690/1978, which carries the directive out: shares are rounded up to a tenth of a gram",
                     "published")
EU_RULES = Source("Directive 76/211/EEC, Annex I, 1.1 to 1.3: on average not below, few below one error, none below two", "published")
EU_FIGURES = Source("Directive 76/211/EEC, Annex I, 3.1, as a government's page on European labels tells it", "second hand")
