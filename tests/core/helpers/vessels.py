"""Vessels for tests: plain ones, a full one, random ones, and ones bent out of shape."""

import json
from typing import Any

from hypothesis import strategies as st

from brimbook import door
from brimbook.record import blank
from brimbook.record.fields import LEAVES

DISPLAYS = [{}, {"decimal": "point"}, {"decimal": "comma"}, {"mass": "oz"}, {"mass": "lb", "length": "in"},
            {"mass": "lb", "decimal": "comma", "length": "in", "temperature": "F"}, {"readability": "0.1 g"},
            {"readability": "5 g"}]


def put(record: dict[str, Any], path: str, text: Any) -> dict[str, Any]:
    """Write a text at a path of a record, making the way there; the record itself is given back."""
    *steps, last = path.split(".")
    part = record
    for step, following in zip(steps, [*steps[1:], last]):
        if isinstance(part, list):
            while len(part) <= int(step):
                part.append({})
            part = part[int(step)]
        else:
            part = part.setdefault(step, [] if following.isdigit() else {})
    if isinstance(part, list):
        while len(part) <= int(last):
            part.append({})
        part[int(last)] = text
    else:
        part[last] = text
    return record


def vessel(**texts: str) -> dict[str, Any]:
    """A new vessel with 640 g of water in the mold and 300 g to the line; two underscores stand for a dot."""
    record = blank.blank()
    put(record, "casts.0.cavity.readings.0.water", "640 g")
    put(record, "wells.0.fill.readings.0.water", "300 g")
    for path, text in texts.items():
        put(record, path.replace("__", "."), text)
    return record


def ask(name: str, **request: Any) -> dict[str, Any]:
    """The door's answer; the test fails where it gives a fault."""
    reply = json.loads(door.ask(name, json.dumps(request)))
    assert "fault" not in reply, reply["fault"]["sentence"] + "\n" + reply["fault"]["detail"]
    return reply["answer"]


def sheet(record: Any, **settings: str) -> dict[str, Any]:
    """The sheet that the page would show for a record."""
    return ask("work_out", record=record, settings=settings)["sheet"]


def figures(record: Any, **settings: str) -> dict[str, dict[str, Any]]:
    """Every figure that the page would show for a record, by key."""
    return {each["key"]: each for card in sheet(record, **settings)["cards"] for each in card["figures"]}


def fields(page: dict[str, Any]) -> dict[str, dict[str, Any]]:
    """Every question of a sheet, by path."""
    return {each["path"]: each for card in page["cards"] for part in [card, *card["groups"]]
            for each in [*part["fields"], *part["more"]]}


def notes(page: dict[str, Any]) -> list[str]:
    """Every note of a sheet's cards."""
    return [note for card in page["cards"] for note in card["notes"]]


NOTES_300 = ("Two coats of wax on the seam, then talc. Pour along the back wall and tap the table ten times; bubbles "
             "gather under the rim. The core lifts out after forty minutes, warm to the hand. Second one: less water, "
             "a drier mix, edges sharper. Sand the foot at 220, wipe, let it stand a week before the sealer goes on, "
             "two coats.")[:300]

_FULL_TEXTS = {
    "text": "Notched", "date": "2026-09-12", "mass": "1234.5 g", "length": "71.5 mm", "temperature": "21.5 °C",
    "density": "1.05 g/mL", "share": "7.5 %", "ratio": "3.5:1", "count": "12", "number": "1.75",
    "parts": "3.5:0.7:1.25", "money": "24.50", "duration": "90 min", "pressure": "9.5 MPa", "coverage": "7.5 m²/L",
    "heat": "150 kJ/kg", "moment": "2026-09-12T10:30", "volume": "95.5 mL",
}
_FULL_EXCEPTIONS = {"readability": "0.1 g", "line_error": "0.7 mm", "ruler": "0.3 mm", "particle_density": "2.71 g/mL",
                    "filler_density": "1.59 g/mL", "id": "3f2b8c54-9d1e-4a77-b0c3-5e6f7a8b9c0d", "notes": NOTES_300,
                    "name": "Notched harbor bowl, third try", "datum": "-5 °C",
                    "melt_at": "82 °C", "scent_at": "74 °C", "pour_at": "58 °C", "second_at": "63 °C", "melts_at": "52 °C",
                    "margin": "0.4 %", "steady": "0.2 %",
                    "of": "Notched + Notched", "after": "1198.5 g", "out_at": "2026-09-12T14:30",
                    "bar_width": "16.5 mm", "bar_thickness": "2.4 mm", "slot_width": "2.3 mm", "overhang": "12.5 mm",
                    "wider": "3.5 mm", "clearance": "1.5 mm", "expansion": "0.0007", "cup_poured": "1316.5 g", "cup_set": "1320.5 g",
                    "labels.*.margin": "11 mm", "selling.*.margin": "45 %", "wholesale_margin": "35 %", "cast_failures": "4 %", "candle_failures": "2 %",
                    "cup_error": "0.7 mL", "off": "0.3 mm", "photo.off": "0.7 %", "wall_thickness": "6.5 mm",
                    "floor_thickness": "8.5 mm", "line": "9.5 mm", "count": "1", "up_to": "3", "x": "30.5 mm", "y": "33.5 mm"}


def _reading(kind: str, number: int, row: int) -> str:
    """One of three readings, each another: of the scale, or of a thermometer in wax that cools."""
    cooling = {"moment": f"2026-09-12T10:{30 + 5 * row}", "temperature": f"{84 - 5 * row}.5 °C"}
    return cooling.get(kind) or f"{1000 + 7 * number + row}.5 g"


def full_vessel() -> dict[str, Any]:
    """Every leaf of the record filled, three readings each, and no two readings alike."""
    record: dict[str, Any] = {"version": 1}
    for number, (path, leaf) in enumerate(LEAVES.items()):
        if path.startswith(("materials.", "wicks.", "plan.")):
            continue
        last = path.rsplit(".", 1)[-1]
        text = _FULL_EXCEPTIONS.get(path) or _FULL_EXCEPTIONS.get(".".join(path.split(".")[-2:])) or _FULL_EXCEPTIONS.get(last) or (
            leaf.choices[0].value if leaf.choices else _FULL_TEXTS[leaf.kind])
        if ".readings.*." in path:
            for row in range(3):
                put(record, path.replace("readings.*", f"readings.{row}").replace("*", "0"),
                    _reading(leaf.kind, number, row))
        else:
            put(record, path.replace("*", "0"), text)
    return record


def not_from_a_file() -> dict[str, Any]:
    """A full vessel without what is read from files and photos, or designed, which fills links of its own."""
    record = full_vessel()
    del record["casts"][0]["cavity"]["file"], record["wells"][0]["fill"]["file"], record["wells"][0]["outline"]["photo"], record["design"]
    return record


def not_sold() -> dict[str, Any]:
    """A vessel as full as can be before anything is bought, sold, labeled or noted as a batch."""
    record = not_from_a_file()
    for name in ("packaging", "selling", "labels", "batches", "own_notes"):
        del record[name]
    (cast,), (well,) = record["casts"], record["wells"]
    del cast["clamping"]["print_time"], well["coloring"]
    for coat in ("sealer", "primer", "paint"):
        del cast["finishing"][coat]
    fragrance, wax = well["fragrance"], well["wax"]
    for part in (cast["mix"]["powder"], *cast["mix"]["others"], fragrance, *fragrance["scents"], wax, *wax["blended"], well["wicks"]):
        for name in ("lot", "pack_pieces"):
            part.pop(name, None)
    for part in (fragrance, *fragrance["scents"], wax, *wax["blended"]):
        for name in ("pack_weight", "pack_price"):
            part.pop(name, None)
    del fragrance["name"], wax["name"], well["wicks"]["pack_price"]
    return record


def _mass() -> st.SearchStrategy[str]:
    return st.one_of(st.integers(5, 9000).map(lambda grams: f"{grams} g"),
                     st.integers(50, 90_000).map(lambda tenths: f"{tenths / 10} g"),
                     st.tuples(st.integers(1, 9), st.integers(0, 15)).map(lambda both: f"{both[0]} lb {both[1]} oz"),
                     st.integers(2, 160).map(lambda halves: f"{halves // 2} {halves % 2}/2 oz"))


def _hundredths(least: int, most: int, unit: str = "") -> st.SearchStrategy[str]:
    return st.integers(least, most).map(lambda value: f"{value / 100:.2f}{unit}")


@st.composite
def good_vessels(draw: st.DrawFn) -> dict[str, Any]:
    """A vessel in which every entry makes sense, measured in any way."""
    record = blank.blank()
    for fill in ("casts.0.cavity", "wells.0.fill"):
        _draw_fill(draw, record, fill)
    cast = "casts.0."
    put(record, cast + "pieces", str(draw(st.integers(1, 40))))
    put(record, cast + "allowance", draw(_hundredths(0, 4000, " %")))
    put(record, cast + "mix.powder.particle_density", draw(_hundredths(150, 500, " g/mL")))
    put(record, cast + "mix.water_to_powder", draw(st.one_of(_hundredths(10, 99),
                                                             _hundredths(101, 900).map("{}:1".format))))
    put(record, cast + "mix.air", draw(_hundredths(0, 500, " %")))
    put(record, cast + "mix.rule", draw(_hundredths(50, 400)))
    for name in draw(st.sets(st.sampled_from(["scooped", "left"]))):
        put(record, cast + name, draw(_mass()))
    _draw_wax(draw, record)
    return record


def _draw_fill(draw: st.DrawFn, record: dict[str, Any], fill: str) -> None:
    way = draw(st.sampled_from(["on_scale", "full_minus_empty", "jug", "poured_out", "dry_filler", "dimensions"]))
    put(record, f"{fill}.way", way)
    for row in range(draw(st.integers(1, 4))):
        small = draw(st.integers(100, 3000))
        large = small + draw(st.integers(20, 2500))
        pair = {"full_minus_empty": ("full", "empty"), "jug": ("before", "after")}.get(way)
        if pair:
            put(record, f"{fill}.readings.{row}.{pair[0]}", f"{large} g")
            put(record, f"{fill}.readings.{row}.{pair[1]}", f"{small} g")
        elif way != "dimensions":
            put(record, f"{fill}.readings.{row}.{'filler' if way == 'dry_filler' else 'water'}", draw(_mass()))
    put(record, f"{fill}.filler_density", draw(_hundredths(50, 300, " g/mL")))
    put(record, f"{fill}.solid", draw(st.sampled_from(["cylinder", "tapered", "box"])))
    for name in ("diameter", "top_diameter", "bottom_diameter", "length", "width", "height"):
        put(record, f"{fill}.{name}", draw(_hundredths(2000, 30_000, " mm")))
    put(record, f"{fill}.temperature", f"{draw(st.integers(5, 40))} °C")
    put(record, f"{fill}.readability", draw(st.sampled_from(["0.01 g", "0.1 g", "1 g", "5 g"])))
    for name in draw(st.sets(st.sampled_from(["opening_across", "opening_other"]))):
        put(record, f"{fill}.{name}", draw(_hundredths(2000, 20_000, " mm")))


def _draw_wax(draw: st.DrawFn, record: dict[str, Any]) -> None:
    well = "wells.0."
    poured = draw(st.integers(70, 95))
    put(record, well + "wax.density_poured", f"0.{poured} g/mL")
    put(record, well + "wax.density_set", f"0.{draw(st.integers(poured, 99))} g/mL")
    put(record, well + "basis", draw(st.sampled_from(["poured", "set"])))
    put(record, well + "sealed", draw(st.sampled_from(["yes", "no"])))
    put(record, well + "fragrance.load", draw(st.one_of(_hundredths(0, 1500, " %"), st.just("1 oz/lb"))))
    put(record, well + "fragrance.basis", draw(st.sampled_from(["wax", "blend"])))
    put(record, well + "fragrance.density", draw(_hundredths(80, 120, " g/mL")))
    put(record, well + "dye", draw(_hundredths(0, 200, " %")))
    put(record, well + "rule", draw(_hundredths(60, 110)))


SCRAPS = st.one_of(st.none(), st.booleans(), st.integers(), st.floats(allow_nan=False, allow_infinity=False),
                   st.text(max_size=20), st.sampled_from(["", "640", "640 g", "two", "-5", "1 lb 4 oz", "12,5", "0",
                                                          "1e99"]))
NAMES = st.one_of(st.sampled_from(["casts", "wells", "cavity", "fill", "readings", "water", "mix", "powder", "name",
                                   "id",
                                   "version", "0", "casts.0.pieces", ""]), st.text(max_size=8))
ANYTHING = st.recursive(SCRAPS, lambda inner: st.one_of(st.lists(inner, max_size=4),
                                                        st.dictionaries(NAMES, inner, max_size=4)), max_leaves=12)


def branches(part: Any, path: tuple = ()) -> list[tuple]:
    """The path of every part of a record, as steps."""
    steps = part.items() if isinstance(part, dict) else enumerate(part) if isinstance(part, list) else ()
    return [path, *(deeper for step, branch in steps for deeper in branches(branch, (*path, step)))]


@st.composite
def bent_vessels(draw: st.DrawFn) -> Any:
    """A full vessel in which a few parts are something else, or gone."""
    record: Any = json.loads(json.dumps(full_vessel()))
    for _ in range(draw(st.integers(1, 4))):
        path = draw(st.sampled_from([path for path in branches(record) if path]))
        holder = record
        for step in path[:-1]:
            holder = holder[step]
        if draw(st.booleans()):
            holder[path[-1]] = draw(ANYTHING)
        else:
            del holder[path[-1]]
        if not record:
            break
    return record
