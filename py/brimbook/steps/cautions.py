"""What can hurt, at the step where it can; always with who has the last word."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Caution:
    """A short title, what to do about it, and where it comes from."""

    title: str
    sentence: str
    source: str


DUST = Caution(
    "Powder dust harms the lungs",
    "Cement and sand dust can hold crystalline silica. Wear a fitted respirator (P100 or FFP3), open the bag slowly, "
    "add powder to water, and clean up wet: no sweeping, no blowing. Your powder's safety data sheet and local rules "
    "come first.",
    "29 CFR 1926.1153 limits silica dust to 50 µg/m³ over 8 hours (second hand). Respirator class: common practice, "
    "no source.")
CAUSTIC = Caution(
    "Wet mix burns skin and eyes",
    "Wet cement is caustic, pH 12 to 13, and its burns may not hurt for hours. Wear waterproof gloves and eye "
    "protection. Wash splashes off at once with plenty of water; for eyes rinse and see a doctor.",
    "OSHA 3351-07 and OSHA interpretation of 11 April 2008; precast.org, Preventing cement burns (published).")
SETTING_HEAT = Caution(
    "It heats as it sets",
    "Rapid-setting cement and plaster grow hot. Never put a hand or any part of the body in the mix to cast it.",
    "common practice, no source")
FRESH_CAST = Caution(
    "A fresh cast is still caustic, and weak",
    "Demold and wet it with waterproof gloves on: the water on it burns skin as wet mix does. Don't pry on a thin rim. "
    "Your powder's safety data sheet comes first.",
    "OSHA 3351-07 on wet cement (published); thin rims: common practice, no source.")
DAMP_VESSEL = Caution(
    "A damp vessel spits hot wax",
    "Water in the pores turns to steam under hot wax. Let the vessel dry to a steady weight before you pour.",
    "common practice, no source")
POROUS_VESSEL = Caution(
    "An unsealed vessel can burn like a wick",
    "Wax that soaks into a porous pot can catch fire from the outside. Seal the inside with something made for it, and "
    "test-burn away from anything that burns.",
    "CPSC release 96-158 on terracotta pots (second hand).")
HOT_WAX = Caution(
    "Hot wax burns, and can catch fire",
    "Melt in a water bath with a thermometer in it, and never leave it. Wax gives no warning before it ignites. If it "
    "burns: heat off, lid on, never water, do not move the pan. Wax on skin: cool in water at once, do not pull it off.",
    "Paraffin data sheets; burn temperatures as quoted from NIST: second-degree burn at 55 °C (second hand).")
FRAGRANCE = Caution(
    "Fragrance has its own limits",
    "Your supplier's sheet gives the flash point and the most that a finished candle may hold; compare that limit with "
    "the load of the blend, not of the wax.",
    "IFRA standards are told for the finished product (second hand).")
FLAME = Caution(
    "A cast vessel is not a tested container",
    "Burn the first ones in sight, on something that cannot burn, away from children and pets. Before you sell, have "
    "the candle and vessel tested to the standards that hold where you are.",
    "ASTM F2417 and EN 15493 are the usual ones (named, not quoted).")
SANDING = Caution(
    "Sanding dust harms the lungs",
    "Dust of set cement and sand can hold crystalline silica. Sand wet, or wear a fitted respirator (P100 or FFP3), and "
    "clean up wet: no sweeping, no blowing. Local rules come first.",
    "29 CFR 1926.1153 limits silica dust to 50 µg/m³ over 8 hours (second hand). Wet sanding: common practice, no source.")
COATINGS = Caution(
    "Sealer and paint have sheets of their own",
    "Solvents burn and make you dizzy: air the room, no flame, gloves as the safety data sheet says. Inside, use only a "
    "sealer that its maker means for candle vessels or for such heat, and let it cure as long as its label says.",
    "common practice, no source")
FORCED_DRYING = Caution(
    "Don't force it dry with heat",
    "Steam in a wet wall can crack or burst it. Let it dry in moving room air, off the bench on sticks. Warm it only "
    "gently, once it has cured and is nearly dry, and as your powder's data sheet allows: plaster crumbles when it is "
    "warmed above about 45 °C (113 °F).",
    "common practice, no source")

MIX = (DUST, CAUSTIC, SETTING_HEAT)
POUR = (CAUSTIC, SETTING_HEAT)
CLAMP = (SETTING_HEAT,)
CURE = (FRESH_CAST, SETTING_HEAT, DAMP_VESSEL)
DRY = (DAMP_VESSEL, FORCED_DRYING)
LEAK = (DAMP_VESSEL, POROUS_VESSEL)
FINISH = (POROUS_VESSEL, SANDING, COATINGS)
WELL = (DAMP_VESSEL,)
UNSEALED_WELL = (POROUS_VESSEL, DAMP_VESSEL)
WAX = (HOT_WAX, FRAGRANCE, FLAME)
