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
WATER_BATH = Caution(
    "Never over a flame, never alone",
    "Melt in a water bath, not over a flame and not on the plate itself, with a thermometer in the wax, and stay with it. "
    "Keep bath water out of the wax and warm only a dry vessel: wet wax spits. A bath stays below 100 °C (212 °F), far below "
    "the flash points of waxes, which are near 200 °C (390 °F). Your wax's safety data sheet comes first.",
    "Flash points of paraffin and beeswax: data sheets and reference pages (second hand). Water bath: common practice, "
    "no source.")
WAX_FIRE = Caution(
    "A lid, not water",
    "Have a lid at hand that fits the pot. If wax burns: heat off, lid on, leave the pot where it is, get out and call for "
    "help if it does not go out. CO₂ or powder will do, a water jet never: water sinks under the wax, flashes to steam and "
    "throws it about, burning.",
    "Paraffin data sheets and a reference page on wax fires (second hand).")
WAX_ON_SKIN = Caution(
    "Wax this hot burns skin at once",
    "Skin hurts at 44 °C (111 °F), burns at 48 °C (118 °F), and blisters at 55 °C (131 °F). Wear sleeves and closed shoes, "
    "keep children and pets away. Wax on skin: cool in water at once, do not pull it off, and see a doctor about blisters.",
    "Burn temperatures as quoted from NIST; first aid from a paraffin data sheet (second hand).")
FRAGRANCE = Caution(
    "Fragrance has its own limits",
    "Your supplier's sheet gives the flash point and the most that a finished candle may hold; compare that limit with "
    "the load of the blend, not of the wax.",
    "IFRA standards are told for the finished product (second hand).")
FLAME = Caution(
    "A cast vessel is not a tested container",
    "Burn the first ones in sight, on something that cannot burn, away from children and pets. Before you sell, have "
    "the candle and vessel tested to the standards that hold where you are.",
    "ASTM F2417 and EN 15493 are the usual ones (named, not quoted). ASTM F2179, for glass vessels, covers soda-lime glass only, "
    "by its scope (published).")
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
BARS = Caution(
    "Take the bars off before it is lit",
    "Sticks and prints burn. A printed bar also softens over hot wax, PLA from 55 °C (131 °F) on: let it hang clear of the wax, "
    "and look at it while it is warm.",
    "A reference page on print plastics: PLA, glass transition 55 to 65 °C (published); bars: common practice, no source.")

BURN_AS_TOLD = Caution(
    "Short, trimmed, and not to the bottom",
    "Trim the wick to 1/4 in (6 mm) before each lighting, burn it at most 4 hours at a time, let it cool for at least 2, and "
    "stop for good when 1/2 in (13 mm) of wax is left. Keep the pool clear of trimmings. A test method may ask for more.",
    "Trim: the method quoted for ASTM F2417; 4 and 2 hours: a national candle association in the press; last 1/2 in: a military "
    "fire office (all second hand).")
BURN_CLEAR = Caution(
    "Never out of sight",
    "Burn it level, out of drafts, away from children and pets, 3 in (76 mm) from other flames and at least 12 in (300 mm) from "
    "anything that burns; a stricter fire department asks for 4 ft (1.2 m). A room you leave is a flame you put out. Local rules "
    "come first.",
    "NFPA as quoted: 12 in; a candle association in the press: 3 in (second hand). 4 ft: a city fire department (published).")
BURN_OUT = Caution(
    "Never water on burning wax",
    "Put it out with a lid or a snuffer. If the pool itself takes fire: lid on, never water, don't move it. A pool that has burned "
    "for hours is hot wax, and the wall may be too hot to hold: skin hurts at 44 °C (111 °F) and blisters at 55 °C (131 °F). If "
    "wax seeps through, cracks run or the outside burns, it is not a vessel for candles.",
    "A European candle association's symbol (published); burns as quoted from NIST, clay pots that burned: CPSC 96-158 (second hand).")
NEAT_OIL = Caution(
    "Neat fragrance is not for skin",
    "It can irritate, sting the eyes and make you allergic for life: gloves, eye protection, moving air. Wash splashes off with "
    "soap and water; for eyes rinse and see a doctor. Its safety data sheet comes first.",
    "common practice, no source")
FLASH = Caution(
    "At its flash point vapor takes fire",
    "A flash point is the lowest temperature at which the vapor takes fire from a flame in a stated test. It isn't where the oil "
    "takes fire by itself, and no rule for when to add it. At it and above: no open flame, no spark, air the room. The "
    "supplier's sheet comes first.",
    "NIST glossary (published).")
LEAD_CORE = Caution(
    "No lead in a wick's core",
    "Wicks whose metal core holds more than 0.06 % lead are banned in the United States, and breathed-in lead harms children "
    "most. Take wicks without metal, or with a core that its supplier's sheet tells to be zinc or tin.",
    "16 CFR 1500.12(a)(2), 1500.17(a)(13), in force since 15 October 2003 (published; paragraph number from memory).")
WICK_PLACE = Caution(
    "Straight, and clear of the wall",
    "A flame near the wall or near another flame heats both: a second wick took one small metal cup above 200 °C (392 °F). Set wicks "
    "straight, keep them clear of the wall, and burn it once in sight.",
    "Fire Safety Journal 37 (2002) 329 on tea lights (published); distances: common practice, no source.")

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
WICKS = (LEAD_CORE, WICK_PLACE, FLAME)
HOLDER = (BARS,)
BURN = (FLAME, POROUS_VESSEL, BURN_AS_TOLD, BURN_CLEAR, BURN_OUT)
SCENT = (NEAT_OIL, FLASH)
MELT = (WATER_BATH, WAX_FIRE, WAX_ON_SKIN, DAMP_VESSEL)
LABEL = (FLAME,)
